package kinematics

// This file holds a soft coupling to its limits and to its own spring.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
)

// crookedBy puts an engine out of line upward and sideways.
func crookedBy(h *hulls.Hull, held Held) State {
	s := State{Held: held, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	s.LiftMM[0], s.LiftMM[1], s.SlideMM[0] = 0.6, 0.6, 0.3
	return s
}

// withSoft is a hull with a soft coupling of a stiffness, N m per degree.
func withSoft(h hulls.Hull, k float64) hulls.Hull {
	h.Coupling.Soft = hulls.SoftCoupling{ThicknessMM: 20, BendingStiffnessNMPerDeg: k}
	return h
}

func pilotHulls(t *testing.T) []hulls.Hull {
	t.Helper()
	var all []hulls.Hull
	for _, name := range assets.HullNames() {
		if h := builtin.Hull(t, name); h.Coupling.HasPilot() {
			all = append(all, h)
		}
	}
	return all
}

// Between metal and metal is the bolted coupling, and hardly any stiffness is the
// seated shaft.
func TestTheLimitsOfASoftCoupling(t *testing.T) {
	for _, h := range pilotHulls(t) {
		bolted := solve(t, prepare(t, h), crookedBy(&h, Bolted))
		seated := solve(t, prepare(t, h), crookedBy(&h, Seated))
		stiff := solve(t, prepare(t, withSoft(h, 1e6)), crookedBy(&h, Bolted))
		limp := solve(t, prepare(t, withSoft(h, 0.01)), crookedBy(&h, Bolted))
		if off := math.Abs(stiff.CouplingMomentNMM/bolted.CouplingMomentNMM - 1); off > 6e-3 {
			t.Errorf("%s: hard as metal it carries %.0f N mm, bolted %.0f", h.Name, stiff.CouplingMomentNMM, bolted.CouplingMomentNMM)
		}
		if limp.CouplingMomentNMM > 5e-3*bolted.CouplingMomentNMM {
			t.Errorf("%s: limp it carries %.0f N mm of %.0f", h.Name, limp.CouplingMomentNMM, bolted.CouplingMomentNMM)
		}
		for i := range 2 {
			if off := math.Abs(limp.FrontEndMM[i] - seated.FrontEndMM[i]); off > 6e-3 {
				t.Errorf("%s: limp the shaft's end is %.4f mm from where it is seated", h.Name, off)
			}
			if off := math.Abs(stiff.FrontEndMM[i] - bolted.FrontEndMM[i]); off > 2e-3 {
				t.Errorf("%s: hard as metal the shaft's end is %.4f mm from where it is bolted", h.Name, off)
			}
		}
	}
}

// The moment is the spring's: its stiffness times what the faces are turned from one
// another, as found from the engine's pose and the shaft's slope alone.
func TestTheSpringOfASoftCoupling(t *testing.T) {
	for _, h := range pilotHulls(t) {
		before := 0.0
		for _, k := range []float64{1, 10, 100, 1000} {
			r := solve(t, prepare(t, withSoft(h, k)), crookedBy(&h, Bolted))
			perRad := k * 1000 * 180 / math.Pi
			want := [2]float64{perRad * (r.RotationRad[2] - r.FrontEndSlope[0]), perRad * (-r.RotationRad[1] - r.FrontEndSlope[1])}
			for i := range want {
				if off := math.Abs(r.CouplingBendNMM[i] - want[i]); off > 1e-3*r.CouplingMomentNMM+1 {
					t.Errorf("%s at %g N m per degree: %.1f N mm in plane %d, the spring gives %.1f", h.Name, k, r.CouplingBendNMM[i], i, want[i])
				}
			}
			if r.CouplingMomentNMM <= before {
				t.Errorf("%s: harder, it carries less: %.0f after %.0f N mm", h.Name, r.CouplingMomentNMM, before)
			}
			before = r.CouplingMomentNMM
		}
	}
}

// Springs in series: the soft coupling's compliance adds to that of shaft and engine,
// so 1/moment grows by the same for each halving of it (Castigliano's theorem; any
// text on strength of materials). Engine and shaft stay in contact as they are, or
// it would not be a straight line.
func TestSpringsInSeries(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	up := State{Held: Bolted, LiftMM: []float64{0.6, 0.6, 0, 0}}
	inverse := func(k float64) float64 {
		r := solve(t, prepare(t, withSoft(h, k)), up)
		return 1 / r.CouplingBendNMM[1]
	}
	// Compliances 1, 2 and 3 times 1/300 degree per N m.
	a, b, c := inverse(300), inverse(150), inverse(100)
	if off := math.Abs((c-b)/(b-a) - 1); off > 0.02 {
		t.Errorf("steps of 1/moment: %g and %g", b-a, c-b)
	}
}

func TestBoltedThroughASoftCouplingOfUnknownStiffnessIsRefused(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 20
	var r Result
	if err := prepare(t, h).Solve(&State{Held: Bolted}, &r); err == nil {
		t.Error("bolted all the same")
	}
}
