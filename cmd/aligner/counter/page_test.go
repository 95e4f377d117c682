package counter

// This file goes through the counter view by keyboard.

import (
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

func opened(t *testing.T, language string, h hulls.Hull) *Page {
	t.Helper()
	test.NewTempApp(t)
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(1280, 800))
	n := len(h.Mounts)
	b := Boat{Hull: h, Planned: true,
		Before: kinematics.State{Held: kinematics.Seated, LiftMM: make([]float64, n), SlideMM: make([]float64, n)},
		After:  kinematics.State{LiftMM: make([]float64, n), SlideMM: make([]float64, n)}}
	for i := range n / 2 {
		b.Before.LiftMM[i] = 3
	}
	p := New(page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1, NoMotion: true}, Window: w, Back: func() {},
		Key: func(*fyne.KeyEvent) bool { return false }}, b)
	w.SetContent(p.Content())
	t.Cleanup(p.Close)
	return p
}

func press(p *Page, keys ...fyne.KeyName) {
	for _, k := range keys {
		p.TypedKey(&fyne.KeyEvent{Name: k})
	}
}

func said(p *Page) string {
	var all []string
	for _, o := range p.words.Objects {
		all = append(all, o.(*widget.Label).Text)
	}
	return strings.Join(all, "\n")
}

func TestFromBeforeToAfterByKeys(t *testing.T) {
	for _, language := range []string{"en", "de"} {
		p := opened(t, language, builtin.Hull(t, "Kittiwake"))
		off := p.result.Gap.SpreadMM()
		if text := said(p); off < 0.2 || strings.Contains(text, "<no value>") || strings.Contains(text, "[") {
			t.Errorf("before: %.3f mm apart; told %q", off, text)
		}
		last := off
		for range 10 {
			press(p, fyne.KeyRight)
			if now := p.result.Gap.SpreadMM(); now > last && p.share < 0.95 { // true, the shaft's own sag is left
				t.Errorf("%s: at %v it opens again", language, p.share)
			} else {
				last = now
			}
		}
		if p.share != 1 || p.handle.Value != 1 || last > 0.06 {
			t.Errorf("at %v: %.4f mm", p.share, last)
		}
		press(p, fyne.KeyHome)
		if p.share != 0 || math.Abs(p.result.Gap.SpreadMM()-off) > 1e-6 {
			t.Error("not back at the start")
		}
	}
}

// Without motion a turn is played a step a press; a whole turn of them ends where it
// began, and moving the handle leaves the turn.
func TestATurnStepByStep(t *testing.T) {
	p := opened(t, "en", builtin.Hull(t, "Kittiwake"))
	press(p, fyne.KeySpace)
	if p.result.Held != kinematics.Bolted || p.picture.State.Spot == nil || !strings.Contains(p.between.Text, "MPa") {
		t.Fatalf("held %s, told %q", p.result.Held, p.between.Text)
	}
	first := p.between.Text
	for range turnSteps {
		press(p, fyne.KeySpace)
	}
	if p.between.Text != first {
		t.Errorf("after a turn %q, was %q", p.between.Text, first)
	}
	press(p, fyne.KeyRight)
	if p.result.Held != kinematics.Seated || p.picture.State.Spot != nil {
		t.Error("the turn goes on")
	}
}

func TestASoftCouplingIsSaid(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 20
	p := opened(t, "en", h)
	if !strings.Contains(said(p), "soft coupling") {
		t.Errorf("told %q", said(p))
	}
	press(p, fyne.KeySpace)
	if p.result.Held == kinematics.Bolted {
		t.Error("bolted all the same")
	}
}
