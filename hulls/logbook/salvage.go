package logbook

// This file makes a sound logbook of what is left of a damaged one.

import (
	"context"
	"database/sql"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// Salvaged says what was read of a damaged logbook.
type Salvaged struct {
	Hulls, Visits, Edits, Photos, Settings int
	// Lost says, a line each, what is known to be missing or is not as it was.
	// What left no trace is not told.
	Lost []string
}

// Salvage copies what can be read of a damaged logbook to a new file. The
// damaged one stays as it is. Nothing derived is taken over: work visits out
// again (Rebuild).
func Salvage(ctx context.Context, from, to string) (s Salvaged, err error) {
	from, err = filepath.Abs(from)
	if err != nil {
		return s, told(from, err)
	}
	if info, err := os.Stat(from); err != nil || !info.Mode().IsRegular() {
		return s, missing(from)
	}
	p, err := readPages(from)
	if err != nil {
		return s, notReadable(from, err)
	}
	r := search(p)
	if len(r.versions) == 0 {
		return s, trouble(ErrDamaged, from, "no hull that can be read", "a logbook, damaged or not", "go back to a backup")
	}
	err = whole(to, func(part string) error {
		b, err := Open(part, Write)
		if err != nil {
			return err
		}
		defer b.Close()
		if s, err = b.putTogether(ctx, r); err != nil {
			return err
		}
		if err := b.Rebuild(ctx, nil); err != nil {
			return err
		}
		return b.Close()
	})
	return s, err
}

// putTogether enters what was found, under the numbers it had.
func (b *Book) putTogether(ctx context.Context, r *remains) (s Salvaged, err error) {
	err = b.writeWithin(ctx, func(tx *sql.Tx) error {
		r.mend(&s)
		if err := r.putHulls(tx, &s); err != nil {
			return err
		}
		for _, id := range slices.Sorted(maps.Keys(r.visits)) {
			if err := ctx.Err(); err != nil {
				return err
			}
			if err := r.putVisit(tx, id, &s); err != nil {
				return err
			}
		}
		for id := range r.edits {
			if _, ok := r.visits[id]; !ok {
				s.lose("a visit of which %d edits are left", len(r.edits[id]))
			}
		}
		return r.putRest(tx, &s)
	})
	return s, err
}

func (s *Salvaged) lose(format string, args ...any) {
	s.Lost = append(s.Lost, fmt.Sprintf(format, args...))
}

// putHulls enters hulls with the versions that can be read. Of a hull whose
// versions are all lost nothing is left; one whose own row is lost gets another
// uid.
func (r *remains) putHulls(tx *sql.Tx, s *Salvaged) error {
	entered := map[int64]bool{}
	for _, id := range slices.Sorted(maps.Keys(r.versions)) {
		v := r.versions[id]
		if !entered[v.hull] {
			h, known := r.hulls[v.hull]
			if !known {
				h = foundHull{newUID(), v.added}
				s.lose("where hull %d came from: a bundle of it is taken as another hull", v.hull)
			}
			if _, err := tx.Exec("INSERT INTO hulls (id, uid, added_at) VALUES (?, ?, ?)", v.hull, h.uid, h.added); err != nil {
				return err
			}
			entered[v.hull] = true
			s.Hulls++
		}
		if _, err := tx.Exec("INSERT INTO hull_versions (id, hull_id, added_at, file) VALUES (?, ?, ?, ?)", id, v.hull, v.added, v.file); err != nil {
			return err
		}
	}
	for id := range r.hulls {
		if !entered[id] {
			s.lose("hull %d", id)
		}
	}
	return nil
}

// putVisit enters a visit with the edits that can be followed.
func (r *remains) putVisit(tx *sql.Tx, id int64, s *Salvaged) error {
	v := r.visits[id]
	version, ok := r.versionOf(v)
	if !ok {
		s.lose("a visit of hull %d, with its hull", v.hull)
		delete(r.visits, id)
		return nil
	}
	h, err := hulls.Parse([]byte(r.versions[version].file), "")
	if err != nil {
		return err
	}
	base, report := visit.Open([]byte(v.base), "", func(string) (hulls.Hull, error) { return h, nil })
	if report.Err() != nil {
		s.lose("a visit of %s", h.Name)
		delete(r.visits, id)
		return nil
	}
	if version != v.version {
		s.lose("the version of %s that the visit of %s began with; another is taken", h.Name, base.Visit.Date)
	}
	if _, err := tx.Exec("INSERT INTO visits (id, uid, hull_id, version_id, added_at, base) VALUES (?, ?, ?, ?, ?, ?)", id, v.uid, v.hull, version, v.added, v.base); err != nil {
		return err
	}
	s.Visits++
	return r.putEdits(tx, id, base, s)
}

// versionOf is the version a visit began with, or else the nearest of its hull.
func (r *remains) versionOf(v foundVisit) (int64, bool) {
	if found, ok := r.versions[v.version]; ok && found.hull == v.hull {
		return v.version, true
	}
	best, ok := int64(0), false
	for _, id := range slices.Sorted(maps.Keys(r.versions)) {
		if r.versions[id].hull == v.hull && (!ok || id <= v.version) {
			best, ok = id, true
		}
	}
	return best, ok
}

// putEdits enters a visit's edits in order. Where some lack, the visit goes on
// from a later snapshot, if there is one, as an edit that opens it.
func (r *remains) putEdits(tx *sql.Tx, id int64, base visit.Document, s *Salvaged) error {
	found, history, kept := r.edits[id], visit.NewHistory(base), 0
	last := r.lines[id].last
	for n := range found {
		last = max(last, n)
	}
	what := fmt.Sprintf("of the visit of %s on %s, ", base.Visit.Date, base.Hull.Name)
	put := func(e record, moment string) error {
		kept++
		s.Edits++
		_, err := tx.Exec("INSERT INTO edits (visit_id, number, added_at, what, edit) VALUES (?, ?, ?, ?, ?)", id, kept, moment, e.what, string(e.edit))
		return err
	}
	for n := 1; n <= last; n++ {
		if e, ok := found[n]; ok && step(history, e) {
			if err := put(e, r.moments[id][n]); err != nil {
				return err
			}
			continue
		}
		snap, moment := r.snapshots[id], r.visits[id].added
		e, ok := opening(snap, n)
		if !ok || !step(history, e) {
			s.lose(what+"edits %d to %d", n, last)
			return nil
		}
		s.lose(what+"what lay between edits %d and %d; it goes on from there", n, snap.number)
		if err := put(e, moment); err != nil {
			return err
		}
		n = snap.number
	}
	return nil
}

// step does what a record says, if it can be done.
func step(h *visit.History, e record) bool {
	switch e.what {
	case wasUndone:
		return h.Undo() != nil
	case wasRedone:
		return h.Redo() != nil
	}
	edit, err := visit.Unmarshal(e.edit)
	return err == nil && h.Do(edit) == nil
}

// opening makes of a snapshot, not before an edit, the edit that opens it.
func opening(snap foundSnapshot, from int) (record, bool) {
	d, err := visit.ParseDocument([]byte(snap.document), "")
	if snap.number < from || err != nil {
		return record{}, false
	}
	text, err := visit.Marshal(&visit.OpenVisit{Visit: d.Visit, HullName: d.HullName, Hull: hulls.Encode(d.Hull)})
	return record{snap.number, wasDone, text}, err == nil
}

// putRest enters photos and settings.
func (r *remains) putRest(tx *sql.Tx, s *Salvaged) error {
	for _, id := range slices.Sorted(maps.Keys(r.photos)) {
		p := r.photos[id]
		if _, ok := r.visits[p.visit]; !ok {
			s.lose("the visit of a photo %q", p.caption)
			continue
		}
		if _, err := (&Book{}).addPhoto(tx, VisitID(p.visit), p.jpegPhoto, p.caption, p.added); err != nil {
			return err
		}
		s.Photos++
	}
	for _, id := range slices.Sorted(maps.Keys(r.mechanics)) {
		if _, err := tx.Exec("INSERT OR IGNORE INTO mechanics (id, name) VALUES (?, ?)", id, r.mechanics[id]); err != nil {
			return err
		}
		for key, value := range r.settings[id] {
			if _, err := tx.Exec("INSERT OR IGNORE INTO settings (mechanic_id, key, value) SELECT id, ?, ? FROM mechanics WHERE id = ?", key, value, id); err != nil {
				return err
			}
			s.Settings++
		}
	}
	return nil
}
