package say

// This file says what was done in practice, and what came of it.

import (
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/practice"
)

// Grade says what a grade of practice is about.
func Grade(s words.Speaker, g practice.Grade) string {
	return s.Say(words.Of("practice_grade", string(g)), nil)
}

// PracticeCause says what was wrong beside the engine's place.
func PracticeCause(s words.Speaker, c practice.Cause) string {
	return s.Say(words.Of("practice_cause", string(c)), nil)
}

// Tally says how much work something was.
func Tally(s words.Speaker, u Units, h *hulls.Hull, t practice.Tally) string {
	id := words.PracticeTally
	if h.Mounts[0].Kind == hulls.Solid {
		id = words.PracticeTallySolid
	}
	return s.Say(id, words.Args{"Minutes": u.Plain(t.Minutes, 0), "Readings": t.Readings, "Flats": t.Steps, "Rounds": t.Rounds})
}

// Act says what was done, and what it told.
func Act(s words.Speaker, u Units, h *hulls.Hull, a practice.Act, told practice.Told) string {
	switch {
	case a.Gauge != nil:
		return s.Say(words.PracticeDidGauge, words.Args{"Held": string(a.Gauge.Held), "Shaft": u.Plain(a.Gauge.ShaftTurnDeg, 0), "Flange": u.Plain(a.Gauge.FlangeTurnDeg, 0)})
	case a.Read != nil, a.Leaf != nil:
		return leafRead(s, u, told.Reading)
	case a.Clean != nil && told.Burr:
		return s.Say(words.PracticeDidBurr, words.Args{"Clock": Clock(a.Clean.ClockDeg, false)})
	case a.Clean != nil:
		return s.Say(words.PracticeDidClean, words.Args{"Clock": Clock(a.Clean.ClockDeg, false)})
	case a.Turn != nil && told.Stuck != "":
		return s.Say(words.PracticeDidStuck, words.Args{"Mount": s.Part(told.Stuck)})
	case a.Turn != nil:
		steps, slides := make([]float64, len(h.Mounts)), make([]float64, len(h.Mounts))
		for i, m := range h.Mounts {
			steps[i], slides[i] = float64(a.Turn.NutFlats[m.Name]), a.Turn.SlideMM[m.Name]
		}
		return s.Say(words.PracticeDidTurn, words.Args{"Move": strings.Join(Turns(s, u, h, steps, slides), "; ")})
	case a.Fasten != nil:
		return s.Say(words.PracticeDidTighten, nil)
	case a.HandOver != nil:
		return s.Say(words.PracticeDidHandOver, words.Args{"Cause": PracticeCause(s, a.HandOver.Cause)})
	}
	return ""
}

// leafRead says what was read at one place, in full.
func leafRead(s words.Speaker, u Units, r visit.Leaf) string {
	args := words.Args{"Clock": strings.TrimSuffix(visit.ClockText(r.ClockDeg, visit.LookingForward), ":00"),
		"Goes": u.Thickness(r.Goes.MM()), "Stops": u.Thickness(r.Stops.MM())}
	switch {
	case !r.Goes.Given():
		return s.Say(words.PracticeReadUnder, args)
	case !r.Stops.Given():
		return s.Say(words.PracticeReadOver, args)
	}
	return s.Say(words.PracticeReadBoth, args)
}

// Debrief says what came of a piece of practice: in line or not, what was wrong,
// the work beside the tool's, and where the thinking went astray.
func Debrief(s words.Speaker, u Units, h *hulls.Hull, d *practice.Debrief) []string {
	thou := func(v float64) string { return u.GapWithUnit(v * MMPerThou) }
	id := words.PracticePassed
	switch {
	case d.Passed:
	case d.LeftThou <= practice.PassThou():
		id = words.PracticeLoose
	default:
		id = words.PracticeFailed
	}
	lines := []string{s.Say(id, words.Args{"Left": thou(d.LeftThou), "Found": thou(d.FoundThou), "Limit": u.LeafWithUnit(visit.DefaultRule.Limit.MM())})}
	id = words.PracticeCauseMissed
	if d.CauseFound {
		id = words.PracticeCauseRight
	}
	lines = append(lines, s.Say(id, words.Args{"Cause": PracticeCause(s, d.Cause)}),
		s.Say(words.PracticeYours, words.Args{"Tally": Tally(s, u, h, d.Yours)}),
		s.Say(words.PracticeTools, words.Args{"Tally": Tally(s, u, h, d.Tools)}), s.Say(words.PracticeToolsWhy, nil))
	if len(d.Mistakes) == 0 {
		return append(lines, s.Say(words.PracticeNoMistakes, nil))
	}
	lines = append(lines, s.Say(words.PracticeMistakes, nil))
	for _, m := range d.Mistakes {
		text := Mistake(s, u, m)
		if m.Act >= 0 {
			text = s.Say(words.PracticeAtAct, words.Args{"Number": m.Act + 1, "Text": text})
		}
		lines = append(lines, text)
	}
	return lines
}

// Mistake says what went astray.
func Mistake(s words.Speaker, u Units, m practice.Mistake) string {
	var at []string
	for _, name := range m.Mounts {
		at = append(at, s.Part(name))
	}
	return s.Say(words.Of("practice_mistake", string(m.Kind)), words.Args{"Size": u.GapWithUnit(m.Thou * MMPerThou),
		"MM": u.Plain(m.MM, 1), "Mounts": strings.Join(at, ", ")})
}

// Outcome says what came of a piece of practice in a few words, for a list.
func Outcome(s words.Speaker, u Units, d *practice.Debrief) string {
	return s.Say(words.PracticeOutcome, words.Args{"Passed": d.Passed, "Left": u.GapWithUnit(d.LeftThou * MMPerThou),
		"Minutes": u.Plain(d.Yours.Minutes, 0), "ToolMinutes": u.Plain(d.Tools.Minutes, 0), "Mistakes": len(d.Mistakes)})
}
