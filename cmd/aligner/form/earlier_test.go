package form

// What a boat answered in a visit is in her measurements once the visit was left, once
// however often it is left, and follows the visit when that changes.

import (
	"path/filepath"
	"testing"

	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

func TestLearnFromAVisit(t *testing.T) {
	book, err := logbook.Open(filepath.Join(t.TempDir(), "book.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	defer book.Close()
	d := builtin.Visit(t, "first-job")
	id, err := book.NewHull(d.Hull)
	if err != nil {
		t.Fatal(err)
	}
	v, err := book.EnterVisit(id, d.Visit)
	if err != nil {
		t.Fatal(err)
	}
	learn := func(d visit.Document) ([]hulls.Measured, int) {
		t.Helper()
		if err := LearnFrom(book, v, &d); err != nil {
			t.Fatal(err)
		}
		kept, err := book.Hull(id)
		if err != nil {
			t.Fatal(err)
		}
		n, err := book.Versions(id)
		if err != nil {
			t.Fatal(err)
		}
		return kept.Hull.MeasuredResponse, n
	}
	now, err := book.Document(v)
	if err != nil {
		t.Fatal(err)
	}
	once, versions := learn(now)
	if len(once) == 0 || once[0].Held != "seated" {
		t.Fatalf("%+v", once)
	}
	twice, again := learn(now)
	if len(twice) != len(once) || again != versions {
		t.Errorf("left twice: %d answers, %d versions; once: %d, %d", len(twice), again, len(once), versions)
	}
	// The move turns out to have been another.
	changed := now
	changed.Visit.Events = append([]visit.Event(nil), now.Visit.Events...)
	for i, e := range changed.Visit.Events {
		if e.Move != nil {
			m := *e.Move
			m.NutFlats = map[string]float64{"fore port": 5, "fore starboard": 5}
			changed.Visit.Events[i].Move = &m
			break
		}
	}
	after, _ := learn(changed)
	if len(after) != len(once) || after[0].NutFlats["fore port"] != 5 {
		t.Errorf("the changed move is kept as %+v", after)
	}
	// A visit begun now begins with it.
	next, err := book.NewVisit(id, "2026-06-01")
	if err != nil {
		t.Fatal(err)
	}
	begun, err := book.Document(next)
	if err != nil || len(begun.Hull.MeasuredResponse) != len(after) {
		t.Errorf("the next visit begins with %d answers (%v)", len(begun.Hull.MeasuredResponse), err)
	}
	// All at once comes to the same.
	if h, added, err := Earlier(book, id, d.Hull); err != nil || added != len(once) || len(h.MeasuredResponse) != len(once) {
		t.Errorf("all visits: %d added, %d in all (%v)", added, len(h.MeasuredResponse), err)
	}
}
