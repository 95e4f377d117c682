package scene

// This file holds the handles: what a mount is taken by.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Way is the direction a handle moves in.
type Way uint8

// Vertical turns the nut (or shims), Sideways slides the base.
const (
	Vertical Way = iota
	Sideways
)

// HandleID names a handle; the zero value names none.
type HandleID int

// HandleOf is the id of a mount's handle.
func HandleOf(mount int, way Way) HandleID { return HandleID(2*mount + int(way) + 1) }

// Mount is the mount a handle moves.
func (id HandleID) Mount() int { return (int(id) - 1) / 2 }

// Handle is what takes hold of the thing pointed at: a nut's or a mount's; 0 for
// anything else.
func (p Pointed) Handle() HandleID {
	if p.Kind == NutKind || p.Kind == MountKind {
		return HandleOf(p.Index, Vertical)
	}
	return 0
}

// Way is the direction it moves in.
func (id HandleID) Way() Way { return Way((int(id) - 1) % 2) }

// Handle is one as drawn by the last Pose.
type Handle struct {
	ID HandleID
	// At is where it is drawn, in S; Along is the unit direction in which the
	// hand raises (Vertical) or moves to port (Sideways).
	At, Along mgl64.Vec3
	// Half is half its length along Along.
	Half float64
}

// A handle is as long as a mount is high, but never under an angle that makes
// some two dozen pixels of a usual picture, nor more than a few mounts.
const (
	leastHandleAngle = 0.0125 // half its length over the distance of the eye
	mostHandle       = 2.6    // over its usual length
)

// placeHandles puts each mount's two handles where they are drawn.
func (m *Model) placeHandles(v *Movement, n float64, eye mgl64.Vec3) {
	d := m.dims
	m.posed.handles = m.posed.handles[:0]
	for i := range m.hull.Mounts {
		t := &d.mounts[i]
		up, port := d.alongStud(), mgl64.Vec3{0, 1, 0}
		top, side := m.posed.engine.Apply(t.gripS), t.sideGripS.Add(port.Mul(n*v.SlideMM[i]))
		half := min(max(t.gripHalf, leastHandleAngle*eye.Sub(top).Len()), mostHandle*t.gripHalf)
		m.posed.handles = append(m.posed.handles,
			Handle{HandleOf(i, Vertical), top.Add(up.Mul(half)), up, half},
			Handle{HandleOf(i, Sideways), side.Add(port.Mul(t.outward * half)), port, half})
	}
}

// Handles are all of them as last posed. The list is used again.
func (m *Model) Handles() []Handle { return m.posed.handles }

// pickReachPx is how near a handle's line on screen the pointer must be: a
// finger's width.
const pickReachPx = 20.0

// PickHandle finds the handle nearest to a pixel, within a finger's width.
func (m *Model) PickHandle(camera render.Camera, width, height int, x, y float64) (Handle, bool) {
	var found Handle
	best := pickReachPx
	nearest := math.Inf(1)
	for _, h := range m.posed.handles {
		ax, ay, da, _ := camera.Project(width, height, h.At.Sub(h.Along.Mul(h.Half)))
		bx, by, db, _ := camera.Project(width, height, h.At.Add(h.Along.Mul(h.Half)))
		if da < camera.Near || db < camera.Near {
			continue
		}
		off := toSegment(x, y, ax, ay, bx, by)
		// Of two on one line of sight, the nearer.
		if off < best-0.5 || off < best+0.5 && da < nearest {
			found, best, nearest = h, off, da
		}
	}
	return found, found.ID != 0
}

// toSegment is the distance of a point from a piece of a line.
func toSegment(x, y, ax, ay, bx, by float64) float64 {
	dx, dy := bx-ax, by-ay
	t := 0.0
	if l := dx*dx + dy*dy; l > 0 {
		t = min(max(((x-ax)*dx+(y-ay)*dy)/l, 0), 1)
	}
	return math.Hypot(x-ax-t*dx, y-ay-t*dy)
}
