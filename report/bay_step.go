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
	"aligner/kinematics/plan"
	"aligner/report/paper"
	"aligner/report/say"
)

// bayStep draws one step and gives where the next begins.
func (d *drawer) bayStep(y, k float64, i int) float64 {
	x, _, w, _ := d.InsideMM()
	step := &d.p.Steps[i]
	y += 2.2 * k
	d.Stroke(paper.Pen{MM: 0.5}, paper.Point{X: x, Y: y}, paper.Point{X: x + w, Y: y})
	y += 1 * k
	in := x + 11*k
	d.Circle(paper.Point{X: x + 4.5*k, Y: y + 4*k}, 4.2*k, nil, paper.Shade(0))
	d.Mid(x, y+4*k, 9*k, paper.Type{Points: 15 * k, Bold: true, Align: paper.Centre, Grey: 255}, fmt.Sprint(i+1))
	y += d.Paragraph(in, y, x+w-in, paper.Type{Points: 13 * k, Bold: true}, d.stepMove(step))
	y += d.Paragraph(in, y, x+w-in, paper.Type{Points: 9.5 * k}, d.stepHow(step))
	y = d.expectTable(y+0.6*k, k, step)
	d.StopSign(paper.Point{X: x + 4.5*k, Y: y + 4.2*k}, 4.4*k, d.say(words.PaperStop, nil))
	below := d.Paragraph(in, y+1.6*k, x+w-in, paper.Type{Points: 11 * k, Bold: true}, d.stopText(step))
	return y + max(8.5*k, 1.6*k+below)
}

// stepMove says what to turn and slide, each with its turns.
func (d *drawer) stepMove(step *plan.Step) string {
	var parts []string
	for i := range d.h.Mounts {
		m := &d.h.Mounts[i]
		if n := step.NutFlats[i]; n != 0 {
			text := m.Name + " " + d.turnText(m, n)
			if m.Kind == hulls.Rubber {
				text += " (" + d.turns(n) + ")"
			}
			parts = append(parts, text)
		}
		if mm := step.SlideMM[i]; mm != 0 {
			parts = append(parts, m.Name+" "+d.slideText(mm))
		}
	}
	return strings.Join(parts, ", ")
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

// expectTable draws the gap to expect at each position, the leaves that should
// and should not go, and empty boxes.
func (d *drawer) expectTable(y, k float64, step *plan.Step) float64 {
	positions := d.positions()
	expect, leaves, found := make([]string, len(positions)), make([]string, len(positions)), make([]string, len(positions))
	for i, deg := range positions {
		gap := step.GapAtMM(deg)
		expect[i] = d.leaf(gap)
		goes, stops := d.leavesFor(gap)
		leaves[i] = d.goesStops(goes, stops)
	}
	return d.clockTable(y, k, []clockRow{
		{d.say(words.PaperExpect, words.Args{"Unit": d.u.GapUnit()}), expect, true},
		{d.say(words.PaperLeaves, nil), leaves, false},
		{d.say(words.PaperFound, nil), found, false},
	})
}

// clockRow is one line of a table with a column for each position. Empty texts
// make boxes to write in.
type clockRow struct {
	label string
	texts []string
	bold  bool
}

// clockTable draws rows under the positions.
func (d *drawer) clockTable(y, k float64, rows []clockRow) float64 {
	x, _, w, _ := d.InsideMM()
	positions := d.positions()
	label := 27 * k
	column := (w - label) / float64(len(positions))
	line := 5.2 * k
	d.Rect(x, y, w, line, nil, paper.Shade(225))
	d.Mid(x+1, y+line/2, label-2, paper.Type{Points: 8.5 * k}, d.say(words.PaperClock, nil))
	for i, deg := range positions {
		d.Mid(x+label+float64(i)*column, y+line/2, column, paper.Type{Points: 10 * k, Align: paper.Centre}, d.clock(deg))
	}
	y += line
	for _, row := range rows {
		tall := line
		if row.texts[0] == "" {
			tall = max(7.5*k, 5)
		}
		d.Mid(x+1, y+tall/2, label-2, paper.Type{Points: 8.5 * k}, row.label)
		for i, text := range row.texts {
			at := x + label + float64(i)*column
			if text == "" {
				d.Rect(at, y, column, tall, &paper.Pen{MM: 0.35}, nil)
				continue
			}
			t := paper.Type{Points: 9 * k, Align: paper.Centre}
			if row.bold {
				t = paper.Type{Points: 12.5 * k, Bold: true, Align: paper.Centre}
			}
			d.Mid(at+0.4, y+tall/2, column-0.8, t, text)
		}
		y += tall
	}
	return y
}

// leavesFor is the thickest leaf or stack that should go into a gap and the
// thinnest that should not; 0 where the set has none.
func (d *drawer) leavesFor(gapMM float64) (goesMM, stopsMM float64) {
	for _, t := range d.v.Leaves.ThicknessesMM() {
		if t > gapMM {
			return goesMM, t
		}
		goesMM = t
	}
	return goesMM, 0
}

// goesStops writes a pair of leaves: "8/10", "-/1.5".
func (d *drawer) goesStops(goesMM, stopsMM float64) string {
	write := func(mm float64) string {
		if mm == 0 {
			return "–"
		}
		return d.thickness(mm)
	}
	return write(goesMM) + " / " + write(stopsMM)
}

// next says what to gauge next, as the reader sees it.
func (d *drawer) next() []string {
	n := d.e.Next
	if d.e.Status != "ready" || n == nil || n.What != "try a leaf" {
		if d.e.Status == "nothing gauged" {
			return []string{d.say(words.NothingGauged, nil)}
		}
		if d.e.Status != "ready" {
			return []string{d.say(words.NotSinceMove, nil)}
		}
		return say.Next(d.s, d.u, d.e)
	}
	lines := say.Next(d.s, d.u, d.e)
	lines[len(lines)-1] = d.say(words.NextLeaf, words.Args{"Leaf": d.u.Thickness(n.LeafMM), "Place": d.place(n.ClockDeg)})
	return lines
}
