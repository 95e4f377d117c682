package history

// This file tests the likely cause on boats whose cause is known.

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// done is what is done to a boat, and as much as can be told of it.
type done struct {
	what   string
	do     func(*happened)
	told   Cause
	mounts []int // that come into question; nil: not looked at
	open   bool  // which of them is not told
	moved  bool
}

func all(v []float64, by float64) {
	for i := range v {
		v[i] = by
	}
}

// Mounts of these hulls are fore port, fore starboard, aft port, aft starboard.
var happenings = []done{
	{what: "nothing", told: Steady, do: func(*happened) {}},
	{what: "nut of 1 down 2 mm, stud measured", told: NutBacked, mounts: []int{1}, moved: true,
		do: func(s *happened) { s.lift[1], s.stud[1] = -2, 2 }},
	{what: "nut of 1 down 2 mm, its mark turned, no stud measured", told: NutBacked, mounts: []int{1}, moved: true,
		do: func(s *happened) { s.lift[1], s.nStuds, s.mark[1] = -2, true, visit.MarkTurned }},
	{what: "nut of 2 up 2 mm, stud measured", told: NutRaised, mounts: []int{2}, moved: true,
		do: func(s *happened) { s.lift[2], s.stud[2] = 2, -2 }},
	{what: "new rubber settles 1.2 mm", told: Settled, mounts: []int{0, 1, 2, 3}, moved: true,
		do: func(s *happened) { s.newRubber = true; all(s.lift, -1.2) }},
	{what: "all to port 1.5 mm", told: ToOneSide, moved: true, do: func(s *happened) { all(s.slide, 1.5) }},
}

func TestKnownCauses(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Eider", "Avocet", "Wren"} {
		h := hullNamed(t, name)
		for _, d := range happenings {
			t.Run(name+": "+d.what, func(t *testing.T) { knownCause(t, h, d) })
		}
	}
}

func knownCause(t *testing.T, h hulls.Hull, d done) {
	is := still(&h)
	d.do(&is)
	c := worked(t, twice(t, h, is, rand.New(rand.NewPCG(1, 2)))).Entries[1].Since
	if c.Moved != d.moved {
		t.Errorf("moved %v: gap changed by %.3f mm at %.0f deg, sd %.3f", c.Moved, c.Gap.SpreadMM, c.Gap.OpensAtDeg, c.Gap.SpreadSDMM)
	}
	told := c.Told()
	if told.Cause != d.told || d.mounts != nil && !slices.Equal(told.Mounts, d.mounts) || c.Open(told) != d.open {
		t.Errorf("told %q at %v, open %v; likeliest %+v", told.Cause, told.Mounts, c.Open(told), c.Likely[:3])
	}
	if c.Hours != visit.Known(50) || c.Days != visit.Known(341) {
		t.Errorf("%v days, %v hours", c.Days, c.Hours)
	}
}

// Where two mounts answer alike, or rubber and nut, the answer says so.
func TestWhatCannotBeTold(t *testing.T) {
	h := hullNamed(t, "Wren") // narrow: port and starboard mounts tip the gap alike
	is := still(&h)
	is.lift[0] = -2.5
	c := worked(t, twice(t, h, is, rand.New(rand.NewPCG(1, 2)))).Entries[1].Since
	if told := c.Told(); told.Cause != MountDown || !c.Open(told) || !slices.Equal(told.Mounts, []int{0, 1}) || !slices.Contains(c.Advice, MeasureRubber) {
		t.Errorf("studs as they were: told %+v, advice %v", told, c.Advice)
	}
	is.nStuds = true
	c = worked(t, twice(t, h, is, rand.New(rand.NewPCG(1, 2)))).Entries[1].Since
	if told := c.Told(); told.Cause != CornerDown || !c.Open(told) || !slices.Equal(told.Mounts, []int{0, 1}) || !slices.Contains(c.Advice, MeasureStuds) {
		t.Errorf("no studs: told %+v, advice %v", told, c.Advice)
	}
}

// The chances are what they say: over boats whose cause is drawn as the package
// believes, a cause given a chance p was it in p of the cases.
func TestChancesAreWhatTheySay(t *testing.T) {
	n := 240
	if testing.Short() {
		n = 80
	}
	h := hullNamed(t, "Eider")
	r := rand.New(rand.NewPCG(7, 7))
	var models modelShelf
	var expected, right, variance, boldExpected, boldRight float64
	for range n {
		is, truth := drawn(t, &h, &models, r)
		p, err := work(twice(t, h, is, r), &models)
		if err != nil {
			t.Fatal(err)
		}
		c := p.Entries[1].Since
		sum := 0.0
		for i, l := range c.Likely {
			sum += l.Chance
			hit := 0.0
			if l.Cause == truth.cause && l.Side == truth.side && slices.Equal(l.Mounts, truth.mounts) {
				hit = 1
			}
			if i == 0 {
				expected, right, variance = expected+l.Chance, right+hit, variance+l.Chance*(1-l.Chance)
				if l.Chance >= toldFrom {
					boldExpected, boldRight = boldExpected+l.Chance, boldRight+hit
				}
			}
		}
		if math.Abs(sum-1) > 1e-9 {
			t.Fatalf("chances add up to %g", sum)
		}
	}
	t.Logf("of %d: the likeliest was it %.0f times, expected %.1f +- %.1f; where named, %.0f of expected %.1f",
		n, right, expected, math.Sqrt(variance), boldRight, boldExpected)
	if math.Abs(right-expected) > 3*math.Sqrt(variance) {
		t.Errorf("the likeliest was it %.0f times of %d, expected %.1f +- %.1f", right, n, expected, math.Sqrt(variance))
	}
}

// drawn draws a cause by its chance beforehand and carries it out.
func drawn(t *testing.T, h *hulls.Hull, models *modelShelf, r *rand.Rand) (happened, candidate) {
	m, err := models.response(h, true)
	if err != nil {
		t.Fatal(err)
	}
	list := candidates(h, m.sagMM, visit.State{})
	at, k := r.Float64(), 0
	for ; k < len(list)-1 && at > list[k].prior; k++ {
		at -= list[k].prior
	}
	c, is := list[k], still(h)
	amount := math.Abs(r.NormFloat64()) * c.amount
	for i := range is.lift {
		uneven := 1.0
		if len(c.mounts) > 1 {
			uneven += unevenPart * r.NormFloat64()
		}
		is.lift[i], is.slide[i] = amount*c.lift[i]*uneven, amount*c.slide[i]
		is.stud[i] = amount*c.stud[i]*uneven + studSDMM*r.NormFloat64()
	}
	if c.cause == SomethingElse { // as if the aft pair's bed had gone any way
		is.lift[2], is.lift[3] = r.NormFloat64(), r.NormFloat64()
		is.slide[0], is.slide[1] = r.NormFloat64(), r.NormFloat64()
	}
	return is, c
}
