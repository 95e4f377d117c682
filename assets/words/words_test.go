package words

// Every ID has its sentence, and every sentence is said by an ID.

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// ids reads the constants of type ID out of the files that list them.
func ids(t *testing.T) map[string]bool {
	t.Helper()
	sources, err := filepath.Glob("ids*.go")
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]bool{}
	for _, source := range sources {
		file, err := parser.ParseFile(token.NewFileSet(), source, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			spec, ok := n.(*ast.ValueSpec)
			if !ok || len(spec.Values) == 0 {
				return true
			}
			lit, ok := spec.Values[0].(*ast.BasicLit)
			if !ok {
				return true
			}
			id, err := strconv.Unquote(lit.Value)
			if err != nil || found[id] {
				t.Errorf("%s: %s: twice, or no text", source, spec.Names[0])
			}
			found[id] = true
			return true
		})
	}
	if len(found) < 50 {
		t.Fatalf("only %d IDs found", len(found))
	}
	return found
}

// messages reads the sentences of one language: en.json, gap.en.json and so
// on. No sentence may stand in two files.
func messages(t *testing.T, language string) map[string]any {
	t.Helper()
	entries, err := files.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]any{}
	for _, e := range entries {
		if languageOf(e.Name()) != language {
			continue
		}
		for id, message := range file(t, e.Name()) {
			if all[id] != nil {
				t.Errorf("%s: %s stands in another file too", e.Name(), id)
			}
			all[id] = message
		}
	}
	return all
}

// file reads one message file.
func file(t *testing.T, name string) map[string]any {
	t.Helper()
	data, err := files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	var some map[string]any
	if err := json.Unmarshal(data, &some); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return some
}

// languageOf is the language in a message file's name: de of gap.de.json.
func languageOf(file string) string {
	parts := strings.Split(strings.TrimSuffix(file, ".json"), ".")
	return parts[len(parts)-1]
}

func TestEverySentenceStandsInEnglish(t *testing.T) {
	known, english := ids(t), messages(t, "en")
	for id := range known {
		if english[id] == nil {
			t.Errorf("%s is in no English file", id)
		}
		if s := Say(ID(id), Args{"Count": 2}); s == "" || strings.HasPrefix(s, "["+id) || strings.Contains(s, "\n") {
			t.Errorf("%s is said as %q", id, s)
		}
	}
	for id := range english {
		if !known[id] {
			t.Errorf("English has %s, which nothing says", id)
		}
	}
}

func TestSay(t *testing.T) {
	for _, c := range []struct {
		id   ID
		args Args
		want string
	}{
		{Bearings, Args{"Count": 1}, "1 bearing"},
		{Bearings, Args{"Count": 2}, "2 bearings"},
		{Mounts, Args{"Count": 0}, "0 mounts"},
		{Doubt, Args{"Line": "a < b & c"}, "doubt: a < b & c"}, // nothing is escaped
		{"nonesuch", nil, "[nonesuch]"},
	} {
		if got := Say(c.id, c.args); got != c.want {
			t.Errorf("Say(%q) = %q; want %q", c.id, got, c.want)
		}
	}
	if got := In("xx", "fr").Say(Bearings, Args{"Count": 1}); got != "1 bearing" {
		t.Errorf("a language there is none of says %q", got)
	}
}
