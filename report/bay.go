package report

// This file lays out the bay card: one page, set as large as it fits.

import (
	"math"

	"aligner/assets/words"
	"aligner/kinematics/plan"
	"aligner/report/paper"
	"aligner/report/say"
)

// A bay card is tried at scales from the largest to the least, in steps. At the
// least a page takes ten steps of a plan.
const bayLargest, bayLeast, bayShrink = 1.2, 0.36, 0.975

// leastBayPoints are the smallest sizes of type for what is to be read in the
// bay, by torchlight at arm's length (own judgement; tested). The first is kept
// wherever the page takes the steps at all; the rest are for plans of more steps
// than are usual.
var leastBayPoints = []float64{7, 6, 5, 4}

// bay draws the card at the largest scale at which it fits its page, its steps
// below each other or in two columns. Where many positions were gauged they are told
// at fewer of them before type gets smaller than is read well.
func bay(in Input, o Options) *drawer {
	for i, least := range append(leastBayPoints[:1:1], leastBayPoints...) {
		for k := bayLargest; k >= bayLeast; k *= bayShrink {
			for columns := 1; columns <= 2; columns++ {
				d := begin(in, o)
				d.least, d.few = least, i > 0
				d.AddPage()
				_, top, _, tall := d.InsideMM()
				if columns == 2 && (len(d.positions()) > mostInColumn || !d.planned()) {
					continue
				}
				if d.bayCard(k, columns) <= top+tall {
					d.foot()
					return d
				}
			}
		}
	}
	d := begin(in, o)
	d.few = true
	d.AddPage()
	d.bayCard(bayLeast, 1)
	d.foot()
	return d
}

// points is a size of type at a scale, never less than the least that is read.
func (d *drawer) points(at1, k float64) float64 { return max(at1*k, d.least) }

// crowded is how far a card stays behind what can be read well: 1 where it does not.
func (d *drawer) crowded() float64 { return d.least / leastBayPoints[0] }

// mostInColumn is how many clock positions half a page's width takes.
const mostInColumn = 9

// bayCard draws everything at a scale and gives where it ends.
func (d *drawer) bayCard(k float64, columns int) float64 {
	x, _, w, _ := d.InsideMM()
	y := d.head(d.say(words.Of("paper_kind", string(Bay)), nil), d.facts(d.say(words.PaperShaftHeld, words.Args{"Held": d.held()})))
	y += 1.5 * k
	y += d.Paragraph(x, y, w, paper.Type{Points: d.points(13, k), Bold: true}, d.bayHeadline())
	for _, line := range d.failed() {
		y += d.Paragraph(x, y, w, paper.Type{Points: d.points(10, k), Bold: true}, line)
	}
	for _, line := range d.baySub() {
		y += d.Paragraph(x, y, w, paper.Type{Points: d.points(9.5, k)}, line)
	}
	y = d.bayDrawings(y+1.5*k, k)
	y = d.bayBlocks(y, k, columns)
	return d.bayMinds(y+1.5*k, k)
}

// bayBlocks draws the steps and the fastening, in their order from left to right
// and down.
func (d *drawer) bayBlocks(y, k float64, columns int) float64 {
	x, _, w, _ := d.InsideMM()
	const between = 4.0
	wide := (w - between*float64(columns-1)) / float64(columns)
	steps := 0
	if d.planned() {
		steps = len(d.p.Steps)
	}
	end := y
	for i := 0; i <= steps; i++ {
		at := x + float64(i%columns)*(wide+between)
		if i%columns == 0 {
			y = end
		}
		if i == steps {
			if columns == 2 && i%columns == 0 { // a row of its own
				wide = w
			}
			end = max(end, d.bayLast(at, y, wide, k))
		} else {
			end = max(end, d.bayStep(at, y, wide, k, i))
		}
	}
	return end
}

// planned reports whether there is something to turn or slide.
func (d *drawer) planned() bool {
	return !d.hide && (d.p.Status == plan.Found || d.p.Status == plan.Unsure)
}

// bayHeadline says what this card is for.
func (d *drawer) bayHeadline() string {
	switch {
	case d.planned():
		return d.say(words.PaperDo, words.Args{"Count": len(d.p.Steps), "Minutes": minutes(d.p)})
	case d.p.Status == plan.Nothing:
		return d.say(words.PaperNothingToTurn, nil)
	case d.p.Status == plan.None:
		return d.say(words.PlanNone, nil)
	}
	return d.say(words.PaperGaugeFirst, nil)
}

// done reports whether the job was handed over, and nothing is to be moved.
func (d *drawer) done() bool { return d.v.HandedOver.Done() && !d.planned() }

// baySub says how it stands and where it is going.
func (d *drawer) baySub() []string {
	var lines []string
	if d.told() {
		lines = append(lines, d.stands()+" "+d.ruleText())
	}
	switch {
	case d.planned():
		lines = append(lines, d.expected())
		if d.e.Next != nil {
			lines = append(lines, d.say(words.PlanBetterFirst, nil))
		}
		lines = append(lines, d.say(words.PlanDrawBack, words.Args{"Length": d.u.Plain(d.p.DrawBackMM, 1) + " mm"}))
	case d.done():
	case d.p.Status == plan.Nothing:
		lines = append(lines, d.say(words.PaperChanceKept, words.Args{"Chance": say.Chance(d.s, d.p.Probability)}))
	default:
		lines = append(lines, d.next()...)
	}
	return append(lines, d.stopped()...)
}

// ruleText says the rule with its limit.
func (d *drawer) ruleText() string {
	return d.say(words.PaperRule, words.Args{"Named": d.e.Rule.Named, "Limits": d.say(words.Of("limits", d.e.Rule.Limits), nil), "Limit": d.u.GapWithUnit(d.e.LimitMM)})
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
