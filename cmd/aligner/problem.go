package main

// This file is the verb report-problem, and where faults are written down.

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"sync"
	"time"

	"aligner/assets/words"
	"aligner/cmd/aligner/faults"
	"aligner/cmd/aligner/outfile"
	"aligner/hulls"
	"aligner/hulls/visit"
)

type problemCmd struct {
	Visit string `arg:"" optional:"" help:"${help_problem_visit}"`
	Out   string `name:"out" short:"o" required:"" placeholder:"FILE" help:"${help_problem_out}"`
}

// Run packs the report. A visit that cannot be read may be the problem itself,
// so its file goes in as it is.
func (c *problemCmd) Run(e *env) error {
	if strings.ToLower(filepath.Ext(c.Out)) != ".zip" {
		return moveFault("", fmt.Sprintf("%q", c.Out), speaker.Say(words.ProblemNotZipLimit, nil), speaker.Say(words.ProblemNotZipMend, nil))
	}
	r := &faults.Report{When: time.Now(), Program: programName(), ReadMe: readMe(), Faults: faultLog().LastRun()}
	if c.Visit != "" {
		data, fault := visitBytes(c.Visit)
		if fault != nil {
			return fault
		}
		r.Visit = data
		if d, _, err := openVisit(c.Visit); err == nil {
			r.Visit, r.Hull = visit.Encode(d.Visit), hulls.Encode(d.Hull)
		} else if f := (*hulls.Fault)(nil); errors.As(err, &f) {
			e.warn(oneLine(speaker.Retell(err.Error())))
			r.Faults += faults.WithoutHome(err.Error()) + "\n"
		}
	}
	if err := outfile.Write(c.Out, r.Pack); err != nil {
		return err
	}
	e.say(words.ProblemSaved, words.Args{"File": c.Out})
	return nil
}

// readMe says what is inside.
func readMe() string {
	var lines []string
	for _, id := range []words.ID{words.ProblemInside, words.ProblemInsideWhat, words.ProblemInsideNot} {
		lines = append(lines, speaker.Say(id, nil))
	}
	return strings.Join(lines, "\n\n") + "\n"
}

// faultLog is the log of faults, beside the logbook.
var faultLog = sync.OnceValue(func() *faults.Log {
	folder := ""
	if path, err := logbookPath(); err == nil {
		folder = filepath.Dir(path)
	}
	l := faults.In(folder)
	l.Begin(programName())
	return l
})
