package hulls_test

// Laws of the mirror check: built-in boats are symmetric; what is changed on one
// side alone is told by name with both values, the same whichever side it was.

import (
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
)

func TestMirrorDoubts(t *testing.T) {
	for _, name := range assets.HullNames() {
		h, _ := builtIn(t, name)
		if d := hulls.MirrorDoubts(h); len(d) > 0 {
			t.Errorf("%s: %s", name, lines(d))
		}
		if n := len(hulls.MirroredPairs(&h)); 2*n != len(h.Mounts) {
			t.Errorf("%s: %d pairs of %d mounts", name, n, len(h.Mounts))
		}
	}
	change := map[string]func(*hulls.Mount){
		"at_mm[0]":              func(m *hulls.Mount) { m.AtMM[0] += 25 },
		"at_mm[1]":              func(m *hulls.Mount) { m.AtMM[1] *= 1.1 },
		"at_mm[2]":              func(m *hulls.Mount) { m.AtMM[2] -= 12 },
		"thread":                func(m *hulls.Mount) { m.Thread, m.ThreadPitchMM = "M16x2", 2 },
		"stiffness_n_per_mm.al": func(m *hulls.Mount) { m.StiffnessNPerMM.Along *= 1.2 },
	}
	for key, f := range change {
		for side := range 2 {
			h, _ := builtIn(t, "Kittiwake")
			f(&h.Mounts[side])
			d := hulls.MirrorDoubts(h)
			if len(d) != 1 || !strings.HasPrefix(d[0].Place, "mounts[0]."+key) || !strings.Contains(d[0].Value, `"fore port"`) || !strings.Contains(d[0].Value, `"fore starboard"`) {
				t.Errorf("%s on side %d: %s", key, side, lines(d))
			}
			h.OneSided = true
			if len(hulls.MirrorDoubts(h)) > 0 {
				t.Errorf("%s: a boat said to be one-sided is doubted", key)
			}
		}
	}
	h, _ := builtIn(t, "Kittiwake")
	for i, name := range []string{"A", "B", "C", "D"} { // names that tell nothing
		h.Mounts[i].Name = name
	}
	if n := len(hulls.MirroredPairs(&h)); n != 2 {
		t.Errorf("%d pairs by place", n)
	}
	h.Bearings[0].OffsetMM[0] = 2
	if d := hulls.MirrorDoubts(h); len(d) != 1 {
		t.Errorf("a bearing off the plane: %s", lines(d))
	}
}
