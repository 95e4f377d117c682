package gauge

// This file asks whether the readings can be two flat faces, and which reading
// speaks against it.

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/stat/distuv"

	"aligner/kinematics/gauge/interval"
)

// Odd is a reading that no two flat faces allow beside the others.
type Odd struct {
	Ref
	// OffMM is how far the reading's nearest limit is from what the others say;
	// negative: the leaf found less than there is, as over a burr.
	OffMM float64
	// Alone: this one by itself explains the misfit. Otherwise it is one of
	// several that might.
	Alone bool
	// SetAside: it was left out of the estimate.
	SetAside bool
	Causes   []Cause
}

// Cause is what commonly makes a reading odd.
type Cause string

// The causes, likely ones first where several are given.
const (
	Burr       Cause = "burr"         // dirt, burr, rust or paint on a face: reads tight
	NotFullyIn Cause = "not fully in" // the leaf tilted, not fully in, or misread: reads open
	Misread    Cause = "misread"
	ShaftMoved Cause = "shaft moved"
	PilotBound Cause = "pilot bound"
)

// suspect is a place whose readings were left out for trial.
type suspect struct {
	rows []int
	gain float64 // twice the likelihood's
	fit  fit
}

// enoughRows is how many gap rows must stay when one is taken out: three for
// the plane and one that can disagree.
const enoughRows = 4

// clearLead is by how much the worst reading must lead the next to be named
// alone: seven to one.
const clearLead = 4.0

// flat leaves odd readings out of the evidence, one after the other, and fits
// again. whole is false where the set cannot be two planes and no reading can
// be named for it.
func (e *evidence) flat() (f fit, odd []Odd, whole bool) {
	f = e.best()
	for range 3 {
		if f.Status != interval.Converged {
			return f, odd, true
		}
		suspects := e.suspects(&f)
		if len(suspects) == 0 {
			return f, odd, true
		}
		worst := suspects[0]
		alone := len(suspects) == 1 || worst.gain-suspects[1].gain > clearLead
		left := e.gapRowsBeside(worst.rows)
		if !alone || left < enoughRows {
			for _, s := range suspects {
				if worst.gain-s.gain <= clearLead {
					odd = append(odd, e.odd(s, false))
				}
			}
			return f, odd, false
		}
		odd = append(odd, e.odd(worst, true))
		e.drop(worst.rows)
		f = e.best()
	}
	return f, odd, false
}

// suspects are the places whose absence helps more than chance allows, the
// worst first; a place counts as suspect too if it helps nearly as much as the
// worst.
func (e *evidence) suspects(f *fit) []suspect {
	places := e.places()
	// Chance gives each of the places a chi-squared gain of one degree.
	limit := distuv.ChiSquared{K: 1}.Quantile(1 - oddsOfChance/float64(max(1, len(places))))
	all := e.leaveOut(f, places, limit/mostGain, math.Inf(1))
	if !slices.ContainsFunc(all, func(s suspect) bool { return s.gain >= limit }) {
		return nil
	}
	all = append(all, e.leaveOut(f, places, 0.5, limit/mostGain)...)
	slices.SortStableFunc(all, func(a, b suspect) int {
		switch {
		case a.gain > b.gain:
			return -1
		case a.gain < b.gain:
			return 1
		}
		return 0
	})
	i := 1
	for i < len(all) && all[i].gain > all[0].gain-clearLead {
		i++
	}
	return all[:i]
}

// mostGain is the most a place can gain by being left out, over its deficit
// while it is in: a reading of leverage h is met to 1 - h of what it is off
// without it, and h is at most three quarters where a reading can disagree.
const mostGain = 8

// leaveOut fits again without each place whose deficit is from least to below.
func (e *evidence) leaveOut(f *fit, places [][]int, least, below float64) []suspect {
	var all []suspect
	for _, rows := range places {
		if d := e.deficit(f, rows); d < least || d >= below {
			continue
		}
		s := suspect{rows: rows, fit: e.without(f, rows)}
		if s.fit.Status == interval.Converged {
			s.gain = 2 * (s.fit.LogLikelihood + e.bestOf(rows) - f.LogLikelihood)
			all = append(all, s)
		}
	}
	return all
}

// places groups the rows of gaps by reading and clock position.
func (e *evidence) places() [][]int {
	var groups [][]int
	index := map[[2]float64]int{}
	for i, ref := range e.refs {
		if !e.isGap(i) {
			continue
		}
		key := [2]float64{float64(ref.Event), ref.ClockDeg}
		j, ok := index[key]
		if !ok {
			j = len(groups)
			index[key] = j
			groups = append(groups, nil)
		}
		groups[j] = append(groups[j], i)
	}
	return groups
}

// isGap reports whether a row has a seating's gap in it.
func (e *evidence) isGap(i int) bool {
	for s := range e.seatings {
		if e.rows[i].X[e.num.seating(s)] != 0 {
			return true
		}
	}
	return false
}

func (e *evidence) gapRowsBeside(rows []int) int {
	n := 0
	seat := e.seatingOf(rows[0])
	for _, places := range e.places() {
		if e.seatingOf(places[0]) == seat && !slices.Contains(rows, places[0]) {
			n++
		}
	}
	return n
}

func (e *evidence) seatingOf(row int) int {
	for s := range e.seatings {
		if e.rows[row].X[e.num.seating(s)] != 0 {
			return s
		}
	}
	return -1
}

// bestOf is the most the likelihood of rows can be.
func (e *evidence) bestOf(rows []int) float64 {
	sum := 0.0
	for _, i := range rows {
		r := &e.rows[i]
		switch {
		case math.IsInf(r.Least, 0) || math.IsInf(r.Most, 0):
		case r.Least == r.Most:
			sum -= math.Log(r.Scale * math.Sqrt(2*math.Pi))
		default:
			sum += math.Log(math.Erf((r.Most - r.Least) / 2 / r.Scale / math.Sqrt2))
		}
	}
	return sum
}

// deficit is how far rows fall short of that.
func (e *evidence) deficit(f *fit, rows []int) float64 {
	sum := e.bestOf(rows)
	for _, i := range rows {
		sum -= e.rows[i].LogLikelihood(f.B, 1)
	}
	return sum
}

// without fits again without some rows, the touch laid out as it was.
func (e *evidence) without(f *fit, rows []int) fit {
	g := fit{beliefs: f.beliefs, rows: make([]interval.Row, 0, len(f.rows))}
	for i, r := range f.rows {
		if !slices.Contains(rows, i) {
			g.rows = append(g.rows, r)
		}
	}
	g.Result = interval.Fit(interval.Problem{Unknowns: e.num.total(), Rows: g.rows, Sigma: 1, Start: f.B}, interval.Settings{})
	return g
}

// odd describes a suspect.
func (e *evidence) odd(s suspect, alone bool) Odd {
	i := s.rows[0]
	r := &e.rows[i]
	said := 0.0
	for j, x := range r.X {
		said += x * s.fit.B[j]
	}
	o := Odd{Ref: e.refs[i], Alone: alone, SetAside: alone}
	switch {
	case said > r.Most:
		o.OffMM = r.Most - said
		o.Causes = []Cause{Burr, PilotBound, ShaftMoved, Misread}
	default:
		o.OffMM = math.Max(0, r.Least-said)
		o.Causes = []Cause{NotFullyIn, ShaftMoved, Misread}
	}
	return o
}

// drop takes rows out of the evidence.
func (e *evidence) drop(rows []int) {
	var keptRows []interval.Row
	var keptRefs []Ref
	for i := range e.rows {
		if slices.Contains(rows, i) {
			e.seatings[max(0, e.seatingOf(i))].gapRows--
			continue
		}
		keptRows = append(keptRows, e.rows[i])
		keptRefs = append(keptRefs, e.refs[i])
	}
	e.rows, e.refs = keptRows, keptRefs
}
