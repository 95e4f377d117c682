package trouble

// This file holds what is told of shake to the mechanics.

import (
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls/visit/builtin"
	"aligner/report/say"
)

func TestShake(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		s, err := ShakeOf(&h, true)
		if err != nil {
			t.Fatal(err)
		}
		t.Logf("%s: %.0f N mm, %.1f MPa; %s: steady %.0f N, swing %.0f N", name, s.MomentNMM, s.StressMPa, s.Bearing, s.SteadyN, s.SwingN)
		// Stress of a steel shaft a few hundredths of a mm out is tens of MPa at most,
		// far from what breaks it; and what is out of line does pull somewhere.
		if s.MomentNMM <= 0 || s.StressMPa <= 0 || s.StressMPa > 100 || s.Bearing == "" || s.SwingN <= 0 {
			t.Errorf("%s: %+v", name, s)
		}
		for _, language := range []string{"en", "de"} {
			for _, line := range s.Text(words.In(language), say.Units{}) {
				if strings.Contains(line, "<no value>") || strings.HasPrefix(line, "[") {
					t.Error(line)
				}
			}
		}
	}
}
