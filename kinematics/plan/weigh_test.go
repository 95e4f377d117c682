package plan

// This file holds a try against the plan: the plan's own move, tried by hand,
// must come to what the plan says, and a plan for the rest of a move begun must
// end it.

import (
	"math"
	"testing"

	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics/gauge"
)

// asMove is a plan as it is recorded.
func asMove(d *demo, flats []int, slideMM []float64) visit.Move {
	m := visit.Move{NutFlats: map[string]float64{}, SlideMM: map[string]float64{}}
	for i, mount := range d.doc.Hull.Mounts {
		if flats[i] != 0 {
			m.NutFlats[mount.Name] = float64(flats[i])
		}
		if slideMM[i] != 0 {
			m.SlideMM[mount.Name] = slideMM[i]
		}
	}
	return m
}

// beforeMoving is a visit up to its first move.
func (d *demo) beforeMoving() *visit.Visit {
	n := 0
	for d.doc.Visit.Events[n].Move == nil {
		n++
	}
	return d.upTo(n)
}

func TestPlanWeighedIsThePlan(t *testing.T) {
	eachDemo(t, func(t *testing.T, d *demo) {
		v := d.beforeMoving()
		e := d.estimate(t, v)
		p := d.plan(t, v, e)
		w, err := d.planner.Weigh(v, e, Settings{}, asMove(d, p.NutFlats, p.SlideMM))
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(w.Minutes-p.Minutes) > 1e-9 || math.Abs(w.Probability-p.Probability) > 1e-9 || w.Expected != p.Expected {
			t.Errorf("weighed %v min, %v, %v; planned %v, %v, %v", w.Minutes, w.Probability, w.Expected, p.Minutes, p.Probability, p.Expected)
		}
		none, err := d.planner.Weigh(v, e, Settings{}, visit.Move{})
		if err != nil {
			t.Fatal(err)
		}
		if none.Minutes != 0 || none.Probability > w.Probability {
			t.Errorf("nothing done: %v min, sure with %v, the plan with %v", none.Minutes, none.Probability, w.Probability)
		}
		sum := 0.0 // the engine's weight stays on its mounts
		for i, m := range d.doc.Hull.Mounts {
			sum += w.Mounts[i].LoadN - none.Mounts[i].LoadN
			up := float64(p.NutFlats[i]) * m.LiftPerStepMM()
			if got := none.Mounts[i].UpMM - w.Mounts[i].UpMM; math.Abs(got-up) > 1e-9 || w.Mounts[i].UpMM < -1e-6 || w.Mounts[i].DownMM < -1e-6 {
				t.Errorf("%s: thread up shorter by %v mm, raised %v; left %+v", m.Name, got, up, w.Mounts[i])
			}
		}
		// All but what the coupling's own load changes by.
		if math.Abs(sum) > 0.02*d.doc.Hull.Engine.MassKg*9.80665 {
			t.Errorf("the mounts' loads change by %.1f N together", sum)
		}
	})
}

// TestPlanOfTheRest: after each beginning of the plan's steps what is left is no
// dearer than the steps left over, and after the last nothing is.
func TestPlanOfTheRest(t *testing.T) {
	eachDemo(t, func(t *testing.T, d *demo) {
		v := d.beforeMoving()
		e := d.estimate(t, v)
		p := d.plan(t, v, e)
		var since []visit.Move
		for k, step := range p.Steps {
			since = append(since, asMove(d, step.NutFlats, step.SlideMM))
			rest, err := d.planner.Plan(v, e, Settings{Since: since})
			if err != nil {
				t.Fatal(err)
			}
			last := k == len(p.Steps)-1
			if off := math.Hypot(rest.Present.MeanMM[0]-step.After.MeanMM[0], rest.Present.MeanMM[1]-step.After.MeanMM[1]); off > 1e-9 {
				t.Errorf("after step %d counted from %v, told %v", k+1, rest.Present.MeanMM, step.After.MeanMM)
			}
			if p.Status == Found && (last != (rest.Status == Nothing) || rest.Status != Nothing && rest.Status != Found) {
				t.Errorf("after step %d of %d: %v", k+1, len(p.Steps), rest.Status)
			}
			if !last && rest.Minutes > p.Minutes+1e-9 {
				t.Errorf("after step %d the rest takes %v minutes, the whole took %v", k+1, rest.Minutes, p.Minutes)
			}
		}
	})
}

// BenchmarkWeigh is what each picture of a drag beside the plan costs.
func BenchmarkWeigh(b *testing.B) {
	d := builtin.Visit(b, "v-drive")
	d.Visit.Events = d.Visit.Events[:2]
	model, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		b.Fatal(err)
	}
	e, err := model.Estimate(&d.Visit)
	if err != nil {
		b.Fatal(err)
	}
	p, err := NewPlanner(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		b.Fatal(err)
	}
	m := visit.Move{NutFlats: map[string]float64{d.Hull.Mounts[0].Name: 2}}
	for b.Loop() {
		if _, err := p.Weigh(&d.Visit, e, Settings{}, m); err != nil {
			b.Fatal(err)
		}
	}
}
