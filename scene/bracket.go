package scene

// This file is the bracket that carries the engine on a mount: a foot on the
// stud, an upright plate bolted to the engine's side, two webs between.

import (
	"math"

	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func (w *mountShop) bracket() {
	d, t, s := w.d, w.t, w.t.stud
	out := t.outward
	z := d.hull.Mounts[w.i].AtMM[2]
	low, high := z-t.plate/2, z+t.plate/2
	half := 2.3 * s
	inner := out * (d.bodyHalfWidth(w.x) - 4)
	tip := w.y + out*1.9*s
	// Where engine or gearbox can be reached: about the crank.
	top := max(high+3.4*s, d.crankZ+34*d.size)
	bottom := min(low-0.2*s, d.crankZ-30*d.size)
	wall := 0.75 * s
	if math.Abs(inner) > math.Abs(w.y)-2.4*s {
		// The mount stands under the engine's side.
		inner = w.y - out*2.4*s
	}
	w.put(darkSteel,
		w.footPlate(inner, tip, low, high, half),
		w.block3(w.x-half, w.x+half, min(inner, inner-out*wall*2), max(inner, inner-out*wall*2), bottom, top, 1, 0.5*s, 1.5),
		w.round(14, solid.Turned{X: t.nutTop, R: 0.5 * s}, solid.Turned{X: t.nutTop, R: 1.1 * s}, solid.Turned{X: low + 0.5, R: 1.1 * s}, solid.Turned{X: low + 0.5, R: 0.5 * s}),
		w.round(14, solid.Turned{X: high - 0.5, R: 0.5 * s}, solid.Turned{X: high - 0.5, R: 1.1 * s}, solid.Turned{X: t.jamLow, R: 1.1 * s}, solid.Turned{X: t.jamLow, R: 0.5 * s}))
	reach := w.y - out*1.5*s
	for _, side := range [...]float64{-1, 1} {
		x := w.x + side*(half-0.35*s)
		w.put(darkSteel, solid.Wedge([]mgl64.Vec3{
			vec(x, inner-out*2, high-1), vec(x, reach, high-1), vec(x, reach, high+0.5*s), vec(x, inner-out*2, top-0.6*s)}, vec(0.6*s, 0, 0)))
		z := top - 0.9*s
		if side > 0 {
			z = high + 1.4*s
		}
		bx := w.x + side*(half-1.35*s)
		w.put(stainless, w.bolt(vec(bx, inner, z), vec(bx, inner+out, z), 0.62*s))
	}
	w.take(engineBody, MountKind)
}

// footPlate is the flat foot, rounded at its outer end.
func (w *mountShop) footPlate(inner, tip, low, high, half float64) *solid.Solid {
	return w.block3(w.x-half, w.x+half, min(inner, tip), max(inner, tip), low, high, 2, 0.9*w.t.stud, 0.1*w.t.stud)
}
