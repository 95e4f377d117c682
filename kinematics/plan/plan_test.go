package plan

// This file plans whole jobs: gauge by the model itself, plan, move, look.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
)

func hull(t testing.TB, name string) *hulls.Hull {
	t.Helper()
	h := builtin.Hull(t, name)
	return &h
}

// boat is a truth that can be gauged.
type boat struct {
	h    *hulls.Hull
	line *kinematics.DriveLine
	s    kinematics.State
}

func newBoat(t testing.TB, name string) *boat {
	h := hull(t, name)
	d, err := kinematics.Prepare(*h)
	if err != nil {
		t.Fatal(err)
	}
	held := kinematics.Seated
	if !h.Coupling.HasPilot() {
		held = kinematics.Centred
	}
	return &boat{h, d, kinematics.State{Held: held, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}}
}

func (b *boat) gap(t testing.TB) kinematics.Gap {
	t.Helper()
	var r kinematics.Result
	if err := b.line.Solve(&b.s, &r); err != nil {
		t.Fatal(err)
	}
	return r.Gap
}

// gauged is a gauging with leaves a thou apart, at every hour.
func (b *boat) gauged(t testing.TB, turnDeg float64) visit.Event {
	gap := b.gap(t)
	g := &visit.Gauging{Held: string(b.s.Held), ShaftTurnDeg: turnDeg, FlangeTurnDeg: turnDeg}
	for hour := range 12 {
		thou := gap.AtHourMM(hour) / 0.0254
		leaf := visit.Leaf{ClockDeg: float64(30 * hour), Stops: visit.Thou(math.Floor(thou) + 1)}
		if thou >= 1 {
			leaf.Goes = visit.Thou(math.Floor(thou))
		}
		g.Readings = append(g.Readings, leaf)
	}
	return visit.Event{Gauging: g}
}

// do moves the boat as planned.
func (b *boat) do(p *Plan) visit.Event {
	m := &visit.Move{NutFlats: map[string]float64{}, SlideMM: map[string]float64{}}
	for i, mount := range b.h.Mounts {
		b.s.LiftMM[i] += float64(p.NutFlats[i]) * mount.LiftPerStepMM()
		b.s.SlideMM[i] += p.SlideMM[i]
		if p.NutFlats[i] != 0 {
			m.NutFlats[mount.Name] = float64(p.NutFlats[i])
		}
		if p.SlideMM[i] != 0 {
			m.SlideMM[mount.Name] = p.SlideMM[i]
		}
	}
	return visit.Event{Move: m}
}

// TestPlansOfAllHulls throws every hull's engine off and follows the plan once.
func TestPlansOfAllHulls(t *testing.T) {
	for _, name := range assets.HullNames() {
		b := newBoat(t, name)
		p, err := NewPlanner(b.h, false)
		if err != nil {
			t.Fatal(name, err)
		}
		m, err := gauge.NewModel(b.h, false)
		if err != nil {
			t.Fatal(name, err)
		}
		b.s.LiftMM[0], b.s.LiftMM[1] = 2, 2.4
		b.s.SlideMM[2], b.s.SlideMM[3] = 1.5, 1.5
		before := b.gap(t).SpreadMM()
		v := &visit.Visit{HullName: name, Events: []visit.Event{b.gauged(t, 0), b.gauged(t, 180)}}
		e, err := m.Estimate(v)
		if err != nil {
			t.Fatal(name, err)
		}
		plan, err := p.Plan(v, e, Settings{})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		b.do(plan)
		after := b.gap(t).SpreadMM()
		t.Logf("%s: %v %.2f -> %.2f thou, expected %.2f; flats %v slides %v, %.1f min, p %.2f, %d nodes, warnings %v binding %v freeing %v, draw back %.1f",
			name, plan.Status, before/0.0254, after/0.0254, gapSize(plan.Expected.MeanMM)/0.0254, plan.NutFlats, plan.SlideMM, plan.Minutes, plan.Probability, plan.Nodes, plan.Warnings, plan.Binding, plan.Freeing, plan.DrawBackMM)
		if plan.Status != Found && plan.Status != Unsure {
			t.Errorf("%s: %v", name, plan.Status)
		}
		if after > e.LimitMM*1.3 {
			t.Errorf("%s: left %.2f thou", name, after/0.0254)
		}
	}
}

func BenchmarkPlan(b *testing.B) {
	for _, name := range []string{"kittiwake", "avocet", "cormorant"} {
		b.Run(name, func(b *testing.B) {
			bt := newBoat(b, name)
			bt.s.LiftMM[0], bt.s.LiftMM[1] = 3, 3.4
			p, err := NewPlanner(bt.h, false)
			if err != nil {
				b.Fatal(err)
			}
			m, err := gauge.NewModel(bt.h, false)
			if err != nil {
				b.Fatal(err)
			}
			v := &visit.Visit{Events: []visit.Event{bt.gauged(b, 0), bt.gauged(b, 180)}}
			e, err := m.Estimate(v)
			if err != nil {
				b.Fatal(err)
			}
			for b.Loop() {
				if _, err := p.Plan(v, e, Settings{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
