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

// At every step the forces on the shaft are in balance: what end, bearings and log
// push sums to its weight, which does not change as it turns. (A stuffing box is a
// spring whose force no result tells, so hulls without one.)
func TestForcesBalanceAtEveryStep(t *testing.T) {
	n := 0
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		h.StuffingBox = nil
		for _, s := range []kinematics.State{{}, tipped(&h)} {
			turn := played(t, &h, s, crooked)
			var first [2]float64
			for i, step := range turn.Steps {
				sum := step.Result.EndForceN
				for _, f := range append(step.Result.BearingForceN, step.Result.LogForceN) {
					sum[0] += f[0]
					sum[1] += f[1]
				}
				if i == 0 {
					first = sum
				}
				if math.Hypot(sum[0]-first[0], sum[1]-first[1]) > 1e-3 || math.Abs(sum[0]) > 1e-3 {
					t.Errorf("%s at %v: %v, at the start %v", name, step.TurnDeg, sum, first)
				}
				n++
			}
		}
	}
	if n < 100 {
		t.Fatalf("only %d steps", n)
	}
}

// After a whole turn everything is as before: turning on by 360 degrees is nothing,
// and the order of the steps, each solved from the one before, leaves no trace.
func TestATurnRepeats(t *testing.T) {
	h := builtin.Hull(t, "Eider")
	once := played(t, &h, tipped(&h), crooked)
	later := crooked
	later.ShaftTurnDeg += 360
	later.FlangeTurnDeg += 360
	again := played(t, &h, tipped(&h), later)
	for i := range once.Steps {
		a, b := &once.Steps[i].Result, &again.Steps[i].Result
		if math.Abs(a.CouplingMomentNMM-b.CouplingMomentNMM) > 1e-3*(1+a.CouplingMomentNMM) {
			t.Errorf("at %v: %v and %v N mm", once.Steps[i].TurnDeg, a.CouplingMomentNMM, b.CouplingMomentNMM)
		}
		for k := range a.BearingForceN {
			if math.Hypot(a.BearingForceN[k][0]-b.BearingForceN[k][0], a.BearingForceN[k][1]-b.BearingForceN[k][1]) > 1e-2 {
				t.Errorf("at %v: bearing %d: %v and %v N", once.Steps[i].TurnDeg, k, a.BearingForceN[k], b.BearingForceN[k])
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

func TestNothingIsBoltedThroughASoftCoupling(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 20
	if _, err := Play(&h, kinematics.State{}, crooked, Settings{}); err == nil {
		t.Error("played all the same")
	}
}
