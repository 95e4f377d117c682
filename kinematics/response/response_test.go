package response

// This file holds the response against the model itself, and learning against
// the closed form of a single number.

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

func hull(t testing.TB, name string) *hulls.Hull {
	t.Helper()
	h := builtin.Hull(t, name)
	return &h
}

func TestResponsesOfAllHulls(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := hull(t, name)
		held := kinematics.Seated
		if !h.Coupling.HasPilot() {
			held = kinematics.Centred
		}
		m, err := NewModel(h, held, false)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		r, err := m.At(nil, nil)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		for j, it := range r.Items {
			t.Logf("%-10s %v slide=%v: A %+.2f +- %.2f  B %+.2f +- %.2f thou a step", name, it.Mounts, it.Slide,
				r.Mean[2*j]/0.0254, math.Sqrt(r.Cov.At(2*j, 2*j))/0.0254,
				r.Mean[2*j+1]/0.0254, math.Sqrt(r.Cov.At(2*j+1, 2*j+1))/0.0254)
		}
		var chol mat.Cholesky
		if !chol.Factorize(r.Cov) {
			t.Errorf("%s: covariance is not positive", name)
		}
	}
}

// TestLearnsOneNumber: with one item and exact gaugings, the update is the
// textbook's: precision weights of model and boat.
func TestLearnsOneNumber(t *testing.T) {
	r := &Response{Items: []Item{{Mounts: []int{0}}}, Mean: []float64{-0.05, 0}, Cov: mat.NewSymDense(2, []float64{1e-4, 0, 0, 1e-6})}
	cov := mat.NewSymDense(4, nil)
	for i := range 4 {
		cov.SetSym(i, i, 1e-5)
	}
	l, err := r.Learn(Story{GapMM: [][2]float64{{0.3, 0}, {0.14, 0}}, CovMM2: cov, Moves: [][]float64{{4}}})
	if err != nil {
		t.Fatal(err)
	}
	noise := (2e-5 + settlingMM*settlingMM) / 16
	gain := 1e-4 / (1e-4 + noise)
	want := -0.05 + gain*(-0.04+0.05)
	if got := l.Response.Mean[0]; math.Abs(got-want) > 1e-12 {
		t.Errorf("learnt %.9f, want %.9f", got, want)
	}
	if got, want := l.Response.Cov.At(0, 0), 1e-4*(1-gain); math.Abs(got-want) > 1e-15 {
		t.Errorf("variance %.3g, want %.3g", got, want)
	}
	if len(l.Surprises) > 0 || l.Told[0] < 0.5 {
		t.Errorf("surprises %v, told %v", l.Surprises, l.Told)
	}
}

// TestStuckNutIsASurprise: nothing moved at all.
func TestStuckNutIsASurprise(t *testing.T) {
	h := hull(t, "kittiwake")
	m, err := NewModel(h, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	r, _ := m.At(nil, nil)
	cov := mat.NewSymDense(4, nil)
	for i := range 4 {
		cov.SetSym(i, i, 2.5e-5)
	}
	moves := make([]float64, len(r.Items))
	moves[0], moves[1] = 4, 4
	l, err := r.Learn(Story{GapMM: [][2]float64{{0.2, 0}, {0.2, 0}}, CovMM2: cov, Moves: [][]float64{moves}})
	if err != nil {
		t.Fatal(err)
	}
	if len(l.Surprises) != 1 || l.Surprises[0].Causes[0] != JamNutTight {
		t.Errorf("surprises: %+v", l.Surprises)
	}
}

func BenchmarkNewModel(b *testing.B) {
	h := hull(b, "kittiwake")
	for b.Loop() {
		if _, err := NewModel(h, kinematics.Seated, false); err != nil {
			b.Fatal(err)
		}
	}
}
