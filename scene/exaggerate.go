package scene

// This file makes movements larger: the maps X + N u(X) of the rigid bodies,
// and how large N may be.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// The exaggerations on offer run from true scale to this.
const (
	LeastExaggeration = 1.0
	MostExaggeration  = 500.0
)

// engineMap is X + N (t + R X - X): I + N (R - I) and N t. R - I is worked out
// without taking nearly equal numbers from each other:
// R - I = (sin a / a) [v]x + ((1 - cos a) / a^2) [v]x [v]x (Rodrigues).
func engineMap(t, v mgl64.Vec3, n float64) render.Affine {
	a := v.Len()
	p, q := 1.0, 0.5
	if a > 1e-6 {
		p = math.Sin(a) / a
		s := math.Sin(a/2) / (a / 2)
		q = s * s / 2
	}
	x, y, z := v[0], v[1], v[2]
	return render.Affine{
		1 + n*q*(-y*y-z*z), n * (q*x*y - p*z), n * (q*x*z + p*y), n * t[0],
		n * (q*x*y + p*z), 1 + n*q*(-x*x-z*z), n * (q*y*z - p*x), n * t[1],
		n * (q*x*z - p*y), n * (q*y*z + p*x), 1 + n*q*(-x*x-y*y), n * t[2],
	}
}

// shaftMap is X + N u(X) for what is rigidly on the shaft at x0, where it is s.
func shaftMap(s Section, x0, axialMM, n float64) render.Affine {
	dy, dz := n*s.DY, n*s.DZ
	return render.Affine{
		1, -dy, -dz, n * axialMM,
		dy, 1, 0, n*s.Y - dy*x0,
		dz, 0, 1, n*s.Z - dz*x0,
	}
}

// couplingMap is the shaft half's. Its place is the front end's; its face is laid
// so that the drawn gap is N times the gap of the answer, exactly: the face's
// two tilts are the shaft's own and what run-out adds, to first order, and make
// up for the second order by which a face's points move across it. With u_x the
// engine face's travel at (y, z),
//
//	u_x - (p - y Y' - z Z') = G0 + (C z - S y) / r.
func (m *Model) couplingMap(v *Movement, n float64) render.Affine {
	s := v.section(m, 0)
	r := m.dims.faceRadius
	if v.Gap.Known {
		engine := engineMap(v.TranslationMM, v.RotationRad, 1)
		s.DY, s.DZ = -v.Gap.SinMM/r-engine[1], v.Gap.CosMM/r-engine[2]
	} else {
		s.DY, s.DZ = s.DY-v.RunOutMM[1]/r, s.DZ+v.RunOutMM[0]/r
	}
	return shaftMap(s, 0, v.AxialMM, n)
}

// halfMap is couplingMap, drawn back while the shaft hangs.
func (m *Model) halfMap(v *Movement, n float64) render.Affine {
	return render.Translation(mgl64.Vec3{-m.apartMM(v)}).Mul(m.couplingMap(v, n))
}

// apartMM is how far the shaft is drawn back while it hangs, out of the pilot:
// a place chosen for the picture, not a movement, and so not exaggerated.
func (m *Model) apartMM(v *Movement) float64 {
	if v.Gap.Known || v.Held == "" {
		return 0
	}
	return pilotHeight(m.dims) + 0.12*m.dims.faceRadius
}

// glassAlpha is how the log shows while the shaft is drawn outside it.
const glassAlpha = 96

// outOfLog reports whether the shaft as drawn leaves the log, whose room is not
// exaggerated: the log then turns to glass, for it says nothing there.
func (m *Model) outOfLog(v *Movement, n float64) bool {
	g := &m.hull.Log
	room := (g.BoreMM - m.hull.Shaft.DiameterMM) / 2
	for _, end := range [...]float64{-0.5, 0.5} {
		s := v.section(m, g.AtMM+end*g.LengthMM)
		if n > 1 && math.Hypot(n*s.Y-g.OffsetMM[0], n*s.Z-g.OffsetMM[1]) > room {
			return true
		}
	}
	return false
}

// roomShare is how far things may be drawn from where they belong, over the
// drive line's length, before they leave the picture.
const roomShare = 0.15

// MaxExaggeration is the largest N at which a movement stays in the fitted
// picture of the whole drive line. A hanging shaft, a centimetre down, allows
// tens; a seated one as a rule hundreds. It is at least 1 and at most
// MostExaggeration.
func (m *Model) MaxExaggeration(v *Movement) float64 {
	far := 0.0
	for _, s := range v.Shaft {
		far = max(far, math.Hypot(s.Y, s.Z))
	}
	unit := engineMap(v.TranslationMM, v.RotationRad, 1)
	for i := range m.hull.Mounts {
		p := m.dims.fromE.Apply(mgl64.Vec3(m.hull.Mounts[i].AtMM))
		far = max(far, unit.Apply(p).Sub(p).Len())
	}
	for i := range v.LiftMM {
		far = max(far, math.Abs(v.LiftMM[i]), math.Abs(v.SlideMM[i]))
	}
	room := roomShare * m.high.Sub(m.low).Len()
	return min(max(room/max(far, 1e-9), LeastExaggeration), MostExaggeration)
}
