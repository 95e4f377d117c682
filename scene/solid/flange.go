package solid

// This file makes a round flange with bolt holes, the middle on either side
// turned to a profile of its own.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Flange lies between Front (the larger x) and Back. Each side is flat from the
// rim to where its middle begins. Its rim has points at every hour of the clock.
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

// Points round the rim, a multiple of twelve, round the middle and a hole.
const (
	RimPoints    = 48
	middlePoints = 28
	holePoints   = 10
)

// Solid builds the flange. Where the holes leave no room it has none.
func (f Flange) Solid() *Solid {
	s := &Solid{}
	holes := f.side(s, f.Front, f.FrontMiddle[0].R, f.Radius, true) &&
		f.side(s, f.Back, f.BackMiddle[0].R, f.Radius-f.BackBevel, true)
	if !holes {
		s = &Solid{}
		f.side(s, f.Front, f.FrontMiddle[0].R, f.Radius, false)
		f.side(s, f.Back, f.BackMiddle[0].R, f.Radius-f.BackBevel, false)
	}
	s.span(clock(f.Front, f.Radius, RimPoints), clock(f.Back+f.BackBevel, f.Radius, RimPoints), 20)
	s.span(clock(f.Back+f.BackBevel, f.Radius, RimPoints), clock(f.Back, f.Radius-f.BackBevel, RimPoints), 20)
	for h := 0; holes && h < f.Holes; h++ {
		s.span(f.hole(h, f.Front), f.hole(h, f.Back), 20)
	}
	for _, middle := range [][]Turned{f.FrontMiddle, f.BackMiddle} {
		for i := range len(middle) - 1 {
			s.span(clock(middle[i].X, middle[i].R, middlePoints), clock(middle[i+1].X, middle[i+1].R, middlePoints), 20)
		}
		if last := middle[len(middle)-1]; last.R > 0 {
			s.cap(clock(last.X, last.R, middlePoints), 20)
		}
	}
	return orientedAlike(s.welded()).outward()
}

// clock is a circle about the x axis, clockwise seen looking forward, from 12.
func clock(x, r float64, n int) []mgl64.Vec3 {
	out := make([]mgl64.Vec3, n)
	for i := range out {
		s, c := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		out[i] = mgl64.Vec3{x, -r * s, r * c}
	}
	return out
}

// hole is the rim of one hole; the first stands half a division past 12.
func (f Flange) hole(h int, x float64) []mgl64.Vec3 {
	sin, cos := math.Sincos((float64(h) + 0.5) * 2 * math.Pi / float64(f.Holes))
	out := clock(x, f.HoleRadius, holePoints)
	for i := range out {
		out[i] = out[i].Add(mgl64.Vec3{0, -f.HoleCircle * sin, f.HoleCircle * cos})
	}
	return out
}

// side is one flat side, from the rim to its middle. It fails where holes and
// rims do not go together.
func (f Flange) side(s *Solid, x, inner, outer float64, holes bool) bool {
	// In the plane (-y, z) the clock runs clockwise, as holes do in it.
	points := reversed(clock(x, outer, RimPoints))
	rims := []int{RimPoints}
	add := func(ring []mgl64.Vec3) {
		points = append(points, ring...)
		rims = append(rims, len(ring))
	}
	add(clock(x, inner, middlePoints))
	for h := 0; holes && h < f.Holes; h++ {
		add(f.hole(h, x))
	}
	flat := make([]mgl64.Vec2, len(points))
	for i, p := range points {
		flat[i] = mgl64.Vec2{-p[1], p[2]}
	}
	rim := len(flat)
	for _, p := range scatter(flat[:RimPoints], outer/3) {
		if offHoles(flat[:rim], rims, p) > outer/14 && between(flat, rims, p) {
			flat = append(flat, p)
			points = append(points, mgl64.Vec3{x, -p[0], p[1]})
		}
	}
	triangles, ok := delaunay(flat, rims...)
	if !ok {
		return false
	}
	base := len(s.Points)
	s.Points = append(s.Points, points...)
	for _, t := range triangles {
		s.Triangles = append(s.Triangles, [3]int{base + t[0], base + t[1], base + t[2]})
	}
	return true
}

// offHoles is how far a point is from the nearest rim but the first.
func offHoles(points []mgl64.Vec2, rims []int, p mgl64.Vec2) float64 {
	off, first := math.Inf(1), rims[0]
	for _, n := range rims[1:] {
		off = min(off, offRim(points[first:first+n], p))
		first += n
	}
	return off
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
