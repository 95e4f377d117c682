package scene

// This file is a bearing: lining and barrel, opened to port, whose bore widens
// with the exaggeration; outside the boat a strut carries it from above, inside
// a pillar from below.

import (
	"math"

	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// Radii over the shaft's.
const (
	liningOver = 1.3
	barrelOver = 1.72
)

func bearingParts(d *dims, i int) []piece {
	b := &d.hull.Bearings[i]
	r := d.hull.Shaft.DiameterMM / 2
	a, e := b.AtMM-b.LengthMM/2, b.AtMM+b.LengthMM/2
	like := piece{kind: BearingKind, index: i, body: boreBody}
	w := shop{edge: 40}
	c := 0.12 * r
	w.put(bearingMix, solid.Cutaway([]solid.Turned{{X: a, R: r}, {X: e, R: r}, {X: e, R: liningOver * r}, {X: a, R: liningOver * r}}, windowFrom, windowTo, 20, max(40, b.LengthMM/3)))
	w.put(bronze, solid.Cutaway([]solid.Turned{{X: a + 1, R: liningOver * r}, {X: e - 1, R: liningOver * r}, {X: e - 1, R: barrelOver*r - c},
		{X: e - 1 - c, R: barrelOver * r}, {X: a + 1 + c, R: barrelOver * r}, {X: a + 1, R: barrelOver*r - c}}, windowFrom, windowTo, 20, max(40, b.LengthMM/3)))
	out := w.pieces(like, render.Identity)
	return append(out, carrierParts(d, i)...)
}

// inLog reports whether a bearing sits in the log and needs no carrier.
func (d *dims) inLog(i int) bool {
	b, g := &d.hull.Bearings[i], &d.hull.Log
	return math.Abs(b.AtMM-g.AtMM) < g.LengthMM/2
}

// carrierParts are the strut's leg with its palm, or the pillar.
func carrierParts(d *dims, i int) []piece {
	b := &d.hull.Bearings[i]
	r := d.hull.Shaft.DiameterMM / 2
	top := d.legTop(i)
	sign := math.Copysign(1, top)
	if d.inLog(i) || math.Abs(top) < 2.1*r {
		return nil
	}
	w, palm := shop{edge: 28}, shop{edge: 28}
	half := 0.42 * b.LengthMM
	thick := max(0.34*r, 5)
	rake := 0.0
	if sign > 0 {
		rake = 0.12 * b.LengthMM // struts stand a little raked
	}
	level := d.bottomNormal(mgl64.Vec3{b.AtMM + rake, 0, top})
	lie := -level[0] / level[2]
	n := max(3, int(math.Abs(top)/70))
	rings := make([][]mgl64.Vec3, n+1)
	for k := range rings {
		t := float64(k) / float64(n)
		z := sign*1.5*r + t*(top-sign*0.15*r-sign*1.5*r)
		chord := half * (1 - 0.18*t)
		if sign < 0 {
			chord = half * (0.8 + 0.5*t)
		}
		rings[k] = foil(chord, thick*(1+0.3*t)).Ring(vec(b.AtMM+rake*t, 0, z), solid.AxisX, solid.AxisY)
		for j := range rings[k] { // ending level with the palm
			rings[k][j][2] += t * lie * (rings[k][j][0] - b.AtMM - rake)
		}
	}
	paint := bronze
	if sign < 0 {
		paint = darkSteel
	}
	w.put(paint, solid.Skin(rings, solid.Capped, 40))
	// The palm against the hull, level with it.
	foot := mgl64.Vec3{b.AtMM + rake, 0, top}
	long, wide := 1.25*half, max(2.4*r, 34)
	up := d.bottomNormal(foot)
	ahead := up.Cross(mgl64.Vec3{0, -1, 0}).Normalize()
	if ahead[0] < 0 {
		ahead = ahead.Mul(-1)
	}
	o := solid.Oblong(2*long, 2*wide, 0.8*wide, 28)
	at := func(z, in float64) []mgl64.Vec3 {
		return o.Inset(in).Ring(foot.Add(up.Mul(-sign*z)), ahead, mgl64.Vec3{0, 1, 0})
	}
	palm.put(paint, solid.Skin([][]mgl64.Vec3{at(0, 0), at(0.2*r, 0), at(0.3*r, 0.12*r)}, solid.Capped, 28))
	for _, x := range [...]float64{-0.62, 0.62} {
		for _, y := range [...]float64{-0.5, 0.5} {
			p := foot.Add(ahead.Mul(x * long)).Add(mgl64.Vec3{0, y * wide, 0}).Add(up.Mul(-sign * 0.28 * r))
			palm.put(stainless, palm.bolt(p, p.Sub(up.Mul(sign)), 0.45*r))
		}
	}
	like := piece{kind: BearingKind, index: i, body: legBody}
	out := w.pieces(like, render.Identity)
	like.body = fixed
	return append(out, palm.pieces(like, render.Identity)...)
}

// foil is a long oval, sharper aft, about the middle of its length.
func foil(half, thick float64) solid.Outline {
	const n = 9
	var o solid.Outline
	shape := func(t float64) float64 { // 0 fore to 1 aft
		return math.Sqrt(t) * (1 - t) * 1.9 * thick
	}
	for k := range n {
		t := 0.485 * (1 - math.Cos(math.Pi*float64(k)/n))
		o = append(o, mgl64.Vec2{half * (1 - 2*t), shape(t)})
	}
	for k := range n {
		t := 0.485 * (1 + math.Cos(math.Pi*float64(k)/n))
		o = append(o, mgl64.Vec2{half * (1 - 2*t), -shape(t)})
	}
	return o
}

// bottomNormal points up from the hull's bottom amidships near p.
func (d *dims) bottomNormal(p mgl64.Vec3) mgl64.Vec3 {
	h := p.Dot(d.ahead)
	slope := (d.bottom.keel(h+1) - d.bottom.keel(h-1)) / 2
	return d.up.Sub(d.ahead.Mul(slope)).Normalize()
}

// legTop is how far over the shaft line the hull's bottom is at a bearing.
func (d *dims) legTop(i int) float64 { return d.bottomOver(d.hull.Bearings[i].AtMM) }

// legMap pushes a leg back by its opened bore: fixed at the hull, moved with the
// barrel's rim at the other end.
func (d *dims) legMap(i int, n float64) render.Affine {
	b := &d.hull.Bearings[i]
	r := d.hull.Shaft.DiameterMM / 2
	top := d.legTop(i)
	sign := math.Copysign(1, top)
	low := sign * 1.5 * r
	shift := mgl64.Vec3{0, n * b.OffsetMM[0], n * (b.OffsetMM[1] + sign*b.DiametralClearanceMM/2)}
	// u(z) = shift (top - z) / (top - low)
	a := render.Identity
	for k := range 3 {
		a[4*k+2] -= shift[k] / (top - low)
		a[4*k+3] += shift[k] * top / (top - low)
	}
	return a
}
