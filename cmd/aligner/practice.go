package main

// This file is the verb practice: which boats there are to practise on, and what
// learners made of them. The practice itself is in the window.

import (
	"encoding/json"
	"time"

	"aligner/assets/words"
	"aligner/kinematics/practice"
	"aligner/report/learners"
	"aligner/report/say"
)

type practiceCmd struct {
	List    practiceListCmd    `cmd:"" default:"1" help:"${help_practice_list}"`
	Results practiceResultsCmd `cmd:"" help:"${help_practice_results}"`
}

type practiceListCmd struct{}

// Run lists the grades.
func (c *practiceListCmd) Run(e *env) error {
	for _, g := range practice.Grades {
		e.say(words.PracticeList, words.Args{"Key": g, "Grade": say.Grade(speaker, g), "Last": practice.Numbers})
	}
	return nil
}

type practiceResultsCmd struct {
	Learner string `placeholder:"NAME" help:"${help_practice_of}"`
	Rows    bool   `help:"${help_practice_rows}" xor:"form"`
	Metric  bool   `help:"${help_metric}"`
	JSON    bool   `name:"json" help:"${help_json}" xor:"form"`
}

// Run lists results.
func (c *practiceResultsCmd) Run(e *env) error {
	path, err := logbookPath()
	if err != nil {
		return err
	}
	file := learners.Beside(path)
	all, damaged, err := file.All()
	if err != nil {
		return err
	}
	for _, n := range damaged {
		e.warn(speaker.Say(words.PracticeDamaged, words.Args{"File": file.Path, "Line": n}))
	}
	all = learners.Of(all, c.Learner)
	switch {
	case c.JSON:
		out := json.NewEncoder(e.stdout)
		out.SetIndent("", "  ")
		return out.Encode(struct {
			Results []learners.Result `json:"results"`
		}{append([]learners.Result{}, all...)})
	case c.Rows:
		return learners.WriteRows(e.stdout, all)
	case len(all) == 0:
		e.say(words.PracticeResultsNone, nil)
	}
	u := readerUnits(c.Metric)
	for i := range all {
		r := &all[i]
		e.say(words.PracticeLine, words.Args{"Date": r.Ended.Local().Format(time.DateOnly), "Learner": r.Learner,
			"Task":    speaker.Say(words.PracticeTaskShort, words.Args{"Grade": say.Grade(speaker, r.Task.Grade), "Number": r.Task.Number}),
			"Outcome": say.Outcome(speaker, u, &r.Debrief)})
	}
	return nil
}
