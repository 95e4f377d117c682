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
func (w *Window) ownBoat(d *form.Draft) { w.turnToForm(d, nil) }

func (w *Window) turnToForm(d *form.Draft, kept func(hulls.Hull) error) {
	do := form.Do{Kept: kept, Work: w.workOn, Aside: w.mind.aside}
	if w.keeper != nil {
		if book, err := w.keeper.Book(); err == nil {
			do.Book = book
		}
	}
	w.turnTo(func(desk page.Desk) page.Page { return form.New(desk, d, do) })
}

// newBoat begins with the questions.
func (w *Window) newBoat() { w.ownBoat(form.NewDraft()) }

// measureAgain puts the boat on the screen into the form. What is kept there is
// changed in her visit too, so far as one has begun.
func (w *Window) measureAgain() {
	h := w.history.Now().Hull
	id := w.hullInBook(&h)
	if id != 0 { // as she was measured last
		if book, err := w.keeper.Book(); err == nil {
			if kept, err := book.Hull(id); err == nil {
				h = kept.Hull
			}
		}
	}
	w.turnToForm(form.EditDraft(h, id), func(to hulls.Hull) error {
		now := w.history.Now()
		if !w.kept && len(now.Visit.Events) == 0 {
			return nil // no visit yet: it begins with the boat as she is then
		}
		e, err := visit.NewChangeHull(&now.Hull, &to)
		if err != nil || e == nil {
			return err
		}
		if err := w.recorded(e); err != nil {
			return err
		}
		w.followHull()
		w.rethink()
		return nil
	})
}

// hullInBook is which boat of the logbook this is: one with just these
// measurements, or the only one of her name; 0: none.
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
	var named []logbook.HullID
	for _, line := range lines {
		if line.Name != h.Name {
			continue
		}
		named = append(named, line.ID)
		if kept, err := book.Hull(line.ID); err == nil && reflect.DeepEqual(kept.Hull, *h) {
			return line.ID
		}
	}
	if len(named) == 1 {
		return named[0]
	}
	return 0
}

// workOn leaves the form for the boat in it: the one on the screen, or another, of
// whom a visit begins with the first edit.
func (w *Window) workOn(h hulls.Hull) {
	w.back()
	if now := w.history.Now(); !reflect.DeepEqual(now.Hull, h) {
		w.do(&visit.OpenHull{HullName: h.Name, Hull: hulls.Encode(h)})
	}
}
