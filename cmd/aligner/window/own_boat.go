package window

// This file turns to the form of a boat of one's own: a new one, or the one on the
// screen to be measured again.

import (
	"reflect"

	"aligner/cmd/aligner/form"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
)

// ownBoat turns to a form; the draft outlives the page.
func (w *Window) ownBoat(d *form.Draft) {
	do := form.Do{Work: func(id logbook.HullID, h hulls.Hull) {
		w.back()
		w.workOn(id, h)
	}}
	if w.keeper != nil {
		if book, err := w.keeper.Book(); err == nil {
			do.Book = book
		}
	}
	w.turnTo(func(desk page.Desk) page.Page { return form.New(desk, d, do) })
}

// newBoat begins with the questions.
func (w *Window) newBoat() { w.ownBoat(form.NewDraft()) }

// measureAgain puts the boat on the screen into the form.
func (w *Window) measureAgain() {
	h := w.history.Now().Hull
	w.ownBoat(form.EditDraft(h, w.hullInBook(&h)))
}

// hullInBook is which boat of the logbook this is, 0: none.
func (w *Window) hullInBook(h *hulls.Hull) logbook.HullID {
	if w.keeper == nil {
		return 0
	}
	book, err := w.keeper.Book()
	if err != nil {
		return 0
	}
	lines, err := book.Hulls(logbook.HullQuery{Words: h.Name})
	if err != nil {
		return 0
	}
	for _, line := range lines {
		if line.Name != h.Name {
			continue
		}
		if kept, err := book.Hull(line.ID); err == nil && reflect.DeepEqual(kept.Hull, *h) {
			return line.ID
		}
	}
	return 0
}

// workOn shows a boat from the form: a visit of her begins with the first edit.
func (w *Window) workOn(_ logbook.HullID, h hulls.Hull) {
	w.do(&visit.OpenHull{HullName: h.Name, Hull: hulls.Encode(h)})
}
