package main

// This file is the verb estimate: what the readings of a visit mean.

import (
	"fmt"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/say"
)

type estimateCmd struct {
	Visit  string `arg:"" help:"${help_visit}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// Run estimates. It ends with 1 unless the gap is within.
func (c *estimateCmd) Run(e *env) error {
	d, est, err := estimateVisit(e, c.Visit)
	if err != nil {
		return err
	}
	if c.JSON {
		err = e.printJSON(estimateJSONOf(est))
	} else {
		e.estimateText(d, est, readerUnits(c.Metric))
	}
	if err == nil && est.Verdict != gauge.Within {
		return told(exitAnswer)
	}
	return err
}

// estimateVisit opens a visit and estimates it.
func estimateVisit(e *env, nameOrPath string) (visit.Document, *gauge.Estimate, error) {
	d, doubts, err := openVisit(nameOrPath)
	if err != nil {
		return d, nil, err
	}
	e.warnDoubts(doubts)
	m, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		return d, nil, err
	}
	est, err := m.Estimate(&d.Visit)
	return d, est, err
}

// estimateText is the estimate for people.
func (e *env) estimateText(d visit.Document, est *gauge.Estimate, u say.Units) {
	s := speaker
	date := d.Visit.Date
	if date != "" {
		date = ", " + date
	}
	boat := s.Say(words.Dry, nil)
	if d.Visit.State.Afloat() {
		boat = s.Say(words.Afloat, nil)
	}
	e.say(words.EstimateTitle, words.Args{"Hull": d.Hull.Name, "Date": date, "Held": est.Aim, "Boat": boat})
	for _, line := range say.Estimate(s, u, &d.Visit, est) {
		fmt.Fprintln(e.stdout, line)
	}
}
