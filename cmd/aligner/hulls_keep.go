package main

// This file is what the verb hulls does with the logbook: enter a hull, write one
// to carry elsewhere, copy and save the logbook itself. What comes from elsewhere
// is in hulls_import.go.

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"

	"aligner/assets/words"
	"aligner/cmd/aligner/outfile"
	"aligner/hulls"
	"aligner/hulls/logbook"
)

type hullsNewCmd struct {
	Name  string `arg:"" optional:"" help:"${help_hulls_name}"`
	From  string `required:"" placeholder:"HULL" help:"${help_hulls_from}"`
	HIN   string `name:"hin" help:"${help_hulls_hin}"`
	Owner string `help:"${help_hulls_owner}"`
	JSON  bool   `name:"json" help:"${help_json}"`
}

// Run enters a hull.
func (c *hullsNewCmd) Run(e *env) error {
	h, _, err := openHull(c.From)
	if err != nil {
		return err
	}
	if c.Name != "" && c.Name != h.Name { // another boat: what names the one it is made after does not hold
		h.Name, h.HIN, h.OwnerReference = c.Name, "", ""
	}
	if c.HIN != "" {
		hin, doubt, err := hulls.ParseHIN(c.HIN)
		if err != nil {
			return err
		}
		if doubt != nil {
			e.warnDoubts([]hulls.Fault{*doubt})
		}
		h.HIN = hin.String()
	}
	if c.Owner != "" {
		h.OwnerReference = c.Owner
	}
	return withLogbook(logbook.Write, func(b *logbook.Book) error {
		id, err := b.NewHull(h)
		if err != nil {
			return err
		}
		if c.JSON {
			return e.printJSON(map[string]any{"number": id, "name": h.Name})
		}
		e.say(words.LogbookEntered, words.Args{"Name": h.Name, "Number": id})
		return nil
	})
}

type hullsExportCmd struct {
	Hull string `arg:"" help:"${help_entry}"`
	Out  string `name:"out" short:"o" required:"" placeholder:"FILE" help:"${help_hulls_out}"`
}

// Run writes a bundle.
func (c *hullsExportCmd) Run(e *env) error {
	return withLogbook(logbook.Read, func(b *logbook.Book) error {
		id, err := findHull(b, c.Hull)
		if err != nil {
			return err
		}
		h, err := b.Hull(id)
		if err != nil {
			return err
		}
		if err := writeNew(c.Out, func(w io.Writer) error { return b.Export(context.Background(), id, w) }); err != nil {
			return err
		}
		e.say(words.LogbookExported, words.Args{"Name": h.Hull.Name, "File": c.Out})
		return nil
	})
}

// writeNew writes a file that is not there yet.
func writeNew(path string, write func(io.Writer) error) error {
	if _, err := os.Lstat(path); err == nil {
		return &hulls.Fault{File: path, Value: speaker.Say(words.OutThere, nil), Limit: speaker.Say(words.OutThereLimit, nil), Mend: speaker.Say(words.OutThereMend, nil)}
	}
	var inner error
	err := outfile.Write(path, func(w io.Writer) error {
		inner = write(w)
		return inner
	})
	var trouble *logbook.Trouble
	if errors.As(inner, &trouble) { // of the logbook, not of the file
		return inner
	}
	return err
}

type hullsBackupCmd struct {
	Out string `name:"out" short:"o" required:"" placeholder:"FILE" help:"${help_backup_out}"`
}

// Run copies the logbook and looks through the copy.
func (c *hullsBackupCmd) Run(e *env) error {
	return withLogbook(logbook.Read, func(b *logbook.Book) error {
		if err := b.Backup(context.Background(), c.Out); err != nil {
			return err
		}
		made, err := logbook.Open(c.Out, logbook.Read)
		if err != nil {
			return err
		}
		defer made.Close()
		if err := made.Check(context.Background()); err != nil {
			return err
		}
		e.say(words.LogbookBackedUp, words.Args{"File": c.Out})
		return nil
	})
}

type hullsSalvageCmd struct {
	Damaged string `arg:"" help:"${help_damaged}"`
	New     string `arg:"" help:"${help_salvaged}"`
}

// Run saves what can be read of a damaged logbook.
func (c *hullsSalvageCmd) Run(e *env) error {
	s, err := logbook.Salvage(context.Background(), c.Damaged, c.New)
	if err != nil {
		return err
	}
	for _, line := range s.Lost {
		e.warn(oneLine(speaker.Say(words.LogbookLost, words.Args{"What": line})))
	}
	e.say(words.LogbookSalvaged, words.Args{"File": c.New, "Hulls": s.Hulls, "Visits": s.Visits, "Edits": s.Edits, "Photos": s.Photos})
	return nil
}

func atLeastOneLine(n int) error {
	return &hulls.Fault{Place: "--limit", Value: fmt.Sprint(n), Limit: speaker.Say(words.LimitLimit, nil), Mend: speaker.Say(words.LimitMend, nil)}
}
