package solid

// This file stretches a skin over rings.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Ends says what becomes of the first and the last ring.
type Ends int

// Capped closes both, Looped joins them.
const (
	Capped Ends = iota
	Looped
)

// Skin stretches a skin over rings of equally many points. A ring may be a
// single place (all its points equal). Rings farther apart than edgeMM get
// others between them.
func Skin(rings [][]mgl64.Vec3, ends Ends, edgeMM float64) *Solid {
	s := skin(rings, ends, edgeMM, true)
	if s.Open() > 0 {
		s = skin(rings, ends, edgeMM, false)
	}
	return s.outward()
}

func skin(rings [][]mgl64.Vec3, ends Ends, edgeMM float64, spines bool) *Solid {
	s := &Solid{}
	spans := len(rings) - 1
	if ends == Looped {
		spans++
	}
	for i := range spans {
		s.span(rings[i], rings[(i+1)%len(rings)], edgeMM)
	}
	if ends == Capped {
		s.cap(rings[0], edgeMM, true, spines)
		s.cap(rings[len(rings)-1], edgeMM, false, spines)
	}
	return s.welded()
}

// span joins two rings.
func (s *Solid) span(a, b []mgl64.Vec3, edgeMM float64) {
	far := 0.0
	for i := range a {
		far = max(far, b[i].Sub(a[i]).Len())
	}
	steps := max(1, int(math.Ceil(far/edgeMM-0.01)))
	n, base := len(a), len(s.Points)
	for k := range steps + 1 {
		t := float64(k) / float64(steps)
		for i := range a {
			switch k {
			case 0:
				s.Points = append(s.Points, a[i])
			case steps:
				s.Points = append(s.Points, b[i])
			default:
				s.Points = append(s.Points, a[i].Add(b[i].Sub(a[i]).Mul(t)))
			}
		}
	}
	for k := range steps {
		for i := range n {
			j := (i + 1) % n
			s.quad(base+k*n+i, base+k*n+j, base+(k+1)*n+j, base+(k+1)*n+i)
		}
	}
}

// quad adds two triangles, parted along the shorter diagonal.
func (s *Solid) quad(a, b, c, d int) {
	p := s.Points
	if p[a].Sub(p[c]).LenSqr() <= p[b].Sub(p[d]).LenSqr()*1.0001 {
		s.Triangles = append(s.Triangles, [3]int{a, b, c}, [3]int{a, c, d})
		return
	}
	s.Triangles = append(s.Triangles, [3]int{a, b, d}, [3]int{b, c, d})
}

// cap closes a ring with rings shrinking towards its middle: towards a line in
// a long ring whose sides mirror each other, else towards a point.
func (s *Solid) cap(ring []mgl64.Vec3, edgeMM float64, first, spines bool) {
	aim := towardMiddle(ring)
	if spines {
		aim = towardSpine(ring)
	}
	far := 0.0
	for i, p := range ring {
		far = max(far, aim[i].Sub(p).Len())
	}
	if far < weldMM {
		return
	}
	steps := max(1, int(math.Ceil(far/edgeMM-0.01)))
	at := func(k int) []mgl64.Vec3 {
		out := make([]mgl64.Vec3, len(ring))
		t := float64(k) / float64(steps)
		for i, p := range ring {
			out[i] = p.Add(aim[i].Sub(p).Mul(t))
		}
		return out
	}
	for k := range steps {
		a, b := at(k), at(k+1)
		if first {
			a, b = b, a
		}
		s.span(a, b, math.Inf(1))
	}
}

func towardMiddle(ring []mgl64.Vec3) []mgl64.Vec3 {
	var c mgl64.Vec3
	for _, p := range ring {
		c = c.Add(p)
	}
	c = c.Mul(1 / float64(len(ring)))
	out := make([]mgl64.Vec3, len(ring))
	for i := range out {
		out[i] = c
	}
	return out
}

// towardSpine aims each point at the nearest place of the line down the middle
// of a long ring.
func towardSpine(ring []mgl64.Vec3) []mgl64.Vec3 {
	out := towardMiddle(ring)
	c := out[0]
	var long mgl64.Vec3
	for i, p := range ring {
		// The longest chord between opposite points gives the direction well
		// enough for ovals and oblongs; sides are better, and straight.
		q := ring[(i+1)%len(ring)]
		if d := q.Sub(p); d.Len() > long.Len() {
			long = d
		}
	}
	if long.Len() == 0 {
		return out
	}
	long = long.Normalize()
	half, across := 0.0, 0.0
	for _, p := range ring {
		d := p.Sub(c)
		along := d.Dot(long)
		half = max(half, math.Abs(along))
		across = max(across, d.Sub(long.Mul(along)).Len())
	}
	if half < across {
		// The longest side lies across: the spine runs the other way.
		normal := mgl64.Vec3{}
		for i, p := range ring {
			normal = normal.Add(p.Sub(c).Cross(ring[(i+1)%len(ring)].Sub(c)))
		}
		if normal.Len() == 0 {
			return out
		}
		long = normal.Normalize().Cross(long)
		half, across = across, half
	}
	reach := half - across
	if reach <= 0.05*half {
		return out
	}
	for i, p := range ring {
		t := min(max(p.Sub(c).Dot(long), -reach), reach)
		out[i] = c.Add(long.Mul(t))
	}
	return out
}
