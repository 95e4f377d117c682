package interval

// This file holds the derivatives of the whole likelihood and a Newton step
// along them.

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// work is a fit under way. The unknowns are b and, where sigma is free, its
// logarithm tau last.
type work struct {
	rows     []Row
	n, dim   int
	free     bool
	fixedTau float64
	floorTau float64

	at, trial []float64
	gradient  mat.VecDense
	step      mat.VecDense
	hessian   *mat.SymDense // minus the likelihood's: positive at the optimum
	chol      mat.Cholesky
}

func newWork(p *Problem, s *Settings) (*work, bool) {
	if p.Unknowns < 1 || !(p.Sigma > 0) || math.IsInf(p.Sigma, 1) {
		return nil, false
	}
	for _, r := range p.Rows {
		if len(r.X) != p.Unknowns || !(r.Least <= r.Most) || !(r.Scale >= 0) || math.IsInf(r.Least, 1) || math.IsInf(r.Most, -1) {
			return nil, false
		}
	}
	w := &work{rows: p.Rows, n: p.Unknowns, dim: p.Unknowns, free: s.FreeSigma, fixedTau: math.Log(p.Sigma)}
	if w.free {
		w.dim++
		floor := s.FloorSigma
		if floor <= 0 {
			floor = p.Sigma / 1000
		}
		w.floorTau = math.Log(floor)
	}
	w.at, w.trial = make([]float64, w.dim), make([]float64, w.dim)
	copy(w.at, p.Start)
	if w.free {
		w.at[w.n] = math.Max(w.fixedTau, w.floorTau)
	}
	w.gradient = *mat.NewVecDense(w.dim, nil)
	w.step = *mat.NewVecDense(w.dim, nil)
	w.hessian = mat.NewSymDense(w.dim, nil)
	return w, true
}

func (w *work) tau() float64 { return w.tauOf(w.at) }

func (w *work) tauOf(at []float64) float64 {
	if w.free {
		return at[w.n]
	}
	return w.fixedTau
}

// row is a row's place in units of its own error.
func (w *work) row(i int, at []float64, sigma float64) (a, b, s float64) {
	r := &w.rows[i]
	s = sigma
	if r.Scale > 0 {
		s *= r.Scale
	}
	eta := 0.0
	for j, x := range r.X {
		eta += x * at[j]
	}
	return (r.Least - eta) / s, (r.Most - eta) / s, s
}

// likelihood alone, of a trial.
func (w *work) likelihood(at []float64) float64 {
	sigma, sum := math.Exp(w.tauOf(at)), 0.0
	for i := range w.rows {
		a, b, s := w.row(i, at, sigma)
		t := between(a, b)
		sum += t.log
		if a == b {
			sum -= math.Log(s)
		}
	}
	return sum
}

// derive gives the likelihood at w.at, its gradient and minus its Hessian. With
// z between a row's limits, m, v, c3 and c4 its mean and moments about the
// mean, eta = x.b and tau = log sigma,
//
//	dl/deta = m/s                  dl/dtau = m^2 + v - 1
//	d2l/deta2 = -(1 - v)/s^2       d2l/deta dtau = (c3 - 2 m (1 - v))/s
//	d2l/dtau2 = Var z^2 - 2 E z^2 = 4 m^2 v + 4 m c3 + c4 - v^2 - 2 (m^2 + v).
func (w *work) derive() float64 {
	sigma, sum := math.Exp(w.tau()), 0.0
	w.gradient.Zero()
	w.hessian.Zero()
	g, h := w.gradient.RawVector().Data, w.hessian.RawSymmetric()
	for i := range w.rows {
		a, b, s := w.row(i, w.at, sigma)
		t := between(a, b)
		sum += t.log
		if a == b {
			sum -= math.Log(s)
		}
		curve := math.Min(1, math.Max(0, t.curve)) / (s * s)
		cross := (2*t.mean*t.curve - t.third) / s
		for j, x := range w.rows[i].X {
			if x == 0 {
				continue
			}
			g[j] += x * t.mean / s
			for l, y := range w.rows[i].X[j:] {
				h.Data[j*h.Stride+j+l] += x * y * curve
			}
			if w.free {
				h.Data[j*h.Stride+w.n] += x * cross
			}
		}
		if w.free {
			mm, v := t.mean*t.mean, t.variance
			g[w.n] += mm - t.curve
			h.Data[w.n*h.Stride+w.n] += 2*(mm+v) - (4*mm*v + 4*t.mean*t.third + t.fourth - v*v)
		}
	}
	return sum
}

// direct finds the Newton step; false: the rows have no hold on some unknown.
// A Hessian that is not positive (a free sigma far from its optimum) is raised
// along its diagonal first.
func (w *work) direct() bool {
	if w.free && w.at[w.n] <= w.floorTau && w.gradient.AtVec(w.n) < 0 {
		w.pin()
	}
	for raise := 0.0; raise < 1e4; raise = raise*10 + 1e-3 {
		if raise > 0 {
			if !w.free {
				return false // concave: nothing but a lack of hold can do that
			}
			for j := range w.dim {
				w.hessian.SetSym(j, j, w.hessian.At(j, j)*(1+raise)+1e-12)
			}
		}
		if w.chol.Factorize(w.hessian) && w.chol.Cond() < 1e15 {
			return w.chol.SolveVecTo(&w.step, &w.gradient) == nil
		}
	}
	return false
}

// pin takes tau out of the step while it rests on its floor.
func (w *work) pin() {
	w.gradient.SetVec(w.n, 0)
	for j := range w.n {
		w.hessian.SetSym(j, w.n, 0)
	}
	w.hessian.SetSym(w.n, w.n, 1)
}

// climb goes along the step, halved until the likelihood rises, and derives
// anew. moved is false where not even a tiny part of it helps.
func (w *work) climb(last float64) (next float64, moved bool) {
	for part := 1.0; part > 1e-9; part /= 2 {
		for j := range w.dim {
			w.trial[j] = w.at[j] + part*w.step.AtVec(j)
		}
		if w.free {
			// No leap in sigma: the likelihood is only locally well shaped there.
			w.trial[w.n] = math.Max(w.floorTau, math.Max(w.at[w.n]-2, math.Min(w.at[w.n]+2, w.trial[w.n])))
		}
		if l := w.likelihood(w.trial); l > last {
			w.at, w.trial = w.trial, w.at
			return w.derive(), true
		}
	}
	return last, false
}
