package main

// This file chooses the language people are spoken to in: --lang, else the
// system's.

import (
	"os"
	"slices"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/report/say"
)

// speaker says what people read. It is set once, before any verb runs. Keys and
// words of --json are the same in every language.
var speaker = words.In("en")

// languageAsked is whether --lang named it.
var languageAsked bool

// chooseLanguage finds the language in a command line not yet read, as help is
// told in it too.
func chooseLanguage(args []string) error {
	speaker = words.In(systemLanguage(os.Getenv))
	for i, a := range args {
		name, value, joined := strings.Cut(a, "=")
		switch {
		case a == "--":
			return nil
		case name != "--lang":
			continue
		case !joined && i+1 < len(args):
			value = args[i+1]
		}
		return speak(value)
	}
	return nil
}

// speak sets a language that was asked for by name.
func speak(tag string) error {
	if known := words.Languages(); !slices.Contains(known, baseLanguage(tag)) {
		return &hulls.Fault{Place: "--lang", Value: quotedIfEmpty(tag),
			Limit: speaker.Say(words.SheetNoLangLimit, words.Args{"Known": strings.Join(known, ", ")}), Mend: speaker.Say(words.SheetNoLangMend, nil)}
	}
	speaker, languageAsked = words.In(baseLanguage(tag)), true
	return nil
}

// readerUnits are the units people are told in, with the comma where it is usual.
func readerUnits(metric bool) say.Units {
	return say.Units{Metric: metric, DecimalComma: speaker.Language() == "de"}
}

// systemLanguage is the language of messages by POSIX (IEEE Std 1003.1, 8.2): the
// first of LC_ALL, LC_MESSAGES and LANG that is set.
func systemLanguage(env func(string) string) string {
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		if v := env(name); v != "" {
			return baseLanguage(v)
		}
	}
	return "en"
}

// baseLanguage is "de" of "de_DE.UTF-8" or "de-CH".
func baseLanguage(tag string) string {
	base := strings.ToLower(tag)
	if i := strings.IndexAny(base, "_-.@"); i >= 0 {
		base = base[:i]
	}
	return base
}
