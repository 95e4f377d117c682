package main

// This file is the verb check: are these files possible boats?

import "aligner/assets/words"

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
		h, report := lookOver(file)
		ok := len(report.Refusals) == 0
		if ok {
			e.warnDoubts(report.Doubts)
		} else {
			bad = true
			e.warn(oneLine(report.Refusals[0].Error()))
		}
		if ok && !c.JSON {
			e.say(words.CheckOK, words.Args{"File": file, "Name": h.Name, "Layout": h.Layout,
				"Mounts": count(words.Mounts, len(h.Mounts)), "Bearings": count(words.Bearings, len(h.Bearings))})
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

func count(id words.ID, n int) string { return words.Say(id, words.Args{"Count": n}) }
