package turn

// This file holds the turn to the laws of a shaft.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

// crooked is 4 thou of run-out, as gap.
var crooked = kinematics.RunOut{ShaftMM: 0.05, ShaftLowDeg: 40}

// tipped is the fore pair up by two flats.
func tipped(h *hulls.Hull) kinematics.State {
	s := kinematics.State{LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	fore := math.Inf(-1)
	for _, m := range h.Mounts {
		fore = max(fore, m.AtMM[0])
	}
	for i, m := range h.Mounts {
		if m.AtMM[0] == fore {
			s.LiftMM[i] = 2 * m.LiftPerStepMM()
		}
	}
	return s
}

func played(t *testing.T, h *hulls.Hull, s kinematics.State, fault kinematics.RunOut) *Turn {
	t.Helper()
	turn, err := Play(h, s, fault, Settings{})
	if err != nil {
		t.Fatal(err)
	}
	return turn
}

// weightN is what shaft, coupling half and propeller press down with, across the shaft
// line, out of the water: density, volume and the slope.
func weightN(t *testing.T, h *hulls.Hull) float64 {
	t.Helper()
	m, err := hulls.MaterialOf(h.Shaft.Material, h.Shaft.Condition)
	if err != nil {
		t.Fatal(err)
	}
	d := h.Shaft.DiameterMM
	kg := math.Pi/4*d*d*h.Shaft.LengthMM*m.DensityGPerCM3*1e-6 + h.Coupling.ShaftHalfMassKg + h.Propeller.MassKg
	return kg * 9.80665 * math.Cos(h.ShaftAngleDeg*math.Pi/180)
}

// At every step the forces on the shaft are in balance: what end, bearings and log
// push sums to its weight, worked out apart, and to nothing sideways. (A stuffing box
// is a spring whose force no result tells, so hulls without one.)
func TestForcesBalanceAtEveryStep(t *testing.T) {
	n := 0
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		h.StuffingBox = nil
		for _, s := range []kinematics.State{{}, tipped(&h)} {
			turn := played(t, &h, s, crooked)
			weight := weightN(t, &h)
			for _, step := range turn.Steps {
				sum := step.Result.EndForceN
				for _, f := range append(step.Result.BearingForceN, step.Result.LogForceN) {
					sum[0] += f[0]
					sum[1] += f[1]
				}
				if math.Abs(sum[0]) > 1e-3 || math.Abs(sum[1]-weight) > 1e-3*weight {
					t.Errorf("%s at %v: %v N on the shaft, which weighs %.2f N", name, step.TurnDeg, sum, weight)
				}
				n++
			}
		}
	}
	if n < 100 {
		t.Fatalf("only %d steps", n)
	}
}

// After a whole turn everything is as before: played twice on end, each step solved
// from the one before it, the second turn is the first again.
func TestATurnRepeats(t *testing.T) {
	for _, name := range []string{"Eider", "Avocet", "Wren"} {
		h := builtin.Hull(t, name)
		turn, err := Play(&h, tipped(&h), crooked, Settings{Steps: usualSteps, Turns: 2})
		if err != nil {
			t.Fatal(err)
		}
		if len(turn.Steps) != 2*usualSteps {
			t.Fatalf("%d steps", len(turn.Steps))
		}
		for i := range usualSteps {
			a, b := &turn.Steps[i], &turn.Steps[i+usualSteps]
			if b.TurnDeg-a.TurnDeg != 360 || math.Abs(a.FibreMPa-b.FibreMPa) > 1e-4 {
				t.Errorf("%s at %v and %v: %v and %v MPa", name, a.TurnDeg, b.TurnDeg, a.FibreMPa, b.FibreMPa)
			}
			for k := range a.Result.BearingForceN {
				f, g := a.Result.BearingForceN[k], b.Result.BearingForceN[k]
				if math.Hypot(f[0]-g[0], f[1]-g[1]) > 1e-2 {
					t.Errorf("%s at %v: bearing %d: %v and %v N", name, a.TurnDeg, k, f, g)
				}
			}
		}
	}
}

// An engine out of line loads the bearings, and always the same way; a fibre on the
// shaft is pulled and pressed. A crooked half pulls the bearings round, and the fibre
// feels one stress.
func TestWhatStandsStillAndWhatTurns(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Eider", "Avocet"} {
		h := builtin.Hull(t, name)
		line, half := played(t, &h, tipped(&h), kinematics.RunOut{}), played(t, &h, kinematics.State{}, crooked)
		for b := range h.Bearings {
			if line.SwingN[b] > 1e-3 {
				t.Errorf("%s out of line: bearing %d is pulled %v N to and fro", name, b, line.SwingN[b])
			}
		}
		most := func(list []float64) (m float64) {
			for _, v := range list {
				m = max(m, v)
			}
			return m
		}
		if most(line.SteadyN) < 1 || most(half.SwingN) < 1 {
			t.Errorf("%s: steady %v, swing %v N", name, line.SteadyN, half.SwingN)
		}
		if line.StressMPa < 1 || line.MomentSwingNMM > 1e-3*line.MomentNMM {
			t.Errorf("%s out of line: %v MPa each turn, moment %v strays by %v", name, line.StressMPa, line.MomentNMM, line.MomentSwingNMM)
		}
		// The shaft's own sag bends it at rest; the crooked half adds a bend that
		// turns with it, so what the fibre feels more than at rest hardly changes.
		rest := played(t, &h, kinematics.State{}, kinematics.RunOut{})
		if math.Abs(half.StressMPa-rest.StressMPa) > 0.25*rest.StressMPa+0.3 {
			t.Errorf("%s: a fibre feels %v MPa each turn with a crooked half, %v without", name, half.StressMPa, rest.StressMPa)
		}
	}
}

// Out of line, the fibre's stress is a cosine of the turn: M c / I.
func TestFibreIsTheBendSeenFromTheShaft(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	turn := played(t, &h, tipped(&h), kinematics.RunOut{})
	d := h.Shaft.DiameterMM
	if want := turn.MomentNMM * 32 / (math.Pi * d * d * d); math.Abs(turn.StressMPa-want) > 0.01*want {
		t.Errorf("%v MPa, want %v", turn.StressMPa, want)
	}
}

// Mounts and bearings together carry the same weight at every step, and what turns
// with the shaft lets the mounts feel it; an engine out of line does not. (In-line, so
// that adjusters and shaft stand at one angle; no stuffing box.)
func TestMountsFeelWhatTurns(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Bench"} {
		h := builtin.Hull(t, name)
		h.StuffingBox = nil
		line, half := played(t, &h, tipped(&h), kinematics.RunOut{}), played(t, &h, kinematics.State{}, crooked)
		for m := range h.Mounts {
			if line.MountSwingN[m] > 1e-3 || half.MountSwingN[m] < 1 {
				t.Errorf("%s: mount %d goes %v N to and fro out of line, %v with a crooked half", name, m, line.MountSwingN[m], half.MountSwingN[m])
			}
			if line.MountMeanN[m] == line.MountLinedN[m] {
				t.Errorf("%s out of line: mount %d carries what it did", name, m)
			}
		}
		var whole float64
		for i, s := range half.Steps {
			sum := s.Result.LogForceN[1]
			for _, f := range s.Result.BearingForceN {
				sum += f[1]
			}
			for _, load := range s.Result.MountLoadN {
				sum += load
			}
			if i == 0 {
				whole = sum
			}
			if math.Abs(sum-whole) > 0.5 {
				t.Errorf("%s at %v: %v N in all, %v at the start", name, s.TurnDeg, sum, whole)
			}
		}
	}
}

func TestNothingIsBoltedThroughASoftCoupling(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 20
	if _, err := Play(&h, kinematics.State{}, crooked, Settings{}); err == nil {
		t.Error("played all the same")
	}
}
