package plan

// This file makes a plan: the limits laid out for the search, the search, and
// what the whole model says of its answer.

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan/search"
	"aligner/kinematics/response"
)

// job is one plan being made.
type job struct {
	*Planner
	v       *visit.Visit
	e       *gauge.Estimate
	s       Settings
	effort  *Effort
	done    []float64 // moves so far, by item
	since   []float64 // those of them made after the gauging
	found   stand
	chance  *chance
	items   []search.Item
	loadRow []search.Row
	cuts    []search.Row // learnt from the whole model
}

// Plan finds what to do after the visit as it stands. The estimate must be of
// that visit. An error is of the mechanics: an engine that cannot be worked out.
func (p *Planner) Plan(v *visit.Visit, e *gauge.Estimate, s Settings) (*Plan, error) {
	out := &Plan{Items: p.model.Items, Wanted: s.Wanted, Complete: true,
		Moves: make([]int, len(p.model.Items)), NutFlats: make([]int, len(p.hull.Mounts)), SlideMM: make([]float64, len(p.hull.Mounts))}
	if out.Wanted == 0 {
		out.Wanted = DefaultWanted
	}
	if e.Status != gauge.Ready || !e.ForMoves {
		out.Status, out.WhyNot = NotForMoves, e.WhyNot
		return out, nil
	}
	j, learnt, err := p.begin(v, e, s)
	if err != nil {
		return nil, err
	}
	out.Learnt, out.Present = learnt, j.present()
	j.items = j.ranges()
	j.loadRow = append(p.loads.rows(j.done), listRows(p.hull, p.model.Items, j.done)...)
	return out, j.make(out)
}

// begin works out where the engine stands and how it answers, before anything is
// searched for.
func (p *Planner) begin(v *visit.Visit, e *gauge.Estimate, s Settings) (*job, *response.Learnt, error) {
	j := &job{Planner: p, v: v, e: e, s: s, effort: s.Effort, done: p.done(v), since: p.moves(s.Since)}
	if j.effort == nil {
		j.effort = &DefaultEffort
	}
	var err error
	if j.found, err = p.found(j.done, e.Gap.MeanMM); err != nil {
		return nil, nil, err
	}
	learnt, err := p.learn(e, j.found)
	if err != nil {
		return nil, nil, err
	}
	j.chance = newChance(learnt, e.TargetMM, e.LimitMM/2)
	j.chance.read = e.Gap
	j.chance.within = e.Verdict == gauge.Within
	if len(s.Since) > 0 {
		j.found = j.found.plus(p.model.Items, j.since)
		j.chance.count(j.since)
		for k, m := range j.since {
			j.done[k] += m
		}
	}
	return j, learnt, nil
}

// ranges are the items with what is left of them.
func (j *job) ranges() []search.Item {
	var items []search.Item
	for k, it := range j.model.Items {
		item := search.Item{Least: math.MinInt32, Most: math.MaxInt32}
		for _, i := range it.Mounts {
			span := j.hull.Mounts[i].NutRangeMM
			if it.Slide {
				span = j.hull.Mounts[i].SlideRangeMM
			}
			at := j.done[k] * it.MM
			const slack = 1e-6 // so that a range of whole steps keeps its last one
			least, most := math.Ceil((span[0]-at)/it.MM-slack), math.Floor((span[1]-at)/it.MM+slack)
			if !j.movable(k) {
				least, most = 0, 0
			}
			item.Least, item.Most = max(item.Least, min(0, int(least))), min(item.Most, max(0, int(most)))
		}
		item.Fixed, item.Each = j.effort.item(j.hull, it)
		items = append(items, item)
	}
	return items
}

// make searches, by the wanted probability first and by less where that is not
// to be had, and fills the plan in.
func (j *job) make(out *Plan) error {
	for range 4 { // each time a limit of the whole model may be learnt
		r, level := j.search(out, j.items, append(append([]search.Row(nil), j.loadRow...), j.cuts...))
		if r.Move == nil {
			out.Status = None
			j.explain(out)
			return nil
		}
		cut, warnings, err := j.verify(r.Move)
		if err != nil {
			return err
		}
		out.Warnings = warnings
		if len(cut) > 0 && len(j.cuts) < 12 {
			j.cuts = append(j.cuts, cut...)
			continue
		}
		j.fill(out, r, level)
		return nil
	}
	out.Status = None
	j.explain(out)
	return nil
}

// Below the wanted probability the search asks for a little less than the surest
// move there is: the last hundredths would be bought dearly.
const (
	nearSurest = 0.05
	// nodesBelow bounds the searches there, whose answer is a makeshift anyway.
	nodesBelow = 300_000
	// nodesWanted bounds the search for the wanted probability, to about a second.
	nodesWanted = 2_000_000
	halvings    = 5
)

// search finds the cheapest move of the wanted probability, or where there is
// none, of the highest probability that can be had, found by halving.
func (j *job) search(out *Plan, items []search.Item, rows []search.Row) (search.Result, float64) {
	surest := j.chance.surest(freeOf(items))
	top := j.chance.after(surest).Inside(j.chance.target, j.chance.radiusMM)
	at := func(level float64, nodes int) search.Result {
		r := j.least(items, rows, surest, level, nodes, true)
		out.Nodes += r.Nodes
		out.Complete = out.Complete && r.Status != search.Stopped
		return r
	}
	if top >= out.Wanted {
		nodes := j.s.MostNodes
		if nodes == 0 {
			nodes = nodesWanted
		}
		if r := at(out.Wanted, nodes); r.Move != nil {
			return r, out.Wanted
		}
	}
	best, level := search.Result{}, 0.0
	low, high := 0.0, math.Min(top, out.Wanted)
	for try := math.Max(high-nearSurest, high/2); ; try = (low + high) / 2 {
		if r := at(try, nodesBelow); r.Move != nil {
			best, level, low = r, try, try
			if try >= high-1.5*nearSurest {
				break
			}
		} else {
			high = try
		}
		if high-low < 1.0/(1<<halvings) {
			break
		}
	}
	return best, level
}

// freeOf says which items can move at all.
func freeOf(items []search.Item) []bool {
	free := make([]bool, len(items))
	for k, it := range items {
		free[k] = it.Least < 0 || it.Most > 0
	}
	return free
}

// least searches at one level.
func (j *job) least(items []search.Item, rows []search.Row, about []float64, level float64, nodes int, tied bool) search.Result {
	p := search.Problem{Items: items, Rows: append(j.chance.rows(level, about), rows...), Accept: j.chance.accept(level)}
	if tied {
		p.Prefer = func(m []int) float64 { return j.loads.uneven(j.done, m) }
	}
	return search.Least(p, search.Settings{MostNodes: nodes})
}

// directions are how many half planes stand for the disc in the search; what
// they let through beyond it the test of the probability stops.
const directions = 24

// rows are what a probability of at least p implies for the moves m. It is at
// most that of each half plane round the disc, so with q the quantile of p
//
//	mean_n(m) + q sd_n(m) <= radius    across every direction n.
//
// The standard deviation of v + R m across n is a norm of m, so for q >= 0 its
// tangent at any point, such as the surest move, lies below it: a linear row
// that every good move keeps. Below one half the mean may lie outside, and the
// rows only keep it within twice the reach of the surest move's error.
func (c *chance) rows(p float64, about []float64) []search.Row {
	q := math.Max(0, distuv.UnitNormal.Quantile(p))
	g := c.after(about)
	large, _, _ := g.Axes()
	var rows []search.Row
	for k := range directions {
		sin, cos := math.Sincos(2 * math.Pi * float64(k) / directions)
		row := search.Row{Of: make([]float64, c.n)}
		slope, sd := c.sdSlope(cos, sin, about, g)
		row.Most = c.radiusMM - cos*(c.v[0]-c.target[0]) - sin*(c.v[1]-c.target[1])
		if p < 0.5 {
			row.Most += 2 * large
		}
		if q > 0 {
			row.Most -= q * sd
		}
		for i := range c.n {
			row.Of[i] = cos*c.r.Mean[2*i] + sin*c.r.Mean[2*i+1] + q*slope[i]
			row.Most += q * slope[i] * about[i]
		}
		rows = append(rows, row)
	}
	return rows
}

// sdSlope is the standard deviation across a direction at a move whose gap
// after is g, and how it changes with each item.
func (c *chance) sdSlope(cos, sin float64, at []float64, g gauge.Gaussian) (slope []float64, sd float64) {
	sd = math.Sqrt(math.Max(1e-12, cos*cos*g.CovMM2[0][0]+2*cos*sin*g.CovMM2[0][1]+sin*sin*g.CovMM2[1][1]))
	slope = make([]float64, c.n)
	n, d := 2*c.n, [2]float64{cos, sin}
	for i := range c.n {
		for a := range 2 {
			for b := range 2 {
				sum := c.cross[a][2*i+b]
				for j, m := range at {
					sum += m * c.cr[(2*i+b)*n+2*j+a]
				}
				slope[i] += d[a] * d[b] * sum / sd
			}
		}
	}
	return slope, sd
}

// accept tests the probability itself, a half plane first because it is cheap.
func (c *chance) accept(p float64) func([]int) bool {
	moves := make([]float64, c.n)
	return func(m []int) bool {
		still := true
		for i, v := range m {
			moves[i] = float64(v)
			still = still && v == 0
		}
		if still && !c.within {
			// The readings alone cannot tell: to let it be takes a verdict's sureness.
			return math.Min(c.after(moves).Inside(c.target, c.radiusMM), c.read.Inside(c.target, c.radiusMM)+1-gauge.Sure) >= math.Max(p, gauge.Sure)
		}
		g := c.after(moves)
		x, y := g.MeanMM[0]-c.target[0], g.MeanMM[1]-c.target[1]
		if d := math.Hypot(x, y); d > 0 {
			ux, uy := x/d, y/d
			v := ux*ux*g.CovMM2[0][0] + 2*ux*uy*g.CovMM2[0][1] + uy*uy*g.CovMM2[1][1]
			if math.Erfc((d-c.radiusMM)/math.Sqrt(2*v))/2 < p {
				return false
			}
		}
		if g.Inside(c.target, c.radiusMM) < p {
			return false
		}
		// The readings by themselves must not speak against it either.
		alone := g
		for a := range 2 {
			alone.MeanMM[a] += c.read.MeanMM[a] - c.v[a]
		}
		return !c.crossed || alone.Inside(c.target, c.radiusMM) >= p-nearSurest
	}
}

// fill writes the found move into the plan.
func (j *job) fill(out *Plan, r search.Result, level float64) {
	moves := make([]float64, len(r.Move))
	for k, m := range r.Move {
		moves[k] = float64(m)
		for _, i := range j.model.Items[k].Mounts {
			if j.model.Items[k].Slide {
				out.SlideMM[i] += moves[k] * response.StepMM
			} else {
				out.NutFlats[i] += m
			}
		}
	}
	copy(out.Moves, r.Move)
	out.Minutes = r.Effort
	out.Expected = j.chance.after(moves)
	out.Probability = out.Expected.Inside(j.chance.target, j.chance.radiusMM)
	out.Settled = level
	switch {
	case level < out.Wanted:
		out.Status = Unsure
		j.explain(out)
	case r.Effort == 0:
		out.Status = Nothing
	default:
		out.Status = Found
	}
	j.steps(out, moves)
}
