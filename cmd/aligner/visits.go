package main

// This file is the verb visits: the jobs kept in the logbook, listed and shown.
// What begins or carries one is in visits_keep.go.

import (
	"fmt"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/report/say"
)

type visitsCmd struct {
	List   visitsListCmd   `cmd:"" default:"withargs" help:"${help_visits_list}"`
	Show   visitsShowCmd   `cmd:"" help:"${help_visits_show}"`
	New    visitsNewCmd    `cmd:"" help:"${help_visits_new}"`
	Export visitsExportCmd `cmd:"" help:"${help_visits_export}"`
	Import visitsImportCmd `cmd:"" help:"${help_visits_import}"`
	Photo  visitsPhotoCmd  `cmd:"" help:"${help_visits_photo}"`
}

type visitsListCmd struct {
	Hull   string `placeholder:"HULL" help:"${help_visits_of}"`
	Limit  int    `default:"100" help:"${help_limit}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// visitJSON is one visit in --json. What was worked out is null or "" where it
// was not; stale says that the visit changed since.
type visitJSON struct {
	Number     logbook.VisitID `json:"number"`
	Date       string          `json:"date"`
	Hull       string          `json:"hull"`
	HullNumber logbook.HullID  `json:"hull_number"`
	Events     int             `json:"events"`
	Photos     int             `json:"photos"`
	SpreadMM   *float64        `json:"spread_mm"`
	OpensAtDeg *float64        `json:"opens_at_deg"`
	Verdict    string          `json:"verdict"`
	Due        string          `json:"due"`
	DueReason  string          `json:"due_reason"`
	Stale      bool            `json:"stale"`
}

// known is a number for JSON, nil where it is not known.
func known(m visit.Maybe) *float64 {
	if !m.Known {
		return nil
	}
	return &m.Value
}

// Run lists visits. Where there is no logbook there are none.
func (c *visitsListCmd) Run(e *env) error {
	if c.Limit < 1 {
		return atLeastOneLine(c.Limit)
	}
	list := []visitJSON{}
	err := lookIn(func(b *logbook.Book) error {
		q := logbook.VisitQuery{Limit: c.Limit}
		if c.Hull != "" {
			id, err := findHull(b, c.Hull)
			if err != nil {
				return err
			}
			q.Hull = id
		}
		lines, err := b.Visits(q)
		for _, l := range lines {
			list = append(list, visitJSON{l.ID, l.Date, l.HullName, l.Hull, l.Events, l.Photos, known(l.SpreadMM), known(l.OpensAtDeg), l.Verdict, l.Due, l.DueReason, l.Stale})
			if !c.JSON {
				e.say(words.LogbookVisit, words.Args{"Number": l.ID, "Date": l.Date, "Hull": l.HullName, "Parts": strings.Join(say.KeptVisit(speaker, readerUnits(c.Metric), &l, ""), ", ")})
			}
		}
		return err
	})
	switch {
	case err != nil:
		return err
	case c.JSON:
		return e.printJSON(map[string]any{"visits": list})
	case len(list) == 0:
		e.say(words.LogbookNone, nil)
	}
	return nil
}

type visitsShowCmd struct {
	Visit  string `arg:"" help:"${help_entry}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// Run shows one visit.
func (c *visitsShowCmd) Run(e *env) error {
	return withLogbook(logbook.Read, func(b *logbook.Book) error {
		id, d, err := findVisit(b, c.Visit)
		if err != nil {
			return err
		}
		if c.JSON {
			_, err := e.stdout.Write(withHull(d))
			return err
		}
		photos, err := b.Photos(id)
		if err != nil {
			return err
		}
		e.visitText(id, d, photos, readerUnits(c.Metric))
		return nil
	})
}

// visitText is a visit for people: what was done, a line each.
func (e *env) visitText(id logbook.VisitID, d visit.Document, photos []logbook.Photo, u say.Units) {
	v := &d.Visit
	boat := speaker.Say(words.Dry, nil)
	if v.State.Afloat() {
		boat = speaker.Say(words.Afloat, nil)
	}
	e.say(words.LogbookVisit, words.Args{"Number": id, "Date": v.Date, "Hull": d.Hull.Name, "Parts": boat})
	date := v.Date
	for i, ev := range v.Events {
		if ev.Date != "" {
			date = ev.Date
		}
		args := words.Args{"Number": i + 1, "Date": date}
		switch {
		case ev.Gauging != nil:
			args["Held"], args["Count"] = ev.Gauging.Held, len(ev.Gauging.Readings)
			e.say(words.LogbookGauging, args)
		case ev.Move != nil:
			args["Move"] = say.Move(speaker, u, &d.Hull, inOrder(&d.Hull, ev.Move.NutFlats), inOrder(&d.Hull, ev.Move.SlideMM))
			e.say(words.LogbookMove, args)
		case ev.Fasten != nil:
			args["What"] = ev.Fasten.What
			e.say(words.LogbookFasten, args)
		}
	}
	if v.Note != "" {
		e.say(words.LogbookNote, words.Args{"Note": v.Note})
	}
	for _, p := range photos {
		e.say(words.LogbookPhoto, words.Args{"Size": fmt.Sprintf("%d x %d", p.WidthPX, p.HeightPX), "Caption": p.Caption})
	}
}

// inOrder puts numbers by mount into the hull's order.
func inOrder(h *hulls.Hull, byMount map[string]float64) []float64 {
	list := make([]float64, len(h.Mounts))
	for i, m := range h.Mounts {
		list[i] = byMount[m.Name]
	}
	return list
}
