package trouble

// This file says symptoms, causes and tests.

import (
	"slices"
	"strings"

	"aligner/assets/words"
)

// Name says a symptom.
func (s Symptom) Name(in words.Speaker) string { return in.Say(words.Of("symptom", string(s)), nil) }

// Name says a cause; Does, how it shows.
func (c Cause) Name(in words.Speaker) string {
	return in.Say(words.Of("trouble_cause", string(c)), nil)
}

// Does says how a cause shows.
func (c Cause) Does(in words.Speaker) string { return in.Say(words.Of("trouble_does", string(c)), nil) }

// Name says a test.
func (t Test) Name(in words.Speaker) string { return in.Say(words.Of("trouble_test", string(t)), nil) }

// Text says how a test is made, what good and bad look like and what it tells of,
// a line each.
func (t Test) Text(in words.Speaker, f *Finding) []string {
	say := func(id words.ID, kind string) string {
		return in.Say(id, words.Args{"Text": in.Say(words.Of(kind, string(t)), nil)})
	}
	lines := []string{say(words.TroubleHow, "trouble_how"), say(words.TroubleGood, "trouble_looks"), say(words.TroubleBad, "trouble_looks_bad")}
	var names []string
	for _, c := range f.Causes {
		if t.BearsOn(c.Cause) {
			names = append(names, c.Cause.Name(in))
		}
	}
	return append(lines, in.Say(words.TroubleBears, words.Args{"Causes": strings.Join(names, "; ")}))
}

// NextText says which test to make next, with its minutes.
func NextText(in words.Speaker, t Test) string {
	return in.Say(words.TroubleNext, words.Args{"Test": string(t), "Minutes": t.Minutes()})
}

// Text says the causes, the likeliest first, a line each; the unlikely ones are
// said to be unlikely.
func (f *Finding) Text(in words.Speaker) []string {
	var lines []string
	for i := range f.Causes {
		lines = append(lines, f.causeText(in, &f.Causes[i]))
	}
	return append(lines, in.Say(words.TroubleNoVerdict, nil))
}

// Brief is Text with how it shows told of the likely causes alone, the others by
// their names.
func (f *Finding) Brief(in words.Speaker) []string {
	var lines []string
	names := map[Grade][]string{}
	for _, c := range f.Causes {
		if c.Grade == Possible || c.Grade == Unlikely {
			names[c.Grade] = append(names[c.Grade], c.Cause.Name(in))
			continue
		}
		lines = append(lines, f.causeText(in, &c))
	}
	for _, g := range []Grade{Possible, Unlikely} {
		if len(names[g]) > 0 {
			lines = append(lines, in.Say(words.TroubleOthers, words.Args{"Grade": in.Say(words.Of("trouble_grade", string(g)), nil), "Causes": strings.Join(names[g], "; ")}))
		}
	}
	return append(lines, in.Say(words.TroubleNoVerdict, nil))
}

func (f *Finding) causeText(in words.Speaker, c *Ranked) string {
	return in.Say(words.TroubleCause, words.Args{"Grade": in.Say(words.Of("trouble_grade", string(c.Grade)), nil),
		"Cause": c.Cause.Name(in), "Text": c.Cause.Does(in)})
}

// MadeText says the tests made, those that the visit answers by itself marked.
func MadeText(in words.Speaker, made, told Answers) []string {
	var lines []string
	for _, t := range Tests {
		id, answer := words.TroubleMadeLine, made[t]
		if answer == "" {
			id, answer = words.TroubleFromVisit, told[t]
		}
		if answer != "" {
			lines = append(lines, in.Say(id, words.Args{"Test": string(t), "Answer": string(answer)}))
		}
	}
	return lines
}

// Find is the symptom or test of a name, as files have it or as it is said.
func Find[T ~string](all []T, typed string, name func(T) string) (T, bool) {
	typed = strings.ToLower(strings.TrimSpace(typed))
	i := slices.IndexFunc(all, func(x T) bool {
		return strings.ToLower(string(x)) == typed || strings.ToLower(name(x)) == typed
	})
	if i < 0 {
		return "", false
	}
	return all[i], true
}
