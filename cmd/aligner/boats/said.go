package boats

// This file puts lines of the logbook into words, as far as the page differs from
// a printed list.

import (
	"strings"

	"aligner/assets/words"
	"aligner/hulls/logbook"
	"aligner/report/say"
)

// shortDue is when a boat is to be looked at again, for a narrow line; "":
// nothing is set.
func shortDue(s words.Speaker, l *logbook.HullLine) string {
	switch {
	case l.Overdue:
		return s.Say(words.BoatsOverdue, words.Args{"Date": l.Due})
	case l.Due != "":
		return s.Say(words.BoatsDue, words.Args{"Date": l.Due})
	}
	return ""
}

// short is what a narrow line says of a boat: all but when she is due.
func short(s words.Speaker, u say.Units, l *logbook.HullLine) string {
	line := *l
	line.Due = ""
	line.Overdue = false
	return strings.Join(say.KeptHull(s, u, &line), ", ")
}

// visitLine is what a visit came to.
func visitLine(s words.Speaker, u say.Units, l *logbook.VisitLine) string {
	opens := ""
	if l.OpensAtDeg.Known {
		opens = s.Say(words.BoatsOpens, words.Args{"Clock": say.Clock(l.OpensAtDeg.Value, false)})
	}
	return strings.Join(say.KeptVisit(s, u, l, opens), ", ")
}
