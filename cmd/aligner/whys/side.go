package whys

// This file is one of the two boats: her picture, her steps so far, their sum.

import (
	"slices"
	"strconv"
	"strings"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/why"
	"aligner/report/say"
	"aligner/scene"
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// timesLarger is how much movement is exaggerated: one flat is seen.
const timesLarger = 150

// side is one boat.
type side struct {
	p       *Page
	hull    hulls.Hull
	held    kinematics.Held
	afloat  bool
	line    *kinematics.DriveLine
	model   *scene.Model
	picture *drawn.Picture
	words   *widget.Label
	why     *why.Why
	before  scene.Movement
	after   scene.Movement
	stage   scene.Movement // what is shown between them
	steps   []say.WhyStep
	err     error // why there are no steps
}

func newSide(p *Page, h hulls.Hull, afloat bool) *side {
	s := &side{p: p, hull: h, held: heldOf(&h), afloat: afloat, model: scene.NewModel(h), words: widget.NewLabel("")}
	s.words.Wrapping = fyne.TextWrapWord
	s.picture = drawn.NewPicture(drawn.Onlooker{Key: p.TypedKey, Rune: p.TypedRune})
	s.picture.SetModel(s.model)
	st := &s.picture.State
	st.Show = scene.ShowHull | scene.ShowNames | scene.ShowDirections | scene.ShowTrueLine | scene.ShowBed
	st.Words, st.Dark, st.Exaggeration, st.Afloat = say.Marks(p.desk.Speaker), p.desk.Looks.Dark, timesLarger, afloat
	s.picture.SetTextSize(p.desk.Looks.TextSize)
	s.line, s.err = kinematics.Prepare(h)
	return s
}

// take takes a move apart, on the mount of that name, or the one in its place.
func (s *side) take(m why.Move) {
	s.steps = nil
	if s.line == nil {
		return
	}
	names := &s.p.sides[0].hull
	own := make([]int, len(m.Mounts))
	for k, i := range m.Mounts {
		own[k] = slices.IndexFunc(s.hull.Mounts, func(o hulls.Mount) bool { return o.Name == names.Mounts[i].Name })
		if own[k] < 0 { // no mount of that name: the one in its place
			own[k] = min(i, len(s.hull.Mounts)-1)
		}
	}
	m.Mounts = own
	from := kinematics.State{Held: s.held, Afloat: s.afloat}
	s.why, s.err = why.With(s.line, &s.hull, from, m)
	if s.err != nil {
		return
	}
	s.steps = say.Why(s.p.desk.Speaker, s.p.desk.Looks.Units, &s.hull, s.why)
	// The picture reads the shaft's shape off the drive line, which stands at After
	// and is then put back.
	n := len(s.hull.Mounts)
	to := kinematics.State{Held: s.held, Afloat: s.afloat, LiftMM: make([]float64, n), SlideMM: make([]float64, n)}
	for _, i := range m.Mounts {
		if m.Slide {
			to.SlideMM[i] = m.Steps
		} else {
			to.LiftMM[i] = s.why.LiftMM
		}
	}
	s.model.Read(s.line, &to, &s.why.After, &s.after)
	var drawn kinematics.Result
	if s.err = s.line.Solve(&from, &drawn); s.err == nil {
		s.model.Read(s.line, &from, &drawn, &s.before)
	}
}

// tiltStep is the step that first names a place on the clock.
const tiltStep = 3

// show tells the first so many steps.
func (s *side) show(steps int) {
	say := s.p.say
	title := s.hull.Name + ", " + say(words.LogbookLayout, words.Args{"Layout": string(s.hull.Layout)}) + ":"
	if s.err != nil {
		s.words.SetText(title + "\n" + s.p.desk.Speaker.Retell(s.err.Error()))
		return
	}
	lines := []string{title}
	sum := 0.0
	for i, step := range s.steps[:min(steps, len(s.steps))] {
		text := strconv.Itoa(i+1) + ". " + step.Text
		if step.Adds {
			sum += step.AddMM
			text += " " + say(words.WhySoFar, words.Args{"Gap": signed(s.p.desk.Looks, sum)})
		}
		lines = append(lines, text)
	}
	// Words are taught where they are met first.
	switch {
	case steps == 1 && len(s.steps) > 0:
		lines = append(lines, say(words.WhyWordsBoat, nil))
	case steps == tiltStep && len(s.steps) > 0:
		lines = append(lines, say(words.WhyWordsClock, nil))
	}
	if steps == 0 {
		lines = append(lines, say(words.WhyBegin, words.Args{"Times": s.p.desk.Looks.Units.Plain(timesLarger, 0)}))
	}
	s.words.SetText(strings.Join(lines, "\n"))
	s.draw(steps)
}

// signed writes the sum with its sign.
func signed(l drawn.Looks, mm float64) string {
	sign := "+"
	if mm < 0 {
		sign = "\u2212"
		mm = -mm
	}
	return sign + l.Units.GapWithUnit(mm)
}
