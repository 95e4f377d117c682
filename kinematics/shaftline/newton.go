package shaftline

// This file finds the state in which every contact pushes back by its own
// law: a damped, searched Newton iteration, accepted by residual.

import (
	"fmt"
	"math"
)

// Front is what holds the front end of the shaft. The engine's face is one,
// with the engine behind it; Free, Pinned and Clamped are others.
//
// A step runs Balance, then Slope any number of times, then Advance.
type Front interface {
	// Balance answers the condensed shaft with the movement of its front end,
	// or false where the shaft as it is linearised cannot be balanced.
	Balance(end *End) (q [4]float64, ok bool)
	// Slope is the front's share of the change of energy per step, a fraction
	// alpha along the step, where the shaft is held with force p.
	Slope(alpha float64, p [4]float64) float64
	// Advance takes the fraction alpha of the step.
	Advance(alpha float64)
	// Residual is what is out of balance at the front, in newtons (moments
	// divided by a length of the order of the face).
	Residual(p [4]float64) float64
}

// Limits of the iteration. The zero value is the default.
type Limits struct {
	ResidualN  float64 // accept below this; 0: 1e-8
	GoodEnough float64 // accept below this when it no longer falls; 0: 1e-6
	Iterations int     // 0: 200
}

// Status says why an iteration stopped.
type Status int

// Why it stopped.
const (
	Converged Status = iota
	RanOut           // the iterations ran out
	Unheld           // nothing balances the front end
)

func (s Status) String() string {
	return [...]string{"converged", "iterations ran out", "nothing holds the front end"}[s]
}

// Result of an iteration.
type Result struct {
	Status     Status
	Iterations int
	ResidualN  float64 // largest force out of balance
}

// Err is nil when converged.
func (r Result) Err() error {
	if r.Status == Converged {
		return nil
	}
	return fmt.Errorf("%v after %d iterations, %.3g N out of balance", r.Status, r.Iterations, r.ResidualN)
}

// State is a bent shaft: the movement of every station and the force on every
// contact. It keeps the last answer as the start of the next one and is not
// for two goroutines at once.
type State struct {
	HookN float64 // pull of the lifting hook, up

	q, qNew [][4]float64 // by station
	f, fNew [][2]float64 // by contact: force of the shaft on it
	p, pNew [4]float64   // force that holds the front end
	pushes  []push
	ends    []End
	end     End
	warm    bool
}

// NewState makes a straight, cold state.
func (m *Model) NewState() *State {
	n, c := len(m.stations), len(m.contacts)
	return &State{
		q: make([][4]float64, n), qNew: make([][4]float64, n),
		f: make([][2]float64, c), fNew: make([][2]float64, c),
		pushes: make([]push, c), ends: make([]End, n),
	}
}

// Forget makes the next answer start from nothing.
func (st *State) Forget() {
	st.warm = false
	clear(st.q)
}

// Start is a bent shape to begin an iteration from.
type Start [][4]float64

// Shape is the state's, kept.
func (st *State) Shape() Start { return append(Start(nil), st.q...) }

// Begin makes the next answer start from a shape of the same model.
func (st *State) Begin(s Start) {
	copy(st.q, s)
	st.warm = true
}

// The damping ladder, in N/mm at each contact: where it starts, how it moves,
// and below what it is dropped. Bearings are thousands of N/mm.
const (
	dampingStart = 1.0
	dampingDown  = 0.1
	dampingUp    = 10
	dampingGone  = 1e-3
	dampingMost  = 1e9
)

// Bend bends the shaft until every contact obeys its law. On any status but
// Converged the state is not an answer and the next one starts cold.
func (m *Model) Bend(st *State, front Front, limits Limits) Result {
	tight, loose, most := limits.ResidualN, limits.GoodEnough, limits.Iterations
	if tight == 0 {
		tight = 1e-8
	}
	if loose == 0 {
		loose = 1e-6
	}
	if most == 0 {
		most = 200
	}
	damping, before, best := 0.0, math.Inf(1), math.Inf(1)
	stalls := 0         // steps since the residual last fell well
	consistent := false // st.q and st.f belong together
	for it := 1; it <= most; it++ {
		q, ok := front.Balance(m.sweep(st, damping, !st.warm && !consistent))
		if !ok {
			if damping > dampingMost {
				st.Forget()
				return Result{Unheld, it, before}
			}
			damping = max(dampingStart, damping*dampingUp)
			continue
		}
		m.follow(st, q)
		alpha := 1.0
		if consistent {
			alpha = m.search(st, front)
		}
		m.advance(st, front, alpha)
		consistent = true
		residual := max(m.residual(st), front.Residual(st.p))
		if residual < best/2 {
			best, stalls = residual, 0
		} else {
			stalls++
		}
		if residual < tight || (residual < loose && stalls > 2) {
			st.warm = true
			return Result{Converged, it, residual}
		}
		if alpha == 1 {
			damping *= dampingDown
			if damping < dampingGone {
				damping = 0
			}
		} else if alpha < 0.05 {
			damping = max(dampingStart, damping*dampingUp)
		}
		before = residual
	}
	st.Forget()
	return Result{RanOut, most, before}
}

// search is how much of the step to take: all of it where that does not pass
// the bottom of the energy by much, else as far as the bottom. The energy is
// convex, so its slope along the step rises throughout.
func (m *Model) search(st *State, front Front) float64 {
	start := m.slope(st, front, 0)
	end := m.slope(st, front, 1)
	if end <= 0 || start >= 0 || end < -0.01*start {
		return 1
	}
	lo, hi, sLo, sHi := 0.0, 1.0, start, end
	for range 40 {
		mid := (lo*sHi - hi*sLo) / (sHi - sLo)
		if w := hi - lo; mid < lo+0.05*w || mid > hi-0.05*w {
			mid = lo + w/2
		}
		s := m.slope(st, front, mid)
		if math.Abs(s) < -0.05*start {
			return mid
		}
		if s < 0 {
			lo, sLo = mid, s
		} else {
			hi, sHi = mid, s
		}
	}
	return lo
}

// slope is the change of energy per step at alpha: every contact's law less
// the force assumed of it, times its movement.
func (m *Model) slope(st *State, front Front, alpha float64) float64 {
	var sum float64
	c := 0
	for i := m.first; i < len(m.stations); i++ {
		for ; c < m.stations[i].contactEnd; c++ {
			dy, dz := st.qNew[i][0]-st.q[i][0], st.qNew[i][2]-st.q[i][2]
			l := m.contacts[c].at(st.q[i][0]+alpha*dy, st.q[i][2]+alpha*dz)
			fy := st.f[c][0] + alpha*(st.fNew[c][0]-st.f[c][0])
			fz := st.f[c][1] + alpha*(st.fNew[c][1]-st.f[c][1])
			sum += (l.fy-fy)*dy + (l.fz-fz)*dz
		}
	}
	var p [4]float64
	for j := range p {
		p[j] = st.p[j] + alpha*(st.pNew[j]-st.p[j])
	}
	return sum + front.Slope(alpha, p)
}

// advance takes the fraction alpha of the step.
func (m *Model) advance(st *State, front Front, alpha float64) {
	if alpha == 1 {
		st.q, st.qNew = st.qNew, st.q
		st.f, st.fNew = st.fNew, st.f
		st.p = st.pNew
	} else {
		for i := range st.q {
			for j := range st.q[i] {
				st.q[i][j] += alpha * (st.qNew[i][j] - st.q[i][j])
			}
		}
		for c := range st.f {
			for j := range st.f[c] {
				st.f[c][j] += alpha * (st.fNew[c][j] - st.f[c][j])
			}
		}
		for j := range st.p {
			st.p[j] += alpha * (st.pNew[j] - st.p[j])
		}
	}
	front.Advance(alpha)
}

// residual is the largest difference between a contact's law and the force
// the bent shaft was worked out with.
func (m *Model) residual(st *State) float64 {
	var worst float64
	c := 0
	for i := m.first; i < len(m.stations); i++ {
		for ; c < m.stations[i].contactEnd; c++ {
			l := m.contacts[c].at(st.q[i][0], st.q[i][2])
			worst = max(worst, math.Abs(l.fy-st.f[c][0]), math.Abs(l.fz-st.f[c][1]))
		}
	}
	return worst
}
