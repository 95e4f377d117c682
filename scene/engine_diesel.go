package scene

// This file is the in-line diesel and, with fewer cylinders and less on it, the
// small auxiliary. Fuel and air are on the side to port seen from the flywheel,
// exhaust and cooling on the other.

import (
	"math"

	"aligner/scene/solid"
)

func (w *works) diesel(small bool) {
	w.flywheel()
	w.pan(88)
	w.dieselBlock(small)
	w.dieselHead(small)
	w.dieselFuel()
	w.dieselExhaust(small)
	w.dieselAir(small)
	w.dieselFront(small)
	w.starter(152, -2)
	w.oilFilter(0.66*w.block, 158, 6)
}

func (w *works) dieselBlock(small bool) {
	w.put(casting,
		w.block3(44, w.block, -112, 112, -52, 60, 0, 16, 6),
		w.block3(50, w.block, -98, 98, 30, 208, 0, 16, 6))
	for i := range w.cyl {
		// Core plugs in pressed-in rings, and a rib between cylinders.
		x := w.at(i)
		w.put(coverCast, w.turned(vec(x, 97, 128), vec(x, 103, 128), 12, solid.Turned{X: 0, R: 21}, solid.Turned{X: 4, R: 19}))
		if i > 0 {
			m := (w.at(i) + w.at(i-1)) / 2
			w.put(casting, w.block3(m-6, m+6, -104, 104, 50, 200, 2, 3, 2))
		}
	}
	if !small {
		w.put(casting, w.block3(60, w.block-8, -106, 106, 190, 206, 2, 6, 2))
	}
}

func (w *works) dieselHead(small bool) {
	w.put(casting, w.block3(56, w.block-6, -92, 92, 212, 288, 2, 14, 5))
	w.put(darkSteel, w.block3(54, w.block-4, -94, 94, 206, 213, 2, 14, 0.5))
	cover := func(x0, x1 float64) {
		w.put(coverCast,
			w.block3(x0, x1, -64, 64, 284, 300, 2, 18, 3),
			w.block3(x0+8, x1-8, -56, 56, 298, 352, 2, 26, 16))
		for _, x := range [...]float64{x0 + 0.3*(x1-x0), x0 + 0.7*(x1-x0)} {
			w.put(platedNut, w.bolt(vec(x, 0, 350), vec(x, 0, 360), 12))
		}
	}
	if w.cyl == 6 {
		// A large engine has a cover for each pair of cylinders.
		step := (w.block - 31 - 75) / 3
		for i := range 3 {
			x := 78 + float64(i)*step
			cover(x+4, x+step-4)
		}
	} else {
		cover(78, w.block-28)
	}
	x := w.block - 75
	w.put(blackened, w.turned(vec(x, 0, 346), vec(x, 0, 384), 16, solid.Turned{X: 0, R: 20}, solid.Turned{X: 14, R: 20}, solid.Turned{X: 15, R: 28}, solid.Turned{X: 32, R: 28}, solid.Turned{X: 36, R: 24}))
	w.eye(72, 70, 286)
	w.eye(w.block-20, -70, 286)
}

// dieselFuel is the pump on the side with a pipe to each injector.
func (w *works) dieselFuel() {
	x0, x1 := 0.42*w.block, 0.42*w.block+36*float64(w.cyl)+20
	w.put(coverCast,
		w.block3(x0, x1, 104, 158, 92, 148, 0, 14, 6),
		w.rod(vec(x1, 131, 118), vec(x1+26, 131, 118), 44, 18))
	w.put(darkSteel, w.rod(vec(x0-46, 131, 118), vec(x0, 131, 118), 30, 16))
	for i := range w.cyl {
		x := x1 - 20 - 36*float64(i)
		w.put(stainless, w.rod(vec(x, 131, 140), vec(x, 131, 172), 9, 8))
		to := w.at(i)
		w.put(stainless, w.hose(3.4, 6, vec(x, 131, 170), vec(x, 131, 205+9*float64(i)), vec(to, 118, 236+5*float64(i)), vec(to, 78, 318), vec(to, 74, 300)))
		w.put(darkSteel, w.turned(vec(to, 74, 282), vec(to, 74, 312), 10, solid.Turned{X: 0, R: 15}, solid.Turned{X: 12, R: 15}, solid.Turned{X: 14, R: 8}, solid.Turned{X: 30, R: 8}))
	}
}

// dieselExhaust is the cooled manifold, the mixing elbow that leads aft and
// down, and the heat exchanger with its cap.
func (w *works) dieselExhaust(small bool) {
	w.put(coverCast, w.block3(66, w.block-30, -178, -108, 214, 286, 0, 26, 14))
	for i := range w.cyl {
		x := w.at(i)
		w.put(casting, w.block3(x-24, x+24, -112, -88, 224, 276, 1, 10, 2))
	}
	w.put(casting, w.turned(vec(70, -143, 250), vec(40, -143, 250), 18, solid.Turned{X: 0, R: 44}, solid.Turned{X: 8, R: 46}, solid.Turned{X: 20, R: 46}, solid.Turned{X: 22, R: 38}))
	w.put(casting, w.hose(37, 16, vec(56, -143, 250), vec(-8, -143, 250), vec(-20, -143, 345), vec(-110, -143, 330), vec(-140, -143, 210)))
	w.put(blackened, w.hose(46, 16, vec(-132, -143, 242), vec(-148, -143, 178), vec(-190, -143, 70)))
	w.put(stainless, w.rod(vec(-139, -143, 214), vec(-143, -143, 198), 49, 18))
	w.put(blackened, w.hose(11, 8, vec(-30, -143, 372), vec(0, -190, 330), vec(60, -196, 330)))
	if small {
		// Its header tank is one casting with the manifold.
		w.put(coverCast, w.block3(w.block-150, w.block-24, -186, -100, 250, 372, 2, 34, 12))
		x := w.block - 88
		w.put(blackened, w.turned(vec(x, -143, 366), vec(x, -143, 402), 16, solid.Turned{X: 0, R: 20}, solid.Turned{X: 14, R: 20}, solid.Turned{X: 15, R: 30}, solid.Turned{X: 28, R: 30}, solid.Turned{X: 34, R: 22}))
		return
	}
	a, b := 60.0, min(w.block-20, 470)
	r, z := 46.0, 338.0
	w.put(coverCast, w.turned(vec(a, -150, z), vec(b, -150, z), 20,
		solid.Turned{X: 0, R: 30}, solid.Turned{X: 4, R: r - 8}, solid.Turned{X: 18, R: r + 5}, solid.Turned{X: 28, R: r + 5}, solid.Turned{X: 29, R: r},
		solid.Turned{X: b - a - 29, R: r}, solid.Turned{X: b - a - 28, R: r + 5}, solid.Turned{X: b - a - 18, R: r + 5}, solid.Turned{X: b - a - 4, R: r - 8}, solid.Turned{X: b - a, R: 30}))
	x := b - 70
	w.put(blackened, w.turned(vec(x, -150, z+r-6), vec(x, -150, z+r+30), 16, solid.Turned{X: 0, R: 18}, solid.Turned{X: 16, R: 18}, solid.Turned{X: 17, R: 26}, solid.Turned{X: 28, R: 26}, solid.Turned{X: 32, R: 20}))
	for _, x := range [...]float64{a + 60, b - 40} {
		w.put(casting, w.block3(x-16, x+16, -172, -128, 280, z-30, 2, 8, 2))
	}
}

// dieselAir is the inlet manifold with its silencer.
func (w *works) dieselAir(small bool) {
	a, b := 74.0, w.block-34
	w.put(coverCast, w.block3(a, b, 92, 140, 226, 274, 0, 22, 8))
	l := math.Min(190, 0.5*w.block)
	x, y, z, r := a+30, 134.0, 338.0, 62.0
	if small {
		// A moulded silencer standing on the manifold.
		w.put(blackened,
			w.block3(a+16, a+150, 84, 178, 272, 366, 2, 26, 12),
			w.block3(a+16, a+150, 82, 180, 312, 322, 2, 26, 2))
		return
	}
	w.put(blackened, w.turned(vec(x, y, z), vec(x+l, y, z), 24,
		solid.Turned{X: 0, R: 30}, solid.Turned{X: 0, R: r - 10}, solid.Turned{X: 10, R: r}, solid.Turned{X: 22, R: r}, solid.Turned{X: 25, R: r - 6},
		solid.Turned{X: l - 25, R: r - 6}, solid.Turned{X: l - 22, R: r}, solid.Turned{X: l - 10, R: r}, solid.Turned{X: l, R: r - 10}, solid.Turned{X: l, R: 30}))
	w.put(coverCast, w.hose(26, 14, vec(x+0.6*l, 116, 262), vec(x+0.6*l, 124, 300)))
}

// dieselFront is the timing cover with pulleys, belt, alternator and pumps.
func (w *works) dieselFront(small bool) {
	x := w.block
	w.put(coverCast, w.block3(x-4, x+26, -104, 104, -58, 196, 0, 44, 7))
	w.put(casting, w.rod(vec(x+20, 0, 180), vec(x+40, 0, 180), 52, 20))
	crank, pump := 78.0, 54.0
	ay, az := 168.0, 196.0
	if small {
		crank, ay, az = 92, 150, 176
	}
	if small {
		// The flywheel of a small engine is often at the front.
		w.put(casting, w.turned(vec(x+20, 0, 0), vec(x+30, 0, 0), 32, solid.Turned{X: 0, R: 118}, solid.Turned{X: 4, R: 124}, solid.Turned{X: 16, R: 124}, solid.Turned{X: 18, R: 112}))
	}
	w.pulley(0, 0, crank)
	w.pulley(0, 180, pump)
	w.alternator(ay, az)
	w.put(darkSteel, w.block3(x-70, x-50, 92, ay, az-10, az+10, 1, 5, 2))
	w.belt([3]float64{0, 0, crank}, [3]float64{0, 180, pump}, [3]float64{ay, az, 36})
	// Raw water pump, with its hoses.
	w.put(bronze, w.turned(vec(x+20, -74, 62), vec(x+72, -74, 62), 18, solid.Turned{X: 0, R: 24}, solid.Turned{X: 18, R: 24}, solid.Turned{X: 20, R: 42}, solid.Turned{X: 48, R: 42}, solid.Turned{X: 52, R: 36}))
	w.put(blackened, w.hose(14, 10, vec(x+52, -108, 74), vec(x+52, -156, 100), vec(x+20, -170, 250), vec(x-30, -166, 310)))
}
