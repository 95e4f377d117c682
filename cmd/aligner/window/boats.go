package window

// This file turns to the page of all boats, and goes on with what is chosen
// there.

import (
	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/boats"
	"aligner/cmd/aligner/form"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
)

// boatsKey turns to the page of all boats while the picture has the keyboard,
// boatsFunctionKey wherever the keyboard is.
const (
	boatsKey         = 'd'
	boatsFunctionKey = fyne.KeyF9
)

// pastKey turns to what moved since the last visit of this boat.
const pastKey = fyne.KeyF12

// allBoats turns to the page of all boats.
func (w *Window) allBoats() { w.seeBoats(nil) }

// seePast turns to the past of the boat worked on; of one that is not in the
// logbook there is none, and all boats show.
func (w *Window) seePast() {
	book, id := w.keptVisit()
	if book == nil {
		w.allBoats()
		return
	}
	hull, err := book.HullOf(id)
	var line logbook.HullLine
	if err == nil {
		line, err = book.HullLine(hull)
	}
	if err != nil {
		w.tell(w.told(err))
		return
	}
	w.seeBoats(&line)
}

// seeBoats turns to the page, or to one boat's past on it.
func (w *Window) seeBoats(pastOf *logbook.HullLine) {
	if w.keeper == nil {
		return
	}
	book, err := w.keeper.Book()
	if err != nil {
		w.sentence.SetText(w.speaker.Say(words.BoatsNoBook, words.Args{"Why": w.told(err)}))
		return
	}
	w.workOut() // so that the list has the visit being worked on as it is
	w.turnTo(func(d page.Desk) page.Page {
		p := boats.New(d, book, boats.Do{
			Open: func(id logbook.VisitID) error { return w.openKept(book, id) },
			Begin: func(id logbook.HullID) error {
				past, err := w.keeper.BeginOn(id)
				if err == nil {
					err = w.begun(past)
				}
				return w.goOnWith(past, err)
			},
			Hull: func(name string) {
				w.back()
				w.openBoat(name)
			},
			New: w.newBoat,
			Measure: func(id logbook.HullID) error {
				h, err := book.Hull(id)
				if err == nil {
					w.ownBoat(form.EditDraft(h.Hull, id))
				}
				return err
			},
		})
		if pastOf != nil {
			p.ShowPast(*pastOf)
		}
		return p
	})
}

// openKept goes on with a visit; where the logbook can only be read, with a copy
// of it that is not kept.
func (w *Window) openKept(book *logbook.Book, id logbook.VisitID) error {
	if book.Writable() {
		return w.goOnWith(w.keeper.GoOn(id))
	}
	d, err := book.Document(id)
	if err != nil {
		return err
	}
	w.back()
	w.do(&visit.OpenVisit{Visit: d.Visit, HullName: d.HullName, Hull: hulls.Encode(d.Hull)})
	return nil
}

func (w *Window) goOnWith(past Past, err error) error {
	if err != nil {
		return err
	}
	w.back()
	w.goOn(past)
	if len(past.Now().Visit.Events) > 0 {
		w.enter(stageGauge)
	} else {
		w.enter(stageBegin)
	}
	return nil
}
