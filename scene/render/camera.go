// This file holds the camera: from the scene's space to pixels and back.

package render

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Camera looks from Eye to Target. Lengths are in the scene's unit.
type Camera struct {
	Eye, Target mgl64.Vec3
	// Up is any direction that shall point up in the picture; it need not be
	// perpendicular to the line of sight. Zero, or along the line of sight,
	// means: take some direction.
	Up mgl64.Vec3
	// FieldOfViewDeg is the vertical opening in degrees; 0 means 30.
	FieldOfViewDeg float64
	// Height, if above zero, makes the camera orthographic: the picture is
	// Height high in scene units at any distance.
	Height float64
	// Near is how far from the eye the picture starts; nearer points are cut
	// off. 0 means a thousandth of the distance from Eye to Target.
	Near float64
}

// view is a camera made ready for one picture size.
//
// View frame V: x right, y up, z towards the viewer, origin at the eye; the
// distance in front of the eye is -z.
type view struct {
	m            Affine // scene to V
	width        int
	height       int
	centreX      float64 // picture centre, pixels
	centreY      float64
	scale        float64 // perspective: pixels at distance 1; orthographic: pixels per unit
	near         float64
	perspective  bool
	depthPerUnit float64 // orthographic: fall of the depth key per unit of distance
}

// orthographicDepth is how many picture heights behind Near an orthographic
// picture reaches.
const orthographicDepth = 1e4

// ready works out the view of a picture of the given size.
func (c Camera) ready(width, height int) view {
	toward := c.Eye.Sub(c.Target)
	distance := toward.Len()
	if !(distance > 0) {
		toward, distance = mgl64.Vec3{0, 0, 1}, 1
	}
	z := toward.Mul(1 / toward.Len())
	x := c.Up.Cross(z)
	if !(x.Len() > 1e-9*c.Up.Len()) {
		x = mgl64.Vec3{0, 0, 1}.Cross(z)
		if x.Len() < 1e-6 {
			x = mgl64.Vec3{0, 1, 0}.Cross(z)
		}
	}
	x = x.Normalize()
	y := z.Cross(x)
	v := view{
		m: Affine{
			x[0], x[1], x[2], -x.Dot(c.Eye),
			y[0], y[1], y[2], -y.Dot(c.Eye),
			z[0], z[1], z[2], -z.Dot(c.Eye),
		},
		width: width, height: height,
		centreX: float64(width) / 2, centreY: float64(height) / 2,
		near: c.Near,
	}
	if v.near <= 0 {
		v.near = distance / 1000
	}
	if c.Height > 0 {
		v.scale = float64(height) / c.Height
		v.depthPerUnit = 1 / (orthographicDepth * c.Height)
		return v
	}
	fov := c.FieldOfViewDeg
	if fov <= 0 {
		fov = 30
	}
	v.perspective = true
	v.scale = float64(height) / 2 / math.Tan(fov*math.Pi/360)
	return v
}

// project takes a point of V to pixels and its depth key (1 at Near, falling
// with distance; see doc.go).
func (v *view) project(p mgl64.Vec3) (x, y, key float64) {
	if !v.perspective {
		return v.centreX + v.scale*p[0], v.centreY - v.scale*p[1], 1 + (p[2]+v.near)*v.depthPerUnit
	}
	inv := -1 / p[2]
	return v.centreX + v.scale*p[0]*inv, v.centreY - v.scale*p[1]*inv, v.near * inv
}

// Project returns where a scene point lies in a picture of the given size:
// x to the right and y down in pixels, (0, 0) the picture's top left corner and
// pixel centres at halves; distance in front of the eye along the line of
// sight. ok says that the point is in front of Near and inside the picture; the
// coordinates are usable whenever distance >= Near. Whether something stands in
// front of it is a question for Renderer.Covers.
func (c Camera) Project(width, height int, point mgl64.Vec3) (x, y, distance float64, ok bool) {
	v := c.ready(width, height)
	p := v.m.Apply(point)
	distance = -p[2]
	if distance < v.near {
		return 0, 0, distance, false
	}
	x, y, _ = v.project(p)
	ok = x >= 0 && y >= 0 && x < float64(width) && y < float64(height)
	return x, y, distance, ok
}

// Ray is Project's inverse: the line of scene points seen at pixel position
// (x, y), as a start in the plane of the eye and a unit direction away from the
// viewer. Dragging a handle is the nearest approach of this line to its axis.
func (c Camera) Ray(width, height int, x, y float64) (from, direction mgl64.Vec3) {
	v := c.ready(width, height)
	px, py := (x-v.centreX)/v.scale, (v.centreY-y)/v.scale
	right := mgl64.Vec3{v.m[0], v.m[1], v.m[2]}
	up := mgl64.Vec3{v.m[4], v.m[5], v.m[6]}
	ahead := mgl64.Vec3{-v.m[8], -v.m[9], -v.m[10]}
	across := right.Mul(px).Add(up.Mul(py))
	if !v.perspective {
		return c.Eye.Add(across), ahead
	}
	return c.Eye, ahead.Add(across).Normalize()
}

// PixelsPerUnit tells how many pixels one scene unit across the line of sight
// is at the given point: for handles and steps that keep their size on screen.
func (c Camera) PixelsPerUnit(width, height int, point mgl64.Vec3) float64 {
	v := c.ready(width, height)
	if !v.perspective {
		return v.scale
	}
	return v.scale / math.Max(-v.m.Apply(point)[2], v.near)
}
