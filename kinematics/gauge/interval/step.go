package interval

// This file holds a Newton step: finding it, taking it, and the covariance it
// leaves behind.

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// mostCondition is that of a Hessian with a diagonal of ones past which some
// unknown has no hold that a double can tell from rounding. Short of it a
// covariance is good to the condition times 1e-16.
const mostCondition = 1e14

// direct finds the Newton step; false: the rows have no hold on some unknown.
// Sigma stays where it is while it rests on its floor and would go lower, or
// where the rest must come nearer first: seen from far off, a change of sigma
// and one of b look alike.
func (w *work) direct() bool {
	w.pinned = false
	ok := w.solve()
	if w.free && (!ok || w.at.sigma <= w.floor && w.step.AtVec(w.n) > 0) {
		w.pin()
		ok = w.solve()
	}
	return ok
}

// solve scales the unknowns so that no choice of their units can spoil the
// Cholesky factors, short of what a double can square.
func (w *work) solve() bool {
	for j := range w.unit {
		d := w.hessian.At(j, j)
		if !(d > 1e-290 && d < 1e290) {
			return false
		}
		w.unit[j] = 1 / math.Sqrt(d)
	}
	for j, u := range w.unit {
		for l := j; l < w.dim; l++ {
			w.scaled.SetSym(j, l, w.hessian.At(j, l)*u*w.unit[l])
		}
		w.scratch.SetVec(j, w.gradient.AtVec(j)*u)
	}
	if !w.chol.Factorize(w.scaled) || !(w.chol.Cond() < mostCondition) {
		return false
	}
	if w.chol.SolveVecTo(&w.step, &w.scratch) != nil {
		return false
	}
	for j, u := range w.unit {
		w.step.SetVec(j, w.step.AtVec(j)*u)
	}
	return true
}

// pin takes sigma out of the step.
func (w *work) pin() {
	w.pinned = true
	w.gradient.SetVec(w.n, 0)
	for j := range w.n {
		w.hessian.SetSym(j, w.n, 0)
	}
	w.hessian.SetSym(w.n, w.n, 1)
}

// climb goes along the step, halved until the likelihood does not fall by more
// than rounding, and derives anew; surely goes all the way unseen. moved is
// false where not even a tiny part helps.
func (w *work) climb(last float64, surely bool) (next float64, moved bool) {
	least := last - 1e-14*(float64(len(w.rows))+math.Abs(last))
	reach := w.reach()
	for part := reach; part > 1e-9*reach; part /= 2 {
		w.try(part)
		if surely || w.likelihood(w.trial) >= least {
			w.at, w.trial = w.trial, w.at
			return w.derive(), true
		}
	}
	return last, false
}

// reach is the part of the step that keeps sigma above its floor, and within
// ten times what it was.
func (w *work) reach() float64 {
	if !w.free || w.pinned {
		return 1
	}
	switch nu := w.step.AtVec(w.n); {
	case nu < -0.9:
		return -0.9 / nu
	case w.at.sigma < w.floor*(1+nu):
		return (w.at.sigma/w.floor - 1) / nu
	}
	return 1
}

// try puts a part of the step into w.trial.
func (w *work) try(part float64) {
	w.trial.sigma = w.at.sigma
	if w.free && !w.pinned {
		w.trial.sigma = math.Max(w.floor, w.at.sigma/(1+part*w.step.AtVec(w.n)))
	}
	for j := range w.trial.b {
		w.trial.b[j] = w.at.b[j] + w.trial.sigma*part*w.step.AtVec(j)
	}
}

// sink drops sigma to its floor where the likelihood cannot tell the
// difference: one law meets every interval with room to spare.
func (w *work) sink(last float64) (next float64, sunk bool) {
	if !w.free || w.at.sigma <= w.floor {
		return last, false
	}
	copy(w.trial.b, w.at.b)
	w.trial.sigma = w.floor
	if w.likelihood(w.trial) < last {
		return last, false
	}
	w.at, w.trial = w.trial, w.at
	return w.derive(), true
}

// leastHold is the share of a measured number's hold that the best row must
// have on an unknown: limits seven sigma off on either side have less, and say
// only where it is not.
const leastHold = 1e-10

// allHeld is true where a covariance means something: of a sigma too, unless it
// rests on its floor.
func (w *work) allHeld() bool {
	for _, most := range w.held {
		if most < leastHold {
			return false
		}
	}
	if !w.free || w.at.sigma <= w.floor {
		return true
	}
	return !w.pinned && w.hessian.At(w.n, w.n) >= leastHold
}

// covariance of b and log sigma: that of the step, c being in units of sigma
// and nu minus the change of the logarithm. It is false where a double cannot
// hold it.
func (w *work) covariance() (*mat.SymDense, bool) {
	cov := mat.NewSymDense(w.dim, nil)
	if w.chol.InverseTo(cov) != nil {
		return nil, false
	}
	of := func(j int) float64 {
		switch {
		case j < w.n:
			return w.unit[j] * w.at.sigma
		case w.pinned:
			return 0
		}
		return -w.unit[j]
	}
	for j := range w.dim {
		for l := j; l < w.dim; l++ {
			c := cov.At(j, l) * of(j) * of(l)
			variance := j == l && !(j == w.n && w.pinned)
			if math.IsNaN(c) || math.IsInf(c, 0) || variance && c == 0 {
				return nil, false
			}
			cov.SetSym(j, l, c)
		}
	}
	return cov, true
}
