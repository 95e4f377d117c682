package interval

// This file holds fits of measured numbers, and of ever narrower intervals
// around them, to the certified values of the NIST Statistical Reference
// Datasets (itl.nist.gov/div898/strd).

import (
	"encoding/json"
	"math"
	"os"
	"testing"
)

// strdSet is one set of testdata/strd.json.
type strdSet struct {
	Name           string
	X              [][]float64
	Y              []float64
	Coefficients   []float64
	StandardErrors []float64
	ResidualSD     float64
}

func readSTRD(t *testing.T) []strdSet {
	t.Helper()
	raw, err := os.ReadFile("testdata/strd.json")
	if err != nil {
		t.Fatal(err)
	}
	var sets []strdSet
	if err := json.Unmarshal(raw, &sets); err != nil {
		t.Fatal(err)
	}
	if len(sets) != 6 {
		t.Fatalf("%d sets", len(sets))
	}
	return sets
}

// problem makes each y an interval of a width, 0 for the number itself.
func (s strdSet) problem(width, sigma float64) Problem {
	p := Problem{Unknowns: len(s.X[0]), Sigma: sigma}
	for i, x := range s.X {
		p.Rows = append(p.Rows, Row{X: x, Least: s.Y[i] - width/2, Most: s.Y[i] + width/2})
	}
	return p
}

// likely is what turns the residual standard deviation, of n - p degrees of
// freedom, into the most likely sigma, of n.
func (s strdSet) likely() float64 {
	n, p := float64(len(s.Y)), float64(len(s.Coefficients))
	return math.Sqrt((n - p) / n)
}

// worst is the largest relative error.
func worst(got, want []float64) float64 {
	w := 0.0
	for i := range want {
		w = math.Max(w, math.Abs(got[i]/want[i]-1))
	}
	return w
}

// standardErrors are the roots of the first n of the covariance's diagonal.
func standardErrors(r Result, n int) []float64 {
	se := make([]float64, n)
	for i := range se {
		se[i] = math.Sqrt(r.Covariance.At(i, i))
	}
	return se
}

// digits says how near a fit of the numbers themselves comes to the certified
// values, as a relative error: about five times the worst seen. The columns are
// used as they are; the fit scales its Hessian itself. Coefficients keep nearly
// all digits, as each Newton step mends the last. A covariance is an inverse
// that nothing mends: it loses as many digits as the Hessian's condition has
// (Longley's, with a diagonal of ones, near 2e9).
var digits = map[string]struct{ coefficient, se float64 }{
	"Norris":   {1e-11, 1e-13},
	"NoInt1":   {1e-14, 1e-12},
	"NoInt2":   {1e-14, 1e-13},
	"Pontius":  {1e-12, 1e-12},
	"Longley":  {1e-10, 2e-7},
	"Wampler1": {5e-10, 0},
}

// TestCertified: with the certified residual sd as sigma, standard errors are
// the certified ones; with sigma free, n takes the place of n - p.
func TestCertified(t *testing.T) {
	for _, s := range readSTRD(t) {
		if s.ResidualSD == 0 {
			continue // TestPerfectNumbers
		}
		held := digits[s.Name]
		for _, free := range []bool{false, true} {
			r := Fit(s.problem(0, s.ResidualSD), Settings{FreeSigma: free})
			if r.Status != Converged || r.AtFloor {
				t.Errorf("%s, free %v: %v", s.Name, free, r.Status)
				continue
			}
			likely := 1.0
			if free {
				likely = s.likely()
			}
			se := standardErrors(r, len(s.Coefficients))
			for i := range se {
				se[i] /= likely
			}
			b, e, sd := worst(r.B, s.Coefficients), worst(se, s.StandardErrors), math.Abs(r.Sigma/likely/s.ResidualSD-1)
			t.Logf("%-8s free %-5v coefficients to %.1e, standard errors to %.1e, sigma to %.1e, %d steps", s.Name, free, b, e, sd, r.Iterations)
			if !(b <= held.coefficient) || !(e <= held.se) || !(sd <= 1e-12) {
				t.Errorf("%s, free %v: coefficients %v, standard errors %v, sigma %v", s.Name, free, r.B, se, r.Sigma/likely)
			}
		}
	}
}

// TestNarrowIntervals: as the width w, in residual sds, falls, the fit tends to
// the certified one, and from the side that Sheppard's correction foretells. An
// interval has 1 - w^2/12 of a number's hold, so that with sigma given standard
// errors are up by w^2/24; and it says that w^2/12 of the residual variance is
// the interval's own, so that a free sigma is down by w^2/24 n/(n - p).
func TestNarrowIntervals(t *testing.T) {
	for _, s := range readSTRD(t) {
		if s.ResidualSD == 0 {
			continue
		}
		held := digits[s.Name]
		n, p := float64(len(s.Y)), float64(len(s.Coefficients))
		for _, w := range []float64{1e-6, 1e-5, 1e-4, 1e-3, 1e-2} {
			sheppard := w * w / 24
			given := Fit(s.problem(w*s.ResidualSD, s.ResidualSD), Settings{})
			found := Fit(s.problem(w*s.ResidualSD, s.ResidualSD), Settings{FreeSigma: true})
			if given.Status != Converged || found.Status != Converged {
				t.Errorf("%s, width %g: %v, %v", s.Name, w, given.Status, found.Status)
				continue
			}
			// Coefficients move by the fourth power only: third moments.
			most := held.coefficient + 10*w*w*w*w
			if b := math.Max(worst(given.B, s.Coefficients), worst(found.B, s.Coefficients)); !(b <= most) {
				t.Errorf("%s, width %g: coefficients off by %.2g, more than %.2g", s.Name, w, b, most)
			}
			for i, se := range standardErrors(given, len(s.Coefficients)) {
				if up := se/s.StandardErrors[i] - 1; !(math.Abs(up-sheppard) <= 0.01*sheppard+held.se) {
					t.Errorf("%s, width %g: standard error %d up by %.4g, want %.4g", s.Name, w, i, up, sheppard)
				}
			}
			down := 1 - found.Sigma/s.likely()/s.ResidualSD
			if want := sheppard * n / (n - p); !(math.Abs(down-want) <= 0.01*want+1e-11) {
				t.Errorf("%s, width %g: sigma down by %.4g, want %.4g", s.Name, w, down, want)
			}
		}
	}
}

// TestPerfectNumbers: Wampler1 has no residual, so a free sigma falls to its
// floor; the coefficients are as near as its columns, up to x^5, let them be.
func TestPerfectNumbers(t *testing.T) {
	for _, s := range readSTRD(t) {
		if s.ResidualSD != 0 {
			continue
		}
		for _, settings := range []Settings{{}, {FreeSigma: true, FloorSigma: 1e-3}} {
			r := Fit(s.problem(0, 1), settings)
			if r.Status != Converged || r.AtFloor != settings.FreeSigma {
				t.Errorf("%s: %v, sigma %g, at floor %v", s.Name, r.Status, r.Sigma, r.AtFloor)
				continue
			}
			b := worst(r.B, s.Coefficients)
			t.Logf("%s coefficients to %.1e", s.Name, b)
			if !(b <= digits[s.Name].coefficient) {
				t.Errorf("%s: coefficients %v", s.Name, r.B)
			}
		}
	}
}
