package visit

// Changing the boat in the midst of a visit: the document follows, what was moved
// stays, undo gives the files back byte for byte, and what cannot be is refused.

import (
	"bytes"
	"strings"
	"testing"

	"aligner/hulls"
	"aligner/hulls/fields"
)

func TestChangeHullFollowsThroughTheVisit(t *testing.T) {
	h := NewHistory(full(t))
	start := h.Now()
	hullBefore, visitBefore := hulls.Encode(start.Hull), Encode(start.Visit)
	to := start.Hull.Clone()
	for _, c := range []struct {
		pointer string
		v       fields.Value
	}{{"/mounts/0/thread", fields.Value{Text: "M16x1.5"}}, {"/mounts/0/at_mm/0", fields.Value{Number: 742}}, {"/bearings/0/diametral_clearance_mm", fields.Value{Number: 0.31}}} {
		var err error
		if to, err = fields.Set(to, c.pointer, c.v); err != nil {
			t.Fatal(err)
		}
	}
	to, err := fields.TakeUsual(to, "/mounts/2/stiffness_n_per_mm/along")
	if err != nil {
		t.Fatal(err)
	}
	e, err := NewChangeHull(&start.Hull, &to)
	if err != nil || len(e.Changes) != 4 {
		t.Fatalf("%v: %+v", err, e)
	}
	if err := h.Do(e); err != nil {
		t.Fatal(err)
	}
	now := h.Now()
	if !bytes.Equal(hulls.Encode(now.Hull), hulls.Encode(to)) {
		t.Error("the document's hull is another")
	}
	if now.Hull.Mounts[0].LiftPerStepMM() != 0.25 {
		t.Errorf("a flat lifts %g mm", now.Hull.Mounts[0].LiftPerStepMM())
	}
	// As a file the visit carries the boat it was done on.
	again, report := Open(Encode(now.Visit), "v", built)
	if report.Err() != nil || !bytes.Equal(hulls.Encode(again.Hull), hulls.Encode(to)) || len(again.Visit.Events) != len(start.Visit.Events) {
		t.Errorf("the file does not hold the boat: %v", report.Err())
	}
	if back, err := ParseDocument(now.Encode(), "d"); err != nil || !bytes.Equal(back.Encode(), now.Encode()) {
		t.Errorf("the document does not come back: %v", err)
	}
	if same, err := NewChangeHull(&now.Hull, &to); same != nil || err != nil {
		t.Errorf("no difference makes %+v, %v", same, err)
	}
	h.Undo()
	if now := h.Now(); !bytes.Equal(hulls.Encode(now.Hull), hullBefore) || !bytes.Equal(Encode(now.Visit), visitBefore) {
		t.Error("undone: other files")
	}
	h.Redo()
	if now := h.Now(); !bytes.Equal(hulls.Encode(now.Hull), hulls.Encode(to)) {
		t.Error("done again: another hull")
	}
}

func TestChangeHullToSolid(t *testing.T) {
	d := full(t)
	to := d.Hull.Clone()
	for i := range to.Mounts {
		var err error
		if to, err = fields.Set(to, "/mounts/"+string(rune('0'+i))+"/kind", fields.Value{Text: "solid"}); err != nil {
			t.Fatal(err)
		}
	}
	e, err := NewChangeHull(&d.Hull, &to)
	if err != nil {
		t.Fatal(err)
	}
	next, err := e.Apply(d)
	if err != nil || !bytes.Equal(hulls.Encode(next.Hull), hulls.Encode(to)) {
		t.Errorf("rubber to solid: %v", err)
	}
}

func TestChangeHullRefused(t *testing.T) {
	d := full(t)
	one := func(pointer string, number bool, v fields.Value) *ChangeHull {
		return &ChangeHull{Changes: []HullChange{{Pointer: pointer, Key: "x", Number: number, Value: v, Plus: -1}}}
	}
	for _, c := range []struct {
		e    *ChangeHull
		want string
	}{
		{&ChangeHull{}, "nothing to change"},
		{one("/nonesuch", true, fields.Value{}), "a field of this hull"},
		{one("/mounts/0/thread", false, fields.Value{Text: "M17"}), "mounts[0].thread"},
		{one("/bearings/0/at_mm", true, fields.Value{Number: -9000}), "bearings[0].at_mm"},
		{one("/mounts/0/name", false, fields.Value{Text: "bow"}), "fore port"}, // moved under its old name
	} {
		before := d.Encode()
		_, err := c.e.Apply(d)
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%+v: %v; want %s", c.e, err, c.want)
		}
		if !bytes.Equal(before, d.Encode()) {
			t.Errorf("%+v touched the document", c.e)
		}
	}
	other := d.Hull.Clone()
	other.Bearings = other.Bearings[:1]
	if _, err := NewChangeHull(&d.Hull, &other); err == nil {
		t.Error("a bearing less is the same boat")
	}
	for _, text := range []string{
		`{"edit":"change hull","changes":[{"pointer":"/name","field":"name"}]}`,
		`{"edit":"change hull","changes":[{"pointer":"/name","field":"name","text":"x","number":1}]}`,
		`{"edit":"change hull","changes":[{"pointer":"/name","field":"name","text":1}]}`,
	} {
		if _, err := Unmarshal([]byte(text)); err == nil {
			t.Errorf("%s was read", text)
		}
	}
}

// TestBoatMeasuredFieldByField changes a whole boat in a visit, field by field, in an
// order in which each is possible, and goes back to the start and to the end: the same
// hull and visit files, byte for byte.
func TestBoatMeasuredFieldByField(t *testing.T) {
	h := NewHistory(full(t))
	type step struct{ hull, visit []byte }
	var steps []step
	note := func() step {
		d := h.Now()
		return step{hulls.Encode(d.Hull), Encode(d.Visit)}
	}
	steps = append(steps, note())
	start := h.Now()
	for _, f := range fields.List(&start.Hull) {
		d := h.Now()
		v := f.Get(&d.Hull)
		switch {
		case f.Kind.IsNumber() && f.Kind != fields.Number && v.Number != 0:
			v.Number *= 1.01
		case f.Kind == fields.Thread:
			v.Text = f.Choices[0]
		default:
			continue
		}
		to, err := fields.Set(d.Hull, f.Pointer, v)
		if err != nil {
			continue // past a limit
		}
		e, err := NewChangeHull(&d.Hull, &to)
		if err != nil {
			t.Fatal(err)
		}
		if h.Do(e) != nil {
			continue // does not go with the rest
		}
		steps = append(steps, note())
	}
	if len(steps) < 50 {
		t.Fatalf("only %d steps", len(steps))
	}
	same := func(i int) {
		t.Helper()
		if now := note(); !bytes.Equal(now.hull, steps[i].hull) || !bytes.Equal(now.visit, steps[i].visit) {
			t.Fatalf("step %d: other files", i)
		}
	}
	for i := len(steps) - 2; i >= 0; i-- {
		h.Undo()
		same(i)
	}
	for i := 1; i < len(steps); i++ {
		h.Redo()
		same(i)
	}
}
