package scene

// This file is the gearbox by layout. In-line and down-angle boxes narrow from
// the flywheel housing to the output's bearing; the down-angle box's nose
// points along the shaft while its case lies with the engine. A V-drive has its
// case before the flywheel: from it the output runs back under the engine.

import (
	"math"

	"aligner/hulls"
	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func gearboxParts(d *dims) []piece {
	like := piece{kind: GearboxKind, body: engineBody}
	nose := shop{edge: 50}
	e := shop{edge: 52 * max(1, d.size)}
	if d.hull.Layout == hulls.VDrive {
		vCase(d, &e)
		outputNose(d, &nose, 105*d.size)
	} else {
		straightCase(d, &e)
		reach := 80 * d.size
		if d.hull.Layout == hulls.DownAngle || d.hull.Engine.DownAngleDeg != 0 {
			reach = 150 * d.size
		}
		outputNose(d, &nose, reach)
	}
	return append(nose.pieces(like, render.Identity), e.pieces(like, d.fromE)...)
}

// outputNose is the bearing carrier round the output shaft, along the shaft.
func outputNose(d *dims, w *shop, reach float64) {
	r, x := 1.02*hubRadius(d), 2.1*d.flangeThick
	big := max(66*d.size, 1.35*r)
	k := noseScale(d)
	w.put(gearCast, w.turned(vec(x, 0, 0), vec(x+1, 0, 0), 40,
		solid.Turned{X: 0, R: 1.05 * r}, solid.Turned{X: 0, R: 0.8 * big}, solid.Turned{X: 5 * k, R: 0.86 * big}, solid.Turned{X: 16 * k, R: 0.9 * big},
		solid.Turned{X: 18 * k, R: 1.12 * big}, solid.Turned{X: 30 * k, R: 1.12 * big}, solid.Turned{X: 32 * k, R: big}, solid.Turned{X: max(reach, 50*k), R: 1.15 * big}))
	for i := range 6 {
		s, c := math.Sincos(2 * math.Pi * (float64(i) + 0.5) / 6)
		w.put(darkSteel, w.bolt(vec(x+18*k, 1.03*big*s, 1.03*big*c), vec(x, 1.03*big*s, 1.03*big*c), 9*d.size))
	}
}

// noseScale is the carrier's size along the shaft.
func noseScale(d *dims) float64 { return max(0.7, d.size) }

// caseSection is one cross section of a case, in E.
type caseSection struct{ x, z, width, height, round float64 }

// cast is a case through cross sections.
func cast(w *shop, sections []caseSection) *solid.Solid {
	rings := make([][]mgl64.Vec3, len(sections))
	for i, c := range sections {
		rings[i] = solid.Oval(c.width, c.height, c.round, 36).Ring(vec(c.x, 0, c.z), solid.AxisY, solid.AxisZ)
	}
	return solid.Skin(rings, solid.Capped, w.edge)
}

func straightCase(d *dims, w *shop) {
	s, k, end := d.size, d.crankZ, d.boxEnd
	x0 := 2.1*d.flangeThick + 38*noseScale(d)
	if d.hull.Engine.DownAngleDeg != 0 {
		x0 += 40 * s
	}
	low := min(-84*s, k-150*s)
	mid, tall := (low+k+112*s)/2, k+112*s-low
	a := x0 + 0.3*(end-x0)
	b := max(end-130*s, a+20*s)
	w.put(gearCast, cast(w, []caseSection{
		{x0, 0.25 * mid, 120 * s, 0.6 * tall, 50 * s}, {x0 + 10*s, 0.3 * mid, 140 * s, 0.68 * tall, 54 * s},
		{a - 8*s, 0.8 * mid, 186 * s, 0.9 * tall, 46 * s}, {a, mid, 200 * s, tall, 40 * s},
		{b, mid, 208 * s, tall, 40 * s}, {b + 6*s, mid, 208 * s, tall, 44 * s},
		{end - 46*s, k, 318 * s, 318 * s, 158 * s}, {end - 26*s, k, 344 * s, 344 * s, 171 * s},
		{end - 24*s, k, 364 * s, 364 * s, 181 * s}, {end - 8*s, k, 364 * s, 364 * s, 181 * s}, {end, k, 352 * s, 352 * s, 175 * s},
	}))
	// A bolted joint and ribs.
	w.put(gearCast, cast(w, []caseSection{
		{b - 16*s, mid, 226 * s, tall + 18*s, 46 * s}, {b - 14*s, mid, 230 * s, tall + 22*s, 48 * s},
		{b - 2*s, mid, 230 * s, tall + 22*s, 48 * s}, {b, mid, 226 * s, tall + 18*s, 46 * s}}))
	for _, z := range [...]float64{-0.28, 0, 0.28} {
		w.put(gearCast, w.block3(a, b-8*s, -108*s, 108*s, mid+z*tall-4*s, mid+z*tall+4*s, 0, 2, 2))
	}
	for i := range 8 {
		sin, cos := math.Sincos(2 * math.Pi * (float64(i) + 0.5) / 8)
		w.put(darkSteel, w.bolt(vec(end-24*s, 168*s*sin, k+168*s*cos), vec(end-60*s, 168*s*sin, k+168*s*cos), 10*s))
	}
	boxFittings(d, w, a, b, mid+tall/2)
}

// boxFittings are the cover, dipstick, oil cooler and selector on top.
func boxFittings(d *dims, w *shop, a, b, top float64) {
	s := d.size
	m := (a + b) / 2
	w.put(coverCast, w.block3(m-max(34*s, m-a-6*s), m+max(34*s, m-a-6*s), -62*s, 62*s, top-6*s, top+9*s, 2, 14*s, 2*s))
	for _, x := range [...]float64{a + 14*s, b - 30*s} {
		for _, y := range [...]float64{-50 * s, 50 * s} {
			w.put(platedNut, w.bolt(vec(x, y, top+8*s), vec(x, y, top+20*s), 7*s))
		}
	}
	w.put(blackened, w.rod(vec(m, 34*s, top+8*s), vec(m, 34*s, top+34*s), 12*s, 12))
	w.put(darkSteel, w.rod(vec(m, 100*s, top-60*s), vec(m, 124*s, top-60*s), 13*s, 12),
		w.block3(m-9*s, m+9*s, 116*s, 124*s, top-66*s, top+14*s, 1, 8*s, 1))
	w.put(coverCast, w.turned(vec(a-10*s, -92*s, top+22*s), vec(b+30*s, -92*s, top+22*s), 18,
		solid.Turned{X: 0, R: 20 * s}, solid.Turned{X: 8 * s, R: 31 * s}, solid.Turned{X: 24 * s, R: 33 * s}, solid.Turned{X: 25 * s, R: 28 * s},
		solid.Turned{X: b - a + 15*s, R: 28 * s}, solid.Turned{X: b - a + 16*s, R: 33 * s}, solid.Turned{X: b - a + 32*s, R: 31 * s}, solid.Turned{X: b - a + 40*s, R: 20 * s}))
	for _, x := range [...]float64{a + 20*s, b} {
		w.put(blackened, w.hose(9*s, 8, vec(x, -92*s, top), vec(x, -112*s, top-40*s), vec(x, -90*s, top-80*s)))
	}
}

// vCase is the V-drive's: an upper gear on the crank, a lower one on the shaft,
// in one upright case.
func vCase(d *dims, w *shop) {
	s, k, x := d.size, d.crankZ, d.boxEnd
	w.put(gearCast, w.turned(vec(x, 0, k), vec(x+1, 0, k), 32,
		solid.Turned{X: 0, R: 150 * s}, solid.Turned{X: 0, R: 184 * s}, solid.Turned{X: 16 * s, R: 184 * s}, solid.Turned{X: 18 * s, R: 172 * s}, solid.Turned{X: 62 * s, R: 128 * s}, solid.Turned{X: 70 * s, R: 90 * s}))
	for i := range 10 {
		sin, cos := math.Sincos(2 * math.Pi * (float64(i) + 0.5) / 10)
		w.put(darkSteel, w.bolt(vec(x+16*s, 172*s*sin, k+172*s*cos), vec(x+60*s, 172*s*sin, k+172*s*cos), 10*s))
	}
	var rim []mgl64.Vec2
	for i := range 64 {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / 64)
		rim = append(rim, mgl64.Vec2{92 * s * cos, 92 * s * sin}, mgl64.Vec2{126 * s * cos, k + 126*s*sin})
	}
	outline := spaced(hullOf(rim), 26*s)
	middle := mgl64.Vec2{0, k / 2}
	ring := func(x, in float64) []mgl64.Vec3 {
		out := make([]mgl64.Vec3, len(outline))
		for i, p := range outline {
			q := p.Sub(middle)
			q = q.Mul(1 - in/q.Len())
			out[i] = vec(x, q[0]+middle[0], q[1]+middle[1])
		}
		return out
	}
	a, b := x+48*s, x+226*s
	m := (a + b) / 2
	w.put(gearCast, solid.Skin([][]mgl64.Vec3{ring(a, 14*s), ring(a+14*s, 0), ring(m-9*s, 0), ring(m-8*s, -13*s), ring(m+8*s, -13*s), ring(m+9*s, 0), ring(b-14*s, 0), ring(b, 14*s)}, solid.Capped, w.edge))
	for i := 0; i < len(outline); i += 3 {
		p := ring(m-8*s, -6*s)[i]
		w.put(darkSteel, w.bolt(p, p.Sub(vec(10, 0, 0)), 8*s))
	}
	for _, c := range [...][2]float64{{0, 66 * s}, {k, 96 * s}} {
		z, r := c[0], c[1]
		w.put(coverCast, w.turned(vec(b-2, 0, z), vec(b+1, 0, z), 24, solid.Turned{X: 0, R: r}, solid.Turned{X: 14 * s, R: r}, solid.Turned{X: 16 * s, R: r - 4*s}, solid.Turned{X: 16 * s, R: 0.6 * r}, solid.Turned{X: 26 * s, R: 0.5 * r}))
		for i := range 6 {
			sin, cos := math.Sincos(2 * math.Pi * (float64(i) + 0.5) / 6)
			w.put(platedNut, w.bolt(vec(b+13*s, 0.84*r*sin, z+0.84*r*cos), vec(b+20*s, 0.84*r*sin, z+0.84*r*cos), 8*s))
		}
	}
	w.put(blackened, w.rod(vec(m+30*s, 30*s, k+120*s), vec(m+30*s, 30*s, k+156*s), 13*s, 12))
	w.put(darkSteel, w.rod(vec(m+40*s, 110*s, k), vec(m+40*s, 140*s, k), 14*s, 12), w.block3(m+30*s, m+50*s, 130*s, 138*s, k-8*s, k+76*s, 1, 8*s, 1))
}
