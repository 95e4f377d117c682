package sensitivity

// Laws: effects are those of differences taken by hand through the model; what is
// only told has none; port and starboard matter alike; a foot-long tape measure is
// not asked to be better than it has to be.

import (
	"math"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

func heldOf(h *hulls.Hull) kinematics.Held {
	if h.Coupling.HasPilot() {
		return kinematics.Seated
	}
	return kinematics.Centred
}

func find(t *testing.T, all []Effect, pointer string) Effect {
	t.Helper()
	for _, e := range all {
		if e.Field.Pointer == pointer {
			return e
		}
	}
	t.Fatalf("no %s", pointer)
	return Effect{}
}

// oneFlat is what a flat of one nut does, by the model alone: up a flat less down a
// flat, halved.
func oneFlat(t *testing.T, h hulls.Hull, mount int) [2]float64 {
	t.Helper()
	line, err := kinematics.Prepare(h)
	if err != nil {
		t.Fatal(err)
	}
	var ab [2]float64
	for _, flats := range []float64{1, -1} {
		s := kinematics.State{Held: heldOf(&h), LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
		s.LiftMM[mount] = flats * h.Mounts[mount].LiftPerStepMM()
		var r kinematics.Result
		if err := line.Solve(&s, &r); err != nil {
			t.Fatal(err)
		}
		ab[0] += flats * r.Gap.CosMM / 2
		ab[1] += flats * r.Gap.SinMM / 2
	}
	return ab
}

func TestMatchesDifferencesByHand(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Eider", "Avocet", "Wren"} {
		h := builtin.Hull(t, name)
		all, err := Effects(&h, heldOf(&h), false)
		if err != nil {
			t.Fatal(err)
		}
		for _, pointer := range []string{"/mounts/0/at_mm/0", "/mounts/3/at_mm/1", "/mounts/1/stiffness_n_per_mm/along", "/engine/mass_kg",
			"/bearings/0/at_mm", "/coupling/outer_diameter_mm", "/shaft/diameter_mm"} {
			e := find(t, all, pointer)
			step := e.Field.CarePlus(&h) / 2
			want := 0.0
			for mount := range h.Mounts {
				up, down := h.Clone(), h.Clone()
				e.Field.Shift(&up, step)
				e.Field.Shift(&down, -step)
				a, b := oneFlat(t, up, mount), oneFlat(t, down, mount)
				want = max(want, math.Hypot(a[0]-b[0], a[1]-b[1])/(2*step))
			}
			if d := math.Abs(e.NutMMPerUnit - want); d > 0.1*want+1e-8 {
				t.Errorf("%s %s: %.3g mm a unit, by hand %.3g", name, pointer, e.NutMMPerUnit, want)
			}
		}
	}
}

func TestWhatHasNoEffect(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		all, err := Effects(&h, heldOf(&h), false)
		if err != nil {
			t.Fatal(err)
		}
		if len(all) != len(fields.List(&h)) {
			t.Errorf("%s: %d effects of %d fields", name, len(all), len(fields.List(&h)))
		}
		told := 0
		for i := range all {
			e := &all[i]
			none := !e.Field.Kind.IsNumber() && e.Field.Key != "mount_thread" || strings.Contains(e.Field.Pointer, "_range_mm") ||
				e.Field.Key == "pilot_diameter" || e.Field.Key == "bolt_count"
			if none && (e.NutMMPerUnit != 0 || e.SlideMMPerUnit != 0 || e.Verdict() != Nothing) {
				t.Errorf("%s: %s is told to matter: %+v", name, e.Field.Pointer, e)
			}
			if e.Verdict() != Nothing {
				told++
			}
			if math.IsNaN(e.Care) || math.IsNaN(e.Now) || math.IsInf(e.Now, 0) {
				t.Errorf("%s: %s: %+v", name, e.Field.Pointer, e)
			}
		}
		if told < 20 {
			t.Errorf("%s: only %d fields matter", name, told)
		}
		if r := Ranked(all); r[0].Now < r[1].Now || r[1].Now < r[len(r)-1].Now {
			t.Errorf("%s: not in order", name)
		}
	}
}

func TestKnownCases(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	all, err := Effects(&h, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	// The gap is counted at the rim: as the diameter, so what a flat does.
	flat := 0.0
	for mount := range h.Mounts {
		ab := oneFlat(t, h, mount)
		flat = max(flat, math.Hypot(ab[0], ab[1]))
	}
	e := find(t, all, "/coupling/outer_diameter_mm")
	if want := flat / h.Coupling.OuterDiameterMM; math.Abs(e.NutMMPerUnit-want) > 0.05*want {
		t.Errorf("the face's diameter: %.3g a mm, want %.3g", e.NutMMPerUnit, want)
	}
	// A flat is a sixth of the pitch.
	th := find(t, all, "/mounts/0/thread")
	fore := oneFlat(t, h, 0)
	if want := math.Hypot(fore[0], fore[1]) / h.Mounts[0].ThreadPitchMM; math.Abs(th.NutMMPerUnit-want) > 0.01*want {
		t.Errorf("the thread: %.3g a mm of pitch, want %.3g", th.NutMMPerUnit, want)
	}
	if th.Verdict() != Decides {
		t.Errorf("the thread is told as %s", th.Verdict())
	}
	// Port and starboard of a symmetric boat matter alike.
	for k := range 3 {
		p, s := find(t, all, "/mounts/0/at_mm/"+string(rune('0'+k))), find(t, all, "/mounts/1/at_mm/"+string(rune('0'+k)))
		if math.Abs(p.NutMMPerUnit-s.NutMMPerUnit) > 0.02*p.NutMMPerUnit+1e-7 {
			t.Errorf("axis %d: port %.3g, starboard %.3g", k, p.NutMMPerUnit, s.NutMMPerUnit)
		}
	}
}

func BenchmarkEffects(b *testing.B) {
	h := builtin.Hull(b, "Eider")
	for b.Loop() {
		if _, err := Effects(&h, kinematics.Seated, false); err != nil {
			b.Fatal(err)
		}
	}
}
