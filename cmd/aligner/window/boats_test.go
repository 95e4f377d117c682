package window

// This file goes by keys from the boat on the screen to the list of all boats and
// on with another's visit.

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/boats"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit/builtin"
)

// oneBook keeps everything in one logbook.
type oneBook struct {
	book   *logbook.Book
	worked int
}

func (k *oneBook) Begin(h hulls.Hull) (Past, error) {
	id, err := k.book.NewHull(h)
	if err != nil {
		return nil, err
	}
	return k.BeginOn(id)
}

func (k *oneBook) BeginOn(id logbook.HullID) (Past, error) {
	v, err := k.book.NewVisit(id, "2026-05-14")
	if err != nil {
		return nil, err
	}
	return k.GoOn(v)
}

func (k *oneBook) GoOn(id logbook.VisitID) (Past, error) {
	s, err := k.book.Begin(id)
	if err != nil {
		return nil, err
	}
	return s, nil
}

func (k *oneBook) WorkOut(Past) { k.worked++ }

func (k *oneBook) Book() (*logbook.Book, error) { return k.book, nil }

func TestAnotherBoatsVisitIsOneKeyAway(t *testing.T) {
	w := opened(t, "Kittiwake")
	b, err := logbook.Open(filepath.Join(t.TempDir(), "logbook.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	id, err := b.NewHull(builtin.Hull(t, "Wren"))
	if err != nil {
		t.Fatal(err)
	}
	keep := &oneBook{book: b}
	w.Keep(keep, nil)
	key := func(names ...fyne.KeyName) {
		for _, n := range names {
			w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: n})
		}
	}
	// An edit on the boat shown enters her, and is worked out when she is left.
	key(fyne.KeyUp)
	w.picture.TypedRune('d')
	if w.page == nil || keep.worked != 1 {
		t.Fatalf("no page, or her visit was not worked out: %d", keep.worked)
	}
	key(fyne.KeyEscape)
	if w.page != nil {
		t.Fatal("Escape did not leave the page")
	}
	key(boatsFunctionKey)
	for _, r := range "wre" {
		w.win.Canvas().Focused().TypedRune(r)
	}
	key(fyne.KeyReturn, fyne.KeyReturn) // no visit yet: begin one
	if w.page != nil || w.history.Now().Hull.Name != "Wren" || w.stage != stageBegin {
		t.Fatalf("shown %q at stage %v", w.history.Now().Hull.Name, w.stage)
	}
	lines, err := b.Visits(logbook.VisitQuery{Hull: id})
	if err != nil || len(lines) != 1 {
		t.Fatalf("%d visits of her, %v", len(lines), err)
	}
	key(pastKey)
	if p, ok := w.page.(*boats.Page); !ok || w.win.Canvas().Focused() != p.Focus() {
		t.Fatal("what moved since her last visit is not a key away")
	}
	key(fyne.KeyReturn) // goes on with the visit chosen, which is this one
	if w.page != nil || w.history.Now().Hull.Name != "Wren" {
		t.Fatalf("shown %q", w.history.Now().Hull.Name)
	}
	w.enter(stageTry)
	key(fyne.KeyUp)
	if d, err := b.Document(lines[0].ID); err != nil || d.Trial.Steps[0] != 1 {
		t.Errorf("what was done is not in her visit: %v, %v", d.Trial, err)
	}
}
