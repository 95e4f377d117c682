package window

// This file gauges in every other way there is: a reading corrected and taken
// out, a table pasted, places within reach only, marks on the faces, what is kept
// and not used, the lift, results copied.

import (
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
)

func handsOn(t *testing.T, w *Window) *hands { return &hands{t: t, w: w} }

// readings are those of the gauging that goes on.
func (w *Window) readings() []visit.Reading {
	v := w.history.Now().Visit
	if event := lastGauging(&v); event >= 0 {
		return v.Events[event].Gauging.Readings
	}
	return nil
}

func TestAReadingIsCorrectedAndTakenOutByKeys(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.key(fyne.KeyF4)
	for _, line := range []string{"12 8/10", "4/5", "1.5/2"} {
		h.letters(line)
		h.key(fyne.KeyReturn)
	}
	h.key(fyne.KeyUp, fyne.KeyUp)
	if got := w.gauging.entry.Text; got != "1:30 4/5" {
		t.Fatalf("picked %q", got)
	}
	h.key(fyne.KeyBackspace)
	h.letters("6")
	h.key(fyne.KeyReturn)
	if leaf := w.readings()[1].(visit.Leaf); leaf.Stops.Thou() != 6 || leaf.ClockDeg != 45 || len(w.readings()) != 3 {
		t.Errorf("corrected to %+v of %d", leaf, len(w.readings()))
	}
	h.key(fyne.KeyUp)
	w.gauging.entry.TypedShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyDelete, Modifier: fyne.KeyModifierControl})
	if n := len(w.readings()); n != 2 || w.gauging.entry.Text != "" {
		t.Errorf("%d readings, the line holds %q", n, w.gauging.entry.Text)
	}
	w.gauging.entry.TypedShortcut(&fyne.ShortcutUndo{})
	w.gauging.entry.TypedShortcut(&fyne.ShortcutUndo{})
	if leaf := w.readings()[1].(visit.Leaf); leaf.Stops.Thou() != 5 || len(w.readings()) != 3 {
		t.Errorf("undone to %+v of %d", leaf, len(w.readings()))
	}
	// Escape leaves a correction as it was; once more gives the picture the keys.
	h.key(fyne.KeyUp)
	h.letters("9")
	h.key(fyne.KeyEscape)
	if w.gauging.entry.Text != "" || w.gauging.picked >= 0 || w.win.Canvas().Focused() != fyne.Focusable(w.gauging.entry) {
		t.Errorf("after Escape the line holds %q", w.gauging.entry.Text)
	}
	h.key(fyne.KeyEscape)
	if w.win.Canvas().Focused() != fyne.Focusable(w.picture) {
		t.Error("a second Escape leaves the line with the keyboard")
	}
	// By mouse: a reading is taken by pressing on it.
	w.gauging.chips[0].Tapped(nil)
	if w.gauging.entry.Text != "12 8/10" {
		t.Errorf("pressed on the first reading: %q", w.gauging.entry.Text)
	}
}

// paste is Ctrl+V in the line.
func paste(t *testing.T, w *Window, text string) {
	t.Helper()
	c := fyne.CurrentApp().Clipboard()
	c.SetContent(text)
	w.gauging.entry.TypedShortcut(&fyne.ShortcutPaste{Clipboard: c})
}

func TestATableIsPastedWholeOrNotAtAll(t *testing.T) {
	for _, text := range []string{
		"Clock\tGoes\tStops\n12\t8\t10\n1:30\t4\t5\n3\t1.5\t2\n4:30\t1.5\t2\n6\t2\t3\n7:30\t5\t6\n9\t8\t10\n10:30\t8\t10\n",
		"Uhr;geht thou;steht thou\n12;8;10\n1:30;4;5\n3;1,5;2\n4:30;1,5;2\n6;2;3\n7:30;5;6\n9;8;10\n10:30;8;10",
		strings.Join(eight, "\n"),
	} {
		w := opened(t, "Kittiwake")
		w.enter(stageGauge)
		paste(t, w, text)
		if n := len(w.readings()); n != 8 {
			t.Fatalf("%d readings of %q: %s", n, text, w.sentence.Text)
		}
		typed := opened(t, "Kittiwake")
		typed.enter(stageGauge)
		call(typed, eight...)
		if a, b := w.mind.estimate.Gap, typed.mind.estimate.Gap; a != b {
			t.Errorf("pasted %v, typed %v", a, b)
		}
		w.undo()
		if len(w.history.Now().Visit.Events) != 0 {
			t.Error("one undo leaves some of what was pasted")
		}
	}
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	paste(t, w, "12\t8\t10\n13\t4\t5\n3\t2\t1.5")
	if len(w.history.Now().Visit.Events) != 0 || w.history.CanUndo() != nil {
		t.Error("a bad table was taken by half")
	}
	for _, line := range []int{2, 3} {
		if !strings.Contains(w.sentence.Text, w.speaker.Say(words.CalledLine, words.Args{"Line": line, "Fault": ""})) {
			t.Errorf("line %d is not told: %q", line, w.sentence.Text)
		}
	}
	// One line pasted is a line typed.
	paste(t, w, "12 8/10")
	if w.gauging.entry.Text != "12 8/10" {
		t.Errorf("one line pasted: %q", w.gauging.entry.Text)
	}
}

func TestOnlyPlacesWithinReachAreAskedFor(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.key(fyne.KeyF2)
	h.fill("reach", w.beginning.rest.reach, "8-4")
	want := visit.Arc{FromDeg: 240, ToDeg: 120}
	if got := w.history.Now().Visit.Reach; got != want {
		t.Fatalf("reach %v", got)
	}
	h.key(fyne.KeyF4)
	var asked []string
	for range 8 {
		d := w.history.Now()
		deg, _, wanted := w.gauging.askedFor(&d.Visit)
		if !wanted {
			break
		}
		if !want.Reaches(deg) {
			t.Errorf("asked for %v degrees", deg)
		}
		asked = append(asked, w.writePlace(deg))
		h.letters("3/4")
		h.key(fyne.KeyReturn)
	}
	if got := strings.Join(asked, " "); got != "8 9 10:30 12 1:30 3 4" && !strings.HasPrefix(got, "8 9 10:30 12 1:30 3 4 ") {
		t.Errorf("asked for %s", got)
	}
	// Seen from the other end the arc runs the other way round.
	w.change(func(s *Settings) { s.LookingAft = true })
	if got := w.writeArc(want); got != "8-4" {
		t.Errorf("looking aft the arc is written %s", got)
	}
}

func TestReadingsAreDrawnOnTheFaces(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	if n := w.faces.What.NextRad; n == nil || *n != 0 {
		t.Errorf("before any reading the next place is %v", n)
	}
	call(w, "12 8/10", "4/-", "-/1.5")
	m := w.faces.What.Marks
	if len(m) != 3 || math.Abs(m[0].LeastMM-8*0.0254) > 1e-9 || !math.IsInf(m[1].MostMM, 1) || !math.IsInf(m[2].LeastMM, -1) {
		t.Fatalf("marks %+v", m)
	}
	if n := w.faces.What.NextRad; n == nil || math.Abs(*n-135*math.Pi/180) > 1e-9 {
		t.Errorf("the next place is %v", n)
	}
	// Two flat faces cannot be 8 wide at 12, nothing beside it, and wide again:
	// the odd one is marked, in the list too.
	call(w, "1.5", "12/15", "-/1.5", "-/1.5", "-/1.5")
	odd := 0
	for i, m := range w.faces.What.Marks {
		if m.Odd {
			odd++
			if !strings.Contains(w.gauging.chips[i].Text, w.speaker.Say(words.GaugeDoesNotFit, nil)) {
				t.Errorf("crossed on the faces, and in the list %q", w.gauging.chips[i].Text)
			}
		}
	}
	if odd == 0 {
		t.Errorf("no odd reading among %+v", w.faces.What.Marks)
	}
	w.enter(stageMove)
	if len(w.faces.What.Marks) != 0 || w.faces.What.NextRad != nil {
		t.Error("the marks stay when gauging is left")
	}
}

// TestKeptButNotUsed: bolts in, lever on, shaft hanging.
func TestKeptButNotUsed(t *testing.T) {
	for _, c := range []struct {
		what string
		do   func(h *hands, f *holdForm)
	}{
		{"bolts in", func(h *hands, f *holdForm) { h.choose("bolts", f.bolts, f.bolts.Options[1]) }},
		{"lever on", func(h *hands, f *holdForm) { h.choose("lever", f.lever, f.lever.Options[1]) }},
		{"hanging", func(h *hands, f *holdForm) { h.choose("held", f.held, h.say(words.Of("held", "hanging"))) }},
	} {
		w := opened(t, "Kittiwake")
		h := handsOn(t, w)
		h.key(fyne.KeyF4)
		c.do(h, w.gauging.hold)
		h.tabTo("the line", w.gauging.entry)
		for _, line := range eight {
			h.letters(line)
			h.key(fyne.KeyReturn)
		}
		if n := len(w.readings()); n != 8 {
			t.Fatalf("%s: %d readings", c.what, n)
		}
		if e := w.mind.estimate; e.Status != gauge.Nothing {
			t.Errorf("%s: used all the same: %v", c.what, e.Status)
		}
		if !strings.Contains(w.gauging.title.Text, w.speaker.Say(words.GaugeSetAside, nil)) {
			t.Errorf("%s: the title says %q", c.what, w.gauging.title.Text)
		}
		for i, m := range w.faces.What.Marks {
			if !m.Unused || !strings.HasPrefix(w.gauging.chips[i].Text, "(") {
				t.Errorf("%s: reading %d stands as if it were used", c.what, i)
			}
		}
		// Put right, the same readings count.
		f := w.gauging.hold
		h.choose("bolts", f.bolts, f.bolts.Options[0])
		h.choose("lever", f.lever, f.lever.Options[0])
		h.choose("held", f.held, h.say(words.Of("held", "seated")))
		if e := w.mind.estimate; e.Status != gauge.Ready || e.Verdict != gauge.Outside {
			t.Errorf("%s put right: %v %v", c.what, e.Status, e.Verdict)
		}
	}
}

func TestTheLiftIsSaidForAnyHook(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.key(fyne.KeyF4)
	h.choose("held", w.gauging.hold.held, h.say(words.Of("held", "centred")))
	d := w.history.Now()
	usual, err := w.boat.line.Centring(d.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	if text := w.gauging.hold.means.Text; !strings.Contains(text, w.units().Force(usual.HookN)) || !strings.Contains(text, w.units().Force(usual.RuleN)) {
		t.Errorf("wanted %s and the rule's %s: %q", w.units().Force(usual.HookN), w.units().Force(usual.RuleN), text)
	}
	h.fill("hook", w.gauging.hold.hook, "300")
	further, err := w.boat.line.CentringAt(d.Visit.State.Afloat(), -300)
	if err != nil {
		t.Fatal(err)
	}
	if text := w.gauging.hold.means.Text; !strings.Contains(text, w.units().Force(further.HookN)) || further.HookN <= usual.HookN {
		t.Errorf("a hook at 300 mm wants %s: %q", w.units().Force(further.HookN), text)
	}
	h.fill("hook", w.gauging.hold.hook, "9999")
	if text := w.gauging.hold.means.Text; !strings.Contains(text, "9999") {
		t.Errorf("a hook behind the shaft's end: %q", text)
	}
}

func TestResultsAreCopied(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	call(w, eight...)
	w.gauging.entry.TypedShortcut(&desktop.CustomShortcut{KeyName: copyKey, Modifier: fyne.KeyModifierControl})
	text := fyne.CurrentApp().Clipboard().Content()
	if !strings.Contains(text, "12: 8/10") || !strings.Contains(text, "outside") {
		t.Errorf("copied %q", text)
	}
	w.shortcut(&desktop.CustomShortcut{KeyName: copyKey, Modifier: fyne.KeyModifierControl | fyne.KeyModifierShift})
	rows := fyne.CurrentApp().Clipboard().Content()
	if !strings.HasPrefix(rows, "event,what,kind") || strings.Count(rows, "\n1,reading,leaf,") != 8 {
		t.Errorf("copied %q", rows)
	}
}

// TestUnitsAndCommaWhileRunning: what was read in thou is shown in mm with a
// decimal comma, and taken so.
func TestUnitsAndCommaWhileRunning(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	call(w, "12 8/10")
	w.speak("de")
	w.change(func(s *Settings) { s.Metric = true })
	w.enter(stageGauge)
	if got := w.gauging.chips[0].Text; !strings.HasPrefix(got, "12: 0,203/0,254") {
		t.Errorf("shown %q", got)
	}
	call(w, "0,1/0,15")
	leaf, ok := w.readings()[1].(visit.Leaf)
	if !ok || leaf.Goes != visit.MM(0.1) || leaf.Stops != visit.MM(0.15) {
		t.Errorf("read %+v", leaf)
	}
}

// TestOneSeatingOfTwoGaugings: what was not moved between belongs together.
func TestOneSeatingOfTwoGaugings(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.key(fyne.KeyF4)
	h.letters("12 8/10")
	h.key(fyne.KeyReturn)
	if w.gauging.hold.seatBox.Visible() {
		t.Error("a seating before the first is asked for")
	}
	h.tabTo("gauge again", w.gauging.turns.same)
	h.key(fyne.KeyReturn)
	h.letters("6 1.5/2")
	h.key(fyne.KeyReturn)
	f := w.gauging.hold
	h.choose("seating", f.seat, f.seat.Options[1])
	v := w.history.Now().Visit
	if v.SeatingOf(0) != v.SeatingOf(1) || len(v.Events[0].Gauging.Readings) != 1 {
		t.Errorf("seatings %d and %d", v.SeatingOf(0), v.SeatingOf(1))
	}
	if n := len(w.mind.estimate.Seatings); n != 1 {
		t.Errorf("the estimate goes by %d seatings", n)
	}
	h.choose("seating", f.seat, f.seat.Options[0])
	if v := w.history.Now().Visit; v.SeatingOf(0) == v.SeatingOf(1) {
		t.Error("seated anew, and still one seating")
	}
}

// TestUndoWhileGauging: by mouse the line has the keyboard again; in a field where
// nothing is being typed it undoes the last edit.
func TestUndoWhileGauging(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	call(w, "12 8/10", "4/5")
	w.win.Canvas().Unfocus() // as a press on a button does
	w.top.undo.OnTapped()
	if n := len(w.readings()); n != 1 || w.win.Canvas().Focused() != fyne.Focusable(w.gauging.entry) {
		t.Errorf("%d readings, the keyboard at %T", n, w.win.Canvas().Focused())
	}
	h := handsOn(t, w)
	h.tabTo("note", w.gauging.hold.note)
	w.gauging.hold.note.TypedShortcut(&fyne.ShortcutUndo{})
	if n := len(w.history.Now().Visit.Events); n != 0 {
		t.Errorf("%d events after undo in a field", n)
	}
	h.letters("half")
	w.gauging.hold.note.TypedShortcut(&fyne.ShortcutRedo{})
	if n := len(w.history.Now().Visit.Events); n != 0 {
		t.Error("redo took what is being typed for nothing")
	}
}
