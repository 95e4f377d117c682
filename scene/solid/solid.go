package solid

// This file holds the solid itself: points and triangles, joined and placed.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Solid is a set of closed surfaces over shared points.
type Solid struct {
	Points    []mgl64.Vec3
	Triangles [][3]int
}

// Join is all the solids in one.
func Join(parts ...*Solid) *Solid {
	s := &Solid{}
	for _, p := range parts {
		base := len(s.Points)
		s.Points = append(s.Points, p.Points...)
		for _, t := range p.Triangles {
			s.Triangles = append(s.Triangles, [3]int{t[0] + base, t[1] + base, t[2] + base})
		}
	}
	return s
}

// Placed is the solid under an affine map, turned inside out again where the
// map is a mirror.
func (s *Solid) Placed(a render.Affine) *Solid { return s.Bent(a.Apply) }

// Bent is the solid with every point moved.
func (s *Solid) Bent(move func(mgl64.Vec3) mgl64.Vec3) *Solid {
	o := &Solid{Points: make([]mgl64.Vec3, len(s.Points)), Triangles: append([][3]int(nil), s.Triangles...)}
	for i, p := range s.Points {
		o.Points[i] = move(p)
	}
	if o.VolumeMM3() < 0 {
		for i, t := range o.Triangles {
			o.Triangles[i] = [3]int{t[0], t[2], t[1]}
		}
	}
	return o
}

// VolumeMM3 is positive where the triangles run anticlockwise seen from outside
// (the divergence theorem).
func (s *Solid) VolumeMM3() float64 {
	if len(s.Points) == 0 {
		return 0
	}
	o, sum := s.Points[0], 0.0
	for _, t := range s.Triangles {
		a, b, c := s.Points[t[0]].Sub(o), s.Points[t[1]].Sub(o), s.Points[t[2]].Sub(o)
		sum += a.Dot(b.Cross(c))
	}
	return sum / 6
}

// Bounds are the least and the largest coordinates.
func (s *Solid) Bounds() (low, high mgl64.Vec3) {
	inf := math.Inf(1)
	low, high = mgl64.Vec3{inf, inf, inf}, mgl64.Vec3{-inf, -inf, -inf}
	for _, p := range s.Points {
		for i := range 3 {
			low[i], high[i] = min(low[i], p[i]), max(high[i], p[i])
		}
	}
	return low, high
}

// weldMM is how near two points are one.
const weldMM = 1e-5

// welded is the solid with equal points made one and what has lost its area
// dropped.
func (s *Solid) welded() *Solid {
	o := &Solid{}
	seen := make(map[[3]int64]int, len(s.Points))
	index := make([]int, len(s.Points))
	for i, p := range s.Points {
		k := [3]int64{round(p[0]), round(p[1]), round(p[2])}
		j, ok := seen[k]
		if !ok {
			j = len(o.Points)
			seen[k] = j
			o.Points = append(o.Points, p)
		}
		index[i] = j
	}
	for _, t := range s.Triangles {
		a, b, c := index[t[0]], index[t[1]], index[t[2]]
		if a != b && b != c && c != a {
			o.Triangles = append(o.Triangles, [3]int{a, b, c})
		}
	}
	return o
}

func round(v float64) int64 { return int64(math.Round(v / weldMM)) }

// outward turns the triangles so that the volume is positive.
func (s *Solid) outward() *Solid {
	if s.VolumeMM3() < 0 {
		for i, t := range s.Triangles {
			s.Triangles[i] = [3]int{t[0], t[2], t[1]}
		}
	}
	return s
}
