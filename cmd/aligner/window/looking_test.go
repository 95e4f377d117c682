package window

// This file looks over by keys: strips in a bearing, notes with findings, help
// and what to bring; and holds that cautions are read once.

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/reader"
	"aligner/hulls/visit"
	"aligner/report/job"
)

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

// TestWhatAVisitBeginsWithSaysWhereItIsFrom: every rule and target that can be
// chosen, and every default, beside it in both languages.
func TestWhatAVisitBeginsWithSaysWhereItIsFrom(t *testing.T) {
	w := opened(t, "Kittiwake")
	for _, tag := range words.Languages() {
		w.speak(tag)
		w.enter(stageBegin)
		b := w.beginning
		w.do(&visit.SetRule{})
		w.do(&visit.SetTarget{})
		shown := b.state.told.Text + b.leaves.told.Text + b.rule.from.Text + b.target.from.Text
		for _, d := range job.Defaults() {
			if !strings.Contains(shown, d.Text.Say(w.speaker, w.units())+" "+w.from(d.Sources)) {
				t.Errorf("%s: %s and where it is from is not among %q", tag, d.Text.ID, shown)
			}
		}
		for _, r := range job.Rules() {
			w.do(&visit.SetRule{Rule: r.Rule})
			if !b.rule.from.Visible() || b.rule.from.Text != w.from(r.Sources) {
				t.Errorf("%s: %s is from %q", tag, r.Named, b.rule.from.Text)
			}
		}
		for _, x := range job.Targets() {
			w.do(&visit.SetTarget{Target: x.Target})
			if !b.target.from.Visible() || b.target.from.Text != w.from(x.Sources) {
				t.Errorf("%s: %s is from %q", tag, x.Reason, b.target.from.Text)
			}
		}
	}
}

// TestEveryCheckSaysWhereItIsFrom while it is open.
func TestEveryCheckSaysWhereItIsFrom(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Avocet", "Cormorant"} {
		w := opened(t, name)
		h := handsOn(t, w)
		h.key(fyne.KeyF3)
		for range w.looking.checks() {
			c := w.looking.checks()[w.looking.at]
			if !strings.Contains(w.looking.how.Text, w.from(c.Sources)) {
				t.Errorf("%s: %q", c.ID, w.looking.how.Text)
			}
			h.key(fyne.KeyDown)
		}
	}
}
