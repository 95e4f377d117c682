package logbook

// This file keeps visits: how one begins, and its document by replay.

import (
	"context"
	"database/sql"
	"errors"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// VisitID is a visit's number in one logbook.
type VisitID int64

// NewVisit begins a visit of a hull, as it was measured last, on a date such as
// "2026-05-14", or "" for one to be set later.
func (b *Book) NewVisit(hull HullID, date string) (VisitID, error) {
	var id VisitID
	err := b.write(func(tx *sql.Tx) error {
		version, file, err := newest(tx, hull)
		if errors.Is(err, sql.ErrNoRows) {
			return b.unknown("hull", hull)
		}
		if err != nil {
			return err
		}
		h, err := b.parseHull(file)
		if err != nil {
			return err
		}
		d, err := (&visit.SetDate{Date: date}).Apply(visit.New(h.Name, h))
		if err != nil {
			return err
		}
		id, err = b.addVisit(tx, newUID(), hull, version, d)
		return err
	})
	return id, err
}

// EnterVisit enters a visit that was kept elsewhere, of a hull as it was measured
// last. What the visit itself says of its hull does not count.
func (b *Book) EnterVisit(hull HullID, v visit.Visit) (VisitID, error) {
	var id VisitID
	err := b.write(func(tx *sql.Tx) error {
		version, file, err := newest(tx, hull)
		if errors.Is(err, sql.ErrNoRows) {
			return b.unknown("hull", hull)
		}
		if err != nil {
			return err
		}
		h, err := b.parseHull(file)
		if err != nil {
			return err
		}
		v.Embedded, v.HullName = nil, h.Name
		d, report := visit.Open(visit.Encode(v), "", func(string) (hulls.Hull, error) { return h, nil })
		if err := report.Err(); err != nil {
			return err
		}
		id, err = b.addVisit(tx, newUID(), hull, version, d)
		return err
	})
	return id, err
}

// addVisit enters a visit that begins with a document, nothing being tried.
func (b *Book) addVisit(tx *sql.Tx, uid string, hull HullID, version int64, d visit.Document) (VisitID, error) {
	base := d.Visit
	base.Embedded, base.HullName = nil, d.Hull.Name // the version holds it
	done, err := tx.Exec("INSERT INTO visits (uid, hull_id, version_id, added_at, base) VALUES (?, ?, ?, ?, ?)",
		uid, hull, version, b.moment(), string(visit.Encode(base)))
	if err != nil {
		return 0, err
	}
	n, err := done.LastInsertId()
	if err != nil {
		return 0, err
	}
	return VisitID(n), deriveVisit(tx, VisitID(n), 0, d)
}

// base is the document a visit's edits start from.
func (b *Book) base(tx *sql.Tx, id VisitID) (visit.Document, error) {
	var base, file string
	err := tx.QueryRow("SELECT visits.base, hull_versions.file FROM visits JOIN hull_versions ON hull_versions.id = visits.version_id WHERE visits.id = ?", id).
		Scan(&base, &file)
	if errors.Is(err, sql.ErrNoRows) {
		return visit.Document{}, b.unknown("visit", id)
	}
	if err != nil {
		return visit.Document{}, err
	}
	h, err := b.parseHull(file)
	if err != nil {
		return visit.Document{}, err
	}
	d, report := visit.Open([]byte(base), b.path, func(string) (hulls.Hull, error) { return h, nil })
	if err := report.Err(); err != nil {
		return d, damaged(b.path, "a visit that cannot be read ("+err.Error()+")")
	}
	return d, nil
}

// HullOf is the hull a visit was of.
func (b *Book) HullOf(id VisitID) (hull HullID, err error) {
	err = b.read(context.Background(), func(tx *sql.Tx) error {
		err := tx.QueryRow(`SELECT hull_id FROM visits WHERE id = ?`, id).Scan(&hull)
		if errors.Is(err, sql.ErrNoRows) {
			return b.unknown("visit", int64(id))
		}
		return err
	})
	return hull, err
}

// Document is a visit as it stands.
func (b *Book) Document(id VisitID) (d visit.Document, err error) {
	err = b.read(context.Background(), func(tx *sql.Tx) error {
		d, _, err = b.document(tx, id)
		return err
	})
	return d, err
}

// document is a visit as it stands, and the number of its last edit. It starts
// from the last snapshot where it can.
func (b *Book) document(tx *sql.Tx, id VisitID) (visit.Document, int, error) {
	if d, last, ok := b.fromSnapshot(tx, id); ok {
		return d, last, nil
	}
	history, last, err := b.history(tx, id)
	if err != nil {
		return visit.Document{}, 0, err
	}
	return history.Now(), last, nil
}

// fromSnapshot replays what came after the last snapshot. It gives up where
// there is none, or where what came after goes back to before it: then the
// whole record has to be replayed.
func (b *Book) fromSnapshot(tx *sql.Tx, id VisitID) (d visit.Document, last int, ok bool) {
	var text string
	if err := tx.QueryRow("SELECT number, document FROM derived_snapshots WHERE visit_id = ?", id).Scan(&last, &text); err != nil {
		return d, 0, false
	}
	d, err := visit.ParseDocument([]byte(text), b.path)
	if err != nil {
		return d, 0, false
	}
	t, last, err := b.trail(tx, id, last)
	if err != nil {
		return d, 0, false
	}
	d, err = visit.Replay(d, t.done())
	return d, last, err == nil
}

// history replays a visit from its beginning, with all that can be undone and
// done again, and gives the number of its last edit.
func (b *Book) history(tx *sql.Tx, id VisitID) (*visit.History, int, error) {
	base, err := b.base(tx, id)
	if err != nil {
		return nil, 0, err
	}
	t, last, err := b.trail(tx, id, 0)
	if err != nil {
		return nil, 0, err
	}
	history, err := t.walk(base)
	if err != nil {
		return nil, 0, damaged(b.path, "a visit that cannot be replayed ("+err.Error()+")")
	}
	return history, last, nil
}

// Latest is the visit in which an edit was made last: where a program that was
// killed stood. ok is false where there is none.
func (b *Book) Latest() (id VisitID, ok bool, err error) {
	err = b.db.QueryRow("SELECT visit_id FROM edits ORDER BY id DESC LIMIT 1").Scan(&id)
	if errors.Is(err, sql.ErrNoRows) {
		err = b.db.QueryRow("SELECT id FROM visits ORDER BY id DESC LIMIT 1").Scan(&id)
	}
	if errors.Is(err, sql.ErrNoRows) {
		return 0, false, nil
	}
	return id, err == nil, b.told(err)
}
