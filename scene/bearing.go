package scene

// This file is a bearing: lining and barrel, whose bore opens with the
// exaggeration, and the strut's leg or the block that carries it.

import (
	"math"

	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func bearingParts(d *dims, i int) []piece {
	b := &d.hull.Bearings[i]
	r := d.hull.Shaft.DiameterMM / 2
	a, e := b.AtMM-b.LengthMM/2, b.AtMM+b.LengthMM/2
	ring := func(in, out, from, to float64) *solid.Solid {
		return solid.Cutaway([]solid.Turned{{X: from, R: in}, {X: to, R: in}, {X: to, R: out}, {X: from, R: out}}, -0.35*math.Pi, 1.25*math.Pi, 28, 25)
	}
	out := []piece{
		{kind: BearingKind, index: i, body: boreBody, paint: bearingMix, solid: ring(r, 1.35*r, a, e)},
		{kind: BearingKind, index: i, body: boreBody, paint: bronze, solid: ring(1.35*r, 1.7*r, a-2, e+2)},
	}
	if top := d.legTop(i); top > 1.7*r+5 {
		leg := solid.Block{Low: vec(b.AtMM-0.3*b.LengthMM, -0.35*r, 1.6*r), High: vec(b.AtMM+0.3*b.LengthMM, 0.35*r, top), Axis: 2, Round: 0.3 * r}.Solid()
		out = append(out, piece{kind: BearingKind, index: i, body: legBody, paint: bronze, solid: leg})
	}
	return out
}

// legTop is how far over the shaft line the hull's bottom is at a bearing.
func (d *dims) legTop(i int) float64 { return d.bottomOver(d.hull.Bearings[i].AtMM) }

// legMap pushes a leg back by its opened bore: fixed at the hull, moved with the
// barrel's rim at the other end.
func (d *dims) legMap(i int, n float64) render.Affine {
	b := &d.hull.Bearings[i]
	r := d.hull.Shaft.DiameterMM / 2
	top, low := d.legTop(i), 1.6*r
	shift := mgl64.Vec3{0, n * b.OffsetMM[0], n * (b.OffsetMM[1] + b.DiametralClearanceMM/2)}
	// u(z) = shift (top - z) / (top - low)
	a := render.Identity
	for k := range 3 {
		a[4*k+2] -= shift[k] / (top - low)
		a[4*k+3] += shift[k] * top / (top - low)
	}
	return a
}
