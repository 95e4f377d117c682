package job

// This file holds the order of fastening, of bolts on a circle and of the
// three-then-fourth method.

import (
	"math"
	"slices"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
)

func TestCrosswise(t *testing.T) {
	for n, want := range map[int][]int{
		2: {1, 2}, 3: {1, 2, 3}, 4: {1, 3, 2, 4}, 5: {1, 3, 5, 2, 4}, 6: {1, 4, 2, 5, 3, 6}, 8: {1, 5, 3, 7, 2, 6, 4, 8},
	} {
		if got := Crosswise(n); !slices.Equal(got, want) {
			t.Errorf("%d bolts: %v, want %v", n, got, want)
		}
	}
	if got := Crosswise(0); len(got) != 0 {
		t.Errorf("no bolts: %v", got)
	}
}

// Laws: each bolt once, and each even-numbered step opposite the one before.
func TestCrosswiseLaws(t *testing.T) {
	for n := 2; n <= 24; n++ {
		order := Crosswise(n)
		sorted := slices.Sorted(slices.Values(order))
		for i, b := range sorted {
			if b != i+1 || len(order) != n {
				t.Fatalf("%d bolts: %v leaves one out or names one twice", n, order)
			}
		}
		for i := 0; n%2 == 0 && i < n; i += 2 {
			if (order[i+1]-order[i]+n)%n != n/2 {
				t.Errorf("%d bolts: %d and %d are not opposite", n, order[i], order[i+1])
			}
		}
	}
}

func TestFastenOutward(t *testing.T) {
	for _, c := range []struct {
		hull string
		want []string // first of each group, what is done
	}{
		{"Kittiwake", []string{"clamps aft port", "jam nuts aft port", "gauge", "clamps fore port", "jam nuts fore port", "gauge"}},
		{"Eider", []string{"clamps aft port", "jam nuts aft port", "gauge", "clamps fore port", "jam nuts fore port", "gauge"}},
		{"Avocet", []string{"clamps fore port", "jam nuts fore port", "gauge", "clamps aft port", "jam nuts aft port", "gauge"}},
		{"Cormorant", []string{"foot bolts aft port", "gauge", "foot bolts middle port", "gauge", "foot bolts fore port", "gauge"}},
	} {
		h := hull(t, c.hull)
		steps, torque := FastenOrder(h, false, 0)
		var got []string
		for _, s := range steps {
			line := string(s.Kind)
			if len(s.Mounts) > 0 {
				line += " " + h.Mounts[s.Mounts[0]].Name
			}
			got = append(got, line)
		}
		want := append(c.want, "bolt round", "bolt round", "bolt round", "turn by hand", "mark nuts")
		if !slices.Equal(got, want) {
			t.Errorf("%s:\n got %q\nwant %q", c.hull, got, want)
		}
		last := 0.0
		for _, s := range steps {
			if s.Kind == BoltRound {
				if s.NM <= last || len(s.Order) != h.Coupling.Bolts.Count {
					t.Errorf("%s: round %d to %.1f N m after %.1f, order %v", c.hull, s.Round, s.NM, last, s.Order)
				}
				last = s.NM
			}
		}
		if last != torque.NM || torque.NM <= 0 {
			t.Errorf("%s: the last round is %.1f N m, the figure %.1f", c.hull, last, torque.NM)
		}
	}
}

// Laws of any hull: every mount is tightened, with a gauging before the next
// pair, and the bolts come after the last gauging.
func TestFastenLaws(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := hull(t, name)
		steps, _ := FastenOrder(h, true, 40)
		tight := map[int]bool{}
		lastGauge, firstBolts := -1, len(steps)
		for i, s := range steps {
			for _, m := range s.Mounts {
				tight[m] = true
			}
			if s.Kind == Regauge {
				lastGauge = i
			}
			if s.Kind == BoltRound && firstBolts == len(steps) {
				firstBolts = i
			}
			if len(s.Sources) == 0 {
				t.Errorf("%s: step %d has no source", name, i)
			}
		}
		if len(tight) != len(h.Mounts) || lastGauge != firstBolts-1 {
			t.Errorf("%s: %d of %d mounts tightened, last gauging at %d, bolts at %d", name, len(tight), len(h.Mounts), lastGauge, firstBolts)
		}
	}
}

func TestTorqueIsSaid(t *testing.T) {
	grade5 := hulls.Bolts{Count: 4, Thread: "3/8-24 UNF", Grade: "SAE J429 grade 5"}
	stainless := hulls.Bolts{Count: 4, Thread: "M10", Grade: "ISO 3506-1 A4-70"}
	odd := hulls.Bolts{Count: 4, Thread: "M10", Grade: "none"}
	for _, c := range []struct {
		name    string
		bolts   hulls.Bolts
		makerNM float64
		want    string
	}{
		{"computed", grade5, 0, "computed, maker first, scatter"},
		{"maker's", grade5, 38, "maker, beside, scatter"},
		{"maker's, beyond", grade5, 90, "maker, beside, scatter, beyond proof"},
		{"stainless", stainless, 0, "computed, maker first, scatter, from memory, stainless"},
		{"unknown", odd, 0, "none"},
		{"unknown, maker's", odd, 40, "maker"},
	} {
		torque, err := hulls.Tighten(c.bolts, false, c.makerNM)
		var got []string
		for _, line := range TorqueText(c.bolts, false, torque, err) {
			got = append(got, strings.ReplaceAll(strings.TrimPrefix(string(line.ID), "job_torque_"), "_", " "))
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	// Without a figure the rounds have none either.
	h := *hull(t, "Kittiwake")
	h.Coupling.Bolts.Grade = "none"
	steps, torque := FastenOrder(&h, false, 0)
	for _, s := range steps {
		if s.Kind == BoltRound && (s.NM != 0 || s.Text.ID != "job_fasten_bolt_round_no_figure") {
			t.Errorf("round %d: %.1f N m, %s", s.Round, s.NM, s.Text.ID)
		}
	}
	if torque.NM != 0 {
		t.Errorf("a figure of %.1f N m for an unknown grade", torque.NM)
	}
}

func TestThreeThenFourth(t *testing.T) {
	for _, c := range []struct {
		hull, kept, other string // the pair kept, and the pair of the fourth
	}{{"Kittiwake", "aft", "fore"}, {"Eider", "aft", "fore"}, {"Wren", "aft", "fore"}, {"Avocet", "fore", "aft"}} {
		h := hull(t, c.hull)
		f, ok := ThreeThenFourth(h)
		if !ok {
			t.Errorf("%s: no fourth", c.hull)
			continue
		}
		for _, m := range f.Three[:2] {
			if !strings.HasPrefix(h.Mounts[m].Name, c.kept) {
				t.Errorf("%s: keeps %s, want the %s pair", c.hull, h.Mounts[m].Name, c.kept)
			}
		}
		if !strings.HasPrefix(h.Mounts[f.Fourth].Name, c.other) || slices.Contains(f.Three, f.Fourth) || len(f.Steps) != 6 {
			t.Errorf("%s: fourth is %s, %d steps", c.hull, h.Mounts[f.Fourth].Name, len(f.Steps))
		}
		t.Logf("%s: fourth %s, centre of mass %.0f mm inside the three", c.hull, h.Mounts[f.Fourth].Name, f.InsideMM)
	}
	if _, ok := ThreeThenFourth(hull(t, "Cormorant")); ok {
		t.Error("six feet: the method wants four")
	}
}

// The weight leans to the mount that is kept, and how far it lies inside is the
// distance from the diagonal.
func TestFourthKeepsTheHeavyCorner(t *testing.T) {
	h := *hull(t, "Bench")
	// Mounts at x 100 and 500, y +-200: the diagonal from aft starboard to fore
	// port is y = x - 300.
	for _, c := range []struct {
		y      float64
		fourth string
		inside float64
	}{{40, "fore starboard", 40 / math.Sqrt2}, {-40, "fore port", 40 / math.Sqrt2}, {60, "fore starboard", 60 / math.Sqrt2}} {
		h.Engine.CentreOfMassMM = [3]float64{300, c.y, 0}
		f, ok := ThreeThenFourth(&h)
		if !ok || h.Mounts[f.Fourth].Name != c.fourth || math.Abs(f.InsideMM-c.inside) > 1e-9 || f.StandsOnThree() != (c.inside >= 30) {
			t.Errorf("centre of mass at y %g: fourth %s, %.2f mm inside; want %s, %.2f", c.y, h.Mounts[f.Fourth].Name, f.InsideMM, c.fourth, c.inside)
		}
	}
	h.Engine.CentreOfMassMM = [3]float64{450, 0, 0} // over the far pair
	if f, _ := ThreeThenFourth(&h); f.InsideMM >= 0 || f.StandsOnThree() {
		t.Errorf("centre of mass over the far pair: %.1f mm inside", f.InsideMM)
	}
}

// The distance does not depend on the order in which the three are named, and is
// positive at their middle.
func TestInsideAnyOrder(t *testing.T) {
	h := *hull(t, "Bench")
	mid := [3]float64{}
	for _, i := range []int{0, 1, 2} {
		for k := range 3 {
			mid[k] += h.Mounts[i].AtMM[k] / 3
		}
	}
	h.Engine.CentreOfMassMM = mid
	want := insideMM(&h, []int{0, 1, 2})
	for _, three := range [][]int{{0, 2, 1}, {1, 0, 2}, {2, 1, 0}, {1, 2, 0}} {
		if got := insideMM(&h, three); got <= 0 || math.Abs(got-want) > 1e-9 {
			t.Errorf("%v: %.3f mm inside, want %.3f", three, got, want)
		}
	}
}

// TestTorqueRange: dry and oiled differ by K, 0.20 and 0.15 (common in handbooks
// with T = K d F), so by a quarter, whatever the maker says.
func TestTorqueRange(t *testing.T) {
	h := hull(t, "kittiwake")
	for _, makerNM := range []float64{0, 30} {
		list := Torque(h, false, makerNM)
		last := list[len(list)-1].Args
		dry, oiled := float64(last["Dry"].(TorqueNM)), float64(last["Oiled"].(TorqueNM))
		if math.Abs(oiled/dry-0.75) > 1e-9 || dry <= 0 {
			t.Errorf("maker %g: dry %g, oiled %g N m", makerNM, dry, oiled)
		}
	}
}
