package window

// This file turns to the page of practice, and keeps its piece of work while the page
// is away.

import (
	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/page"
	"aligner/cmd/aligner/practice"
)

// practiceKey turns to practice wherever the keyboard is, with the control key held.
const practiceKey = fyne.KeyP

func (w *Window) seePractice() {
	if w.practising == nil {
		w.practising = practice.NewSession(w.Learners, w.who.name)
	}
	w.turnTo(func(d page.Desk) page.Page { return practice.New(d, w.practising) })
}
