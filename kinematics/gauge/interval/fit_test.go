package interval

// This file checks the fit against printed examples and its own laws.

import (
	"math"
	"testing"
)

// fg1 is a made-up round of a coupling, twelve positions, in thou: the leaf
// that goes, the leaf that does not.
var fg1 = [12][2]float64{{14, 15}, {12, 13}, {11, 12}, {8, 9}, {5, 6}, {5, 6}, {6, 7}, {8, 9}, {9, 10}, {13, 14}, {15, 16}, {14, 15}}

func round(pairs [12][2]float64) Problem {
	p := Problem{Unknowns: 3, Sigma: 1}
	for h, pair := range pairs {
		sin, cos := math.Sincos(float64(h) * math.Pi / 6)
		p.Rows = append(p.Rows, Row{X: []float64{1, cos, sin}, Least: pair[0], Most: pair[1]})
	}
	return p
}

// TestRoundWithFreeSigma holds FG1 to a Newton fit made apart, which R's
// survival::survreg agrees with.
func TestRoundWithFreeSigma(t *testing.T) {
	r := Fit(round(fg1), Settings{FreeSigma: true})
	if r.Status != Converged {
		t.Fatal(r.Status)
	}
	want := []float64{10.499089962, 4.213960715, -2.400889951}
	for i, b := range want {
		if math.Abs(r.B[i]-b) > 1e-8 {
			t.Errorf("b[%d] = %.9f, want %.9f", i, r.B[i], b)
		}
	}
	if math.Abs(r.Sigma-0.565443034) > 1e-8 || math.Abs(r.LogLikelihood+11.700493649) > 1e-8 {
		t.Errorf("sigma %.9f, log likelihood %.9f", r.Sigma, r.LogLikelihood)
	}
	for i, se := range []float64{0.182818, 0.260073, 0.257126} {
		if got := math.Sqrt(r.Covariance.At(i, i)); math.Abs(got-se) > 1e-6 {
			t.Errorf("standard error %d = %.6f, want %.6f", i, got, se)
		}
	}
}

// TestPerfectRound: one law meets every interval, so sigma falls to its floor.
func TestPerfectRound(t *testing.T) {
	p := round([12][2]float64{})
	for i, go1 := range []float64{14, 12, 10, 7, 5, 5, 5, 7, 10, 12, 14, 15} {
		p.Rows[i].Least, p.Rows[i].Most = go1, go1+1
	}
	r := Fit(p, Settings{FreeSigma: true, FloorSigma: 0.05})
	if r.Status != Converged || !r.AtFloor || math.Abs(r.Sigma-0.05) > 1e-12 {
		t.Fatalf("%v, sigma %g, at floor %v", r.Status, r.Sigma, r.AtFloor)
	}
}
