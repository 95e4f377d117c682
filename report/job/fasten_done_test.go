package job

// This file goes through a fastening event by event: each step ticked makes the
// next one next, and what a visit kept before kinds were told still counts.

import (
	"slices"
	"testing"

	"aligner/hulls/visit"
)

func gaugedAgain() visit.Event {
	return visit.Event{Gauging: &visit.Gauging{Held: "seated", Readings: []visit.Reading{visit.Leaf{Stops: visit.Thou(2)}}}}
}

// nextOf is the index of the next step, or -1.
func nextOf(p []Progress) int { return slices.Index(p, Next) }

func TestFasteningStepByStep(t *testing.T) {
	for _, name := range []string{"eider", "avocet", "cormorant", "kittiwake"} {
		h := hull(t, name)
		v := &visit.Visit{Events: []visit.Event{gaugedAgain(), {Move: &visit.Move{NutFlats: map[string]float64{h.Mounts[0].Name: 1}}}, gaugedAgain()}}
		steps, _ := FastenOrder(h, false, 30)
		for i := range steps {
			if got := nextOf(FastenProgress(h, v, steps)); got != i {
				t.Fatalf("%s: after %d steps step %d is next (%v)", name, i, got, FastenProgress(h, v, steps))
			}
			if f, ok := steps[i].Record(h); ok {
				v.Events = append(v.Events, visit.Event{Fasten: &f})
				if r := visit.Validate(*v, h); len(r.Refusals) > 0 && r.Refusals[0].Place != "hull" {
					t.Errorf("%s: %v", name, r.Refusals)
				}
				continue
			}
			switch steps[i].Kind {
			case Regauge:
				v.Events = append(v.Events, gaugedAgain())
			case TurnHand:
				v.HandedOver.TurnedByHand = "smooth"
			case MarkNuts:
				v.HandedOver.NutsMarked = true
			default:
				t.Fatalf("%s: step %d, %s, leaves nothing", name, i, steps[i].Kind)
			}
		}
		if p := FastenProgress(h, v, steps); slices.ContainsFunc(p, func(s Progress) bool { return s != Done }) {
			t.Errorf("%s: in the end %v", name, p)
		}
		v.Events = append(v.Events, visit.Event{Move: &visit.Move{}})
		if got := nextOf(FastenProgress(h, v, steps)); got != 0 {
			t.Errorf("%s: moved again, step %d is next", name, got)
		}
	}
}

func TestFasteningAsKeptBefore(t *testing.T) {
	h := hull(t, "eider")
	steps, _ := FastenOrder(h, false, 0)
	bolts := slices.IndexFunc(steps, func(s FastenStep) bool { return s.Kind == BoltRound })
	fast := func(what ...string) []Progress {
		v := &visit.Visit{Events: []visit.Event{gaugedAgain()}}
		for _, w := range what {
			v.Events = append(v.Events, visit.Event{Fasten: &visit.Fasten{What: w}})
		}
		v.Events = append(v.Events, gaugedAgain())
		return FastenProgress(h, v, steps)
	}
	if got := nextOf(fast("jam nuts, aft pair then fore pair")); got != bolts {
		t.Errorf("all jam nuts told in one: step %d is next, want %d", got, bolts)
	}
	if p := fast("jam nuts"); p[2] != LeftOut { // gauged once, after both pairs
		t.Errorf("not gauged between pairs: %v", p)
	}
	if got := nextOf(fast("jam nuts", "coupling bolts")); steps[got].Kind != TurnHand {
		t.Errorf("all fast: %s is next", steps[got].Kind)
	}
	if got := nextOf(fast(h.Mounts[0].Name)); got != 0 {
		t.Errorf("one mount of four: step %d is next", got)
	}
}

func TestTightenedBetween(t *testing.T) {
	h := hull(t, "eider")
	v := &visit.Visit{Events: []visit.Event{gaugedAgain(),
		{Fasten: &visit.Fasten{What: "x", Kind: visit.FastenedJamNuts, Mounts: []string{h.Mounts[2].Name}}},
		{Fasten: &visit.Fasten{What: "coupling bolts"}}, gaugedAgain(), {Fasten: &visit.Fasten{What: "jam nuts"}}, gaugedAgain()}}
	if got := TightenedBetween(h, v, 0, 3); !slices.Equal(got, []int{2}) {
		t.Errorf("tightened %v, want the third", got)
	}
	if got := TightenedBetween(h, v, 3, 5); len(got) != len(h.Mounts) {
		t.Errorf("nobody named: %v, want all", got)
	}
}

// TestFourthStepByStep: the same of the three-then-fourth method.
func TestFourthStepByStep(t *testing.T) {
	for _, name := range []string{"eider", "avocet"} {
		h := hull(t, name)
		f, ok := ThreeThenFourth(h)
		if !ok {
			t.Fatalf("%s: no method", name)
		}
		v := &visit.Visit{Events: []visit.Event{gaugedAgain()}}
		for i := range f.Order {
			s := &f.Order[i]
			if fast, ok := s.Record(h); ok {
				v.Events = append(v.Events, visit.Event{Fasten: &fast})
			} else if s.Kind == Slacken || s.Kind == Regauge {
				v.Events = append(v.Events, gaugedAgain())
			}
		}
		for i, p := range FastenProgress(h, v, f.Order) {
			if s := &f.Order[i]; s.recorded() && p != Done || !s.recorded() && p != Done && p != LeftOut {
				t.Errorf("%s: step %d, %s: %s", name, i, s.Kind, p)
			}
		}
	}
}
