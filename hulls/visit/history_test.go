package visit

// This file tests the past: any order of doing, undoing and doing again leads
// through the same documents.

import (
	"bytes"
	"math/rand/v2"
	"testing"
)

// Undo to the start and redo to the end pass through the same documents.
func TestUndoToTheStartAndRedoToTheEnd(t *testing.T) {
	h := NewHistory(full(t))
	var seen [][]byte
	note := func() {
		d := h.Now()
		seen = append(seen, d.Encode())
	}
	note()
	for _, e := range inTurn(t) {
		if err := h.Do(e); err != nil {
			t.Fatalf("%s: %v", e.Name(), err)
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

// Good edits, refused ones, undo and redo in any order, against a plain list of
// written documents.
func TestHistoryAgainstAList(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 8))
	good := edits(t)
	h := NewHistory(full(t))
	written := func() []byte {
		d := h.Now()
		return d.Encode()
	}
	past, at := [][]byte{written()}, 0
	done, refused := 0, 0
	for range 1500 {
		switch r := random.IntN(10); {
		case r < 5:
			e := good[random.IntN(len(good))]
			shown, previewErr := h.Preview(e)
			if err := h.Do(e); (err == nil) != (previewErr == nil) {
				t.Fatalf("%s: previewed %v, done %v", e.Name(), previewErr, err)
			} else if err == nil {
				past, at = append(past[:at+1], written()), at+1
				if !bytes.Equal(shown.Encode(), past[at]) {
					t.Fatalf("%s: shown and done differ", e.Name())
				}
				done++
			} else {
				refused++ // another edit took away what this one needs
			}
		case r < 6:
			// Bad on the document begun with; what was done since may have made one
			// good, such as a reading of an event that was not there.
			e := bad[random.IntN(len(bad))].edit
			_, previewErr := h.Preview(e)
			if err := h.Do(e); (err == nil) != (previewErr == nil) {
				t.Fatalf("%s: previewed %v, done %v", e.Name(), previewErr, err)
			} else if err == nil {
				past, at = append(past[:at+1], written()), at+1
			}
		case r < 8:
			if e := h.Undo(); (e == nil) != (at == 0) {
				t.Fatalf("undo at step %d gives %v", at, e)
			} else if e != nil {
				at--
			}
		default:
			if e := h.Redo(); (e == nil) != (at == len(past)-1) {
				t.Fatalf("redo at step %d of %d gives %v", at, len(past), e)
			} else if e != nil {
				at++
			}
		}
		if !bytes.Equal(written(), past[at]) {
			t.Fatalf("step %d is another document", at)
		}
		if (h.CanUndo() == nil) != (at == 0) || (h.CanRedo() == nil) != (at == len(past)-1) {
			t.Fatalf("step %d of %d: can undo %v, redo %v", at, len(past), h.CanUndo(), h.CanRedo())
		}
		before, _ := h.Before()
		if !bytes.Equal(before.Encode(), past[max(at-1, 0)]) {
			t.Fatalf("what was before step %d is another document", at)
		}
	}
	if done < 200 {
		t.Errorf("only %d edits done, %d refused", done, refused)
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

// A law: what is tried and what was done are apart. Trying leaves the visit as
// it was, and recording leaves what is tried; a boat that is launched floats in
// both, a try taken as done moves from one to the other, and another boat changes
// everything.
func TestTrialAndVisitAreApart(t *testing.T) {
	start := full(t)
	for _, e := range []Edit{&TurnNut{Mount: "fore port", Steps: 3}, &Power{ThrustN: 5}, &HoldShaft{Held: "bolted"}} {
		var err error
		if start, err = e.Apply(start); err != nil {
			t.Fatal(err)
		}
	}
	trial := func(d Document) []byte {
		e := &encoder{}
		e.trial(&d.Hull, d.Trial)
		return e.Bytes()
	}
	for _, e := range edits(t) {
		next, err := e.Apply(start)
		if err != nil {
			t.Fatal(err)
		}
		visited := !bytes.Equal(Encode(next.Visit), Encode(start.Visit))
		tried := !bytes.Equal(trial(next), trial(start))
		switch e.(type) {
		case *OpenHull, *OpenVisit, *SetState, *RecordTry:
		default:
			if visited && tried {
				t.Errorf("%s changes both the visit and what is tried", e.Name())
			}
		}
	}
	launched, err := (&SetState{State: State{Boat: "afloat"}}).Apply(document(t, "Eider"))
	if err != nil || !launched.Trial.Afloat {
		t.Errorf("a boat afloat is not tried afloat (%v)", err)
	}
}
