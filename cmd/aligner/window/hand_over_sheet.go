package window

// This file is the sheet for handing over: how she was found and is left, what
// was done, what keeps the result provisional, marks and stud heights, when to
// look again, a note, and the hand-over itself.

import (
	"math"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
	"aligner/report/say"
)

// handOverSheet is the end of the job.
type handOverSheet struct {
	w                             *Window
	box                           *fyne.Container
	title                         *widget.Label
	verdict, done, standing, next *widget.Label
	marked                        *tickBox
	studs                         *studSheet
	photos                        *photoSheet
	note                          *field
	handOver                      *page.Button
	paper                         *paperSheet
	safety                        *widget.Label
	quiet                         bool // being filled, not touched
	today                         func() string
}

func newHandOverSheet(w *Window) *handOverSheet {
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	s := &handOverSheet{w: w, title: heading(""), verdict: running(), done: running(), standing: running(), next: running(), safety: running(),
		studs: newStudSheet(w), photos: newPhotoSheet(w), paper: newPaperSheet(w)}
	s.today = func() string { return time.Now().Format(time.DateOnly) }
	s.marked = newTickBox(w, say(words.HandOverMarked), func(on bool) {
		if !s.quiet {
			s.change(func(h *visit.HandedOver) { h.NutsMarked = on })
		}
	})
	s.note = newField(w, func(text string) { s.change(func(h *visit.HandedOver) { h.Note = text }) })
	s.handOver = newPress(w, say(words.HandOverNow), s.record)
	s.handOver.Importance = widget.HighImportance
	s.box = container.NewVBox(s.title, s.verdict, s.handOver, s.paper.box, s.standing, s.next, s.done,
		s.marked, s.studs.box, heading(say(words.PhotosTitle)), s.photos.strip.Content(), captioned(say(words.HandOverNote), s.note), s.safety)
	return s
}

// change changes the hand-over by an edit.
func (s *handOverSheet) change(how func(*visit.HandedOver)) {
	h := s.w.history.Now().Visit.HandedOver
	how(&h)
	s.w.do(&visit.HandOver{HandedOver: h})
}

// record hands the boat over today, or takes that back.
func (s *handOverSheet) record() {
	s.change(func(h *visit.HandedOver) {
		if h.Done() {
			h.Date = ""
		} else {
			h.Date = s.today()
		}
	})
}

// key takes a letter that means something at this stage.
func (s *handOverSheet) key(r rune) bool {
	switch r {
	case 'y':
		s.record()
	case 'k':
		s.change(func(h *visit.HandedOver) { h.NutsMarked = !h.NutsMarked })
	case 'q':
		s.w.win.Canvas().Focus(s.paper.kinds[0])
	case 'z':
		s.w.win.Canvas().Focus(s.note)
	default:
		return false
	}
	return true
}

// show fills the sheet.
func (s *handOverSheet) show(d *visit.Document) {
	sp := s.w.speaker
	h := &d.Visit.HandedOver
	write(s.title)
	s.handOver.SetText(sp.Say(words.HandOverNow, nil))
	if h.Done() {
		write(s.title, sp.Say(words.EditHandedOver, words.Args{"Date": h.Date}))
		s.handOver.SetText(sp.Say(words.HandOverBack, nil))
	}
	write(s.verdict, s.verdictLines(d)...)
	write(s.done, s.doneLines(d)...)
	write(s.standing, s.standingLines(d)...)
	write(s.next, s.nextLines(d)...)
	s.quiet = true
	s.marked.SetChecked(h.NutsMarked)
	s.quiet = false
	s.studs.show(d)
	s.photos.show()
	s.note.show(h.Note)
	var lines []string
	for _, c := range job.Cautions(job.HandingOver, d.Visit.State.Afloat()) {
		lines = append(lines, c.Text.Say(sp, s.w.units()))
	}
	write(s.safety, lines...)
}

// verdictLines are how she stands, and how she was found.
func (s *handOverSheet) verdictLines(d *visit.Document) []string {
	e, sp, u := s.w.mind.estimate, s.w.speaker, s.w.units()
	if e == nil {
		return nil
	}
	lines := say.Estimate(sp, u, &d.Visit, e)
	if n := len(e.States); e.Status == gauge.Ready && n > 1 {
		gap := func(k int) string { return u.LeafWithUnit(2 * math.Hypot(e.States[k].CosMM, e.States[k].SinMM)) }
		lines = append(lines, sp.Say(words.HandOverBeforeAfter, words.Args{"Before": gap(0), "After": gap(n - 1)}))
	}
	return lines
}

// doneLines are the moves and what was tightened.
func (s *handOverSheet) doneLines(d *visit.Document) []string {
	sp, u := s.w.speaker, s.w.units()
	lines := []string{sp.Say(words.HandOverDone, nil)}
	for i := range d.Visit.Events {
		switch e := &d.Visit.Events[i]; {
		case e.Move != nil:
			flats, slides := byMount(&d.Hull, e.Move)
			lines = append(lines, say.Move(sp, u, &d.Hull, flats, slides))
		case e.Fasten != nil:
			lines = append(lines, sp.Say(words.HandOverTightened, words.Args{"What": s.w.fastened(e.Fasten)}))
		}
	}
	if how := d.Visit.HandedOver.TurnedByHand; how != "" {
		lines = append(lines, sp.Say(words.Of("hand_turn", how), nil))
	}
	lines = append(lines, s.w.texts(job.TightPlaces(&d.Visit))...)
	if len(lines) == 1 {
		return nil
	}
	return lines
}

// fastened says one thing tightened, and to what.
func (w *Window) fastened(f *visit.Fasten) string {
	text := job.Fastened(w.speaker, w.units(), f)
	if f.Torque.Given() {
		text += ", " + job.TorqueOf(w.units(), f.Torque.NM())
	}
	return text
}

// standingLines are what keeps the result provisional.
func (s *handOverSheet) standingLines(d *visit.Document) []string {
	sp := s.w.speaker
	reasons := job.Provisional(&d.Hull, &d.Visit)
	if e := s.w.mind.estimate; len(reasons) == 0 && e != nil && e.Status == gauge.Ready && e.Verdict != gauge.Within {
		return []string{sp.Say(words.HandOverNotWithin, nil)}
	}
	if len(reasons) == 0 {
		return []string{sp.Say(words.HandOverFinal, nil)}
	}
	lines := []string{sp.Say(words.HandOverProvisional, nil)}
	for _, r := range reasons {
		lines = append(lines, r.Text.Say(sp, s.w.units()))
	}
	return lines
}

// nextLines are when to look again.
func (s *handOverSheet) nextLines(d *visit.Document) []string {
	lines := []string{s.w.speaker.Say(words.HandOverDue, nil)}
	for _, c := range job.Due(&d.Hull, &d.Visit) {
		lines = append(lines, c.Text.Say(s.w.speaker, s.w.units())+" "+s.w.from(c.Sources))
	}
	return lines
}
