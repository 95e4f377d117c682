package counter

// This file is the handle between before and after: a slider that lets through the
// keys which mean the same everywhere, and Space.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

type handle struct {
	widget.Slider
	before func(*fyne.KeyEvent) bool
	space  func()
	rune   func(rune)
}

// newHandle makes one; before takes a key first and reports whether it used it.
func newHandle(before func(*fyne.KeyEvent) bool, space func(), letter func(rune), changed func(float64)) *handle {
	h := &handle{before: before, space: space, rune: letter}
	h.Max, h.Step, h.OnChanged = 1, 0.05, changed
	h.ExtendBaseWidget(h)
	return h
}

// TypedKey offers the key to before: moved by the hand, the slider has the keyboard.
func (h *handle) TypedKey(k *fyne.KeyEvent) {
	if !h.before(k) && k.Name == fyne.KeySpace {
		h.space()
	}
}

// TypedRune hands a letter on.
func (h *handle) TypedRune(r rune) { h.rune(r) }
