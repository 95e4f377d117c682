package main

// This file is the verb check: are these files possible boats, or sound visits?

import (
	"fmt"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/report/job"
	"aligner/report/lesson"
)

type checkCmd struct {
	File []string `arg:"" sep:"none" help:"${help_check_file}"`
	JSON bool     `name:"json" help:"${help_json}"`
}

// checkedFile is one file's line of --json.
type checkedFile struct {
	File     string      `json:"file"`
	OK       bool        `json:"ok"`
	Refusals []jsonFault `json:"refusals"`
	Doubts   []jsonFault `json:"doubts"`
}

// Run checks every file, a bad one told in one line each, and ends badly if
// any was bad.
func (c *checkCmd) Run(e *env) error {
	checked := []checkedFile{}
	bad := false
	for _, file := range c.File {
		line, report := c.check(file)
		ok := len(report.Refusals) == 0
		if ok {
			e.warnDoubts(report.Doubts)
		} else {
			bad = true
			e.warn(oneLine(speaker.Retell(report.Refusals[0].Error())))
		}
		if ok && !c.JSON {
			fmt.Fprintln(e.stdout, line)
		}
		checked = append(checked, checkedFile{file, ok, jsonFaults(report.Refusals), jsonFaults(report.Doubts)})
	}
	if c.JSON {
		if err := e.printJSON(map[string]any{"files": checked}); err != nil {
			return err
		}
	}
	if bad {
		return told(exitBadInput)
	}
	return nil
}

// check looks one file over; line says what it is if there is nothing wrong.
func (c *checkCmd) check(file string) (line string, r hulls.Report) {
	if data, fault := visitBytes(file); fault == nil && isVisit(data) {
		d, r := visit.Open(data, file, hullBeside(file))
		if len(r.Refusals) > 0 {
			return "", r
		}
		readings, gaugings, moves := 0, 0, 0
		for _, event := range d.Visit.Events {
			switch {
			case event.Gauging != nil:
				gaugings++
				readings += len(event.Gauging.Readings)
			case event.Move != nil:
				moves++
			}
		}
		line = speaker.Say(words.CheckVisitOk, words.Args{"File": file, "Hull": d.Hull.Name, "Gaugings": count(words.Gaugings, gaugings),
			"Readings": count(words.Readings, readings), "Moves": count(words.MovesMade, moves)})
		return line + linked(&d), r
	}
	if strings.HasSuffix(file, lesson.Ext) {
		l, r := openLesson(file)
		return speaker.Say(words.CheckLessonOk, words.Args{"File": file, "Title": l.Title["en"], "Hull": l.Hull.Name, "Count": len(l.Watch)}), r
	}
	h, r := lookOver(file)
	if len(r.Refusals) == 0 {
		mirror := hulls.MirrorDoubts(h)
		if data, fault := hullBytes(file, keptHull); fault == nil {
			hulls.Locate(mirror, data, file)
		}
		r.Doubts = append(r.Doubts, mirror...)
	}
	return speaker.Say(words.CheckOK, words.Args{"File": file, "Name": h.Name, "Layout": h.Layout,
		"Mounts": count(words.Mounts, len(h.Mounts)), "Bearings": count(words.Bearings, len(h.Bearings))}), r
}

// linked says, a line each, what the other of two jobs means for a visit.
func linked(d *visit.Document) (lines string) {
	for _, r := range job.Provisional(&d.Hull, &d.Visit) {
		if r.Kind == job.LinkedMoved || r.Kind == job.LinkedFirst {
			lines += "\n   " + r.Text.Say(speaker, readerUnits(false))
		}
	}
	return lines
}

func count(id words.ID, n int) string { return speaker.Say(id, words.Args{"Count": n}) }
