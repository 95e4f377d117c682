package main

// This file works out what a picture shows: the boat as it stands now and, laid
// over it, as it was gauged and as it is planned.

import (
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
}

// solve works the states out.
func (c *pictureCmd) solve(e *env, h hulls.Hull) (*drawing, error) {
	line, err := kinematics.Prepare(h)
	if err != nil {
		return nil, err
	}
	d := &drawing{hull: h, model: scene.NewModel(h)}
	work := func(flags moveFlags, on *pictured) (*pictured, error) {
		nuts, slidesMM, err := flags.steps(&h)
		if err != nil {
			return nil, err
		}
		if on != nil { // counted on from there
			for i := range nuts {
				nuts[i] += on.state.LiftMM[i] / h.Mounts[i].LiftPerStepMM()
				slidesMM[i] += on.state.SlideMM[i]
			}
		}
		p := &pictured{state: kinematics.State{Held: kinematics.Held(c.Held), Afloat: c.Afloat}}
		apply(e, &h, nuts, slidesMM, &p.state)
		if why := p.state.Invalid(&h); why != "" {
			return nil, usageError{plain(why)}
		}
		if err := line.Solve(&p.state, &p.result); err != nil {
			return nil, err
		}
		d.model.Read(line, &p.state, &p.result, &p.move)
		return p, nil
	}
	if d.now, err = work(c.moveFlags, nil); err != nil {
		return nil, err
	}
	if c.AsGauged || len(c.GaugedNut)+len(c.GaugedSlide) > 0 {
		if d.gauged, err = work(moveFlags{c.GaugedNut, c.GaugedSlide}, nil); err != nil {
			return nil, err
		}
	}
	if len(c.PlanNut)+len(c.PlanSlide) > 0 {
		if d.planned, err = work(moveFlags{c.PlanNut, c.PlanSlide}, d.now); err != nil {
			return nil, err
		}
	}
	d.times = c.exaggeration(d)
	return d, nil
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
		s.Planned = &d.planned.move
	}
	return s
}

// units are those asked for.
func (c *pictureCmd) units() say.Units { return say.Units{Metric: c.Metric} }
