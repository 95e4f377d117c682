package window

// This file scrolls a sheet with the pointer over each kind of thing on it.

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
)

func TestTheWheelScrollsOverFieldsToo(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.win.Resize(fyne.NewSize(1280, 800))
	w.enter(stageBegin)
	handsOn(t, w).click(w.beginning.cautions.minded)
	s := w.sheets[stageBegin].(*container.Scroll)
	for name, o := range map[string]fyne.CanvasObject{"field": w.beginning.state.hours, "choice": w.beginning.state.where, "words": w.beginning.cautions.line} {
		s.ScrollToTop()
		at := fyne.CurrentApp().Driver().AbsolutePositionForObject(o).AddXY(20, o.Size().Height/2)
		test.Scroll(w.win.Canvas(), at, 0, -40)
		if s.Offset.Y != 40 {
			t.Errorf("over a %s the wheel scrolls by %v, wanted 40", name, s.Offset.Y)
		}
	}
}

func TestPageKeysScrollFromAFieldToo(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.win.Resize(fyne.NewSize(1280, 800))
	w.enter(stageBegin)
	h := handsOn(t, w)
	s := w.sheets[stageBegin].(*container.Scroll)
	h.key(fyne.KeyPageDown) // from the button that has the keyboard
	if s.Offset.Y <= 0 {
		t.Error("page down does not scroll from a button")
	}
	h.key(fyne.KeyPageUp)
	if s.Offset.Y != 0 {
		t.Errorf("page up leaves the sheet at %v", s.Offset.Y)
	}
}
