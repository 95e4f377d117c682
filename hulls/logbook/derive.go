package logbook

// This file keeps what derives from hulls and visits in step with them, so that
// lists are quick, and makes all of it again.

import (
	"context"
	"database/sql"
	"strings"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// deriveHull writes what lists show of a hull, and what it is found by.
func deriveHull(tx *sql.Tx, id HullID) error {
	_, file, err := newest(tx, id)
	if err != nil {
		return err
	}
	h, err := hulls.Parse([]byte(file), "")
	if err != nil {
		return err
	}
	plate, withoutHyphen := plateOf(h.HIN)
	_, err = tx.Exec(`INSERT INTO derived_hulls (hull_id, name, hin, owner_reference, layout) VALUES (?1, ?2, ?3, ?4, ?5)
		ON CONFLICT (hull_id) DO UPDATE SET name = ?2, hin = ?3, owner_reference = ?4, layout = ?5`,
		id, h.Name, plate, h.OwnerReference, string(h.Layout))
	if err != nil {
		return err
	}
	_, err = tx.Exec("INSERT OR REPLACE INTO derived_words (rowid, name, owner_reference, hin, layout) VALUES (?, ?, ?, ?, ?)",
		id, h.Name, h.OwnerReference, strings.TrimSpace(plate+" "+withoutHyphen), string(h.Layout))
	if err != nil {
		return err
	}
	return deriveLast(tx, id)
}

// plateOf is a hull identification number in its normal form, with and without
// the country's hyphen; as it was typed where it has no known form.
func plateOf(hin string) (plate, withoutHyphen string) {
	if h, _, err := hulls.ParseHIN(hin); err == nil {
		return h.String(), h.Country + h.Maker + h.String()[len(h.String())-9:]
	}
	return hin, ""
}

// deriveVisit writes what lists show of a visit after an edit.
func deriveVisit(tx *sql.Tx, id VisitID, number int, d visit.Document) error {
	var hull HullID
	var was, begun string
	err := tx.QueryRow(`SELECT visits.hull_id, visits.added_at, coalesce(derived_visits.date, '') FROM visits
		LEFT JOIN derived_visits ON derived_visits.visit_id = visits.id WHERE visits.id = ?`, id).Scan(&hull, &begun, &was)
	if err != nil {
		return err
	}
	date := d.Visit.Date
	if date == "" {
		date = begun[:len("2026-05-14")]
	}
	_, err = tx.Exec(`INSERT INTO derived_visits (visit_id, hull_id, date, events, last_edit) VALUES (?1, ?2, ?3, ?4, ?5)
		ON CONFLICT (visit_id) DO UPDATE SET date = ?3, events = ?4, last_edit = ?5`, id, hull, date, len(d.Visit.Events), number)
	if err != nil || date == was {
		return err
	}
	return deriveLast(tx, hull)
}

// deriveLast writes what the list of hulls shows of a hull's visits: the last
// date, the last spread and next check that were worked out.
func deriveLast(tx *sql.Tx, id HullID) error {
	_, err := tx.Exec(`UPDATE derived_hulls SET
		visits = (SELECT count(*) FROM derived_visits WHERE hull_id = ?1),
		last_visit = coalesce((SELECT max(date) FROM derived_visits WHERE hull_id = ?1), ''),
		last_spread_mm = (SELECT spread_mm FROM derived_visits WHERE hull_id = ?1 AND spread_mm IS NOT NULL ORDER BY date DESC, visit_id DESC LIMIT 1),
		(due, due_reason) = (SELECT coalesce(max(due), ''), coalesce(max(due_reason), '') FROM
			(SELECT due, due_reason FROM derived_visits WHERE hull_id = ?1 AND due <> '' ORDER BY date DESC, visit_id DESC LIMIT 1))
		WHERE hull_id = ?1`, id)
	return err
}

// Summary is what was worked out from a visit, for lists.
type Summary struct {
	SpreadMM   visit.Maybe
	OpensAtDeg visit.Maybe
	Verdict    string
	Due        string // date of the next check; "": none
	DueReason  string
}

// Summarise keeps what was worked out from a visit as it was after an edit: the
// number that Session.LastEdit or VisitLine gives. It is no input and never
// read back as one.
func (b *Book) Summarise(id VisitID, edit int, s Summary) error {
	if err := s.sound(); err != nil {
		return err
	}
	return b.write(func(tx *sql.Tx) error { return b.summarise(tx, id, edit, s) })
}

// longestText bounds texts of lists.
const longestText = 200

func (s Summary) sound() error {
	switch {
	case s.Due != "" && !isDate(s.Due):
		return refused("due", `"`+s.Due+`"`, "a date such as 2026-05-14", "write year, month and day")
	case len(s.DueReason) > longestText || len(s.Verdict) > longestText:
		return refused("due_reason", "a long text", "at most 200 bytes", "say it in a few words")
	}
	return nil
}

func (b *Book) summarise(tx *sql.Tx, id VisitID, edit int, s Summary) error {
	var hull HullID
	err := tx.QueryRow(`UPDATE derived_visits SET worked_at = ?2, spread_mm = ?3, opens_at_deg = ?4, verdict = ?5, due = ?6, due_reason = ?7
		WHERE visit_id = ?1 RETURNING hull_id`, id, edit, null(s.SpreadMM), null(s.OpensAtDeg), s.Verdict, s.Due, s.DueReason).Scan(&hull)
	if err == sql.ErrNoRows {
		return b.unknown("visit", id)
	}
	if err != nil {
		return err
	}
	return deriveLast(tx, hull)
}

func null(m visit.Maybe) sql.NullFloat64 { return sql.NullFloat64{Float64: m.Value, Valid: m.Known} }

// Rebuild throws away all that is derived and makes it again from what is kept.
// work works one visit out; nil leaves lists without results.
func (b *Book) Rebuild(ctx context.Context, work func(visit.Document) (Summary, error)) error {
	return b.writeWithin(ctx, func(tx *sql.Tx) error {
		for _, table := range []string{"derived_snapshots", "derived_visits", "derived_hulls", "derived_words"} {
			if _, err := tx.ExecContext(ctx, "DELETE FROM "+table); err != nil {
				return err
			}
		}
		if err := eachID(ctx, tx, "SELECT id FROM hulls ORDER BY id", func(id int64) error { return deriveHull(tx, HullID(id)) }); err != nil {
			return err
		}
		return eachID(ctx, tx, "SELECT id FROM visits ORDER BY id", func(id int64) error { return b.rederive(tx, VisitID(id), work) })
	})
}

func (b *Book) rederive(tx *sql.Tx, id VisitID, work func(visit.Document) (Summary, error)) error {
	d, last, err := b.document(tx, id)
	if err != nil {
		return err
	}
	if err := deriveVisit(tx, id, last, d); err != nil {
		return err
	}
	if last >= snapshotEvery {
		if err := snapshot(tx, id, last, d); err != nil {
			return err
		}
	}
	if work == nil {
		return nil
	}
	s, err := work(d)
	if err != nil {
		return err
	}
	if err := s.sound(); err != nil {
		return err
	}
	return b.summarise(tx, id, last, s)
}

// eachID calls back with every number a query gives, the query being over.
func eachID(ctx context.Context, tx *sql.Tx, query string, each func(id int64) error) error {
	rows, err := tx.QueryContext(ctx, query)
	if err != nil {
		return err
	}
	defer rows.Close()
	var ids []int64
	for rows.Next() {
		var id int64
		if err := rows.Scan(&id); err != nil {
			return err
		}
		ids = append(ids, id)
	}
	if err := rows.Err(); err != nil {
		return err
	}
	for _, id := range ids {
		if err := each(id); err != nil {
			return err
		}
	}
	return nil
}
