package scene

// This file is the petrol V: two banks a quarter turn apart, carburation or
// injection in the valley under a flame arrestor, cooled manifolds outboard
// with risers.

import (
	"math"

	"aligner/scene/solid"
)

const bankRad = math.Pi / 4

func (w *works) petrol() {
	w.flywheel()
	w.pan(92)
	w.put(casting, w.block3(44, w.block, -124, 124, -54, 66, 0, 22, 7))
	for _, side := range [...]float64{-1, 1} {
		w.bank(side)
		w.outboard(side)
	}
	w.valley()
	w.petrolFront()
	w.starter(160, -8)
	w.oilFilter(0.7*w.block, -164, 0)
}

// bank is one row of cylinders with head and rocker cover, built upright and
// leant over.
func (w *works) bank(side float64) {
	lean := aboutX(-side * bankRad)
	shift := 0.0
	if side > 0 {
		shift = 14 // rods side by side on one crankpin set one bank back
	}
	a, b := 52+shift, w.block-22+shift
	w.put(casting,
		w.block3(a, b, -72, 72, 40, 222, 2, 14, 5).Placed(lean),
		w.block3(a+6, b-6, -84, 84, 222, 288, 2, 12, 5).Placed(lean))
	w.put(coverCast,
		w.block3(a+14, b-14, -56, 60, 286, 298, 2, 16, 2).Placed(lean),
		w.block3(a+20, b-20, -48, 52, 296, 346, 2, 24, 16).Placed(lean))
	for k := range 3 {
		x := a + 60 + float64(k)*(b-a-120)/2
		w.put(platedNut, w.bolt(vec(x, 0, 345), vec(x, 0, 355), 11).Placed(lean))
	}
	if side > 0 {
		x := b - 60
		w.put(blackened, w.turned(vec(x, 4, 340), vec(x, 4, 378), 16, solid.Turned{X: 0, R: 18}, solid.Turned{X: 14, R: 18}, solid.Turned{X: 15, R: 26}, solid.Turned{X: 32, R: 26}, solid.Turned{X: 36, R: 22}).Placed(lean))
	}
}

// outboard is the cooled exhaust manifold with its riser, and the plug leads.
func (w *works) outboard(side float64) {
	a, b := 74.0, w.block-44
	y, z := side*258, 168.0
	w.put(darkSteel, w.block3(a, b, y-40, y+40, z-48, z+46, 0, 34, 16))
	for i := range w.cyl {
		x := w.at(i)
		w.put(darkSteel, w.hose(24, 12, vec(x, side*218, 150), vec(x, y-side*4, z)))
		plug := vec(x, side*196, 92)
		w.put(stainless, w.rod(vec(x, side*176, 108), plug, 9, 8))
		w.put(blackened, w.hose(4.5, 5, plug, vec(x-8, side*226, 84), vec(x-20, side*206, 62), vec(60+16*float64(i), side*132, 74), vec(58, side*60, 250+6*float64(i)), vec(84, side*20, 330)))
	}
	// The riser stands where the boat's stern is and leads aft and down.
	x, aft := a+50, -1.0
	if w.d.backward {
		x, aft = b-50, 1
	}
	w.put(darkSteel, w.turned(vec(x, y, z+36), vec(x, y, z+62), 20, solid.Turned{X: 0, R: 46}, solid.Turned{X: 6, R: 52}, solid.Turned{X: 22, R: 52}, solid.Turned{X: 26, R: 44}))
	w.put(darkSteel, w.hose(43, 16, vec(x, y, z+50), vec(x, y, z+168), vec(x+aft*128, y, z+150), vec(x+aft*158, y, z+76)))
	w.put(blackened, w.hose(53, 16, vec(x+aft*148, y, z+108), vec(x+aft*164, y, z+46), vec(x+aft*204, y, z-70)))
	w.put(stainless, w.rod(vec(x+aft*151, y, z+92), vec(x+aft*155, y, z+76), 56, 20))
}

// valley is the inlet manifold, the throttle body and the flame arrestor.
func (w *works) valley() {
	a, b := 96.0, w.block-66
	m := (a + b) / 2
	w.put(coverCast,
		w.block3(a, b, -86, 86, 178, 252, 2, 26, 10),
		w.block3(m-0.3*(b-a), m+0.3*(b-a), -58, 58, 244, 292, 2, 30, 12),
		w.rod(vec(m, 0, 286), vec(m, 0, 322), 52, 20))
	for i := range w.cyl {
		for _, side := range [...]float64{-1, 1} {
			x := w.at(i) + side*7
			w.put(coverCast, w.hose(21, 12, vec(x, side*64, 240), vec(x, side*112, 236), vec(x, side*150, 198)))
		}
	}
	// The flame arrestor: a stack of rings between two plates.
	profile := []solid.Turned{{X: 0, R: 60}, {X: 0, R: 100}, {X: 6, R: 108}, {X: 14, R: 108}}
	for k := range 4 {
		x := 15 + 10*float64(k)
		profile = append(profile, solid.Turned{X: x, R: 98}, solid.Turned{X: x + 4, R: 98}, solid.Turned{X: x + 5, R: 104}, solid.Turned{X: x + 9, R: 104})
	}
	profile = append(profile, solid.Turned{X: 56, R: 108}, solid.Turned{X: 64, R: 106}, solid.Turned{X: 72, R: 84}, solid.Turned{X: 74, R: 50})
	w.put(stainless, w.turned(vec(m, 0, 318), vec(m, 0, 400), 28, profile...))
	w.put(platedNut, w.bolt(vec(m, 0, 392), vec(m, 0, 400), 16))
	// The distributor at the flywheel's end.
	w.put(blackened, w.turned(vec(84, 0, 250), vec(84, 0, 350), 18,
		solid.Turned{X: 0, R: 20}, solid.Turned{X: 40, R: 24}, solid.Turned{X: 42, R: 44}, solid.Turned{X: 72, R: 44}, solid.Turned{X: 86, R: 30}, solid.Turned{X: 96, R: 28}))
	w.eye(70, 70, 250)
	w.eye(w.block-40, -70, 250)
}

// petrolFront is the timing cover, the pulleys and what they drive.
func (w *works) petrolFront() {
	x := w.block
	w.put(coverCast, w.block3(x-4, x+26, -110, 110, -56, 150, 0, 60, 7))
	w.put(casting,
		w.rod(vec(x+10, 0, 168), vec(x+40, 0, 168), 62, 20),
		w.hose(24, 12, vec(x+18, 0, 190), vec(x+10, -60, 240), vec(x-70, -60, 246)))
	w.pulley(0, 0, 84)
	w.pulley(0, 168, 62)
	w.alternator(196, 226)
	w.put(darkSteel, w.hose(12, 8, vec(x-40, 120, 160), vec(x-40, 170, 200)))
	w.belt([3]float64{0, 0, 84}, [3]float64{0, 168, 62}, [3]float64{196, 226, 36})
	w.put(bronze, w.turned(vec(x+20, -128, 40), vec(x+72, -128, 40), 18, solid.Turned{X: 0, R: 26}, solid.Turned{X: 18, R: 26}, solid.Turned{X: 20, R: 46}, solid.Turned{X: 48, R: 46}, solid.Turned{X: 52, R: 40}))
	w.put(blackened, w.hose(15, 10, vec(x+48, -160, 60), vec(x+48, -220, 90), vec(x-20, -250, 120)))
}
