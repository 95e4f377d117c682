package kinematics

// This file tests the lift that centres a shaft, wherever the hook takes it.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/hulls"
)

func TestCentringFromAnyHook(t *testing.T) {
	for _, name := range assets.HullNames() {
		data, _ := assets.Hull(name)
		h, err := hulls.Parse(data, name)
		if err != nil {
			t.Fatal(err)
		}
		d, err := Prepare(h)
		if err != nil {
			t.Fatal(err)
		}
		for _, afloat := range []bool{false, true} {
			usual, err := d.Centring(afloat)
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			same, err := d.CentringAt(afloat, -h.Coupling.ShaftHalfLengthMM/2)
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			if math.Abs(same.HookN-usual.HookN) > 1e-6*usual.HookN || math.Abs(same.GapPerHeight-usual.GapPerHeight) > 1e-6 {
				t.Errorf("%s: %+v at the usual place, %+v there by name", name, usual, same)
			}
			// Wherever it is taken, the end comes to the middle; taken nearer to its
			// bearings a shaft needs a greater pull.
			aft, err := d.CentringAt(afloat, -h.Coupling.ShaftHalfLengthMM-100)
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			if math.Abs(aft.HeightMM-d.MiddleMM()[1]) > 1e-4 || math.Abs(usual.HeightMM-d.MiddleMM()[1]) > 1e-4 {
				t.Errorf("%s: lifted to %v and %v, wanted %v", name, usual.HeightMM, aft.HeightMM, d.MiddleMM()[1])
			}
			if aft.HookN <= usual.HookN {
				t.Errorf("%s: %.1f N at the coupling, %.1f N further aft", name, usual.HookN, aft.HookN)
			}
		}
		if _, err := d.CentringAt(false, 10); err == nil {
			t.Errorf("%s: a hook ahead of the face is taken", name)
		}
	}
}
