package form

// This file is the plain choices of the page: they let through the keys that mean the
// same everywhere.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// asked is a choice that lets the keys through which mean the same everywhere.
type asked struct {
	widget.Select
	keys func(*fyne.KeyEvent) bool
}

// TypedKey offers the key to the page.
func (a *asked) TypedKey(k *fyne.KeyEvent) {
	if !a.keys(k) {
		a.Select.TypedKey(k)
	}
}

// tick is a yes or no that lets the same keys through.
type tick struct {
	widget.Check
	keys func(*fyne.KeyEvent) bool
}

// TypedKey offers the key to the page.
func (c *tick) TypedKey(k *fyne.KeyEvent) {
	if !c.keys(k) {
		c.Check.TypedKey(k)
	}
}
