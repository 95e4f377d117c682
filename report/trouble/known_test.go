package trouble

// This file holds what a visit answers by itself.

import (
	"testing"

	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

// strips are a bearing's room at both ends, all of it on one side.
func strips(room float64) *visit.Gauging {
	g := &visit.Gauging{Held: "seated"}
	for _, end := range []string{"fore", "aft"} {
		for deg, mm := range map[float64]float64{0: room, 180: 0.02, 90: room / 2, 270: room / 2} {
			g.Readings = append(g.Readings, visit.Clearance{Where: "strut", End: end, ClockDeg: deg,
				Goes: visit.Length{Value: mm - 0.01, Unit: visit.InMM}, Stops: visit.Length{Value: mm + 0.01, Unit: visit.InMM}})
		}
	}
	return g
}

func TestStripsOfTheVisitAnswer(t *testing.T) {
	d := visit.New("Kittiwake", builtin.Hull(t, "Kittiwake"))
	if told := Told(&d, nil); told[StripBearing] != "" {
		t.Errorf("nothing tried, and told %s", told[StripBearing])
	}
	for _, c := range []struct {
		roomMM float64
		want   Answer
	}{{0.16, Good}, {1.2, Bad}} {
		d.Visit.Events = []visit.Event{{Gauging: strips(c.roomMM)}}
		told := Told(&d, nil)
		if told[StripBearing] != c.want {
			t.Errorf("room %g mm: %q, want %q", c.roomMM, told[StripBearing], c.want)
		}
		worn := false
		for _, r := range Weigh(Knocks, told).Causes {
			worn = worn || r.Cause == BearingLoose && r.Tested
		}
		if worn != (c.want == Bad) {
			t.Errorf("room %g mm: worn bearing tested %v", c.roomMM, worn)
		}
	}
}
