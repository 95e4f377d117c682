package scene

// This file holds the view: where one looks from, as numbers that a hand turns,
// pushes and pulls.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// View looks at Target from a direction and a distance. Yaw turns about the
// world's up: 0 looks forward from aft, a quarter turn looks from port to
// starboard, half a turn looks aft. Pitch looks down from above.
type View struct {
	Target     mgl64.Vec3
	YawRad     float64
	PitchRad   float64
	DistanceMM float64
}

// FieldOfViewDeg is the camera's vertical opening.
const FieldOfViewDeg = 24.0

// Limits of a view.
const (
	mostPitchRad    = 89 * math.Pi / 180
	leastDistanceMM = 60
	mostDistanceMM  = 60000
)

// toEye is the unit direction from the target to the eye.
func (v View) toEye(up, ahead mgl64.Vec3) mgl64.Vec3 {
	port := up.Cross(ahead)
	sinY, cosY := math.Sincos(v.YawRad)
	sinP, cosP := math.Sincos(v.PitchRad)
	return ahead.Mul(-cosP * cosY).Add(port.Mul(cosP * sinY)).Add(up.Mul(sinP))
}

// Camera is the view's camera; up and ahead are the world's.
func (v View) Camera(up, ahead mgl64.Vec3) render.Camera {
	return render.Camera{
		Eye: v.Target.Add(v.toEye(up, ahead).Mul(v.DistanceMM)), Target: v.Target, Up: up,
		FieldOfViewDeg: FieldOfViewDeg, Near: max(v.DistanceMM/200, 2),
	}
}

// Camera is a view's camera in this model's world.
func (m *Model) Camera(v View) render.Camera { return v.Camera(m.dims.up, m.dims.ahead) }

// Orbit turns the view by a drag over the picture: the whole width is half a
// turn.
func (v View) Orbit(dxPx, dyPx, widthPx float64) View {
	v.YawRad = math.Remainder(v.YawRad-dxPx/widthPx*math.Pi, 2*math.Pi)
	v.PitchRad = min(max(v.PitchRad+dyPx/widthPx*math.Pi, -mostPitchRad), mostPitchRad)
	return v
}

// Pan moves what is at the target with the hand.
func (m *Model) Pan(v View, dxPx, dyPx float64, width, height int) View {
	toEye := v.toEye(m.dims.up, m.dims.ahead)
	right := m.dims.up.Cross(toEye).Normalize()
	over := toEye.Cross(right)
	scale := 2 * v.DistanceMM * math.Tan(FieldOfViewDeg*math.Pi/360) / float64(height)
	v.Target = v.Target.Sub(right.Mul(dxPx * scale)).Add(over.Mul(dyPx * scale))
	return v
}

// Zoom goes nearer by a factor (above 1), keeping what is at a pixel where it
// is. at is a scene point under the pointer, or the target.
func (v View) Zoom(factor float64, at mgl64.Vec3) View {
	d := min(max(v.DistanceMM/factor, leastDistanceMM), mostDistanceMM)
	v.Target = at.Add(v.Target.Sub(at).Mul(d / v.DistanceMM))
	v.DistanceMM = d
	return v
}

// Between is a view part of the way from v to another, for a smooth turn: t
// from 0 to 1. The shorter way round is taken.
func (v View) Between(to View, t float64) View {
	turn := math.Remainder(to.YawRad-v.YawRad, 2*math.Pi)
	return View{
		Target:     v.Target.Add(to.Target.Sub(v.Target).Mul(t)),
		YawRad:     math.Remainder(v.YawRad+t*turn, 2*math.Pi),
		PitchRad:   v.PitchRad + t*(to.PitchRad-v.PitchRad),
		DistanceMM: v.DistanceMM * math.Pow(to.DistanceMM/v.DistanceMM, t),
	}
}
