package window

// This file gauges in every other way there is: a reading corrected and taken
// out, a table pasted, places within reach only, strips in a bearing, marks on
// the faces, results copied; and holds that cautions are said once.

import (
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"aligner/assets/words"
	"aligner/cmd/aligner/reader"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
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
		for i, m := range w.faces.What.Marks {
			if !m.Unused || !strings.Contains(w.gauging.chips[i].Text, w.speaker.Say(words.GaugeSetAside, nil)) {
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

func TestStripsTellTheBearing(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.key(fyne.KeyF3)
	for w.looking.checks()[w.looking.at].ID != job.BearingEven {
		h.key(fyne.KeyDown)
	}
	f := w.looking.strips
	h.tabTo("strips", f.line)
	for _, line := range []string{"-/1", "12/13", "25/26", "12/13", "-/1", "12/13", "25/26", "12/13"} {
		h.letters(line)
		h.key(fyne.KeyReturn)
	}
	d := w.history.Now()
	wears := job.Wears(&d.Hull, &d.Visit)
	if len(wears) != 1 || wears[0].Wear != job.Worn {
		t.Fatalf("told %+v", wears)
	}
	if want := wears[0].Text().Say(w.speaker, w.units()); f.verdict.Text != want {
		t.Errorf("shown %q, want %q", f.verdict.Text, want)
	}
	// They are no gauging of gaps: the first leaf begins one.
	h.key(fyne.KeyF4)
	h.letters("12 3/4")
	h.key(fyne.KeyReturn)
	if v := w.history.Now().Visit; len(v.Events) != 2 || v.Events[1].Gauging.Held != "seated" {
		t.Errorf("%d events", len(v.Events))
	}
}

func TestCautionsAreReadOnce(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.key(fyne.KeyF3)
	if !w.looking.unread.Visible() {
		t.Error("nobody has read the cautions, and looking over does not say so")
	}
	h.key(fyne.KeyF2)
	c := w.beginning.cautions
	d := w.history.Now()
	for _, caution := range job.Cautions(job.LookingOver, d.Visit.State.Afloat()) {
		if !strings.Contains(c.text.Text, caution.Text.Say(w.speaker, w.units())) {
			t.Errorf("%s is not among %q", caution.Text.ID, c.text.Text)
		}
		for _, source := range caution.Sources {
			if !strings.Contains(c.text.Text, source.Name().Say(w.speaker, w.units())) {
				t.Errorf("%s does not say it is from %s", caution.Text.ID, source)
			}
		}
	}
	h.key(fyne.KeyReturn)
	if !w.history.Now().Visit.CautionsMinded || c.text.Visible() {
		t.Error("read, and still asked for")
	}
	h.key(fyne.KeyF3)
	if w.looking.unread.Visible() {
		t.Error("read, and looking over asks again")
	}
	// Where one bites it is said again, and nowhere else.
	for range w.looking.checks() {
		at := w.looking.checks()[w.looking.at].ID
		if want := len(job.CautionsAt(at, false)) > 0; w.looking.bites.Visible() != want {
			t.Errorf("%s: a caution shown %v, want %v", at, !want, want)
		}
		h.key(fyne.KeyDown)
	}
	// Nothing is said over the line once readings come.
	h.key(fyne.KeyF4)
	h.letters("12 3/4")
	h.key(fyne.KeyReturn)
	for _, o := range w.gauging.box.Objects {
		if o == fyne.CanvasObject(w.gauging.bites) {
			t.Error("cautions stand between the readings")
		}
	}
}

func TestNotesGoWithFindings(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.key(fyne.KeyF3, fyne.KeyDown, fyne.KeyReturn)
	h.letters("bolt weeps")
	h.key(fyne.KeyEscape)
	h.letters("z")
	f := w.history.Now().Visit.LookOver
	if len(f) != 1 || f[0] != (visit.Finding{Check: job.StrutFirm, Finding: "failed", Note: "bolt weeps"}) {
		t.Fatalf("%+v", f)
	}
	w.looking.lines[1].Tapped(nil) // opened again from the list
	if w.looking.note.Text != "bolt weeps" {
		t.Errorf("opened again it says %q", w.looking.note.Text)
	}
	h.tabTo("note", w.looking.note)
	h.letters(", tightened")
	h.key(fyne.KeyReturn)
	if f := w.history.Now().Visit.LookOver; len(f) != 1 || !strings.Contains(f[0].Note, "tightened") || f[0].Finding != "failed" {
		t.Errorf("%+v", f)
	}
}

func TestHelpAndBringAreRead(t *testing.T) {
	w := opened(t, "Cormorant")
	h := handsOn(t, w)
	for _, tag := range words.Languages() {
		w.speak(tag)
		for i := range stages {
			w.enter(i)
			h.key(fyne.KeyF1)
			if _, ok := w.page.(*reader.Reader); !ok {
				t.Fatalf("stage %d: F1 shows %T", i, w.page)
			}
			for _, id := range stageHelpWords[i] {
				if said := w.speaker.Say(id, nil); strings.HasPrefix(said, "[") || said == "" {
					t.Errorf("%s, stage %d: %q", tag, i, said)
				}
			}
			h.key(fyne.KeyPageDown, fyne.KeyEscape)
			if w.page != nil || w.stage != i {
				t.Fatalf("Escape leads to stage %d", w.stage)
			}
		}
		w.showBring()
		if _, ok := w.page.(*reader.Reader); !ok {
			t.Fatalf("what to bring is %T", w.page)
		}
		h.key(fyne.KeyEscape)
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
