package say

// How much a number matters is told with its step, its change and one verdict.

import (
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/kinematics/sensitivity"
)

func TestMatter(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	all, err := sensitivity.Effects(&h, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]string{
		"/name":                              "It does not change what nuts and slides do.",
		"/mounts/0/at_mm/0":                  "10 mm more here changes what a flat does at the gap by less than 0.01 thou: a tape is good enough.",
		"/mounts/0/thread":                   "What a nut does follows its pitch: worth measuring as well as you can.",
		"/mounts/2/stiffness_n_per_mm/along": "42 N/mm more here changes what a flat does at the gap by up to 0.02 thou: worth measuring as well as you can.",
		"/engine/mass_kg":                    "10 kg more here changes what a flat does at the gap by less than 0.01 thou: a rough figure is good enough.",
	}
	for i := range all {
		e := &all[i]
		for _, tag := range words.Languages() {
			line := Matter(words.In(tag), Units{}, false, e, e.Field.Get(&h))
			if strings.Contains(line, "[") || strings.Contains(line, "{") || strings.Contains(line, "no value") {
				t.Errorf("%s: %s", e.Field.Pointer, line)
			}
		}
		line := Matter(words.In("en"), Units{}, false, e, e.Field.Get(&h))
		if w, ok := want[e.Field.Pointer]; ok && line != w {
			t.Errorf("%s:\n got %s\nwant %s", e.Field.Pointer, line, w)
		}
	}
}
