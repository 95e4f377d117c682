package main

// This file is the verb plan: what to turn and slide after a visit's readings.

import (
	"fmt"
	"strconv"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/say"
)

type planCmd struct {
	Visit  string  `arg:"" help:"${help_visit}"`
	Wanted float64 `default:"0.9" help:"${help_plan_wanted}"`
	Metric bool    `help:"${help_metric}"`
	JSON   bool    `name:"json" help:"${help_json}"`
}

// Run plans. It ends with 1 where there is no such move.
func (c *planCmd) Run(e *env) error {
	if !(c.Wanted >= 0.5 && c.Wanted <= 0.99) {
		return &hulls.Fault{Place: "--wanted", Value: strconv.FormatFloat(c.Wanted, 'g', -1, 64),
			Limit: speaker.Say(words.PlanWantedLimit, nil), Mend: speaker.Say(words.PlanWantedMend, nil)}
	}
	d, est, err := estimateVisit(e, c.Visit)
	if err != nil {
		return err
	}
	p, err := planOf(&d, est, plan.Settings{Wanted: c.Wanted})
	if err != nil {
		return err
	}
	if c.JSON {
		err = e.printJSON(planJSONOf(&d.Hull, p))
	} else {
		e.planText(&d, est, p, readerUnits(c.Metric))
	}
	if err == nil && (p.Status == plan.None || p.Status == plan.NotForMoves) {
		return told(exitAnswer)
	}
	return err
}

func planOf(d *visit.Document, est *gauge.Estimate, s plan.Settings) (*plan.Plan, error) {
	planner, err := plan.NewPlanner(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		return nil, err
	}
	return planner.Plan(&d.Visit, est, s)
}

// planText is the plan for people, the verdict before it.
func (e *env) planText(d *visit.Document, est *gauge.Estimate, p *plan.Plan, u say.Units) {
	s := speaker
	if est.Status == gauge.Ready && est.Flat {
		for _, line := range append(say.Stands(s, u, est), say.Verdict(s, u, &d.Visit, est)...) {
			fmt.Fprintln(e.stdout, line)
		}
	}
	for _, line := range say.Plan(s, u, &d.Hull, est, p, d.Visit.State.Afloat()) {
		fmt.Fprintln(e.stdout, line)
	}
}
