package window

// This file turns to the page of troubles.

import (
	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/page"
	"aligner/cmd/aligner/troubles"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/history"
)

// troublesKey turns to the page of troubles wherever the keyboard is.
const troublesKey = fyne.KeyF10

// seeTroubles turns to the page of troubles of the visit shown.
func (w *Window) seeTroubles() {
	d := w.history.Now()
	w.mind.think(&d) // what the readings tell counts, at whatever stage
	w.turnTo(func(d page.Desk) page.Page {
		return troubles.New(d, troubles.Do{
			Now:      func() visit.Document { return w.history.Now() },
			Estimate: func() *gauge.Estimate { return w.mind.estimate },
			Edit:     w.do,
			Past:     w.pastOfVisit(),
		})
	})
}

// pastOfVisit works the visits of the boat on the window out, to be done aside;
// nil: none are kept.
func (w *Window) pastOfVisit() func() (*history.Past, int64, error) {
	book, id := w.keptVisit()
	if book == nil {
		return nil
	}
	return func() (*history.Past, int64, error) {
		hull, err := book.HullOf(id)
		if err != nil {
			return nil, 0, err
		}
		past, err := history.Of(book, hull)
		return past, int64(id), err
	}
}
