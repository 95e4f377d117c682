package interval

// This file holds the derivatives of the whole likelihood.

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// work is a fit under way. Its steps are taken in c = (b' - b)/sigma' and nu =
// sigma/sigma' - 1 from b, sigma to b', sigma': a row's limits are then
//
//	a' = a (1 + nu) - x.c / scale,
//
// linear in the step, and the likelihood is concave in both together. In sigma
// or its logarithm it is not.
type work struct {
	rows   []Row
	n, dim int // unknowns; and with nu, last, where sigma is free
	free   bool
	floor  float64

	at, trial point
	gradient  mat.VecDense
	hessian   *mat.SymDense // minus the likelihood's
	held      []float64     // of each unknown, the largest curvature of a row it stands in

	step    mat.VecDense
	pinned  bool          // sigma stays where it is
	scaled  *mat.SymDense // the Hessian with a diagonal of ones
	unit    []float64     // by which it was scaled
	scratch mat.VecDense
	chol    mat.Cholesky
}

// point is a law and the size of the error about it.
type point struct {
	b     []float64
	sigma float64
}

// newWork is false where there is nothing to fit or a number is none.
func newWork(p *Problem, s *Settings) (*work, bool) {
	if !valid(p, s) {
		return nil, false
	}
	w := &work{rows: p.Rows, n: p.Unknowns, dim: p.Unknowns, free: s.FreeSigma}
	w.at = point{make([]float64, w.n), p.Sigma}
	w.trial = point{make([]float64, w.n), p.Sigma}
	copy(w.at.b, p.Start)
	if w.free {
		w.dim++
		w.floor = s.FloorSigma
		if w.floor == 0 {
			w.floor = p.Sigma / 1000
		}
		w.at.sigma = math.Max(p.Sigma, w.floor)
	}
	w.gradient = *mat.NewVecDense(w.dim, nil)
	w.hessian = mat.NewSymDense(w.dim, nil)
	w.held = make([]float64, w.n)
	w.step = *mat.NewVecDense(w.dim, nil)
	w.scaled = mat.NewSymDense(w.dim, nil)
	w.unit = make([]float64, w.dim)
	w.scratch = *mat.NewVecDense(w.dim, nil)
	return w, true
}

func valid(p *Problem, s *Settings) bool {
	finite := func(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
	ok := p.Unknowns > 0 && p.Sigma > 0 && finite(p.Sigma)
	ok = ok && s.FloorSigma >= 0 && finite(s.FloorSigma)
	ok = ok && (len(p.Start) == 0 || len(p.Start) == p.Unknowns)
	for _, b := range p.Start {
		ok = ok && finite(b)
	}
	for _, r := range p.Rows {
		ok = ok && len(r.X) == p.Unknowns && r.Scale >= 0 && finite(r.Scale)
		ok = ok && r.Least <= r.Most && !math.IsInf(r.Least, 1) && !math.IsInf(r.Most, -1)
		for _, x := range r.X {
			ok = ok && finite(x)
		}
	}
	return ok
}

// scale is the row's error over sigma.
func (r *Row) scale() float64 {
	if r.Scale == 0 {
		return 1
	}
	return r.Scale
}

// contribution is a row's at a point.
func (r *Row) contribution(at point) truncated {
	eta := 0.0
	for j, x := range r.X {
		eta += x * at.b[j]
	}
	s := at.sigma * r.scale()
	t := between((r.Least-eta)/s, (r.Most-eta)/s, (r.Most-r.Least)/s)
	if r.Least == r.Most {
		t.log -= math.Log(s)
	}
	return t
}

// likelihood alone, of a trial; its logarithm.
func (w *work) likelihood(at point) float64 {
	sum := 0.0
	for i := range w.rows {
		sum += w.rows[i].contribution(at).log
	}
	return sum
}

// derive gives the likelihood at w.at, its gradient and minus its Hessian for
// the step. With m, v, c3 and c4 the mean of z and its moments about the mean,
// and p a row's scale, a row has
//
//	dl/dc = x m/p                   dl/dnu = 1 - E z^2
//	d2l/dc2 = -x x' (1 - v)/p^2     d2l/dc dnu = x (m (1 - 2 v) - c3)/p
//	d2l/dnu2 = Var z^2 - E z^2 - 1 = 4 m^2 v + 4 m c3 + c4 - v^2 - m^2 - v - 1.
func (w *work) derive() float64 {
	w.gradient.Zero()
	w.hessian.Zero()
	clear(w.held)
	g, h := w.gradient.RawVector().Data, w.hessian.RawSymmetric()
	sum := 0.0
	for i := range w.rows {
		row := &w.rows[i]
		t, p := row.contribution(w.at), row.scale()
		sum += t.log
		slope, bend := t.mean/p, t.curve/(p*p)
		cross := (t.mean*(2*t.variance-1) + t.third) / p
		for j, x := range row.X {
			if x == 0 {
				continue
			}
			w.held[j] = math.Max(w.held[j], t.curve)
			g[j] += x * slope
			line := h.Data[j*h.Stride:]
			for l := j; l < w.n; l++ {
				line[l] += x * bend * row.X[l]
			}
			if w.free {
				line[w.n] += x * cross
			}
		}
		if w.free {
			mm, v := t.mean*t.mean, t.variance
			g[w.n] += t.curve - mm
			h.Data[w.n*h.Stride+w.n] += mm + v + 1 - (4*mm*v + 4*t.mean*t.third + t.fourth - v*v)
		}
	}
	return sum
}
