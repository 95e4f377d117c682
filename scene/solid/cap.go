package solid

// This file closes a ring with well-shaped triangles: points are scattered
// inside it on a grid of triangles and joined by Delaunay's rule (Bowyer, The
// Computer Journal 24, 1981; Watson, same volume). Where that does not bring
// back the ring itself, a fan from its middle closes it.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// cap closes a ring.
func (s *Solid) cap(ring []mgl64.Vec3, edgeMM float64) {
	n := distinct(ring)
	if len(n) < 3 {
		return
	}
	base := len(s.Points)
	s.Points = append(s.Points, n...)
	u, v, middle := planeOf(n)
	flat := make([]mgl64.Vec2, len(n))
	for i, p := range n {
		d := p.Sub(middle)
		flat[i] = mgl64.Vec2{d.Dot(u), d.Dot(v)}
	}
	inside := scatter(flat, edgeMM)
	triangles, ok := delaunay(append(append([]mgl64.Vec2(nil), flat...), inside...), len(flat))
	if !ok {
		s.Points = append(s.Points, middle)
		for i := range n {
			s.Triangles = append(s.Triangles, [3]int{base + i, base + (i+1)%len(n), base + len(n)})
		}
		return
	}
	for _, p := range inside {
		s.Points = append(s.Points, middle.Add(u.Mul(p[0])).Add(v.Mul(p[1])))
	}
	for _, t := range triangles {
		s.Triangles = append(s.Triangles, [3]int{base + t[0], base + t[1], base + t[2]})
	}
}

// distinct drops points equal to the one before.
func distinct(ring []mgl64.Vec3) []mgl64.Vec3 {
	var out []mgl64.Vec3
	for i, p := range ring {
		if p.Sub(ring[(i+1)%len(ring)]).Len() > weldMM {
			out = append(out, p)
		}
	}
	return out
}

// planeOf is the plane of a ring, in which it runs anticlockwise.
func planeOf(ring []mgl64.Vec3) (u, v, middle mgl64.Vec3) {
	for _, p := range ring {
		middle = middle.Add(p.Mul(1 / float64(len(ring))))
	}
	var normal mgl64.Vec3
	for i, p := range ring {
		normal = normal.Add(p.Sub(middle).Cross(ring[(i+1)%len(ring)].Sub(middle)))
	}
	if normal.Len() == 0 {
		return AxisX, AxisY, middle
	}
	normal = normal.Normalize()
	u = AxisX.Cross(normal)
	if u.Len() < 0.5 {
		u = AxisY.Cross(normal)
	}
	u = u.Normalize()
	return u, normal.Cross(u), middle
}

// scatter lays a grid of triangles inside an outline, off its rim.
func scatter(o []mgl64.Vec2, edgeMM float64) []mgl64.Vec2 {
	low, high := o[0], o[0]
	for _, p := range o {
		low = mgl64.Vec2{min(low[0], p[0]), min(low[1], p[1])}
		high = mgl64.Vec2{max(high[0], p[0]), max(high[1], p[1])}
	}
	if math.IsInf(edgeMM, 1) {
		return nil
	}
	var out []mgl64.Vec2
	step := edgeMM * 1.15
	row := 0
	for y := low[1] + 0.37*step; y < high[1]; y += step * math.Sqrt(3) / 2 {
		x := low[0] + 0.31*step + 0.5*step*float64(row%2)
		for ; x < high[0]; x += step {
			p := mgl64.Vec2{x, y}
			if within(o, p) && offRim(o, p) > 0.42*step {
				out = append(out, p)
			}
		}
		row++
	}
	return out
}

func within(o []mgl64.Vec2, p mgl64.Vec2) bool {
	in := false
	for i, a := range o {
		b := o[(i+1)%len(o)]
		if (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0]+(p[1]-a[1])/(b[1]-a[1])*(b[0]-a[0]) {
			in = !in
		}
	}
	return in
}

func offRim(o []mgl64.Vec2, p mgl64.Vec2) float64 {
	least := math.Inf(1)
	for i, a := range o {
		d := o[(i+1)%len(o)].Sub(a)
		t := min(max(p.Sub(a).Dot(d)/d.Dot(d), 0), 1)
		least = min(least, p.Sub(a.Add(d.Mul(t))).Len())
	}
	return least
}

// delaunay joins points, of which the first go round an outline anticlockwise
// and then round holes clockwise, rims points each, into triangles between them.
// ok says that the sides of all the rims came out, once each.
func delaunay(points []mgl64.Vec2, rims ...int) (out [][3]int, ok bool) {
	n := len(points)
	size := 1.0
	for _, p := range points {
		size = max(size, math.Abs(p[0]), math.Abs(p[1]))
	}
	all := make([]mgl64.Vec2, 0, n+3)
	for i, p := range points {
		// Straight sides are bulged by a trace, so that no triangle lies along
		// one, and a nudge far under that breaks the ties of regular figures.
		k := float64(i*7919%1009) / 1009
		p = p.Mul(1 - 1e-4*p.Dot(p)/(size*size))
		all = append(all, mgl64.Vec2{p[0] + 1e-9*size*(k-0.5), p[1] + 1e-9*size*(0.5-k*k)})
	}
	all = append(all, mgl64.Vec2{-40 * size, -30 * size}, mgl64.Vec2{40 * size, -30 * size}, mgl64.Vec2{0, 50 * size})
	triangles := []disc{newDisc(all, n, n+1, n+2)}
	var edges [][2]int
	for i := range n {
		edges = edges[:0]
		kept := triangles[:0]
		for _, t := range triangles {
			if all[i].Sub(t.centre).LenSqr() >= t.square {
				kept = append(kept, t)
				continue
			}
			for k := range 3 {
				edges = append(edges, [2]int{t.v[k], t.v[(k+1)%3]})
			}
		}
		triangles = kept
		for j, e := range edges {
			twice := false
			for k, f := range edges {
				twice = twice || j != k && f == [2]int{e[1], e[0]}
			}
			if !twice {
				triangles = append(triangles, newDisc(all, e[0], e[1], i))
			}
		}
	}
	sides := make(map[[2]int]bool, 6*n)
	for _, t := range triangles {
		if t.v[0] >= n || t.v[1] >= n || t.v[2] >= n {
			continue
		}
		c := all[t.v[0]].Add(all[t.v[1]]).Add(all[t.v[2]]).Mul(1.0 / 3)
		if !between(all, rims, c) {
			continue
		}
		out = append(out, t.v)
		for k := range 3 {
			sides[[2]int{t.v[k], t.v[(k+1)%3]}] = true
		}
	}
	first := 0
	for _, rim := range rims {
		for k := range rim {
			i, j := first+k, first+(k+1)%rim
			if !sides[[2]int{i, j}] || sides[[2]int{j, i}] {
				return nil, false
			}
		}
		first += rim
	}
	return out, true
}

// between reports whether p is inside the first rim and outside the others.
func between(points []mgl64.Vec2, rims []int, p mgl64.Vec2) bool {
	first := 0
	for i, rim := range rims {
		if within(points[first:first+rim], p) != (i == 0) {
			return false
		}
		first += rim
	}
	return true
}

// disc is a triangle, anticlockwise, with the circle round it.
type disc struct {
	v      [3]int
	centre mgl64.Vec2
	square float64
}

func newDisc(p []mgl64.Vec2, a, b, c int) disc {
	u, v := p[b].Sub(p[a]), p[c].Sub(p[a])
	d := 2 * (u[0]*v[1] - u[1]*v[0])
	if d < 0 {
		b, c, u, v, d = c, b, v, u, -d
	}
	if d < 1e-300 {
		return disc{[3]int{a, b, c}, p[a], math.Inf(1)}
	}
	uu, vv := u.Dot(u), v.Dot(v)
	r := mgl64.Vec2{(v[1]*uu - u[1]*vv) / d, (u[0]*vv - v[0]*uu) / d}
	return disc{[3]int{a, b, c}, p[a].Add(r), r.Dot(r)}
}
