package window

// This file gauges and plans by keyboard: what is typed is what the estimate
// goes by, and what was planned is what is recorded.

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
)

// eight readings as a mate calls them, in few keys.
var eight = []string{"12 8/10", "4/5", "1.5", "1.5", "2", "5", "8", "8/10"}

func call(w *Window, lines ...string) (keys int) {
	for _, line := range lines {
		test.Type(w.gauging.entry, line)
		w.gauging.entry.OnSubmitted(w.gauging.entry.Text)
		keys += len(line) + 1
	}
	return keys
}

func TestEightReadingsInFewKeys(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	if keys := call(w, eight...); keys >= 40 {
		t.Errorf("%d keys for eight readings", keys)
	}
	d := w.history.Now()
	if len(d.Visit.Events) != 1 || len(d.Visit.Events[0].Gauging.Readings) != 8 {
		t.Fatalf("%+v", d.Visit.Events)
	}
	if leaf := d.Visit.Events[0].Gauging.Readings[3].(visit.Leaf); leaf.ClockDeg != 135 || leaf.Goes.Thou() != 1.5 || leaf.Stops.Thou() != 2 {
		t.Errorf("the fourth reading is %+v", leaf)
	}
	e := w.mind.estimate
	if e == nil || e.Verdict != gauge.Outside || !strings.Contains(w.gauging.estimate.Text, "outside") {
		t.Fatalf("estimate %+v, shown %q", e, w.gauging.estimate.Text)
	}
	// The faces show the engine as found.
	if got := w.now.result.Gap.SpreadMM() / 0.0254; got < 7.5 || got > 10 {
		t.Errorf("the faces show %.1f thou", got)
	}
	if !strings.Contains(w.gauging.asked.Text, "12") {
		t.Errorf("asked for %q after a whole round", w.gauging.asked.Text)
	}
}

func TestBadEntryChangesNothing(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	for _, line := range []string{"", "quarter past", "12 4/3", "13 3/4", "12 3/4 5", "-1", "NaN", "12 -/-"} {
		w.gauging.entry.OnSubmitted(line)
		if w.history.CanUndo() != nil {
			t.Errorf("%q was recorded", line)
		}
	}
}

func TestPlanIsRecordedAndUndone(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	call(w, eight...)
	w.enter(stageMove)
	p := w.mind.plan
	if p == nil {
		t.Fatal("no plan")
	}
	d := w.history.Now()
	if !strings.HasPrefix(w.moving.text.Text, "The whole plan: ") || !w.moving.done.Visible() {
		t.Fatalf("shown: %q", w.moving.text.Text)
	}
	if w.faces.What.Planned == nil || w.picture.State.Planned == nil {
		t.Error("the plan is not drawn")
	}
	w.moving.record()
	d = w.history.Now()
	last := d.Visit.Events[len(d.Visit.Events)-1].Move
	if last == nil || w.mind.step() != nil || !w.moving.gauge.Visible() {
		t.Fatal("no move recorded, or not asked to gauge again")
	}
	for i, m := range d.Hull.Mounts {
		if last.NutFlats[m.Name] != float64(p.NutFlats[i]) || last.SlideMM[m.Name] != p.SlideMM[i] {
			t.Errorf("%s: recorded %v and %v, planned %d and %v", m.Name, last.NutFlats[m.Name], last.SlideMM[m.Name], p.NutFlats[i], p.SlideMM[i])
		}
	}
	if w.mind.estimate.Status != gauge.Moved {
		t.Errorf("after a move: %v", w.mind.estimate.Status)
	}
	w.undo()
	if n := len(w.history.Now().Visit.Events); n != 1 {
		t.Errorf("%d events after undo", n)
	}
}

func TestWorkedVisitsOpen(t *testing.T) {
	w := opened(t, "Kittiwake")
	for _, name := range w.top.visits.Options {
		w.openVisit(name)
		if w.stage != stageGauge || w.mind.estimate == nil || w.gauging.estimate.Text == "" {
			t.Errorf("%s: stage %v, estimate %v", name, w.stage, w.mind.estimate)
		}
	}
}

// TestLookOverByKeys goes through every check by keys and back by undo.
func TestLookOverByKeys(t *testing.T) {
	w := opened(t, "Avocet")
	w.enter(stageLook)
	d := w.history.Now()
	checks := job.LookOver(&d.Hull, &d.Visit)
	keys := []rune{'y', 'z', 'k'}
	for i := range checks {
		w.picture.TypedRune(keys[i%3])
	}
	d = w.history.Now()
	if got := len(d.Visit.LookOver); got != len(checks) {
		t.Fatalf("%d findings of %d checks", got, len(checks))
	}
	for i, f := range d.Visit.LookOver {
		if want := lookKeys[keys[i%3]]; f.Check != checks[i].ID || f.Finding != want {
			t.Errorf("finding %d: %+v, want %s %s", i, f, checks[i].ID, want)
		}
	}
	w.enter(stageGauge)
	if failed := checks[1].Title.Say(w.speaker, w.units()); !w.standing.Visible() || !strings.Contains(w.standing.Text, failed) {
		t.Errorf("%q failed, and gauging shows %q", failed, w.standing.Text)
	}
	w.enter(stageHandOver)
	if !strings.Contains(w.handing.standing.Text, w.speaker.Say(words.HandOverProvisional, nil)) {
		t.Errorf("with failed checks, handed over as: %q", w.handing.standing.Text)
	}
	for range checks {
		w.undo()
	}
	if w.history.CanUndo() != nil || len(w.history.Now().Visit.LookOver) > 0 {
		t.Error("undo leaves findings")
	}
}

// TestFasteningNamesWhoPulled: a visit whose readings changed with tightening.
func TestFasteningNamesWhoPulled(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	call(w, "12 -/1", "-/1", "-/1", "-/1", "-/1", "-/1", "-/1", "-/1")
	w.enter(stageFasten)
	w.do(&visit.RecordFastening{Fasten: visit.Fasten{What: "fore port"}})
	w.enter(stageGauge)
	call(w, "12 5/6", "4/5", "3/4", "1/2", "-/1", "1/2", "3/4", "5/6")
	w.enter(stageFasten)
	named := false
	for _, m := range w.history.Now().Hull.Mounts {
		named = named || strings.Contains(w.fastening.pulled.text.Text, m.Name)
	}
	if !named {
		t.Errorf("a gap 5 thou wide after tightening, and no mount named: %q", w.fastening.pulled.text.Text)
	}
}

// TestLanguageChanges everything written, and back.
func TestLanguageChanges(t *testing.T) {
	w := opened(t, "Kittiwake")
	if n := len(words.Languages()); n < 2 {
		t.Fatalf("%d languages", n)
	}
	english := w.stageStrip.buttons[stageGauge].Text
	for _, tag := range words.Languages() {
		w.speak(tag)
		if got, want := w.stageStrip.buttons[stageGauge].Text, words.In(tag).Say(words.StageGauge, nil); got != want {
			t.Errorf("%s: %q, want %q", tag, got, want)
		}
		w.enter(stageLook)
		w.enter(stageTry)
	}
	w.speak("en")
	if got := w.stageStrip.buttons[stageGauge].Text; got != english {
		t.Errorf("back in English: %q", got)
	}
}
