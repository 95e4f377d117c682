package scene

// This file draws what the hand is to do at the mounts: an arrow round each
// adjusting nut the way the hand turns it, a straight one for a slide or a pack
// of shims.
//
// The adjusting nut sits under the foot on a stud that stands fast, and its
// thread is right-handed: it climbs when it is turned anticlockwise as seen from
// above, the way turnAbout turns it. So raising is anticlockwise from above in
// every layout, on both sides of the boat.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Turn is what is to be done at one mount. Of Steps and SlideMM one may be nought.
type Turn struct {
	Mount   int
	Steps   float64 // flats of the adjusting nut, or shims of a solid foot; + raises
	SlideMM float64 // + to port
	Text    string  // says it, in place of the mount's name
	Next    bool    // to be done now: drawn stronger
}

// An arrow round a nut stands so far off its stud, in stud diameters, but under
// no less an angle than leastTurnAngle at the eye, nor more than mostTurn times
// its usual size. It shows the way, not how far: less than leastSweep would hide
// under its head, more than mostSweep would meet its own tail, and between them
// it grows a little with each flat; the text counts.
const (
	turnRadius     = 2.0
	leastTurnAngle = 0.016
	mostTurn       = 4.0
	leastSweepRad  = 2.6
	sweepPerFlat   = 0.35
	mostSweepRad   = 5.0
	turnPieces     = 24
)

// turnOf is what is to be done at a mount; nil: nothing.
func (s *State) turnOf(mount int) *Turn {
	for i := range s.Turns {
		if s.Turns[i].Mount == mount {
			return &s.Turns[i]
		}
	}
	return nil
}

// markTurns draws the arrows of all turns.
func (m *Model) markTurns(s *State, eye mgl64.Vec3, c *ink, o *render.Overlay) {
	if n := len(s.Turns) * (turnPieces + 1); cap(m.marks.turns) < n {
		m.marks.turns = make([]mgl64.Vec3, 0, n)
	}
	m.marks.turns = m.marks.turns[:0]
	for i := range s.Turns {
		t := &s.Turns[i]
		if t.Mount < 0 || t.Mount >= len(m.hull.Mounts) {
			continue
		}
		look := render.Arrow{Width: 3, Head: 15, Colour: c.active, Behind: render.ShowBehind}
		if t.Next {
			look.Width, look.Head = 6, 22
		}
		at := m.posed.engine.Apply(m.dims.fromE.Apply(m.nutAt(t.Mount)))
		size := m.turnSize(t.Mount, eye.Sub(at).Len())
		switch {
		case t.Steps != 0 && m.dims.mounts[t.Mount].solid:
			up := m.dims.alongStud().Mul(math.Copysign(size, t.Steps))
			look.From, look.To = at.Sub(up), at.Add(up)
			o.Arrows = append(o.Arrows, look)
		case t.Steps != 0:
			m.turnRound(at, size, t.Steps, eye, look, o)
		}
		if t.SlideMM != 0 {
			m.slideAlong(t, size, look, o)
		}
	}
}

// nutAt is the middle of a mount's adjusting nut, in E.
func (m *Model) nutAt(mount int) mgl64.Vec3 {
	t, p := &m.dims.mounts[mount], m.hull.Mounts[mount].AtMM
	return mgl64.Vec3{p[0], p[1], t.nutTop - t.nut/2}
}

// turnSize is the radius of the arrow round a nut seen from so far.
func (m *Model) turnSize(mount int, far float64) float64 {
	usual := turnRadius * m.dims.mounts[mount].stud
	return min(max(usual, leastTurnAngle*far), mostTurn*usual)
}

// turnRound draws an arrow round the stud, its middle towards the eye.
func (m *Model) turnRound(at mgl64.Vec3, radius, flats float64, eye mgl64.Vec3, look render.Arrow, o *render.Overlay) {
	axis := m.dims.alongStud()
	near := eye.Sub(at)
	near = near.Sub(axis.Mul(near.Dot(axis)))
	if near.Len() < 1e-9 { // from straight above: begin abaft
		near = mgl64.Vec3{-1, 0, 0}.Sub(axis.Mul(-axis[0]))
	}
	near = near.Normalize()
	left := axis.Cross(near) // a quarter turn anticlockwise seen from above
	sweep := math.Copysign(min(leastSweepRad+sweepPerFlat*max(math.Abs(flats)-1, 0), mostSweepRad), flats)
	first := len(m.marks.turns)
	for k := range turnPieces + 1 {
		sin, cos := math.Sincos(sweep * (float64(k)/turnPieces - 0.5))
		m.marks.turns = append(m.marks.turns, at.Add(near.Mul(radius*cos)).Add(left.Mul(radius*sin)))
	}
	arc := m.marks.turns[first:]
	// The line ends inside the head, so that its tip is sharp; the head is given
	// room to be drawn whole.
	o.Lines = append(o.Lines, render.Line{Points: arc[:turnPieces-1], Width: look.Width, Colour: look.Colour, Behind: look.Behind})
	look.To = arc[turnPieces]
	look.From = look.To.Sub(look.To.Sub(arc[turnPieces-4]).Normalize().Mul(0.8 * radius))
	o.Arrows = append(o.Arrows, look)
}

// slideAlong draws a straight arrow athwart at a mount's base.
func (m *Model) slideAlong(t *Turn, size float64, look render.Arrow, o *render.Overlay) {
	d, p := &m.dims.mounts[t.Mount], m.hull.Mounts[t.Mount].AtMM
	at := m.dims.fromE.Apply(mgl64.Vec3{p[0] - 0.5*d.baseLong, p[1], d.baseTop + d.stud})
	way := mgl64.Vec3{0, math.Copysign(1.5*size, t.SlideMM), 0}
	look.From, look.To = at.Sub(way), at.Add(way)
	o.Arrows = append(o.Arrows, look)
}
