package logbook

// This file follows the record of a visit: what was done, undone and done again.

import (
	"database/sql"
	"errors"
	"fmt"

	"aligner/hulls/visit"
)

// The words of edits.what.
const (
	wasDone   = "do"
	wasUndone = "undo"
	wasRedone = "redo"
)

// record is one row of edits.
type record struct {
	number int
	what   string
	edit   []byte // of wasDone
}

// trail is what a record comes to, before any edit is applied: those that can be
// seen or done again, and how many of them are seen. What was undone and then
// done otherwise is on the record only.
type trail struct {
	edits [][]byte
	at    int
}

// errBefore is a record that goes back to before the trail's beginning, or
// forward to what was undone before it.
var errBefore = errors.New("goes beyond what is known")

func (t *trail) follow(r record) error {
	switch {
	case r.what == wasDone:
		t.edits = append(t.edits[:t.at], r.edit)
		t.at++
	case r.what == wasUndone && t.at > 0:
		t.at--
	case r.what == wasRedone && t.at < len(t.edits):
		t.at++
	default:
		return fmt.Errorf("edit %d, %s: %w", r.number, r.what, errBefore)
	}
	return nil
}

// done are the edits that are seen.
func (t *trail) done() [][]byte { return t.edits[:t.at] }

// walk does them all, and undoes those that are not seen.
func (t *trail) walk(base visit.Document) (*visit.History, error) {
	history := visit.NewHistory(base)
	for i, text := range t.edits {
		e, err := visit.Unmarshal(text)
		if err == nil {
			err = history.Do(e)
		}
		if err != nil {
			return nil, fmt.Errorf("edit %d: %w", i+1, err)
		}
	}
	for range len(t.edits) - t.at {
		history.Undo()
	}
	return history, nil
}

// trail reads a visit's record after an edit, and the number of its last one.
func (b *Book) trail(tx *sql.Tx, id VisitID, after int) (t trail, last int, err error) {
	records, err := b.records(tx, id, after)
	if err != nil {
		return t, 0, err
	}
	for _, r := range records {
		if err := t.follow(r); err != nil {
			return t, 0, damaged(b.path, "a record that cannot be followed ("+err.Error()+")")
		}
	}
	return t, after + len(records), nil
}

// records are a visit's rows after an edit, in order and without a gap.
func (b *Book) records(tx *sql.Tx, id VisitID, after int) ([]record, error) {
	rows, err := tx.Query("SELECT number, what, edit FROM edits WHERE visit_id = ? AND number > ? ORDER BY number", id, after)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var list []record
	for rows.Next() {
		var r record
		if err := rows.Scan(&r.number, &r.what, &r.edit); err != nil {
			return nil, err
		}
		if r.number != after+len(list)+1 {
			return nil, damaged(b.path, fmt.Sprintf("edit %d of a visit missing", after+len(list)+1))
		}
		list = append(list, r)
	}
	return list, rows.Err()
}
