package kinematics

// This file holds the gap that a drooping coupling half shows against a true
// engine, from hull to clock, against the closed forms of an overhang.

import (
	"math"
	"testing"

	"aligner/hulls"
)

// TestDroopOpensTheBottom hangs a shaft over two short stiff bearings. Its
// slope at the face by Roark's Formulas for Stress and Strain (table 8.1, from
// memory; spans and overhangs superposed), with span L, fore overhang a, the
// half's weight P at b before the fore bearing, aft overhang c, the propeller's
// weight Q at q behind the aft one:
//
//	EI slope = w L^3/24 - (P b + w a^2/2) L/3 - (Q q + w c^2/2) L/6
//	           - P b^2/2 - w a^3/6
//
// The half looks forward and down, so the gap is wide at the bottom by slope
// times diameter.
func TestDroopOpensTheBottom(t *testing.T) {
	const fore, aft = -250.0, -850.0
	for _, angleDeg := range []float64{0, 14} {
		h := builtInHull(t, "Bench")
		h.ShaftAngleDeg = angleDeg
		h.Log.BoreMM = h.Shaft.DiameterMM + 100
		h.Bearings = []hulls.Bearing{
			{Name: "fore", AtMM: fore, LengthMM: 1e-6, RadialStiffnessNPerMM: 1e9},
			{Name: "aft", AtMM: aft, LengthMM: 1e-6, RadialStiffnessNPerMM: 1e9},
		}
		// 2e-4 N of pull holds nothing up: its share of the droop is under 1e-5.
		r := solve(t, prepare(t, h), State{Held: Centred, PullN: 2e-4})

		metal, err := hulls.MaterialOf(h.Shaft.Material, h.Shaft.Condition)
		if err != nil {
			t.Fatal(err)
		}
		across := 9.80665 * math.Cos(angleDeg*math.Pi/180)
		dia := h.Shaft.DiameterMM
		w := metal.DensityGPerCM3 * 1e-6 * math.Pi / 4 * dia * dia * across
		ei := metal.YoungGPa * 1e3 * math.Pi / 64 * math.Pow(dia, 4)
		l, a, c := fore-aft, -fore, h.Shaft.LengthMM+aft
		half, b := h.Coupling.ShaftHalfMassKg*across, a-h.Coupling.ShaftHalfLengthMM/2
		propeller, q := h.Propeller.MassKg*across, aft-h.Propeller.AtMM
		slope := (w*l*l*l/24 - (half*b+w*a*a/2)*l/3 - (propeller*q+w*c*c/2)*l/6 - half*b*b/2 - w*a*a*a/6) / ei

		wide := -slope * h.Coupling.OuterDiameterMM
		if wide < 0.01 {
			t.Fatalf("droops by %g mm only: shows nothing", wide)
		}
		within(t, "bottom less top", r.Gap.AtHourMM(6)-r.Gap.AtHourMM(12), wide, 2e-5*wide)
		within(t, "opens at", r.Gap.OpensAtDeg(), 180, 1e-6)
		within(t, "starboard less port", r.Gap.AtHourMM(3)-r.Gap.AtHourMM(9), 0, 1e-9)
		within(t, "engine's own tilt", math.Hypot(r.Parts.Tilt[0], r.Parts.Tilt[1]), 0, 1e-12)
		if !(r.OffsetMM[1] < 0) {
			t.Errorf("the half stands %g mm above the engine's face, must hang below", r.OffsetMM[1])
		}
	}
}
