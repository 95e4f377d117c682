package history

// This file takes a boat's visits out of the logbook.

import (
	"aligner/hulls/logbook"
)

// mostVisits is how many of a boat's visits are looked at, the latest: more than
// a boat has.
const mostVisits = 200

// Of works out the past of a boat in the logbook.
func Of(b *logbook.Book, id logbook.HullID) (*Past, error) {
	lines, err := b.Visits(logbook.VisitQuery{Hull: id, Limit: mostVisits})
	if err != nil {
		return nil, err
	}
	var list []Visit
	for _, l := range lines {
		d, err := b.Document(l.ID)
		if err != nil {
			return nil, err
		}
		list = append(list, Visit{Number: int64(l.ID), Date: l.Date, Document: d})
	}
	p, err := Work(list)
	if err == nil && len(list) == 0 {
		h, err := b.Hull(id)
		p.Hull = h.Hull
		return p, err
	}
	return p, err
}
