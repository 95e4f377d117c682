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
	s := &Solid{}
	spans := len(rings) - 1
	if ends == Looped {
		spans++
	}
	for i := range spans {
		s.span(rings[i], rings[(i+1)%len(rings)], edgeMM)
	}
	if ends == Capped {
		// The skin runs the other way round along its first ring.
		s.cap(reversed(rings[0]), edgeMM)
		s.cap(rings[len(rings)-1], edgeMM)
	}
	return s.welded().outward()
}

func reversed(ring []mgl64.Vec3) []mgl64.Vec3 {
	out := make([]mgl64.Vec3, len(ring))
	for i, p := range ring {
		out[len(ring)-1-i] = p
	}
	return out
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
