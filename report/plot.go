package report

// This file plots the way the gap went from move to move: each state a point in
// the plane of the clock, as far from the middle as the faces' spread and in the
// direction they open, with the circle of the rule.

import (
	"fmt"
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/report/paper"
)

func joinComma(parts []string) string { return strings.Join(parts, ", ") }

// pathPlot draws found states as numbered discs, expected ones as crosses.
func (f *flow) pathPlot(expected [][2]float64) {
	const size = 72.0
	f.need(size + 8)
	f.y += 2.5
	x, _, w, _ := f.InsideMM()
	c := paper.Point{X: x + size/2 + 6, Y: f.y + size/2}
	widest := f.e.LimitMM
	for i, s := range f.e.States {
		widest = max(widest, 2*math.Hypot(s.CosMM, s.SinMM), 2*amplitude(expected[i]))
	}
	full, ring := nice(widest / f.unitMM())
	scale := (size/2 - 5) / (full * f.unitMM())
	at := func(ab [2]float64) paper.Point {
		return paper.Around(c, 2*amplitude(ab)*scale, f.seenRad(opensDeg(ab)))
	}
	for r := ring; r <= full*1.001; r += ring {
		f.Circle(c, r*f.unitMM()*scale, &paper.Pen{MM: 0.12, Grey: 150}, nil)
		label := paper.Around(c, r*f.unitMM()*scale, 0.4)
		f.Mid(label.X, label.Y, 14, paper.Type{Points: 6.5, Grey: 80}, f.u.Plain(r, 2)+" "+f.u.GapUnit())
	}
	for hour := 0; hour < 12; hour += 3 {
		a := f.seenRad(float64(hour) * 30)
		f.Stroke(paper.Pen{MM: 0.12, Grey: 150}, c, paper.Around(c, size/2-4, a))
	}
	t := paper.Type{Points: 8, Bold: true, Align: paper.Centre}
	for i, text := range []string{"12", f.say(words.PaperStarboard, nil), "6", f.say(words.PaperPort, nil)} {
		p := paper.Around(c, size/2-1, f.seenRad(float64(i)*90))
		f.Mid(p.X-6, p.Y, 12, t, text)
	}
	f.limitCircle(at(f.e.TargetMM), f.e.LimitMM*scale)
	for i := 1; i < len(f.e.States); i++ {
		from, to := f.e.States[i-1], f.e.States[i]
		f.Stroke(paper.Pen{MM: 0.4}, at([2]float64{from.CosMM, from.SinMM}), at([2]float64{to.CosMM, to.SinMM}))
		cross := at(expected[i])
		f.Stroke(paper.Pen{MM: 0.4}, paper.Point{X: cross.X - 1.3, Y: cross.Y - 1.3}, paper.Point{X: cross.X + 1.3, Y: cross.Y + 1.3})
		f.Stroke(paper.Pen{MM: 0.4}, paper.Point{X: cross.X - 1.3, Y: cross.Y + 1.3}, paper.Point{X: cross.X + 1.3, Y: cross.Y - 1.3})
	}
	disc := 2.0
	if len(f.e.States) > 6 {
		disc = 1.6
	}
	for i, s := range f.e.States {
		p := at([2]float64{s.CosMM, s.SinMM})
		f.Circle(p, disc, &paper.Pen{MM: 0.3}, paper.Shade(255))
		f.Mid(p.X-disc, p.Y, 2*disc, paper.Type{Points: 3.7 * disc, Bold: true, Align: paper.Centre}, fmt.Sprint(i+1))
	}
	f.Paragraph(x+size+16, f.y+6, w-size-16, bodyType, f.say(words.PaperPlotSays, words.Args{"Seen": f.seen(), "Limit": f.u.LeafWithUnit(f.e.LimitMM)}))
	f.y += size + 2
}

// limitCircle is the rule, dashed, so that it is told from the rings.
func (f *flow) limitCircle(c paper.Point, r float64) {
	f.Circle(c, r, &paper.Pen{MM: 0.5, Dash: []float64{1.5, 1.2}}, nil)
}

func (d *drawer) unitMM() float64 {
	if d.u.Metric {
		return 1
	}
	return 0.0254
}

// nice is a full scale at or above a value, and the step of its rings.
func nice(v float64) (full, step float64) {
	step = math.Pow(10, math.Floor(math.Log10(max(v, 1e-6)/2)))
	for _, times := range []float64{1, 2, 5, 10} {
		if v <= 4*times*step {
			step *= times
			break
		}
	}
	return math.Ceil(v/step-1e-9) * step, step
}
