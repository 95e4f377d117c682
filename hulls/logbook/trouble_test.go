package logbook

// This file tests what happens to a logbook that is tampered with, taken away or
// closed while it is in use.

import (
	"errors"
	"os"
	"strings"
	"testing"

	"aligner/hulls/visit"
)

// A visit's record that was tampered with is told as damaged, not shown.
func TestTamperedRecord(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	do(t, at(t, b, id), day()...)
	for _, sql := range []string{
		"UPDATE edits SET edit = '{}' WHERE number = 3",
		"DELETE FROM edits WHERE number = 2",
		"UPDATE hull_versions SET file = ''",
		"UPDATE visits SET base = ''",
		"DELETE FROM hull_versions",
	} {
		if _, err := b.db.Exec(sql); err == nil || !strings.Contains(err.Error(), "added") && !strings.Contains(err.Error(), "its edits") {
			t.Errorf("%s: %v; the file must refuse it", sql, err)
		}
	}
	for _, trigger := range []string{"edits_stay", "edits_last", "visits_stay"} {
		if _, err := b.db.Exec("DROP TRIGGER " + trigger); err != nil {
			t.Fatal(err)
		}
	}
	for _, sql := range []string{
		"UPDATE edits SET what = 'redo', edit = '' WHERE number = 3",
		"UPDATE edits SET what = 'do', edit = '{\"edit\":\"fly\"}' WHERE number = 3",
		"DELETE FROM edits WHERE number = 3",
		"UPDATE visits SET base = '{}'",
	} {
		if _, err := b.db.Exec(sql); err != nil {
			t.Fatal(err)
		}
		_, err := b.Document(id)
		wantTrouble(t, err, ErrDamaged)
		_, err = b.Begin(id)
		wantTrouble(t, err, ErrDamaged)
	}
}

// A logbook taken away: nothing is told to be kept that is not, and what was
// kept is there when it comes back.
func TestGoneFromItsPlace(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	do(t, s, day()...)
	before := written(s.Now())
	away := b.Path() + ".away"
	if err := os.Rename(b.Path(), away); err != nil {
		t.Fatal(err)
	}
	wantTrouble(t, s.Do(&visit.NoteVisit{Note: "lost"}), ErrGone)
	_, err := s.Undo()
	wantTrouble(t, err, ErrGone)
	if err := os.WriteFile(b.Path(), nil, 0o600); err != nil { // another in its place
		t.Fatal(err)
	}
	wantTrouble(t, s.Do(&visit.NoteVisit{Note: "lost"}), ErrGone)
	if written(s.Now()) != before {
		t.Error("the document changed although nothing was kept")
	}
	if err := b.Backup(t.Context(), b.Path()+".rescued"); err != nil {
		t.Errorf("a copy of what is still open: %v", err)
	}
	if err := os.Rename(away, b.Path()); err != nil {
		t.Fatal(err)
	}
	do(t, s, &visit.NoteVisit{Note: "kept"})
	b.Close()
	if d, err := openAt(t, b.Path(), Read).Document(id); err != nil || d.Visit.Note != "kept" {
		t.Errorf("brought back, the note is %q (%v)", d.Visit.Note, err)
	}
	if d, err := openAt(t, b.Path()+".rescued", Read).Document(id); err != nil || written(d) != before {
		t.Errorf("the copy made meanwhile differs (%v)", err)
	}
}

func TestClosed(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	if err := s.Do(&visit.NoteVisit{Note: "late"}); err == nil || errors.Is(err, ErrDamaged) {
		t.Errorf("after closing: %v", err)
	}
}
