package report

// This file lays out the bay card: one page, set as large as it fits.

import (
	"math"

	"aligner/assets/words"
	"aligner/kinematics/plan"
	"aligner/report/paper"
	"aligner/report/say"
)

// The scales a bay card is tried at, the largest first. At the last one a page
// takes ten steps.
var bayScales = []float64{1.12, 1.05, 1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5, 0.45, 0.4}

// bay draws the card at the largest scale at which it fits its page.
func bay(in Input, o Options) *drawer {
	var d *drawer
	for _, k := range bayScales {
		d = begin(in, o)
		d.AddPage()
		_, top, _, tall := d.InsideMM()
		if d.bayCard(k) <= top+tall {
			break
		}
	}
	d.foot()
	return d
}

// bayCard draws everything at a scale and gives where it ends.
func (d *drawer) bayCard(k float64) float64 {
	x, _, w, _ := d.InsideMM()
	y := d.head(d.say(words.Of("paper_kind", string(Bay)), nil), d.facts(d.say(words.PaperShaftHeld, words.Args{"Held": d.held()})))
	y += 1.5 * k
	y += d.Paragraph(x, y, w, paper.Type{Points: 13 * k, Bold: true}, d.bayHeadline())
	for _, line := range d.baySub() {
		y += d.Paragraph(x, y, w, paper.Type{Points: 9.5 * k}, line)
	}
	y = d.bayDrawings(y+1.5*k, k)
	if d.planned() {
		for i := range d.p.Steps {
			y = d.bayStep(y, k, i)
		}
	}
	y = d.bayLast(y, k)
	return d.bayMinds(y+1*k, k)
}

// planned reports whether there is something to turn or slide.
func (d *drawer) planned() bool { return d.p.Status == plan.Found || d.p.Status == plan.Unsure }

// bayHeadline says what this card is for.
func (d *drawer) bayHeadline() string {
	switch {
	case d.planned():
		return d.say(words.PaperDo, words.Args{"Move": say.Move(d.s, d.u, d.h, floats(d.p.NutFlats), d.p.SlideMM)})
	case d.p.Status == plan.Nothing:
		return d.say(words.PaperNothingToTurn, nil)
	case d.p.Status == plan.None:
		return d.say(words.PlanNone, nil)
	}
	return d.say(words.PaperGaugeFirst, nil)
}

// baySub says how it stands and where it is going.
func (d *drawer) baySub() []string {
	var lines []string
	if d.told() {
		lines = append(lines, d.stands()+" "+d.say(words.PaperRule, words.Args{"Named": d.e.Rule.Named, "Limit": d.u.LeafWithUnit(d.e.LimitMM)}))
	}
	switch {
	case d.planned():
		large, _, _ := d.p.Expected.Axes()
		line := d.say(words.PlanChance, words.Args{"Chance": say.Chance(d.s, d.p.Probability),
			"Gap": d.u.LeafWithUnit(2 * amplitude(d.p.Expected.MeanMM)), "Error": d.u.LeafWithUnit(2 * large)})
		lines = append(lines, line+" "+d.say(words.PaperMinutes, words.Args{"Minutes": int(math.Ceil(d.p.Minutes/5) * 5)}))
		if d.e.Next != nil {
			lines = append(lines, d.say(words.PlanBetterFirst, nil))
		}
		lines = append(lines, d.say(words.PlanDrawBack, words.Args{"Length": d.u.Plain(d.p.DrawBackMM, 1) + " mm"}))
	case d.p.Status == plan.Nothing:
		lines = append(lines, d.say(words.PaperChanceKept, words.Args{"Chance": say.Chance(d.s, d.p.Probability)}))
	default:
		lines = append(lines, d.next()...)
	}
	return append(lines, d.stopped()...)
}

// stands says the gap that the engine's position gives, as the reader sees it.
func (d *drawer) stands() string {
	size := 2 * amplitude(d.e.Gap.MeanMM)
	large, _, _ := d.e.Gap.Axes()
	if size < 2*large || d.u.Leaf(size) == 0 {
		return d.say(words.EstimateFlat, words.Args{"Gap": d.u.LeafWithUnit(max(size, 2*large))})
	}
	return d.say(words.EstimateGap, words.Args{"Gap": d.u.LeafWithUnit(size), "Error": d.u.LeafWithUnit(2 * large), "Opens": d.place(opensDeg(d.e.Gap.MeanMM))})
}

func amplitude(ab [2]float64) float64 { return math.Hypot(ab[0], ab[1]) }

func floats(n []int) []float64 {
	f := make([]float64, len(n))
	for i, v := range n {
		f[i] = float64(v)
	}
	return f
}
