package practice

// This file is the sheet a learner works on: gauge, turn, tighten and hand over.

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/kinematics/practice"
	"aligner/report/say"
	"aligner/scene"
)

// turnsDeg are how far shaft or flange can be turned.
var turnsDeg = []float64{0, 90, 180, 270}

// mountRow is a mount's name, its nut, its slide.
var mountRow = page.Shares{0.42, 0.32, 0.26}

type sheet struct {
	p *Page

	held, shaft, flange *page.Choice
	wipes               *page.Choice // what the buttons of the clock do
	hold                *page.Button
	at                  *page.Entry // places to be read
	clock               [12]*page.Button
	mounts              *fyne.Container
	nuts, slides        []*page.Entry // by mount
	tighten, over       *page.Button
	cause               *page.Choice
	all                 *container.Scroll
}

func newSheet(p *Page) *sheet {
	s := &sheet{p: p, mounts: container.NewVBox()}
	var ways, degrees, causes []string
	for _, h := range practice.HeldWays {
		ways = append(ways, p.say(words.Of("held", string(h)), nil))
	}
	for _, deg := range turnsDeg {
		degrees = append(degrees, p.desk.Looks.Units.Plain(deg, 0)+"°")
	}
	for _, c := range practice.Causes {
		causes = append(causes, say.PracticeCause(p.desk.Speaker, c))
	}
	s.held, s.shaft, s.flange = s.choice(ways), s.choice(degrees), s.choice(degrees)
	s.shaft.OnChanged = func(string) { s.flange.Put(s.shaft.SelectedIndex()) } // bolted or not, they are usually turned together
	s.cause = s.choice(causes)
	s.cause.PlaceHolder = p.say(words.PracticePick, nil)
	s.cause.ClearSelected()
	s.wipes = s.choice([]string{p.say(words.PracticeRead, nil), p.say(words.PracticeWipe, nil)})
	s.at = page.NewEntry(p.keys)
	s.at.SetPlaceHolder(p.say(words.PracticeReadHere, nil))
	s.at.OnSubmitted, s.at.Focused = s.read, s.intoView
	s.tighten = s.button(words.PracticeTighten, func() { p.do(practice.Act{Fasten: &practice.Fasten{}}) })
	s.lay()
	return s
}

func (s *sheet) choice(options []string) *page.Choice {
	c := page.NewChoice(s.p.keys, options, nil)
	c.Focused = s.intoView
	c.Put(0)
	return c
}

func (s *sheet) button(id words.ID, do func()) *page.Button {
	b := page.NewButton(s.p.keys, s.p.say(id, nil), do)
	b.Focused = s.intoView
	return b
}

// intoView shows what has the keyboard.
func (s *sheet) intoView(o fyne.CanvasObject) { page.IntoView(s.all, o) }

func (s *sheet) heading(id words.ID) fyne.CanvasObject {
	l := running()
	l.TextStyle.Bold = true
	l.SetText(s.p.say(id, nil))
	return l
}

func (s *sheet) lay() {
	labelled := func(id words.ID, o fyne.CanvasObject) fyne.CanvasObject {
		return container.New(page.Shares{0.5, 0.5}, cut(s.p.say(id, nil)), o)
	}
	s.hold = s.button(words.PracticeHold, s.gauge)
	const sixth = 1.0 / 6
	six := page.Shares{sixth, sixth, sixth, sixth, sixth, sixth}
	clock, after := container.New(six), container.New(six)
	for i := range s.clock {
		hour := (i+11)%12 + 1
		s.clock[i] = page.NewButton(s.p.keys, strconv.Itoa(hour), func() { s.press(hour) })
		s.clock[i].Focused = s.intoView
		if i < 6 {
			clock.Add(s.clock[i])
		} else {
			after.Add(s.clock[i])
		}
	}
	why := running()
	why.SetText(s.p.say(words.PracticeTurnedWhy, nil))
	wrong := running()
	wrong.SetText(s.p.say(words.PracticeWrong, nil))
	s.over = s.button(words.PracticeHandOver, s.handOver)
	s.all = page.Scrolled(container.NewVBox(
		s.heading(words.PracticeStageGauge), labelled(words.PracticeHeld, s.held), labelled(words.PracticeShaftTurned, s.shaft),
		labelled(words.PracticeFlangeTurned, s.flange), why, s.hold, s.at,
		labelled(words.PracticeButtons, s.wipes), clock, after, s.button(words.PracticeReadAll, s.readAll),
		s.heading(words.PracticeStageMove), s.mounts, s.button(words.PracticeTurn, s.turn),
		s.heading(words.PracticeStageEnd), s.tighten, wrong, s.cause, s.over))
}

// cut is text that is cut off where there is no room.
func cut(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Truncation = fyne.TextTruncateEllipsis
	return l
}

// boat makes the rows of a boat's mounts.
func (s *sheet) boat(w *practice.Work) {
	s.mounts.RemoveAll()
	s.nuts, s.slides = nil, nil
	nut := words.PracticeFlats
	if w.Hull().Mounts[0].Kind == "solid" {
		nut = words.PracticeShims
	}
	head := func(id words.ID) fyne.CanvasObject {
		l := running()
		l.SetText(s.p.say(id, nil))
		return l
	}
	s.mounts.Add(container.New(mountRow, widget.NewLabel(""), head(nut), head(words.PracticeSlide)))
	for _, m := range w.Hull().Mounts {
		n, slide := s.entry(), s.entry()
		s.nuts, s.slides = append(s.nuts, n), append(s.slides, slide)
		s.mounts.Add(container.New(mountRow, cut(s.p.desk.Speaker.Part(m.Name)), n, slide))
	}
	s.held.Put(0)
	s.shaft.Put(0)
	s.flange.Put(0)
	s.cause.ClearSelected()
	s.wipes.Put(0)
	s.at.SetText("")
	s.all.ScrollToTop()
}

func (s *sheet) entry() *page.Entry {
	e := page.NewEntry(s.p.keys)
	e.Focused = s.intoView
	e.SetPlaceHolder("0")
	e.OnChanged = func(string) { s.arrows() }
	e.OnSubmitted = func(string) { s.turn() }
	return e
}

// show lets only be pressed what can be done.
func (s *sheet) show(w *practice.Work) {
	for i, b := range s.clock {
		if w.Gauging() && reaches(w, float64(30*i)) {
			b.Enable()
		} else {
			b.Disable()
		}
	}
	if w.Tight() {
		s.tighten.Disable()
	} else {
		s.tighten.Enable()
	}
	s.arrows()
}

func reaches(w *practice.Work, deg float64) bool {
	for _, d := range w.ClockDeg() {
		if d == deg {
			return true
		}
	}
	return false
}

// gauge holds the shaft as chosen and begins a gauging.
func (s *sheet) gauge() {
	s.p.do(practice.Act{Gauge: &practice.Gauge{Held: practice.HeldWays[s.held.SelectedIndex()],
		ShaftTurnDeg: turnsDeg[s.shaft.SelectedIndex()], FlangeTurnDeg: turnsDeg[s.flange.SelectedIndex()]}})
	s.p.desk.Window.Canvas().Focus(s.at)
}

// press reads or wipes a place by its button.
func (s *sheet) press(hour int) {
	text := strconv.Itoa(hour)
	if s.wipes.SelectedIndex() > 0 {
		text = "-" + text
	}
	s.read(text)
}

// handOver hands the boat over, once it is said what else was wrong.
func (s *sheet) handOver() {
	i := s.cause.SelectedIndex()
	if i < 0 {
		s.p.tell(s.p.say(words.PracticeSayCause, nil), true)
		return
	}
	s.p.handOver(practice.Causes[i])
}

// read reads, or wipes, the places typed. All are understood before any is done.
func (s *sheet) read(text string) {
	var acts []practice.Act
	for _, word := range strings.Fields(text) {
		clock, wipes := strings.CutPrefix(word, "-")
		deg, err := visit.ParseClock(clock, visit.Direction(s.p.desk.Looks.LookingAft))
		if err != nil {
			s.p.tell(s.p.say(words.PracticeNotAClock, words.Args{"Text": word}), true)
			return
		}
		if w := s.p.s.work; w != nil && !reaches(w, deg) {
			s.p.tell(s.p.say(words.PracticeNoReach, words.Args{"Clock": clock}), true)
			return
		}
		if wipes {
			acts = append(acts, practice.Act{Clean: &practice.Place{ClockDeg: deg}})
		} else {
			acts = append(acts, practice.Act{Read: &practice.Place{ClockDeg: deg}})
		}
	}
	for _, a := range acts {
		if !s.p.do(a) {
			return
		}
	}
	s.at.SetText("")
}

// readAll reads every place in reach.
func (s *sheet) readAll() {
	if w := s.p.s.work; w != nil {
		for _, deg := range w.ClockDeg() {
			if !s.p.do(practice.Act{Read: &practice.Place{ClockDeg: deg}}) {
				return
			}
		}
	}
}

// typed is what stands in the rows; what is no number is told.
func (s *sheet) typed(w *practice.Work) (t practice.Turn, wrong string) {
	t = practice.Turn{NutFlats: map[string]int{}, SlideMM: map[string]float64{}}
	for i, m := range w.Hull().Mounts {
		if text := strings.TrimSpace(s.nuts[i].Text); text != "" {
			n, err := strconv.Atoi(strings.TrimPrefix(text, "+"))
			if err != nil {
				return t, text
			}
			t.NutFlats[m.Name] = n
		}
		if text := strings.TrimSpace(s.slides[i].Text); text != "" {
			mm, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
			if err != nil {
				return t, text
			}
			t.SlideMM[m.Name] = mm
		}
	}
	return t, ""
}

// turn turns what was typed.
func (s *sheet) turn() {
	w := s.p.s.work
	if w == nil {
		return
	}
	t, wrong := s.typed(w)
	if wrong != "" {
		s.p.tell(s.p.say(words.NotANumber, words.Args{"Text": wrong}), true)
		return
	}
	rounds := w.Tally().Rounds
	if s.p.do(practice.Act{Turn: &t}) && w.Tally().Rounds > rounds {
		for i := range s.nuts {
			s.nuts[i].SetText("")
			s.slides[i].SetText("")
		}
	}
}

// arrows draws at the mounts what is typed, as the hand will turn it.
func (s *sheet) arrows() {
	w := s.p.s.work
	if w == nil {
		return
	}
	t, _ := s.typed(w)
	h := w.Hull()
	s.p.picture.State.Turns = nil
	for i := range h.Mounts {
		m := &h.Mounts[i]
		steps, slide := float64(t.NutFlats[m.Name]), t.SlideMM[m.Name]
		if steps != 0 || slide != 0 {
			s.p.picture.State.Turns = append(s.p.picture.State.Turns, scene.Turn{Mount: i, Steps: steps, SlideMM: slide, Next: true,
				Text: say.TurnMark(s.p.desk.Speaker, s.p.desk.Looks.Units, m, steps, slide)})
		}
	}
	s.p.picture.Refresh()
}
