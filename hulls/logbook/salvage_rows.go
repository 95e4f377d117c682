package logbook

// This file knows the rows of a damaged logbook by their form, wherever they
// stand: how many columns, of which kinds, and that each is what it must be.
// Rows are only ever added, so one that stands twice says the same twice.

import (
	"crypto/sha256"
	"encoding/hex"
	"slices"
	"strings"
	"time"

	"aligner/hulls/visit"
)

// remains are the rows that were found, by their number.
type remains struct {
	hulls     map[int64]foundHull
	versions  map[int64]foundVersion
	visits    map[int64]foundVisit
	edits     map[int64]map[int]record // by visit, then by number within it
	moments   map[int64]map[int]string // of those edits
	photos    map[int64]foundPhoto
	mechanics map[int64]string
	settings  map[int64]map[string]string // by mechanic
	snapshots map[int64]foundSnapshot     // by visit
	lines     map[int64]foundLine         // by visit
}

type foundHull struct{ uid, added string }

type foundVersion struct {
	hull        int64
	added, file string
}

type foundVisit struct {
	uid           string
	hull, version int64
	added, base   string
}

type foundPhoto struct {
	visit          int64
	added, caption string
	jpegPhoto
}

// foundLine is what the list of visits says of one.
type foundLine struct {
	hull int64
	date string
	last int // number of its last edit
}

type foundSnapshot struct {
	number   int
	document string
}

// search looks through every page.
func search(p *pages) *remains {
	r := &remains{map[int64]foundHull{}, map[int64]foundVersion{}, map[int64]foundVisit{}, map[int64]map[int]record{}, map[int64]map[int]string{},
		map[int64]foundPhoto{}, map[int64]string{}, map[int64]map[string]string{}, map[int64]foundSnapshot{}, map[int64]foundLine{}}
	for n := 2; n <= p.count(); n++ {
		p.cells(n, r.take)
	}
	return r
}

// shape is a letter for each column: n null, i whole number, r real, t text,
// b bytes.
func shape(columns []any) string {
	var s strings.Builder
	for _, c := range columns {
		switch c.(type) {
		case nil:
			s.WriteByte('n')
		case int64:
			s.WriteByte('i')
		case float64:
			s.WriteByte('r')
		case string:
			s.WriteByte('t')
		default:
			s.WriteByte('b')
		}
	}
	return s.String()
}

// take keeps a row if it is of one of the tables. A table's own number stands as
// null among its columns.
func (r *remains) take(c cell) {
	v := c.columns
	text := func(i int) string { return v[i].(string) }
	number := func(i int) int64 { return v[i].(int64) }
	switch form := shape(v); {
	case !c.table && form == "itt":
		if r.settings[number(0)] == nil {
			r.settings[number(0)] = map[string]string{}
		}
		r.settings[number(0)][text(1)] = text(2)
	case !c.table:
	case form == "ntt" && isUID(text(1)) && isMoment(text(2)):
		r.hulls[c.number] = foundHull{text(1), text(2)}
	case form == "nitt" && isMoment(text(2)):
		r.versions[c.number] = foundVersion{number(1), text(2), text(3)}
	case form == "ntiitt" && isUID(text(1)) && isMoment(text(4)):
		r.visits[c.number] = foundVisit{text(1), number(2), number(3), text(4), text(5)}
	case form == "niittt" && isMoment(text(3)) && slices.Contains([]string{wasDone, wasUndone, wasRedone}, text(4)):
		r.takeEdit(number(1), record{int(number(2)), text(4), []byte(text(5))}, text(3))
	case form == "nitttiib" && isMoment(text(3)):
		p := foundPhoto{number(1), text(3), text(4), jpegPhoto{v[7].([]byte), int(number(5)), int(number(6))}}
		if sum := sha256.Sum256(p.data); hex.EncodeToString(sum[:]) == text(2) {
			r.photos[c.number] = p
		}
	case len(form) == 11 && strings.HasPrefix(form, "nitiii") && strings.HasSuffix(form, "ttt") && isDate(text(2)):
		if number(4) >= int64(r.lines[c.number].last) {
			r.lines[c.number] = foundLine{number(1), text(2), int(number(4))}
		}
	case form == "nt":
		r.mechanics[c.number] = text(1)
	case form == "nit" && strings.HasPrefix(text(2), "{"):
		if s := r.snapshots[c.number]; int(number(1)) > s.number {
			r.snapshots[c.number] = foundSnapshot{int(number(1)), text(2)}
		}
	}
}

func (r *remains) takeEdit(id int64, e record, moment string) {
	if r.edits[id] == nil {
		r.edits[id], r.moments[id] = map[int]record{}, map[int]string{}
	}
	if e.what == wasDone {
		if _, err := visit.Unmarshal(e.edit); err != nil {
			return
		}
	}
	r.edits[id][e.number], r.moments[id][e.number] = e, moment
}

func isMoment(s string) bool {
	_, err := time.Parse(time.RFC3339, s)
	return err == nil
}
