package report

// This file works out how the engine stood when it was first gauged, stands now,
// and will stand: what pictures and sentences on before and after need.

import (
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
)

// stood is the engine at one time of the visit.
type stood struct {
	gapMM    [2]float64 // [A, B] that its position gives
	estimate *gauge.Estimate
	state    kinematics.State
	planned  bool // not done yet
}

// beforeAfter are the first gauged state and the last, or the planned one where
// nothing has been moved yet. Either is nil where there is none.
func (d *drawer) beforeAfter() (before, after *stood, err error) {
	planner, err := plan.NewPlanner(d.h, d.v.State.Afloat())
	if err != nil {
		return nil, nil, err
	}
	first := BeforeMoving(d.v)
	moved := first < len(d.v.Events)
	if before, err = d.stoodAfter(planner, first); err != nil {
		return nil, nil, err
	}
	switch {
	case moved && d.told():
		after, err = d.stoodAfter(planner, len(d.v.Events))
	case !moved && before != nil && d.planned():
		lift := append([]float64(nil), before.state.LiftMM...)
		slide := append([]float64(nil), before.state.SlideMM...)
		for i, m := range d.h.Mounts {
			lift[i] += float64(d.p.NutFlats[i]) * m.LiftPerStepMM()
			slide[i] += d.p.SlideMM[i]
		}
		after = &stood{gapMM: d.p.Expected.MeanMM, state: before.state, planned: true}
		after.state.LiftMM, after.state.SlideMM = lift, slide
	}
	return before, after, err
}

// stoodAfter is the engine after so many events; nil where they do not tell.
func (d *drawer) stoodAfter(planner *plan.Planner, events int) (*stood, error) {
	then := Until(d.in.Document, events)
	e := d.e
	if events < len(d.v.Events) {
		m, err := gauge.NewModel(d.h, d.v.State.Afloat())
		if err != nil {
			return nil, err
		}
		if e, err = m.Estimate(&then.Visit); err != nil {
			return nil, err
		}
	}
	if e.Status != gauge.Ready || e.GapCount == 0 || !e.Flat {
		return nil, nil
	}
	lift, slide, err := planner.AsFound(&then.Visit, e)
	if err != nil {
		return nil, err
	}
	return &stood{gapMM: e.Gap.MeanMM, estimate: e,
		state: kinematics.State{Held: e.Aim, Afloat: d.v.State.Afloat(), LiftMM: lift, SlideMM: slide}}, nil
}

// States are the engine as first gauged and as it stands now, or with nothing moved
// yet as planned, which planned tells. Either is nil where the readings do not say.
func (in Input) States() (before, after *kinematics.State, planned bool, err error) {
	d := &drawer{in: in, h: &in.Document.Hull, v: &in.Document.Visit, e: in.Estimate, p: in.Plan}
	first, last, err := d.beforeAfter()
	if first != nil {
		before = &first.state
	}
	if last != nil {
		after, planned = &last.state, last.planned
	}
	return before, after, planned, err
}
