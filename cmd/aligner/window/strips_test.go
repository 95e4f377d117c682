package window

// This file tests what the strips have room for.

import (
	"testing"

	"fyne.io/fyne/v2"
)

func TestHowTheShaftIsHeldIsReadWhereThereIsRoom(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.speak("de")
	for _, c := range []struct {
		width, height float32
		whole         bool
	}{{1280, 800, true}, {853, 533, false}, {1920, 1080, true}} {
		w.win.Resize(fyne.NewSize(c.width, c.height))
		w.update()
		b := w.bottom
		needs := fyne.MeasureText(b.held.Selected, 14, fyne.TextStyle{}).Width
		if whole := b.held.Size().Width > needs+20; whole != c.whole {
			t.Errorf("%v wide: %q needs %v, has %v", c.width, b.held.Selected, needs, b.held.Size().Width)
		}
		if b.slider.Size().Width < 40 {
			t.Errorf("%v wide: the slider has %v", c.width, b.slider.Size().Width)
		}
	}
}
