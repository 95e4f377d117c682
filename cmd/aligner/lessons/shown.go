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
	if !s.state(w.State, w.Times) {
		return
	}
	view := w.View
	if view == "" {
		view = scene.ViewWhole
	}
	p := s.p
	p.picture.Fit(view, p.smooth())
}

// smooth reports whether the picture may turn to a view.
func (p *Page) smooth() bool {
	return !p.desk.Looks.NoMotion && fyne.CurrentApp().Settings().ShowAnimations()
}

// state shows the boat in a state, larger than life, and reports whether that can be
// worked out.
func (s *shown) state(state kinematics.State, times float64) bool {
	p, err := s.p, s.err
	if err == nil {
		err = s.line.Solve(&state, &s.result)
	}
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()))
		return false
	}
	s.model.Read(s.line, &state, &s.result, &s.moved)
	st := &p.picture.State
	st.Now, st.Afloat, st.Exaggeration = &s.moved, state.Afloat, times
	if state.Held == kinematics.Hanging {
		st.Exaggeration = min(times, s.model.MaxExaggeration(&s.moved))
	}
	st.Spot = nil
	if state.RunOut != (kinematics.RunOut{}) {
		st.Spot = &scene.Spot{TurnDeg: state.RunOut.ShaftTurnDeg + state.RunOut.ShaftLowDeg}
	}
	p.picture.Refresh()
	p.facesAnew()
	return true
}

// facesAnew shows the faces as worked out last, looking forward whatever the reader's
// own way: the lessons' clock positions are meant so.
func (p *Page) facesAnew() {
	looks := p.desk.Looks
	looks.LookingAft = false
	looks.TextSize *= float64(p.grow.Times())
	p.faces.SetResult(&p.show.result, p.show.lesson.Hull.Coupling.OuterDiameterMM, looks)
}

// chosen judges a choice.
func (p *Page) chosen(i int) {
	l := &p.lessons[p.at]
	if !p.asking() || i < 0 || i >= len(l.Question.Choices) {
		return
	}
	right, value, err := l.Right()
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()))
		return
	}
	p.judged(right == i, value)
}

// answered judges a number.
func (p *Page) answered(text string) {
	v, err := strconv.ParseFloat(decimal(text), 64)
	if err != nil || math.IsNaN(v) {
		p.tell(p.say(words.NotANumber, words.Args{"Text": text}))
		return
	}
	l := &p.lessons[p.at]
	ok, err := l.RightNumber(v)
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()))
		return
	}
	_, value, _ := l.Right() // the same as just judged by
	p.judged(ok, value)
}

// tell says something below the text; "" takes no room.
func (p *Page) tell(text string) {
	p.result.SetText(text)
	p.result.Hidden = text == ""
}

// judged says whether it was right, what was worked out, and why.
func (p *Page) judged(ok bool, value float64) {
	id := words.LessonWrong
	if ok {
		id = words.LessonRight
	}
	l := &p.lessons[p.at]
	p.tell(p.say(id, words.Args{"Value": l.Question.Of.Said(p.desk.Speaker, p.desk.Looks.Units, value), "Why": l.Question.Why.In(p.language())}))
	p.large.Refresh()
	p.scroll.ScrollToTop()
}
