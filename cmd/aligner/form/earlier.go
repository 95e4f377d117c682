package form

// This file takes what a boat answered in her visits into her measurements: all of
// them when asked, and the visit just left.

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/kinematics/plan"
)

// mostVisits is how many of a boat's visits are looked through, the latest first.
const mostVisits = 100

// Earlier is a boat with what she answered in the logbook's visits of her, and how
// many answers that added. A visit that cannot be worked out is passed over.
func Earlier(book *logbook.Book, id logbook.HullID, h hulls.Hull) (hulls.Hull, int, error) {
	lines, err := book.Visits(logbook.VisitQuery{Hull: id, Limit: mostVisits})
	if err != nil {
		return h, 0, err
	}
	next, added := h, 0
	for i := len(lines) - 1; i >= 0; i-- { // the earliest first
		d, err := book.Document(lines[i].ID)
		if err != nil {
			return h, 0, err
		}
		before := len(next.MeasuredResponse)
		if with, err := withAnswers(next, lines[i].ID, &d); err == nil {
			next = with
		}
		added += max(0, len(next.MeasuredResponse)-before)
	}
	return next, added, nil
}

// LearnFrom puts what a boat answered in one visit into her measurements in the
// logbook, in place of what that visit had told before; her next visit begins with it.
func LearnFrom(book *logbook.Book, id logbook.VisitID, d *visit.Document) error {
	const least = 3 // gauged, moved, gauged
	if len(d.Visit.Events) < least || !book.Writable() {
		return nil
	}
	of, err := book.HullOf(id)
	if err != nil {
		return err
	}
	kept, err := book.Hull(of)
	if err != nil {
		return err
	}
	next, err := withAnswers(kept.Hull, id, d)
	if err != nil || reflect.DeepEqual(next, kept.Hull) {
		return err
	}
	return book.SaveHull(of, next)
}

// withAnswers is a boat with what she answered in a visit, in place of what that visit
// told before. Of moves of mounts she has no longer nothing is kept; where there are
// too many, the latest stay.
func withAnswers(h hulls.Hull, id logbook.VisitID, d *visit.Document) (hulls.Hull, error) {
	name := strings.TrimPrefix(fmt.Sprintf("%s, visit %d", d.Visit.Date, id), ", ")
	all, err := plan.Answered(d, name)
	if err != nil {
		return h, err
	}
	next := h.Clone()
	next.MeasuredResponse = slices.DeleteFunc(next.MeasuredResponse, func(m hulls.Measured) bool { return strings.HasPrefix(m.When, name+",") })
	for _, a := range all {
		if fits(&h, a) {
			next.MeasuredResponse = append(next.MeasuredResponse, a)
		}
	}
	if extra := len(next.MeasuredResponse) - hulls.MostMeasured; extra > 0 {
		next.MeasuredResponse = next.MeasuredResponse[extra:]
	}
	if len(next.MeasuredResponse) == 0 {
		next.MeasuredResponse = nil
	}
	return next, nil
}

// fits reports whether the hull takes an answer.
func fits(h *hulls.Hull, a hulls.Measured) bool {
	alone := h.Clone()
	alone.MeasuredResponse = []hulls.Measured{a}
	return !slices.ContainsFunc(hulls.Validate(alone).Refusals, func(f hulls.Fault) bool { return strings.HasPrefix(f.Place, "measured_response") })
}
