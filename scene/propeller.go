package scene

// This file is the propeller: hub, blades of a true screw, nut.

import (
	"math"

	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// pitchOver is the pitch drawn, over the diameter: a usual proportion.
const pitchOver = 0.75

func propellerParts(d *dims) []piece {
	p := &d.hull.Propeller
	radius := p.DiameterMM / 2
	s := d.hull.Shaft.DiameterMM / 2
	hub := max(0.19*radius, 1.35*s)
	half := 0.9 * hub
	w := shop{edge: 28}
	w.put(bronze, w.turned(vec(p.AtMM-half, 0, 0), vec(p.AtMM, 0, 0), 24,
		solid.Turned{X: 0, R: 0.5 * hub}, solid.Turned{X: 0, R: 0.74 * hub}, solid.Turned{X: 0.5 * half, R: 0.88 * hub}, solid.Turned{X: 1.2 * half, R: hub}, solid.Turned{X: 1.9 * half, R: hub}, solid.Turned{X: 2 * half, R: 0.96 * hub}, solid.Turned{X: 2 * half, R: 0.5 * hub}))
	blades := 3
	if p.DiameterMM > 600 {
		blades = 4
	}
	for k := range blades {
		turn := aboutX(2 * math.Pi * float64(k) / float64(blades))
		w.put(bronze, blade(p.AtMM, 0.8*hub, radius, float64(blades)).Placed(turn))
	}
	out := w.pieces(piece{kind: PropellerKind, body: propellerBody}, render.Identity)
	nut := shop{edge: 28}
	end := p.AtMM - half
	o := solid.Hexagon(2.9*s, 2)
	ring := func(x, in float64) []mgl64.Vec3 {
		return o.Inset(in).Ring(vec(x, 0, 0), solid.AxisY, solid.AxisZ)
	}
	nut.put(platedNut, solid.Skin([][]mgl64.Vec3{ring(end, 0), ring(end-0.9*s, 0), ring(end-1.05*s, 0.2*s)}, solid.Capped, 28))
	return append(out, nut.pieces(piece{kind: PropellerKind, body: propellerBody}, render.Identity)...)
}

// blade stands upward from the hub: sections on cylinders, each turned to the
// pitch.
func blade(x, inner, outer, blades float64) *solid.Solid {
	const rows = 10
	var rings [][]mgl64.Vec3
	for k := range rows {
		t := float64(k) / (rows - 1)
		r := inner + (outer-inner)*(t*0.995)
		chord := outer * (0.34 + 0.42*math.Sin(math.Pi*math.Pow(t, 0.8)*0.86)) * 3 / blades
		if t > 0.72 {
			chord *= math.Sqrt(max(1-math.Pow((t-0.72)/0.285, 2), 0.03))
		}
		thick := outer * (0.05 - 0.038*t)
		pitch := math.Atan(pitchOver * 2 * outer / (2 * math.Pi * r))
		skew := 0.16 * outer * t * t
		rake := -0.1 * outer * t
		const n = 9
		var ring []mgl64.Vec3
		add := func(c, h float64) {
			c += skew
			// Along the pitch line: forward by sin, round by cos.
			ax := c*math.Sin(pitch) - h*math.Cos(pitch) + rake
			round := c*math.Cos(pitch) + h*math.Sin(pitch)
			sin, cos := math.Sincos(round / r)
			ring = append(ring, vec(x+ax, r*sin, r*cos))
		}
		for j := range n {
			u := -1 + 2*float64(j)/n
			add(u*chord/2, thick*math.Sqrt(max(1-u*u, 0))*0.9)
		}
		for j := range n {
			u := 1 - 2*float64(j)/n
			add(u*chord/2, -thick*math.Sqrt(max(1-u*u, 0))*0.35)
		}
		rings = append(rings, ring)
	}
	return solid.Skin(rings, solid.Capped, max(40, outer/5))
}
