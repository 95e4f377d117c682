package words

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"strconv"
	"strings"
	"testing"
)

// ids reads the constants of type ID out of ids.go.
func ids(t *testing.T) map[string]bool {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "ids.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]bool{}
	ast.Inspect(file, func(n ast.Node) bool {
		spec, ok := n.(*ast.ValueSpec)
		if !ok {
			return true
		}
		id, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
		if err != nil || found[id] {
			t.Errorf("%s: twice, or no text", spec.Names[0])
		}
		found[id] = true
		return true
	})
	return found
}

func TestEverySentenceStandsInEnglish(t *testing.T) {
	data, err := files.ReadFile("en.json")
	if err != nil {
		t.Fatal(err)
	}
	var messages map[string]any
	if err := json.Unmarshal(data, &messages); err != nil {
		t.Fatal(err)
	}
	known := ids(t)
	if len(known) < 20 {
		t.Fatalf("only %d IDs found", len(known))
	}
	for id := range known {
		if messages[id] == nil {
			t.Errorf("%s is not in en.json", id)
		}
		if s := Say(ID(id), Args{"Count": 2}); s == "" || strings.HasPrefix(s, "[") || strings.Contains(s, "\n") {
			t.Errorf("%s is said as %q", id, s)
		}
	}
	for id := range messages {
		if !known[id] {
			t.Errorf("en.json has %s, which nothing says", id)
		}
	}
}

// Other languages may lack sentences, but have none that English lacks.
func TestOtherLanguagesFollowEnglish(t *testing.T) {
	known := ids(t)
	entries, _ := files.ReadDir(".")
	for _, e := range entries {
		data, _ := files.ReadFile(e.Name())
		var messages map[string]any
		if err := json.Unmarshal(data, &messages); err != nil {
			t.Errorf("%s: %v", e.Name(), err)
		}
		for id := range messages {
			if !known[id] {
				t.Errorf("%s has %s, which nothing says", e.Name(), id)
			}
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
	if got := In("xx", "de").Say(Bearings, Args{"Count": 1}); got != "1 bearing" {
		t.Errorf("a language there is none of says %q", got)
	}
}
