package scene

// This file holds small helpers for building pieces.

import (
	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func vec(x, y, z float64) mgl64.Vec3 { return mgl64.Vec3{x, y, z} }

// shifted moves points by a vector.
func shifted(x, y, z float64) func(mgl64.Vec3) mgl64.Vec3 {
	return func(p mgl64.Vec3) mgl64.Vec3 { return p.Add(mgl64.Vec3{x, y, z}) }
}

// placed reads a map that was never set as the identity.
func placed(a render.Affine) render.Affine {
	if a == (render.Affine{}) {
		return render.Identity
	}
	return a
}

// engineOrRest is the engine's map as last posed.
func (p *posed) engineOrRest() render.Affine { return placed(p.engine) }

// halfOrRest is the shaft half's map as last posed.
func (p *posed) halfOrRest() render.Affine { return placed(p.half) }

// upright is a lathe's axis stood on end: x becomes up.
func upright(s *solid.Solid, at mgl64.Vec3) *solid.Solid {
	return s.Bent(func(p mgl64.Vec3) mgl64.Vec3 { return mgl64.Vec3{at[0] + p[1], at[1] + p[2], at[2] + p[0]} })
}
