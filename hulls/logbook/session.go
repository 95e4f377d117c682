package logbook

// This file is a visit being worked on: each edit is on the disk before it is
// done.

import (
	"context"
	"database/sql"
	"sync"

	"aligner/hulls/visit"
)

// Session is one visit being worked on. It does what visit.History does, and
// keeps it. Its methods may be called from several goroutines.
type Session struct {
	book  *Book
	visit VisitID

	mu      sync.Mutex
	history *visit.History
	last    int // number of the last edit that is in history
}

// Begin works on a visit, from where it was left: undo and redo included.
func (b *Book) Begin(id VisitID) (*Session, error) {
	s := &Session{book: b, visit: id}
	err := b.read(context.Background(), func(tx *sql.Tx) (err error) {
		s.history, s.last, err = b.history(tx, id)
		return err
	})
	if err != nil {
		return nil, err
	}
	return s, nil
}

// Visit is which visit is worked on.
func (s *Session) Visit() VisitID { return s.visit }

// LastEdit is the number of the last edit kept: what Summarise is told.
func (s *Session) LastEdit() int {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.last
}

// Now is the document shown.
func (s *Session) Now() visit.Document {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.history.Now()
}

// Before is the document before the last edit, and that edit; at the beginning
// the document itself and nil.
func (s *Session) Before() (visit.Document, visit.Edit) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.history.Before()
}

// Preview is what an edit would make of the document; nothing is kept.
func (s *Session) Preview(e visit.Edit) (visit.Document, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.history.Preview(e)
}

// CanUndo says which edit Undo would take back, or nil.
func (s *Session) CanUndo() visit.Edit {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.history.CanUndo()
}

// CanRedo says which edit Redo would do, or nil.
func (s *Session) CanRedo() visit.Edit {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.history.CanRedo()
}

// Do applies an edit and keeps it. It is done only when it is kept: after an
// error the document is as it was, but for what another program did meanwhile.
// A visit stays on its boat: edits that open another are refused.
func (s *Session) Do(e visit.Edit) error {
	switch e.(type) {
	case *visit.OpenHull, *visit.OpenVisit:
		return refused("edit", `"`+e.Name()+`" within a visit`, "edits of the visit", "begin a visit of the other boat")
	}
	return s.do(e)
}

func (s *Session) do(e visit.Edit) error {
	text, err := visit.Marshal(e)
	if err != nil {
		return err
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	err = s.book.write(func(tx *sql.Tx) error {
		if err := s.takeIn(tx); err != nil {
			return err
		}
		next, err := s.history.Preview(e)
		if err != nil {
			return err
		}
		return s.keep(tx, wasDone, text, next)
	})
	if err != nil {
		return err
	}
	s.last++
	return s.history.Do(e)
}

// Undo takes the last edit back, which it returns, and keeps that it did; at the
// beginning it does nothing and returns nil. Where another program changed the
// visit meanwhile, that is taken in and ErrChanged returned: look before undoing
// it.
func (s *Session) Undo() (visit.Edit, error) {
	return s.goTo(wasUndone, (*visit.History).CanUndo, (*visit.History).Undo, (*visit.History).Redo)
}

// Redo does the next edit again, as Undo takes it back.
func (s *Session) Redo() (visit.Edit, error) {
	return s.goTo(wasRedone, (*visit.History).CanRedo, (*visit.History).Redo, (*visit.History).Undo)
}

func (s *Session) goTo(what string, can, move, back func(*visit.History) visit.Edit) (visit.Edit, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	moved := false
	err := s.book.write(func(tx *sql.Tx) error {
		before := s.last
		if err := s.takeIn(tx); err != nil {
			return err
		}
		if s.last != before {
			return trouble(ErrChanged, s.book.path, "this visit changed by another program", "it as it was shown", "look at it as it is now, then go on")
		}
		if can(s.history) == nil {
			return nil
		}
		move(s.history)
		moved = true
		return s.keep(tx, what, nil, s.history.Now())
	})
	if !moved {
		return nil, err
	}
	if err != nil {
		back(s.history)
		return nil, err
	}
	s.last++
	if what == wasUndone {
		return s.history.CanRedo(), nil
	}
	return s.history.CanUndo(), nil
}

// takeIn brings in edits that another program kept since.
func (s *Session) takeIn(tx *sql.Tx) error {
	last := 0
	if err := tx.QueryRow("SELECT coalesce(max(number), 0) FROM edits WHERE visit_id = ?", s.visit).Scan(&last); err != nil || last == s.last {
		return err
	}
	history, last, err := s.book.history(tx, s.visit)
	if err != nil {
		return err
	}
	s.history, s.last = history, last
	return nil
}

// snapshotEvery is how many edits are replayed at most to read a visit.
const snapshotEvery = 64

// keep writes one row of the record, and what derives from the document it leads
// to.
func (s *Session) keep(tx *sql.Tx, what string, edit []byte, next visit.Document) error {
	number := s.last + 1
	_, err := tx.Exec("INSERT INTO edits (visit_id, number, added_at, what, edit) VALUES (?, ?, ?, ?, ?)",
		s.visit, number, s.book.moment(), what, string(edit))
	if err != nil {
		return err
	}
	if number%snapshotEvery == 0 {
		if err := snapshot(tx, s.visit, number, next); err != nil {
			return err
		}
	}
	return deriveVisit(tx, s.visit, number, next)
}

func snapshot(tx *sql.Tx, id VisitID, number int, d visit.Document) error {
	_, err := tx.Exec("INSERT OR REPLACE INTO derived_snapshots (visit_id, number, document) VALUES (?, ?, ?)", id, number, string(d.Encode()))
	return err
}
