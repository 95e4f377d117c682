package response

// A boat nobody has measured yet has a response too, only much less sure: her numbers
// are another boat's, each with a wide plus-or-minus, and all of them count.

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"

	"aligner/assets"
	"aligner/hulls/fields"
	"aligner/kinematics"
)

func TestAssumedBoatsHaveAResponse(t *testing.T) {
	for _, name := range assets.HullNames() {
		base := hull(t, name)
		h, err := fields.NewFrom(*base, "Dunlin", fields.Wanted{Layout: base.Layout, Mounts: len(base.Mounts), Bearings: len(base.Bearings), Solid: base.Mounts[0].Kind == "solid"})
		if err != nil {
			t.Fatal(err)
		}
		held := kinematics.Seated
		if !h.Coupling.HasPilot() {
			held = kinematics.Centred
		}
		known, err := NewModel(base, held, false)
		if err != nil {
			t.Fatal(err)
		}
		unknown, err := NewModel(&h, held, false)
		if err != nil {
			t.Errorf("%s taken over: %v", name, err)
			continue
		}
		a, _ := known.At(nil, nil)
		b, _ := unknown.At(nil, nil)
		var chol mat.Cholesky
		if !chol.Factorize(b.Cov) {
			t.Errorf("%s: covariance is not positive", name)
		}
		sure, less := 0.0, 0.0
		for i := range a.Mean {
			sure, less = sure+a.Cov.At(i, i), less+b.Cov.At(i, i)
		}
		t.Logf("%s: %.1f times the error", name, math.Sqrt(less/sure))
		if less < 1.5*sure || math.IsNaN(less) || math.IsInf(less, 0) {
			t.Errorf("%s: as sure of numbers nobody measured: %g, %g", name, less, sure)
		}
	}
}

func TestToleranceOfTheFileComesFirst(t *testing.T) {
	h := hull(t, "kittiwake").Clone()
	if got := Tolerance(&h, "/mounts/0/at_mm/0"); got != PositionMM {
		t.Errorf("%g", got)
	}
	if got := Tolerance(&h, "/shaft/diameter_mm"); got != 0 {
		t.Errorf("the shaft's diameter is taken to be known to %g", got)
	}
	h.Tolerance = map[string]float64{"/mounts/0/at_mm/0": 2, "/shaft/diameter_mm": 0.4, "/mounts/0/nut_range_mm/1": 3}
	for pointer, want := range map[string]float64{"/mounts/0/at_mm/0": 2, "/shaft/diameter_mm": 0.4, "/mounts/0/nut_range_mm/1": 0} {
		if got := Tolerance(&h, pointer); got != want {
			t.Errorf("%s: %g, want %g", pointer, got, want)
		}
	}
}
