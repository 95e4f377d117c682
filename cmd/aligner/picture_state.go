package main

// This file works out what a picture shows: the boat as it stands now and, laid
// over it, as it was gauged and as it is planned.

import (
	"aligner/cmd/aligner/window"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/report/say"
	"aligner/scene"
)

// pictured is one state with its answer, and how the scene draws it.
type pictured struct {
	state  kinematics.State
	result kinematics.Result
	move   scene.Movement
}

// drawing is all that a picture shows.
type drawing struct {
	hull            hulls.Hull
	model           *scene.Model
	now             *pictured
	gauged, planned *pictured // nil: not shown
	times           float64   // how much movement is exaggerated
	turns           []scene.Turn
}

// solve works the states out.
func (c *pictureCmd) solve(e *env, what *subject) (*drawing, error) {
	line, err := kinematics.Prepare(what.hull)
	if err != nil {
		return nil, err
	}
	d := &drawing{hull: what.hull, model: scene.NewModel(what.hull)}
	work := func(moves ...[2][]float64) (*pictured, error) {
		steps, slidesMM := summed(len(what.hull.Mounts), moves)
		p := &pictured{state: kinematics.State{Held: what.held, Afloat: c.Afloat, SlideMM: slidesMM}}
		for i, n := range steps {
			p.state.LiftMM = append(p.state.LiftMM, n*what.hull.Mounts[i].LiftPerStepMM())
		}
		if why := p.state.Invalid(&what.hull); why != "" {
			return nil, usageError{plain(why)}
		}
		if err := line.Solve(&p.state, &p.result); err != nil {
			return nil, err
		}
		d.model.Read(line, &p.state, &p.result, &p.move)
		return p, nil
	}
	asked := func(nuts, slides []string) (m [2][]float64) {
		if err == nil {
			m[0], m[1], err = moveFlags{nuts, slides}.steps(&what.hull)
		}
		if err == nil { // warned of what leaves a mount's range
			apply(e, &what.hull, m[0], m[1], &kinematics.State{})
		}
		return m
	}
	stands := [2][]float64{what.standsSteps, what.standsMM}
	now, gauged, planned := asked(c.Nut, c.Slide), asked(c.GaugedNut, c.GaugedSlide), asked(c.PlanNut, c.PlanSlide)
	if err != nil {
		return nil, err
	}
	if d.now, err = work(stands, now); err != nil {
		return nil, err
	}
	if c.AsGauged || len(c.GaugedNut)+len(c.GaugedSlide) > 0 {
		if d.gauged, err = work(stands, gauged); err != nil {
			return nil, err
		}
	}
	move := [2][]float64{what.plannedSteps, what.plannedMM}
	if len(c.PlanNut)+len(c.PlanSlide) > 0 {
		move = planned
		d.planned, err = work(stands, now, planned)
	} else if what.plannedSteps != nil {
		d.planned, err = work(stands, move)
	}
	if d.planned != nil {
		steps, slidesMM := summed(len(what.hull.Mounts), [][2][]float64{move})
		d.turns = window.Turns(speaker, c.units(), &d.hull, steps, slidesMM, nil)
	}
	if err != nil {
		return nil, err
	}
	d.times = c.exaggeration(d)
	return d, nil
}

// summed adds moves up: nut steps and slides by mount.
func summed(mounts int, moves [][2][]float64) (steps, slidesMM []float64) {
	sum := [2][]float64{make([]float64, mounts), make([]float64, mounts)}
	for _, m := range moves {
		for kind := range sum {
			for i, v := range m[kind] {
				sum[kind][i] += v
			}
		}
	}
	return sum[0], sum[1]
}

// exaggeration is what was asked for, but no more than keeps every state in
// the picture.
func (c *pictureCmd) exaggeration(d *drawing) float64 {
	n := c.Times
	for _, p := range []*pictured{d.now, d.gauged, d.planned} {
		if p != nil {
			n = min(n, d.model.MaxExaggeration(&p.move))
		}
	}
	return n
}

// sceneState is how the scene is to show it.
func (c *pictureCmd) sceneState(d *drawing) scene.State {
	s := scene.State{Now: &d.now.move, Exaggeration: d.times, Afloat: c.Afloat, Dark: c.Dark}
	if d.gauged != nil {
		s.Gauged = &d.gauged.move
	}
	if d.planned != nil {
		s.Planned, s.Turns = &d.planned.move, d.turns
	}
	return s
}

// units are those asked for.
func (c *pictureCmd) units() say.Units { return readerUnits(c.Metric) }
