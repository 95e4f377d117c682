package kinematics

// This file is the engine's pose: a finite rotation and a travel of the face
// centre, both changes from drawn, in S.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Pose carries a point p of the drawn engine to t + R p.
type Pose struct {
	TranslationMM mgl64.Vec3 // of the face centre
	Rotation      mgl64.Quat // unit
}

// drawnPose is no change.
func drawnPose() Pose { return Pose{Rotation: mgl64.QuatIdent()} }

// turn is R p - p, without the loss of digits of taking p off R p.
func (x *Pose) turn(p mgl64.Vec3) mgl64.Vec3 {
	v, w := x.Rotation.V, x.Rotation.W
	once := v.Cross(p)
	return once.Mul(2 * w).Add(v.Cross(once).Mul(2))
}

// Travel is how far a point of the engine, given as drawn, has moved.
func (x *Pose) Travel(p mgl64.Vec3) mgl64.Vec3 { return x.TranslationMM.Add(x.turn(p)) }

// Normal is the engine-side face's normal, drawn along x.
func (x *Pose) Normal() mgl64.Vec3 {
	n := mgl64.Vec3{1, 0, 0}
	return n.Add(x.turn(n))
}

// RotationRad is the rotation vector.
func (x *Pose) RotationRad() mgl64.Vec3 {
	s := x.Rotation.V.Len()
	if s < 1e-150 {
		return mgl64.Vec3{}
	}
	return x.Rotation.V.Mul(2 * math.Atan2(s, x.Rotation.W) / s)
}

// stepped is the pose a fraction alpha along a step: a travel, and a rotation
// vector applied after the present rotation.
func (x *Pose) stepped(step *[6]float64, alpha float64) Pose {
	d := mgl64.Vec3{step[3], step[4], step[5]}.Mul(alpha)
	return Pose{
		TranslationMM: x.TranslationMM.Add(mgl64.Vec3{step[0], step[1], step[2]}.Mul(alpha)),
		Rotation:      rotationBy(d).Mul(x.Rotation).Normalize(),
	}
}

// rotationBy is the rotation of a rotation vector.
func rotationBy(d mgl64.Vec3) mgl64.Quat {
	a := d.Len()
	half := 0.5
	if a > 1e-9 {
		half = math.Sin(a/2) / a
	}
	return mgl64.Quat{W: math.Cos(a / 2), V: d.Mul(half)}
}
