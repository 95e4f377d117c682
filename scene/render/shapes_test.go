// This file holds the solids that the tests draw.

package render

import (
	"image"
	"image/color"
	"math"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// box is a closed box round the origin with sharp edges.
func box(x, y, z float64) *Mesh {
	m := &Mesh{}
	half := [3]float64{x / 2, y / 2, z / 2}
	for axis := range 3 {
		for _, side := range []float64{-1, 1} {
			u, v := (axis+1)%3, (axis+2)%3
			base := uint32(len(m.Positions))
			for _, c := range [][2]float64{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}} {
				var p, n mgl32.Vec3
				p[axis], p[u], p[v] = float32(side*half[axis]), float32(c[0]*side*half[u]), float32(c[1]*half[v])
				n[axis] = float32(side)
				m.Positions, m.Normals = append(m.Positions, p), append(m.Normals, n)
			}
			m.Triangles = append(m.Triangles, [3]uint32{base, base + 1, base + 2}, [3]uint32{base, base + 2, base + 3})
		}
	}
	return m
}

// grid closes an n by k lattice of vertices, wrapping round both ways, into
// triangles.
func (m *Mesh) grid(n, k int) {
	at := func(i, j int) uint32 { return uint32(i%n*k + j%k) }
	for i := range n {
		for j := range k {
			m.Triangles = append(m.Triangles,
				[3]uint32{at(i, j), at(i+1, j), at(i+1, j+1)},
				[3]uint32{at(i, j), at(i+1, j+1), at(i, j+1)})
		}
	}
}

// torus lies in the x-y plane.
func torus(ring, tube float64, n, k int) *Mesh {
	m := &Mesh{}
	for i := range n {
		sa, ca := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		for j := range k {
			sb, cb := math.Sincos(2 * math.Pi * float64(j) / float64(k))
			r := ring + tube*cb
			m.Positions = append(m.Positions, mgl32.Vec3{float32(r * ca), float32(r * sa), float32(tube * sb)})
			m.Normals = append(m.Normals, mgl32.Vec3{float32(cb * ca), float32(cb * sa), float32(sb)})
		}
	}
	m.grid(n, k)
	return m
}

// ball is a sphere with n slices round z and n/2 stacks.
func ball(radius float64, n int) *Mesh {
	m := &Mesh{}
	stacks := n / 2
	for i := range n + 1 {
		sa, ca := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		for j := range stacks + 1 {
			sb, cb := math.Sincos(math.Pi * (float64(j)/float64(stacks) - 0.5))
			d := mgl32.Vec3{float32(cb * ca), float32(cb * sa), float32(sb)}
			m.Positions, m.Normals = append(m.Positions, d.Mul(float32(radius))), append(m.Normals, d)
		}
	}
	at := func(i, j int) uint32 { return uint32(i*(stacks+1) + j) }
	for i := range n {
		for j := range stacks {
			if j > 0 {
				m.Triangles = append(m.Triangles, [3]uint32{at(i, j), at(i+1, j), at(i+1, j+1)})
			}
			if j < stacks-1 {
				m.Triangles = append(m.Triangles, [3]uint32{at(i, j), at(i+1, j+1), at(i, j+1)})
			}
		}
	}
	return m
}

var grey = color.NRGBA{150, 152, 156, 255}

// bench is a small scene with every kind of part: still and moving solids, a
// translucent one of either shell, one open and two-sided, one mirrored.
func bench() *Scene {
	open := box(60, 60, 60)
	open.Triangles = open.Triangles[2:]
	return &Scene{
		Parts: []Part{
			{Mesh: box(200, 100, 60), Colour: grey, Gloss: 0.3, ID: 1},
			{Mesh: torus(70, 15, 60, 24), Colour: color.NRGBA{170, 120, 80, 255}, Gloss: 0.5, ID: 2, Transform: Translation(mgl64.Vec3{0, 0, 60}), Moving: true},
			{Mesh: torus(70, 15, 60, 24), Colour: color.NRGBA{90, 140, 190, 80}, Shell: 1, Transform: Translation(mgl64.Vec3{20, 10, 70}), Moving: true},
			{Mesh: box(400, 300, 300), Colour: color.NRGBA{120, 150, 190, 50}},
			{Mesh: open, TwoSided: true, Colour: grey, ID: 5, Transform: Affine{-1, 0, 0, 150, 0, 1, 0.3, 90, 0, 0, 1, -20}},
		},
		Camera:     Camera{Eye: mgl64.Vec3{-500, -600, 380}, Target: mgl64.Vec3{0, 0, 20}, Up: mgl64.Vec3{0, 0, 1}},
		Light:      DefaultLight(),
		Background: DaylightBackground,
		Outline:    Outline{Colour: DaylightOutline.Colour, Silhouette: 0.75, Crease: 0.35, Ghost: 0.8},
	}
}

func picture(width, height int) *image.RGBA { return image.NewRGBA(image.Rect(0, 0, width, height)) }
