package report

// This file writes the answers of an exercise.

import (
	"fmt"
	"math"

	"aligner/assets/words"
	"aligner/kinematics/plan"
	"aligner/report/job"
	"aligner/report/paper"
	"aligner/report/say"
)

// answers fills the second page.
func (f *flow) answers() error {
	x, _, w, _ := f.InsideMM()
	const tall, clock = 66.0, 60.0
	f.drawMounts(x, f.y, w-clock-3, tall, 0.82)
	face := clockFace{atDeg: f.positions()}
	if f.told() {
		ab := f.present()
		face.gapMM = &ab
	}
	f.drawClock(paper.Point{X: x + w - clock/2, Y: f.y + clock/2}, clock/2, face)
	under := paper.Type{Points: 8, Align: paper.Centre}
	below := f.Paragraph(x+w-clock, f.y+clock, clock, under, f.clockNote())
	f.y += max(tall, clock+below) + 3
	texts := [][]string{nil, {f.planes()}, nil, f.planAnswer(), f.before()}
	if f.told() {
		texts[0] = append([]string{f.stands()}, say.RunOut(f.s, f.u, f.e)...)
		verdict := say.Verdict(f.s, f.u, f.v, f.e)
		texts[2] = verdict[len(verdict)-2:]
	} else {
		texts[0], texts[2] = f.next(), f.next()
	}
	for i, lines := range texts {
		f.need(10)
		f.Line(x, f.y, 6, underType, fmt.Sprint(i+1))
		for _, text := range lines {
			f.need(f.ParagraphMM(w-6, bodyType, text))
			f.y += f.Paragraph(x+6, f.y, w-6, bodyType, text) + 0.6
		}
		f.y += 1.8
	}
	const pictures, tallest = 20, 60
	_, top, _, page := f.InsideMM()
	room := min(top+page-f.y-pictures, tallest)
	if room < 30 {
		return nil
	}
	before, after, err := f.beforeAfter()
	if err == nil {
		f.y, err = f.boatPictures(f.y+2, before, after, 0, room)
	}
	return err
}

// clockNote says how the clock of the answers is seen, and that it shows what leaves
// find: where a half runs out that is not what the engine's position gives.
func (d *drawer) clockNote() string {
	if !d.told() {
		return d.seen()
	}
	return d.seen() + ". " + d.say(words.PaperWithRunOut, nil)
}

// planes holds the gap's own numbers to the law of two planes.
func (d *drawer) planes() string {
	if !d.told() {
		return d.say(words.PaperLaw, nil)
	}
	ab := d.present()
	return d.say(words.PaperLawHere, words.Args{"Top": d.u.Gap(gapAt(ab, 0)), "Bottom": d.u.Gap(gapAt(ab, 180)), "Port": d.u.Gap(gapAt(ab, 270)),
		"Starboard": d.u.Gap(gapAt(ab, 90)), "Sum": d.u.GapWithUnit(2 * amplitude(ab))})
}

// planAnswer is the least-effort move, and what to expect of it.
func (d *drawer) planAnswer() []string {
	if !d.planned() {
		return d.planLines()
	}
	lines := []string{d.say(words.PlanFound, words.Args{"Move": say.Move(d.s, d.u, d.h, floats(d.p.NutFlats), d.p.SlideMM), "Minutes": minutes(d.p)}), d.expected()}
	last := &d.p.Steps[len(d.p.Steps)-1]
	return append(lines, d.expectText(last), d.say(words.PaperOtherMoves, nil))
}

// before is what is looked over first.
func (d *drawer) before() []string {
	text := ""
	for i, c := range job.LookOver(d.h, d.v) {
		if i > 0 {
			text += "; "
		}
		text += c.Title.Say(d.s, d.u)
	}
	return []string{d.say(words.PaperLookFirst, nil) + " " + text + "."}
}

// minutes is a plan's effort to the next five.
func minutes(p *plan.Plan) int { return int(math.Ceil(p.Minutes/5) * 5) }

// expected says what a plan is worth.
func (d *drawer) expected() string {
	large, _, _ := d.p.Expected.Axes()
	return d.say(words.PlanChance, words.Args{"Chance": say.Chance(d.s, d.p.Probability),
		"Gap": d.u.LeafWithUnit(2 * amplitude(d.p.Expected.MeanMM)), "Error": d.u.LeafWithUnit(2 * large)})
}
