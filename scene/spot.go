package scene

// This file marks a spot on the shaft's surface just behind the coupling, which goes
// round with it.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"

	"aligner/scene/render"
)

// Spot is a mark on the shaft that has been turned so far, clockwise looking forward
// from 12 o'clock.
type Spot struct {
	TurnDeg float64
	Text    string
}

// behindCouplingMM is how far behind the coupling half the spot is.
const behindCouplingMM = 30

// spotRadiusPX is its size in the picture.
const spotRadiusPX = 6

// markSpot draws it where the shaft carries it: a crooked half is drawn crooked on a
// straight shaft.
func (m *Model) markSpot(s *State, c *ink, o *render.Overlay) {
	if s.Spot == nil {
		return
	}
	sin, cos := math.Sincos(s.Spot.TurnDeg * math.Pi / 180)
	r := m.hull.Shaft.DiameterMM/2 + 1
	x := -m.hull.Coupling.ShaftHalfLengthMM - behindCouplingMM
	at := m.onShaft(m.posed.now, x, m.posed.n).Apply(mgl64.Vec3{x, -r * sin, r * cos})
	o.Dots = append(o.Dots, render.Dot{At: at, Radius: spotRadiusPX, Ring: c.active, Width: 4, Behind: render.FaintBehind})
	if s.Spot.Text != "" {
		o.Labels = append(o.Labels, render.Label{At: at, Text: s.Spot.Text, Font: s.Font, Pivot: [2]float32{0, 1}, Offset: [2]float32{14, -30},
			Colour: c.text, Plate: c.plate, Leader: c.active, Keep: true})
	}
}
