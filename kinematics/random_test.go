package kinematics

// This file makes hulls and states at random, valid by the hull file's own
// rules, and asks the laws of all of them.

import (
	"fmt"
	"math"
	"math/rand/v2"
	"runtime"
	"sync"
	"testing"

	"aligner/hulls"
	"aligner/kinematics/shaftline"
)

// between is uniform.
func between(r *rand.Rand, lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }

// chance is true with probability p.
func chance(r *rand.Rand, p float64) bool { return r.Float64() < p }

// randomHull is a hull such as a careless yard might own.
func randomHull(r *rand.Rand) hulls.Hull {
	d := between(r, 19, 70)
	face := between(r, 3, 5) * d
	h := hulls.Hull{
		Name: "Random", Layout: hulls.InLine, ShaftAngleDeg: between(r, 0, 18),
		Engine: hulls.Engine{MassKg: between(r, 80, 900), DownAngleDeg: 0},
		Coupling: hulls.Coupling{OuterDiameterMM: face, PilotDiameterMM: 0.6 * face,
			ShaftHalfMassKg: between(r, 0.3, 3) * d / 25, ShaftHalfLengthMM: between(r, 1.5, 3) * d,
			Bolts: hulls.Bolts{Count: 4, Thread: "3/8-24 UNF", Grade: "SAE J429 grade 5"}},
		Shaft: hulls.Shaft{DiameterMM: d, Material: "UNS S20910"},
	}
	fore, aft := between(r, 300, 1500), between(r, 50, 250)
	if chance(r, 0.5) {
		h.Layout, h.Engine.DownAngleDeg = hulls.VDrive, between(r, 5, 15)
		fore, aft = between(r, 20, 300), between(r, -900, -100)
	}
	h.Engine.CentreOfMassMM = [3]float64{aft + (fore-aft)*between(r, 0.3, 0.7), between(r, -20, 20), between(r, 0, 300)}
	solid := chance(r, 0.2)
	for i, x := range []float64{fore, aft} {
		for j, y := range []float64{1, -1} {
			m := hulls.Mount{Name: fmt.Sprintf("mount %d %d", i, j), Kind: hulls.Rubber, Reach: hulls.Open,
				AtMM:   [3]float64{x + between(r, -20, 20), y * between(r, 150, 400), between(r, -60, 160)},
				Thread: "5/8-18 UNF", ThreadPitchMM: 1.41111, NutRangeMM: [2]float64{-8, 8}, SlideRangeMM: [2]float64{-6, 6}}
			k := h.Engine.MassKg * 9.8 / 4 / between(r, 2, 6)
			if solid {
				m.Kind, m.Thread, m.ThreadPitchMM, m.ShimStepMM = hulls.Solid, "", 0, 0.1
				k *= 300
			}
			m.StiffnessNPerMM = hulls.Stiffness{Along: k, ForeAft: k * between(r, 1, 4), Athwart: k * between(r, 0.4, 1.5)}
			h.Mounts = append(h.Mounts, m)
		}
	}
	randomShaft(r, &h)
	return h
}

// randomShaft gives the hull bearings, a log, a stuffing box and a propeller.
func randomShaft(r *rand.Rand, h *hulls.Hull) {
	d := h.Shaft.DiameterMM
	offset := func() [2]float64 {
		if chance(r, 0.5) {
			return [2]float64{}
		}
		return [2]float64{between(r, -0.5, 0.5), between(r, -0.5, 0.5)}
	}
	x := 0.0
	for i := range 1 + r.IntN(2) {
		x -= between(r, 18, 60) * d
		h.Bearings = append(h.Bearings, hulls.Bearing{Name: fmt.Sprintf("bearing %d", i), AtMM: x,
			LengthMM: between(r, 2, 5) * d, RadialStiffnessNPerMM: math.Exp(between(r, math.Log(1e3), math.Log(1e5))),
			DiametralClearanceMM: between(r, 0, 0.5), OffsetMM: offset()})
	}
	h.Propeller = hulls.Propeller{MassKg: between(r, 1, 40) * d * d / 2500, AtMM: x - between(r, 4, 8)*d,
		DiameterMM: 14 * d, DensityKgM3: 7600}
	h.Shaft.LengthMM = -h.Propeller.AtMM + between(r, 1, 4)*d
	h.Log = hulls.Log{AtMM: h.Bearings[0].AtMM * between(r, 0.3, 1), LengthMM: between(r, 3, 12) * d,
		BoreMM: d * between(r, 1.05, 1.8), OffsetMM: offset()}
	if chance(r, 0.5) {
		h.StuffingBox = &hulls.StuffingBox{AtMM: h.Log.AtMM * between(r, 0.4, 0.9), MassKg: between(r, 0.5, 5),
			RadialStiffnessNPerMM: between(r, 0, 60), OffsetMM: offset()}
	}
}

// randomState is anything that may be done to it.
func randomState(r *rand.Rand, h *hulls.Hull) State {
	s := State{Held: HeldWays[r.IntN(len(HeldWays))], Afloat: chance(r, 0.5),
		LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	if chance(r, 0.9) {
		for i := range h.Mounts {
			s.LiftMM[i] = between(r, -6, 6)
			s.SlideMM[i] = between(r, -4, 4)
		}
	}
	if chance(r, 0.2) {
		s.LeverOn = true // the ends of the engine, or one of them
		s.SlideMM[1], s.SlideMM[3] = s.SlideMM[0], s.SlideMM[2]
		if chance(r, 0.5) {
			s.SlideMM[2], s.SlideMM[3] = 0, 0
		}
	}
	if chance(r, 0.3) {
		s.ThrustN, s.TorqueNMM = between(r, -1500, 3000), between(r, -4e5, 4e5)
	}
	if chance(r, 0.3) {
		s.RunOut = RunOut{ShaftMM: between(r, 0, 0.1), ShaftTurnDeg: between(r, 0, 360), FlangeMM: between(r, 0, 0.1)}
	}
	if s.Held == Centred && chance(r, 0.3) {
		s.PullN = between(r, 1, 200)
	}
	return s
}

func refused(h hulls.Hull) bool { return len(hulls.Validate(h).Refusals) > 0 }

// Every answer converges or says it did not; how many did not is bounded, so
// that a solver which gives up cannot pass.
func TestRandomHullsConvergeOrSayTheyDidNot(t *testing.T) {
	total := 100_000
	if testing.Short() {
		total = 5_000
	}
	workers := runtime.GOMAXPROCS(0)
	var mu sync.Mutex
	var wg sync.WaitGroup
	valid, failed, most := 0, 0, 0
	for w := range workers {
		wg.Go(func() {
			for i := w; i < total; i += workers {
				r := rand.New(rand.NewPCG(uint64(i), 7))
				h := randomHull(r)
				if refused(h) {
					continue
				}
				s := randomState(r, &h)
				d, err := Prepare(h)
				var got Result
				if err == nil {
					err = d.Solve(&s, &got)
				}
				mu.Lock()
				valid++
				most = max(most, got.Status.Iterations)
				if err != nil {
					failed++
					if failed <= 10 {
						t.Logf("hull %d: %v", i, err)
					}
				} else if got.Status.Status != shaftline.Converged || !(got.Status.ResidualN < 1e-6) {
					t.Errorf("hull %d: no error, yet %v", i, got.Status)
				}
				mu.Unlock()
			}
		})
	}
	wg.Wait()
	t.Logf("%d of %d random hulls valid, %d did not converge, at most %d iterations", valid, total, failed, most)
	if valid < total/2 {
		t.Errorf("only %d of %d random hulls are valid", valid, total)
	}
	if failed*10_000 > valid {
		t.Errorf("%d of %d did not converge", failed, valid)
	}
}
