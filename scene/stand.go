package scene

// This file is what a boat out of the water stands on: padded cross frames on
// posts.

import (
	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func standParts(d *dims) []piece {
	aft, fore := d.shellEnds()
	s := max(d.size, 0.7)
	ground := d.bottom.keel(fore) - 260*s
	if tip := (mgl64.Vec3{d.hull.Propeller.AtMM}).Dot(d.up) - 0.6*d.hull.Propeller.DiameterMM; tip < ground {
		ground = tip
	}
	at := []float64{fore - 0.12*(fore-aft), d.bottom.h0 - 0.3*(d.bottom.h0-aft)}
	if fore-aft > 4500 {
		at = append(at, (at[0]+at[1])/2)
	}
	w := shop{edge: 400}
	beam := d.bottom.halfBeam
	for _, h := range at {
		// Where the shaft is out of the boat the frame is cut open to port, as
		// the hull is, to leave the shaft in sight.
		port, sides := 0.78*beam, []float64{-1, 1}
		if h < d.bottom.h0 {
			port, sides = -0.1*beam, sides[:1]
		}
		w.put(rubberMix, d.saddle(h, 38*s, -0.78*beam, port, -5, -22*s))
		w.put(timber, d.saddle(h, 34*s, -0.78*beam, port, -22*s, -110*s))
		for _, side := range sides {
			y := side * 0.6 * beam
			top := d.bottom.at(h, y) - 100*s
			w.put(timber,
				d.world(w.block(vec(h-32*s, y-32*s, ground), vec(h+32*s, y+32*s, top), 2, 0, 0)),
				d.world(w.block(vec(h-70*s, y-70*s, ground-20), vec(h+70*s, y+70*s, ground), 2, 0, 3)))
		}
		if len(sides) > 1 {
			low := ground + 0.35*(d.bottom.keel(h)-110*s-ground)
			w.put(timber, d.world(w.block(vec(h-20*s, -0.6*beam, low-24*s), vec(h+20*s, 0.6*beam, low+24*s), 1, 0, 0)))
		}
	}
	out := w.pieces(piece{kind: StandKind, when: dryOnly}, render.Identity)
	return out
}

// saddle is a beam athwart under the bottom, between two heights under it.
func (d *dims) saddle(h, half, from, to, high, low float64) *solid.Solid {
	const n = 8
	grid := func(v float64) [][]mgl64.Vec3 {
		var g [][]mgl64.Vec3
		for i := range n + 1 {
			y := from + (to-from)*float64(i)/n
			var row []mgl64.Vec3
			for _, dh := range [...]float64{-half, 0, half} {
				row = append(row, d.toS(h+dh, y, d.bottom.at(h+dh, y)+v))
			}
			g = append(g, row)
		}
		return g
	}
	return solid.Sheet(grid(high), grid(low))
}

// world takes a solid built in h, y, v to S.
func (d *dims) world(s *solid.Solid) *solid.Solid {
	return s.Bent(func(p mgl64.Vec3) mgl64.Vec3 { return d.toS(p[0], p[1], p[2]) })
}
