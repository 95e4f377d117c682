package photos

// This file is the line and the buttons of the strip, which tell when the
// keyboard comes to them: a sheet they lie in can scroll there.

import (
	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/page"
)

type entry struct {
	page.Entry
	of *Strip
}

func (s *Strip) newEntry() *entry {
	e := &entry{of: s}
	e.Before = s.desk.Key
	e.ExtendBaseWidget(e)
	return e
}

// FocusGained tells the strip.
func (e *entry) FocusGained() {
	e.Entry.FocusGained()
	e.of.reached(e)
}

type button struct {
	page.Button
	of *Strip
}

func (s *Strip) newButton(text string, do func()) *button {
	b := &button{of: s}
	b.Before, b.Text, b.OnTapped = s.desk.Key, text, do
	b.ExtendBaseWidget(b)
	return b
}

// FocusGained tells the strip.
func (b *button) FocusGained() {
	b.Button.FocusGained()
	b.of.reached(b)
}

func (s *Strip) reached(o fyne.CanvasObject) {
	if s.Reached != nil {
		s.Reached(o)
	}
}
