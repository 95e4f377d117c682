package words

// This file says other packages' own words, as they stand in files and code, in
// a person's language. A sentence gets them as they are, in arguments of certain
// names, so that whoever fills it need not know any language:
//
//	Say(EditHoldShaft, Args{"Held": "seated"})   "shaft seated", "Welle in der Zentrierung"
//
// A word without a sentence stands as it is.

import "fmt"

// named are those arguments' names, each with the first part of its words' IDs,
// see Of.
var named = map[string]string{
	"Held":      "held",
	"By":        "by", // what holds it
	"Layout":    "layout",
	"Kind":      "kind",
	"Check":     "check",
	"Finding":   "finding",
	"Named":     "rule", // those in common use
	"DueReason": "due_reason",
	"FieldKey":  "field", // of a hull's measurements
	"Symptom":   "symptom",
	"Test":      "trouble_test",
	"Answer":    "test_answer",
	"Mount":     "boat_part",
	"Bearing":   "boat_part",
	"Fourth":    "boat_part",
	"Beside":    "boat_part",
}

// said is what fills a sentence's gaps, named words said.
func (s Speaker) said(args Args) map[string]any {
	said, own := map[string]any(args), false
	for name, kind := range named {
		word, ok := args[name]
		if !ok {
			continue
		}
		text, ok := s.find(Of(kind, fmt.Sprint(word)), nil)
		if !ok {
			continue
		}
		if !own { // the caller's arguments are left alone
			said, own = make(map[string]any, len(args)), true
			for k, v := range args {
				said[k] = v
			}
		}
		said[name] = text
	}
	return said
}

// Part says what a mount or a bearing is called: the usual names in a person's
// language, a name of a boat's own as it stands.
func (s Speaker) Part(name string) string {
	if text, ok := s.find(Of("boat_part", name), nil); ok {
		return text
	}
	return name
}

// Parts says several.
func (s Speaker) Parts(list []string) []string {
	said := make([]string, len(list))
	for i, name := range list {
		said[i] = s.Part(name)
	}
	return said
}
