package lessons

// This file is what the learner does to the boat of a lesson: takes a mount by its
// handle, or turns its nut by keys, sees the faces answer, and goes back. The lesson
// and its answer know nothing of it.

import (
	"math"
	"slices"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/kinematics"
	"aligner/report/say"
	"aligner/scene"
)

// own is what was done.
type own struct {
	state  *kinematics.State // nil: as in the lesson
	mount  int               // which the keys turn
	taken  float64           // of the one in the hand: where it was, mm
	frames drawn.Frames
}

var _ drawn.Hand = (*Page)(nil)

// watched is the thing to watch that is up, or was last before the question.
func (p *Page) watched() int { return min(p.step, len(p.lessons[p.at].Watch)-1) }

// change lets do change the boat's lifts and slides.
func (p *Page) change(do func(s *kinematics.State)) {
	if p.own.state == nil {
		s := p.lessons[p.at].Watch[p.watched()].State
		s.LiftMM, s.SlideMM = slices.Clone(s.LiftMM), slices.Clone(s.SlideMM)
		p.own.state = &s
	}
	do(p.own.state)
	p.own.frames.Note()
}

// showOwn shows the boat as the learner has her.
func (p *Page) showOwn() {
	if s := p.own.state; s != nil {
		p.show.state(*s, p.lessons[p.at].Watch[p.watched()].Times)
	}
	p.tellOwn()
}

// tellOwn says what was done beyond the lesson, or how to do something.
func (p *Page) tellOwn() {
	l := &p.lessons[p.at]
	h := &l.Hull
	text := p.say(words.LessonTry, words.Args{"Mount": h.Mounts[p.own.mount].Name})
	if p.own.state == nil {
		p.undo.Hide()
	} else {
		from := l.Watch[p.watched()].State
		steps, slides := make([]float64, len(h.Mounts)), make([]float64, len(h.Mounts))
		for i := range h.Mounts {
			steps[i] = math.Round(100*(p.own.state.LiftMM[i]-from.LiftMM[i])/h.Mounts[i].LiftPerStepMM()) / 100
			slides[i] = math.Round(100*(p.own.state.SlideMM[i]-from.SlideMM[i])) / 100
		}
		if done := say.Move(p.desk.Speaker, p.desk.Looks.Units, h, steps, slides); done != "" {
			text = p.say(words.LessonDone, words.Args{"Done": done})
		}
		p.undo.Show()
	}
	larger := p.say(words.CounterLarger, words.Args{"Times": p.desk.Looks.Units.Plain(math.Round(p.picture.State.Exaggeration), 0)})
	p.done.SetText(larger + " " + text)
}

// asInLesson puts the boat back.
func (p *Page) asInLesson() {
	if p.own.state == nil {
		return
	}
	p.own.state = nil
	w := &p.lessons[p.at].Watch[p.watched()]
	p.show.state(w.State, w.Times)
	p.tellOwn()
}

// turnNut turns the chosen mount's nut by so many flats, or shims.
func (p *Page) turnNut(by float64) {
	i := p.own.mount
	p.change(func(s *kinematics.State) { s.LiftMM[i] += by * p.show.lesson.Hull.Mounts[i].LiftPerStepMM() })
}

// nextMount chooses another for the keys.
func (p *Page) nextMount() {
	p.own.mount = (p.own.mount + 1) % len(p.show.lesson.Hull.Mounts)
	p.tellOwn()
}

// TakeHandle begins a drag.
func (p *Page) TakeHandle(id scene.HandleID) {
	p.own.mount = id.Mount()
	p.own.frames.Start()
	p.change(func(s *kinematics.State) {
		p.own.taken = s.LiftMM[id.Mount()]
		if id.Way() == scene.Sideways {
			p.own.taken = s.SlideMM[id.Mount()]
		}
	})
}

// mostMM is as far as a mount is let go in a lesson.
const mostMM = 8

// MoveHandle carries a mount along.
func (p *Page) MoveHandle(id scene.HandleID, mm float64, free bool) {
	v := min(max(p.own.taken+mm, -mostMM), mostMM)
	if !free {
		v = p.show.model.Snapped(id, v)
	}
	p.change(func(s *kinematics.State) {
		if id.Way() == scene.Sideways {
			s.SlideMM[id.Mount()] = v
		} else {
			s.LiftMM[id.Mount()] = v
		}
	})
}

// LeaveHandle ends a drag; the boat stays as she was put.
func (p *Page) LeaveHandle() { p.own.frames.Stop() }

// Touched takes the keyboard from a line being typed into.
func (p *Page) Touched() {
	if !p.asking() {
		p.desk.Window.Canvas().Focus(p.picture)
	}
}

// PictureKey takes the page's keys.
func (p *Page) PictureKey(k *fyne.KeyEvent) { p.TypedKey(k) }

// PictureRune takes the page's letters.
func (p *Page) PictureRune(r rune) { p.TypedRune(r) }
