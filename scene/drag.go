package scene

// This file turns a drag over the picture into a lift or a slide, and back.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Point is a place of the picture, in pixels: x right, y down.
type Point struct{ X, Y float64 }

// leastSine is the sine of the smallest angle between line of sight and a
// handle's direction at which the hand can follow it. Under it the handle moves
// as if it were this much aslant, up the picture (or to its right) being plus.
const leastSine = 0.17

// DragToMM is the lift (or slide) of a drag that began at from and is now at
// to: what is drawn goes with the hand, so the travel along the handle's
// direction over the exaggeration. h is the handle as it was at from.
func DragToMM(h Handle, from, to Point, camera render.Camera, width, height int, exaggeration float64) float64 {
	if !h.aslant(camera) {
		scale := camera.PixelsPerUnit(width, height, h.At) * leastSine
		along := from.Y - to.Y
		if h.ID.Way() == Sideways {
			along = to.X - from.X
		}
		return along / scale / exaggeration
	}
	return (h.nearest(camera, width, height, to) - h.nearest(camera, width, height, from)) / exaggeration
}

// MMToDrag is the inverse: how far the hand goes over the picture from the
// handle's middle.
func MMToDrag(h Handle, mm float64, camera render.Camera, width, height int, exaggeration float64) Point {
	if !h.aslant(camera) {
		scale := camera.PixelsPerUnit(width, height, h.At) * leastSine * exaggeration
		if h.ID.Way() == Sideways {
			return Point{mm * scale, 0}
		}
		return Point{0, -mm * scale}
	}
	ax, ay, _, _ := camera.Project(width, height, h.At)
	bx, by, _, _ := camera.Project(width, height, h.At.Add(h.Along.Mul(mm*exaggeration)))
	return Point{bx - ax, by - ay}
}

// aslant reports whether the handle's direction shows in the picture.
func (h Handle) aslant(camera render.Camera) bool {
	sight := h.At.Sub(camera.Eye)
	if camera.Height > 0 {
		sight = camera.Target.Sub(camera.Eye)
	}
	return sight.Normalize().Cross(h.Along).Len() >= leastSine
}

// nearest is where along the handle's line, from its middle, the line of sight
// through a pixel passes nearest.
func (h Handle) nearest(camera render.Camera, width, height int, p Point) float64 {
	from, sight := camera.Ray(width, height, p.X, p.Y)
	c := sight.Dot(h.Along)
	between := h.At.Sub(from)
	s := (c*between.Dot(sight) - between.Dot(h.Along)) / math.Max(1-c*c, leastSine*leastSine)
	// A ray nearly along the line would run away to infinity.
	reach := 4 * between.Len()
	return math.Min(math.Max(s, -reach), reach)
}

// Snapped is a lift or slide at the nearest whole step: a flat of the nut, a
// shim, or slideStepMM.
func (m *Model) Snapped(id HandleID, mm float64) float64 {
	step := slideStepMM
	if id.Way() == Vertical {
		step = m.hull.Mounts[id.Mount()].LiftPerStepMM()
	}
	if !(step > 0) {
		return mm
	}
	return math.Round(mm/step) * step
}

// slideStepMM is what a slide snaps to: as finely as one can lever.
const slideStepMM = 0.25

// DragArrow is where the arrow at a handle in the hand begins and ends.
func (h Handle) DragArrow() (from, to mgl64.Vec3) {
	return h.At.Sub(h.Along.Mul(h.Half)), h.At.Add(h.Along.Mul(h.Half))
}
