package window

// This file is photos: those of the visit at hand-over, and files dropped on the
// window.

import (
	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/photos"
	"aligner/hulls/logbook"
)

// keptVisit is the logbook and the visit in it that is worked on; nil: none.
func (w *Window) keptVisit() (*logbook.Book, logbook.VisitID) {
	s, ok := w.history.(interface{ Visit() logbook.VisitID })
	if !ok || !w.kept {
		return nil, 0
	}
	if b := w.ownBook(); b != nil {
		return b, s.Visit()
	}
	return nil, 0
}

// photoSheet is the photos of the visit.
type photoSheet struct {
	w     *Window
	strip *photos.Strip
	book  *logbook.Book
	visit logbook.VisitID
}

func newPhotoSheet(w *Window) *photoSheet {
	s := &photoSheet{w: w, strip: photos.New(w.desk())}
	s.strip.Reached = w.bringIntoView
	return s
}

// show shows those of the visit worked on, read again only for another one.
func (s *photoSheet) show() {
	book, id := s.w.keptVisit()
	if book != s.book || id != s.visit {
		s.book, s.visit = book, id
		s.strip.Show(book, id)
	}
}

// dropped takes files dropped on the window: photos are attached to the visit, a
// boat or a visit is opened.
func (w *Window) dropped(files []fyne.URI) {
	var paths []string
	pictures := true
	for _, f := range files {
		paths = append(paths, f.Path())
		pictures = pictures && photos.IsPhoto(f.Path())
	}
	if len(paths) == 0 {
		return
	}
	if p, ok := w.page.(interface{ Dropped([]string) bool }); ok && p.Dropped(paths) {
		return
	}
	if !pictures {
		w.openBoat(paths[0])
		return
	}
	book, id := w.keptVisit()
	if book == nil {
		w.tell(w.speaker.Say(words.PhotoNoVisit, nil))
		return
	}
	w.back()
	w.enter(stageHandOver)
	w.handing.photos.strip.Show(book, id)
	w.handing.photos.strip.Attach(paths...)
}
