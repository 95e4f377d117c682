package main

// This file is what the verb hulls does with what a boat answered: it puts the
// answers of her visits into her measurements, for the next visit to begin with.

import (
	"aligner/assets/words"
	"aligner/cmd/aligner/form"
	"aligner/hulls/logbook"
)

type hullsLearnCmd struct {
	Hull string `arg:"" help:"${help_entry}"`
	JSON bool   `name:"json" help:"${help_json}"`
}

// Run adds the answers there are not yet.
func (c *hullsLearnCmd) Run(e *env) error {
	return withLogbook(logbook.Write, func(b *logbook.Book) error {
		id, err := findHull(b, c.Hull)
		if err != nil {
			return err
		}
		kept, err := b.Hull(id)
		if err != nil {
			return err
		}
		h, added, err := form.Earlier(b, id, kept.Hull)
		if err != nil {
			return err
		}
		if added > 0 {
			if err := b.SaveHull(id, h); err != nil {
				return err
			}
		}
		if c.JSON {
			return e.printJSON(map[string]any{"number": id, "added": added, "answers": len(h.MeasuredResponse)})
		}
		e.say(words.HullLearnt, words.Args{"Name": h.Name, "Count": added, "All": len(h.MeasuredResponse)})
		return nil
	})
}
