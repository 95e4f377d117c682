package troubles

// This file goes through the page by keyboard.

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics/gauge"
	"aligner/report/trouble"
)

func opened(t *testing.T, language string) (*Page, *visit.History) {
	t.Helper()
	test.NewTempApp(t)
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(1280, 800))
	h := visit.NewHistory(visit.New("Kittiwake", builtin.Hull(t, "Kittiwake")))
	desk := page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1}, Window: w, Back: func() {},
		Key: func(*fyne.KeyEvent) bool { return false }}
	p := New(desk, Do{Now: func() visit.Document { return h.Now() }, Estimate: func() *gauge.Estimate { return nil },
		Edit: func(e visit.Edit) {
			if err := h.Do(e); err != nil {
				t.Error(err)
			}
		}})
	w.SetContent(p.Content())
	w.Canvas().Focus(p.Focus())
	return p, h
}

func press(p *Page, keys ...fyne.KeyName) {
	for _, k := range keys {
		p.desk.Window.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: k})
	}
}

func TestFromKnockToLooseBoltsByKeys(t *testing.T) {
	p, h := opened(t, "en")
	press(p, fyne.KeyDown, fyne.KeyDown, fyne.KeyDown)
	if trouble.Symptoms[p.at] != trouble.Knocks || !strings.Contains(p.causes.Text, "likely: coupling bolts loose") {
		t.Fatalf("shown %v: %q", trouble.Symptoms[p.at], p.causes.Text)
	}
	for p.test != trouble.BoltsTight {
		press(p, fyne.KeyK)
	}
	press(p, fyne.KeyZ)
	if !strings.HasPrefix(p.causes.Text, "very likely: coupling bolts loose") {
		t.Errorf("after the bolts turned: %q", p.causes.Text)
	}
	v := h.Now().Visit.Trouble
	if len(v.Symptoms) != 1 || v.Symptoms[0] != "knocks" || len(v.Tests) != 1 || v.Tests[0].Answer != "bad" {
		t.Errorf("kept %+v", v)
	}
	press(p, fyne.KeySpace) // takes the symptom back
	if len(h.Now().Visit.Trouble.Symptoms) != 0 {
		t.Error("the symptom stays")
	}
	for h.Undo() != nil {
	}
	if now := h.Now(); !now.Visit.Trouble.None() {
		t.Errorf("after undoing: %+v", now.Visit.Trouble)
	}
}

func TestAShakeIsExplainedByTheBoat(t *testing.T) {
	p, _ := opened(t, "de")
	if !strings.Contains(p.why.Text, "MPa") {
		t.Errorf("told %q", p.why.Text)
	}
	press(p, fyne.KeyDown, fyne.KeyDown, fyne.KeyDown)
	if p.why.Text != "" {
		t.Errorf("of a knock too: %q", p.why.Text)
	}
	for _, text := range []string{p.causes.Text, p.next.Text, p.how.Text} {
		if text == "" || strings.Contains(text, "<no value>") || strings.Contains(text, "[") {
			t.Errorf("told %q", text)
		}
	}
}
