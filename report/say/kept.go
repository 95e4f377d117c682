package say

// This file says lines of the logbook: what a list tells of a hull or a visit,
// and what taking a hull in would change.

import (
	"aligner/assets/words"
	"aligner/hulls/logbook"
)

// KeptHull is what a list says of a hull, a piece each, that which is looked for
// first: where a line is cut, it is at its end.
func KeptHull(s words.Speaker, u Units, l *logbook.HullLine) []string {
	var parts []string
	if l.LastSpreadMM.Known {
		parts = append(parts, s.Say(words.LogbookSpread, words.Args{"Spread": u.GapWithUnit(l.LastSpreadMM.Value)}))
	}
	if l.Visits > 0 {
		parts = append(parts, s.Say(words.LogbookVisits, words.Args{"Count": l.Visits, "Date": l.LastVisit}))
	}
	if due := NextCheck(s, l); due != "" {
		parts = append(parts, due)
	}
	parts = append(parts, s.Say(words.LogbookLayout, words.Args{"Layout": string(l.Layout)}))
	if l.OwnerReference != "" {
		parts = append(parts, l.OwnerReference)
	}
	if l.HIN != "" {
		parts = append(parts, s.Say(words.LogbookHIN, words.Args{"HIN": l.HIN}))
	}
	return parts
}

// NextCheck is when a hull is to be looked at again and why; "": nothing is set.
func NextCheck(s words.Speaker, l *logbook.HullLine) string {
	args := words.Args{"Date": l.Due, "DueReason": l.DueReason}
	switch {
	case l.Overdue:
		return s.Say(words.LogbookOverdue, args)
	case l.Due != "":
		return s.Say(words.LogbookDue, args)
	}
	return ""
}

// KeptVisit is what a list says of a visit, a piece each, what came of it first.
// Opens is put after the spread; "": not said.
func KeptVisit(s words.Speaker, u Units, l *logbook.VisitLine, opens string) []string {
	var parts []string
	if l.Verdict != "" {
		parts = append(parts, s.Say(words.LogbookVerdict, words.Args{"Verdict": s.Say(words.Of("verdict", l.Verdict), nil)}))
	}
	if l.SpreadMM.Known {
		parts = append(parts, s.Say(words.LogbookSpread, words.Args{"Spread": u.GapWithUnit(l.SpreadMM.Value)}))
		if opens != "" {
			parts = append(parts, opens)
		}
		if l.Stale {
			parts = append(parts, s.Say(words.LogbookStale, nil))
		}
	}
	parts = append(parts, s.Say(words.LogbookEvents, words.Args{"Count": l.Events}))
	if l.Photos > 0 {
		parts = append(parts, s.Say(words.LogbookPhotos, words.Args{"Count": l.Photos}))
	}
	return parts
}

// TakenIn says what taking a hull in from a bundle changes, a line each.
func TakenIn(s words.Speaker, c *logbook.Changes) []string {
	change := func(is logbook.Change) string { return s.Say(words.Of("change", string(is)), nil) }
	lines := []string{s.Say(words.LogbookTakesHull, words.Args{"Name": c.HullName, "Change": change(c.Hull)})}
	for _, v := range c.Visits {
		lines = append(lines, s.Say(words.LogbookTakesVisit, words.Args{"Date": v.Date, "Change": change(v.Change)}))
	}
	for _, is := range []logbook.Change{logbook.IsNew, logbook.Same, logbook.Different} {
		if n := c.Photos[is]; n > 0 {
			lines = append(lines, s.Say(words.LogbookTakesPhotos, words.Args{"Count": n, "Change": change(is)}))
		}
	}
	return lines
}

// Alike says which hulls of the logbook have the name or number of one taken in,
// a line each.
func Alike(s words.Speaker, c *logbook.Changes) []string {
	var lines []string
	for _, l := range c.Alike {
		lines = append(lines, s.Say(words.LogbookAlike, words.Args{"Number": l.ID, "Name": l.Name}))
	}
	return lines
}
