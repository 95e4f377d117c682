package job

// This file is what is said: a sentence's ID and what fills its gaps, in no
// language and no unit yet.

import (
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/report/say"
)

// Text is one sentence to be said. The zero value says nothing.
type Text struct {
	ID   words.ID
	Args Args
}

// Args fill the gaps by name: words and numbers as they are, quantities (GapMM
// and so on) written in the reader's units, a Text said, a list of
// texts or names joined with "and".
type Args map[string]any

// Quantities a sentence may hold.
type (
	// GapMM is as fine as a leaf: thou, or mm.
	GapMM float64
	// ThicknessMM is as it is marked on a leaf or a shim.
	ThicknessMM float64
	// LengthMM is in mm for everyone, as threads and tapes in the trade are.
	LengthMM float64
	// TorqueNM is pounds-feet or newton metres.
	TorqueNM float64
	// Number has up to two decimals.
	Number float64
)

// Say says it; "" for the zero value.
func (t Text) Say(s words.Speaker, u say.Units) string {
	if t.ID == "" {
		return ""
	}
	args := make(words.Args, len(t.Args))
	for name, v := range t.Args {
		args[name] = written(s, u, v)
	}
	return s.Say(t.ID, args)
}

func written(s words.Speaker, u say.Units, v any) any {
	switch v := v.(type) {
	case GapMM:
		return u.LeafWithUnit(float64(v))
	case ThicknessMM:
		return u.Thickness(float64(v))
	case LengthMM:
		return u.Plain(float64(v), 1) + " mm"
	case TorqueNM:
		return torque(u, float64(v))
	case Number:
		return u.Plain(float64(v), 2)
	case hulls.Spanner:
		return v.String()
	case words.ID:
		return s.Say(v, nil)
	case Text:
		return v.Say(s, u)
	case []Text:
		list := make([]string, len(v))
		for i, t := range v {
			list[i] = t.Say(s, u)
		}
		return joined(s, list)
	case []string:
		return joined(s, s.Parts(v))
	}
	return v
}

// TorqueOf writes a torque as a torque wrench is set.
func TorqueOf(u say.Units, nm float64) string { return torque(u, nm) }

// torque is written as a torque wrench is set: in whole pounds-feet or newton
// metres, in tenths below ten.
func torque(u say.Units, nm float64) string {
	v, unit := nm, " N m"
	if !u.Metric {
		v, unit = nm/say.NmPerLbFt, " lb-ft"
	}
	decimals := 0
	if math.Abs(v) < 10 {
		decimals = 1
	}
	return u.Plain(v, decimals) + unit
}

// joined is "a, b and c".
func joined(s words.Speaker, list []string) string {
	n := len(list)
	if n < 2 {
		return strings.Join(list, "")
	}
	return s.Say(words.AndList, words.Args{"First": strings.Join(list[:n-1], ", "), "Last": list[n-1]})
}

// text is a sentence by a kind and a word of this package.
func text(kind, word string, args Args) Text {
	return Text{words.Of("job_"+kind, strings.ReplaceAll(word, ",", "")), args}
}
