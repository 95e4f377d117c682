package page

// This file is a line to type into that lets through the keys which mean the
// same everywhere: the library gives a key to the focused widget alone.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Entry is widget.Entry with a look at its keys before it has them.
type Entry struct {
	widget.Entry
	// Before takes a key first and reports whether it used it; nil: no keys.
	Before func(*fyne.KeyEvent) bool
	// Focused is told when the keyboard comes here; nil: nobody is.
	Focused func(fyne.CanvasObject)
}

// NewEntry is one line; before is as a Desk's Key.
func NewEntry(before func(*fyne.KeyEvent) bool) *Entry {
	e := &Entry{Before: before}
	e.ExtendBaseWidget(e)
	return e
}

// FocusGained tells Focused.
func (e *Entry) FocusGained() {
	e.Entry.FocusGained()
	if e.Focused != nil {
		e.Focused(e)
	}
}

// TypedKey offers the key to Before.
func (e *Entry) TypedKey(k *fyne.KeyEvent) {
	if e.Before == nil || !e.Before(k) {
		e.Entry.TypedKey(k)
	}
}
