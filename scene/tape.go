package scene

// This file draws a tape laid between two points, to show where a number of the
// hull is measured: a line with a stroke across each end, and what it measures.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Tape is one laid between two points of S, as drawn.
type Tape struct {
	From, To mgl64.Vec3
	Sight    []mgl64.Vec3 // dashed, leading to From; nil: none
	Text     string
}

// ViewTape is the fitted view of the tape last drawn, with enough round it to see
// where one is.
const ViewTape = "tape"

// strokeAngle is half the stroke at an end of the tape, over the distance of the
// eye: some ten pixels of a usual picture.
const strokeAngle = 0.006

// markTape draws it over everything.
func (m *Model) markTape(s *State, c *ink, eye mgl64.Vec3, o *render.Overlay) {
	m.posed.tape = s.Tape
	if s.Tape == nil {
		return
	}
	t := *s.Tape
	way := t.To.Sub(t.From)
	if len(t.Sight) > 1 {
		o.Lines = append(o.Lines, render.Line{Points: t.Sight, Width: 1.6, Dash: 6, Gap: 5, Colour: c.active})
	}
	if way.Len() > 1e-6 {
		o.Arrows = append(o.Arrows, render.Arrow{From: t.From, To: t.To, Width: 2.5, Head: 11, BothEnds: true, Colour: c.active})
	}
	for i, p := range [...]mgl64.Vec3{t.From, t.To} {
		toEye := eye.Sub(p)
		across := way.Cross(toEye)
		if across.Len() < 1e-6*toEye.Len() { // seen end on, or without length
			o.Dots = append(o.Dots, render.Dot{At: p, Radius: 7, Ring: c.active, Width: 2.5})
			continue
		}
		half := across.Normalize().Mul(strokeAngle * toEye.Len())
		m.marks.strokes[i] = [2]mgl64.Vec3{p.Sub(half), p.Add(half)}
		o.Lines = append(o.Lines, render.Line{Points: m.marks.strokes[i][:], Width: 3, Colour: c.active})
	}
	if t.Text != "" {
		o.Labels = append(o.Labels, render.Label{At: t.From.Add(t.To).Mul(0.5), Text: t.Text, Font: s.Font, Pivot: [2]float32{0, 1}, Offset: [2]float32{16, -16},
			Colour: c.text, Plate: c.plate, Leader: c.active, Keep: true})
	}
}

// tapeFocus looks at the tape square on: from port where it lies along the boat or
// upright, from aft where it lies athwart.
func (m *Model) tapeFocus() ([]mgl64.Vec3, View) {
	t := m.posed.tape
	if t == nil {
		return m.whole(), View{YawRad: 62 * degree, PitchRad: 20 * degree}
	}
	way := t.To.Sub(t.From)
	middle := t.From.Add(t.To).Mul(0.5)
	// As much round it as the tape is long, and never less than a coupling.
	round := math.Max(0.5*way.Len(), 1.6*m.dims.faceRadius)
	points := append(append(box(middle, round), t.From, t.To), t.Sight...)
	v := View{YawRad: 72 * degree, PitchRad: 16 * degree}
	if middle.Y() < -1 { // on the starboard side
		v.YawRad = -v.YawRad
	}
	if math.Abs(way.Y()) > 0.7*way.Len() && way.Len() > 0 {
		v = View{YawRad: math.Copysign(28*degree, v.YawRad), PitchRad: 34 * degree}
	}
	return points, v
}
