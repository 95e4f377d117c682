package main

// This file is what the verb hulls does with two boats: compare them, or enter the
// measurements of one under another name.

import (
	"fmt"

	"aligner/assets/words"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
	"aligner/report/say"
)

type hullsCompareCmd struct {
	A      string `arg:"" help:"${help_hull_a}"`
	B      string `arg:"" help:"${help_hull_b}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// differenceJSON is one field in --json; a value is null on the hull that has no
// such field. Numbers are in the unit of the hull file's key.
type differenceJSON struct {
	Pointer string `json:"pointer"`
	Part    string `json:"part"`
	Name    string `json:"name"`
	A       any    `json:"a"`
	B       any    `json:"b"`
}

// Run tells what differs, and nothing else.
func (c *hullsCompareCmd) Run(e *env) error {
	a, _, err := openHull(c.A)
	if err != nil {
		return err
	}
	b, _, err := openHull(c.B)
	if err != nil {
		return err
	}
	all := fields.Compare(&a, &b)
	if c.JSON {
		list := []differenceJSON{}
		for _, d := range all {
			list = append(list, differenceJSON{d.Field.Pointer, string(d.Field.Group.Part), d.Field.Group.Name, plainValue(&d.Field, d.OnA, d.A), plainValue(&d.Field, d.OnB, d.B)})
		}
		return e.printJSON(map[string]any{"a": a.Name, "b": b.Name, "differences": list})
	}
	for _, d := range all {
		fmt.Fprintln(e.stdout, oneLine(say.Difference(speaker, readerUnits(c.Metric), fields.Inches(!c.Metric), &d, a.Name, b.Name)))
	}
	if len(all) == 0 {
		e.say(words.CompareSame, words.Args{"NameA": a.Name, "NameB": b.Name})
		return nil
	}
	e.say(words.CompareCount, words.Args{"Count": len(all)})
	return nil
}

// plainValue is a value as JSON has it.
func plainValue(f *fields.Field, has bool, v fields.Value) any {
	switch {
	case !has:
		return nil
	case f.Kind.IsNumber():
		return v.Number
	}
	return v.Text
}

type hullsCopyCmd struct {
	From string `arg:"" help:"${help_hull}"`
	Name string `arg:"" help:"${help_copy_name}"`
	JSON bool   `name:"json" help:"${help_json}"`
}

// Run enters the copy.
func (c *hullsCopyCmd) Run(e *env) error {
	from, _, err := openHull(c.From)
	if err != nil {
		return err
	}
	copied := fields.Copy(from, c.Name)
	return withLogbook(logbook.Write, func(b *logbook.Book) error {
		id, err := b.NewHull(copied)
		if err != nil {
			return err
		}
		if c.JSON {
			return e.printJSON(map[string]any{"number": id, "name": copied.Name, "from": from.Name})
		}
		e.say(words.HullCopied, words.Args{"Name": copied.Name, "Number": id, "From": from.Name})
		return nil
	})
}
