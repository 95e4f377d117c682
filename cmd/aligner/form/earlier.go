package form

// This file takes what a boat answered in her earlier visits into her measurements.

import (
	"fmt"
	"slices"
	"strings"

	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/kinematics/plan"
)

// mostVisits is how many of a boat's visits are looked through, the latest first.
const mostVisits = 100

// Earlier is a boat with what she answered in the logbook's visits of her, and how
// many answers that added. Those she has already are not added twice; of moves of
// mounts she has no longer nothing is kept; where there are too many, the latest
// stay. A visit that cannot be worked out is passed over.
func Earlier(book *logbook.Book, id logbook.HullID, h hulls.Hull) (hulls.Hull, int, error) {
	lines, err := book.Visits(logbook.VisitQuery{Hull: id, Limit: mostVisits})
	if err != nil {
		return h, 0, err
	}
	next, added := h.Clone(), 0
	for i := len(lines) - 1; i >= 0; i-- { // the earliest first
		d, err := book.Document(lines[i].ID)
		if err != nil {
			return h, 0, err
		}
		all, err := plan.Answered(&d, fmt.Sprintf("%s, visit %d", lines[i].Date, lines[i].ID))
		if err != nil {
			continue
		}
		for _, a := range all {
			if has(&next, a.When) || !fits(&next, a) {
				continue
			}
			next.MeasuredResponse = append(next.MeasuredResponse, a)
			added++
		}
	}
	if extra := len(next.MeasuredResponse) - hulls.MostMeasured; extra > 0 {
		next.MeasuredResponse = next.MeasuredResponse[extra:]
	}
	return next, added, nil
}

func has(h *hulls.Hull, when string) bool {
	return slices.ContainsFunc(h.MeasuredResponse, func(m hulls.Measured) bool { return m.When == when })
}

// fits reports whether the hull takes an answer.
func fits(h *hulls.Hull, a hulls.Measured) bool {
	alone := h.Clone()
	alone.MeasuredResponse = []hulls.Measured{a}
	for _, f := range hulls.Validate(alone).Refusals {
		if strings.HasPrefix(f.Place, "measured_response") {
			return false
		}
	}
	return true
}
