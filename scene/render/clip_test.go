// Laws of clipping, against the plane worked out by hand.

package render

import (
	"math"
	"testing"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// floor is a square in z = 0 of the given half width, two triangles.
func floor(half float32) *Mesh {
	up := mgl32.Vec3{0, 0, 1}
	return &Mesh{
		Positions: []mgl32.Vec3{{-half, -half, 0}, {half, -half, 0}, {half, half, 0}, {-half, half, 0}},
		Normals:   []mgl32.Vec3{up, up, up, up},
		Triangles: [][3]uint32{{0, 1, 2}, {0, 2, 3}},
	}
}

// TestFloorUnderTheCamera draws floors that reach behind the eye, some far beyond
// the guard band. A pixel must show the floor just where its ray meets it beyond
// Near, and at the point where it meets it.
func TestFloorUnderTheCamera(t *testing.T) {
	const width, height = 200, 150
	for _, half := range []float32{100, 3000, 1e6} {
		for _, target := range []mgl64.Vec3{{100, 0, 60}, {100, 30, 0}, {10, 5, 0}, {-20, 60, 40}} {
			c := Camera{Eye: mgl64.Vec3{0, 0, 50}, Target: target, Up: mgl64.Vec3{0.1, 0, 1}, FieldOfViewDeg: 80, Near: 60}
			s := &Scene{Parts: []Part{{Mesh: floor(half), Colour: grey, ID: 9}}, Camera: c, Light: DefaultLight()}
			r := New(Settings{Workers: 1})
			r.Draw(picture(width, height), s)
			for y := range height {
				for x := range width {
					want, known := floorAt(c, float64(half), float64(x)+0.5, float64(y)+0.5)
					if !known {
						continue
					}
					if got := r.Pick(x, y) == 9; got != want {
						t.Fatalf("half %g, target %v: pixel (%d, %d) shows floor %v, want %v", half, target, x, y, got, want)
					}
					if p, ok := r.Point(x, y); ok && math.Abs(p[2]) > 1e-3*p.Sub(c.Eye).Len() {
						t.Fatalf("half %g, target %v: pixel (%d, %d) shows %v, off the floor", half, target, x, y, p)
					}
				}
			}
			r.Close()
		}
	}
}

// floorAt tells whether a pixel shows the floor, unless an edge is within a pixel.
func floorAt(c Camera, half, x, y float64) (shown, known bool) {
	for i, o := range [][2]float64{{0, 0}, {1, 1}, {1, -1}, {-1, 1}, {-1, -1}} {
		from, d := c.Ray(200, 150, x+o[0], y+o[1])
		along := -from[2] / d[2]
		p := from.Add(d.Mul(along))
		ahead := c.Target.Sub(c.Eye).Normalize()
		hit := along > 0 && along*d.Dot(ahead) > c.Near && math.Abs(p[0]) < half && math.Abs(p[1]) < half
		if i > 0 && hit != shown {
			return false, false
		}
		shown = hit
	}
	return shown, true
}

// TestClippedNeighboursShareTheirEdge looks along a fan of triangles that all pass
// the eye, onto a background of another part: no pixel may show it through.
func TestClippedNeighboursShareTheirEdge(t *testing.T) {
	m := &Mesh{}
	up := mgl32.Vec3{0, 0, 1}
	const n = 37
	for i := range n {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / n)
		m.Positions = append(m.Positions, mgl32.Vec3{float32(500 * cos), float32(500 * sin), 0})
		m.Normals = append(m.Normals, up)
	}
	m.Positions = append(m.Positions, mgl32.Vec3{13, 7, 0})
	m.Normals = append(m.Normals, up)
	for i := range uint32(n) {
		m.Triangles = append(m.Triangles, [3]uint32{n, i, (i + 1) % n})
	}
	r := New(Settings{Workers: 1})
	defer r.Close()
	for turn := range 40 {
		a := float64(turn) * 0.157
		s := &Scene{Parts: []Part{{Mesh: m, Colour: grey, ID: 1}}, Light: DefaultLight(),
			Camera: Camera{Eye: mgl64.Vec3{0, 0, 8}, Target: mgl64.Vec3{60 * math.Cos(a), 60 * math.Sin(a), 0}, Up: mgl64.Vec3{0, 0, 1}, FieldOfViewDeg: 60, Near: 9}}
		r.Draw(picture(160, 120), s)
		for y := 70; y < 120; y++ {
			for x := range 160 {
				from, d := s.Camera.Ray(160, 120, float64(x)+0.5, float64(y)+0.5)
				ahead := s.Camera.Target.Sub(s.Camera.Eye).Normalize()
				if depth := -from[2] / d[2] * d.Dot(ahead); depth > 9.5 && r.Pick(x, y) != 1 {
					t.Fatalf("turn %d: a hole at (%d, %d)", turn, x, y)
				}
			}
		}
	}
}
