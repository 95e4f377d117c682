package window

// This file is where edits go: into memory, or, where there is a logbook, onto
// the disk before they are shown.

import (
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
)

// past holds documents from the first to the last. visit.History does in
// memory; a logbook's session does on disk.
type past interface {
	Now() visit.Document
	// Do applies an edit and records it; an error leaves everything as it was.
	Do(visit.Edit) error
	Undo() (visit.Edit, error) // nil: at the beginning
	Redo() (visit.Edit, error)
	Before() (visit.Document, visit.Edit)
	CanUndo() visit.Edit
	Preview(visit.Edit) (visit.Document, error)
}

// inMemory is a visit.History as a past.
type inMemory struct{ *visit.History }

func (m inMemory) Undo() (visit.Edit, error) { return m.History.Undo(), nil }
func (m inMemory) Redo() (visit.Edit, error) { return m.History.Redo(), nil }

// Keeper keeps visits in a logbook.
type Keeper interface {
	// Begin begins a visit of a hull, to be worked on; BeginOn, of one that is in
	// the logbook; GoOn goes on with a visit.
	Begin(hulls.Hull) (Past, error)
	BeginOn(logbook.HullID) (Past, error)
	GoOn(logbook.VisitID) (Past, error)
	// WorkOut works out, for lists, what a visit came to.
	WorkOut(Past)
	// Book is the logbook, perhaps only to be read.
	Book() (*logbook.Book, error)
}

// Past is what a Keeper gives.
type Past interface{ past }

// Keep puts edits into a logbook from now on. A visit in it that was being
// worked on goes on where it was left; nil: none.
func (w *Window) Keep(k Keeper, going Past) {
	w.keeper = k
	w.lastMechanic()
	if going != nil {
		w.goOn(going)
	}
}

// goOn works on a visit that is in the logbook.
func (w *Window) goOn(with Past) {
	w.workOut()
	w.history, w.kept, w.opened = with, true, nil
	w.followHull()
	w.looking.fresh = true
	w.rethink()
	w.update()
}

// workOut has the visit that was worked on worked out for lists when it is left,
// aside; the list of boats, where it stands, then shows it.
func (w *Window) workOut() {
	if !w.kept || w.keeper == nil {
		return
	}
	keeper, worked := w.keeper, w.history
	w.mind.aside(func() { keeper.WorkOut(worked) }, func() {
		if p, ok := w.page.(interface{ Again() }); ok {
			p.Again()
		}
	})
}

// workOutNow does it at once: the window closes.
func (w *Window) workOutNow() {
	if w.kept && w.keeper != nil {
		w.keeper.WorkOut(w.history)
	}
}

// recorded does an edit where it belongs: another boat or visit begins a past of
// its own; the first edit on a boat as drawn begins her visit in the logbook.
func (w *Window) recorded(e visit.Edit) error {
	switch e.(type) {
	case *visit.OpenHull, *visit.OpenVisit:
		if w.keeper != nil {
			d, err := e.Apply(w.history.Now())
			if err != nil {
				return err
			}
			w.workOut()
			w.history, w.kept = inMemory{visit.NewHistory(d)}, false
			w.opened = e
			return nil
		}
	default:
		w.opened = nil
		if err := w.beginKeeping(); err != nil {
			return err
		}
	}
	return w.history.Do(e)
}

// beginKeeping puts the boat into the logbook before the first edit on her. A
// worked visit that was opened is a copy to try things on, and is not kept.
func (w *Window) beginKeeping() error {
	d := w.history.Now()
	if w.keeper == nil || w.kept || len(d.Visit.Events) > 0 || w.history.CanUndo() != nil {
		return nil
	}
	session, err := w.keeper.Begin(d.Hull)
	if err != nil {
		// Working on matters more than keeping; the reason stands until it is read.
		w.keeper = nil
		w.fault("logbook", err)
		w.trouble = w.speaker.Say(words.NotKept, words.Args{"Why": w.told(err)})
		return nil
	}
	w.history, w.kept = session, true
	return w.begun(session)
}

// Do records an edit, as the hand on the window would.
func (w *Window) Do(e visit.Edit) { w.do(e) }

// Document is what the window shows.
func (w *Window) Document() visit.Document { return w.document() }
