package form

// What is typed wrong is told under its field and undone by one key; what does not fit
// keeps a boat from being kept; every sheet says all it has to say in each language.

import (
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/visit/builtin"
)

func (b *bench) chooseField(pointer string) {
	b.t.Helper()
	b.p.turnTo(b.p.partOf(pointer))
	b.p.choose(pointer)
	b.p.focus()
}

// texts are what can be read under an object.
func texts(o fyne.CanvasObject) (all []string) {
	switch o := o.(type) {
	case *fyne.Container:
		for _, c := range o.Objects {
			if c.Visible() {
				all = append(all, texts(c)...)
			}
		}
	case *container.Scroll:
		return texts(o.Content)
	case *widget.Label:
		return []string{o.Text}
	}
	return all
}

// textOf is what stands on a button.
func textOf(o fyne.CanvasObject) string {
	if b, ok := o.(*page.Button); ok {
		return b.Text
	}
	return ""
}

// goTo shows a sheet.
func (b *bench) goTo(id words.ID) {
	b.t.Helper()
	for i := range b.p.parts {
		if b.p.parts[i].sheet == id {
			b.p.turnTo(i)
			return
		}
	}
	b.t.Fatalf("no sheet %s", id)
}

func (b *bench) hull() hulls.Hull {
	h, _ := b.p.d.Hull()
	return h
}

func TestWrongEntryIsToldUnderItsField(t *testing.T) {
	for _, c := range []struct{ pointer, typed, told string }{
		{"/engine/mass_kg", "heavy", `"heavy" is no number here`},
		{"/engine/mass_kg", "2", "2 kg is outside 5 kg to 20000 kg"},
		{"/mounts/0/thread", "M17", "ISO 261"},
		{"/mounts/1/name", "fore port", "a name of its own"},
		{"/coupling/bolts/count", "4.5", "a whole number"},
	} {
		b := newBench(t, EditDraft(builtin.Hull(t, "Kittiwake"), 0), "en", fyne.NewSize(1280, 800))
		before := b.file()
		b.chooseField(c.pointer)
		b.write(c.typed)
		b.press(fyne.KeyReturn)
		r := b.p.rowOf(c.pointer)
		if !strings.Contains(r.faults.Text, c.told) || !r.under.Visible() || r.mark.Text != markFault {
			t.Errorf("%s = %s: told %q, mark %q", c.pointer, c.typed, r.faults.Text, r.mark.Text)
		}
		if in, ok := b.win.Canvas().Focused().(*line); !ok || in.r.pointer != c.pointer || in.Text != c.typed {
			t.Errorf("%s: the keyboard went away, or what was typed", c.pointer)
		}
		if string(before) != string(b.file()) {
			t.Errorf("%s = %s changed the boat", c.pointer, c.typed)
		}
		b.shortcut(&fyne.ShortcutUndo{})
		if r.faults.Text != "" || r.line.Text != r.line.written {
			t.Errorf("%s: %q stands after undo, %q is told", c.pointer, r.line.Text, r.faults.Text)
		}
	}
}

// TestLimitsAreToldWhileTyping: before Enter, but not of what may yet become a number.
func TestLimitsAreToldWhileTyping(t *testing.T) {
	b := newBench(t, EditDraft(builtin.Hull(t, "Kittiwake"), 0), "en", fyne.NewSize(1280, 800))
	b.chooseField("/mounts/0/at_mm/1")
	r := b.p.rowOf("/mounts/0/at_mm/1")
	for _, c := range []struct{ typed, told string }{{"-", ""}, {"9", ""}, {"9", ""}, {"9", "as a rule"}, {"9", "9999 mm is outside -2000 mm to 2000 mm"}} {
		b.write(c.typed)
		if c.told == "" && r.faults.Text != "" || !strings.Contains(r.faults.Text, c.told) {
			t.Errorf("after %q: %q, want %q", r.line.Text, r.faults.Text, c.told)
		}
	}
	b.press(fyne.KeyBackspace, fyne.KeyBackspace)
	if r.faults.Text != "" {
		t.Errorf("mended, and still told: %q", r.faults.Text)
	}
}

func TestInchesWithFractions(t *testing.T) {
	d := EditDraft(builtin.Hull(t, "Kittiwake"), 0)
	d.in, d.asked = true, true
	b := newBench(t, d, "en", fyne.NewSize(1280, 800))
	b.chooseField("/mounts/0/at_mm/0")
	b.write("32 1/4")
	b.press(fyne.KeyReturn)
	if x := b.hull().Mounts[0].AtMM[0]; math.Abs(x-819.15) > 1e-9 {
		t.Errorf("32 1/4 in is %g mm", x)
	}
	if in := b.p.rowOf("/mounts/0/at_mm/0").line; in.Text != "32 1/4" {
		t.Errorf("written back as %q", in.Text)
	}
	b.chooseField("/mounts/0/at_mm/1")
	if said := b.p.rowOf("/mounts/0/at_mm/1").limits.Text; !strings.Contains(said, "Taken as right to plus or minus 0.197 in") {
		t.Errorf("how well it is known is told as %q", said)
	}
	b.write("11 3/8 ± 1/16")
	b.press(fyne.KeyReturn)
	if h := b.hull(); math.Abs(h.Tolerance["/mounts/0/at_mm/1"]-1.5875) > 1e-3 || math.Abs(h.Mounts[0].AtMM[1]-288.925) > 1e-3 {
		t.Errorf("%g mm, plus or minus %v", h.Mounts[0].AtMM[1], h.Tolerance)
	}
}

func TestWhatDoesNotFitIsNotKept(t *testing.T) {
	b := newBench(t, EditDraft(builtin.Hull(t, "Kittiwake"), 0), "en", fyne.NewSize(1280, 800))
	b.chooseField("/bearings/0/at_mm")
	b.write("-3000")
	b.press(fyne.KeyReturn)
	r := b.p.rowOf("/bearings/0/at_mm")
	if r.mark.Text != markFault || !strings.Contains(r.faults.Text, "Does not fit") || !strings.Contains(b.p.title(b.p.d.part)+b.p.marks(b.p.d.part), markFault) {
		t.Errorf("mark %q, told %q", r.mark.Text, r.faults.Text)
	}
	b.goTo(words.FormKeep)
	if said := strings.Join(texts(b.p.middle), "|"); !strings.Contains(said, "Not yet") {
		t.Errorf("the sheet says %q", said)
	}
	b.goTo(words.FormLookOver)
	if said := strings.Join(texts(b.p.middle), "|"); !strings.Contains(said, "Bearing strut: Place of its middle: found -3000 mm") {
		t.Errorf("looking over says %q", said)
	}
	b.chooseField("/bearings/0/at_mm")
	b.write("-1380")
	b.press(fyne.KeyReturn)
	b.goTo(words.FormKeep)
	b.press(fyne.KeyReturn)
	if b.p.d.id == 0 {
		t.Errorf("mended and not kept: %q", b.p.told.Text)
	}
}

func TestUsualAndParts(t *testing.T) {
	b := newBench(t, EditDraft(builtin.Hull(t, "Kittiwake"), 0), "en", fyne.NewSize(1280, 800))
	const pointer = "/mounts/0/stiffness_n_per_mm/along"
	b.chooseField(pointer)
	f := b.p.field(pointer)
	b.p.rowOf(pointer).usual.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	h := b.hull()
	if h.Mounts[0].StiffnessNPerMM.Along != f.Usual.Value || h.Tolerance[pointer] != f.Usual.Plus || b.p.rowOf(pointer).mark.Text != markAssumed {
		t.Errorf("the usual is not taken: %v, %v", h.Mounts[0].StiffnessNPerMM, h.Tolerance)
	}
	push := func(pointer string, id words.ID) {
		t.Helper()
		b.chooseField(pointer)
		for _, o := range b.p.middle.Objects {
			if button, ok := o.(*page.Button); ok && textOf(o) == b.p.say(id, nil) {
				button.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
				return
			}
		}
		t.Fatalf("no button %s", id)
	}
	push("/mounts/0/name", words.FormSixMounts)
	push("/bearings/0/name", words.FormAddBearing)
	push("/log/at_mm", words.FormWithBox)
	if h := b.hull(); len(h.Mounts) != 6 || len(h.Bearings) != 2 || h.StuffingBox == nil {
		t.Errorf("%d mounts, %d bearings, box %v", len(h.Mounts), len(h.Bearings), h.StuffingBox)
	}
	push("/bearings/0/name", words.FormDropBearing)
	push("/stuffing_box/at_mm", words.FormWithoutBox)
	push("/mounts/0/name", words.FormFourMounts)
	if h := b.hull(); len(h.Mounts) != 4 || len(h.Bearings) != 1 || h.StuffingBox != nil {
		t.Errorf("%d mounts, %d bearings, box %v", len(h.Mounts), len(h.Bearings), h.StuffingBox)
	}
}

func TestAnswerByKeyboard(t *testing.T) {
	b := newBench(t, EditDraft(builtin.Hull(t, "Kittiwake"), 0), "en", fyne.NewSize(1280, 800))
	enter := func(before string) {
		b.goTo(words.FormAnswers)
		b.tab()                                                                 // past the mount, the first
		for _, typed := range []string{"3", before, "0,1 0,08 0,06 0,08", ""} { // the error as it stands there
			b.write(typed)
			b.press(fyne.KeyReturn)
		}
	}
	enter("0,14 0,1 0,02 0,09")
	if n := len(b.hull().MeasuredResponse); n != 1 {
		t.Fatalf("%d answers; the page says %q", n, b.p.told.Text)
	}
	m := b.hull().MeasuredResponse[0]
	if m.NutFlats["fore port"] != 3 || math.Abs(m.Before.CosMM-0.06) > 1e-9 || math.Abs(m.Before.SinMM-0.005) > 1e-9 || math.Abs(m.After.CosMM-0.02) > 1e-9 || m.Held != "seated" {
		t.Errorf("%+v", m)
	}
	if math.Abs(m.ErrorMM-0.02/math.Sqrt2) > 1e-9 { // of half the difference of two
		t.Errorf("error %g", m.ErrorMM)
	}
	b.goTo(words.FormAnswers)
	b.tab()
	b.write("4")
	b.p.takeEffects(nil, nil) // what was worked out beside comes in
	if in, ok := b.win.Canvas().Focused().(*page.Entry); !ok || in.Text != "4" {
		t.Error("what was being typed is gone")
	}
	enter("0,5 0,1 0,02 0,09") // no two flat faces
	if len(b.hull().MeasuredResponse) != 1 || !strings.Contains(b.p.told.Text, "two flat faces") {
		t.Errorf("an impossible set: %q", b.p.told.Text)
	}
	enter("0,14 0,1")
	if len(b.hull().MeasuredResponse) != 1 || !strings.Contains(b.p.told.Text, "four gaps") {
		t.Errorf("two gaps: %q", b.p.told.Text)
	}
}

// TestEverySheetSpeaks walks through all sheets and fields in both languages, at the
// least size, everything worked out: nothing is told by its ID, nothing lacks a gap.
func TestEverySheetSpeaks(t *testing.T) {
	for _, tag := range words.Languages() {
		b := newBench(t, NewDraft(), tag, fyne.NewSize(853, 533))
		b.works = true
		first := append(texts(b.p.Content()), "")
		b.press(fyne.KeyReturn)
		said := first
		for i := range b.p.parts {
			b.p.turnTo(i)
			for _, r := range b.p.rows {
				b.p.choose(r.pointer)
				said = append(said, b.p.side.title.Text, b.p.side.tape.Text, b.p.side.matter.Text)
			}
			said = append(said, texts(b.p.whole)...)
		}
		if len(said) < 400 {
			t.Errorf("%s: only %d texts read", tag, len(said))
		}
		for _, s := range said {
			if strings.Contains(s, "<no value>") || strings.Contains(s, "[f") || strings.Contains(s, "[m") || strings.Contains(s, "[t") {
				t.Errorf("%s: %q", tag, s)
			}
		}
		if len(b.p.effects) == 0 || b.p.side.model == nil {
			t.Errorf("%s: nothing worked out", tag)
		}
	}
}

// TestNoSheetHoldsTheKeyboard: from every sheet and field Page Down leads on and
// Escape out.
func TestNoSheetHoldsTheKeyboard(t *testing.T) {
	b := newBench(t, EditDraft(builtin.Hull(t, "Avocet"), 0), "en", fyne.NewSize(1280, 800))
	for i := 0; i+1 < len(b.p.parts); i++ {
		for range 3 { // and from what comes next in it
			escaped := b.escaped
			b.press(fyne.KeyEscape)
			if b.escaped != escaped+1 {
				t.Errorf("%s: Escape is held by %T", b.p.title(i), b.win.Canvas().Focused())
			}
			b.tab()
		}
		b.p.turnTo(i)
		b.press(fyne.KeyPageDown)
		if b.p.d.part != i+1 {
			t.Fatalf("%s: Page Down is held by %T", b.p.title(i), b.win.Canvas().Focused())
		}
	}
}

func TestDraftOutlivesPageAndProgram(t *testing.T) {
	d := EditDraft(builtin.Hull(t, "Wren"), 0)
	b := newBench(t, d, "en", fyne.NewSize(1280, 800))
	b.chooseField("/engine/mass_kg")
	b.write("121")
	b.press(fyne.KeyReturn)
	at := b.p.d.field
	b.open(d, "de") // the language was changed
	if b.hull().Engine.MassKg != 121 || b.p.d.field != at {
		t.Error("lost with the page")
	}
	// Another run of the program.
	b.open(NewDraft(), "en")
	for range 6 {
		b.tab()
	}
	b.press(fyne.KeyReturn) // go on with her
	if h := b.hull(); h.Engine.MassKg != 121 || h.Name != "Wren" {
		t.Errorf("another draft: %s, %g kg", h.Name, h.Engine.MassKg)
	}
	// A boat of the logbook, left unfinished and measured again later.
	id, err := b.book.NewHull(builtin.Hull(t, "Eider"))
	if err != nil {
		t.Fatal(err)
	}
	b.open(EditDraft(builtin.Hull(t, "Eider"), id), "en")
	b.chooseField("/engine/mass_kg")
	b.write("377")
	b.press(fyne.KeyReturn)
	b.open(EditDraft(builtin.Hull(t, "Eider"), id), "en")
	if h := b.hull(); h.Engine.MassKg != 377 || b.p.told.Text == "" {
		t.Errorf("unfinished measurements are gone: %g kg, told %q", h.Engine.MassKg, b.p.told.Text)
	}
	b.p.Undo()
	if h := b.hull(); h.Engine.MassKg != 365 {
		t.Errorf("undone to %g kg", h.Engine.MassKg)
	}
	b.p.Redo()
	if n := len(b.book.Drafts()); n != 2 {
		t.Errorf("%d drafts: one took another's place", n)
	}
	b.goTo(words.FormKeep)
	b.press(fyne.KeyReturn)
	if kept, err := b.book.Hull(id); err != nil || kept.Hull.Engine.MassKg != 377 || len(b.book.Drafts()) != 1 {
		t.Errorf("%v: %g kg kept, %d drafts left", err, kept.Hull.Engine.MassKg, len(b.book.Drafts()))
	}
	if f, _ := fields.Find(&b.p.h, "/engine/mass_kg"); f.Assumed {
		t.Error("what was measured counts as assumed")
	}
}
