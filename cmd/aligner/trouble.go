package main

// This file is the verb trouble: from what a boat does to what may be wrong, and
// the next cheap test.

import (
	"fmt"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/say"
	"aligner/report/trouble"
)

type troubleCmd struct {
	Of      string   `arg:"" help:"${help_trouble_of}"`
	Symptom []string `arg:"" optional:"" help:"${help_trouble_symptom}"`
	Tried   []string `placeholder:"TEST=good|bad" sep:"none" help:"${help_trouble_test}"`
	Metric  bool     `help:"${help_metric}"`
	JSON    bool     `name:"json" help:"${help_json}"`
}

// Run ranks the causes. Without a symptom it lists those there are.
func (c *troubleCmd) Run(e *env) error {
	d, est, err := c.open(e)
	if err != nil {
		return err
	}
	symptoms, err := c.symptoms(&d.Visit)
	if err != nil {
		return err
	}
	made, err := c.made(&d.Visit)
	if err != nil {
		return err
	}
	all := trouble.All(made, trouble.Told(&d, est))
	boat, err := trouble.BoatOf(&d.Hull, nil, 0) // a file has no visits before
	if err != nil {
		return err
	}
	var found []trouble.Finding
	for _, s := range symptoms {
		found = append(found, trouble.WeighOn(boat, s, all))
	}
	if c.JSON {
		return e.printJSON(troubleJSONOf(found))
	}
	if len(found) == 0 {
		e.say(words.TroubleSymptoms, nil)
		for _, s := range trouble.Symptoms {
			fmt.Fprintf(e.stdout, "   %s: %s\n", s, s.Name(speaker))
		}
		return nil
	}
	for i := range found {
		e.trouble(&found[i], &boat)
	}
	return e.shake(&d, symptoms, readerUnits(c.Metric))
}

// trouble prints one symptom's causes and the next test.
func (e *env) trouble(f *trouble.Finding, boat *trouble.Boat) {
	s := speaker
	fmt.Fprintf(e.stdout, "%s:\n", f.Symptom.Name(s))
	for _, line := range f.Text(s) {
		fmt.Fprintln(e.stdout, "   "+line)
	}
	if known := boat.Text(s, f.Symptom); len(known) > 0 {
		e.say(words.TroubleBoatTitle, nil)
		for _, line := range known {
			fmt.Fprintln(e.stdout, "   "+line)
		}
	}
	if len(f.Next) == 0 {
		e.say(words.TroubleNoNext, nil)
		return
	}
	fmt.Fprintln(e.stdout, trouble.NextText(s, f.Next[0]))
	for _, line := range f.Next[0].Text(s, f) {
		fmt.Fprintln(e.stdout, "   "+line)
	}
}

// shake tells, where a boat shakes, what of that line-up can make.
func (e *env) shake(d *visit.Document, symptoms []trouble.Symptom, u say.Units) error {
	for _, s := range symptoms {
		if !s.Shakes() || !d.Hull.Coupling.BoltedKnown() { // how she is bolted through one is not known
			continue
		}
		shake, err := trouble.ShakeOf(&d.Hull, d.Visit.State.Afloat())
		if err != nil {
			return err
		}
		e.say(words.TroubleShakeTitle, nil)
		for _, line := range shake.Text(speaker, u) {
			fmt.Fprintln(e.stdout, "   "+line)
		}
		return nil
	}
	return nil
}

// open opens a visit, with its estimate, or a hull.
func (c *troubleCmd) open(e *env) (visit.Document, *gauge.Estimate, error) {
	if data, fault := visitBytes(c.Of); fault == nil && isVisit(data) {
		return estimateVisit(e, c.Of)
	}
	h, doubts, err := openHull(c.Of)
	if err != nil {
		return visit.Document{}, nil, err
	}
	e.warnDoubts(doubts)
	return visit.New(c.Of, h), nil, nil
}

// symptoms are those asked for, or those the visit notes.
func (c *troubleCmd) symptoms(v *visit.Visit) (list []trouble.Symptom, err error) {
	typed := c.Symptom
	if len(typed) == 0 {
		typed = v.Trouble.Symptoms
	}
	for _, text := range typed {
		s, ok := trouble.Find(trouble.Symptoms, text, func(s trouble.Symptom) string { return s.Name(speaker) })
		if !ok {
			return nil, noWord("symptom", text, trouble.Symptoms)
		}
		list = append(list, s)
	}
	return list, nil
}

// made are the tests the visit says were made, and those of the flags.
func (c *troubleCmd) made(v *visit.Visit) (trouble.Answers, error) {
	made := trouble.Made(v)
	for _, text := range c.Tried {
		i := strings.LastIndex(text, "=")
		name, answer := text[:max(i, 0)], trouble.Answer(text[i+1:])
		t, ok := trouble.Find(trouble.Tests, name, func(t trouble.Test) string { return t.Name(speaker) })
		if !ok {
			return nil, noWord("--tried", text, trouble.Tests)
		}
		if answer != trouble.Good && answer != trouble.Bad {
			return nil, noWord("--tried", text, []trouble.Answer{trouble.Good, trouble.Bad})
		}
		made[t] = answer
	}
	return made, nil
}

// noWord is the fault of a word there is none of.
func noWord[T ~string](place, typed string, known []T) error {
	list := make([]string, len(known))
	for i, k := range known {
		list[i] = string(k)
	}
	return &hulls.Fault{Place: place, Value: fmt.Sprintf("%q", typed), Limit: "one of " + strings.Join(list, ", "), Mend: "write one of these"}
}

// troubleJSON is a symptom's causes for programs.
type troubleJSON struct {
	Symptom   trouble.Symptom `json:"symptom"`
	Causes    []causeJSON     `json:"causes"`
	NextTests []testJSON      `json:"next_tests"`
}

type causeJSON struct {
	Cause  trouble.Cause `json:"cause"`
	Grade  trouble.Grade `json:"grade"`
	Tested bool          `json:"tested"`
}

type testJSON struct {
	Test    trouble.Test `json:"test"`
	Minutes int          `json:"minutes"`
}

func troubleJSONOf(found []trouble.Finding) map[string]any {
	list := []troubleJSON{}
	for _, f := range found {
		j := troubleJSON{Symptom: f.Symptom, Causes: []causeJSON{}, NextTests: []testJSON{}}
		for _, c := range f.Causes {
			j.Causes = append(j.Causes, causeJSON{c.Cause, c.Grade, c.Tested})
		}
		for _, t := range f.Next {
			j.NextTests = append(j.NextTests, testJSON{t, t.Minutes()})
		}
		list = append(list, j)
	}
	return map[string]any{"troubles": list, "symptoms": trouble.Symptoms}
}
