package words

// This file holds every other language to English: sentence for sentence, gap
// for gap. (At run time what a language lacks is still said in English.)

import (
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"
	"text/template"
	"text/template/parse"

	"github.com/nicksnyder/go-i18n/v2/i18n"
	xlanguage "golang.org/x/text/language"
)

// pluralForms are the CLDR plural forms of cardinal numbers (Unicode CLDR,
// "Language Plural Rules": German has one and other, as English has).
var pluralForms = map[string][]string{"de": {"one", "other"}}

func TestOtherLanguagesSayAllThatEnglishSays(t *testing.T) {
	english := messages(t, "en")
	if tags := Languages(); !slices.Contains(tags, "de") {
		t.Errorf("there are sentences in %v only", tags)
	}
	for _, language := range Languages()[1:] {
		own := messages(t, language)
		for _, id := range slices.Sorted(maps.Keys(english)) {
			if own[id] == nil {
				t.Errorf("%s lacks %s: %v", language, id, english[id])
				continue
			}
			for _, fault := range compare(english[id], own[id], pluralForms[language]) {
				t.Errorf("%s: %s %s", language, id, fault)
			}
		}
		for id := range own {
			if english[id] == nil {
				t.Errorf("%s has %s, which English has not", language, id)
			}
		}
	}
}

// A language's file is beside the English one of the same sentences.
func TestLanguagesDivideSentencesAlike(t *testing.T) {
	entries, err := files.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		language := languageOf(e.Name())
		if language == "en" {
			continue
		}
		beside := strings.TrimSuffix(e.Name(), language+".json") + "en.json"
		english, own := file(t, beside), file(t, e.Name())
		for id := range own {
			if english[id] == nil {
				t.Errorf("%s has %s, which %s has not", e.Name(), id, beside)
			}
		}
	}
}

// compare names what a message lacks against the English one.
func compare(english, own any, plurals []string) []string {
	a, b := forms(english), forms(own)
	if _, counted := english.(map[string]any); counted {
		if got := slices.Sorted(maps.Keys(b)); !reflect.DeepEqual(got, plurals) {
			return []string{"has plural forms " + strings.Join(got, ", ") + "; wants " + strings.Join(plurals, ", ")}
		}
	} else if _, counted := own.(map[string]any); counted {
		return []string{"is counted, which English is not"}
	}
	var faults []string
	for form, text := range b {
		if strings.TrimSpace(text) == "" {
			faults = append(faults, "is empty")
			continue
		}
		like, ok := a[form]
		if !ok {
			like = a["other"]
		}
		want, wantErr := gaps(like)
		got, err := gaps(text)
		switch {
		case wantErr != nil || err != nil:
			faults = append(faults, "cannot be parsed: "+text)
		case !reflect.DeepEqual(got, want):
			faults = append(faults, "fills "+strings.Join(got, " ")+"; English fills "+strings.Join(want, " "))
		}
	}
	return faults
}

// forms are a message's texts by plural form.
func forms(message any) map[string]string {
	if text, ok := message.(string); ok {
		return map[string]string{"other": text}
	}
	all := map[string]string{}
	for form, text := range message.(map[string]any) {
		all[form] = text.(string)
	}
	return all
}

var verb = regexp.MustCompile(`%[a-z]`)

// gaps are what a text leaves to be filled: its fields, each once, and its %s in
// their order, which they are filled in.
func gaps(text string) ([]string, error) {
	parsed, err := template.New("").Parse(text)
	if err != nil {
		return nil, err
	}
	fields := map[string]bool{}
	walk(reflect.ValueOf(parsed.Root), fields)
	return append(slices.Sorted(maps.Keys(fields)), verb.FindAllString(text, -1)...), nil
}

// walk gathers the fields in a template's nodes, in conditions too.
func walk(v reflect.Value, fields map[string]bool) {
	switch v.Kind() {
	case reflect.Interface, reflect.Pointer:
		if v.IsNil() {
			return
		}
		if f, ok := v.Interface().(*parse.FieldNode); ok {
			fields["."+strings.Join(f.Ident, ".")] = true
			return
		}
		if _, ok := v.Interface().(*parse.Tree); !ok {
			walk(v.Elem(), fields)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				walk(v.Field(i), fields)
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			walk(v.Index(i), fields)
		}
	}
}

// The comparison is worth something only if it finds faults.
func TestCompareFindsFaults(t *testing.T) {
	counted := func(one, other string) map[string]any { return map[string]any{"one": one, "other": other} }
	for _, c := range []struct {
		name         string
		english, own any
		want         string
	}{
		{"alike", "{{.A}} on {{.B}}", "{{.B}}: {{.A}}", ""},
		{"alike with a condition", "{{if .A}}{{.B}}{{end}}", "{{if .A}}so {{.B}}{{end}}", ""},
		{"one lacking", "{{.A}} on {{.B}}", "{{.B}}", "fills .B; English fills .A .B"},
		{"one in a condition lacking", "a{{if .A}} {{.B}}{{end}}", "{{.B}}", "fills .B; English fills .A .B"},
		{"misspelt", "{{.Gap}}", "{{.Gab}}", "fills .Gab; English fills .Gap"},
		{"verb lacking", "%s at %s", "bei %s", "fills %s; English fills %s %s"},
		{"broken", "{{.A}}", "{{.A}", "cannot be parsed: {{.A}"},
		{"empty", "a", " ", "is empty"},
		{"plural form lacking", counted("a", "b"), map[string]any{"other": "c"}, "has plural forms other; wants one, other"},
		{"not counted", counted("a", "b"), "c", "has plural forms other; wants one, other"},
		{"counted", "a", counted("b", "c"), "is counted, which English is not"},
	} {
		if got := strings.Join(compare(c.english, c.own, []string{"one", "other"}), "; "); got != c.want {
			t.Errorf("%s: %q; want %q", c.name, got, c.want)
		}
	}
}

// Words of other packages are said in the language of their sentence; a word
// there is none for, and the caller's own arguments, are left alone.
func TestNamedWords(t *testing.T) {
	args := Args{"Held": "seated"}
	for _, c := range []struct {
		language string
		args     Args
		want     string
	}{
		{"en", args, "shaft seated"},
		{"de", args, "Welle in der Zentrierung"},
		{"de-CH", args, "Welle in der Zentrierung"},
		{"de", Args{"Held": "by hand"}, "Welle by hand"},
	} {
		if got := In(c.language).Say(EditHoldShaft, c.args); got != c.want {
			t.Errorf("%s, %v: %q; want %q", c.language, c.args, got, c.want)
		}
	}
	if args["Held"] != "seated" {
		t.Errorf("the caller's argument became %q", args["Held"])
	}
}

// What a language lacks is said in English.
func TestLackingIsSaidInEnglish(t *testing.T) {
	b := i18n.NewBundle(xlanguage.English)
	b.MustAddMessages(xlanguage.English, &i18n.Message{ID: "undo", Other: "Undo"}, &i18n.Message{ID: "redo", Other: "Redo"})
	b.MustAddMessages(xlanguage.German, &i18n.Message{ID: "undo", Other: "Rückgängig"})
	s := Speaker{localizer: i18n.NewLocalizer(b, "de")}
	if undo, redo := s.Say(Undo, nil), s.Say(Redo, nil); undo != "Rückgängig" || redo != "Redo" {
		t.Errorf("said %q and %q", undo, redo)
	}
}
