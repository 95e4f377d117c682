package main

// This file takes a hull from another logbook, and says what that changes.

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/report/say"
)

type hullsImportCmd struct {
	File   string `arg:"" help:"${help_bundle}"`
	DryRun bool   `help:"${help_dry_run}"`
	Theirs bool   `help:"${help_theirs}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// Run says what a bundle would change, and takes it in.
func (c *hullsImportCmd) Run(e *env) error {
	f, err := os.Open(c.File)
	if err != nil {
		return noRead(c.File, err, words.NoRead, words.NoReadMend, speaker.Say(words.NotABundleLimit, nil))
	}
	defer f.Close()
	from, err := readBundle(f, c.File)
	if err != nil {
		return err
	}
	choice := logbook.KeepOurs
	if c.Theirs {
		choice = logbook.TakeTheirs
	}
	if !c.DryRun {
		return withLogbook(logbook.Write, func(b *logbook.Book) error {
			changes, err := b.Import(context.Background(), from, choice)
			if err != nil {
				return err
			}
			if err := c.tell(e, changes, changes.Any(choice)); err != nil {
				return err
			}
			return refresh(e, b, changes.ID)
		})
	}
	return c.tried(e, from)
}

// tried compares only. Where there is no logbook yet all would be new.
func (c *hullsImportCmd) tried(e *env, from *logbook.Bundle) error {
	err := withLogbook(logbook.Read, func(b *logbook.Book) error {
		changes, err := b.Compare(context.Background(), from)
		if err != nil {
			return err
		}
		return c.tell(e, changes, false)
	})
	if errors.Is(err, logbook.ErrMissing) {
		return c.tell(e, from.AllNew(), false)
	}
	return err
}

func readBundle(f *os.File, name string) (*logbook.Bundle, error) {
	info, err := f.Stat()
	if err != nil {
		return nil, noRead(name, err, words.NoRead, words.NoReadMend, speaker.Say(words.NotABundleLimit, nil))
	}
	if first := make([]byte, 1); info.Mode().IsRegular() {
		if n, err := f.ReadAt(first, 0); n == 1 && (err == nil || err == io.EOF) && first[0] == '{' {
			return nil, &hulls.Fault{File: name, Value: speaker.Say(words.NotABundle, nil), Limit: speaker.Say(words.NotABundleLimit, nil), Mend: speaker.Say(words.NotABundleMend, nil)}
		}
	}
	return logbook.ReadBundle(f, info.Size(), name)
}

// tell says what changed, or would.
func (c *hullsImportCmd) tell(e *env, changes logbook.Changes, taken bool) error {
	for _, line := range say.Alike(speaker, &changes) {
		e.warnDoubt(line)
	}
	if c.JSON {
		return e.printJSON(changesJSONOf(changes, taken))
	}
	for _, line := range say.TakenIn(speaker, &changes) {
		fmt.Fprintln(e.stdout, line)
	}
	if changes.Differs() && !c.Theirs {
		e.say(words.LogbookKeptOurs, nil)
	}
	if taken {
		e.say(words.LogbookTaken, words.Args{"Number": changes.ID})
	} else {
		e.say(words.LogbookTried, nil)
	}
	return nil
}

// changesJSON is an import for programs.
type changesJSON struct {
	Hull    changedJSON            `json:"hull"`
	Number  logbook.HullID         `json:"number"` // 0: not in the logbook
	Visits  []changedJSON          `json:"visits"`
	Photos  map[logbook.Change]int `json:"photos"`
	Changed bool                   `json:"changed"`
}

type changedJSON struct {
	Name   string         `json:"name,omitempty"`
	Date   string         `json:"date,omitempty"`
	Change logbook.Change `json:"change"`
}

func changesJSONOf(c logbook.Changes, taken bool) changesJSON {
	out := changesJSON{Hull: changedJSON{Name: c.HullName, Change: c.Hull}, Number: c.ID, Visits: []changedJSON{}, Photos: c.Photos, Changed: taken}
	for _, v := range c.Visits {
		out.Visits = append(out.Visits, changedJSON{Date: v.Date, Change: v.Change})
	}
	return out
}
