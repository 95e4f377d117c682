package scene

// This file is the engine: which of the three characters is drawn, and what
// they have in common.

import (
	"math"

	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// works is an engine being built, in frame G at the size of a 400 kg engine;
// the real size follows at the end. long is its whole length in that size.
type works struct {
	shop
	d     *dims
	long  float64
	block float64 // x where block ends and the front begins
	cyl   int     // cylinders in a row
}

func engineParts(d *dims) []piece {
	w := &works{d: d, long: d.engineLength / d.size}
	w.edge = 60
	w.block = w.long - 95
	switch d.character {
	case petrolV:
		w.cyl = 4
		if w.block < 430 {
			w.cyl = 3
		}
		w.petrol()
	case smallAuxiliary:
		w.cyl = 3
		if d.hull.Engine.MassKg < 110 {
			w.cyl = 2
		}
		w.diesel(true)
	default:
		w.cyl = 4
		if d.hull.Engine.MassKg > 600 {
			w.cyl = 6
		}
		w.diesel(false)
	}
	return w.pieces(piece{kind: EngineKind, body: engineBody}, d.fromG.Mul(scaled(d.size)))
}

// at is the x of a cylinder, the first nearest the front.
func (w *works) at(i int) float64 {
	from, to := 75.0, w.block-25
	return to - (float64(i)+0.5)*(to-from)/float64(w.cyl)
}

// flywheel is its housing, towards the gearbox.
func (w *works) flywheel() {
	w.put(casting, w.turned(vec(0, 0, 0), vec(1, 0, 0), 32,
		solid.Turned{X: 0, R: 150}, solid.Turned{X: 0, R: 176}, solid.Turned{X: 14, R: 180}, solid.Turned{X: 40, R: 172}, solid.Turned{X: 72, R: 128}))
	for i := range 10 {
		s, c := math.Sincos(2 * math.Pi * (float64(i) + 0.5) / 10)
		w.put(darkSteel, w.bolt(vec(14, 164*s, 164*c), vec(30, 164*s, 164*c), 11))
	}
}

// pan is the oil pan, deep at the flywheel's end.
func (w *works) pan(half float64) {
	depth := w.d.panDepth() / w.d.size
	shallow := min(0.62*depth, 105)
	w.put(casting, w.block3(45, w.block+10, -half-14, half+14, -62, -50, 2, 10, 2))
	w.put(darkSteel,
		w.block3(55, w.block, -half, half, -shallow, -56, 2, 22, 9),
		w.block3(75, 0.56*w.block, -half+8, half-8, -depth, -shallow+16, 2, 30, 12))
	w.put(platedNut, w.bolt(vec(0.3*w.block, half-8, -depth+26), vec(0.3*w.block, half, -depth+26), 12))
}

// block3 is a block by its ranges.
func (w *shop) block3(x0, x1, y0, y1, z0, z1 float64, axis int, round, bevel float64) *solid.Solid {
	return w.block(vec(x0, y0, z0), vec(x1, y1, z1), axis, round, bevel)
}

// pulley is a grooved wheel facing the front, about (y, z).
func (w *works) pulley(y, z, radius float64) {
	x := w.block + 48
	w.put(darkSteel, w.turned(vec(x-14, y, z), vec(x, y, z), 20,
		solid.Turned{X: 0, R: 0.3 * radius}, solid.Turned{X: 0, R: radius}, solid.Turned{X: 3, R: radius}, solid.Turned{X: 9, R: radius - 9},
		solid.Turned{X: 15, R: radius - 9}, solid.Turned{X: 21, R: radius}, solid.Turned{X: 24, R: radius}, solid.Turned{X: 24, R: 0.72 * radius},
		solid.Turned{X: 15, R: 0.62 * radius}, solid.Turned{X: 15, R: 0.34 * radius}, solid.Turned{X: 26, R: 0.3 * radius}))
}

// belt runs round pulleys given as y, z, radius.
func (w *works) belt(wheels ...[3]float64) {
	x := w.block + 46
	var rim []mgl64.Vec2
	for _, p := range wheels {
		for i := range 48 {
			s, c := math.Sincos(2 * math.Pi * float64(i) / 48)
			rim = append(rim, mgl64.Vec2{p[0] + (p[2]-5)*c, p[1] + (p[2]-5)*s})
		}
	}
	path := spaced(hullOf(rim), 26)
	rings := make([][]mgl64.Vec3, len(path))
	for i, p := range path {
		a, b := path[(i+len(path)-1)%len(path)], path[(i+1)%len(path)]
		t := b.Sub(a).Normalize()
		n := mgl64.Vec2{t[1], -t[0]}
		in, out := p, p.Add(n.Mul(8))
		rings[i] = []mgl64.Vec3{{x - 5, in[0], in[1]}, {x + 5, in[0], in[1]}, {x + 6, out[0], out[1]}, {x - 6, out[0], out[1]}}
	}
	w.put(rubberMix, solid.Skin(rings, solid.Looped, 40))
}

// alternator stands beside the block, its pulley in the belt's plane.
func (w *works) alternator(y, z float64) {
	x := w.block + 32
	w.put(coverCast, w.turned(vec(x-125, y, z), vec(x, y, z), 20,
		solid.Turned{X: 0, R: 30}, solid.Turned{X: 0, R: 48}, solid.Turned{X: 14, R: 60}, solid.Turned{X: 40, R: 62}, solid.Turned{X: 42, R: 56},
		solid.Turned{X: 78, R: 56}, solid.Turned{X: 80, R: 62}, solid.Turned{X: 104, R: 60}, solid.Turned{X: 116, R: 46}, solid.Turned{X: 116, R: 20}))
	w.pulley(y, z, 36)
}

// starter lies along the block beside the flywheel.
func (w *works) starter(y, z float64) {
	w.put(blackened,
		w.rod(vec(60, y, z), vec(225, y, z), 41, 18),
		w.rod(vec(75, y+6, z+60), vec(175, y+6, z+60), 25, 16))
	w.put(darkSteel, w.rod(vec(38, y, z), vec(66, y, z), 50, 18))
	w.put(platedNut, w.bolt(vec(175, y+6, z+68), vec(190, y+6, z+68), 8))
}

// oilFilter hangs beside the block.
func (w *works) oilFilter(x, y, z float64) {
	w.put(casting, w.block3(x-34, x+34, y-70, y+20, z, z+40, 2, 20, 5))
	w.put(blackened, w.turned(vec(x, y, z+2), vec(x, y, z-100), 18,
		solid.Turned{X: 0, R: 26}, solid.Turned{X: 0, R: 44}, solid.Turned{X: 8, R: 46}, solid.Turned{X: 14, R: 42}, solid.Turned{X: 90, R: 42}, solid.Turned{X: 102, R: 34}, solid.Turned{X: 104, R: 12}))
}

// eye is a lifting eye standing on a head.
func (w *works) eye(x, y, z float64) {
	w.put(darkSteel, w.turned(vec(x, y-4, z+26), vec(x, y+4, z+26), 14,
		solid.Turned{X: 0, R: 12}, solid.Turned{X: 0, R: 24}, solid.Turned{X: 8, R: 24}, solid.Turned{X: 8, R: 12}),
		w.block3(x-18, x+18, y-4, y+4, z-10, z+20, 1, 4, 1))
}

// hullOf is the convex hull of points, anticlockwise (Andrew's monotone chain).
func hullOf(points []mgl64.Vec2) []mgl64.Vec2 {
	p := append([]mgl64.Vec2(nil), points...)
	sortPoints(p)
	half := func(p []mgl64.Vec2) []mgl64.Vec2 {
		var h []mgl64.Vec2
		for _, c := range p {
			for len(h) > 1 {
				a, b := h[len(h)-2], h[len(h)-1]
				if (b[0]-a[0])*(c[1]-a[1])-(b[1]-a[1])*(c[0]-a[0]) > 0 {
					break
				}
				h = h[:len(h)-1]
			}
			h = append(h, c)
		}
		return h[:len(h)-1]
	}
	low := half(p)
	for i, j := 0, len(p)-1; i < j; i, j = i+1, j-1 {
		p[i], p[j] = p[j], p[i]
	}
	return append(low, half(p)...)
}
