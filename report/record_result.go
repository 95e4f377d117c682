package report

// This file writes what came of the readings: the estimate with its error, the
// moves as expected and as found, what tightening did.

import (
	"fmt"
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/kinematics"
	"aligner/report/job"
	"aligner/report/paper"
	"aligner/report/say"
)

// recordEstimate is what the readings mean.
func (f *flow) recordEstimate() {
	if !f.told() {
		f.section(words.PaperSecEstimate)
		f.paragraphs(f.next()...)
		f.paragraphs(say.Odd(f.s, f.u, f.e)...)
		return
	}
	f.sectionWith(words.PaperSecEstimate, 76)
	x, _, w, _ := f.InsideMM()
	const clock = 58.0
	top := f.y
	ab := f.present()
	f.drawClock(paper.Point{X: x + w - clock/2, Y: top + clock/2}, clock/2, clockFace{gapMM: &ab, atDeg: f.positions()})
	below := f.Paragraph(x+w-clock, top+clock, clock, paper.Type{Points: 8, Align: paper.Centre}, f.clockNote())
	y := top
	for _, line := range say.Estimate(f.s, f.u, f.v, f.e) {
		y += f.Paragraph(x, y, w-clock-4, bodyType, line) + 0.8
	}
	f.y = max(y, top+clock+below) + 2
	cov := f.e.Gap.CovMM2
	sd := func(v float64) string { return f.exact(math.Sqrt(v)) }
	f.pairs(
		[2]string{f.say(words.PaperTopBottom, nil), f.exact(f.e.Gap.MeanMM[0]) + " ± " + sd(cov[0][0])},
		[2]string{f.say(words.PaperStbdPort, nil), f.exact(f.e.Gap.MeanMM[1]) + " ± " + sd(cov[1][1])},
		[2]string{f.say(words.PaperCovariance, nil), f.covariance(cov)},
		[2]string{f.say(words.PaperFeelUsed, nil), f.u.Thickness(f.e.FeelMM)},
		[2]string{f.say(words.PaperRunOutShaft, nil), f.runOut(0)}, [2]string{f.say(words.PaperRunOutFlange, nil), f.runOut(1)})
	f.paragraphs(f.say(words.PaperAmplitudes, nil))
	f.recordWaves()
}

// covariance writes AA, AB, BB; what is no more than rounding is 0.
func (f *flow) covariance(c [2][2]float64) string {
	if math.Abs(c[0][1]) < 1e-9*math.Sqrt(c[0][0]*c[1][1]) {
		c[0][1] = 0
	}
	text := fmt.Sprintf("%.3g; %.3g; %.3g mm²", c[0][0], c[0][1], c[1][1])
	if f.u.DecimalComma {
		text = strings.ReplaceAll(text, ".", ",")
	}
	return text
}

// exact writes a number of the estimate to a ten-thousandth of a mm.
func (f *flow) exact(mm float64) string { return f.u.Plain(math.Round(mm*1e4)/1e4, 4) + " mm" }

// runOut says one half's.
func (f *flow) runOut(half int) string {
	r := f.e.RunOut[half]
	if !r.Measured {
		return ""
	}
	return f.say(words.PaperRunOutIs, words.Args{"TIR": f.u.LeafWithUnit(2 * amplitude(r.MeanMM)), "Opens": f.place(opensDeg(r.MeanMM))})
}

// recordMoves is each move as expected and as found.
func (f *flow) recordMoves() error {
	f.section(words.PaperSecMoves)
	if !f.ready() || len(f.e.States) < 2 {
		f.paragraphs(f.say(words.PaperNoMoves, nil))
		return nil
	}
	expected, err := f.expectedStates()
	if err != nil {
		return err
	}
	var rows [][]string
	for i, st := range f.e.States {
		now := [2]float64{st.CosMM, st.SinMM}
		what, then := f.say(words.PaperAsFound, nil), ""
		if i > 0 {
			what, then = f.stateText(i), f.pairText(expected[i])
		}
		off := ""
		if i > 0 {
			off = f.u.LeafWithUnit(2 * amplitude([2]float64{now[0] - expected[i][0], now[1] - expected[i][1]}))
		}
		rows = append(rows, []string{fmt.Sprint(i + 1), what, then, f.pairText(now), off})
	}
	said := func(id words.ID) string { return f.say(id, nil) }
	f.table([]column{{"", 0.05, paper.Left}, {said(words.PaperDone), 0.38, paper.Left}, {said(words.PaperExpected), 0.22, paper.Left},
		{said(words.PaperFoundGap), 0.22, paper.Left}, {said(words.PaperOff), 0.13, paper.Right}}, rows)
	f.paragraphs(f.say(words.PaperExpectedHow, nil))
	f.paragraphs(say.Learnt(f.s, f.u, f.h, f.p.Learnt)...)
	f.pathPlot(expected)
	return nil
}

// pairText says a gap as its spread and where it opens.
func (f *flow) pairText(ab [2]float64) string {
	size := 2 * amplitude(ab)
	if f.u.Leaf(size) == 0 {
		return f.say(words.PaperParallel, nil)
	}
	return f.say(words.PaperSpreadAt, words.Args{"Gap": f.u.LeafWithUnit(size), "Opens": f.clock(opensDeg(ab))})
}

// stateText says what led to a state.
func (f *flow) stateText(i int) string {
	st := f.e.States[i]
	var parts []string
	for m := range f.h.Mounts {
		mount := &f.h.Mounts[m]
		if n := st.NutFlats[mount.Name]; n != 0 {
			parts = append(parts, f.nutText(mount, n))
		}
		if mm := st.SlideMM[mount.Name]; mm != 0 {
			parts = append(parts, f.s.Part(mount.Name)+" "+f.slideText(mm))
		}
	}
	if st.Fastened {
		parts = append(parts, f.say(words.PaperTightenedWord, nil))
	}
	return joinComma(parts)
}

// expectedStates is where the model puts the gap after each change, going on from
// what was found before it.
func (f *flow) expectedStates() ([][2]float64, error) {
	expected := make([][2]float64, len(f.e.States))
	before, _, err := f.beforeAfter()
	if err != nil {
		return nil, err
	}
	line, err := kinematics.Prepare(*f.h)
	if err != nil {
		return nil, err
	}
	state := kinematics.State{Held: f.e.Aim, Afloat: f.v.State.Afloat(), LiftMM: make([]float64, len(f.h.Mounts)), SlideMM: make([]float64, len(f.h.Mounts))}
	if before != nil {
		copy(state.LiftMM, before.state.LiftMM)
		copy(state.SlideMM, before.state.SlideMM)
	}
	var from, to kinematics.Result
	for i := 1; i < len(f.e.States); i++ {
		if err := line.Solve(&state, &from); err != nil {
			return nil, err
		}
		for m, mount := range f.h.Mounts {
			state.LiftMM[m] += f.e.States[i].NutFlats[mount.Name] * mount.LiftPerStepMM()
			state.SlideMM[m] += f.e.States[i].SlideMM[mount.Name]
		}
		if err := line.Solve(&state, &to); err != nil {
			return nil, err
		}
		was := f.e.States[i-1]
		expected[i] = [2]float64{was.CosMM + to.Gap.CosMM - from.Gap.CosMM, was.SinMM + to.Gap.SinMM - from.Gap.SinMM}
	}
	return expected, nil
}

// recordFastening is what was tightened, to what, and what that moved.
func (f *flow) recordFastening() {
	f.section(words.PaperSecFasten)
	var rows [][]string
	for i, e := range f.v.Events {
		if e.Fasten != nil {
			rows = append(rows, []string{fmt.Sprint(i + 1), job.Fastened(f.s, f.u, e.Fasten), orNone(f.torque(e.Fasten.Torque), f.say(words.PaperNotMeasured, nil)), e.Fasten.Note})
		}
	}
	if len(rows) == 0 {
		f.paragraphs(f.say(words.PaperNotFastened, nil))
	} else {
		said := func(id words.ID) string { return f.say(id, nil) }
		f.table([]column{{said(words.PaperEventShort), 0.08, paper.Left}, {said(words.PaperWhat), 0.34, paper.Left}, {said(words.PaperTorque), 0.24, paper.Left}, {said(words.PaperNote), 0.34, paper.Left}}, rows)
	}
	for i, st := range f.e.States {
		if i > 0 && st.Fastened {
			was := f.e.States[i-1]
			f.paragraphs(f.say(words.PaperFastenedGap, words.Args{"Before": f.pairText([2]float64{was.CosMM, was.SinMM}), "After": f.pairText([2]float64{st.CosMM, st.SinMM})}))
		}
	}
	oiled, makerNM := job.CouplingBolts(f.v)
	_, tightening := job.FastenOrder(f.h, oiled, makerNM)
	if tightening.NM > 0 {
		for _, t := range job.TorqueText(f.h.Coupling.Bolts, oiled, tightening, nil) {
			f.paragraphs(t.Say(f.s, f.u))
		}
	}
}

// recordMounts is how each mount was found and left.
func (f *flow) recordMounts() {
	f.section(words.PaperSecMounts)
	var rows [][]string
	mm := func(known bool, v float64) string {
		if !known {
			return "______ mm"
		}
		return f.u.Plain(v, 1) + " mm"
	}
	for _, m := range f.h.Mounts {
		found := f.v.Found(m.Name)
		rows = append(rows, []string{f.s.Part(m.Name), f.say(words.Of("paper_free", string(found.Nut)), nil), f.say(words.Of("paper_free", string(found.Slide)), nil),
			mm(found.StudFoundMM.Known, found.StudFoundMM.Value), mm(found.StudLeftMM.Known, found.StudLeftMM.Value), found.Note})
	}
	said := func(id words.ID) string { return f.say(id, nil) }
	f.table([]column{{said(words.PaperMount), 0.22, paper.Left}, {said(words.PaperNut), 0.12, paper.Left}, {said(words.PaperSlide), 0.12, paper.Left},
		{said(words.PaperStudFound), 0.16, paper.Left}, {said(words.PaperStudLeft), 0.16, paper.Left}, {said(words.PaperNote), 0.22, paper.Left}}, rows)
}
