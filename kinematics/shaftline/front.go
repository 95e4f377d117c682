package shaftline

// This file is the simple ways to hold the front end: not at all, at a place,
// at a place and slope. The engine's face is the other one, in kinematics.

import "math"

// still is the part of a Front that does nothing: movements prescribed or
// forces nil add nothing to the energy's slope once the first step is taken.
type still struct{}

func (still) Slope(float64, [4]float64) float64 { return 0 }
func (still) Advance(float64)                   {}
func (still) Residual([4]float64) float64       { return 0 }

// Free leaves the front end to hang.
type Free struct{ still }

// Balance solves S q + s = 0.
func (Free) Balance(end *End) ([4]float64, bool) {
	return end.SolveFree()
}

// Pinned holds the front end at a place and leaves its slope free.
type Pinned struct {
	still
	AtMM [2]float64 // y, z
}

// Balance finds the slopes at which no moment is held.
func (p Pinned) Balance(end *End) ([4]float64, bool) {
	s := Pin(end)
	q := s.Movement(p.AtMM[0], p.AtMM[1])
	return q, s.OK
}

// Clamped holds the front end at a place and slope.
type Clamped struct {
	still
	Q [4]float64 // y, dy/dx, z, dz/dx
}

// Balance is the prescribed movement.
func (c Clamped) Balance(*End) ([4]float64, bool) { return c.Q, true }

// PinnedEnd is an end with its slopes let go: at which slopes it holds no
// moment, and what stiffness it shows to travel alone.
type PinnedEnd struct {
	Kyy, Kyz, Kzz float64 // N/mm
	Fy, Fz        float64 // force at y = z = 0
	OK            bool    // false: the slopes are free to run away

	slope [2][3]float64 // dy/dx, dz/dx = slope . (y, z, 1)
}

// singular is the share of itself a stiffness may lose by elimination before
// it counts as none at all.
const singular = 1e-12

// Pin condenses the slopes out of an end.
func Pin(e *End) PinnedEnd {
	det := e.s11*e.s33 - e.s13*e.s13
	if !(det > singular*e.s11*e.s33) {
		return PinnedEnd{}
	}
	row := func(a, b float64) (float64, float64) { // S_ff^-1 (a, b)
		return (e.s33*a - e.s13*b) / det, (e.s11*b - e.s13*a) / det
	}
	var s PinnedEnd
	var m [2][3]float64
	m[0][0], m[1][0] = row(-e.s01, -e.s03)
	m[0][1], m[1][1] = row(-e.s12, -e.s23)
	m[0][2], m[1][2] = row(-e.f1, -e.f3)
	s.slope = m
	s.Kyy = e.s00 + e.s01*m[0][0] + e.s03*m[1][0]
	s.Kyz = e.s02 + e.s01*m[0][1] + e.s03*m[1][1]
	s.Kzz = e.s22 + e.s12*m[0][1] + e.s23*m[1][1]
	s.Fy = e.f0 + e.s01*m[0][2] + e.s03*m[1][2]
	s.Fz = e.f2 + e.s12*m[0][2] + e.s23*m[1][2]
	s.OK = true
	return s
}

// Movement is the end's, slopes and all, when it is put at (y, z).
func (s *PinnedEnd) Movement(y, z float64) [4]float64 {
	return [4]float64{
		y, s.slope[0][0]*y + s.slope[0][1]*z + s.slope[0][2],
		z, s.slope[1][0]*y + s.slope[1][1]*z + s.slope[1][2],
	}
}

// SolveFree is the movement at which the end holds neither force nor moment,
// or false where the end is not held in every direction.
func (e *End) SolveFree() ([4]float64, bool) {
	p := Pin(e)
	if !p.OK {
		return [4]float64{}, false
	}
	det := p.Kyy*p.Kzz - p.Kyz*p.Kyz
	// Travel stiffness is what is left of e.s00 and e.s22 after elimination.
	floor := singular * math.Max(e.s00, e.s22)
	if !(p.Kyy > floor) || !(p.Kzz > floor) || !(det > singular*p.Kyy*p.Kzz) {
		return [4]float64{}, false
	}
	y := (-p.Kzz*p.Fy + p.Kyz*p.Fz) / det
	z := (-p.Kyy*p.Fz + p.Kyz*p.Fy) / det
	return p.Movement(y, z), true
}
