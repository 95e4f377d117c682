package trouble

// This file takes from a visit what it answers already: checks of the look-over,
// the room round the shaft in its bearings, the verdict of its gaugings, run-out
// found by turning.

import (
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
)

// Made are the tests the visit says were made.
func Made(v *visit.Visit) Answers {
	made := Answers{}
	for _, t := range v.Trouble.Tests {
		made[Test(t.Test)] = Answer(t.Answer)
	}
	return made
}

// Told are the tests that the look-over and the estimate (nil: none) answer; a
// test made for itself comes before them, see All.
func Told(d *visit.Document, e *gauge.Estimate) Answers {
	told := Answers{}
	state := map[string]job.State{}
	for _, c := range job.LookOver(&d.Hull, &d.Visit) {
		state[c.ID] = c.State
	}
	for t, trial := range trials {
		switch state[trial.check] {
		case job.Good:
			told[t] = Good
		case job.Failed:
			told[t] = Bad
		}
	}
	if a := marks(&d.Visit); a != "" {
		told[MarksInLine] = a
	}
	for _, b := range job.Wears(&d.Hull, &d.Visit) { // strips tell more than a look
		switch b.Wear {
		case job.Worn, job.WornCrooked:
			told[StripBearing] = Bad
		case job.Even, job.Crooked:
			if told[StripBearing] == "" {
				told[StripBearing] = Good
			}
		}
	}
	if e == nil || e.Status != gauge.Ready {
		return told
	}
	switch e.Verdict {
	case gauge.Within:
		told[GaugeRound] = Good
	case gauge.Outside:
		told[GaugeRound] = Bad
	}
	if turned(&d.Visit) {
		told[TurnQuarters] = Good
		if e.RunOut[0].Untrue || e.RunOut[1].Untrue {
			told[TurnQuarters] = Bad
		}
	}
	return told
}

// turned reports whether the gap was gauged with a half turned.
func turned(v *visit.Visit) bool {
	for _, e := range v.Events {
		if e.Gauging != nil && (e.Gauging.ShaftTurnDeg != 0 || e.Gauging.FlangeTurnDeg != 0) && len(e.Gauging.Readings) > 0 {
			return true
		}
	}
	return false
}

// All are both, what was made before what is told.
func All(made, told Answers) Answers {
	all := Answers{}
	for t, a := range told {
		all[t] = a
	}
	for t, a := range made {
		all[t] = a
	}
	return all
}

// marks is what the marks across nuts and studs tell: bad with one that turned,
// good where every nut looked at stands as it did; "": none was looked at.
func marks(v *visit.Visit) Answer {
	var a Answer
	for _, m := range v.Mounts {
		switch m.Mark {
		case visit.MarkTurned:
			return Bad
		case visit.MarkInLine:
			a = Good
		}
	}
	return a
}
