package gauge

// This file finds the optimum under a set of beliefs, and which beliefs the
// readings bear out.

import (
	"math"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls/visit"
	"aligner/kinematics/gauge/interval"
)

// beliefs say which of the usual things hold.
type beliefs struct {
	touching []bool  // by seating: first touch, or the stated distance
	untrue   [2]bool // shaft half, flange: runs out more than is let pass
}

func (b beliefs) clone() beliefs {
	b.touching = append([]bool(nil), b.touching...)
	return b
}

// fit is an optimum with what it was found under.
type fit struct {
	beliefs
	interval.Result
	rows []interval.Row // the readings' first, in the evidence's order
	// logEvidence is told up to a constant that all fits of one visit share.
	logEvidence float64
}

// usual begins with everything as it should be.
func (e *evidence) usual() beliefs {
	b := beliefs{touching: make([]bool, len(e.seatings))}
	for s := range e.seatings {
		b.touching[s] = e.seatings[s].touching && e.seatings[s].gapRows > 0
	}
	return b
}

// believed are the rows of the beliefs that are linear, and of g0 where it has
// to be told from nothing.
func (e *evidence) believed(b beliefs) []interval.Row {
	var rows []interval.Row
	add := func(i int, about, sd float64) {
		rows = append(rows, interval.Row{X: e.num.unit(i), Least: about, Most: about, Scale: sd})
	}
	for half, first := range [2]int{e.num.shaft(), e.num.flange()} {
		sd := trueFaceMM
		if b.untrue[half] || e.runOut[half].measured {
			sd = untrueFaceMM
		}
		add(first, 0, sd)
		add(first+1, 0, sd)
	}
	for k := range e.states {
		i := e.num.state(k)
		add(i, 0, tiltBeliefMM)
		add(i+1, 0, tiltBeliefMM)
		add(i+2, 0, offsetBeliefMM)
		add(i+3, 0, offsetBeliefMM)
	}
	for s := range e.seatings {
		if !b.touching[s] {
			add(e.num.seating(s), 0, openBeliefMM)
		}
	}
	return rows
}

// softenMM rounds the tip of the amplitude's cone, where it has no direction.
const softenMM = 0.1 * thouMM

// apartRows say that two faces cannot stand in one another: no gap anywhere is
// below nought, whether it was gauged there or not.
func (e *evidence) apartRows() []interval.Row {
	var rows []interval.Row
	for s := range e.seatings {
		seat := &e.seatings[s]
		if seat.gapRows == 0 || !seat.touching || seat.apartMM > visit.WideMM {
			continue
		}
		for hour := range 12 {
			sin, cos := math.Sincos(float64(hour) * math.Pi / 6)
			x := e.num.row()
			e.num.addGap(x, seat.state, seat.turn, true, true, cos, sin)
			x[e.num.seating(s)] = 1
			rows = append(rows, interval.Row{X: x, Least: -seat.apartMM - seat.dummy(30*float64(hour)), Most: math.Inf(1), Scale: throughMM})
		}
	}
	return rows
}

// touchRow is the belief g0 = amplitude, laid out round the unknowns at. Of a wide
// gap the distance held is known worse than any amplitude, which is then left out.
func (e *evidence) touchRow(s int, at []float64) interval.Row {
	seat := &e.seatings[s]
	if seat.apartMM > visit.WideMM {
		return interval.Row{X: e.num.unit(e.num.seating(s)), Scale: max(apartMM, apartPart*seat.apartMM)}
	}
	of := e.num.gapOf(at, seat.state, seat.turn)
	w := [2]float64{of[0] + seat.dummyMM[0], of[1] + seat.dummyMM[1]}
	amplitude := math.Sqrt(w[0]*w[0] + w[1]*w[1] + softenMM*softenMM)
	u := [2]float64{w[0] / amplitude, w[1] / amplitude}
	x := e.num.row()
	e.num.addGap(x, seat.state, seat.turn, true, true, -u[0], -u[1])
	x[e.num.seating(s)] = 1
	about := amplitude - u[0]*of[0] - u[1]*of[1]
	sd := touchMM
	if seat.apartMM > 0 {
		sd = apartMM
	}
	return interval.Row{X: x, Least: about, Most: about, Scale: sd}
}

// settledMM is where laying the touch out anew stops mattering; mostLayings
// bounds how often that is done.
const (
	settledMM   = 1e-9
	weighingMM  = 1e-5 // enough to weigh beliefs against one another
	mostLayings = 300
)

// Layings are let be for the first few, then hurried on or held back.
const (
	letBe     = 8
	hurryEach = 5
	mostHurry = 0.95 // of a step to the one before
)

// stride follows the unknowns from one laying of the touch to the next.
type stride struct{ step []float64 }

// settled takes note of where a laying led, and reports whether it still moved.
// Where it swings about a blunt cone the next begins half way; where it creeps,
// as near parallel faces that refuse the thinnest leaf everywhere, at where steps
// shrinking so end.
func (s *stride) settled(to, from []float64, turn int, withinMM float64) bool {
	if s.step == nil {
		s.step = make([]float64, len(to))
	}
	worst, along, before := 0.0, 0.0, 0.0
	for i := range to {
		now := to[i] - from[i]
		worst = math.Max(worst, math.Abs(now))
		along += now * s.step[i]
		before += s.step[i] * s.step[i]
		s.step[i] = now
	}
	if worst < withinMM {
		return true
	}
	further := 0.0
	switch {
	case turn <= letBe || before == 0:
	case along < 0:
		further = -0.5
	case turn%hurryEach == 0:
		shrinks := math.Min(along/before, mostHurry)
		further = shrinks / (1 - shrinks)
	}
	for i := range to {
		to[i] += further * s.step[i]
		s.step[i] *= 1 + further
	}
	return false
}

// solve finds the optimum under beliefs, the touch laid out anew until nothing
// moves by more than withinMM. start may be nil.
func (e *evidence) solve(b beliefs, start []float64, withinMM float64) fit {
	f := fit{beliefs: b, rows: append(append([]interval.Row(nil), e.rows...), e.believed(b)...)}
	f.rows = append(f.rows, e.apartRows()...)
	fixed := len(f.rows)
	touching := false
	for _, on := range b.touching {
		touching = touching || on
	}
	if touching && start == nil {
		loose := b.clone()
		clear(loose.touching)
		start = e.solve(loose, nil, withinMM).B
	}
	var way stride
	for turn := 0; ; turn++ {
		f.rows = f.rows[:fixed]
		for s, on := range b.touching {
			if on {
				f.rows = append(f.rows, e.touchRow(s, start))
			}
		}
		f.Result = interval.Fit(interval.Problem{Unknowns: e.num.total(), Rows: f.rows, Sigma: 1, Start: start}, interval.Settings{})
		if !touching || f.Status != interval.Converged || way.settled(f.B, start, turn, withinMM) {
			break
		}
		if turn == mostLayings {
			f.Status = interval.Stalled
			break
		}
		start = f.B
	}
	f.weigh()
	return f
}

// weigh is Laplace's approximation of the evidence: the likelihood's height by
// the room round its top.
func (f *fit) weigh() {
	f.logEvidence = math.Inf(-1)
	if f.Status != interval.Converged {
		return
	}
	var chol mat.Cholesky
	if chol.Factorize(f.Covariance) {
		f.logEvidence = f.LogLikelihood + chol.LogDet()/2
	}
}

// strained is how many of its own standard deviations a belief must be off
// before doing without it is tried at all.
const strained = 1.5

// best drops beliefs one at a time, the worst borne out first, as long as the
// evidence gains more than the odds against.
func (e *evidence) best() fit {
	now := e.solve(e.usual(), nil, weighingMM)
	for range len(e.seatings) + 2 {
		next, gain := fit{}, 0.0
		try := func(b beliefs, odds float64) {
			f := e.solve(b, now.B, weighingMM)
			if g := f.logEvidence - now.logEvidence - odds; g > gain {
				next, gain = f, g
			}
		}
		for s, on := range now.touching {
			if !on {
				continue
			}
			r := e.touchRow(s, now.B)
			if math.Abs(residual(&r, now.B)) > strained {
				b := now.clone()
				b.touching[s] = false
				try(b, touchLogOdds)
			}
		}
		for half, first := range [2]int{e.num.shaft(), e.num.flange()} {
			if now.untrue[half] || e.runOut[half].measured {
				continue
			}
			if math.Hypot(now.B[first], now.B[first+1]) > strained*trueFaceMM {
				b := now.clone()
				b.untrue[half] = true
				try(b, trueLogOdds)
			}
		}
		if gain == 0 {
			break
		}
		now = next
	}
	if now.Status != interval.Converged {
		return now
	}
	return e.solve(now.beliefs, now.B, settledMM)
}

// residual is how far a row with equal limits is off, in its own errors.
func residual(r *interval.Row, b []float64) float64 {
	sum := -r.Least
	for i, x := range r.X {
		sum += x * b[i]
	}
	return sum / r.Scale
}
