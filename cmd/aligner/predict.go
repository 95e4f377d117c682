package main

// This file is the verb predict: what nuts and slides do to the gap.

import (
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
)

type predictCmd struct {
	Hull string `arg:"" help:"${help_hull}"`
	moveFlags
	Held   string  `enum:"hanging,centred,seated,bolted" default:"seated" help:"${help_predict_held}"`
	Lever  bool    `help:"${help_predict_lever}"`
	Afloat bool    `help:"${help_predict_afloat}"`
	Thrust float64 `placeholder:"N" help:"${help_predict_thrust}"`
	Torque float64 `placeholder:"N.m" help:"${help_predict_torque}"`
	Apart  float64 `placeholder:"MM" help:"${help_predict_apart}"`
	Pull   float64 `placeholder:"N" help:"${help_predict_pull}"`
	Metric bool    `help:"${help_metric}"`
	JSON   bool    `name:"json" help:"${help_json}"`
}

// prediction is everything a prediction came to.
type prediction struct {
	hull           hulls.Hull
	nuts, slidesMM []float64
	state          kinematics.State
	drawn, result  kinematics.Result
	stressMPa      float64
	stressAtMM     float64
	centring       *kinematics.Centring // hanging only
}

// Run predicts.
func (c *predictCmd) Run(e *env) error {
	p, err := c.predict(e)
	if err != nil {
		return err
	}
	if c.JSON {
		return e.printJSON(p.json())
	}
	p.text(e, c.Metric)
	return nil
}

// predict works it out.
func (c *predictCmd) predict(e *env) (*prediction, error) {
	h, doubts, err := openHull(c.Hull)
	if err != nil {
		return nil, err
	}
	e.warnDoubts(doubts)
	p := &prediction{hull: h}
	if p.nuts, p.slidesMM, err = c.steps(&h); err != nil {
		return nil, err
	}
	p.state = kinematics.State{Held: kinematics.Held(c.Held), LeverOn: c.Lever, Afloat: c.Afloat,
		ThrustN: c.Thrust, TorqueNMM: 1000 * c.Torque, ApartMM: c.Apart, PullN: c.Pull}
	apply(e, &h, p.nuts, p.slidesMM, &p.state)
	if why := p.state.Invalid(&h); why != "" {
		return nil, usageError{plain(speaker.Say(words.StateRefused, words.Args{"What": why}))}
	}
	d, err := kinematics.PrepareFine(h)
	if err != nil {
		return nil, err
	}
	drawn := kinematics.State{Held: p.state.Held, Afloat: p.state.Afloat, ApartMM: p.state.ApartMM}
	if err := d.Solve(&drawn, &p.drawn); err != nil {
		return nil, err
	}
	if err := d.Solve(&p.state, &p.result); err != nil {
		return nil, err
	}
	p.stressMPa, p.stressAtMM = d.BendingStressMPa()
	if p.state.Held == kinematics.Hanging {
		lift, err := d.Centring(p.state.Afloat)
		if err == nil { // a shaft that stands high unlifted has no lift to tell
			p.centring = &lift
		}
	}
	return p, nil
}

// plain is an error that is just its text.
type plain string

func (p plain) Error() string { return string(p) }
