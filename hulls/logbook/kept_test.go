package logbook

// This file holds the promise that old logbooks and bundles always open. What
// lies in testdata was written by the first version of each format and is never
// written again; a later version adds its own beside it.

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
)

func TestFirstLogbookOpens(t *testing.T) {
	path := filepath.Join(t.TempDir(), FileName)
	if err := copyBook("testdata/logbook-1.db", path); err != nil {
		t.Fatal(err)
	}
	b := openAt(t, path, Write)
	if err := b.Check(t.Context()); err != nil {
		t.Error(err)
	}
	list, err := b.Hulls(HullQuery{Words: "becas zzz12345d404 berth", Today: "2026-12-01"})
	if err != nil || len(list) != 1 {
		t.Fatalf("found %+v (%v)", list, err)
	}
	if l := list[0]; l.Name != "Bécassine" || l.HIN != "US-ZZZ12345D404" || l.OwnerReference != "berth 7" || l.Visits != 2 ||
		l.LastSpreadMM != visit.Known(0.2) || l.Due != "2026-11-14" || l.DueReason != "each season" || !l.Overdue {
		t.Errorf("listed as %+v", l)
	}
	if n, err := b.CountHulls(""); err != nil || n != 2 {
		t.Errorf("%d hulls (%v)", n, err)
	}
	h, err := b.Hull(list[0].ID)
	if err != nil || !bytes.Equal(hulls.Encode(h.Hull), bytesOf(t, "testdata/logbook-1.hull.json")) {
		t.Errorf("the hull is another (%v)", err)
	}
	visits, err := b.Visits(VisitQuery{Hull: h.ID})
	if err != nil || len(visits) != 2 || visits[0].Photos+visits[1].Photos != 1 {
		t.Fatalf("visits are %+v (%v)", visits, err)
	}
	for id, file := range map[VisitID]string{1: "testdata/logbook-1.visit-1.json", 2: "testdata/logbook-1.visit-2.json"} {
		d, err := b.Document(id)
		if err != nil || !bytes.Equal(visit.Encode(d.Visit), bytesOf(t, file)) {
			t.Errorf("visit %d is another than %s (%v)", id, file, err)
		}
	}
	holdFirstSession(t, b)
	if set, err := b.Settings("Ann"); err != nil || len(set) != 1 || set["units"] != "mm" {
		t.Errorf("settings are %v (%v)", set, err)
	}
	want := kept(t, b)
	if err := b.Rebuild(t.Context(), nil); err != nil {
		t.Fatal(err)
	}
	b.Close()
	got, s := saved(t, bytesOf(t, "testdata/logbook-1.db"), nil)
	if len(s.Lost) != 0 || rowsOf(t, got, "edits") != 76 || want == "" {
		t.Errorf("salvaged: %+v", s)
	}
}

// holdFirstSession: 72 edits, two undone, one of them done again, and one more
// visit with one edit.
func holdFirstSession(t *testing.T, b *Book) {
	t.Helper()
	s := at(t, b, 1)
	if s.LastEdit() != 75 || s.CanRedo() == nil {
		t.Errorf("the last edit is number %d, redo %v", s.LastEdit(), s.CanRedo())
	}
	d := s.Now()
	if got := d.Trial.Steps; len(got) != 4 || got[2] != 2 {
		t.Errorf("the nuts tried are at %v", got)
	}
	undone := 0
	for {
		e, err := s.Undo()
		if err != nil {
			t.Fatal(err)
		}
		if e == nil {
			break
		}
		undone++
	}
	d = s.Now()
	if undone != 71 || len(d.Visit.Events) != 0 {
		t.Errorf("%d edits undone, %d events left", undone, len(d.Visit.Events))
	}
}

// The first logbook is read where it lies too, with nothing written beside it.
func TestFirstLogbookIsRead(t *testing.T) {
	path := filepath.Join(t.TempDir(), FileName)
	if err := copyBook("testdata/logbook-1.db", path); err != nil {
		t.Fatal(err)
	}
	before := bytesOf(t, path)
	b := openAt(t, path, Read)
	if _, err := b.Document(1); err != nil {
		t.Error(err)
	}
	b.Close()
	if !bytes.Equal(bytesOf(t, path), before) {
		t.Error("reading changed the file")
	}
}

func TestFirstBundleIsImported(t *testing.T) {
	data, err := os.ReadFile("testdata/bundle-1.zip")
	if err != nil {
		t.Fatal(err)
	}
	b := inFolder(t)
	c := imported(t, b, data, KeepOurs)
	if c.HullName != "Bécassine" || len(c.Visits) != 2 || c.Photos[IsNew] != 1 {
		t.Errorf("imported %+v", c)
	}
	if again := imported(t, b, exported(t, b, c.ID), TakeTheirs); again.Any(TakeTheirs) {
		t.Errorf("exported again it is another: %+v", again)
	}
}
