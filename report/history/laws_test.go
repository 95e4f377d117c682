package history

// This file tests laws: what must hold whatever the boat.

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// mirrored swaps port and starboard of hull and readings.
func mirrored(list []Visit) []Visit {
	list = slices.Clone(list)
	name := func(s string) string {
		return strings.NewReplacer("port", "starboard", "starboard", "port").Replace(s)
	}
	for k := range list {
		d := &list[k].Document
		d.Hull.Mounts = slices.Clone(d.Hull.Mounts)
		for i := range d.Hull.Mounts {
			m := &d.Hull.Mounts[i]
			m.Name, m.AtMM[1], m.SlideRangeMM = name(m.Name), -m.AtMM[1], [2]float64{-m.SlideRangeMM[1], -m.SlideRangeMM[0]}
		}
		d.Hull.Engine.CentreOfMassMM[1] *= -1
		d.Visit.Mounts = slices.Clone(d.Visit.Mounts)
		for i := range d.Visit.Mounts {
			d.Visit.Mounts[i].Mount = name(d.Visit.Mounts[i].Mount)
		}
		d.Visit.Events = slices.Clone(d.Visit.Events)
		for i, e := range d.Visit.Events {
			g := *e.Gauging
			g.Readings = slices.Clone(g.Readings)
			for j, r := range g.Readings {
				leaf := r.(visit.Leaf)
				leaf.ClockDeg = math.Mod(360-leaf.ClockDeg, 360)
				g.Readings[j] = leaf
			}
			d.Visit.Events[i].Gauging = &g
		}
	}
	return list
}

func TestMirrorImage(t *testing.T) {
	h := hullNamed(t, "Eider")
	is := still(&h)
	is.lift[0], is.stud[0] = -1.5, 1.5
	all(is.slide, 0.4)
	list := twice(t, h, is, rand.New(rand.NewPCG(3, 4)))
	one, other := worked(t, list).Entries[1].Since, worked(t, mirrored(list)).Entries[1].Since
	if math.Abs(one.Gap.MeanMM[0]-other.Gap.MeanMM[0]) > 1e-6 || math.Abs(one.Gap.MeanMM[1]+other.Gap.MeanMM[1]) > 1e-6 {
		t.Errorf("gap %v, mirrored %v", one.Gap.MeanMM, other.Gap.MeanMM)
	}
	for i, l := range one.Likely[:8] {
		found := slices.IndexFunc(other.Likely, func(o Likely) bool {
			return o.Cause == l.Cause && o.Side == -l.Side && slices.Equal(o.Mounts, l.Mounts)
		})
		if found < 0 || math.Abs(other.Likely[found].Chance-l.Chance) > 1e-4 {
			t.Errorf("%d: %+v is %+v in the mirror", i, l, other.Likely)
		}
	}
}

// With nothing gauged well the chances are those beforehand.
func TestNoEvidenceChangesNothing(t *testing.T) {
	h := hullNamed(t, "Kittiwake")
	var models modelShelf
	m, err := models.response(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	list := candidates(&h, m.sagMM, visit.State{})
	blind := gapOf([2]float64{0.3, -0.2}, [2][2]float64{{1e6, 0}, {0, 1e6}})
	for _, w := range weigh(list, shown{gap: blind}, m.response, [2]float64{}) {
		if math.Abs(w.chance-w.prior) > 1e-4 {
			t.Errorf("%s %v: %.4f, beforehand %.4f", w.cause, w.mounts, w.chance, w.prior)
		}
	}
}

// A cause's amount is found again, and a larger change needs a larger one.
func TestAmounts(t *testing.T) {
	h := hullNamed(t, "Kittiwake")
	last := 0.0
	for _, mm := range []float64{1, 2, 3, 4} {
		is := still(&h)
		is.lift[1], is.stud[1] = -mm, mm
		l := worked(t, twice(t, h, is, rand.New(rand.NewPCG(5, 6)))).Entries[1].Since.Likely[0]
		if l.Cause != NutBacked || math.Abs(l.MM-mm) > 3*l.SDMM || l.MM <= last {
			t.Errorf("%g mm: %+v", mm, l)
		}
		last = l.MM
	}
}

func TestNutsAddUpAndStudsFollow(t *testing.T) {
	h := hullNamed(t, "Kittiwake")
	list := twice(t, h, still(&h), rand.New(rand.NewPCG(1, 1)))
	for k := range list {
		v := &list[k].Document.Visit
		last := v.Events[len(v.Events)-1]
		v.Events = append(v.Events, visit.Event{Move: &visit.Move{NutFlats: map[string]float64{"fore port": 3}}}, visit.Event{Move: &visit.Move{NutFlats: map[string]float64{"fore port": -1, "aft port": 2}}}, last)
		v.Mounts[3].StudLeftMM = visit.Known(17.5)
	}
	p := worked(t, list)
	first, second := &p.Entries[0], &p.Entries[1]
	if !slices.Equal(first.NutsAfter, []float64{2, 0, 2, 0}) || !slices.Equal(second.NutsBefore, first.NutsAfter) || !slices.Equal(second.NutsAfter, []float64{4, 0, 4, 0}) {
		t.Errorf("nuts %v, then %v to %v", first.NutsAfter, second.NutsBefore, second.NutsAfter)
	}
	lift := 2 * h.Mounts[0].LiftPerStepMM()
	if got := first.StudLeftMM[0]; math.Abs(got.Value-(20-lift)) > 1e-9 || first.StudLeftMM[3] != visit.Known(17.5) || math.Abs(first.NutsAfterMM[0]-lift) > 1e-9 {
		t.Errorf("studs left %v, nut %g mm", first.StudLeftMM, first.NutsAfterMM[0])
	}
}

func TestWhereThereIsNothingToCompare(t *testing.T) {
	h := hullNamed(t, "Kittiwake")
	list := twice(t, h, still(&h), rand.New(rand.NewPCG(1, 1)))
	moved := visit.Event{Move: &visit.Move{NutFlats: map[string]float64{"fore port": 1}}}
	list[0].Document.Visit.Events = append(list[0].Document.Visit.Events, moved)
	c := worked(t, list).Entries[1].Since
	if c.WhyNot != NotLeft || c.Likely != nil || !slices.Contains(c.Advice, GaugeAtEnd) || c.Told().Cause != "" {
		t.Errorf("%+v", c)
	}
	list = twice(t, h, still(&h), rand.New(rand.NewPCG(1, 1)))
	list[1].Document.Visit.Events = nil
	if c := worked(t, list).Entries[1].Since; c.WhyNot != NotFound || !slices.Contains(c.Advice, GaugeAtBegin) {
		t.Errorf("%+v", c)
	}
	if p := worked(t, nil); len(p.Entries) != 0 {
		t.Error("visits of none")
	}
}

// Ashore one time and afloat the other, as much change tells less.
func TestCaveats(t *testing.T) {
	h := hullNamed(t, "Eider")
	is := still(&h)
	is.lift[0], is.stud[0] = -0.6, 0
	list := twice(t, h, is, rand.New(rand.NewPCG(2, 1)))
	alike := worked(t, list).Entries[1].Since
	list[0].Document.Visit.State.Boat = "trailer"
	list[1].Document.Visit.LookOver = []visit.Finding{{Check: "strut firm", Finding: "failed"}}
	list[1].Document.Hull.Engine.MassKg++
	c := worked(t, list).Entries[1].Since
	if !slices.Equal(c.Caveats, []Caveat{BoatStoodElse, MeasuredAnew, LookFailed}) || alike.Caveats != nil {
		t.Errorf("caveats %v and %v", c.Caveats, alike.Caveats)
	}
	learnt := twice(t, h, is, rand.New(rand.NewPCG(2, 1)))
	learnt[1].Document.Hull.MeasuredResponse = []hulls.Measured{{}}
	if c := worked(t, learnt).Entries[1].Since; c.Caveats != nil {
		t.Errorf("she only answered in between, and caveats %v", c.Caveats)
	}
	odd := twice(t, h, still(&h), rand.New(rand.NewPCG(2, 1)))
	first := odd[1].Document.Visit.Events[0].Gauging
	leaf := first.Readings[2].(visit.Leaf)
	leaf.Goes, leaf.Stops = visit.Thou(20), visit.Thou(21)
	first.Readings[2] = leaf
	if c := worked(t, odd).Entries[1].Since; !slices.Contains(c.Caveats, NotFlat) {
		t.Errorf("no flat faces, and caveats %v", c.Caveats)
	}
	steady := func(c *Change) float64 { return c.sum(Steady, []Cause{Steady}).Chance }
	if steady(c) <= steady(alike) {
		t.Errorf("nothing moved: %.3f, the boat standing otherwise %.3f", steady(alike), steady(c))
	}
}

func TestSolidFeetHaveNoRubber(t *testing.T) {
	h := hullNamed(t, "Cormorant")
	for _, c := range candidates(&h, make([]float64, len(h.Mounts)), visit.State{}) {
		if c.cause != Steady && c.cause != ToOneSide && c.cause != SomethingElse {
			t.Errorf("%s of a solid foot", c.cause)
		}
	}
}

// The spread's error is that of its direction, the place's that across it.
func TestGapOf(t *testing.T) {
	g := gapOf([2]float64{0.1, 0}, [2][2]float64{{1e-4, 0}, {0, 4e-4}})
	if math.Abs(g.SpreadMM-0.2) > 1e-12 || math.Abs(g.SpreadSDMM-0.02) > 1e-12 || g.OpensAtDeg != 0 || math.Abs(g.OpensSDDeg-math.Atan(0.2)*180/math.Pi) > 1e-9 || !g.OpensKnown {
		t.Errorf("%+v", g)
	}
	if g := gapOf([2]float64{0, -0.03}, [2][2]float64{{4e-4, 0}, {0, 1e-6}}); g.OpensAtDeg != 270 || g.OpensKnown {
		t.Errorf("%+v", g)
	}
}
