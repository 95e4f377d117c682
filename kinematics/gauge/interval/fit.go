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

// A fit converged; or it used up its iterations, or left what a double can hold;
// or the rows leave some unknown without any hold, so that there is no one
// optimum; or there is nothing to fit, or a number that is none.
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
	AtFloor       bool // a free sigma is at its floor: there it is given, not found
	LogLikelihood float64
	Iterations    int
	// Covariance of B, and of the logarithm of a free sigma as its last row,
	// which is nought at the floor; nil unless converged.
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
	var r Result
	last := w.derive()
	r.Status, last = w.newton(last, most, &r.Iterations)
	r.B, r.Sigma, r.LogLikelihood = w.at.b, w.at.sigma, last
	r.AtFloor = w.free && w.at.sigma <= w.floor
	if r.Status == Converged {
		if r.Covariance, ok = w.covariance(); !ok {
			r.Status = Stalled
		}
	}
	return r
}

// newton takes steps until they no longer help.
func (w *work) newton(last float64, most int, taken *int) (Status, float64) {
	before := math.Inf(1)
	for {
		if math.IsNaN(last) || math.IsInf(last, 0) {
			return Stalled, last // past what a double can hold
		}
		if !w.direct() {
			return Undetermined, last
		}
		decrement := mat.Dot(&w.step, &w.gradient)
		if settled(decrement, before) {
			next, sunk := w.sink(last)
			if !sunk {
				break
			}
			last, before = next, math.Inf(1)
			continue
		}
		if *taken >= most {
			return Stalled, last
		}
		*taken++
		next, moved := w.climb(last, decrement < nearBy)
		if !moved {
			return Stalled, last
		}
		last, before = next, decrement
	}
	if !w.allHeld() {
		return Undetermined, last
	}
	return Converged, last
}

// nearBy is the decrement from which full Newton steps converge with the
// square; from there it is rounding if one does not bring it down, and a look at
// the likelihood would tell only rounding.
const nearBy = 1e-8

// settled is true where a step gains nothing that can be told.
func settled(decrement, before float64) bool {
	return decrement < decrementEnough || decrement < nearBy && decrement >= before
}
