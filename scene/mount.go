package scene

// This file is a mount: base plate with slots, rubber under a steel hat, stud,
// adjusting nut with one flat marked, jam nut. Solid feet have shims instead.

import (
	"math"

	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// mountShop builds in E, about the mount's own place.
type mountShop struct {
	shop
	d    *dims
	t    *mountDims
	i    int
	x, y float64
	out  []piece
}

func mountParts(d *dims, i int) []piece {
	p := d.hull.Mounts[i].AtMM
	w := &mountShop{d: d, t: &d.mounts[i], i: i, x: p[0], y: p[1]}
	w.edge = 45
	w.bracket()
	if w.t.solid {
		w.solidFoot()
	} else {
		w.rubberFoot()
	}
	return w.out
}

// take makes a piece of what is collected.
func (w *mountShop) take(b body, k Kind) {
	w.out = append(w.out, w.pieces(piece{kind: k, index: w.i, body: b}, w.d.fromE)...)
	w.bins = shop{}.bins
}

// round is a turned part standing on the mount's axis; the profile's X is the
// height.
func (w *mountShop) round(n int, profile ...solid.Turned) *solid.Solid {
	return upright(solid.Lathe(profile, n, w.edge), vec(w.x, w.y, 0))
}

// nut is a hexagon with bevelled corners, a flat facing outboard.
func (w *mountShop) nut(low, high float64) *solid.Solid {
	o := solid.Hexagon(w.t.flats, 2)
	c := 0.1 * w.t.stud
	ring := func(z, in float64) []mgl64.Vec3 {
		return o.Inset(in).Ring(vec(w.x, w.y, z), solid.AxisY, vec(-1, 0, 0))
	}
	return solid.Skin([][]mgl64.Vec3{ring(low, c), ring(low+0.6*c, 0), ring(high-0.6*c, 0), ring(high, c)}, solid.Capped, w.edge)
}

// stripe is the paint mark on a nut's outboard flat.
func (w *mountShop) stripe(low, high float64) *solid.Solid {
	y := w.y + w.t.outward*w.t.flats/2
	return w.block3(w.x-0.17*w.t.stud, w.x+0.17*w.t.stud, y-1, y+0.5, low+0.08*w.t.stud, high-0.08*w.t.stud, 1, 0.5, 0.1)
}

func (w *mountShop) rubberFoot() {
	t, s := w.t, w.t.stud
	w.base()
	w.put(rubberMix, w.rubberCone())
	w.take(mountRubber, MountKind)
	// Hat over the rubber, collar, stud.
	w.put(darkSteel, w.round(24,
		solid.Turned{X: t.hatLow - 0.12*s, R: 0.6 * s}, solid.Turned{X: t.hatLow - 0.12*s, R: 1.98 * s}, solid.Turned{X: t.hatLow + 0.08*s, R: 2.02 * s},
		solid.Turned{X: t.hatLow + 0.28*s, R: 1.86 * s}, solid.Turned{X: t.hatLow + 0.4*s, R: 1.4 * s}, solid.Turned{X: t.hatLow + 0.42*s, R: 0.5 * s}))
	w.put(stainless, w.round(16,
		solid.Turned{X: t.hatLow, R: 0.4 * s}, solid.Turned{X: t.hatLow + 0.3*s, R: 0.86 * s}, solid.Turned{X: t.hatTop - 0.08*s, R: 0.86 * s}, solid.Turned{X: t.hatTop, R: 0.78 * s}, solid.Turned{X: t.hatTop, R: 0.3 * s}))
	w.take(mountStud, MountKind)
	w.put(stainless, w.thread(t.hatTop-1, t.studTop))
	w.take(mountThread, MountKind)
	w.put(platedNut, w.nut(t.nutTop-t.nut, t.nutTop))
	w.put(nutMark, w.stripe(t.nutTop-t.nut, t.nutTop))
	w.take(mountNut, NutKind)
	w.put(platedNut, w.nut(t.jamLow, t.jamLow+t.jam))
	w.take(mountNut, NutKind)
}

// thread is a stud with the hint of a thread: grooves at a coarse pitch.
func (w *mountShop) thread(low, high float64) *solid.Solid {
	r := w.t.stud / 2
	step := max(3, 0.3*w.t.stud)
	profile := []solid.Turned{{X: low, R: 0.5 * r}, {X: low, R: r}}
	for z := low + step; high-low > 1.8*w.t.stud && z < high-0.2*w.t.stud; z += step {
		profile = append(profile, solid.Turned{X: z - 0.5*step, R: r}, solid.Turned{X: z, R: 0.88 * r})
	}
	profile = append(profile, solid.Turned{X: high - 0.1*w.t.stud, R: r}, solid.Turned{X: high, R: 0.8 * r}, solid.Turned{X: high, R: 0.4 * r})
	return w.round(10, profile...)
}

// rubberCone widens downward, its sides hollow as bonded rubber's are.
func (w *mountShop) rubberCone() *solid.Solid {
	t, s := w.t, w.t.stud
	low, high := t.baseTop, t.hatLow
	profile := []solid.Turned{{X: low, R: 0.9 * s}, {X: low, R: 2.2 * s}}
	const n = 7
	for k := range n {
		a := float64(k) / (n - 1)
		r := 2.15*s - 0.42*s*a - 0.16*s*math.Sin(math.Pi*a)
		profile = append(profile, solid.Turned{X: low + (high-low)*(0.03+0.94*a), R: r})
	}
	return w.round(20, append(profile, solid.Turned{X: high, R: 1.7 * s}, solid.Turned{X: high, R: 0.8 * s})...)
}

// base is the lower plate with a slot at either end, and what holds it down.
func (w *mountShop) base() {
	t, s := w.t, w.t.stud
	end := 2.5 * s
	wide := max(t.baseWide, t.slot+1.6*s)
	for _, side := range [...]float64{-1, 1} {
		at := vec(w.x+side*(t.baseLong/2-end/2), w.y, 0)
		outer := solid.OblongOf(end, wide, 0.7*s, 2, 4, 3)
		slot := solid.OblongOf(0.72*s, t.slot, 0.36*s, 2, 4, 3)
		w.put(darkSteel, solid.Plate(outer, slot, at, t.bed, t.baseTop))
	}
	half := t.baseLong/2 - end
	w.put(darkSteel,
		w.block3(w.x-half-0.3*s, w.x+half+0.3*s, w.y-t.baseWide/2, w.y+t.baseWide/2, t.bed+0.3, t.baseTop+0.4, 2, 0.4*s, 1),
		w.round(20, solid.Turned{X: t.bed + 1, R: s}, solid.Turned{X: t.bed + 1, R: 2.3 * s}, solid.Turned{X: t.baseTop + 0.3*s, R: 2.3 * s}, solid.Turned{X: t.baseTop + 0.34*s, R: 2.22 * s}, solid.Turned{X: t.baseTop + 0.34*s, R: s}))
	w.take(mountBase, MountKind)
	for _, side := range [...]float64{-1, 1} {
		x := w.x + side*(t.baseLong/2-end/2)
		w.put(stainless,
			upright(solid.Lathe([]solid.Turned{{X: t.bed - 8, R: 0.2 * s}, {X: t.bed - 8, R: 0.3 * s}, {X: t.baseTop, R: 0.3 * s}, {X: t.baseTop, R: 0.78 * s}, {X: t.baseTop + 0.12*s, R: 0.76 * s}, {X: t.baseTop + 0.12*s, R: 0.3 * s}}, 18, w.edge), vec(x, w.y, 0)),
			w.bolt(vec(x, w.y, t.baseTop+0.12*s), vec(x, w.y, t.baseTop+10), 0.6*s))
	}
	w.take(fixed, MountKind)
}

// solidFoot is a steel pad with a stack of shims under the engine's foot.
func (w *mountShop) solidFoot() {
	t, s := w.t, w.t.stud
	l, b := 0.36*t.baseLong, 0.5*t.baseWide
	w.put(darkSteel, w.block3(w.x-l*1.3, w.x+l*1.3, w.y-b*1.15, w.y+b*1.15, t.bed, t.baseTop, 2, 0.4*s, 2))
	w.take(mountBase, MountKind)
	for k := range 3 {
		z := t.shimLow + t.shimHeight*float64(k)/3
		grow := 0.05 * s * float64((k*2)%3)
		w.put(platedNut, w.block3(w.x-l-grow, w.x+l+grow, w.y-b-grow, w.y+b+grow, z+0.02*t.shimHeight, z+0.31*t.shimHeight, 2, 0.2*s, 0))
	}
	w.take(mountShims, NutKind)
	w.put(stainless, w.round(14, solid.Turned{X: t.baseTop - s, R: 0.5 * s}, solid.Turned{X: t.jamLow + 1, R: 0.5 * s}), w.thread(t.jamLow, t.studTop))
	w.take(fixed, MountKind)
	w.put(stainless, w.round(14, solid.Turned{X: t.jamLow - t.washer, R: 0.5 * s}, solid.Turned{X: t.jamLow - t.washer, R: 1.05 * s}, solid.Turned{X: t.jamLow, R: 1.02 * s}, solid.Turned{X: t.jamLow, R: 0.5 * s}),
		w.nut(t.jamLow, t.jamLow+t.nut))
	w.take(engineBody, NutKind)
}
