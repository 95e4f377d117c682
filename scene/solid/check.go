package solid

// This file checks the laws of a solid.

import "fmt"

// Open counts the directed edges that do not run exactly once each way. A
// closed and consistently oriented solid has none.
func (s *Solid) Open() int {
	runs := make(map[[2]int]int, 3*len(s.Triangles))
	for _, t := range s.Triangles {
		for i := range 3 {
			runs[[2]int{t[i], t[(i+1)%3]}]++
		}
	}
	open := 0
	for e, n := range runs {
		if n != 1 || runs[[2]int{e[1], e[0]}] != 1 {
			open++
		}
	}
	return open
}

// Surfaces are the solid's separate closed surfaces.
func (s *Solid) Surfaces() []*Solid {
	parent := make([]int, len(s.Points))
	for i := range parent {
		parent[i] = i
	}
	var root func(int) int
	root = func(a int) int {
		for parent[a] != a {
			parent[a] = parent[parent[a]]
			a = parent[a]
		}
		return a
	}
	for _, t := range s.Triangles {
		parent[root(t[0])] = root(t[1])
		parent[root(t[1])] = root(t[2])
	}
	var out []*Solid
	of := map[int]*Solid{}
	for _, t := range s.Triangles {
		r := root(t[0])
		if of[r] == nil {
			of[r] = &Solid{Points: s.Points}
			out = append(out, of[r])
		}
		of[r].Triangles = append(of[r].Triangles, t)
	}
	return out
}

// Fault says which law the solid breaks, or "". leastShape is the least allowed
// ratio of a triangle's height over its longest side.
func (s *Solid) Fault(leastShape float64) string {
	w := s
	if len(w.Triangles) == 0 {
		return "no triangles"
	}
	if n := w.Open(); n > 0 {
		return fmt.Sprintf("%d of its edges do not run once each way: it is not closed", n)
	}
	for _, p := range w.Points {
		if !(p.Len() < 1e9) {
			return fmt.Sprintf("a point at %v", p)
		}
	}
	for i, surface := range w.Surfaces() {
		if v := surface.VolumeMM3(); !(v > 0) {
			return fmt.Sprintf("surface %d has volume %g mm3: it is inside out", i, v)
		}
	}
	for _, t := range w.Triangles {
		a, b, c := w.Points[t[0]], w.Points[t[1]], w.Points[t[2]]
		longest := max(b.Sub(a).Len(), c.Sub(b).Len(), a.Sub(c).Len())
		height := b.Sub(a).Cross(c.Sub(a)).Len() / longest
		if !(height >= leastShape*longest) {
			return fmt.Sprintf("a sliver %.3g mm long and %.3g mm high at %.4g", longest, height, a)
		}
	}
	return ""
}
