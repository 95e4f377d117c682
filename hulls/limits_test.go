package hulls_test

// Limits and judgement are one: a number just inside its limits is not refused for
// itself, one just outside is.

import (
	"strings"
	"testing"

	"aligner/hulls"
)

func TestLimitsAreTheJudgements(t *testing.T) {
	h, _ := builtIn(t, "Eider")
	limits := hulls.Limits(h)
	if len(limits) < 75 {
		t.Errorf("only %d limits", len(limits))
	}
	for _, c := range []struct {
		place string
		set   func(*hulls.Hull, float64)
	}{
		{"engine.mass_kg", func(h *hulls.Hull, v float64) { h.Engine.MassKg = v }},
		{"mounts[1].at_mm[2]", func(h *hulls.Hull, v float64) { h.Mounts[1].AtMM[2] = v }},
		{"mounts[0].nut_range_mm[0]", func(h *hulls.Hull, v float64) { h.Mounts[0].NutRangeMM[0] = v }},
		{"log.bore_mm", func(h *hulls.Hull, v float64) { h.Log.BoreMM = v }},
		{"log.at_mm", func(h *hulls.Hull, v float64) { h.Log.AtMM = v }},
		{"bearings[1].at_mm", func(h *hulls.Hull, v float64) { h.Bearings[1].AtMM = v }},
		{"propeller.at_mm", func(h *hulls.Hull, v float64) { h.Propeller.AtMM = v }},
		{"propeller.diameter_mm", func(h *hulls.Hull, v float64) { h.Propeller.DiameterMM = v }},
		{"stuffing_box.at_mm", func(h *hulls.Hull, v float64) { h.StuffingBox.AtMM = v }},
		{"coupling.pilot_diameter_mm", func(h *hulls.Hull, v float64) { h.Coupling.PilotDiameterMM = v }},
		{"shaft.diameter_mm", func(h *hulls.Hull, v float64) { h.Shaft.DiameterMM = v }},
	} {
		l, ok := limits[c.place]
		if !ok {
			t.Errorf("%s has no limit", c.place)
			continue
		}
		refusedFor := func(v float64) bool {
			other := h.Clone()
			c.set(&other, v)
			for _, f := range hulls.Validate(other).Refusals {
				if strings.HasPrefix(c.place, f.Place) {
					return true
				}
			}
			return false
		}
		step := 0.001 * (l.Most - l.Least)
		for _, v := range []float64{l.Least + step, l.Most - step} {
			if refusedFor(v) {
				t.Errorf("%s: %g is within %g to %g and is refused", c.place, v, l.Least, l.Most)
			}
		}
		for _, v := range []float64{l.Least - step, l.Most + step} {
			if !refusedFor(v) {
				t.Errorf("%s: %g is outside %g to %g and is taken", c.place, v, l.Least, l.Most)
			}
		}
		if l.Ever[0] > l.Least || l.Ever[1] < l.Most {
			t.Errorf("%s: ever %v, now %g to %g", c.place, l.Ever, l.Least, l.Most)
		}
	}
}
