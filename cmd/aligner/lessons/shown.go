package lessons

// This file is what a lesson shows, and what is said to an answer.

import (
	"math"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"aligner/assets/words"
	"aligner/kinematics"
	"aligner/report/lesson"
	"aligner/scene"
)

// textSize is the lessons' type.
const textSize = theme.SizeNameSubHeadingText

// shown is a lesson's boat made ready.
type shown struct {
	p      *Page
	lesson *lesson.Lesson
	line   *kinematics.DriveLine
	model  *scene.Model
	moved  scene.Movement
	result kinematics.Result
	err    error
}

func newShown(p *Page, l *lesson.Lesson) *shown {
	s := &shown{p: p, lesson: l, model: scene.NewModel(l.Hull)}
	s.line, s.err = kinematics.Prepare(l.Hull)
	return s
}

// step shows one thing to watch.
func (s *shown) step(i int) {
	w := &s.lesson.Watch[i]
	state := w.State
	if s.err == nil {
		s.err = s.line.Solve(&state, &s.result)
	}
	p := s.p
	if s.err != nil {
		p.result.SetText(p.desk.Speaker.Retell(s.err.Error()))
		return
	}
	s.model.Read(s.line, &state, &s.result, &s.moved)
	st := &p.picture.State
	st.Now, st.Afloat, st.Exaggeration = &s.moved, state.Afloat, w.Times
	if state.Held == kinematics.Hanging {
		st.Exaggeration = min(w.Times, s.model.MaxExaggeration(&s.moved))
	}
	st.Spot = nil
	if state.RunOut != (kinematics.RunOut{}) {
		st.Spot = &scene.Spot{TurnDeg: state.RunOut.ShaftTurnDeg + state.RunOut.ShaftLowDeg}
	}
	p.picture.Refresh()
	view := w.View
	if view == "" {
		view = scene.ViewWhole
	}
	p.picture.Fit(view, !p.desk.Looks.NoMotion && fyne.CurrentApp().Settings().ShowAnimations())
	p.faces.SetResult(&s.result, s.lesson.Hull.Coupling.OuterDiameterMM, p.desk.Looks)
}

// chosen judges a choice.
func (p *Page) chosen(i int) {
	l := &p.lessons[p.at]
	if !p.asking() || i < 0 || i >= len(l.Question.Choices) {
		return
	}
	right, value, err := l.Right()
	if err != nil {
		p.result.SetText(p.desk.Speaker.Retell(err.Error()))
		return
	}
	p.judged(right == i, value)
}

// answered judges a number.
func (p *Page) answered(text string) {
	v, err := strconv.ParseFloat(decimal(text), 64)
	if err != nil || math.IsNaN(v) {
		p.result.SetText(p.say(words.NotANumber, words.Args{"Text": text}))
		return
	}
	l := &p.lessons[p.at]
	ok, err := l.RightNumber(v)
	if err != nil {
		p.result.SetText(p.desk.Speaker.Retell(err.Error()))
		return
	}
	_, value, _ := l.Right() // the same as just judged by
	p.judged(ok, value)
}

// judged says whether it was right, what was worked out, and why.
func (p *Page) judged(ok bool, value float64) {
	id := words.LessonWrong
	if ok {
		id = words.LessonRight
	}
	l := &p.lessons[p.at]
	p.result.SetText(p.say(id, words.Args{"Value": p.desk.Looks.Units.Plain(value, 2) + " " + lesson.Quantities[l.Question.Of.Quantity], "Why": l.Question.Why.In(p.language())}))
	p.side.Refresh()
}
