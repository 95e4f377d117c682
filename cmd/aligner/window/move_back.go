package window

// This file is the way back to as found: what undoes on the boat all that the
// visit has moved.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// backSheet says it and takes it as done.
type backSheet struct {
	w    *Window
	box  *fyne.Container
	text *widget.Label
	done *page.Button
}

func newBackSheet(w *Window) *backSheet {
	s := &backSheet{w: w, text: running()}
	s.done = newPress(w, w.speaker.Say(words.MoveBackRecord, nil), s.record)
	s.box = container.NewVBox(heading(w.speaker.Say(words.MoveBackTitle, nil)), s.text, s.done)
	return s
}

// wayBack is what undoes all moves of a document's visit, by mount.
func wayBack(d *visit.Document) (flats, slideMM []float64, any bool) {
	net := d.Visit.Net()
	flats, slideMM = byMount(&d.Hull, &net)
	for i := range flats {
		flats[i], slideMM[i] = -flats[i], -slideMM[i]
		any = any || flats[i] != 0 || slideMM[i] != 0
	}
	return flats, slideMM, any
}

// record takes it as done.
func (s *backSheet) record() {
	d := s.w.history.Now()
	flats, slides, any := wayBack(&d)
	if !any {
		s.w.tell(s.w.speaker.Say(words.MoveBackNothing, nil))
		return
	}
	m := asMove(&d.Hull, flats, slides)
	m.Note = words.Say(words.MoveBackNote, nil) // files speak one language
	s.w.do(&visit.RecordMove{Move: m})
}

// show says it.
func (s *backSheet) show(d *visit.Document) {
	flats, slides, any := wayBack(d)
	seen(s.done, any)
	if !any {
		write(s.text, s.w.speaker.Say(words.MoveBackNothing, nil))
		return
	}
	lines := []string{s.w.speaker.Say(words.MoveBackHow, nil)}
	write(s.text, append(lines, say.Turns(s.w.speaker, s.w.units(), &d.Hull, flats, slides)...)...)
}
