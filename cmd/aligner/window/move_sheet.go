package window

// This file is the sheet for moving: the plan in words, and a button that
// records it as done.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/say"
)

// moveSheet is the plan.
type moveSheet struct {
	w    *Window
	box  *fyne.Container
	text *widget.Label
	done *widget.Button
}

func newMoveSheet(w *Window) *moveSheet {
	s := &moveSheet{w: w, text: widget.NewLabel("")}
	s.text.Wrapping = fyne.TextWrapWord
	s.done = widget.NewButton(w.speaker.Say(words.MoveDone, nil), s.record)
	s.box = container.NewVBox(s.text, s.done)
	return s
}

// record writes the planned move into the visit and goes back to gauging.
func (s *moveSheet) record() {
	p, d := s.w.mind.plan, s.w.history.Now()
	if p == nil || !moves(p) {
		return
	}
	m := visit.Move{NutFlats: map[string]float64{}, SlideMM: map[string]float64{}}
	for i, mount := range d.Hull.Mounts {
		if p.NutFlats[i] != 0 {
			m.NutFlats[mount.Name] = float64(p.NutFlats[i])
		}
		if p.SlideMM[i] != 0 {
			m.SlideMM[mount.Name] = p.SlideMM[i]
		}
	}
	s.w.do(&visit.RecordMove{Move: m})
	s.w.enter(stageGauge)
}

// moves reports whether a plan has something to do.
func moves(p *plan.Plan) bool { return p.Status == plan.Found || p.Status == plan.Unsure }

// show fills the sheet.
func (s *moveSheet) show(d *visit.Document) {
	m := &s.w.mind
	sp, u := s.w.speaker, s.w.units()
	s.done.Hide()
	switch {
	case m.err != nil:
		s.text.SetText(s.w.told(m.err))
	case m.estimate == nil || m.estimate.Status != gauge.Ready:
		s.text.SetText(sp.Say(words.MoveNotYet, nil))
	case m.plan == nil:
		s.text.SetText(sp.Say(words.MoveThinking, nil))
	default:
		s.text.SetText(strings.Join(say.Plan(sp, u, &d.Hull, m.estimate, m.plan, d.Visit.State.Afloat()), "\n"))
		if moves(m.plan) {
			s.done.Show()
		}
	}
}
