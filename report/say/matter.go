package say

// This file tells how much a number of a hull matters.

import (
	"aligner/assets/words"
	"aligner/hulls/fields"
	"aligner/kinematics/response"
	"aligner/kinematics/sensitivity"
)

// more is how much more of a field is spoken of: what a hand's slip might be.
func more(f *fields.Field, now float64, in fields.Inches) float64 {
	switch f.Kind {
	case fields.Length:
		if in {
			return mmPerInch / 2
		}
		return 10
	case fields.Clearance:
		if in {
			return 4 * MMPerThou
		}
		return 0.1
	case fields.Mass:
		if now > 50 {
			return 10
		}
		return 1
	case fields.Stiffness:
		return max(1, now/10)
	case fields.Density:
		return 100
	}
	return 1
}

// leastTold is under what a change is told as less than so much, in mm.
const leastTold = MMPerThou / 100

// fine writes a change of a gap: hundredths of a thou, or ten-thousandths of a mm.
func (u Units) fine(mm float64) string {
	if u.Metric {
		return u.number(mm, 4) + " mm"
	}
	return u.number(mm/MMPerThou, 2) + " thou"
}

// Matter tells how much a field matters: "10 mm more here changes what a flat does
// at the gap by up to 0.1 thou: a tape is good enough."
func Matter(s words.Speaker, u Units, in fields.Inches, e *sensitivity.Effect, now fields.Value) string {
	v := e.Verdict()
	if v == sensitivity.Nothing {
		return s.Say(words.MattersNothing, nil)
	}
	id := words.Of("matters", string(v))
	if v == sensitivity.TapeDoes && e.Field.Tape == nil {
		id = words.MattersSheetDoes
	}
	args := words.Args{"Verdict": s.Say(id, nil)}
	if e.Field.Kind == fields.Thread {
		return s.Say(words.MattersThread, args)
	}
	step := more(&e.Field, now.Number, in)
	args["Step"] = u.Value(s, &e.Field, fields.Value{Number: roundStep(step)}, in)
	change, sentence := step*e.NutMMPerUnit, words.MattersFlat
	if slide := step * e.SlideMMPerUnit / response.StepMM; change < leastTold && slide > leastTold {
		change, sentence = slide, words.MattersSlide
	}
	args["Change"] = s.Say(words.MattersUpTo, words.Args{"Change": u.fine(change)})
	if change < leastTold {
		args["Change"] = s.Say(words.MattersUnder, words.Args{"Change": u.fine(leastTold)})
	}
	return s.Say(sentence, args)
}

// roundStep keeps a step from being told with many decimals.
func roundStep(v float64) float64 {
	if v > 20 {
		return float64(int(v + 0.5))
	}
	return v
}

// KnownNow tells what a number's present plus-or-minus comes to, in the answer; "" of
// one that has none.
func KnownNow(s words.Speaker, u Units, in fields.Inches, e *sensitivity.Effect) string {
	if !(e.Plus > 0) {
		return ""
	}
	return s.Say(words.MattersNow, words.Args{"Plus": u.Value(s, &e.Field, fields.Value{Number: e.Plus}, in), "Percent": u.Plain(100*e.Now, 1)})
}
