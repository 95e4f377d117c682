package why

// This file holds the parts to the whole model, and the line to the engine.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

const thouMM = 0.0254

func heldOf(h *hulls.Hull) kinematics.Held {
	if h.Coupling.HasPilot() {
		return kinematics.Seated
	}
	return kinematics.Centred
}

// each calls back with every nut and slide of every built-in boat.
func each(t *testing.T, do func(h *hulls.Hull, m Move, w *Why)) {
	t.Helper()
	n := 0
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		for i := range h.Mounts {
			for _, m := range []Move{{Mounts: []int{i}, Steps: 1}, {Mounts: []int{i}, Steps: -4}, {Mounts: []int{i}, Slide: true, Steps: 1}} {
				w, err := Of(&h, kinematics.State{Held: heldOf(&h), Afloat: i%2 == 0}, m)
				if err != nil {
					t.Fatal(err)
				}
				do(&h, m, w)
				n++
			}
		}
	}
	if n < 50 {
		t.Fatalf("only %d moves", n)
	}
}

// The parts sum to what the model predicts, worked out by itself, far within 0.05
// thou.
func TestPartsSumToThePrediction(t *testing.T) {
	each(t, func(h *hulls.Hull, m Move, w *Why) {
		d, err := kinematics.Prepare(*h)
		if err != nil {
			t.Fatal(err)
		}
		s := kinematics.State{Held: heldOf(h), Afloat: m.Mounts[0]%2 == 0, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
		var gap [2][2]float64
		for k := range 2 {
			var r kinematics.Result
			if err := d.Solve(&s, &r); err != nil {
				t.Fatal(err)
			}
			gap[k] = [2]float64{r.Gap.CosMM, r.Gap.SinMM}
			if m.Slide {
				s.SlideMM[m.Mounts[0]] = m.Steps
			} else {
				s.LiftMM[m.Mounts[0]] = m.Steps * h.Mounts[m.Mounts[0]].LiftPerStepMM()
			}
		}
		for i := range 2 {
			sum := w.Tilt[i] + w.Stick[i] + w.Bend[i] + w.Rest[i]
			if off := sum - (gap[1][i] - gap[0][i]); math.Abs(off) > 0.01*thouMM {
				t.Errorf("%s, %v: parts %.5f, predicted %.5f mm", h.Name, m, sum, gap[1][i]-gap[0][i])
			}
			if math.Abs(w.Rest[i]) > 0.02*math.Abs(w.Total[i])+0.05*thouMM {
				t.Errorf("%s, %v: %.5f of %.5f mm is left over", h.Name, m, w.Rest[i], w.Total[i])
			}
		}
	})
}

// A point of the line does not move but along it.
func TestTheLineStandsStill(t *testing.T) {
	each(t, func(h *hulls.Hull, m Move, w *Why) {
		turn := vec(w.Line.Along).Mul(w.Line.Turned)
		went := vec(w.After.TranslationMM).Sub(vec(w.Before.TranslationMM))
		for _, far := range []float64{-500, 0, 700} {
			p := vec(w.Line.At).Add(vec(w.Line.Along).Mul(far))
			moved := went.Add(turn.Cross(p))
			if across := moved.Cross(vec(w.Line.Along)).Len(); across > 1e-9*(1+went.Len()) {
				t.Errorf("%s, %v: the line moves %.3g mm sideways", h.Name, m, across)
			}
		}
	})
}

// One nut of four equal mounts lifts its corner by three quarters of its travel, the
// one diagonally opposite sinks by a quarter, and the other two rise by a quarter:
// the lever rule of four equal springs. (Bench has round numbers and equal mounts.)
func TestOneNutOfFour(t *testing.T) {
	h := builtin.Hull(t, "Bench")
	for i, m := range h.Mounts {
		w, err := Of(&h, kinematics.State{Held: kinematics.Hanging}, Move{Mounts: []int{i}, Steps: 1})
		if err != nil {
			t.Fatal(err)
		}
		for k, other := range h.Mounts {
			want := 0.25
			switch {
			case k == i:
				want = 0.75
			case other.AtMM[0] != m.AtMM[0] && other.AtMM[1] != m.AtMM[1]:
				want = -0.25
			}
			if got := w.RiseMM[k] / w.LiftMM; math.Abs(got-want) > 0.02 {
				t.Errorf("%s up: %s rises by %.3f of it, want %.2f", m.Name, other.Name, got, want)
			}
		}
	}
}

// Raising the fore pair closes the top by tilt alone, on every boat; what the
// coupling's going up or down does decides the whole.
func TestForePairTipsTheTopShut(t *testing.T) {
	up := map[hulls.Layout]bool{}
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		fore := math.Inf(-1)
		for _, m := range h.Mounts {
			fore = max(fore, m.AtMM[0])
		}
		var pair []int
		for i, m := range h.Mounts {
			if m.AtMM[0] == fore {
				pair = append(pair, i)
			}
		}
		w, err := Of(&h, kinematics.State{Held: heldOf(&h)}, Move{Mounts: pair, Steps: 1})
		if err != nil {
			t.Fatal(err)
		}
		if AcrossMM(w.Tilt, 12) >= 0 {
			t.Errorf("%s: the fore pair up tips the top open by %.4f mm", name, AcrossMM(w.Tilt, 12))
		}
		up[h.Layout] = w.FaceMM[1] > 0
	}
	if up[hulls.InLine] || !up[hulls.VDrive] {
		t.Errorf("the fore pair up lifts the coupling: %v", up)
	}
}

func TestTable(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		rows, err := Table(&h, heldOf(&h), false)
		if err != nil {
			t.Fatal(err)
		}
		if len(rows) < len(h.Mounts)+2 {
			t.Errorf("%s: %d rows", name, len(rows))
		}
		for _, r := range rows {
			w, err := Of(&h, kinematics.State{Held: heldOf(&h)}, r.Move)
			if err != nil {
				t.Fatal(err)
			}
			for i := range 2 {
				if math.Abs(r.Change[i]-w.Total[i]) > 0.05*math.Hypot(w.Total[0], w.Total[1])+0.05*thouMM {
					t.Errorf("%s, %v: table %.4f, move %.4f mm", name, r.Move, r.Change[i], w.Total[i])
				}
			}
		}
	}
}
