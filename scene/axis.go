package scene

// This file draws the line something turns about: dashes and dots, over everything,
// with its name.

import (
	"github.com/go-gl/mathgl/mgl64"

	"aligner/scene/render"
)

// Axis is a line something turns about, in S.
type Axis struct {
	At, Along mgl64.Vec3 // Along has length 1
	HalfMM    float64    // how far it is drawn to either side
	Text      string
}

// markAxis draws it.
func (m *Model) markAxis(s *State, c *ink, o *render.Overlay) {
	if s.Axis == nil {
		return
	}
	a := s.Axis
	m.marks.axis = [2]mgl64.Vec3{a.At.Sub(a.Along.Mul(a.HalfMM)), a.At.Add(a.Along.Mul(a.HalfMM))}
	o.Lines = append(o.Lines, render.Line{Points: m.marks.axis[:], Width: 2.5, Dash: 14, Gap: 5, Colour: c.active})
	if a.Text != "" {
		o.Labels = append(o.Labels, render.Label{At: m.marks.axis[1], Text: a.Text, Font: s.Font, Pivot: [2]float32{0.5, 1}, Offset: [2]float32{0, -8},
			Colour: c.text, Plate: c.plate, Leader: c.active, Keep: true})
	}
}
