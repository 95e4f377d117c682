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
