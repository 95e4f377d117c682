package plan

// This file holds plans to their limits: what is stuck stays, what runs out is
// named, and the cheapest move is the cheapest.

import (
	"math"
	"slices"
	"testing"

	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan/search"
)

// off is a boat thrown off by lifts and slides, its visit so far, and a planner.
func off(t testing.TB, name string, liftMM, slideMM []float64) (*boat, *visit.Visit, *Planner, *gauge.Model) {
	t.Helper()
	b := newBoat(t, name)
	copy(b.s.LiftMM, liftMM)
	copy(b.s.SlideMM, slideMM)
	p, err := NewPlanner(b.h, false)
	if err != nil {
		t.Fatal(err)
	}
	m, err := gauge.NewModel(b.h, false)
	if err != nil {
		t.Fatal(err)
	}
	return b, &visit.Visit{HullName: name, Events: []visit.Event{b.gauged(t, 0), b.gauged(t, 180)}}, p, m
}

func planned(t testing.TB, p *Planner, m *gauge.Model, v *visit.Visit, s Settings) (*Plan, *gauge.Estimate) {
	t.Helper()
	e, err := m.Estimate(v)
	if err != nil {
		t.Fatal(err)
	}
	out, err := p.Plan(v, e, s)
	if err != nil {
		t.Fatal(err)
	}
	return out, e
}

func TestStuckStays(t *testing.T) {
	b, v, p, m := off(t, "kittiwake", []float64{2, 2}, []float64{0, 0, 2, 2})
	free, _ := planned(t, p, m, v, Settings{})
	moved := slices.IndexFunc(free.NutFlats, func(n int) bool { return n != 0 })
	if free.Status != Found || moved < 0 {
		t.Fatalf("%+v", free)
	}
	v.Mounts = []visit.MountFound{{Mount: b.h.Mounts[moved].Name, Nut: visit.Stuck, Slide: visit.Free}}
	stuck, _ := planned(t, p, m, v, Settings{})
	if stuck.Status != Found || stuck.NutFlats[moved] != 0 {
		t.Errorf("%v: %v moves the stuck %s", stuck.Status, stuck.NutFlats, b.h.Mounts[moved].Name)
	}
	if stuck.Minutes < free.Minutes-1e-9 {
		t.Errorf("cheaper with a nut stuck: %.1f minutes, %.1f free", stuck.Minutes, free.Minutes)
	}
	for _, found := range v.Mounts {
		found.Slide = visit.Forbidden
	}
	all := v.Mounts[:0]
	for _, mount := range b.h.Mounts {
		all = append(all, visit.MountFound{Mount: mount.Name, Nut: visit.Forbidden, Slide: visit.Forbidden})
	}
	v.Mounts = all
	none, _ := planned(t, p, m, v, Settings{})
	if none.Status != None || len(none.Binding) == 0 {
		t.Errorf("with nothing free: %v, binding %v", none.Status, none.Binding)
	}
}

// TestThreadRunsOut leaves the nuts almost no thread, and only them free.
func TestThreadRunsOut(t *testing.T) {
	b, v, p, m := off(t, "kittiwake", []float64{4, 4}, nil)
	for i := range b.h.Mounts {
		b.h.Mounts[i].NutRangeMM = [2]float64{-0.6, 0.6}
		v.Mounts = append(v.Mounts, visit.MountFound{Mount: b.h.Mounts[i].Name, Nut: visit.Free, Slide: visit.Forbidden})
	}
	p.hull = b.h
	out, _ := planned(t, p, m, v, Settings{})
	if out.Status != None && out.Status != Unsure {
		t.Fatalf("%v: %v", out.Status, out.NutFlats)
	}
	for i, flats := range out.NutFlats {
		if lift := float64(flats) * b.h.Mounts[i].LiftPerStepMM(); math.Abs(lift) > 0.6+1e-6 {
			t.Errorf("%s moved by %.2f mm of 0.6", b.h.Mounts[i].Name, lift)
		}
	}
	plate := false
	for _, f := range out.Freeing {
		plate = plate || f.How == PlateUnder && f.MM != 0
	}
	if !plate {
		t.Errorf("binding %v, freeing %v: no plate", out.Binding, out.Freeing)
	}
}

// TestTargetIsAimedAt leaves 5 thou at the bottom on purpose.
func TestTargetIsAimedAt(t *testing.T) {
	b, v, p, m := off(t, "eider", []float64{2, 2}, []float64{0, 0, 1, 1})
	v.Target = visit.Target{Spread: visit.Thou(5), OpensAtDeg: 180, Reason: "hogs when loaded"}
	out, e := planned(t, p, m, v, Settings{})
	if out.Status != Found {
		t.Fatal(out.Status)
	}
	b.do(out)
	g := b.gap(t)
	if d := 2 * math.Hypot(g.CosMM-e.TargetMM[0], g.SinMM-e.TargetMM[1]); d > e.LimitMM {
		t.Errorf("left %.1f thou from the target", d/0.0254)
	}
	if out.Expected.MeanMM[0] > 0 {
		t.Error("the bottom does not open")
	}
}

// TestStepsAddUp: the steps are the move, each within the range, the last one
// leaves what is expected, and the shaft is drawn back by more than any gap.
func TestStepsAddUp(t *testing.T) {
	_, v, p, m := off(t, "avocet", []float64{3, 3.5}, []float64{1, 1, -2, -2})
	out, _ := planned(t, p, m, v, Settings{})
	if len(out.Steps) == 0 {
		t.Fatal(out.Status)
	}
	sum := make([]int, len(out.Moves))
	for _, s := range out.Steps {
		for k, n := range s.Moves {
			sum[k] += n
			if !out.Items[k].Slide && (n > mostFlats || n < -mostFlats) {
				t.Errorf("%d flats at once", n)
			}
		}
		if g := gapSize(s.After.MeanMM); g > out.DrawBackMM {
			t.Errorf("a gap of %.2f mm on the way, drawn back %.2f", g, out.DrawBackMM)
		}
		if !(s.StopBelowMM < s.StopAboveMM) {
			t.Errorf("stop below %.3f, above %.3f", s.StopBelowMM, s.StopAboveMM)
		}
	}
	if !slices.Equal(sum, out.Moves) {
		t.Errorf("steps %v, move %v", sum, out.Moves)
	}
	last := out.Steps[len(out.Steps)-1].After
	if math.Hypot(last.MeanMM[0]-out.Expected.MeanMM[0], last.MeanMM[1]-out.Expected.MeanMM[1]) > 1e-12 {
		t.Errorf("after the last step %v, expected %v", last, out.Expected)
	}
}

// TestCheapestByEnumeration tries every move of two flats and two slide steps
// either way.
func TestCheapestByEnumeration(t *testing.T) {
	_, v, p, m := off(t, "wren", []float64{0.4, 0.5}, []float64{0, 0, 0.5, 0.5})
	e, err := m.Estimate(v)
	if err != nil {
		t.Fatal(err)
	}
	j := &job{Planner: p, v: v, e: e, effort: &DefaultEffort, done: p.done(v)}
	if j.found, err = p.found(j.done, e.Gap.MeanMM); err != nil {
		t.Fatal(err)
	}
	learnt, err := p.learn(e, j.found)
	if err != nil {
		t.Fatal(err)
	}
	j.chance = newChance(learnt, e.TargetMM, e.LimitMM/2)
	items := j.ranges()
	for k := range items {
		items[k].Least, items[k].Most = max(items[k].Least, -2), min(items[k].Most, 2)
	}
	rows := p.loads.rows(j.done)
	r, level := j.search(&Plan{Wanted: 0.8}, items, rows)
	best, moves := math.Inf(1), make([]int, len(items))
	accept := j.chance.accept(level)
	var try func(k int)
	try = func(k int) {
		if k == len(items) {
			if keeps(rows, moves) && accept(moves) {
				f := make([]float64, len(moves))
				for i, n := range moves {
					f[i] = float64(n)
				}
				best = math.Min(best, j.effort.Minutes(p.hull, p.model.Items, f))
			}
			return
		}
		for moves[k] = -2; moves[k] <= 2; moves[k]++ {
			try(k + 1)
		}
		moves[k] = 0
	}
	try(0)
	if r.Move == nil || math.Abs(r.Effort-best) > 1e-9 {
		t.Errorf("search %v %.3f minutes at %.2f, enumeration %.3f", r.Move, r.Effort, level, best)
	}
}

func keeps(rows []search.Row, m []int) bool {
	for _, r := range rows {
		sum := 0.0
		for i, n := range m {
			sum += r.Of[i] * float64(n)
		}
		if sum > r.Most+1e-9 {
			return false
		}
	}
	return true
}

// TestJammedNutIsNoticed: the boat does not move as told, and the next plan says
// why that may be.
func TestJammedNutIsNoticed(t *testing.T) {
	b, v, p, m := off(t, "kittiwake", []float64{3, 3}, nil)
	out, _ := planned(t, p, m, v, Settings{})
	before := append([]float64(nil), b.s.LiftMM...)
	slid := append([]float64(nil), b.s.SlideMM...)
	move := b.do(out)
	copy(b.s.LiftMM, before) // nothing happened
	copy(b.s.SlideMM, slid)
	v.Events = append(v.Events, move, b.gauged(t, 0))
	again, _ := planned(t, p, m, v, Settings{})
	if again.Learnt == nil || len(again.Learnt.Surprises) != 1 {
		t.Fatalf("no surprise: %+v", again.Learnt)
	}
	if c := again.Learnt.Surprises[0].Causes[0]; c != "jam nut tight" {
		t.Errorf("cause %q", c)
	}
}
