// The picture against a ray tracer of a few lines: what is seen where.

package render

import (
	"math"
	"testing"

	"github.com/go-gl/mathgl/mgl64"
)

// tracer holds a scene's solid triangles.
type tracer []struct {
	a, e, f mgl64.Vec3 // a corner and the edges from it
	id      uint16
}

func newTracer(s *Scene) (t tracer) {
	for i := range s.Parts {
		p := &s.Parts[i]
		if p.Hidden || p.Colour.A < 255 {
			continue
		}
		at := func(k uint32) mgl64.Vec3 {
			v := p.Mesh.Positions[k]
			return p.Transform.Apply(mgl64.Vec3{float64(v[0]), float64(v[1]), float64(v[2])})
		}
		for _, c := range p.Mesh.Triangles {
			a := at(c[0])
			t = append(t, tracer{{a, at(c[1]).Sub(a), at(c[2]).Sub(a), p.ID}}...)
		}
	}
	return t
}

// nearest finds the nearest solid along a ray by trying every triangle (Moeller
// and Trumbore, Fast, minimum storage ray/triangle intersection, 1997).
func (t tracer) nearest(from, d mgl64.Vec3) (id uint16, distance float64) {
	distance = math.Inf(1)
	for i := range t {
		k := &t[i]
		h := d.Cross(k.f)
		det := k.e.Dot(h)
		o := from.Sub(k.a)
		if u := o.Dot(h) / det; u < 0 || u > 1 || math.Abs(det) < 1e-12 {
			continue
		}
		q := o.Cross(k.e)
		v := d.Dot(q) / det
		if r := k.f.Dot(q) / det; v >= 0 && o.Dot(h)/det+v <= 1 && r > 0 && r < distance {
			id, distance = k.id, r
		}
	}
	return id, distance
}

func views() map[string]Camera {
	near := bench().Camera
	across := near
	across.Height = 420
	across.Near = 1
	below := Camera{Eye: mgl64.Vec3{300, 200, -400}, Target: mgl64.Vec3{30, 20, 10}, Up: mgl64.Vec3{0.2, 0, 1}, FieldOfViewDeg: 50}
	inside := Camera{Eye: mgl64.Vec3{-20, -30, 45}, Target: mgl64.Vec3{40, 30, 20}, Up: mgl64.Vec3{0, 0, 1}, FieldOfViewDeg: 70, Near: 0.5}
	return map[string]Camera{"perspective": near, "orthographic": across, "from below": below, "close": inside}
}

// TestPickAgreesWithRays asks at many pixels of several views. At a silhouette a
// pixel's centre may show one part and its nearest sample another, so pixels
// with unlike neighbours are left out.
func TestPickAgreesWithRays(t *testing.T) {
	const width, height = 320, 220
	for name, camera := range views() {
		s := bench()
		s.Camera = camera
		r := New(Settings{Workers: 1})
		r.Draw(picture(width, height), s)
		rays := newTracer(s)
		compared, parts := 0, map[uint16]bool{}
		for y := 1; y < height-1; y += 4 {
			for x := 1; x < width-1; x += 4 {
				got := r.Pick(x, y)
				if got != r.Pick(x-1, y) || got != r.Pick(x+1, y) || got != r.Pick(x, y-1) || got != r.Pick(x, y+1) {
					continue
				}
				from, d := camera.Ray(width, height, float64(x)+0.5, float64(y)+0.5)
				want, distance := rays.nearest(from, d)
				compared++
				parts[want] = true
				if got != want {
					t.Errorf("%s: pixel (%d, %d) shows %d, the ray meets %d", name, x, y, got, want)
					continue
				}
				point, ok := r.Point(x, y)
				if ok != (want != 0) {
					t.Errorf("%s: pixel (%d, %d): point %v but part %d", name, x, y, ok, want)
				}
				if !ok {
					continue
				}
				// The pixel's nearest sample may lie on another facet than its centre.
				seen := r.seen(x, y)
				key := float64(seen.key.at(float32(x)+0.5, float32(y)+0.5))
				rise := math.Abs(r.view.distance(key) - r.view.distance(key+float64(seen.steepness())))
				if !alone(r, x, y, 3*rise+1) {
					continue
				}
				if off := point.Sub(from.Add(d.Mul(distance))).Len(); off > 1e-4*distance+rise {
					t.Errorf("%s: pixel (%d, %d): point is %g off at distance %g, rise %g", name, x, y, off, distance, rise)
				}
			}
		}
		if compared < 2000 || len(parts) < 3 {
			t.Errorf("%s: compared %d pixels over parts %v only", name, compared, parts)
		}
		r.Close()
	}
}

// alone reports that no neighbour of a pixel is farther or nearer by more than
// step: that the part does not pass behind itself there.
func alone(r *Renderer, x, y int, step float64) bool {
	at := func(x, y int) float64 {
		return r.view.distance(float64(r.seen(x, y).key.at(float32(x)+0.5, float32(y)+0.5)))
	}
	for _, d := range [][2]int{{-1, 0}, {1, 0}, {0, -1}, {0, 1}} {
		if math.Abs(at(x+d[0], y+d[1])-at(x, y)) > step {
			return false
		}
	}
	return true
}

// TestProjectAndRayAreInverse takes points to pixels and back.
func TestProjectAndRayAreInverse(t *testing.T) {
	for name, c := range views() {
		for _, p := range []mgl64.Vec3{{0, 0, 0}, {60, 40, 30}, {20, -30, 50}, {33, 21, 12}} {
			x, y, distance, _ := c.Project(640, 480, p)
			if distance < 1 {
				continue
			}
			from, d := c.Ray(640, 480, x, y)
			if off := p.Sub(from).Cross(d).Len(); off > 1e-9*distance {
				t.Errorf("%s: %v lies %g beside its ray", name, p, off)
			}
		}
	}
}

// TestHides asks about points before, on and behind what is seen.
func TestHides(t *testing.T) {
	for name, c := range views() {
		s := bench()
		s.Camera = c
		r := New(Settings{Workers: 1})
		r.Draw(picture(320, 220), s)
		asked := 0
		for y := 5; y < 220; y += 20 {
			for x := 5; x < 320; x += 20 {
				p, ok := r.Point(x, y)
				if !ok {
					continue
				}
				asked++
				_, _, distance, _ := c.Project(320, 220, p)
				if r.Hides(x, y, distance) || r.Hides(x, y, distance*0.9) {
					t.Errorf("%s: (%d, %d) hides itself at %g", name, x, y, distance)
				}
				if !r.Hides(x, y, 2*distance+100) {
					t.Errorf("%s: (%d, %d) at %g does not hide what is far behind", name, x, y, distance)
				}
			}
		}
		if asked < 10 {
			t.Errorf("%s: asked %d times only", name, asked)
		}
		r.Close()
	}
}
