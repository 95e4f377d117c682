package scene

// This file holds small helpers for building pieces.

import (
	"cmp"
	"slices"

	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func vec(x, y, z float64) mgl64.Vec3 { return mgl64.Vec3{x, y, z} }

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

// sortPoints sorts by the first coordinate, then the second.
func sortPoints(p []mgl64.Vec2) {
	slices.SortFunc(p, func(a, b mgl64.Vec2) int {
		return cmp.Or(cmp.Compare(a[0], b[0]), cmp.Compare(a[1], b[1]))
	})
}

// spaced is a closed path with a point about every step along it.
func spaced(path []mgl64.Vec2, step float64) []mgl64.Vec2 {
	total := 0.0
	for i, p := range path {
		total += path[(i+1)%len(path)].Sub(p).Len()
	}
	n := max(8, int(total/step))
	step = total / float64(n)
	var out []mgl64.Vec2
	gone, next := 0.0, 0.0
	for i, p := range path {
		q := path[(i+1)%len(path)]
		l := q.Sub(p).Len()
		for ; next < gone+l && len(out) < n; next += step {
			out = append(out, p.Add(q.Sub(p).Mul((next-gone)/l)))
		}
		gone += l
	}
	return out
}
