package plan

// What a boat answered in a visit stands in her hull file afterwards, and the next
// visit begins with it: its plan is surer than without.

import (
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics/response"
)

func TestAnsweredOfWorkedVisits(t *testing.T) {
	answers := 0
	for _, name := range assets.VisitNames() {
		d := builtin.Visit(t, name)
		all, err := Answered(&d, "2026-05-14")
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		answers += len(all)
		if len(all) == 0 {
			continue
		}
		h := d.Hull.Clone()
		h.MeasuredResponse = all
		if r := hulls.Validate(h); r.Err() != nil {
			t.Errorf("%s: %v", name, r.Err())
			continue
		}
		was, err := response.NewModel(&d.Hull, "seated", false)
		if err != nil {
			t.Fatal(err)
		}
		is, err := response.NewModel(&h, "seated", false)
		if err != nil {
			t.Fatal(err)
		}
		a, _ := was.At(nil, nil)
		b, _ := is.At(nil, nil)
		surer := 0
		for i := range a.Mean {
			switch va, vb := a.Cov.At(i, i), b.Cov.At(i, i); {
			case vb > va*1.0001:
				t.Errorf("%s: element %d is less sure: %g, %g", name, i, vb, va)
			case vb < 0.9*va:
				surer++
			}
		}
		if is.Measured != len(all) {
			t.Errorf("%s: %d of %d answers learnt", name, is.Measured, len(all))
		}
		t.Logf("%s: %d answers, %d of %d elements surer", name, len(all), surer, len(a.Mean))
	}
	if answers < 3 {
		t.Errorf("only %d answers in all worked visits", answers)
	}
}

// TestStuckNutIsNoAnswer: the worked visit of a nut that did not move says nothing of
// the rubber.
func TestStuckNutIsNoAnswer(t *testing.T) {
	d := builtin.Visit(t, "stuck-nut")
	all, err := Answered(&d, "x")
	if err != nil {
		t.Fatal(err)
	}
	for _, a := range all {
		moved := 0.0
		for _, flats := range a.NutFlats {
			moved += max(flats, -flats)
		}
		if change := max(a.After.CosMM-a.Before.CosMM, a.Before.CosMM-a.After.CosMM); moved > 6 && change < 0.005 {
			t.Errorf("a nut that did not answer is kept as an answer: %+v", a)
		}
	}
}
