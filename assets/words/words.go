// Package words holds every sentence people read, so that screen, paper and
// command line say the same, in each language.
//
// A sentence has an ID (ids.go) and stands under it in one message file a
// language (en.json). To add a language, add its file: what it lacks is said
// in English. Sentences with a count have the plural forms of the Unicode CLDR
// ("one", "other", ...) and take it as the argument Count. Numbers come to a
// sentence already written, with their unit.
//
// Packages that may import the standard library alone have no IDs; their lines
// are retold by form (retold.go, retold/de.json).
package words

import (
	"embed"
	"encoding/json"
	"fmt"
	"strings"

	"github.com/nicksnyder/go-i18n/v2/i18n"
	"golang.org/x/text/language"
)

//go:embed *.json
var files embed.FS

var bundle = load()

func load() *i18n.Bundle {
	b := i18n.NewBundle(language.English)
	b.RegisterUnmarshalFunc("json", json.Unmarshal)
	entries, err := files.ReadDir(".")
	if err != nil {
		panic("words: " + err.Error())
	}
	for _, e := range entries {
		if _, err := b.LoadMessageFileFS(files, e.Name()); err != nil {
			panic(fmt.Sprintf("words: %s: %v", e.Name(), err)) // embedded, so only ever seen by its writer
		}
	}
	return b
}

// Languages are those there are sentences in, English first.
func Languages() []string {
	all := []string{"en"}
	for _, tag := range bundle.LanguageTags() {
		if t := tag.String(); t != "en" {
			all = append(all, t)
		}
	}
	return all
}

// ID names a sentence.
type ID string

// Of is the ID of a sentence for another package's own word, such as a cause or
// a reason: Of("cause", "shaft moved") is "cause_shaft_moved".
func Of(kind, word string) ID {
	return ID(kind + "_" + strings.NewReplacer(" ", "_", "-", "_", ",", "").Replace(word))
}

// Args fill a sentence's gaps by name.
type Args map[string]any

// Speaker says sentences in one language.
type Speaker struct {
	localizer *i18n.Localizer
	language  string // its base: "en", "de"
}

// In gives the speaker of a language by its BCP 47 tag ("en", "de-CH"), or of
// the first of several that there is; English when there is none.
func In(tags ...string) Speaker {
	own := "en"
	var wanted []language.Tag
	for _, tag := range tags {
		if t, err := language.Parse(tag); err == nil {
			wanted = append(wanted, t)
		}
	}
	if tag, _, sure := language.NewMatcher(bundle.LanguageTags()).Match(wanted...); sure != language.No {
		base, _ := tag.Base()
		own = base.String()
	}
	return Speaker{i18n.NewLocalizer(bundle, tags...), own}
}

// Language is the one spoken, as a BCP 47 base: "en", "de".
func (s Speaker) Language() string { return s.language }

// Say says a sentence. A sentence there is none of is told by its ID.
func (s Speaker) Say(id ID, args Args) string {
	text, ok := s.find(id, s.said(args))
	if !ok {
		return "[" + string(id) + "]"
	}
	return text
}

// find says a sentence, if there is one.
func (s Speaker) find(id ID, data map[string]any) (string, bool) {
	c := &i18n.LocalizeConfig{MessageID: string(id), TemplateData: data}
	if n, ok := data["Count"]; ok {
		c.PluralCount = n
	}
	text, err := s.localizer.Localize(c)
	return text, text != "" || err == nil
}

var english = In("en")

// Say says a sentence in English.
func Say(id ID, args Args) string { return english.Say(id, args) }
