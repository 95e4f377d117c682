package scene

// This file draws arrows that say which way something went: straight or bent, over
// everything, with a few words at their head. They show the way; how far is in the
// words.

import (
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Carrier is what a pointer goes with.
type Carrier uint8

// What there is: nothing, the engine, the shaft half of the coupling.
const (
	Still Carrier = iota
	OnEngine
	OnHalf
)

// Pointer is an arrow through points of S as drawn, carried by a body; two points at
// least.
type Pointer struct {
	Points []mgl64.Vec3
	On     Carrier
	Plain  bool // dashed and without a head
	Text   string
}

// markPointers draws them.
func (m *Model) markPointers(s *State, c *ink, o *render.Overlay) {
	n := 0
	for i := range s.Pointers {
		n += len(s.Pointers[i].Points)
	}
	if cap(m.marks.pointers) < n {
		m.marks.pointers = make([]mgl64.Vec3, 0, n)
	}
	m.marks.pointers = m.marks.pointers[:0]
	for i := range s.Pointers {
		p := &s.Pointers[i]
		if len(p.Points) < 2 {
			continue
		}
		first := len(m.marks.pointers)
		for _, at := range p.Points {
			switch p.On {
			case OnEngine:
				at = m.posed.engine.Apply(at)
			case OnHalf:
				at = m.posed.half.Apply(at)
			}
			m.marks.pointers = append(m.marks.pointers, at)
		}
		m.point(p, m.marks.pointers[first:], s, c, o)
	}
}

// point draws one along its points as carried.
func (m *Model) point(p *Pointer, path []mgl64.Vec3, s *State, c *ink, o *render.Overlay) {
	last := len(path) - 1
	switch {
	case p.Plain:
		o.Lines = append(o.Lines, render.Line{Points: path, Width: 2, Dash: 8, Gap: 5, Colour: c.active})
	default:
		if last > 1 {
			o.Lines = append(o.Lines, render.Line{Points: path[:last], Width: 4, Colour: c.active})
		}
		o.Arrows = append(o.Arrows, render.Arrow{From: path[last-1], To: path[last], Width: 4, Head: 16, Colour: c.active})
	}
	if p.Text != "" {
		pivot, offset := [2]float32{0.5, 1}, [2]float32{0, -14}
		if path[last][2] < path[last-1][2]-0.5*path[last].Sub(path[last-1]).Len() { // it points down: they stand below it
			pivot, offset = [2]float32{0.5, 0}, [2]float32{0, 14}
		}
		o.Labels = append(o.Labels, render.Label{At: path[last], Text: p.Text, Font: s.Font, Pivot: pivot, Offset: offset,
			Colour: c.text, Plate: c.plate, Leader: c.active, Keep: true, Yield: true})
	}
}
