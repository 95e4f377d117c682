package words

// This file reads, out of the source of the packages that have no words of their
// own, every form of line a person can come to see, and holds the other languages
// to it.

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// speechless are the folders whose lines are retold; what is worked out for
// engineers alone is left out.
var speechless = []string{"../../hulls", "../../kinematics", "../../cmd/aligner/outfile"}

var engineersOnly = []string{"kinematics/rounds"}

// tellers are the functions whose texts become lines of a fault.
var tellers = []string{"refuse", "doubt", "Refuse", "fault", "hinFault"}

// tellersHere are the same where they are a package's own function, not a method.
var tellersHere = []string{"trouble", "refused", "refusedIn", "damaged"}

// reasons are functions that return a line.
var reasons = regexp.MustCompile(`^(Invalid|invalid\w*|suggest|a|give|unitOf|kindOf)$`)

// faultFields are the parts of a fault that are sentences.
var faultFields = []string{"Value", "Limit", "Mend"}

// notSeen are lines that only a fault of the program itself brings about.
var notSeen = []string{
	"a story needs a gap and a covariance for each state, and a move between any two",
	"the changes' covariance is not one",
	"visit: no reading to write",
	`""`, "[{}, {}]", "JSON", "UTF-16",
}

var verbIn = regexp.MustCompile(`%[-+#0 ]*\d*(\.\d+)?[a-zA-Z]`)

// lineConstants are lines kept as constants in another file of their package.
var lineConstants = map[string]string{"exportAgain": "export the hull again"}

// formsOf are the forms an expression can come to: "{}" for whatever is worked
// out.
func formsOf(e ast.Expr) []string {
	switch e := e.(type) {
	case *ast.BasicLit:
		if s, err := strconv.Unquote(e.Value); err == nil && e.Kind == token.STRING {
			return []string{s}
		}
	case *ast.Ident:
		if e.Obj != nil { // a constant with a line in it, of the same file
			if v, ok := e.Obj.Decl.(*ast.ValueSpec); ok && e.Obj.Kind == ast.Con && len(v.Values) == 1 {
				return formsOf(v.Values[0])
			}
		}
		if line, ok := lineConstants[e.Name]; ok {
			return []string{line}
		}
	case *ast.ParenExpr:
		return formsOf(e.X)
	case *ast.BinaryExpr:
		var all []string
		for _, a := range formsOf(e.X) {
			for _, b := range formsOf(e.Y) {
				all = append(all, a+b)
			}
		}
		return all
	case *ast.CallExpr:
		if _, name := called(e); name == "Sprintf" && len(e.Args) > 0 {
			return spread(formsOf(e.Args[0]))
		}
	}
	return []string{"{}"}
}

// spread turns the verbs of formats into gaps.
func spread(formats []string) []string {
	for i, f := range formats {
		formats[i] = strings.ReplaceAll(verbIn.ReplaceAllString(f, "{}"), "%%", "%")
	}
	return formats
}

// called is a call's package or receiver, and its name.
func called(c *ast.CallExpr) (of, name string) {
	switch f := c.Fun.(type) {
	case *ast.Ident:
		return "", f.Name
	case *ast.SelectorExpr:
		if x, ok := f.X.(*ast.Ident); ok {
			of = x.Name
		}
		return of, f.Sel.Name
	}
	return "", ""
}

// linesIn calls back with every form of line in a file.
func linesIn(f *ast.File, found func(at token.Pos, form string)) {
	add := func(e ast.Expr) {
		for _, form := range formsOf(e) {
			for strings.Contains(form, "{}{}") {
				form = strings.ReplaceAll(form, "{}{}", "{}")
			}
			found(e.Pos(), form)
		}
	}
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.CallExpr:
			of, name := called(n)
			switch {
			case slices.Contains(tellers, name), of == "" && slices.Contains(tellersHere, name):
				for _, arg := range n.Args[min(1, len(n.Args)):] {
					add(arg)
				}
			case (of == "fmt" && name == "Errorf" || of == "errors" && name == "New") && len(n.Args) > 0:
				for _, form := range spread(formsOf(n.Args[0])) {
					found(n.Pos(), form)
				}
			}
		case *ast.KeyValueExpr:
			if key, ok := n.Key.(*ast.Ident); ok && slices.Contains(faultFields, key.Name) {
				add(n.Value)
			}
		case *ast.FuncDecl:
			if reasons.MatchString(n.Name.Name) {
				ast.Inspect(n, func(n ast.Node) bool {
					if r, ok := n.(*ast.ReturnStmt); ok {
						for _, e := range r.Results {
							add(e)
						}
					}
					return true
				})
			}
		}
		return true
	})
}

// seenLines are all forms a person can come to see, each with where it is made.
func seenLines(t *testing.T) map[string]string {
	t.Helper()
	all := map[string]string{}
	for _, top := range speechless {
		err := filepath.WalkDir(top, func(path string, d fs.DirEntry, err error) error {
			if err != nil || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			for _, folder := range engineersOnly {
				if strings.Contains(filepath.ToSlash(path), folder) {
					return nil
				}
			}
			set := token.NewFileSet()
			f, err := parser.ParseFile(set, path, nil, 0)
			if err != nil {
				return err
			}
			linesIn(f, func(at token.Pos, form string) {
				p := set.Position(at)
				all[form] = fmt.Sprintf("%s:%d", filepath.ToSlash(p.Filename), p.Line)
			})
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return all
}

func TestEveryLineSeenIsRetold(t *testing.T) {
	seen := seenLines(t)
	if len(seen) < 250 {
		t.Fatalf("found only %d forms of lines: the search is broken", len(seen))
	}
	letters := regexp.MustCompile(`[A-Za-z]{2}`)
	for _, tag := range Languages()[1:] {
		known, err := retoldLines("retold/" + tag + ".json")
		if err != nil {
			t.Error(err)
			continue
		}
		for form, where := range seen {
			bare := strings.ReplaceAll(form, "{}", "")
			if letters.MatchString(bare) && !slices.Contains(notSeen, form) && known[form] == "" {
				t.Errorf("%s does not retell %q (%s)", tag, form, where)
			}
		}
		for form, own := range known {
			if _, made := seen[form]; !made && !slices.Contains(composed, form) {
				t.Errorf("%s retells %q, which nobody says", tag, form)
			}
			for k := 1; k <= strings.Count(form, "{}"); k++ {
				if !strings.Contains(own, fmt.Sprintf("{%d}", k)) {
					t.Errorf("%s: %q loses gap %d of %q", tag, own, k, form)
				}
			}
		}
	}
}

// composed are the forms a fault's own parts are put together by.
var composed = []string{"found {}; wanted {}; {}", "{}: found {}; wanted {}; {}", "{} (line {})", "line {}", "{}: {}"}

func TestRetold(t *testing.T) {
	german, english := In("de"), In("en")
	for _, c := range []struct{ english, german string }{
		{"boat.hull.json: mounts[1].pitch_mm (line 7): found 15 mm; wanted 0.5 to 4 mm; correct the number or its unit",
			"boat.hull.json: mounts[1].pitch_mm (Zeile 7): gefunden: 15 mm; verlangt: 0,5 bis 4 mm; die Zahl oder ihre Einheit berichtigen"},
		{"found -3000 mm, with its aft end at -3051 mm; wanted its aft end on the shaft, which ends at -1680 mm; check the bearing's place and the shaft's length",
			"gefunden: -3000 mm, mit dem hinteren Ende bei -3051 mm; verlangt: sein hinteres Ende auf der Welle, die bei -1680 mm endet; Lagerstelle und Wellenlänge prüfen"},
		{"nobody says this", "nobody says this"},
		{"", ""},
	} {
		if got := german.Retell(c.english); got != c.german {
			t.Errorf("%q in German: %q, want %q", c.english, got, c.german)
		}
		if got := english.Retell(c.english); got != c.english {
			t.Errorf("%q in English: %q", c.english, got)
		}
	}
}
