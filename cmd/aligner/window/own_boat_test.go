package window

// The form is reached from the window; what is measured there changes the visit that
// goes on, and can be undone in it.

import (
	"bytes"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/form"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
)

func TestMeasuredAgainInTheMidstOfAVisit(t *testing.T) {
	w := opened(t, "Kittiwake")
	book, err := logbook.Open(filepath.Join(t.TempDir(), "book.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	defer book.Close()
	w.Keep(&oneBook{book: book}, nil)
	w.do(&visit.TurnNut{Mount: "fore port", Steps: 3, By: 3})
	before := w.history.Now()

	w.measureAgain()
	if _, ok := w.page.(*form.Page); !ok {
		t.Fatalf("the page is %T", w.page)
	}
	press := func(keys ...fyne.KeyName) {
		for _, k := range keys {
			w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: k})
		}
	}
	press(fyne.KeyPageDown, fyne.KeyPageDown) // the first mount
	press(fyne.KeyDown, fyne.KeyDown, fyne.KeyDown, fyne.KeyDown, fyne.KeyDown)
	for _, r := range "M16x2" {
		w.win.Canvas().Focused().TypedRune(r)
	}
	press(fyne.KeyReturn)
	for range 20 {
		w.page.TypedKey(&fyne.KeyEvent{Name: fyne.KeyPageDown})
	}
	press(fyne.KeyReturn) // into the logbook

	now := w.history.Now()
	if m := now.Hull.Mounts[0]; m.Thread != "M16x2" || m.ThreadPitchMM != 2 {
		t.Fatalf("the visit's boat has %s", m.Thread)
	}
	if now.Trial.Steps[0] != 3 || w.boat.hull.Mounts[0].Thread != "M16x2" {
		t.Errorf("%v flats tried, the window's boat has %s", now.Trial.Steps, w.boat.hull.Mounts[0].Thread)
	}
	kept, err := book.Hull(1)
	if err != nil || kept.Hull.Mounts[0].Thread != "M16x2" {
		t.Errorf("in the logbook she has %s (%v)", kept.Hull.Mounts[0].Thread, err)
	}
	if lines, _ := book.Hulls(logbook.HullQuery{}); len(lines) != 1 {
		t.Errorf("%d boats in the logbook", len(lines))
	}
	press(fyne.KeyEscape)
	if w.page != nil {
		t.Fatal("Escape does not leave the form")
	}
	w.undo()
	back := w.history.Now()
	if !bytes.Equal(back.Encode(), before.Encode()) || w.boat.hull.Mounts[0].Thread != before.Hull.Mounts[0].Thread {
		t.Error("undone: another document")
	}
	w.redo()
	again := w.history.Now()
	if !bytes.Equal(again.Encode(), now.Encode()) {
		t.Error("done again: another document")
	}
	// The record replays: what a program that was killed would find.
	id, _, _ := book.Latest()
	d, err := book.Document(id)
	if err != nil || !bytes.Equal(hulls.Encode(d.Hull), hulls.Encode(now.Hull)) {
		t.Errorf("read again the visit's boat is another (%v)", err)
	}
}

func TestANewBoatIsOneMenuAway(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.newBoat()
	if _, ok := w.page.(*form.Page); !ok {
		t.Fatalf("the page is %T", w.page)
	}
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if w.page != nil {
		t.Error("Escape does not leave the questions")
	}
}
