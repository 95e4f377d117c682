package window

// This file tests what is said of edits, and of a result that is not within its
// rule.

import (
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
)

func TestWhatWasTightenedIsSaidInTheLanguage(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.speak("de")
	for want, f := range map[string]visit.Fasten{
		"Kupplungsschrauben, Runde 2 festgezogen":         {What: "coupling bolts", Kind: visit.FastenedCouplingBolts, Round: 2},
		"Klemmungen von BB vorn und STB vorn festgezogen": {What: "clamps", Kind: visit.FastenedClamps, Mounts: []string{"fore port", "fore starboard"}},
		"gelöst: BB achtern":                              {What: "x", Kind: visit.Slackened, Mounts: []string{"aft port"}},
		"alte Schelle festgezogen":                        {What: "alte Schelle"},
	} {
		if got := w.describe(&visit.RecordFastening{Fasten: f}); got != want {
			t.Errorf("said %q, wanted %q", got, want)
		}
	}
}

// A result that nothing keeps provisional is not called final while its verdict is
// not within.
func TestNoFinalWordOnAGapNotWithin(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.do(&visit.SetState{State: visit.State{Boat: "afloat", HoursSinceLaunch: visit.Known(100), MountAgeMonths: visit.Known(30)}})
	d := w.history.Now()
	for _, c := range job.LookOver(&d.Hull, &d.Visit) {
		w.do(&visit.LookOver{Finding: visit.Finding{Check: c.ID, Finding: "good"}})
	}
	for verdict, leaf := range map[gauge.Verdict]float64{gauge.Within: 1.5, gauge.Outside: 12} {
		g := visit.Gauging{Held: "seated", HeldBy: "hand"}
		for deg := 0.0; deg < 360; deg += 45 {
			r := visit.Leaf{ClockDeg: deg, Stops: visit.Thou(1.5)}
			if deg == 0 && verdict == gauge.Outside {
				r = visit.Leaf{ClockDeg: deg, Goes: visit.Thou(leaf), Stops: visit.Thou(leaf + 1)}
			} else if verdict == gauge.Outside && (deg < 90 || deg > 270) {
				r = visit.Leaf{ClockDeg: deg, Goes: visit.Thou(10), Stops: visit.Thou(12)}
			} else if verdict == gauge.Outside && (deg == 90 || deg == 270) {
				r = visit.Leaf{ClockDeg: deg, Goes: visit.Thou(6), Stops: visit.Thou(8)}
			}
			g.Readings = append(g.Readings, r)
		}
		w.do(&visit.BeginGauging{Gauging: g})
		g.ShaftTurnDeg, g.FlangeTurnDeg = 180, 180 // which tells run-out from it
		w.do(&visit.BeginGauging{Gauging: g})
		w.enter(stageHandOver)
		final := strings.Contains(w.handing.standing.Text, w.speaker.Say(words.HandOverFinal, nil))
		if e := w.mind.estimate; e.Verdict != verdict || final != (verdict == gauge.Within) {
			t.Errorf("%s (wanted %s): told %q", e.Verdict, verdict, w.handing.standing.Text)
		}
		w.undo()
		w.undo()
	}
}

// At another stage the line under the faces does not go on about what was done at the
// stage before.
func TestTheLineUnderTheFacesIsOfTheStage(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.openVisit("burr")
	if w.sentence.Text == "" {
		t.Error("a visit opened is not told")
	}
	w.enter(stageMove)
	if w.sentence.Text != w.speaker.Say(words.ArrivedMove, nil) {
		t.Errorf("on arriving: %q", w.sentence.Text)
	}
	w.do(&visit.SetDate{Date: "2026-06-01"})
	if w.sentence.Text == w.speaker.Say(words.ArrivedMove, nil) {
		t.Error("an edit at the stage is not told")
	}
}
