package visit

// This file tests every kind of edit by one helper: apply, undo, redo, and
// replay through JSON give the same bytes.

import (
	"bytes"
	"encoding/json"
	"math"
	"slices"
	"testing"

	"aligner/assets"
	"aligner/hulls"
)

func document(t *testing.T, name string) Document {
	t.Helper()
	data, _ := assets.Hull(name)
	h, err := hulls.Parse(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return New(name, h)
}

// edits are good examples of every kind there is.
func edits(t *testing.T) []Edit {
	data, _ := assets.Hull("Wren")
	var compact bytes.Buffer
	if err := json.Compact(&compact, data); err != nil {
		t.Fatal(err)
	}
	return []Edit{
		&TurnNut{Mount: "fore port", Steps: 2, By: 2},
		&SlideMount{Mount: "aft starboard", MM: -1.25, By: -1.25},
		&HoldShaft{Held: "bolted"},
		&Float{Afloat: true},
		&Lever{On: true},
		&Power{ThrustN: 1000, TorqueNM: 300},
		&BackToDrawn{},
		&OpenHull{HullName: "Wren", Hull: compact.Bytes()},
	}
}

// exercise is the one helper.
func exercise(t *testing.T, start Document, e Edit) {
	t.Helper()
	first := start.Encode()
	h := NewHistory(start)
	if err := h.Do(e); err != nil {
		t.Fatalf("%s: %v", e.Name(), err)
	}
	now := h.Now()
	done := now.Encode()
	if !bytes.Equal(start.Encode(), first) {
		t.Errorf("%s changed the document it was given", e.Name())
	}
	if h.Undo() != e {
		t.Errorf("%s: undo does not say which edit it undid", e.Name())
	}
	if now = h.Now(); !bytes.Equal(now.Encode(), first) {
		t.Errorf("%s: undo does not lead back", e.Name())
	}
	h.Redo()
	if now = h.Now(); !bytes.Equal(now.Encode(), done) {
		t.Errorf("%s: redo does not lead forward again", e.Name())
	}
	data, err := Marshal(e)
	if err != nil {
		t.Fatal(err)
	}
	again, err := Unmarshal(data)
	if err != nil {
		t.Fatalf("%s: %v", e.Name(), err)
	}
	replayed, err := again.Apply(start)
	if err != nil || !bytes.Equal(replayed.Encode(), done) {
		t.Errorf("%s: replayed from %s it lands elsewhere (%v)", e.Name(), data, err)
	}
	if id, _ := e.Words(); id == "" {
		t.Errorf("%s: has no words", e.Name())
	}
}

func TestEveryEditCanBeDoneUndoneAndReplayed(t *testing.T) {
	start := document(t, "Eider")
	moved, err := (&TurnNut{Mount: "aft port", Steps: -1.5}).Apply(start)
	if err != nil {
		t.Fatal(err)
	}
	tried := map[string]bool{}
	for _, e := range edits(t) {
		exercise(t, start, e)
		exercise(t, moved, e)
		tried[e.Name()] = true
	}
	for _, name := range Kinds() {
		if !tried[name] {
			t.Errorf("no example of the edit %q: add one to this test", name)
		}
	}
}

func TestRefusedEditsChangeNothing(t *testing.T) {
	start := document(t, "Eider")
	noPilot := start
	noPilot.Hull.Coupling.PilotDiameterMM = 0
	for _, c := range []struct {
		on   Document
		edit Edit
	}{
		{start, &TurnNut{Mount: "nowhere", Steps: 1}},
		{start, &TurnNut{Mount: "fore port", Steps: math.NaN()}},
		{start, &TurnNut{Mount: "fore port", Steps: 1e9}},
		{start, &SlideMount{Mount: "nowhere"}},
		{start, &SlideMount{Mount: "fore port", MM: math.Inf(1)}},
		{start, &HoldShaft{Held: "snug"}},
		{noPilot, &HoldShaft{Held: "seated"}},
		{start, &Power{ThrustN: math.NaN()}},
		{start, &OpenHull{HullName: "bad", Hull: []byte(`{"format": "hull/9"}`)}},
	} {
		h := NewHistory(c.on)
		before := c.on.Encode()
		if err := h.Do(c.edit); err == nil || err.Error() == "" {
			t.Errorf("%s %+v: not refused", c.edit.Name(), c.edit)
		}
		now := h.Now()
		if !bytes.Equal(now.Encode(), before) || h.CanUndo() != nil {
			t.Errorf("%s %+v: refused, yet something changed", c.edit.Name(), c.edit)
		}
	}
}

// Undo to the start and redo to the end pass through the same documents.
func TestUndoToTheStartAndRedoToTheEnd(t *testing.T) {
	h := NewHistory(document(t, "Eider"))
	var seen [][]byte
	note := func() {
		d := h.Now()
		seen = append(seen, d.Encode())
	}
	note()
	for _, e := range edits(t) {
		if err := h.Do(e); err != nil {
			t.Fatal(err)
		}
		note()
	}
	for i := len(seen) - 1; i >= 0; i-- {
		if d := h.Now(); !bytes.Equal(d.Encode(), seen[i]) {
			t.Fatalf("step %d differs on the way back", i)
		}
		h.Undo()
	}
	for i := range seen {
		if d := h.Now(); !bytes.Equal(d.Encode(), seen[i]) {
			t.Fatalf("step %d differs on the way forward", i)
		}
		h.Redo()
	}
	if h.Redo() != nil {
		t.Error("redo beyond the end")
	}
}

func TestHistoryForgetsTheOldestOnly(t *testing.T) {
	h := NewHistory(document(t, "Eider"))
	for i := range mostSteps + 50 {
		if err := h.Do(&TurnNut{Mount: "fore port", Steps: float64(i % 5)}); err != nil {
			t.Fatal(err)
		}
	}
	n := 0
	for h.Undo() != nil {
		n++
	}
	if n != mostSteps {
		t.Errorf("%d steps back, want %d", n, mostSteps)
	}
}

func TestUnknownEditsAreRefused(t *testing.T) {
	for _, s := range []string{``, `{}`, `{"edit":"fly","with":{}}`, `{"edit":"float","with":{"afloat":true,"high":1}}`,
		`{"edit":"float","with":{"afloat":true}} 1`, `{"edit":"turn nut","with":{"mount":1}}`} {
		if _, err := Unmarshal([]byte(s)); err == nil {
			t.Errorf("%s: not refused", s)
		}
	}
}

func TestOutsideNamesMountsBeyondTheirRange(t *testing.T) {
	d := document(t, "Bench")
	d, err := (&TurnNut{Mount: "aft port", Steps: 30}).Apply(d)
	if err != nil {
		t.Fatal(err)
	}
	if got := d.Outside(); !slices.Equal(got, []string{"aft port"}) {
		t.Errorf("outside their range: %q", got)
	}
}
