package shaftline

// This file holds the problem: a shaft line as numbers, before anything is
// worked out.

import (
	"fmt"
	"math"
)

// Line is a shaft and what carries and loads it. Lengths in mm, x along the
// shaft from the coupling face, negative aft.
type Line struct {
	LengthMM             float64
	DiameterMM           float64
	BendingStiffnessNMM2 float64 // E I

	// WeightNPerMM is the crosswise weight of the bare shaft per length, pulling
	// towards -z. AftWeightNPerMM holds instead aft of AftFromMM (the same
	// shaft under water); the two are equal when dry.
	WeightNPerMM    float64
	AftWeightNPerMM float64
	AftFromMM       float64

	Points   []Point
	Bearings []Bearing
	Lips     []Lip
	Springs  []Spring

	// HookAtMM is where a lifting hook takes the shaft; its pull is set state
	// by state (State.HookN). At 0 it is the face itself.
	HookAtMM float64
}

// Point is a weight at one place, pulling towards -z.
type Point struct {
	AtMM    float64
	WeightN float64
	// MassKg counts for whirling only.
	MassKg float64
}

// Bearing is an elastic foundation inside a clearance.
type Bearing struct {
	Name            string
	AtMM            float64 // its middle
	LengthMM        float64
	StiffnessNPerMM float64 // radial, of the whole length
	ClearanceMM     float64 // diametral
	OffsetMM        [2]float64
}

// Lip is a stiff contact at one place: an end of the log.
type Lip struct {
	AtMM            float64
	StiffnessNPerMM float64
	ClearanceMM     float64 // diametral
	OffsetMM        [2]float64
}

// Spring holds the shaft at one place without clearance.
type Spring struct {
	AtMM            float64
	StiffnessNPerMM float64
	OffsetMM        [2]float64
}

// CircularBendingStiffness is E I of a round bar, I = pi d^4 / 64.
func CircularBendingStiffness(youngMPa, diameterMM float64) float64 {
	return youngMPa * math.Pi / 64 * math.Pow(diameterMM, 4)
}

// Invalid says what makes a line impossible, or "".
func (l *Line) Invalid() string {
	switch {
	case !(l.LengthMM > 0) || !(l.DiameterMM > 0) || !(l.BendingStiffnessNMM2 > 0):
		return fmt.Sprintf("shaft of length %g mm, diameter %g mm, EI %g N mm2: all must be positive",
			l.LengthMM, l.DiameterMM, l.BendingStiffnessNMM2)
	case len(l.Bearings)+len(l.Springs) == 0:
		return "a shaft without a bearing cannot be carried: give at least one"
	case !l.holds(l.HookAtMM):
		return fmt.Sprintf("hook at %g mm: must lie on the shaft, 0 to %g", l.HookAtMM, -l.LengthMM)
	}
	for _, b := range l.Bearings {
		if !l.holds(b.AtMM-b.LengthMM/2) || !l.holds(b.AtMM+b.LengthMM/2) || !(b.LengthMM > 0) {
			return fmt.Sprintf("bearing %q at %g mm, %g mm long: must lie on the shaft, 0 to %g",
				b.Name, b.AtMM, b.LengthMM, -l.LengthMM)
		}
		if !(b.StiffnessNPerMM > 0) || b.ClearanceMM < 0 {
			return fmt.Sprintf("bearing %q of stiffness %g N/mm, clearance %g mm: stiffness must be positive, clearance not negative",
				b.Name, b.StiffnessNPerMM, b.ClearanceMM)
		}
	}
	for _, p := range l.Points {
		if !l.holds(p.AtMM) {
			return fmt.Sprintf("weight at %g mm: must lie on the shaft, 0 to %g", p.AtMM, -l.LengthMM)
		}
	}
	for _, p := range l.Lips {
		if !l.holds(p.AtMM) || !(p.StiffnessNPerMM > 0) || p.ClearanceMM < 0 {
			return fmt.Sprintf("log lip at %g mm, clearance %g mm: must lie on the shaft, 0 to %g, and leave room",
				p.AtMM, p.ClearanceMM, -l.LengthMM)
		}
	}
	for _, s := range l.Springs {
		if !l.holds(s.AtMM) || !(s.StiffnessNPerMM > 0) {
			return fmt.Sprintf("spring at %g mm of %g N/mm: must lie on the shaft, 0 to %g, and be positive",
				s.AtMM, s.StiffnessNPerMM, -l.LengthMM)
		}
	}
	return ""
}

// holds reports whether x lies on the shaft.
func (l *Line) holds(xMM float64) bool { return xMM <= 0 && xMM >= -l.LengthMM }
