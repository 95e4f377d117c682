package window

// This file is the sheet for moving: what the boat answered so far, the step
// that is next with its two ways of being ticked, the steps round it, and under
// them what is tried beside the plan, what cannot be moved, and the way back.

import (
	"math"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
	"aligner/report/say"
)

// moveSheet is the plan and what is done of it.
type moveSheet struct {
	w   *Window
	box *fyne.Container

	learnt, text, title, turns, how, after *widget.Label
	done, other, all, gauge                *page.Button
	steps                                  *rows
	form                                   *otherForm
	tried                                  *trySheet
	stuck                                  *stuckSheet
	back                                   *backSheet
	safety                                 *widget.Label
}

func newMoveSheet(w *Window) *moveSheet {
	s := &moveSheet{w: w, learnt: running(), text: running(), title: heading(""), turns: heading(""), how: running(), after: heading(""),
		steps: newRows(), safety: running()}
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	s.done = newPress(w, say(words.MoveStepDone), s.tick)
	s.done.Importance = widget.HighImportance
	s.other = newPress(w, say(words.MoveStepOther), func() { s.form.open() })
	s.all = newPress(w, say(words.MoveAllSteps), s.record)
	s.gauge = newPress(w, say(words.MoveGaugeAgain), func() { w.enter(stageGauge) })
	s.gauge.Importance = widget.HighImportance
	s.form, s.tried, s.stuck, s.back = newOtherForm(w), newTrySheet(w), newStuckSheet(w), newBackSheet(w)
	s.box = container.NewVBox(s.learnt, s.title, s.turns, container.NewGridWithColumns(2, s.done, s.other), s.form.box, s.after, s.gauge,
		s.how, s.text, s.steps.box, s.all, s.tried.box, s.stuck.box, s.back.box, s.safety)
	return s
}

// tick records the next step as done as said.
func (s *moveSheet) tick() {
	step, d := s.w.mind.step(), s.w.history.Now()
	if step == nil {
		return
	}
	s.w.do(&visit.RecordMove{Move: asMove(&d.Hull, floats(step.NutFlats), step.SlideMM)})
}

// record records all the plan has left as done as said.
func (s *moveSheet) record() {
	if s.w.mind.step() == nil {
		return
	}
	d := s.w.history.Now()
	flats, slides := s.w.mind.left()
	s.w.do(&visit.RecordMove{Move: asMove(&d.Hull, flats, slides)})
}

// asMove is what was done, by mount, as a visit keeps it.
func asMove(h *hulls.Hull, flats, slideMM []float64) visit.Move {
	m := visit.Move{NutFlats: map[string]float64{}, SlideMM: map[string]float64{}}
	for i, mount := range h.Mounts {
		if flats[i] != 0 {
			m.NutFlats[mount.Name] = flats[i]
		}
		if slideMM[i] != 0 {
			m.SlideMM[mount.Name] = slideMM[i]
		}
	}
	return m
}

// key takes a letter that means something at this stage.
func (s *moveSheet) key(r rune) bool {
	switch r {
	case 'y':
		s.tick()
	case 'q':
		s.form.open()
	case 'k':
		s.stuck.toggle(s.w.chosen)
	case 'z':
		s.tried.record()
	default:
		return false
	}
	return true
}

// show fills the sheet.
func (s *moveSheet) show(d *visit.Document) {
	m := &s.w.mind
	ready := m.err == nil && m.basis != nil && m.basis.Status == gauge.Ready && m.plan != nil
	step := m.step()
	for _, o := range []fyne.CanvasObject{s.done, s.other} {
		seen(o, ready && step != nil)
	}
	seen(s.all, ready && step != nil && len(m.plan.Steps)-m.stepsDone > 1)
	over := ready && len(m.since) > 0 && step == nil
	seen(s.gauge, over)
	if step == nil {
		s.form.close()
	}
	write(s.after)
	if over {
		write(s.after, s.w.speaker.Say(words.MoveAllDone, nil))
	}
	s.tellText(d)
	s.tellStep(d)
	s.tellSteps(d)
	s.tried.show(d)
	s.stuck.show(d)
	s.back.show(d)
	s.tellSafety(d)
}

// tellText is the plan as a whole, or why there is none; and the learning.
func (s *moveSheet) tellText(d *visit.Document) {
	m, sp, u := &s.w.mind, s.w.speaker, s.w.units()
	write(s.learnt)
	switch {
	case m.err != nil:
		write(s.text, s.w.told(m.err))
	case m.basis == nil || m.basis.Status != gauge.Ready:
		write(s.text, sp.Say(words.MoveNotYet, nil))
	case m.plan == nil:
		write(s.text, sp.Say(words.MoveThinking, nil))
	default:
		if l := m.plan.Learnt; l != nil {
			off := false
			for i := range l.Answers {
				off = off || l.Answers[i].Off()
			}
			if s.learnt.TextStyle.Bold != off {
				s.learnt.TextStyle.Bold = off
				s.learnt.Refresh()
			}
			write(s.learnt, say.Answers(sp, u, &d.Hull, l)...)
		}
		if !moves(m.plan) {
			if len(m.since) > 0 {
				write(s.text)
				return
			}
			write(s.text, say.Plan(sp, u, &d.Hull, m.basis, m.plan, d.Visit.State.Afloat())...)
			return
		}
		write(s.text, s.planLines(d)...)
	}
}

func (s *moveSheet) planLines(d *visit.Document) []string {
	m, sp, u := &s.w.mind, s.w.speaker, s.w.units()
	p := m.plan
	id, minutes := words.MovePlanHead, p.Minutes
	var lines []string
	if m.anew {
		lines = append(lines, sp.Say(words.MoveReplanned, nil))
		id = words.MovePlanLeft
	}
	lines = append(lines, sp.Say(id, words.Args{"Minutes": int(math.Ceil(minutes/5) * 5), "Chance": say.Chance(sp, p.Probability),
		"Gap": u.LeafWithUnit(2 * math.Hypot(p.Expected.MeanMM[0], p.Expected.MeanMM[1]))}))
	return append(lines, say.PlanNotes(sp, u, &d.Hull, m.basis, p)...)
}

// tellStep is the step that is next.
func (s *moveSheet) tellStep(d *visit.Document) {
	m, sp, u := &s.w.mind, s.w.speaker, s.w.units()
	step := m.step()
	if step == nil {
		write(s.title)
		write(s.turns)
		write(s.how)
		return
	}
	write(s.title, sp.Say(words.MoveStepHead, words.Args{"Number": m.stepsDone + 1, "All": len(m.plan.Steps)}))
	write(s.turns, say.Turns(sp, u, &d.Hull, floats(step.NutFlats), step.SlideMM)...)
	lines := say.Step(sp, u, &d.Hull, m.basis, m.plan, m.stepsDone)[1:]
	for i := range lines {
		lines[i] = strings.TrimSpace(lines[i])
	}
	write(s.how, lines...)
}

// tellSteps lists what was done since the gauging and what the plan has to come.
func (s *moveSheet) tellSteps(d *visit.Document) {
	m, sp, u := &s.w.mind, s.w.speaker, s.w.units()
	var list []row
	for _, done := range m.since {
		flats, slides := byMount(&d.Hull, &done)
		list = append(list, row{sp.Say(words.MoveDoneSoFar, words.Args{"What": say.Move(sp, u, &d.Hull, flats, slides)}), job.Done})
	}
	if m.plan != nil && moves(m.plan) {
		for i := m.stepsDone + 1; i < len(m.plan.Steps); i++ {
			step := &m.plan.Steps[i]
			list = append(list, row{sp.Say(words.MoveToCome, words.Args{"Number": strconv.Itoa(i + 1),
				"What": say.Move(sp, u, &d.Hull, floats(step.NutFlats), step.SlideMM)}), job.ToCome})
		}
	}
	s.steps.show(list)
}

// byMount is a move in the hull's order of mounts.
func byMount(h *hulls.Hull, m *visit.Move) (flats, slideMM []float64) {
	for _, mount := range h.Mounts {
		flats, slideMM = append(flats, m.NutFlats[mount.Name]), append(slideMM, m.SlideMM[mount.Name])
	}
	return flats, slideMM
}

// tellSafety is what can hurt somebody here, how the mounts are built, and where
// all that comes from.
func (s *moveSheet) tellSafety(d *visit.Document) {
	sp, u := s.w.speaker, s.w.units()
	why := words.TurnWhy
	if d.Hull.Mounts[0].Kind == hulls.Solid {
		why = words.TurnWhySolid
	}
	lines := []string{sp.Say(words.MoveSafety, nil) + ":"}
	for _, c := range job.Cautions(job.Moving, d.Visit.State.Afloat()) {
		lines = append(lines, c.Text.Say(sp, u))
	}
	if p := s.w.mind.plan; p != nil && moves(p) {
		lines = append(lines, sp.Say(words.PlanCautions, nil), sp.Say(words.PlanDrawBack, words.Args{"Length": u.Plain(p.DrawBackMM, 1) + " mm"}))
	}
	write(s.safety, append(lines, sp.Say(why, nil), sp.Say(words.MoveSources, nil))...)
}
