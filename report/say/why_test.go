package say

// This file holds the steps told to their sum, as rounded.

import (
	"math"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/kinematics/why"
)

func TestStepsToldAddUp(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		held := kinematics.Seated
		if !h.Coupling.HasPilot() {
			held = kinematics.Centred
		}
		for i := range h.Mounts {
			for _, m := range []why.Move{{Mounts: []int{i}, Steps: 2}, {Mounts: []int{i}, Slide: true, Steps: -1}} {
				w, err := why.Of(&h, kinematics.State{Held: held}, m)
				if err != nil {
					t.Fatal(err)
				}
				for _, u := range []Units{{}, {Metric: true, DecimalComma: true}} {
					for _, language := range []string{"en", "de"} {
						sum := 0.0
						steps := Why(words.In(language), u, &h, w)
						for _, s := range steps {
							if s.Adds {
								sum += s.AddMM
							}
							if strings.Contains(s.Text, "<no value>") || strings.HasPrefix(s.Text, "[") {
								t.Error(s.Text)
							}
						}
						last := steps[len(steps)-1]
						if math.Abs(sum-last.AddMM) > 1e-9 {
							t.Errorf("%s, %v: steps %.5f, sum told %.5f mm", name, m, sum, last.AddMM)
						}
						if got := why.AcrossMM(w.Total, WhyHour(w)); math.Abs(got-last.AddMM) > 0.05*MMPerThou+1e-9 {
							t.Errorf("%s, %v: told %.5f, worked out %.5f mm", name, m, last.AddMM, got)
						}
					}
				}
			}
		}
	}
}
