package solid

// This file makes a round flange with bolt holes, the middle on either side
// turned to a profile of its own.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Flange lies between Front (the larger x) and Back. Each side is flat from the
// rim to where its middle begins.
type Flange struct {
	Radius                 float64
	Front, Back            float64 // x of the two flat sides
	Holes                  int
	HoleRadius, HoleCircle float64
	// FrontMiddle and BackMiddle are profiles from the edge of the flat side in
	// to the axis; their first points lie on that side.
	FrontMiddle, BackMiddle []Turned
	BackBevel               float64 // at the rim's back edge
}

// sideSteps parts each of the four sides of the field round a hole; more round
// the flange than along its radius would make slivers.
const sideSteps = 5

// Solid builds the flange.
func (f Flange) Solid() *Solid {
	s := &Solid{}
	f.side(s, f.Front, f.FrontMiddle[0].R, f.Radius)
	f.side(s, f.Back, f.BackMiddle[0].R, f.Radius-f.BackBevel)
	around := f.Holes * sideSteps
	ring := func(x, r float64) []mgl64.Vec3 {
		out := make([]mgl64.Vec3, around)
		for i := range out {
			out[i] = f.at(x, r, i)
		}
		return out
	}
	s.span(ring(f.Front, f.Radius), ring(f.Back+f.BackBevel, f.Radius), 20)
	s.span(ring(f.Back+f.BackBevel, f.Radius), ring(f.Back, f.Radius-f.BackBevel), 20)
	for _, middle := range [][]Turned{f.FrontMiddle, f.BackMiddle} {
		for i := range len(middle) - 1 {
			s.span(ring(middle[i].X, middle[i].R), ring(middle[i+1].X, middle[i+1].R), 20)
		}
		if last := middle[len(middle)-1]; last.R > 0 {
			s.cap(ring(last.X, last.R), 20)
		}
	}
	return orientedAlike(s.welded()).outward()
}

// at is the place at step i round the flange; holes stand in the middle of
// their fields.
func (f Flange) at(x, r float64, i int) mgl64.Vec3 {
	s, c := math.Sincos(2 * math.Pi * float64(i) / float64(f.Holes*sideSteps))
	return mgl64.Vec3{x, -r * s, r * c}
}

// side is one flat side with its holes, and half the wall of each hole.
func (f Flange) side(s *Solid, x, inner, outer float64) {
	middle := (f.Front + f.Back) / 2
	for h := range f.Holes {
		field := f.field(h, x, inner, outer)
		n := len(field)
		centre := (float64(h) + 0.5) * 2 * math.Pi / float64(f.Holes)
		sin, cos := math.Sincos(centre)
		u, v := mgl64.Vec3{0, -sin, cos}, mgl64.Vec3{0, -cos, -sin}
		c := u.Mul(f.HoleCircle)
		c[0] = x
		hole := make([]mgl64.Vec3, n)
		for i, p := range field {
			d := p.Sub(c)
			a := math.Atan2(d.Dot(v), d.Dot(u))
			hole[i] = c.Add(u.Mul(f.HoleRadius * math.Cos(a))).Add(v.Mul(f.HoleRadius * math.Sin(a)))
		}
		s.span(field, hole, math.Inf(1))
		wall := make([]mgl64.Vec3, n)
		for i := range wall {
			// The hole's own even division, so that both sides meet half way.
			a := 2 * math.Pi * (float64(i) - 2.5) / float64(n)
			wall[i] = c.Add(u.Mul(f.HoleRadius * math.Cos(a))).Add(v.Mul(f.HoleRadius * math.Sin(a)))
			wall[i][0] = middle
		}
		s.span(hole, wall, math.Inf(1))
	}
}

// field is the ring round one hole: out along one radius, round the rim, in
// along the next, back round the middle.
func (f Flange) field(h int, x, inner, outer float64) []mgl64.Vec3 {
	var o []mgl64.Vec3
	from, to := h*sideSteps, (h+1)*sideSteps
	for k := range sideSteps {
		o = append(o, f.at(x, outer, from+k))
	}
	for k := range sideSteps {
		o = append(o, f.at(x, outer+(inner-outer)*float64(k)/sideSteps, to))
	}
	for k := range sideSteps {
		o = append(o, f.at(x, inner, to-k))
	}
	for k := range sideSteps {
		o = append(o, f.at(x, inner+(outer-inner)*float64(k)/sideSteps, from))
	}
	return o
}

// orientedAlike turns triangles so that neighbours agree, walking from the
// first of each surface.
func orientedAlike(s *Solid) *Solid {
	type side struct{ a, b int }
	owners := map[side][]int{}
	key := func(a, b int) side { return side{min(a, b), max(a, b)} }
	for i, t := range s.Triangles {
		for k := range 3 {
			e := key(t[k], t[(k+1)%3])
			owners[e] = append(owners[e], i)
		}
	}
	runs := func(t [3]int, a, b int) bool {
		return t[0] == a && t[1] == b || t[1] == a && t[2] == b || t[2] == a && t[0] == b
	}
	done := make([]bool, len(s.Triangles))
	for first := range s.Triangles {
		if done[first] {
			continue
		}
		done[first] = true
		for queue := []int{first}; len(queue) > 0; queue = queue[1:] {
			t := s.Triangles[queue[0]]
			for k := range 3 {
				a, b := t[k], t[(k+1)%3]
				for _, o := range owners[key(a, b)] {
					if done[o] {
						continue
					}
					done[o] = true
					if u := s.Triangles[o]; runs(u, a, b) {
						s.Triangles[o] = [3]int{u[0], u[2], u[1]}
					}
					queue = append(queue, o)
				}
			}
		}
	}
	return s
}
