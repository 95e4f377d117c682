package logbook

// This file holds what the tests of the logbook share.

import (
	"bytes"
	"errors"
	"path/filepath"
	"strings"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

// builtIn is a built-in hull.
func builtIn(t testing.TB, name string) hulls.Hull {
	t.Helper()
	return builtin.Hull(t, name)
}

// inFolder opens a new logbook in a folder of the test's.
func inFolder(t testing.TB) *Book {
	t.Helper()
	return openAt(t, filepath.Join(t.TempDir(), "log book?#%.db"), Write) // no character of a path is special
}

func openAt(t testing.TB, path string, mode Mode) *Book {
	t.Helper()
	b, err := Open(path, mode)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	return b
}

// aVisit is a new visit of a built-in hull.
func aVisit(t testing.TB, b *Book, hull string) (HullID, VisitID) {
	t.Helper()
	h, err := b.NewHull(builtIn(t, hull))
	if err != nil {
		t.Fatal(err)
	}
	v, err := b.NewVisit(h, "2026-05-14")
	if err != nil {
		t.Fatal(err)
	}
	return h, v
}

func at(t testing.TB, b *Book, id VisitID) *Session {
	t.Helper()
	s, err := b.Begin(id)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func do(t testing.TB, s *Session, edits ...visit.Edit) {
	t.Helper()
	for _, e := range edits {
		if err := s.Do(e); err != nil {
			t.Fatalf("%s: %v", e.Name(), err)
		}
	}
}

func written(d visit.Document) string { return string(d.Encode()) }

// day is a visit's work on Eider or a hull with its mounts, of several kinds of
// edits.
func day() []visit.Edit {
	leaf := func(deg, goes, stops float64) visit.Edit {
		return &visit.AddReading{Event: 0, Reading: visit.OneReading{Reading: visit.Leaf{ClockDeg: deg, Goes: visit.Thou(goes), Stops: visit.Thou(stops)}}}
	}
	return []visit.Edit{
		&visit.SetState{State: visit.State{Boat: "trailer"}},
		&visit.SetRule{Rule: visit.Rule{Limits: visit.LargestGap, Limit: visit.Thou(3), Named: "common practice, 3 thou"}},
		&visit.LookOver{Finding: visit.Finding{Check: "strut firm", Finding: "good"}},
		&visit.BeginGauging{Gauging: visit.Gauging{Held: "seated"}},
		leaf(0, 8, 10), leaf(90, 3, 4), leaf(180, 0.5, 1.5), leaf(270, 5, 6),
		&visit.TurnNut{Mount: "fore port", Steps: 2, By: 2},
		&visit.TurnNut{Mount: "fore starboard", Steps: 2, By: 2},
		&visit.RecordMove{Move: visit.Move{NutFlats: map[string]float64{"fore port": 2, "fore starboard": 2}}},
		&visit.NoteVisit{Note: "owner back on Friday"},
	}
}

// wantTrouble holds an error against a kind, and that it is one line with all
// its parts.
func wantTrouble(t testing.TB, err, kind error) {
	t.Helper()
	var f *hulls.Fault
	switch {
	case !errors.Is(err, kind):
		t.Errorf("got %v; want %v", err, kind)
	case !errors.As(err, &f) || f.Value == "" || f.Limit == "" || f.Mend == "" || strings.ContainsAny(err.Error(), "\n\r"):
		t.Errorf("not one whole line: %q", err)
	}
}

// contents is every row of a logbook, of what is kept and what is derived.
func contents(t testing.TB, b *Book) string {
	t.Helper()
	var out bytes.Buffer
	for _, table := range append(append([]string{}, keptTables...), "derived_hulls", "derived_visits") {
		rows, err := b.db.Query("SELECT * FROM " + table + " ORDER BY 1, 2")
		if err != nil {
			t.Fatal(err)
		}
		columns, _ := rows.Columns()
		for rows.Next() {
			cells := make([]any, len(columns))
			for i := range cells {
				cells[i] = new([]byte)
			}
			if err := rows.Scan(cells...); err != nil {
				t.Fatal(err)
			}
			out.WriteString(table)
			for _, c := range cells {
				out.WriteString("|" + strings.ReplaceAll(string(*c.(*[]byte)), "\n", " "))
			}
			out.WriteByte('\n')
		}
		if err := rows.Err(); err != nil {
			t.Fatal(err)
		}
		rows.Close()
	}
	return out.String()
}

var keptTables = []string{"hulls", "hull_versions", "visits", "edits", "photos", "mechanics", "settings"}

// wantContents holds a logbook against what it held, telling the rows that
// differ.
func wantContents(t testing.TB, b *Book, want string) {
	t.Helper()
	got := contents(t, b)
	if got == want {
		return
	}
	had := map[string]bool{}
	for line := range strings.Lines(want) {
		had[line] = true
	}
	n := 0
	for line := range strings.Lines(got) {
		if !had[line] && n < 5 {
			t.Errorf("now holds %.200q", line)
			n++
		}
		delete(had, line)
	}
	for line := range had {
		if n < 10 {
			t.Errorf("held %.200q", line)
			n++
		}
	}
	t.Error("the logbook does not hold what it held")
}
