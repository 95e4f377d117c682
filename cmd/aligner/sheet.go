package main

// This file is the verb sheet: a visit on paper.

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
	"time"

	"aligner/assets/words"
	"aligner/cmd/aligner/outfile"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/report"
	"aligner/report/paper"
)

type sheetCmd struct {
	Visit   string `arg:"" help:"${help_visit}"`
	Kind    string `enum:"bay,record,customer,class" required:"" help:"${help_sheet_kind}"`
	Out     string `name:"out" short:"o" required:"" placeholder:"FILE" help:"${help_sheet_out}"`
	Paper   string `enum:"a4,letter" default:"a4" help:"${help_sheet_paper}"`
	Looking string `enum:"forward,aft" default:"forward" help:"${help_sheet_looking}"`
	Until   int    `default:"-1" help:"${help_sheet_until}"`
	Metric  bool   `help:"${help_metric}"`
}

// Run writes the sheet.
func (c *sheetCmd) Run(e *env) error {
	if strings.ToLower(filepath.Ext(c.Out)) != ".pdf" {
		return moveFault("", fmt.Sprintf("%q", c.Out), speaker.Say(words.SheetNotPdfLimit, nil), speaker.Say(words.SheetNotPdfMend, nil))
	}
	d, doubts, err := openVisit(c.Visit)
	if err != nil {
		return err
	}
	e.warnDoubts(doubts)
	options, err := c.options(&d)
	if err != nil {
		return err
	}
	in, err := report.Work(d)
	if err != nil {
		return err
	}
	pdf, err := report.PDF(in, options)
	if err != nil {
		return err
	}
	if err := outfile.Write(c.Out, func(w io.Writer) error { _, err := w.Write(pdf); return err }); err != nil {
		return err
	}
	e.say(words.SheetDone, words.Args{"File": c.Out, "Kind": speaker.Say(words.Of("paper_kind", c.Kind), nil), "Count": report.Pages(pdf)})
	return nil
}

// options are those asked for; it cuts the visit off where it is to end.
func (c *sheetCmd) options(d *visit.Document) (report.Options, error) {
	o := report.Options{Kind: report.Kind(c.Kind), Size: paper.Size(c.Paper), Units: readerUnits(c.Metric), Speaker: speaker,
		Seen: visit.Direction(c.Looking == "aft"), Today: time.Now().Format(time.DateOnly), Program: programName()}
	most := len(d.Visit.Events)
	switch {
	case c.Until > most || c.Until < -1:
		return o, &hulls.Fault{Place: "--until", Value: fmt.Sprint(c.Until), Limit: speaker.Say(words.SheetUntilLimit, words.Args{"Most": most}), Mend: speaker.Say(words.SheetUntilMend, nil)}
	case c.Until >= 0:
		*d = report.Until(*d, c.Until)
	case o.Kind == report.Class:
		*d = report.Until(*d, report.BeforeMoving(&d.Visit))
	default: // whole, so the file as it is goes into a record
		if data, fault := visitBytes(c.Visit); fault == nil {
			o.File, o.FileName = data, filepath.Base(c.Visit)
		}
		if o.Kind == report.Record {
			return o, c.kept(&o)
		}
	}
	return o, nil
}

// kept puts in what the logbook has beside a visit of its own.
func (c *sheetCmd) kept(o *report.Options) error {
	if _, err := os.Stat(c.Visit); err == nil {
		return nil // a file, whatever its name
	}
	return lookIn(func(b *logbook.Book) error {
		id, _, err := findVisit(b, c.Visit)
		if errors.Is(err, errNoEntry) {
			return nil // a built-in one
		}
		if err == nil {
			o.Photos, o.Past, err = report.Kept(b, id)
		}
		return err
	})
}

// programName is what made a document, with the version it was built from as far
// as the build knows it.
func programName() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "aligner"
	}
	version, changed := info.Main.Version, ""
	for _, s := range info.Settings {
		switch {
		case s.Key == "vcs.revision" && (version == "" || version == "(devel)"):
			version = s.Value[:min(12, len(s.Value))]
		case s.Key == "vcs.modified" && s.Value == "true":
			changed = "+"
		}
	}
	return strings.TrimSpace("aligner " + strings.TrimSuffix(version, "+dirty") + changed)
}
