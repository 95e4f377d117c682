package plan

// This file holds what is particular to the worked visits that are not the usual
// job: gauged through a dummy.

import (
	"math"
	"testing"

	"aligner/hulls/visit"
)

// TestDemoDummyIsExpected: what a step says will be gauged is what is gauged
// through the dummy.
func TestDemoDummyIsExpected(t *testing.T) {
	d := demoNamed(t, "dummy")
	v := d.upTo(2)
	p := d.plan(t, v, d.estimate(t, v))
	last := p.Steps[len(p.Steps)-1]
	for _, r := range d.doc.Visit.Events[4].Gauging.Readings { // after the move, at the marks
		l := r.(visit.Leaf)
		least, most := visit.WithinMM(l.Goes, l.Stops)
		if gap := last.GapAtMM(l.ClockDeg); gap < least-1.5*thouMM || gap > most+1.5*thouMM {
			t.Errorf("at %g: expected %.2f thou, gauged %.2f to %.2f", l.ClockDeg, gap/thouMM, least/thouMM, most/thouMM)
		}
	}
	if e := d.estimate(t, v); math.Abs(e.DummyMM[1]-1.5*thouMM) > 1e-9 || math.Abs(e.DummyMM[0]) > 1e-9 {
		t.Errorf("the dummy adds %v", e.DummyMM)
	}
}
