package window

// This file tests moving beside the plan: a boat that answers otherwise, what was
// done otherwise, what is stuck, what is tried, and the way back.

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/kinematics/response"
)

// TestABoatThatAnswersLess: a jam nut is still tight, and only a third of the
// move comes. The tool says so with its share, plans by what it learnt, and ends
// within.
func TestABoatThatAnswersLess(t *testing.T) {
	m := aboard(t, "first-job")
	m.given = 0.3
	m.press(fyne.KeyF5)
	told := m.w.mind.plan.Expected.MeanMM
	for m.w.mind.step() != nil {
		m.keys("y")
	}
	m.gauge(m.round()...)
	if e := m.w.mind.estimate; e.Verdict != gauge.Outside {
		t.Fatalf("with a third of the move: %s, the plan told %v and %v came", e.Verdict, told, e.Gap.MeanMM)
	}
	m.press(fyne.KeyF5)
	learnt := m.w.mind.plan.Learnt
	if len(learnt.Answers) != 1 || !learnt.Answers[0].Off() {
		t.Fatalf("answers %+v", learnt.Answers)
	}
	if share := learnt.Answers[0].Share; share < 0.15 || share > 0.45 {
		t.Errorf("the boat gave 0.3 of what the model says, told as %.2f", share)
	}
	said := m.w.moving.learnt
	for _, want := range []string{"% of what was expected of", words.In("en").Say(words.Of("learn", string(response.JamNutTight)), nil)} {
		if !said.Visible() || !strings.Contains(said.Text, want) {
			t.Errorf("%q is not said: %q", want, said.Text)
		}
	}
	if !said.TextStyle.Bold {
		t.Error("it is not set off")
	}
	// The next plan turns more flats than the model alone would ask for.
	fresh := m.w.history.Now().Visit
	fresh.Events = fresh.Events[len(fresh.Events)-1:]
	e, err := m.w.mind.model.Estimate(&fresh)
	if err != nil {
		t.Fatal(err)
	}
	alone, err := m.w.mind.planner.Plan(&fresh, e, plan.Settings{})
	if err != nil {
		t.Fatal(err)
	}
	if a, b := flatsIn(m.w.mind.plan.NutFlats), flatsIn(alone.NutFlats); a <= b {
		t.Errorf("having learnt it turns %d flats, the model alone %d", a, b)
	}
	m.moveUntilWithin()
}

func flatsIn(list []int) (sum int) {
	for _, n := range list {
		sum += max(n, -n)
	}
	return sum
}

// TestDoneOtherwise: what was really done is recorded, the rest is planned from
// there, and undo leads back to the plan as it was.
func TestDoneOtherwise(t *testing.T) {
	m := aboard(t, "v-drive")
	m.press(fyne.KeyF5)
	whole := m.w.mind.plan
	events := len(m.w.history.Now().Visit.Events)
	m.keys("q")
	form := m.w.moving.form
	if !form.box.Visible() || m.w.win.Canvas().Focused() != fyne.Focusable(form.flats[0]) {
		t.Fatal("the form does not open")
	}
	form.flats[0].SetText("")
	m.keys("two")
	m.press(fyne.KeyReturn)
	if len(m.w.history.Now().Visit.Events) != events || !strings.Contains(m.w.sentence.Text, "two") {
		t.Errorf("a word was taken for a number; told %q", m.w.sentence.Text)
	}
	form.flats[0].SetText("")
	m.keys("2,5")
	m.press(fyne.KeyReturn)
	d := m.w.history.Now()
	last := d.Visit.Events[len(d.Visit.Events)-1].Move
	if len(d.Visit.Events) != events+1 || last == nil || last.NutFlats[d.Hull.Mounts[0].Name] != 2.5 || form.box.Visible() {
		t.Fatalf("recorded %+v", last)
	}
	if !m.w.mind.anew || m.w.mind.step() == nil || !strings.Contains(m.w.moving.text.Text, m.w.speaker.Say(words.MoveReplanned, nil)) {
		t.Errorf("not planned anew: %q", m.w.moving.text.Text)
	}
	m.w.undo()
	if m.w.mind.anew || m.w.mind.stepsDone != 0 || flatsIn(m.w.mind.plan.NutFlats) != flatsIn(whole.NutFlats) {
		t.Error("undo does not lead back to the plan")
	}
	m.keys("q")
	m.press(fyne.KeyEscape)
	if form.box.Visible() || m.w.win.Canvas().Focused() != fyne.Focusable(m.w.picture) {
		t.Error("Escape does not leave the form")
	}
}

// TestStepsAreTickedAndUndone: each tick is one move, and each undo takes one
// back.
func TestStepsAreTickedAndUndone(t *testing.T) {
	m := aboard(t, "v-drive")
	m.press(fyne.KeyF5)
	n := len(m.w.mind.plan.Steps)
	events := len(m.w.history.Now().Visit.Events)
	for k := range n {
		if m.w.mind.stepsDone != k {
			t.Fatalf("%d steps done, want %d", m.w.mind.stepsDone, k)
		}
		if got := m.w.picture.State.Turns; len(got) == 0 || m.w.faces.What.Planned == nil {
			t.Fatalf("step %d is not drawn", k+1)
		}
		m.keys("y")
	}
	if got := len(m.w.history.Now().Visit.Events); got != events+n {
		t.Errorf("%d events for %d steps", got-events, n)
	}
	m.keys("y") // nothing left to tick
	if got := len(m.w.history.Now().Visit.Events); got != events+n {
		t.Errorf("a tick too many was recorded")
	}
	for k := n - 1; k >= 0; k-- {
		m.w.undo()
		if m.w.mind.stepsDone != k {
			t.Fatalf("after undo %d steps done, want %d", m.w.mind.stepsDone, k)
		}
	}
}

// TestAStuckNutIsLeftOut of the plan as soon as it is told, and used again when
// it is free.
func TestAStuckNutIsLeftOut(t *testing.T) {
	m := aboard(t, "v-drive")
	m.press(fyne.KeyF5)
	mount := 0
	for m.w.mind.plan.NutFlats[mount] == 0 {
		mount++
	}
	name := m.w.boat.hull.Mounts[mount].Name
	m.keys(string(rune('1'+mount)) + "k")
	d := m.w.history.Now()
	if d.Visit.Found(name).Nut != visit.Stuck || m.w.mind.plan.NutFlats[mount] != 0 || !m.w.moving.stuck.nuts[mount].Checked {
		t.Errorf("%s told stuck: %+v, planned %v", name, d.Visit.Found(name), m.w.mind.plan.NutFlats)
	}
	m.keys("k")
	if d = m.w.history.Now(); d.Visit.Found(name).Nut != visit.Free || m.w.mind.plan.NutFlats[mount] == 0 {
		t.Errorf("%s free again: %+v, planned %v", name, d.Visit.Found(name), m.w.mind.plan.NutFlats)
	}
}

// TestATryBesideThePlan is weighed while it is tried, and taken as done by one
// key and one undo.
func TestATryBesideThePlan(t *testing.T) {
	m := aboard(t, "first-job")
	m.press(fyne.KeyF5)
	columns := m.w.moving.tried.figures.columns
	line := func(column int) string { return strings.Split(columns[column].Text, "\n")[1] }
	if line(3) != "-" || line(2) == "-" || line(1) == line(2) {
		t.Errorf("chance now %s, planned %s, tried %s", line(1), line(2), line(3))
	}
	m.keys("z")
	events := len(m.w.history.Now().Visit.Events)
	m.keys("1")
	m.press(fyne.KeyUp)
	m.press(fyne.KeyUp)
	if line(3) == "-" || !m.w.moving.tried.done.Visible() {
		t.Errorf("two flats tried and not weighed: %q", columns[3].Text)
	}
	if got := strings.Split(columns[3].Text, "\n")[0]; got == "0" || got == "-" {
		t.Errorf("two flats take %s minutes", got)
	}
	m.keys("z")
	d := m.w.history.Now()
	if len(d.Visit.Events) != events+1 || d.Visit.Events[events].Move.NutFlats[d.Hull.Mounts[0].Name] != 2 || d.Trial.Steps[0] != 0 {
		t.Errorf("recorded %+v, still tried %v", d.Visit.Events[len(d.Visit.Events)-1].Move, d.Trial.Steps)
	}
	m.w.undo()
	if d = m.w.history.Now(); len(d.Visit.Events) != events || d.Trial.Steps[0] != 2 {
		t.Errorf("after undo %d events, tried %v", len(d.Visit.Events), d.Trial.Steps)
	}
}

// TestBackToAsFound: all moves of the visit undone on the boat leave nothing
// moved and the engine where it was found.
func TestBackToAsFound(t *testing.T) {
	m := aboard(t, "v-drive")
	m.press(fyne.KeyF5)
	found := append([]float64(nil), m.w.mind.liftMM...)
	if m.w.moving.back.done.Visible() {
		t.Error("nothing moved, and a way back")
	}
	m.keys("yy")
	if !m.w.moving.back.done.Visible() || !strings.Contains(m.w.moving.back.text.Text, "seen from above") {
		t.Errorf("the way back is told as %q", m.w.moving.back.text.Text)
	}
	m.w.moving.back.done.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	d := m.w.history.Now()
	if net := d.Visit.Net(); len(net.NutFlats)+len(net.SlideMM) > 0 || m.w.moving.back.done.Visible() {
		t.Errorf("left moved: %+v", net)
	}
	for i := range found {
		if off := m.w.mind.liftMM[i] - found[i]; off > 1e-9 || off < -1e-9 {
			t.Errorf("mount %d stands %g mm from where it was found", i, off)
		}
	}
}
