package logbook

// This file tests that a visit is kept edit by edit, undo and redo included, and
// that several programs may work on one.

import (
	"math/rand/v2"
	"strings"
	"sync"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// Undo to the start and redo to the end pass through the same documents byte
// for byte, in one session and in sessions begun anew at every step.
func TestUndoToTheStartAndRedoToTheEnd(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	seen := []string{written(s.Now())}
	for _, e := range day() {
		do(t, s, e)
		seen = append(seen, written(s.Now()))
	}
	holds := func(i int) {
		t.Helper()
		again := at(t, b, id)
		d, err := b.Document(id)
		if err != nil {
			t.Fatal(err)
		}
		if written(s.Now()) != seen[i] || written(again.Now()) != seen[i] || written(d) != seen[i] {
			t.Fatalf("step %d is another document", i)
		}
		if (again.CanUndo() == nil) != (i == 0) || (again.CanRedo() == nil) != (i == len(seen)-1) {
			t.Fatalf("step %d of %d, begun anew: can undo %v, redo %v", i, len(seen)-1, again.CanUndo(), again.CanRedo())
		}
	}
	for i := len(seen) - 1; ; i-- {
		holds(i)
		e, err := s.Undo()
		if err != nil {
			t.Fatal(err)
		}
		if e == nil {
			break
		}
	}
	for i := 0; ; i++ {
		holds(i)
		e, err := s.Redo()
		if err != nil {
			t.Fatal(err)
		}
		if e == nil {
			break
		}
	}
	d := s.Now()
	if got, want := string(visit.Encode(d.Visit)), string(visit.Encode(done(t, day()...).Visit)); got != want {
		t.Errorf("the visit file differs from one never kept:\n%s\n%s", got, want)
	}
}

// done is what edits make of a visit that is kept nowhere.
func done(t testing.TB, edits ...visit.Edit) visit.Document {
	t.Helper()
	d, err := (&visit.SetDate{Date: "2026-05-14"}).Apply(visit.New("Eider", builtIn(t, "Eider")))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range edits {
		if d, err = e.Apply(d); err != nil {
			t.Fatal(err)
		}
	}
	return d
}

// Any order of doing, undoing, doing again and beginning anew, against a history
// that is not kept; long enough for many snapshots.
func TestSessionAgainstAHistory(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 7))
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	plain := visit.NewHistory(s.Now())
	name := func(e visit.Edit) string {
		if e == nil {
			return ""
		}
		return e.Name()
	}
	for i := range 1200 {
		switch r := random.IntN(20); {
		case r < 10:
			e := &visit.TurnNut{Mount: "fore port", Steps: float64(random.IntN(30))}
			do(t, s, e)
			if err := plain.Do(e); err != nil {
				t.Fatal(err)
			}
		case r < 11:
			e := &visit.NoteVisit{Note: strings.Repeat("n", random.IntN(40)+1)}
			do(t, s, e)
			if err := plain.Do(e); err != nil {
				t.Fatal(err)
			}
		case r < 15:
			if e, err := s.Undo(); err != nil || name(e) != name(plain.Undo()) {
				t.Fatalf("undo: %v, %v", e, err)
			}
		case r < 18:
			if e, err := s.Redo(); err != nil || name(e) != name(plain.Redo()) {
				t.Fatalf("redo: %v, %v", e, err)
			}
		case r < 19:
			s = at(t, b, id)
		default:
			if err := s.Do(&visit.TurnNut{Mount: "nonesuch"}); err == nil {
				t.Fatal("a bad edit is kept")
			}
		}
		if i%7 == 0 {
			d, err := b.Document(id)
			if err != nil || written(d) != written(plain.Now()) {
				t.Fatalf("step %d: the document read differs (%v)", i, err)
			}
		}
		if written(s.Now()) != written(plain.Now()) {
			t.Fatalf("step %d is another document", i)
		}
	}
	// What is derived follows from what is kept.
	if n := rowsOf(t, b, "derived_snapshots"); n != 1 {
		t.Errorf("%d snapshots of one visit", n)
	}
	want := contents(t, b)
	if err := b.Rebuild(t.Context(), nil); err != nil {
		t.Fatal(err)
	}
	wantContents(t, b, want)
	if err := b.Check(t.Context()); err != nil {
		t.Error(err)
	}
}

func rowsOf(t testing.TB, b *Book, table string) (n int) {
	t.Helper()
	if err := b.db.QueryRow("SELECT count(*) FROM " + table).Scan(&n); err != nil {
		t.Fatal(err)
	}
	return n
}

func TestAVisitStaysOnItsBoat(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	before := written(s.Now())
	wren := hulls.Encode(builtIn(t, "Wren"))
	for _, e := range []visit.Edit{&visit.OpenHull{HullName: "Wren", Hull: wren}, &visit.OpenVisit{HullName: "Wren", Hull: wren}} {
		wantTrouble(t, s.Do(e), ErrRefused)
	}
	if written(s.Now()) != before || s.LastEdit() != 0 {
		t.Error("a refused edit changed something")
	}
}

// A hull measured again is what new visits begin with; visits begun before keep
// theirs.
func TestHullMeasuredAgain(t *testing.T) {
	b := inFolder(t)
	hull, before := aVisit(t, b, "Eider")
	h, err := b.Hull(hull)
	if err != nil {
		t.Fatal(err)
	}
	if err := b.SaveHull(hull, h.Hull); err != nil {
		t.Fatal(err)
	}
	changed := h.Hull
	changed.Shaft.LengthMM += 5
	changed.HIN, changed.OwnerReference = "us-zzz12345d404", "berth 7"
	if err := b.SaveHull(hull, changed); err != nil {
		t.Fatal(err)
	}
	if n, err := b.Versions(hull); err != nil || n != 2 {
		t.Errorf("%d versions (%v), want 2: one saved unchanged is none", n, err)
	}
	after, err := b.NewVisit(hull, "")
	if err != nil {
		t.Fatal(err)
	}
	for id, want := range map[VisitID]float64{before: h.Hull.Shaft.LengthMM, after: changed.Shaft.LengthMM} {
		if d, err := b.Document(id); err != nil || d.Hull.Shaft.LengthMM != want {
			t.Errorf("visit %d has a shaft of %g mm (%v), want %g", id, d.Hull.Shaft.LengthMM, err, want)
		}
	}
	changed.Shaft.LengthMM = -1
	if err := b.SaveHull(hull, changed); err == nil {
		t.Error("an impossible hull is kept")
	}
	if _, err := b.NewHull(changed); err == nil {
		t.Error("an impossible hull is entered")
	}
	wantTrouble(t, b.SaveHull(hull+1, h.Hull), ErrUnknown)
	_, err = b.NewVisit(hull+1, "")
	wantTrouble(t, err, ErrUnknown)
	_, err = b.Begin(after + 1)
	wantTrouble(t, err, ErrUnknown)
	if _, err := b.NewVisit(hull, "2026-13-01"); err == nil {
		t.Error("a visit on no day")
	}
}

// A visit kept elsewhere is entered on a hull that has its mounts.
func TestVisitFromElsewhere(t *testing.T) {
	b := inFolder(t)
	hull, _ := aVisit(t, b, "Eider")
	d := done(t, day()...)
	v := d.Visit
	v.Embedded, v.HullName = &d.Hull, ""
	id, err := b.EnterVisit(hull, v)
	if err != nil {
		t.Fatal(err)
	}
	got, err := b.Document(id)
	if err != nil || string(visit.Encode(got.Visit)) != string(visit.Encode(d.Visit)) {
		t.Errorf("entered as\n%s(%v)", visit.Encode(got.Visit), err)
	}
	v.Events = []visit.Event{{Move: &visit.Move{NutFlats: map[string]float64{"front left": 1}}}}
	if _, err := b.EnterVisit(hull, v); err == nil || !strings.Contains(err.Error(), "front left") {
		t.Errorf("a visit of a mount there is not: %v", err)
	}
	_, err = b.EnterVisit(hull+7, d.Visit)
	wantTrouble(t, err, ErrUnknown)
	if n := rowsOf(t, b, "visits"); n != 2 {
		t.Errorf("%d visits", n)
	}
}

// Two programs on one visit: what each put in is there, the other's taken in
// before one's own; an undo of what one has not seen is refused once.
func TestTwoProgramsOnOneVisit(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	other := openAt(t, b.Path(), Write)
	one, two := at(t, b, id), at(t, other, id)
	do(t, one, &visit.NoteVisit{Note: "one"})
	do(t, two, &visit.TurnNut{Mount: "aft port", Steps: 3})
	d := two.Now()
	if d.Visit.Note != "one" {
		t.Error("the other's edit was not taken in")
	}
	_, err := one.Undo()
	wantTrouble(t, err, ErrChanged)
	if written(one.Now()) != written(d) {
		t.Error("after being told of a change the document is not the changed one")
	}
	if e, err := one.Undo(); err != nil || e.Name() != "turn nut" {
		t.Errorf("undid %v (%v)", e, err)
	}
	_, err = two.Redo()
	wantTrouble(t, err, ErrChanged)
	if e, err := two.Redo(); err != nil || e.Name() != "turn nut" {
		t.Errorf("did %v again (%v)", e, err)
	}
	if got, err := other.Document(id); err != nil || written(got) != written(d) {
		t.Errorf("another document (%v)", err)
	}
}

// Two writers at once lose nothing: every edit either was told is kept is there.
func TestTwoWritersAtOnce(t *testing.T) {
	b := inFolder(t)
	hull, shared := aVisit(t, b, "Eider")
	const each = 150
	var all sync.WaitGroup
	for w := range 2 {
		book := openAt(t, b.Path(), Write)
		own, err := book.NewVisit(hull, "")
		if err != nil {
			t.Fatal(err)
		}
		all.Add(1)
		go func() {
			defer all.Done()
			for _, id := range []VisitID{own, shared} {
				s, err := book.Begin(id)
				for i := 0; err == nil && i < each; i++ {
					err = s.Do(&visit.TurnNut{Mount: []string{"aft port", "aft starboard"}[w], Steps: float64(i + 1)})
				}
				if err != nil {
					t.Error(err)
				}
			}
		}()
	}
	all.Wait()
	if n := rowsOf(t, b, "edits"); n != 4*each {
		t.Errorf("%d edits kept, want %d", n, 4*each)
	}
	d, err := b.Document(shared)
	if err != nil || d.Trial.Steps[2] != each && d.Trial.Steps[3] != each {
		t.Errorf("the shared visit ends with %v (%v)", d.Trial.Steps, err)
	}
	if err := b.Check(t.Context()); err != nil {
		t.Error(err)
	}
}
