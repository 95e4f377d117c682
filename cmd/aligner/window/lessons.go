package window

// This file turns to the page of lessons.

import (
	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/lessons"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
)

// lessonsKey turns to the lessons wherever the keyboard is, with the control key held.
const lessonsKey = fyne.KeyL

func (w *Window) seeLessons() {
	find := func(name string) (hulls.Hull, error) {
		_, h, err := w.open(name)
		return h, err
	}
	w.turnTo(func(d page.Desk) page.Page { return lessons.New(d, find) })
}
