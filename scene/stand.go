package scene

// This file is what a boat out of the water stands on: padded bunks on posts.

import (
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func standParts(d *dims) []piece {
	aft, fore := d.shellEnds()
	s := max(d.size, 0.7)
	h0, h1 := aft+0.2*(fore-aft), fore-60
	ground := d.bottom.keel(fore) - 330*s
	if tip := (mgl64.Vec3{d.hull.Propeller.AtMM}).Dot(d.up) - 0.6*d.hull.Propeller.DiameterMM; tip < ground {
		ground = tip
	}
	w := shop{edge: 60}
	var pads, posts []*solid.Solid
	for _, side := range [...]float64{-1, 1} {
		y := side * 0.62 * d.bottom.halfBeam
		pads = append(pads, d.bunk(h0, h1, y, 45*s, 0, -28*s))
		posts = append(posts, d.bunk(h0, h1, y, 40*s, -28*s, -120*s))
		n := max(2, int((h1-h0)/900)+1)
		for i := range n {
			h := h0 + 60 + (h1-h0-120)*float64(i)/float64(n-1)
			top := d.bottom.at(h, y) - 120*s
			post := w.block(vec(h-35*s, y-35*s, ground), vec(h+35*s, y+35*s, top+10), 2, 4, 2)
			foot := w.block(vec(h-90*s, y-90*s, ground-24), vec(h+90*s, y+90*s, ground), 2, 4, 3)
			posts = append(posts, d.world(post), d.world(foot))
		}
	}
	return []piece{
		{kind: StandKind, paint: rubberMix, when: dryOnly, solid: solid.Join(pads...)},
		{kind: StandKind, paint: timber, when: dryOnly, solid: solid.Join(posts...)},
	}
}

// bunk is a beam along the bottom, between two heights under it.
func (d *dims) bunk(h0, h1, y, half, high, low float64) *solid.Solid {
	n := max(6, int((h1-h0)/70))
	grid := func(v float64) [][]mgl64.Vec3 {
		var g [][]mgl64.Vec3
		for i := range n + 1 {
			h := h0 + (h1-h0)*float64(i)/float64(n)
			var row []mgl64.Vec3
			for _, dy := range [...]float64{-half, 0, half} {
				row = append(row, d.toS(h, y+dy, d.bottom.at(h, y+dy*0.999)+v))
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
