package main

// This file keeps a window's edits in a logbook and finds them again.

import (
	"bytes"
	"testing"

	"fyne.io/fyne/v2/test"

	"aligner/cmd/aligner/window"
	"aligner/hulls/visit"
)

// TestEditsAreInTheLogbookBeforeTheyAreShown works on a boat, drops everything
// as a killed program would, and opens the logbook anew.
func TestEditsAreInTheLogbookBeforeTheyAreShown(t *testing.T) {
	t.Setenv("XDG_DATA_HOME", t.TempDir())
	app := test.NewTempApp(t)
	_, h, err := readHull("Wren")
	if err != nil {
		t.Fatal(err)
	}
	w, err := window.New(test.NewTempWindow(t, nil), app.Preferences(), "Wren", h, readHull)
	if err != nil {
		t.Fatal(err)
	}
	first := &logbookKeeper{}
	if going := first.latest(); going != nil {
		t.Fatal("an empty logbook goes on")
	}
	w.Keep(first, nil)
	for _, e := range []visit.Edit{
		&visit.TurnNut{Mount: h.Mounts[0].Name, Steps: 2, By: 2},
		&visit.BeginGauging{Gauging: visit.Gauging{Held: "seated"}},
		&visit.AddReading{Event: 0, Reading: visit.OneReading{Reading: visit.Leaf{ClockDeg: 90, Goes: visit.Thou(3), Stops: visit.Thou(4)}}},
	} {
		w.Do(e)
	}
	shown := w.Document()
	first.close()

	again := &logbookKeeper{}
	defer again.close()
	going := again.latest()
	if going == nil {
		t.Fatal("nothing to go on with")
	}
	kept := going.Now()
	if !bytes.Equal(kept.Encode(), shown.Encode()) {
		t.Errorf("kept\n%s\nshown\n%s", kept.Encode(), shown.Encode())
	}
	for range 3 {
		if e, err := going.Undo(); e == nil || err != nil {
			t.Fatalf("undo: %v, %v", e, err)
		}
	}
	if e, _ := going.Undo(); e != nil {
		t.Errorf("undid %v before the beginning", e)
	}
}
