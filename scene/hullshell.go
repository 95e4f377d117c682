package scene

// This file is the cut-away hull as a thin translucent shell, open to port, and
// the water round it.

import (
	"math"

	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// shellEnds are the h between which the hull is drawn.
func (d *dims) shellEnds() (aft, fore float64) {
	end := mgl64.Vec3{min(d.hull.Propeller.AtMM, -d.hull.Shaft.LengthMM) - 0.25*d.hull.Propeller.DiameterMM}
	return end.Dot(d.ahead), d.fromE.Apply(mgl64.Vec3{d.foreEnd() + 130}).Dot(d.ahead)
}

// portEdge is where the hull is cut off to port: just outside the bed.
func (d *dims) portEdge() float64 { return d.bedHalfWidth() + 70*math.Max(d.size, 0.7) }

// sideHeight is how far the starboard side stands over the bottom's edge.
func (d *dims) sideHeight() float64 { return 230 * math.Max(d.size, 0.7) }

// across are the y and extra height over the section of points from port to
// starboard: a low edge to port, a side to starboard.
func (d *dims) across() [][2]float64 {
	b := d.bottom.halfBeam
	out := [][2]float64{}
	const n = 10
	port := d.portEdge()
	for i := range n + 1 {
		out = append(out, [2]float64{port - (port+b)*float64(i)/n, 0})
	}
	const m = 2
	for i := 1; i <= m; i++ {
		t := float64(i) / m
		out = append(out, [2]float64{-b - 60*math.Sqrt(t), d.sideHeight() * t})
	}
	return out
}

// sectionPoint is y and v of a point of the section at h.
func (d *dims) sectionPoint(h float64, p [2]float64) mgl64.Vec2 {
	y := min(max(p[0], -d.bottom.halfBeam), d.bottom.halfBeam)
	return mgl64.Vec2{p[0], d.bottom.at(h, y) + p[1]}
}

func hullParts(d *dims) []piece {
	aft, fore := d.shellEnds()
	across := d.across()
	rows := max(14, int((fore-aft)/300))
	grid := func(in float64) [][]mgl64.Vec3 {
		g := make([][]mgl64.Vec3, rows+1)
		for i := range g {
			h := aft + (fore-aft)*float64(i)/float64(rows)
			for k := range across {
				p := d.sectionPoint(h, across[k])
				n := d.sectionPoint(h, across[min(k+1, len(across)-1)]).Sub(d.sectionPoint(h, across[max(k-1, 0)])).Normalize()
				// The section runs from port to starboard: inside is to its left.
				g[i] = append(g[i], d.toS(h, p[0]+in*n[1], p[1]-in*n[0]))
			}
		}
		return g
	}
	s := solid.Sheet(grid(0), grid(14))
	return append([]piece{{kind: HullKind, paint: shell, when: hullShell, solid: s}}, waterParts(d)...)
}

// waterLevel is v of the water's surface.
func (d *dims) waterLevel() float64 {
	prop := mgl64.Vec3{d.hull.Propeller.AtMM}
	return max(d.bottom.at(d.bottom.h0, d.bottom.halfBeam)+0.45*d.sideHeight(), prop.Dot(d.up)+0.6*d.hull.Propeller.DiameterMM)
}

// waterParts is the surface outside the hull: to starboard and astern. The side
// opened to port stays dry, or it would seem flooded.
func waterParts(d *dims) []piece {
	aft, fore := d.shellEnds()
	b, v := d.bottom.halfBeam, d.waterLevel()
	far := 300 * math.Max(d.size, 0.7)
	slab := func(h0, h1, y0, y1 float64) *solid.Solid {
		grid := func(v float64) [][]mgl64.Vec3 {
			var g [][]mgl64.Vec3
			n, m := max(1, int((h1-h0)/300)), max(1, int((y1-y0)/300))
			for i := range n + 1 {
				h := h0 + (h1-h0)*float64(i)/float64(n)
				var row []mgl64.Vec3
				for j := range m + 1 {
					row = append(row, d.toS(h, y0+(y1-y0)*float64(j)/float64(m), v))
				}
				g = append(g, row)
			}
			return g
		}
		return solid.Sheet(grid(v-8), grid(v))
	}
	return []piece{{kind: WaterKind, paint: water, when: wetOnly, solid: solid.Join(
		slab(aft, fore, -b-70-far, -b-68),
		slab(aft-far, aft, -b-70-far, d.portEdge()))}}
}
