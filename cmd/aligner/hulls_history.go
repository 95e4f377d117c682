package main

// This file is the verb hulls history: a boat's past in sentences, numbers and
// plots.

import (
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"aligner/assets/words"
	"aligner/cmd/aligner/outfile"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/report/history"
	"aligner/report/say"
)

type hullsHistoryCmd struct {
	Hull   string `arg:"" help:"${help_entry}"`
	Out    string `name:"out" short:"o" placeholder:"FILE" help:"${help_history_out}"`
	Hours  bool   `help:"${help_history_hours}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// Run tells the past of one boat.
func (c *hullsHistoryCmd) Run(e *env) error {
	format := strings.TrimPrefix(strings.ToLower(filepath.Ext(c.Out)), ".")
	if c.Out != "" && !slices.Contains(history.Formats, format) {
		return &hulls.Fault{File: c.Out, Value: quotedIfEmpty(filepath.Ext(c.Out)),
			Limit: speaker.Say(words.HistoryOutLimit, words.Args{"List": "." + strings.Join(history.Formats, ", .")}), Mend: speaker.Say(words.HistoryOutMend, nil)}
	}
	return withLogbook(logbook.Read, func(b *logbook.Book) error {
		id, err := findHull(b, c.Hull)
		if err != nil {
			return err
		}
		past, err := history.Of(b, id)
		if err != nil {
			return err
		}
		u := readerUnits(c.Metric)
		if c.Out != "" {
			d := history.Drawing{Past: past, Speaker: speaker, Units: u, ByHours: c.Hours}
			if err := outfile.Write(c.Out, func(w io.Writer) error { return d.Write(w, format) }); err != nil {
				return err
			}
		}
		if c.JSON {
			return e.printJSON(past.JSON())
		}
		e.pastText(past, u)
		return nil
	})
}

// pastText is a past for people: each visit with what happened before it.
func (e *env) pastText(past *history.Past, u say.Units) {
	if len(past.Entries) == 0 {
		e.say(words.HistoryNone, words.Args{"Name": past.Hull.Name})
		return
	}
	e.say(words.HistoryTitle, words.Args{"Name": past.Hull.Name})
	s := history.Speech{Speaker: speaker, Units: u, Past: past}
	for i := range past.Entries {
		for _, line := range s.Change(i) {
			fmt.Fprintln(e.stdout, "  "+line)
		}
		for _, line := range s.Visit(i) {
			fmt.Fprintln(e.stdout, line)
		}
	}
}
