package main

// This file finds what a picture is drawn of: a hull, or a visit, whose readings
// say where the engine stands and whose plan says where it is to go.

import (
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
)

// subject is what a picture is drawn of.
type subject struct {
	hull hulls.Hull
	held kinematics.Held
	// Where the engine stands before the flags move it, and the planned move:
	// steps of the nuts and mm, by mount; nil: as drawn, no plan.
	standsSteps, standsMM   []float64
	plannedSteps, plannedMM []float64
}

// subject opens the hull or visit named. A visit says itself whether the boat is
// afloat.
func (c *pictureCmd) subject(e *env) (*subject, error) {
	if data, fault := visitBytes(c.Hull); fault == nil && isVisit(data) {
		return c.visitSubject(e)
	}
	h, doubts, err := openHull(c.Hull)
	if err != nil {
		return nil, err
	}
	e.warnDoubts(doubts)
	return &subject{hull: h, held: kinematics.Held(c.Held)}, nil
}

func (c *pictureCmd) visitSubject(e *env) (*subject, error) {
	d, est, err := estimateVisit(e, c.Hull)
	if err != nil {
		return nil, err
	}
	c.Afloat = d.Visit.State.Afloat()
	s := &subject{hull: d.Hull, held: kinematics.Held(c.Held)}
	if est.Status != gauge.Ready || !est.Flat {
		e.warn(speaker.Say(words.PictureNoStand, nil))
		return s, nil
	}
	planner, err := plan.NewPlanner(&d.Hull, c.Afloat)
	if err != nil {
		return nil, err
	}
	lifts, slides, err := planner.AsFound(&d.Visit, est)
	if err != nil {
		return nil, err
	}
	s.standsMM, s.standsSteps = slides, make([]float64, len(lifts))
	for i, mm := range lifts {
		s.standsSteps[i] = mm / d.Hull.Mounts[i].LiftPerStepMM()
	}
	p, err := planner.Plan(&d.Visit, est, plan.Settings{})
	if err != nil {
		return nil, err
	}
	for i, n := range p.NutFlats {
		if n != 0 || p.SlideMM[i] != 0 { // there is a move
			s.planned(p)
			break
		}
	}
	return s, nil
}

// planned takes a plan's moves over.
func (s *subject) planned(p *plan.Plan) {
	s.plannedMM = p.SlideMM
	for _, n := range p.NutFlats {
		s.plannedSteps = append(s.plannedSteps, float64(n))
	}
}
