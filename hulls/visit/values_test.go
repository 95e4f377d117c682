package visit

// This file tests clock positions, units, leaves, rules and arcs.

import (
	"math"
	"slices"
	"strings"
	"testing"
)

func TestParseClock(t *testing.T) {
	for _, c := range []struct {
		text string
		seen Direction
		want float64
	}{
		{"12", LookingForward, 0}, {"12:00", LookingAft, 0}, {"0:30", LookingForward, 15}, {"12:30", LookingForward, 15},
		{"1:30", LookingForward, 45}, {"1:30", LookingAft, 315}, {"01:30", LookingForward, 45},
		{"3", LookingForward, 90}, {"3", LookingAft, 270}, {"3 o'clock", LookingForward, 90}, {"3 O’Clock", LookingAft, 270},
		{"9 oclock", LookingForward, 270}, {" 6:00 ", LookingAft, 180}, {"11:59", LookingForward, 359.5}, {"11:59", LookingAft, 0.5},
		{"45deg", LookingForward, 45}, {"45°", LookingAft, 315}, {"-45 degrees", LookingForward, 315}, {"22.5 deg", LookingForward, 22.5},
		{"360deg", LookingForward, 0}, {"0deg", LookingAft, 0}, {"-1e3deg", LookingForward, -1}, {"1 degree", LookingAft, 359},
		{"port", LookingForward, 270}, {"port", LookingAft, 270}, {"STBD", LookingAft, 90}, {"Starboard", LookingForward, 90},
		{"top", LookingAft, 0}, {"bottom", LookingAft, 180},
		{"", LookingForward, -1}, {"13", LookingForward, -1}, {"12:60", LookingForward, -1}, {"1:3", LookingForward, -1},
		{"45", LookingForward, -1}, {"361deg", LookingForward, -1}, {"NaN", LookingForward, -1}, {"1:30:00", LookingForward, -1},
		{"three", LookingForward, -1}, {"3\n", LookingForward, 90}, {"\x1b[31m", LookingForward, -1}, {"1.5", LookingForward, -1},
	} {
		got, err := ParseClock(c.text, c.seen)
		if c.want < 0 {
			if err == nil || strings.ContainsAny(err.Error(), "\n\x1b") {
				t.Errorf("%q: read as %g, told %q", c.text, got, err)
			}
			continue
		}
		if err != nil || got != c.want || math.Signbit(got) {
			t.Errorf("%q %v: read as %g (%v), want %g", c.text, c.seen, got, err, c.want)
		}
	}
}

// Laws: what is written reads back, in either direction; the same position has
// mirrored hours in the two; 12 and 6 are the same in both.
func TestClockTextReadsBack(t *testing.T) {
	for minute := range 720 {
		deg := float64(minute) / 2
		for _, seen := range []Direction{LookingForward, LookingAft} {
			text := ClockText(deg, seen)
			if got, err := ParseClock(text, seen); err != nil || got != deg {
				t.Fatalf("%g is written %q %v and reads as %g (%v)", deg, text, seen, got, err)
			}
			if other := ClockText(math.Mod(360-deg, 360), !seen); other != text {
				t.Fatalf("%g is %q %v, its mirror image %q", deg, text, seen, other)
			}
		}
	}
	for deg, want := range map[float64]string{0: "12:00", 45: "1:30", 359.9: "12:00", 15.1: "12:30", 269.99: "9:00", -90: "9:00", 720: "12:00"} {
		if got := ClockText(deg, LookingForward); got != want {
			t.Errorf("%g is written %q, want %q", deg, got, want)
		}
	}
}

// An inch is 25.4 mm and a pound-force foot 0.3048 m times 4.4482216152605 N
// (NIST SP 811, appendix B).
func TestUnits(t *testing.T) {
	near := func(a, b float64) bool { return math.Abs(a-b) <= 1e-12*math.Abs(b) }
	if !near(Thou(1000).MM(), 25.4) || !near(MM(25.4).Thou(), 1000) || MM(3).MM() != 3 || Thou(3).Thou() != 3 {
		t.Error("thou and mm disagree")
	}
	if (Length{}).Given() || !Thou(0).Given() || (Length{}).MM() != 0 {
		t.Error("a length left out")
	}
	if got := (Torque{1, InLbFt}).NM(); !near(got, 0.3048*4.4482216152605) {
		t.Errorf("a pound-force foot is %.16g N m", got)
	}
	if (Maybe{}).Or(7) != 7 || Known(0).Or(7) != 0 {
		t.Error("a number left out")
	}
}

func TestThicknesses(t *testing.T) {
	for _, c := range []struct {
		set  LeafSet
		want []float64 // thou
	}{
		{LeafSet{Leaves: []float64{2, 3, 5}, Unit: InThou, MostStacked: 1}, []float64{2, 3, 5}},
		{LeafSet{Leaves: []float64{2, 3, 5}, Unit: InThou}, []float64{2, 3, 5, 7, 8}},
		{LeafSet{Leaves: []float64{2, 3, 5}, Unit: InThou, MostStacked: 9}, []float64{2, 3, 5, 7, 8, 10}},
		{LeafSet{Leaves: []float64{2, 2}, Unit: InThou}, []float64{2, 4}}, // two alike stack, one does not with itself
		{LeafSet{Leaves: []float64{0.0254, 0.0508}, Unit: InMM}, []float64{1, 2, 3}},
	} {
		got := c.set.ThicknessesMM()
		if len(got) != len(c.want) {
			t.Errorf("%+v makes %v", c.set, got)
			continue
		}
		for i := range got {
			if math.Abs(got[i]-Thou(c.want[i]).MM()) > 1e-12 {
				t.Errorf("%+v makes %v, want %v thou", c.set, got, c.want)
			}
		}
	}
	if n := len(LeafSet{}.SinglesMM()); n != len(DefaultLeavesThou) {
		t.Errorf("the usual set has %d leaves", n)
	}
	hostile := LeafSet{Unit: InThou, MostStacked: 10}
	for i := range 100 {
		hostile.Leaves = append(hostile.Leaves, 1+float64(i)*math.Sqrt2)
	}
	if n := len(hostile.ThicknessesMM()); n > mostStacks {
		t.Errorf("%d thicknesses", n)
	}
	for _, single := range hostile.SinglesMM() {
		if !slices.ContainsFunc(hostile.ThicknessesMM(), func(mm float64) bool { return sameThickness(mm, single) }) {
			t.Errorf("a leaf of %g mm is lost among stacks", single)
		}
	}
}

func TestRuleLimits(t *testing.T) {
	perInch := Rule{Limits: PerInch, Limit: Thou(1), Named: "a thou an inch"}
	if got := perInch.LimitMM(101.6); math.Abs(got-Thou(4).MM()) > 1e-12 {
		t.Errorf("a thou an inch on 4 inches is %g mm", got)
	}
	across := Rule{Limits: DifferenceAcross, Limit: MM(0.1), Named: "across"}
	if across.LimitMM(101.6) != 0.1 {
		t.Error("a limit across does not depend on the diameter")
	}
	// 4 thou wider at the bottom than at the top.
	if a, b := (Target{Spread: Thou(4), OpensAtDeg: 180}).CosSinMM(); math.Abs(a+Thou(2).MM()) > 1e-15 || math.Abs(b) > 1e-15 {
		t.Errorf("4 thou at the bottom: A %g, B %g", a, b)
	}
}

func TestArcs(t *testing.T) {
	for _, c := range []struct {
		a    Arc
		span float64
		in   []float64
		out  []float64
	}{
		{Arc{330, 30}, 60, []float64{0, 331, 29}, []float64{330, 30, 31, 180}},
		{Arc{0, 360}, 360, []float64{1, 180, 359}, nil},
		{Arc{90, 180}, 90, []float64{135}, []float64{90, 180, 0, 270}},
	} {
		if c.a.SpanDeg() != c.span {
			t.Errorf("%v spans %g", c.a, c.a.SpanDeg())
		}
		for _, deg := range c.in {
			if !c.a.Holds(deg) {
				t.Errorf("%v leaves %g out", c.a, deg)
			}
		}
		for _, deg := range c.out {
			if c.a.Holds(deg) {
				t.Errorf("%v holds %g", c.a, deg)
			}
		}
	}
	// Whether arcs meet, against every half degree tried.
	for _, a := range []Arc{{0, 360}, {330, 30}, {10, 50}, {50, 10}, {200, 201}} {
		for _, b := range []Arc{{0, 360}, {330, 30}, {30, 330}, {20, 40}, {50, 60}, {201, 200}, {300, 100}} {
			shared := false
			for i := range 1440 {
				deg := float64(i)/4 + 0.125
				shared = shared || a.Holds(deg) && b.Holds(deg)
			}
			if a.meets(b) != shared || b.meets(a) != shared {
				t.Errorf("%v and %v: meet %v, share a place %v", a, b, a.meets(b), shared)
			}
		}
	}
}

func TestSeatings(t *testing.T) {
	g := func(n int) Event { return Event{Gauging: &Gauging{Held: "seated", Seating: n}} }
	v := Visit{Events: []Event{g(0), g(2), g(2), g(0), g(1)}}
	for i := range v.Events {
		for j := range v.Events {
			if same := v.SeatingOf(i) == v.SeatingOf(j); same != (i == j || i+j == 3 && i*j == 2) {
				t.Errorf("gaugings %d and %d: one seating %v", i, j, same)
			}
		}
	}
	lo, hi := WithinMM(Length{}, MM(0.1))
	if !math.IsInf(lo, -1) || hi != 0.1 {
		t.Errorf("%g to %g", lo, hi)
	}
	lo, hi = WithinMM(MM(0.1), Length{})
	if lo != 0.1 || !math.IsInf(hi, 1) {
		t.Errorf("%g to %g", lo, hi)
	}
}
