package page

// This file is a button and a list that let through the keys which mean the same
// everywhere.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Button is widget.Button with a look at its keys before it has them; Enter
// presses it as well as Space.
type Button struct {
	widget.Button
	// Before takes a key first and reports whether it used it; nil: no keys.
	Before func(*fyne.KeyEvent) bool
	// Focused is told when the keyboard comes here; nil: nobody is.
	Focused func(fyne.CanvasObject)
}

// NewButton does something when pressed; before is as a Desk's Key.
func NewButton(before func(*fyne.KeyEvent) bool, text string, do func()) *Button {
	b := &Button{Before: before}
	b.Text, b.OnTapped = text, do
	b.ExtendBaseWidget(b)
	return b
}

// FocusGained tells Focused.
func (b *Button) FocusGained() {
	b.Button.FocusGained()
	if b.Focused != nil {
		b.Focused(b)
	}
}

// TypedKey offers the key to Before.
func (b *Button) TypedKey(k *fyne.KeyEvent) {
	switch {
	case b.Before != nil && b.Before(k):
	case k.Name == fyne.KeyReturn || k.Name == fyne.KeyEnter:
		if !b.Disabled() {
			b.OnTapped()
		}
	default:
		b.Button.TypedKey(k)
	}
}

// List is widget.List with a look at its keys before it has them; the arrows
// choose a line at once, Enter opens it.
type List struct {
	widget.List
	Before func(*fyne.KeyEvent) bool
	Open   func(line int) // the line chosen; nil: lines are not opened
	chosen int
}

// NewList is as widget.NewList; before is as a Desk's Key.
func NewList(before func(*fyne.KeyEvent) bool, length func() int, create func() fyne.CanvasObject,
	update func(line int, o fyne.CanvasObject), chosen func(line int)) *List {
	l := &List{Before: before, chosen: -1}
	l.Length, l.CreateItem = length, create
	l.UpdateItem = func(id widget.ListItemID, o fyne.CanvasObject) { update(id, o) }
	l.OnSelected = func(id widget.ListItemID) {
		l.chosen = id
		if chosen != nil {
			chosen(id)
		}
	}
	l.ExtendBaseWidget(l)
	return l
}

// Chosen is the line chosen; -1: none.
func (l *List) Chosen() int { return l.chosen }

// Step chooses so many lines further down, within the list.
func (l *List) Step(by int) {
	if n := l.Length(); n > 0 {
		l.Select(min(max(l.chosen+by, 0), n-1))
	}
}

// Forget chooses nothing.
func (l *List) Forget() {
	l.UnselectAll()
	l.chosen = -1
}

// Arrows takes the keys that move through a list, from wherever the keyboard is,
// and reports whether it was one.
func (l *List) Arrows(k *fyne.KeyEvent) bool {
	const leap = 10
	switch k.Name {
	case fyne.KeyUp:
		l.Step(-1)
	case fyne.KeyDown:
		l.Step(1)
	case fyne.KeyPageUp:
		l.Step(-leap)
	case fyne.KeyPageDown:
		l.Step(leap)
	case fyne.KeyReturn, fyne.KeyEnter:
		if l.Open == nil || l.chosen < 0 {
			return false
		}
		l.Open(l.chosen)
	default:
		return false
	}
	return true
}

// TypedKey offers the key to Before.
func (l *List) TypedKey(k *fyne.KeyEvent) {
	if l.Before != nil && l.Before(k) || l.Arrows(k) {
		return
	}
	l.List.TypedKey(k)
}
