package window

// This file is a try beside the plan: what is dragged in the picture, what it
// would cost and come to, in columns with the engine as it is now and as planned.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/say"
)

// trySheet is the columns and the button that takes a try as done.
type trySheet struct {
	w         *Window
	box       *fyne.Container
	what      *widget.Label
	figures   *figures
	warnings  *widget.Label
	done      *page.Button
	now, plan weighed
}

// weighed keeps what a move came to until something else is asked.
type weighed struct {
	basis *gauge.Estimate
	plan  *plan.Plan
	steps int
	since int
	to    *plan.Weighed
}

func newTrySheet(w *Window) *trySheet {
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	s := &trySheet{w: w, what: running(), warnings: running()}
	s.figures = newFigures(shares{0.4, 0.2, 0.2, 0.2}, "", say(words.MoveColumnNow), say(words.MoveColumnPlan), say(words.MoveColumnTry))
	s.done = newPress(w, say(words.MoveTryRecord), s.record)
	s.box = container.NewVBox(heading(say(words.MoveTryTitle)), s.what, s.done, s.figures.box, s.warnings, small(say(words.MoveTryHow)))
	return s
}

// record takes what is tried as done.
func (s *trySheet) record() { s.w.do(&visit.RecordTry{}) }

// weigh asks what a move would come to from where the engine stands now; nil
// where that cannot be said.
func (s *trySheet) weigh(m visit.Move) *plan.Weighed {
	t := &s.w.mind
	w, err := t.planner.Weigh(&t.base, t.basis, plan.Settings{Since: t.since}, m)
	if err != nil {
		return nil
	}
	return w
}

// kept weighs anew only when something else is asked than last time: while a
// hand drags only the try changes.
func (s *trySheet) kept(k *weighed, m visit.Move) *plan.Weighed {
	t := &s.w.mind
	now := weighed{basis: t.basis, plan: t.plan, steps: t.stepsDone, since: len(t.since)}
	if k.basis != now.basis || k.plan != now.plan || k.steps != now.steps || k.since != now.since {
		now.to = s.weigh(m)
		*k = now
	}
	return k.to
}

// show fills the columns.
func (s *trySheet) show(d *visit.Document) {
	t, sp, u := &s.w.mind, s.w.speaker, s.w.units()
	ready := t.err == nil && t.basis != nil && t.basis.Status == gauge.Ready && t.basis.GapCount >= 3 && t.planner != nil
	seen(s.box, ready)
	if !ready {
		return
	}
	flats, slides := t.left()
	columns := []*plan.Weighed{s.kept(&s.now, visit.Move{}), nil, nil}
	if t.step() != nil {
		columns[1] = s.kept(&s.plan, asMove(&d.Hull, flats, slides))
	}
	m := d.Tried()
	trying := len(m.NutFlats) > 0 || len(m.SlideMM) > 0
	seen(s.done, trying)
	write(s.what, sp.Say(words.MoveTryNothing, nil))
	write(s.warnings)
	if trying {
		write(s.what, sp.Say(words.MoveTryMove, words.Args{"Move": say.Move(sp, u, &d.Hull, d.Trial.Steps, d.Trial.SlideMM)}))
		columns[2] = s.weigh(m)
		if w := columns[2]; w != nil {
			write(s.warnings, say.Warnings(sp, w.Warnings)...)
		}
	}
	s.figures.show(s.lines(d, columns))
}

// lines are the figures, one thing a line.
func (s *trySheet) lines(d *visit.Document, columns []*plan.Weighed) [][]string {
	sp, u := s.w.speaker, s.w.units()
	var lines [][]string
	add := func(name string, figure func(*plan.Weighed) string) {
		line := []string{name}
		for _, w := range columns {
			text := "-"
			if w != nil {
				text = figure(w)
			}
			line = append(line, text)
		}
		lines = append(lines, line)
	}
	add(sp.Say(words.MoveRowMinutes, nil), func(w *plan.Weighed) string { return u.Plain(math.Round(w.Minutes), 0) })
	add(sp.Say(words.MoveRowChance, nil), func(w *plan.Weighed) string { return u.Plain(math.Round(100*w.Probability), 0) })
	add(sp.Say(words.MoveRowGap, words.Args{"Unit": u.GapUnit()}), func(w *plan.Weighed) string {
		return u.LeafWithUnit(2 * math.Hypot(w.Expected.MeanMM[0], w.Expected.MeanMM[1]))
	})
	for i, m := range d.Hull.Mounts {
		args := words.Args{"Mount": m.Name}
		add(sp.Say(words.MoveRowLoad, args), func(w *plan.Weighed) string { return u.Force(w.Mounts[i].LoadN) })
	}
	for i, m := range d.Hull.Mounts {
		args := words.Args{"Mount": m.Name}
		add(sp.Say(words.MoveRowThread, args), func(w *plan.Weighed) string {
			return room(u, w.Mounts[i].UpMM) + " / " + room(u, w.Mounts[i].DownMM)
		})
	}
	return lines
}

// room writes what is left of a range in mm; an exclamation mark says beyond.
func room(u say.Units, mm float64) string {
	text := u.Plain(mm, 1)
	if mm < -1e-9 {
		text += "!"
	}
	return text
}
