package interval

// This file holds what is fitted, and Newton's method.

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// Row is one reading: X.b plus its error lies between Least and Most.
type Row struct {
	X           []float64
	Least, Most float64 // equal: a number; -Inf, +Inf: no limit
	Scale       float64 // the error's standard deviation over sigma; 0: 1
}

// Problem is what is to be fitted.
type Problem struct {
	Unknowns int
	Rows     []Row
	Sigma    float64   // above 0; where a free sigma begins
	Start    []float64 // nil: nought
}

// Settings say how.
type Settings struct {
	FreeSigma     bool    // find sigma too
	FloorSigma    float64 // the least a free sigma may be; 0: a thousandth of Problem.Sigma
	MostIteration int     // 0: 100
}

// Status says why a fit stopped.
type Status int

// A fit converged; or it used up its iterations; or the rows leave some unknown
// without any hold, so that there is no one optimum; or there is nothing to
// fit, or a number that is none.
const (
	Converged Status = iota
	Stalled
	Undetermined
	Invalid
)

func (s Status) String() string {
	return [...]string{"converged", "stalled", "undetermined", "invalid"}[s]
}

// Result is the optimum.
type Result struct {
	Status        Status
	B             []float64
	Sigma         float64
	AtFloor       bool // a free sigma was held at its floor
	LogLikelihood float64
	Iterations    int
	// Covariance of B, and of the logarithm of a free sigma as its last row;
	// nil unless converged.
	Covariance *mat.SymDense
}

// decrementEnough is the Newton decrement squared, twice what the likelihood
// can still gain, below which a fit is done; far under what a double can tell.
const decrementEnough = 1e-22

// Fit finds the optimum. Its Newton steps are halved until the likelihood
// rises, so it needs no good start.
func Fit(p Problem, s Settings) Result {
	w, ok := newWork(&p, &s)
	if !ok {
		return Result{Status: Invalid}
	}
	most := s.MostIteration
	if most == 0 {
		most = 100
	}
	last := w.derive()
	r := Result{Status: Stalled}
	for r.Iterations = 1; r.Iterations <= most; r.Iterations++ {
		if !w.direct() {
			r.Status = Undetermined
			break
		}
		decrement := mat.Dot(&w.step, &w.gradient)
		if decrement < decrementEnough {
			r.Status = Converged
			break
		}
		next, moved := w.climb(last)
		if !moved { // as good as the arithmetic tells
			if decrement < 1e-10 {
				r.Status = Converged
			}
			break
		}
		last = next
	}
	w.result(&r, last)
	return r
}

// result copies the optimum out of the work.
func (w *work) result(r *Result, logLikelihood float64) {
	r.B = append([]float64(nil), w.at[:w.n]...)
	r.Sigma = math.Exp(w.tau())
	r.AtFloor = w.free && w.tau() <= w.floorTau
	r.LogLikelihood = logLikelihood
	if r.Status == Converged {
		r.Covariance = mat.NewSymDense(w.dim, nil)
		if w.chol.InverseTo(r.Covariance) != nil {
			r.Status, r.Covariance = Undetermined, nil
		}
	}
}

// LogLikelihood is that of one row at b.
func LogLikelihood(r *Row, b []float64, sigma float64) float64 {
	w := work{rows: []Row{*r}}
	lo, hi, s := w.row(0, b, sigma)
	l := between(lo, hi).log
	if lo == hi {
		l -= math.Log(s)
	}
	return l
}
