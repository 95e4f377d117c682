package logbook

// This file lists hulls and visits, and finds hulls by what is typed.

import (
	"database/sql"
	"fmt"
	"strings"
	"time"
	"unicode/utf8"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// HullQuery says which hulls to list.
type HullQuery struct {
	Words  string // all of them in name, owner's reference, HIN or layout, in part too; "": every hull
	Today  string // checks due before it are overdue; "": the present day
	Limit  int    // 0: DefaultLimit
	Offset int
}

// DefaultLimit is how many lines a list gives unless asked for more.
const DefaultLimit = 100

// HullLine is a hull in a list. What derives from visits is as last worked out.
type HullLine struct {
	ID                        HullID
	UID                       string
	Name, HIN, OwnerReference string
	Layout                    hulls.Layout
	Visits                    int
	LastVisit                 string // date; "": none yet
	LastSpreadMM              visit.Maybe
	Due, DueReason            string // next check; "": none set
	Overdue                   bool
}

// hullQuery finds the page first, by what one index holds, and what is shown of
// each line after.
const hullQuery = `SELECT h.hull_id, hulls.uid, h.name, h.hin, h.owner_reference, h.layout, h.visits, h.last_visit, h.last_spread_mm, h.due, h.due_reason
	FROM (SELECT h.hull_id, CASE WHEN h.due <> '' AND h.due < ? THEN h.due ELSE '~' END AS late FROM derived_hulls AS h WHERE %s
		ORDER BY late, h.last_visit DESC, h.hull_id DESC LIMIT ? OFFSET ?) AS page
	JOIN derived_hulls AS h ON h.hull_id = page.hull_id JOIN hulls ON hulls.id = h.hull_id
	ORDER BY page.late, h.last_visit DESC, h.hull_id DESC`

// Hulls lists hulls: those whose check is overdue first, the longest overdue at
// the head, then by their last visit, the latest first.
func (b *Book) Hulls(q HullQuery) ([]HullLine, error) {
	filter, args := matching(q.Words)
	return b.hullsThat(filter, args, q)
}

// HullLine is the line of one hull.
func (b *Book) HullLine(id HullID) (HullLine, error) {
	list, err := b.hullsThat("h.hull_id = ?", []any{id}, HullQuery{Limit: 1})
	if err == nil && len(list) == 0 {
		err = b.unknown("hull", id)
	}
	if err != nil {
		return HullLine{}, err
	}
	return list[0], nil
}

func (b *Book) hullsThat(filter string, args []any, q HullQuery) (list []HullLine, err error) {
	if q.Today == "" {
		q.Today = b.now().Format(time.DateOnly)
	}
	if q.Limit <= 0 {
		q.Limit = DefaultLimit
	}
	err = b.eachRow(fmt.Sprintf(hullQuery, filter), append(append([]any{q.Today}, args...), q.Limit, q.Offset), func(rows *sql.Rows) error {
		var l HullLine
		var spread sql.NullFloat64
		err := rows.Scan(&l.ID, &l.UID, &l.Name, &l.HIN, &l.OwnerReference, &l.Layout, &l.Visits, &l.LastVisit, &spread, &l.Due, &l.DueReason)
		l.LastSpreadMM = visit.Maybe{Value: spread.Float64, Known: spread.Valid}
		l.Overdue = l.Due != "" && l.Due < q.Today
		list = append(list, l)
		return err
	})
	return list, err
}

// CountHulls is how many Hulls would list without a limit.
func (b *Book) CountHulls(words string) (n int, err error) {
	filter, args := matching(words)
	err = b.db.QueryRow("SELECT count(*) FROM derived_hulls AS h WHERE "+filter, args...).Scan(&n)
	return n, b.told(err)
}

// mostWords of what is typed are looked for.
const mostWords = 16

// matching is the condition that every word is found somewhere in a hull.
// The index knows three letters in a row; shorter words are looked for one by
// one.
func matching(typed string) (filter string, args []any) {
	words := strings.Fields(strings.ReplaceAll(strings.ToValidUTF8(typed, " "), "\x00", " "))
	filter = "true"
	var indexed []string
	for _, word := range words[:min(len(words), mostWords)] {
		if utf8.RuneCountInString(word) >= 3 {
			indexed = append(indexed, `"`+strings.ReplaceAll(word, `"`, `""`)+`"`)
			continue
		}
		part := "%" + strings.NewReplacer(`\`, `\\`, `%`, `\%`, `_`, `\_`).Replace(word) + "%"
		filter += ` AND (h.name LIKE ? ESCAPE '\' OR h.owner_reference LIKE ? ESCAPE '\' OR h.hin LIKE ? ESCAPE '\' OR h.layout LIKE ? ESCAPE '\')`
		args = append(args, part, part, part, part)
	}
	if len(indexed) > 0 {
		filter += " AND h.hull_id IN (SELECT rowid FROM derived_words WHERE derived_words MATCH ?)"
		args = append(args, strings.Join(indexed, " AND "))
	}
	return filter, args
}

// VisitQuery says which visits to list.
type VisitQuery struct {
	Hull   HullID // 0: of every hull
	Limit  int    // 0: DefaultLimit
	Offset int
}

// VisitLine is a visit in a list.
type VisitLine struct {
	ID       VisitID
	UID      string
	Hull     HullID
	HullName string
	Date     string // of the visit, or the day it was entered where it has none
	Events   int
	LastEdit int // number of the last edit; 0: none yet
	Photos   int
	Summary
	Stale bool // edited since the summary was worked out, or never worked out
}

// Visits lists visits, the latest first.
func (b *Book) Visits(q VisitQuery) ([]VisitLine, error) {
	if q.Limit <= 0 {
		q.Limit = DefaultLimit
	}
	of, args := "true", []any{}
	if q.Hull != 0 {
		of, args = "hull_id = ?", []any{q.Hull}
	}
	query := `SELECT v.visit_id, visits.uid, v.hull_id, h.name, v.date, v.events, v.last_edit, v.worked_at, v.spread_mm, v.opens_at_deg, v.verdict, v.due, v.due_reason,
		(SELECT count(*) FROM photos WHERE photos.visit_id = v.visit_id)
		FROM (SELECT visit_id FROM derived_visits WHERE ` + of + ` ORDER BY date DESC, visit_id DESC LIMIT ? OFFSET ?) AS page
		JOIN derived_visits AS v ON v.visit_id = page.visit_id JOIN visits ON visits.id = v.visit_id JOIN derived_hulls AS h ON h.hull_id = v.hull_id
		ORDER BY v.date DESC, v.visit_id DESC`
	var list []VisitLine
	err := b.eachRow(query, append(args, q.Limit, q.Offset), func(rows *sql.Rows) error {
		l, err := visitLine(rows)
		list = append(list, l)
		return err
	})
	return list, err
}

func visitLine(rows *sql.Rows) (l VisitLine, err error) {
	var worked int
	var spread, opens sql.NullFloat64
	err = rows.Scan(&l.ID, &l.UID, &l.Hull, &l.HullName, &l.Date, &l.Events, &l.LastEdit, &worked, &spread, &opens, &l.Verdict, &l.Due, &l.DueReason, &l.Photos)
	l.SpreadMM = visit.Maybe{Value: spread.Float64, Known: spread.Valid}
	l.OpensAtDeg = visit.Maybe{Value: opens.Float64, Known: opens.Valid}
	l.Stale = worked != l.LastEdit
	return l, err
}

func isDate(s string) bool {
	day, err := time.Parse(time.DateOnly, s)
	return err == nil && day.Format(time.DateOnly) == s
}
