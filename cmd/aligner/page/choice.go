package page

// This file is a choice of several that lets through the keys which mean the same
// everywhere.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Choice is widget.Select with a look at its keys before it has them.
type Choice struct {
	widget.Select
	// Before takes a key first and reports whether it used it; nil: no keys.
	Before func(*fyne.KeyEvent) bool
	// Focused is told when the keyboard comes here; nil: nobody is.
	Focused func(fyne.CanvasObject)
	quiet   bool // being filled, not chosen
}

// NewChoice tells which of the options was chosen; before is as a Desk's Key.
func NewChoice(before func(*fyne.KeyEvent) bool, options []string, chosen func(i int)) *Choice {
	c := &Choice{Before: before}
	c.Options = options
	c.OnChanged = func(string) {
		if i := c.SelectedIndex(); !c.quiet && i >= 0 && chosen != nil {
			chosen(i)
		}
	}
	c.ExtendBaseWidget(c)
	return c
}

// Put chooses without being told so.
func (c *Choice) Put(i int) {
	if c.SelectedIndex() != i {
		c.quiet = true
		c.SetSelectedIndex(i)
		c.quiet = false
	}
}

// FocusGained tells Focused.
func (c *Choice) FocusGained() {
	c.Select.FocusGained()
	if c.Focused != nil {
		c.Focused(c)
	}
}

// TypedKey offers the key to Before.
func (c *Choice) TypedKey(k *fyne.KeyEvent) {
	if c.Before == nil || !c.Before(k) {
		c.Select.TypedKey(k)
	}
}
