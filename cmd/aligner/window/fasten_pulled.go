package window

// This file is what tightening moved: the gap before the first mount was
// tightened and now, place by place, and which mount pulled.

import (
	"math"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
	"aligner/report/say"
)

// pulledSheet is the columns and the sentences.
type pulledSheet struct {
	w       *Window
	box     *fyne.Container
	text    *widget.Label
	figures *figures
}

func newPulledSheet(w *Window) *pulledSheet {
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	s := &pulledSheet{w: w, text: running()}
	s.figures = newFigures(shares{0.25, 0.25, 0.25, 0.25}, say(words.FastenColumnPlace), say(words.FastenColumnBefore),
		say(words.FastenColumnNow), say(words.FastenColumnChange))
	s.box = container.NewVBox(heading(say(words.FastenChangeTitle)), s.text, s.figures.box)
	return s
}

// show compares.
func (s *pulledSheet) show(d *visit.Document) {
	e := s.w.mind.estimate
	lines, first := s.w.pulledBy(d)
	compared := first >= 0
	seen(s.figures.box, compared)
	switch {
	case e == nil || e.Status != gauge.Ready:
		lines = []string{s.w.speaker.Say(words.FastenNothingGauged, nil)}
	case e.TightenedSince:
		lines = append([]string{s.w.speaker.Say(words.FastenNotGauged, nil)}, lines...)
	case !compared:
		lines = []string{s.w.speaker.Say(words.FastenBefore, nil)}
	}
	if s.text.TextStyle.Bold != compared {
		s.text.TextStyle.Bold = compared
		s.text.Refresh()
	}
	write(s.text, lines...)
	if compared {
		s.figures.show(s.places(e, first))
	}
}

// places are the gaps round the clock of touching faces, in state first and in
// the last.
func (s *pulledSheet) places(e *gauge.Estimate, first int) [][]string {
	u := s.w.units()
	was := [2]float64{e.States[first].CosMM, e.States[first].SinMM}
	is := e.Gap.MeanMM
	var lines [][]string
	for _, deg := range e.ClockDeg {
		before, now := touchingMM(was, deg), touchingMM(is, deg)
		lines = append(lines, []string{say.Clock(deg, s.w.settings.LookingAft), u.LeafWithUnit(before), u.LeafWithUnit(now), u.Signed(now - before)})
	}
	return lines
}

// touchingMM is the gap at a place, the faces touching where it is least.
func touchingMM(ab [2]float64, deg float64) float64 {
	sin, cos := math.Sincos(deg * math.Pi / 180)
	return math.Hypot(ab[0], ab[1]) + ab[0]*cos + ab[1]*sin
}

// pulledBy says what each tightening since the last move did, the last one first,
// and which state of the estimate was the one before all of them; -1: none.
func (w *Window) pulledBy(d *visit.Document) (lines []string, first int) {
	e := w.mind.estimate
	if e == nil || e.Status != gauge.Ready {
		return nil, -1
	}
	first = len(e.States) - 1
	for first > 0 && e.States[first].Fastened && len(e.States[first].NutFlats) == 0 && len(e.States[first].SlideMM) == 0 {
		first--
	}
	if first == len(e.States)-1 {
		return nil, -1
	}
	r, err := w.mind.planner.Response()
	if err != nil {
		return nil, -1
	}
	for k := len(e.States) - 1; k > first; k-- {
		tight := job.TightenedBetween(&d.Hull, &d.Visit, e.States[k-1].LastEvent, e.States[k].FirstEvent)
		if len(tight) == 0 { // slackened, or the coupling's bolts
			continue
		}
		p := job.PulledBy(&d.Hull, r, gaussian(e, k-1), gaussian(e, k), tight)
		var names []string
		for _, i := range tight {
			names = append(names, w.speaker.Part(d.Hull.Mounts[i].Name))
		}
		if len(e.States)-1-first > 1 && len(names) > 0 {
			lines = append(lines, w.speaker.Say(words.FastenAfter, words.Args{"Mounts": w.listed(names)}))
		}
		for _, t := range p.Text(&d.Hull) {
			lines = append(lines, t.Say(w.speaker, w.units()))
		}
	}
	return lines, first
}

// gaussian is the gap of one state of an estimate.
func gaussian(e *gauge.Estimate, k int) gauge.Gaussian {
	g := gauge.Gaussian{MeanMM: [2]float64{e.States[k].CosMM, e.States[k].SinMM}}
	for a := range 2 {
		for b := range 2 {
			g.CovMM2[a][b] = e.StateCovMM2.At(2*k+a, 2*k+b)
		}
	}
	return g
}

// listed is "a, b and c".
func (w *Window) listed(names []string) string {
	n := len(names)
	if n < 2 {
		return strings.Join(names, "")
	}
	return w.speaker.Say(words.AndList, words.Args{"First": strings.Join(names[:n-1], ", "), "Last": names[n-1]})
}
