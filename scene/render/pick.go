// This file holds questions about the last picture: what stands at a pixel.

package render

import "github.com/go-gl/mathgl/mgl64"

// Pick returns the ID of the solid part seen at pixel (x, y) of the last
// picture, 0 for none. Translucent parts are looked through.
func (r *Renderer) Pick(x, y int) uint16 {
	s := r.seen(x, y)
	if s == nil {
		return 0
	}
	return r.materials[s.surface>>16].id
}

// Point returns the scene point of the solid surface seen at pixel (x, y) of
// the last picture, for turning and zooming about what lies under the pointer.
func (r *Renderer) Point(x, y int) (p mgl64.Vec3, ok bool) {
	s := r.seen(x, y)
	if s == nil {
		return p, false
	}
	px, py := float64(x)+0.5, float64(y)+0.5
	from, direction := r.cache.look.camera.Ray(r.view.width, r.view.height, px, py)
	ahead := -(r.view.m[8]*direction[0] + r.view.m[9]*direction[1] + r.view.m[10]*direction[2])
	distance := r.view.distance(float64(s.key.at(float32(px), float32(py))))
	return from.Add(direction.Mul(distance / ahead)), true
}

// Hides reports whether a solid at pixel (x, y) of the last picture stands in
// front of a point at the given distance, as Camera.Project returns it. A point
// on the surface is not hidden.
func (r *Renderer) Hides(x, y int, distance float64) bool {
	if distance < r.view.near {
		return true
	}
	return r.hides(x, y, float32(r.view.keyAt(distance)), 1)
}

// hides compares keys. The surface may lie before the point by as much as it
// rises over the given number of pixels, and a little more.
func (r *Renderer) hides(x, y int, key, px float32) bool {
	s := r.seen(x, y)
	if s == nil {
		return false
	}
	front := s.key.at(float32(x)+0.5, float32(y)+0.5)
	slack := (r.slackOfKey*key + r.slack) * 2 * px
	return front > key+slack+px*(abs32(s.key.a)+abs32(s.key.b))
}

// seen is the nearest solid triangle at a pixel of the last picture.
func (r *Renderer) seen(x, y int) *shadeTriangle {
	if x < 0 || y < 0 || x >= r.view.width || y >= r.view.height || len(r.front) == 0 {
		return nil
	}
	id := r.front[y*r.view.width+x]
	if id == 0 {
		return nil
	}
	return &r.shades[id-1]
}

// keyAt and distance turn the distance from the eye into the depth key and back.
func (v *view) keyAt(distance float64) float64 {
	if v.perspective {
		return v.near / distance
	}
	return 1 - (distance-v.near)*v.depthPerUnit
}

func (v *view) distance(key float64) float64 {
	if v.perspective {
		return v.near / key
	}
	return v.near + (1-key)/v.depthPerUnit
}
