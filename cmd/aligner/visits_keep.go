package main

// This file is what the verb visits does with the logbook: begin a visit, write
// one to a file, enter one from a file.

import (
	"errors"
	"io"
	"time"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/logbook"
)

type visitsNewCmd struct {
	Hull string `arg:"" help:"${help_entry}"`
	Date string `placeholder:"DATE" help:"${help_visits_date}"`
	JSON bool   `name:"json" help:"${help_json}"`
}

// Run begins a visit.
func (c *visitsNewCmd) Run(e *env) error {
	if c.Date == "" {
		c.Date = time.Now().Format(time.DateOnly)
	}
	return withLogbook(logbook.Write, func(b *logbook.Book) error {
		hull, err := findHull(b, c.Hull)
		if err != nil {
			return err
		}
		id, err := b.NewVisit(hull, c.Date)
		if err != nil {
			return err
		}
		return e.visitEntered(b, id, c.JSON)
	})
}

func (e *env) visitEntered(b *logbook.Book, id logbook.VisitID, asJSON bool) error {
	d, err := b.Document(id)
	if err != nil {
		return err
	}
	if asJSON {
		return e.printJSON(map[string]any{"number": id, "hull": d.Hull.Name, "date": d.Visit.Date})
	}
	e.say(words.LogbookVisitEntered, words.Args{"Number": id, "Name": d.Hull.Name})
	return nil
}

type visitsExportCmd struct {
	Visit string `arg:"" help:"${help_entry}"`
	Out   string `name:"out" short:"o" required:"" placeholder:"FILE" help:"${help_visits_out}"`
}

// Run writes a visit file.
func (c *visitsExportCmd) Run(e *env) error {
	return withLogbook(logbook.Read, func(b *logbook.Book) error {
		_, d, err := findVisit(b, c.Visit)
		if err != nil {
			return err
		}
		if err := writeNew(c.Out, func(w io.Writer) error { _, err := w.Write(withHull(d)); return err }); err != nil {
			return err
		}
		e.say(words.LogbookExported, words.Args{"Name": d.Hull.Name, "File": c.Out})
		return nil
	})
}

type visitsImportCmd struct {
	Visit string `arg:"" help:"${help_visit}"`
	Hull  string `placeholder:"HULL" help:"${help_visits_of}"`
	JSON  bool   `name:"json" help:"${help_json}"`
}

// Run enters a visit file.
func (c *visitsImportCmd) Run(e *env) error {
	d, doubts, err := openVisit(c.Visit)
	if err != nil {
		return err
	}
	e.warnDoubts(doubts)
	return withLogbook(logbook.Write, func(b *logbook.Book) error {
		hull, err := c.hull(b, d.Hull)
		if err != nil {
			return err
		}
		id, err := b.EnterVisit(hull, d.Visit)
		if err != nil {
			return err
		}
		return errors.Join(e.visitEntered(b, id, c.JSON), refresh(e, b, hull))
	})
}

// hull is the one asked for, or the visit's own, which is entered unless it is
// there as it is.
func (c *visitsImportCmd) hull(b *logbook.Book, h hulls.Hull) (logbook.HullID, error) {
	if c.Hull != "" {
		return findHull(b, c.Hull)
	}
	return (&logbookKeeper{book: b}).hull(h)
}
