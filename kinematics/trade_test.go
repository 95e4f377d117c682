package kinematics

// This file checks facts of the trade: common practice, no source, unless one
// is named.

import (
	"math"
	"testing"

	"aligner/hulls"
)

// pairs tells the fore pair's mounts and the two pairs' places along the bed.
func pairs(h hulls.Hull) (isFore []bool, foreMM, aftMM float64) {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, m := range h.Mounts {
		lo, hi = min(lo, m.AtMM[0]), max(hi, m.AtMM[0])
	}
	for _, m := range h.Mounts {
		isFore = append(isFore, m.AtMM[0] > (lo+hi)/2)
	}
	return isFore, hi, lo
}

// foreMoved is a state with the fore pair lifted and slid.
func foreMoved(h hulls.Hull, held Held, liftMM, slideMM float64) State {
	isFore, _, _ := pairs(h)
	s := State{Held: held, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	for i := range isFore {
		if isFore[i] {
			s.LiftMM[i], s.SlideMM[i] = liftMM, slideMM
		}
	}
	return s
}

// The tilt alone: raising the fore pair closes the top and opens the bottom;
// moving it to starboard closes starboard. In every layout.
func TestTiltAloneClosesTheTopAndStarboard(t *testing.T) {
	for _, h := range builtIn(t) {
		d := prepare(t, h)
		for _, held := range []Held{Centred, Seated} {
			rest := solve(t, d, State{Held: held}).Parts.Tilt
			up := solve(t, d, foreMoved(h, held, 0.5, 0)).Parts.Tilt
			if !(up[0]-rest[0] < -0.001) {
				t.Errorf("%s %s: fore pair up tips the top by %+.4f mm, must close it", h.Name, held, up[0]-rest[0])
			}
			stbd := solve(t, d, foreMoved(h, held, 0, -0.5)).Parts.Tilt
			if !(stbd[1]-rest[1] < -0.001) {
				t.Errorf("%s %s: fore pair to starboard tips 3 o'clock by %+.4f mm, must close it", h.Name, held, stbd[1]-rest[1])
			}
		}
	}
}

// freeToTilt makes a hull's first bearing so short and slack that the shaft
// swings in it as on a hinge, and the engine and mounts so stiff that the
// shaft's end does not move them.
func freeToTilt(h hulls.Hull) hulls.Hull {
	h.Bearings = append([]hulls.Bearing(nil), h.Bearings[:1]...)
	h.Bearings[0].LengthMM, h.Bearings[0].RadialStiffnessNPerMM = 1, 1e6
	h.Log.BoreMM = h.Shaft.DiameterMM + 30
	h.StuffingBox = nil
	h.Mounts = append([]hulls.Mount(nil), h.Mounts...)
	for i := range h.Mounts {
		h.Mounts[i].StiffnessNPerMM = hulls.Stiffness{Along: 1e6, ForeAft: 1e6, Athwart: 1e6}
	}
	return h
}

// The seated total of a raised fore pair of four: dA/du = -(r/s)(1 - k a/L),
// with s the pairs' spacing, a how far aft of the face the aft pair stands, L
// from face to first bearing, k = 1 for a shaft free to tilt in its bearing to
// 1.5 for one held by it (worked out by hand from the lever and the beam).
func TestSeatedTotalFollowsTheLever(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Avocet", "Wren", "Bench"} {
		h := freeToTilt(builtInHull(t, name))
		law := func(k float64) float64 {
			// The pairs' spacing lies along the bed; how far aft of the face the
			// aft feet stand is told along the shaft, which lifts the coupling.
			_, fore, aft := pairs(h)
			sin, cos := math.Sincos(h.Engine.DownAngleDeg * math.Pi / 180)
			footAft := -(aft*cos + h.Mounts[0].AtMM[2]*sin)
			radius, length := h.Coupling.OuterDiameterMM/2, -h.Bearings[0].AtMM
			return -radius / (fore - aft) * (1 - k*footAft/length)
		}
		slope := func(h hulls.Hull) float64 {
			d := prepare(t, h)
			const u = 0.01
			up := solve(t, d, foreMoved(h, Seated, u, 0)).Gap.CosMM
			return (up - solve(t, d, foreMoved(h, Seated, -u, 0)).Gap.CosMM) / (2 * u)
		}
		within(t, name+" free to tilt", slope(h), law(1), 0.01*math.Abs(law(1)))
		held := h
		held.Bearings = append([]hulls.Bearing(nil), h.Bearings...)
		b := &held.Bearings[0]
		b.DiametralClearanceMM, b.RadialStiffnessNPerMM = 0, 1e8
		// A long stiff bearing clamps the shaft at its fore end.
		b.AtMM, b.LengthMM = b.AtMM-30, 60+b.LengthMM
		h.Bearings[0].AtMM = b.AtMM + b.LengthMM/2
		within(t, name+" held", slope(held), law(1.5), 0.03*math.Abs(law(1.5)))
	}
}

// A V-drive whose bearing stands close behind the coupling, with the aft pair
// further aft than that, turns the rule round: raising the fore pair opens the
// top.
func TestBearingCloseBehindAVDriveReversesTheTotal(t *testing.T) {
	h := freeToTilt(builtInHull(t, "Avocet"))
	_, _, aft := pairs(h)
	h.Bearings[0].AtMM = 0.7 * aft // L = 0.7 a, so a > L/k
	h.Log.AtMM, h.Log.LengthMM = h.Bearings[0].AtMM-200, 100
	d := prepare(t, h)
	up := solve(t, d, foreMoved(h, Seated, 0.5, 0))
	rest := solve(t, d, foreMoved(h, Seated, 0, 0))
	tilt, swing := up.Parts.Tilt[0]-rest.Parts.Tilt[0], up.Parts.Swing[0]-rest.Parts.Swing[0]
	if !(tilt < 0 && swing > 0 && tilt+swing > 0) {
		t.Errorf("tilt %+.4f and swing %+.4f mm: wanted a closing tilt and a larger opening swing", tilt, swing)
	}
	within(t, "parts add up", tilt+swing, up.Gap.CosMM-rest.Gap.CosMM, 1e-12)
}

// Half a centimetre to one and a half of hang, about half an inch, with one
// strut bearing, often until the log stops it.
func TestHangIsAboutHalfAnInch(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Avocet", "Wren", "Bench"} {
		h := builtInHull(t, name)
		r := solve(t, prepare(t, h), State{Held: Hanging})
		if hang := -r.FrontEndMM[1]; hang < 5 || hang > 15 {
			t.Errorf("%s hangs %.1f mm, wanted 5 to 15", name, hang)
		}
		h.Log.BoreMM = h.Shaft.DiameterMM + 3
		stopped := solve(t, prepare(t, h), State{Held: Hanging})
		if !(stopped.LogForceN[1] > 1) || !(stopped.FrontEndMM[1] > r.FrontEndMM[1]) {
			t.Errorf("%s with a close log hangs %.2f mm with %.1f N on the log: the log must stop it",
				name, -stopped.FrontEndMM[1], stopped.LogForceN[1])
		}
	}
}

// One nut of four equal mounts lifts its own corner by 3/4 of its travel, the
// diagonal one sinks by 1/4, and load twists on to the diagonal.
func TestOneNutLiftsItsCornerThreeQuarters(t *testing.T) {
	h := builtInHull(t, "Bench")
	d := prepare(t, h)
	const u = 0.02 // small: rotations are finite
	rest := solve(t, d, State{Held: Hanging})
	r := solve(t, d, State{Held: Hanging, LiftMM: []float64{u, 0, 0, 0}})
	k := h.Mounts[0].StiffnessNPerMM.Along
	for i, rise := range []float64{0.75, 0.25, 0.25, -0.25} {
		foot := d.EngineTravelMM(d.engine.mounts[i].pFM_S)
		within(t, h.Mounts[i].Name+" rises", foot[2]/u, rise, 1e-3)
		load := []float64{0.25, -0.25, -0.25, 0.25}[i] * k * u
		within(t, h.Mounts[i].Name+" gains", r.MountLoadN[i]-rest.MountLoadN[i], load, 1e-2*k*u)
	}
}

// Clamped where it was levered to and let go, an engine on rubber springs back
// a fifth to a half when one end is slid, since rubber stiffer fore and aft
// than athwart resists its turning.
func TestLeveredEngineSpringsBack(t *testing.T) {
	for _, name := range []string{"Eider", "Kittiwake", "Avocet", "Wren"} {
		h := builtInHull(t, name)
		d := prepare(t, h)
		s := foreMoved(h, Centred, 0, 2)
		s.LeverOn = true
		solve(t, d, s)
		on := (d.EngineTravelMM(d.engine.mounts[0].pFM_S)[1] + d.EngineTravelMM(d.engine.mounts[1].pFM_S)[1]) / 2
		s.LeverOn = false
		solve(t, d, s)
		off := d.EngineTravelMM(d.engine.mounts[0].pFM_S)
		within(t, name+" feet under the lever", on, 2, 1e-6)
		if back := 1 - off[1]/2; back < 0.2 || back > 0.5 {
			t.Errorf("%s springs back %.2f of the slide", name, back)
		}
	}
}

// A thrust of 1 kN and a torque of 300 N m move the gap of a boat on rubber by
// 0.4 to 4 thou.
func TestUnderPowerShift(t *testing.T) {
	for _, name := range []string{"Eider", "Kittiwake", "Avocet", "Wren"} {
		d := prepare(t, builtInHull(t, name))
		rest := solve(t, d, State{Held: Seated}).Gap
		power := solve(t, d, State{Held: Seated, ThrustN: 1000, TorqueNMM: 300e3}).Gap
		shift := math.Hypot(power.CosMM-rest.CosMM, power.SinMM-rest.SinMM) / 0.0254
		if shift < 0.4 || shift > 4 {
			t.Errorf("%s: the gap shifts by %.2f thou", name, shift)
		}
	}
}
