package learners

// This file writes results as rows for a spreadsheet. The columns' names are fixed
// English, as the keys of other files are.

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"time"
)

var columns = []string{"learner", "ended", "grade", "number", "in_line", "cause", "cause_found", "found_thou", "left_thou",
	"minutes", "flats", "rounds", "readings", "tool_minutes", "tool_flats", "tool_rounds", "tool_readings", "mistakes"}

// WriteRows writes a row for each result, after one with the columns' names.
func WriteRows(w io.Writer, all []Result) error {
	c := csv.NewWriter(w)
	if err := c.Write(columns); err != nil {
		return err
	}
	for i := range all {
		if err := c.Write(row(&all[i])); err != nil {
			return err
		}
	}
	c.Flush()
	return c.Error()
}

func row(r *Result) []string {
	d, thou := &r.Debrief, func(v float64) string { return strconv.FormatFloat(v, 'f', 2, 64) }
	minutes := func(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }
	var kinds []string
	for _, m := range d.Mistakes {
		kinds = append(kinds, string(m.Kind))
	}
	return []string{plain(r.Learner), r.Ended.UTC().Format(time.RFC3339), string(r.Task.Grade), strconv.Itoa(r.Task.Number),
		strconv.FormatBool(d.Passed), string(d.Cause), strconv.FormatBool(d.CauseFound), thou(d.FoundThou), thou(d.LeftThou),
		minutes(d.Yours.Minutes), strconv.Itoa(d.Yours.Steps), strconv.Itoa(d.Yours.Rounds), strconv.Itoa(d.Yours.Readings),
		minutes(d.Tools.Minutes), strconv.Itoa(d.Tools.Steps), strconv.Itoa(d.Tools.Rounds), strconv.Itoa(d.Tools.Readings),
		strings.Join(kinds, "; ")}
}

// plain keeps a name from being taken for a formula by a spreadsheet.
func plain(name string) string {
	if strings.ContainsAny(name[:1], "=+-@") {
		return "'" + name
	}
	return name
}
