// This file holds the finer solids that the yardstick scene is made of.

package render

import (
	"math"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// pillow is a ball swollen into the corners of a box: |x|^4 + |y|^4 + |z|^4 = 1,
// scaled. It looks like a casting.
func pillow(x, y, z float64, n int) *Mesh {
	m := ball(1, n)
	size := [3]float64{x / 2, y / 2, z / 2}
	for i, d := range m.Positions {
		var sum float64
		for _, e := range d {
			sum += math.Pow(float64(e), 4)
		}
		r := math.Pow(sum, -0.25)
		var normal mgl64.Vec3
		for c, e := range d {
			p := float64(e) * r
			m.Positions[i][c] = float32(p * size[c])
			normal[c] = p * p * p / size[c]
		}
		normal = normal.Normalize()
		m.Normals[i] = mgl32.Vec3{float32(normal[0]), float32(normal[1]), float32(normal[2])}
	}
	return m
}

// lathe turns a profile of (x, radius) about the x axis, n slices; each piece of
// the profile is divided so that no face is longer than step. The profile runs
// from low to high x and starts and ends at radius 0.
func lathe(profile [][2]float64, n int, step float64) *Mesh {
	m := &Mesh{}
	for i := 1; i < len(profile); i++ {
		a, b := profile[i-1], profile[i]
		dx, dr := b[0]-a[0], b[1]-a[1]
		length := math.Hypot(dx, dr)
		pieces := int(math.Ceil(length / step))
		base := uint32(len(m.Positions))
		for k := range pieces + 1 {
			f := float64(k) / float64(pieces)
			for j := range n {
				sin, cos := math.Sincos(2 * math.Pi * float64(j) / float64(n))
				r := a[1] + f*dr
				m.Positions = append(m.Positions, mgl32.Vec3{float32(a[0] + f*dx), float32(r * cos), float32(r * sin)})
				m.Normals = append(m.Normals, mgl32.Vec3{float32(-dr / length), float32(cos * dx / length), float32(sin * dx / length)})
			}
		}
		at := func(k, j int) uint32 { return base + uint32(k*n+j%n) }
		for k := range pieces {
			for j := range n {
				m.Triangles = append(m.Triangles, [3]uint32{at(k, j), at(k+1, j+1), at(k+1, j)}, [3]uint32{at(k, j), at(k, j+1), at(k+1, j+1)})
			}
		}
	}
	return m
}

// disc is a short lathe: a flange, a washer, a bolt head.
func disc(from, to, radius float64, n int, step float64) *Mesh {
	return lathe([][2]float64{{from, 0}, {from, radius}, {to, radius}, {to, 0}}, n, step)
}

// placed is a mesh for joined.
type placed struct {
	mesh *Mesh
	at   Affine
}

// joined makes one mesh of several.
func joined(list ...placed) *Mesh {
	m := &Mesh{}
	for _, p := range list {
		base := uint32(len(m.Positions))
		a := p.at.orIdentity()
		n, _ := a.cofactors()
		for i, v := range p.mesh.Positions {
			q := a.Apply(mgl64.Vec3{float64(v[0]), float64(v[1]), float64(v[2])})
			m.Positions = append(m.Positions, mgl32.Vec3{float32(q[0]), float32(q[1]), float32(q[2])})
			m.Normals = append(m.Normals, turned(&n, p.mesh.Normals[i]))
		}
		for _, t := range p.mesh.Triangles {
			m.Triangles = append(m.Triangles, [3]uint32{base + t[0], base + t[1], base + t[2]})
		}
	}
	return m
}

// shell is the half of a tube below the x axis, open above: a hull.
func shell(from, to, width, depth float64, n, k int) *Mesh {
	m := &Mesh{}
	for i := range n + 1 {
		f := float64(i) / float64(n)
		taper := 0.45 + 0.55*math.Sin(math.Pi*(0.15+0.7*f))
		for j := range k + 1 {
			sin, cos := math.Sincos(math.Pi * float64(j) / float64(k))
			m.Positions = append(m.Positions, mgl32.Vec3{float32(from + f*(to-from)), float32(width / 2 * taper * cos), float32(-depth * taper * sin)})
			normal := mgl64.Vec3{0, cos / width * 2, -sin / depth}.Normalize()
			m.Normals = append(m.Normals, mgl32.Vec3{0, float32(normal[1]), float32(normal[2])})
		}
	}
	at := func(i, j int) uint32 { return uint32(i*(k+1) + j) }
	for i := range n {
		for j := range k {
			m.Triangles = append(m.Triangles, [3]uint32{at(i, j), at(i+1, j+1), at(i, j+1)}, [3]uint32{at(i, j), at(i+1, j), at(i+1, j+1)})
		}
	}
	return m
}

// ground is a level square about the origin, n by n cells.
func ground(size float64, n int) *Mesh {
	m := &Mesh{}
	for i := range n + 1 {
		for j := range n + 1 {
			m.Positions = append(m.Positions, mgl32.Vec3{float32(size * (float64(i)/float64(n) - 0.5)), float32(size * (float64(j)/float64(n) - 0.5)), 0})
			m.Normals = append(m.Normals, mgl32.Vec3{0, 0, 1})
		}
	}
	at := func(i, j int) uint32 { return uint32(i*(n+1) + j) }
	for i := range n {
		for j := range n {
			m.Triangles = append(m.Triangles, [3]uint32{at(i, j), at(i+1, j), at(i+1, j+1)}, [3]uint32{at(i, j), at(i+1, j+1), at(i, j+1)})
		}
	}
	return m
}
