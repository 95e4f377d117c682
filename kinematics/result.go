package kinematics

// This file is the answer.

import (
	"math"
	"slices"

	"aligner/kinematics/shaftline"
)

// Result is what a state comes to. Mounts and bearings are in the hull's order.
// Where Status has not converged every other field is zero and means nothing.
type Result struct {
	Status shaftline.Result
	Held   Held

	TranslationMM [3]float64 // of the face centre, in S
	RotationRad   [3]float64 // rotation vector, in S

	// Gap is not known of a hanging shaft.
	Gap   Gap
	Parts Parts

	FrontEndMM    [2]float64 // y, z of the shaft's front end
	FrontEndSlope [2]float64 // dy/dx, dz/dx there
	// OffsetMM is the shaft's front end less the face centre, [y, z].
	OffsetMM [2]float64
	// EndForceN is the engine's (or the block's) force on the shaft's end.
	EndForceN [2]float64
	// CouplingMomentNMM is the bending moment in the bolted coupling.
	CouplingMomentNMM float64
	// CouplingBendNMM is that moment as it bends the shaft in the planes of y and z,
	// work-conjugate to dy/dx and dz/dx at its front end.
	CouplingBendNMM [2]float64

	MountLoadN         []float64    // on the engine along +z_E
	BearingForceN      [][2]float64 // on the shaft
	BearingClearanceMM []float64    // least room left; negative: pressed in
	LogForceN          [2]float64   // on the shaft, both lips
	LogClearanceMM     float64
}

// Gap is the gap between the faces round the clock, in mm, open positive:
// G0 + Cos cos t + Sin sin t.
type Gap struct {
	Known        bool
	G0MM         float64
	CosMM, SinMM float64
}

// AtMM is the gap at a clock angle in radians.
func (g Gap) AtMM(clockRad float64) float64 {
	s, c := math.Sincos(clockRad)
	return g.G0MM + g.CosMM*c + g.SinMM*s
}

// AtHourMM is the gap at an hour of the clock.
func (g Gap) AtHourMM(hour int) float64 { return g.AtMM(float64(hour) * math.Pi / 6) }

// SpreadMM is the largest gap less the smallest.
func (g Gap) SpreadMM() float64 { return 2 * math.Hypot(g.CosMM, g.SinMM) }

// OpensAtDeg is the clock angle of the largest gap, in [0, 360); 0 where the
// faces are parallel.
func (g Gap) OpensAtDeg() float64 {
	d := math.Atan2(g.SinMM, g.CosMM) * 180 / math.Pi
	if d < 0 {
		d += 360
	}
	if d >= 360 {
		d = 0
	}
	return d
}

// Clone is a copy that shares nothing with what the drive line uses again.
func (r *Result) Clone() Result {
	c := *r
	c.MountLoadN = slices.Clone(r.MountLoadN)
	c.BearingForceN = slices.Clone(r.BearingForceN)
	c.BearingClearanceMM = slices.Clone(r.BearingClearanceMM)
	return c
}

// Parts are what a gap is made of, each [cos, sin] in mm; they add up to it.
type Parts struct {
	// Tilt is the engine's own rotation.
	Tilt [2]float64
	// Swing is the shaft turning as its front end is carried off the true line.
	Swing [2]float64
	// Sag is the shaft's slope with its front end on the true line.
	Sag [2]float64
	// RunOut is the halves' own faces.
	RunOut [2]float64
}
