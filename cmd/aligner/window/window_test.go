package window

// This file tests the window without a screen: a drag, keys and undo come to
// what the mechanics say.

import (
	"fmt"
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"aligner/assets"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/report/say"
	"aligner/scene"
)

func openHull(name string) ([]byte, hulls.Hull, error) {
	data, _ := assets.Hull(name)
	h, err := hulls.Parse(data, name)
	return data, h, err
}

// opened is a window on a built-in boat, drawn once.
func opened(t *testing.T, name string) *Window {
	t.Helper()
	_, h, err := openHull(name)
	if err != nil {
		t.Fatal(err)
	}
	return openedOn(t, name, h)
}

// openedOn is a window on a boat that no file may hold.
func openedOn(t *testing.T, name string, h hulls.Hull) *Window {
	t.Helper()
	app := test.NewTempApp(t)
	win := test.NewTempWindow(t, nil)
	w, err := New(win, app.Preferences(), name, h, openHull)
	if err != nil {
		t.Fatal(err)
	}
	// The library's test driver calls back on any goroutine: plan at once instead.
	w.mind.aside = func(work, rest func()) { work(); rest() }
	win.Resize(fyne.NewSize(1280, 800))
	w.picture.Paint(800, 640)
	t.Cleanup(w.picture.Close) // pictures are large, and their shadows dear
	return w
}

// spreadOf is what the mechanics say of lifts, worked out afresh.
func spreadOf(t *testing.T, name string, liftMM []float64) string {
	t.Helper()
	_, h, err := openHull(name)
	if err != nil {
		t.Fatal(err)
	}
	d, err := kinematics.Prepare(h)
	if err != nil {
		t.Fatal(err)
	}
	var r kinematics.Result
	if err := d.Solve(&kinematics.State{Held: kinematics.Seated, LiftMM: liftMM}, &r); err != nil {
		t.Fatal(err)
	}
	return say.Units{}.GapWithUnit(r.Gap.SpreadMM())
}

// dragHandle takes a handle and drags it by so many pixels.
func dragHandle(t *testing.T, w *Window, id scene.HandleID, dx, dy float64) {
	t.Helper()
	p := w.picture
	pw, ph := p.PixelSize()
	var at scene.Handle
	for _, h := range p.Model().Handles() {
		if h.ID == id {
			at = h
		}
	}
	x, y, _, ok := p.Model().Camera(p.State.View).Project(pw, ph, at.At)
	if !ok {
		t.Fatal("the handle is out of the picture")
	}
	place := func(x, y float64) fyne.Position {
		s := p.Size()
		return fyne.NewPos(float32(x)*s.Width/float32(pw), float32(y)*s.Height/float32(ph))
	}
	p.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: place(x, y)}, Button: desktop.MouseButtonPrimary})
	if p.State.Active != at.ID {
		t.Fatalf("took handle %d, want %d", p.State.Active, at.ID)
	}
	for i := 1.0; i <= 4; i++ {
		p.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: place(x+dx*i/4, y+dy*i/4)}})
	}
	p.DragEnd()
	p.MouseUp(nil)
}

func TestADragIsOneEditAndComesToWhatTheMechanicsSay(t *testing.T) {
	w := opened(t, "Eider")
	start := w.faces.Spread(w.units())
	dragHandle(t, w, scene.HandleOf(0, scene.Vertical), 0, -40)
	d := w.history.Now()
	steps := d.Trial.Steps[0]
	if steps < 1 || steps != math.Round(steps) {
		t.Fatalf("dragged up to %v flats: wanted whole ones, up", steps)
	}
	lifts := make([]float64, len(d.Hull.Mounts))
	lifts[0] = d.LiftMM(0)
	if got, want := w.faces.Spread(w.units()), spreadOf(t, "Eider", lifts); got != want {
		t.Errorf("the faces show %s, the mechanics say %s", got, want)
	}
	w.undo()
	if got := w.faces.Spread(w.units()); got != start || w.history.CanUndo() != nil {
		t.Errorf("undo shows %s, began with %s", got, start)
	}
	// The keys do the same.
	for range int(steps) {
		w.picture.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	}
	if got := w.history.Now().Trial.Steps[0]; got != steps {
		t.Errorf("keys turned %v flats, the mouse %v", got, steps)
	}
	if got, want := w.faces.Spread(w.units()), spreadOf(t, "Eider", lifts); got != want {
		t.Errorf("by keys the faces show %s, the mechanics say %s", got, want)
	}
}

// A slide dragged goes to port with the hand in quarters of a millimetre.
func TestASlideIsDraggedToo(t *testing.T) {
	w := opened(t, "Eider")
	id := scene.HandleOf(1, scene.Sideways)
	h := w.picture.Model().Handles()[int(id)-1]
	pw, ph := w.picture.PixelSize()
	to := scene.MMToDrag(h, 1.1, w.picture.Model().Camera(w.picture.State.View), pw, ph, w.picture.State.Exaggeration)
	dragHandle(t, w, id, to.X, to.Y)
	if got := w.history.Now().Trial.SlideMM[1]; got != 1 {
		t.Errorf("slid %v mm, want 1", got)
	}
}

func TestNumberFieldsTakeCommaAndPointAndRefuseWords(t *testing.T) {
	w := opened(t, "Wren")
	row := &w.sheet.rows[1]
	row.steps.OnSubmitted("1,5")
	if got := w.history.Now().Trial.Steps[1]; got != 1.5 {
		t.Errorf("1,5 came to %v", got)
	}
	row.slide.OnSubmitted("-0.75")
	if got := w.history.Now().Trial.SlideMM[1]; got != -0.75 {
		t.Errorf("-0.75 came to %v", got)
	}
	row.steps.OnSubmitted("two")
	if got := w.history.Now().Trial.Steps[1]; got != 1.5 || row.steps.Text != "1.5" {
		t.Errorf("a word changed it to %v, field %q", got, row.steps.Text)
	}
}

func TestOpeningAnotherBoatCanBeUndone(t *testing.T) {
	w := opened(t, "Eider")
	w.openBoat("Cormorant")
	if w.boat.hull.Name != "Cormorant" || len(w.sheet.rows) != 6 {
		t.Fatalf("shows %s with %d rows", w.boat.hull.Name, len(w.sheet.rows))
	}
	w.undo()
	if w.boat.hull.Name != "Eider" || len(w.sheet.rows) != 4 {
		t.Errorf("undo shows %s with %d rows", w.boat.hull.Name, len(w.sheet.rows))
	}
}

// The clock is turned by a key; what is stored stays.
func TestLookingAftTurnsTheViewAlone(t *testing.T) {
	w := opened(t, "Eider")
	w.picture.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	before := w.faces.What
	w.picture.TypedRune('f')
	now := w.faces.What.Now
	if !w.faces.Style.LookingAft || math.Abs(now.CosMM-before.Now.CosMM)+math.Abs(now.SinMM-before.Now.SinMM) > 1e-9 {
		t.Errorf("looking aft %v, gap %+v, was %+v", w.faces.Style.LookingAft, now, before.Now)
	}
}

// The lever and power at the window are edits like any other.
func TestLeverAndPowerAreEdits(t *testing.T) {
	w := opened(t, "Wren")
	w.top.lever.SetChecked(true)
	w.change(func(s *Settings) { s.Metric = true })
	w.sheet.thrust.OnSubmitted("1000")
	w.sheet.torque.OnSubmitted("300")
	d := w.history.Now()
	if !d.Trial.LeverOn || d.Trial.ThrustN != 1000 || d.Trial.TorqueNM != 300 {
		t.Errorf("came to %+v", d.Trial)
	}
	w.undo()
	w.undo()
	w.undo()
	if d := w.history.Now(); w.top.lever.Checked || d.Trial.ThrustN != 0 || d.Trial.LeverOn {
		t.Errorf("undo left %+v", d.Trial)
	}
}

func TestSettingsComeBack(t *testing.T) {
	app := test.NewTempApp(t)
	s := DefaultSettings()
	s.Metric, s.LookingAft, s.Dark, s.NoMotion, s.TextSize, s.Exaggeration, s.Boat = true, true, true, true, 1.4, 200, "Wren"
	s.Save(app.Preferences())
	if got := Load(app.Preferences()); got != s {
		t.Errorf("kept %+v, came back %+v", s, got)
	}
	app.Preferences().SetFloat("exaggeration", 1e9)
	if got := Load(app.Preferences()).Exaggeration; got != DefaultSettings().Exaggeration {
		t.Errorf("an exaggeration of 1e9 came back as %v", got)
	}
}

// A hanging shaft limits the exaggeration, and what is written is what is drawn.
func TestAHangingShaftLimitsTheExaggeration(t *testing.T) {
	w := opened(t, "Avocet")
	w.change(func(s *Settings) { s.Exaggeration = MostExaggeration })
	if w.picture.State.Exaggeration != MostExaggeration || w.bottom.times.Text != "movement x 500" {
		t.Errorf("seated: drawn x %v, written %q", w.picture.State.Exaggeration, w.bottom.times.Text)
	}
	w.bottom.held.SetSelected("hanging")
	n := w.picture.State.Exaggeration
	if n >= MostExaggeration || w.bottom.times.Text != fmt.Sprintf("movement x %.0f", n) {
		t.Errorf("hanging: drawn x %v, written %q", n, w.bottom.times.Text)
	}
}

func TestUndoSaysWhatItUndid(t *testing.T) {
	w := opened(t, "Eider")
	w.picture.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	w.bottom.held.SetSelected("bolted")
	for _, want := range []string{"Undone: shaft bolted.", "Undone: fore port up 1 flat.", "Nothing more that way."} {
		w.undo()
		if w.sentence.Text != want {
			t.Errorf("says %q, want %q", w.sentence.Text, want)
		}
	}
	w.redo()
	if want := "Done again: fore port up 1 flat."; w.sentence.Text != want {
		t.Errorf("says %q, want %q", w.sentence.Text, want)
	}
}

// What cannot be worked out is told, and never shown as a gap of nought.
func TestNoAnswerIsNotShownAsANumber(t *testing.T) {
	w := opened(t, "Eider")
	w.sheet.rows[0].slide.OnSubmitted("3")
	w.sheet.rows[1].slide.OnSubmitted("-3")
	w.top.lever.SetChecked(true) // no lever can do that to a rigid engine
	if w.now.err == nil || w.sentence.Text != w.now.err.Error() {
		t.Errorf("says %q of %v", w.sentence.Text, w.now.err)
	}
	if !math.IsNaN(w.faces.What.Now.G0MM) || w.title != "aligner: Eider" {
		t.Errorf("faces show %+v, the title %q", w.faces.What.Now, w.title)
	}
	w.undo()
	if w.now.err != nil || math.IsNaN(w.faces.What.Now.G0MM) {
		t.Errorf("undo leaves %v", w.now.err)
	}
}

// A refused edit leaves every control as the document has it.
func TestARefusedEditPutsTheControlBack(t *testing.T) {
	w := opened(t, "Bench")
	row := &w.sheet.rows[0]
	row.steps.SetText("1e9")
	row.steps.OnSubmitted("1e9")
	if row.steps.Text != "0" || w.history.CanUndo() != nil {
		t.Errorf("the field says %q", row.steps.Text)
	}
}

// A handle carried there and back again is no edit.
func TestADragThereAndBackIsNoEdit(t *testing.T) {
	w := opened(t, "Eider")
	dragHandle(t, w, scene.HandleOf(0, scene.Vertical), 0, 0)
	if e := w.history.CanUndo(); e != nil {
		t.Errorf("recorded %v", e)
	}
}
