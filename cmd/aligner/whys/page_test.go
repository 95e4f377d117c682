package whys

// This file goes through the page by keyboard.

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit/builtin"
)

func opened(t *testing.T, language string) *Page {
	t.Helper()
	test.NewTempApp(t)
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(1280, 800))
	p := New(page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1}, Window: w, Back: func() {},
		Key: func(*fyne.KeyEvent) bool { return false }}, builtin.Hull(t, "Kittiwake"), builtin.Hull(t, "Avocet"), false)
	w.SetContent(p.Content())
	t.Cleanup(p.Close)
	return p
}

func press(p *Page, keys ...fyne.KeyName) {
	for _, k := range keys {
		p.TypedKey(&fyne.KeyEvent{Name: k})
	}
}

func TestStepByStepOnBothBoats(t *testing.T) {
	p := opened(t, "en")
	if strings.Contains(p.sides[0].words.Text, "1.") || p.sides[0].picture.State.Now != nil {
		t.Error("something is told before it was asked for")
	}
	press(p, fyne.KeySpace, fyne.KeySpace, fyne.KeySpace, fyne.KeySpace)
	for i, s := range p.sides {
		if !strings.Contains(s.words.Text, "4. So the coupling") || s.picture.State.Axis == nil || s.picture.State.Now == nil {
			t.Errorf("boat %d: %q, line %v", i, s.words.Text, s.picture.State.Axis)
		}
	}
	// The same nut sinks the coupling of an in-line drive and lifts a V-drive's.
	if !strings.Contains(p.sides[0].words.Text, "the coupling sinks") || !strings.Contains(p.sides[1].words.Text, "the coupling rises") {
		t.Errorf("%q\n%q", p.sides[0].words.Text, p.sides[1].words.Text)
	}
	for range 10 {
		press(p, fyne.KeySpace)
	}
	if !strings.Contains(p.sides[0].words.Text, "Together") {
		t.Errorf("%q", p.sides[0].words.Text)
	}
	press(p, fyne.KeyHome)
	if p.step != 0 || p.sides[0].picture.State.Now != nil {
		t.Error("not back at the start")
	}
}

func TestAnotherNutAndTheTable(t *testing.T) {
	p := opened(t, "de")
	press(p, fyne.KeyDown)
	if p.at != 1 || p.choose.SelectedIndex() != 1 {
		t.Errorf("at %d", p.at)
	}
	press(p, fyne.KeyUp, fyne.KeyUp) // round to the last slide
	if !p.moves[p.at].Slide {
		t.Errorf("at %d", p.at)
	}
	p.TypedRune('t')
	if !p.told.Visible() || strings.Count(p.told.Text, "\n") < 6 {
		t.Errorf("table %q", p.told.Text)
	}
	press(p, fyne.KeySpace)
	if p.told.Visible() || !p.steps.Visible() {
		t.Error("the table stays")
	}
}
