package lessons

// This file is one answer to choose: a button whose words go on below where its width
// ends, as the library's own do not.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/cmd/aligner/page"
)

// choice is a button drawn behind words that let the hand through to it.
type choice struct {
	widget.BaseWidget
	button *page.Button
	words  *through
}

// newChoice makes one; before takes the button's keys first.
func newChoice(before func(*fyne.KeyEvent) bool, text string, do func()) *choice {
	c := &choice{button: page.NewButton(before, "", do), words: &through{tapped: do}}
	c.words.Text, c.words.Wrapping = text, fyne.TextWrapWord
	c.words.TextStyle.Bold = true
	c.words.ExtendBaseWidget(c.words)
	c.ExtendBaseWidget(c)
	return c
}

// CreateRenderer lays the words over the button.
func (c *choice) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewStack(c.button, c.words))
}

// through is words that can be pressed.
type through struct {
	widget.Label
	tapped func()
}

// Tapped presses them.
func (t *through) Tapped(*fyne.PointEvent) { t.tapped() }
