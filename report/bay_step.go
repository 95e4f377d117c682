package report

// This file draws the steps of a bay card: what to do, what to expect, boxes for
// what is found, and when to stop.

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/paper"
	"aligner/report/say"
)

// bayStep draws one step and gives where the next begins.
func (d *drawer) bayStep(x, y, w, k float64, i int) float64 {
	step := &d.p.Steps[i]
	y += 2.2 * k
	d.Stroke(paper.Pen{MM: 0.5}, paper.Point{X: x, Y: y}, paper.Point{X: x + w, Y: y})
	y += 1 * k
	in := x + 11*k
	disc := y + 8.6*k
	d.Circle(paper.Point{X: x + 4.5*k, Y: y + 4*k}, 4.2*k, nil, paper.Shade(0))
	d.Mid(x, y+4*k, 9*k, paper.Type{Points: d.points(15, k), Bold: true, Align: paper.Centre, Grey: 255}, fmt.Sprint(i+1))
	y += d.Paragraph(in, y, x+w-in, paper.Type{Points: d.points(13, k), Bold: true}, d.stepMove(step))
	if how := d.stepHow(step); i == 0 || how != d.stepHow(&d.p.Steps[i-1]) { // once is enough
		y += d.Paragraph(in, y, x+w-in, paper.Type{Points: d.points(9.5, k)}, how)
	}
	y = d.expectTable(x, max(y+0.6*k, disc), w, k, step)
	sign := max(4.9*k, leastSign*d.crowded())
	d.StopSign(paper.Point{X: x + sign, Y: y + 0.3*k + sign}, sign, d.say(words.PaperStop, nil))
	in = max(in+1*k, x+2*sign+1)
	below := d.Paragraph(in, y+2.4*k, x+w-in, paper.Type{Points: d.points(11.5, k), Bold: true}, d.stopText(step))
	return y + max(0.3*k+2*sign, 2.4*k+below)
}

// leastSign is how large a stop sign stays, in mm from its middle: it is known by its
// shape, from further away than its word is read.
const leastSign = 3.9

// stepMove says what to turn and slide, each with its turns.
func (d *drawer) stepMove(step *plan.Step) string {
	// Mounts to which the same is done are named together.
	var said []string
	names := map[string][]int{}
	add := func(i int, what string) {
		if names[what] == nil {
			said = append(said, what)
		}
		names[what] = append(names[what], i)
	}
	for i := range d.h.Mounts {
		m := &d.h.Mounts[i]
		if n := step.NutFlats[i]; n != 0 {
			text := d.turnText(m, n)
			if m.Kind == hulls.Rubber {
				text += " (" + d.turns(n) + ")"
			}
			add(i, text)
		}
		if mm := step.SlideMM[i]; mm != 0 {
			add(i, d.slideText(mm))
		}
	}
	for i, what := range said {
		said[i] = d.mountNames(names[what]) + " " + what
	}
	return joinComma(said)
}

// stepHow says how it is done.
func (d *drawer) stepHow(step *plan.Step) string {
	if step.OnLever != nil {
		far := 0.0
		for _, mm := range step.SlideMM {
			if math.Abs(mm) > math.Abs(far) {
				far = mm
			}
		}
		side := words.ToPortWord
		if far < 0 {
			side = words.ToStarboardWord
		}
		return d.say(words.PlanStepLever, words.Args{"Length": d.u.Plain(math.Abs(far), 2) + " mm", "Side": d.say(side, nil),
			"Gap": d.u.LeafWithUnit(2 * amplitude(*step.OnLever)), "Opens": d.place(opensDeg(*step.OnLever))})
	}
	if slices.ContainsFunc(d.h.Mounts, func(m hulls.Mount) bool { return m.Kind == hulls.Solid }) {
		return d.say(words.PlanStepShims, nil)
	}
	return d.say(words.PlanStepNuts, nil)
}

// stopText says when a step has gone wrong.
func (d *drawer) stopText(step *plan.Step) string {
	args := words.Args{"Place": d.place(step.StopClockDeg), "Below": d.u.LeafWithUnit(step.StopBelowMM), "Above": d.u.LeafWithUnit(step.StopAboveMM)}
	if d.u.Leaf(step.StopBelowMM) == 0 {
		return d.say(words.PlanStopAbove, args)
	}
	return d.say(words.PlanStop, args)
}

// next says what to gauge next, as the reader sees it.
func (d *drawer) next() []string {
	switch d.e.Status {
	case gauge.Nothing:
		return []string{d.say(words.NothingGauged, nil)}
	case gauge.Moved:
		return []string{d.say(words.NotSinceMove, nil)}
	}
	lines := say.Next(d.s, d.u, d.e)
	if n := d.e.Next; n != nil { // said looking forward, whoever reads
		for i := range lines {
			lines[i] = strings.ReplaceAll(lines[i], say.Place(d.s, n.ClockDeg), d.place(n.ClockDeg))
		}
	}
	if len(lines) == 0 && !d.told() {
		lines = []string{d.say(words.NoGapGauged, nil)}
	}
	return lines
}
