package window

// This file holds the bars of readings to the gap they are drawn on.

import (
	"math"
	"testing"

	"aligner/hulls/visit/builtin"
	"aligner/report/say"
)

// TestBarsLieAtTheGapDrawn: through a dummy and with the faces held far apart, the
// bars of what was read lie at the gap drawn, and it is said what was taken off.
func TestBarsLieAtTheGapDrawn(t *testing.T) {
	for _, name := range []string{"dummy", "far-apart", "crooked-flange", "burr"} {
		w := opened(t, "Kittiwake")
		d := builtin.Visit(t, name)
		w.openVisit(name)
		w.enter(stageGauge)
		gap, e := w.faces.What.Now, w.mind.estimate
		if len(w.faces.What.Marks) == 0 {
			t.Fatalf("%s: no bars", name)
		}
		for i, m := range w.faces.What.Marks {
			if m.Odd || m.Unused {
				continue
			}
			sin, cos := math.Sincos(m.ClockRad)
			drawn := gap.G0MM + gap.CosMM*cos + gap.SinMM*sin
			const loose = 1.2 * say.MMPerThou
			if drawn < m.LeastMM-loose || drawn > m.MostMM+loose {
				t.Errorf("%s: bar %d goes from %.3f to %.3f mm, the gap drawn there is %.3f", name, i, m.LeastMM, m.MostMM, drawn)
			}
		}
		if less := name != "burr" && (name != "crooked-flange" || e.RunOut[0].Untrue || e.RunOut[1].Untrue); w.faces.What.MarksLess != less {
			t.Errorf("%s (%s): told that something was taken off: %v", name, d.Hull.Name, w.faces.What.MarksLess)
		}
	}
}
