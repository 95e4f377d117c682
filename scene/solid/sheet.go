package solid

// This file makes plates: with a hole, and curved ones between two grids.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Plate is a flat plate between two heights with a hole: outer and hole have
// points in pairs.
func Plate(outer, hole Outline, at mgl64.Vec3, low, high float64) *Solid {
	ring := func(o Outline, z float64) []mgl64.Vec3 { return o.Ring(at.Add(mgl64.Vec3{0, 0, z}), AxisX, AxisY) }
	return Skin([][]mgl64.Vec3{ring(outer, low), ring(outer, high), ring(hole, high), ring(hole, low)}, Looped, math.Inf(1))
}

// Sheet is the space between two grids of equal size.
func Sheet(a, b [][]mgl64.Vec3) *Solid {
	s := &Solid{}
	rows, columns := len(a), len(a[0])
	index := func(grid, i, j int) int { return (grid*rows+i)*columns + j }
	for _, g := range [][][]mgl64.Vec3{a, b} {
		for _, row := range g {
			s.Points = append(s.Points, row...)
		}
	}
	for i := range rows - 1 {
		for j := range columns - 1 {
			s.quad(index(0, i, j), index(0, i+1, j), index(0, i+1, j+1), index(0, i, j+1))
			s.quad(index(1, i, j), index(1, i, j+1), index(1, i+1, j+1), index(1, i+1, j))
		}
	}
	edge := func(i, j, k, l int) { s.quad(index(0, i, j), index(0, k, l), index(1, k, l), index(1, i, j)) }
	for i := range rows - 1 {
		edge(i+1, 0, i, 0)
		edge(i, columns-1, i+1, columns-1)
	}
	for j := range columns - 1 {
		edge(0, j, 0, j+1)
		edge(rows-1, j+1, rows-1, j)
	}
	return orientedAlike(s.welded()).outward()
}

// Wedge is a prism over a flat polygon given in space, thick to both sides of
// it by half along a direction. The polygon is convex.
func Wedge(polygon []mgl64.Vec3, thick mgl64.Vec3) *Solid {
	var a, b []mgl64.Vec3
	for _, p := range polygon {
		a = append(a, p.Sub(thick.Mul(0.5)))
		b = append(b, p.Add(thick.Mul(0.5)))
	}
	return Skin([][]mgl64.Vec3{a, b}, Capped, math.Inf(1))
}
