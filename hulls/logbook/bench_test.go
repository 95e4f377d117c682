package logbook

// This file measures a logbook of 100,000 visits.
//
//	go test -run '^$' -bench . ./hulls/logbook

import (
	"database/sql"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
)

const (
	manyHulls  = 20_000
	manyVisits = 100_000
	editsEach  = 5
)

// large is the path of a logbook of manyVisits, made once.
var large string

func largeBook(b *testing.B) string {
	b.Helper()
	if large != "" {
		return large
	}
	folder, err := os.MkdirTemp("", "logbook-bench-")
	if err != nil {
		b.Fatal(err)
	}
	path := filepath.Join(folder, FileName)
	book, err := Open(path, Write)
	if err != nil {
		b.Fatal(err)
	}
	if err := book.write(func(tx *sql.Tx) error { return fillLarge(b, tx) }); err != nil {
		b.Fatal(err)
	}
	if err := book.Close(); err != nil {
		b.Fatal(err)
	}
	large = path
	return path
}

// fillLarge writes the rows that entering each hull and visit by hand would
// write; TestLargeIsAsEntered holds it to that.
func fillLarge(b testing.TB, tx *sql.Tx) error {
	return fillMany(b, tx, manyHulls, manyVisits)
}

func fillMany(b testing.TB, tx *sql.Tx, hullCount, visitCount int) error {
	layouts := []string{"Eider", "Kittiwake", "Avocet"}
	var made []hulls.Hull
	for _, name := range layouts {
		made = append(made, builtIn(b, name))
	}
	const moment = "2026-01-01T00:00:00.000Z"
	run := func(query string, args ...any) error {
		_, err := tx.Exec(query, args...)
		return err
	}
	for i := 1; i <= hullCount; i++ {
		h := named(made[i%len(made)], fmt.Sprintf("Boat %d", i), fmt.Sprintf("ZZZ%05dD404", i), fmt.Sprintf("owner %d", i*7919%hullCount))
		if err := run("INSERT INTO hulls VALUES (?, ?, ?)", i, fmt.Sprintf("%032x", i), moment); err != nil {
			return err
		}
		if err := run("INSERT INTO hull_versions VALUES (?, ?, ?, ?)", i, i, moment, string(hulls.Encode(h))); err != nil {
			return err
		}
		if err := run("INSERT INTO derived_hulls (hull_id, name, hin, owner_reference, layout) VALUES (?, ?, ?, ?, ?)", i, h.Name, h.HIN, h.OwnerReference, string(h.Layout)); err != nil {
			return err
		}
		if err := run("INSERT INTO derived_words (rowid, name, owner_reference, hin, layout) VALUES (?, ?, ?, ?, ?)", i, h.Name, h.OwnerReference, h.HIN+" "+h.HIN, string(h.Layout)); err != nil {
			return err
		}
	}
	for i := 1; i <= visitCount; i++ {
		hull := i%hullCount + 1
		date := fmt.Sprintf("20%02d-%02d-%02d", i*31%26, i%12+1, i%28+1)
		base := visit.Encode(visit.Visit{HullName: fmt.Sprintf("Boat %d", hull), Date: date})
		if err := run("INSERT INTO visits VALUES (?, ?, ?, ?, ?, ?)", i, fmt.Sprintf("%032x", i), hull, hull, moment, string(base)); err != nil {
			return err
		}
		for e := 1; e <= editsEach; e++ {
			if err := run("INSERT INTO edits (visit_id, number, added_at, what, edit) VALUES (?, ?, ?, 'do', ?)", i, e, moment, fmt.Sprintf(`{"edit":"note visit","note":"note %d"}`, e)); err != nil {
				return err
			}
		}
		due := fmt.Sprintf("20%02d-%02d-%02d", 20+i*17%10, i%12+1, i%28+1)
		if err := run("INSERT INTO derived_visits VALUES (?, ?, ?, 0, ?, ?, ?, ?, 'within', ?, 'each season')", i, hull, date, editsEach, editsEach, float64(i%40)/100, float64(i%360), due); err != nil {
			return err
		}
	}
	for i := 1; i <= hullCount; i++ {
		if err := deriveLast(tx, HullID(i)); err != nil {
			return err
		}
	}
	return nil
}

// The large logbook is one that this program would have made.
func TestLargeIsAsEntered(t *testing.T) {
	b := inFolder(t)
	if err := b.write(func(tx *sql.Tx) error { return fillMany(t, tx, 20, 100) }); err != nil {
		t.Fatal(err)
	}
	want := contents(t, b)
	rows, err := b.Visits(VisitQuery{Limit: 1000})
	if err != nil || len(rows) != 100 {
		t.Fatalf("%d visits (%v)", len(rows), err)
	}
	n := 0
	err = b.Rebuild(t.Context(), func(d visit.Document) (Summary, error) {
		n++
		for _, r := range rows {
			if int(r.ID) == n {
				return r.Summary, nil
			}
		}
		return Summary{}, fmt.Errorf("no visit %d", n)
	})
	if err != nil {
		t.Fatal(err)
	}
	wantContents(t, b, want)
}

func BenchmarkOpen(b *testing.B) {
	path := largeBook(b)
	for _, mode := range []Mode{Write, Read} {
		b.Run(map[Mode]string{Write: "write", Read: "read"}[mode], func(b *testing.B) {
			for b.Loop() {
				book, err := Open(path, mode)
				if err != nil {
					b.Fatal(err)
				}
				book.Close()
			}
		})
	}
}

func BenchmarkSearch(b *testing.B) {
	book := openAt(b, largeBook(b), Read)
	for _, words := range []string{"", "777", "19999", "ZZZ12345D404", "v-drive", "boat", "7", "owner 12", "in-line boat 1", "nonesuch"} {
		b.Run(words, func(b *testing.B) {
			n := 0
			for b.Loop() {
				list, err := book.Hulls(HullQuery{Words: words, Today: "2026-06-01"})
				if err != nil {
					b.Fatal(err)
				}
				n = len(list)
			}
			b.ReportMetric(float64(n), "lines")
		})
	}
}

func BenchmarkCount(b *testing.B) {
	book := openAt(b, largeBook(b), Read)
	for _, words := range []string{"", "boat", "7"} {
		b.Run(words, func(b *testing.B) {
			for b.Loop() {
				if _, err := book.CountHulls(words); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkListHulls(b *testing.B) {
	book := openAt(b, largeBook(b), Read)
	for _, offset := range []int{0, manyHulls / 2, manyHulls - 100} {
		b.Run(fmt.Sprint("from ", offset), func(b *testing.B) {
			for b.Loop() {
				if list, err := book.Hulls(HullQuery{Today: "2026-06-01", Offset: offset}); err != nil || len(list) != DefaultLimit {
					b.Fatal(len(list), err)
				}
			}
		})
	}
}

func BenchmarkListVisits(b *testing.B) {
	book := openAt(b, largeBook(b), Read)
	for name, q := range map[string]VisitQuery{"of a hull": {Hull: 77}, "latest": {}, "from 99900": {Offset: manyVisits - DefaultLimit}} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if list, err := book.Visits(q); err != nil || len(list) == 0 {
					b.Fatal(len(list), err)
				}
			}
		})
	}
}

func BenchmarkDocument(b *testing.B) {
	book := openAt(b, largeBook(b), Read)
	for b.Loop() {
		if _, err := book.Document(4711); err != nil {
			b.Fatal(err)
		}
	}
}

// One edit, until the disk has it; most of it is waiting for the disk.
func BenchmarkDo(b *testing.B) {
	book := openAt(b, largeBook(b), Write)
	id, err := book.NewVisit(1, "")
	if err != nil {
		b.Fatal(err)
	}
	s := at(b, book, id)
	i := 0
	for b.Loop() {
		i++
		do(b, s, &visit.TurnNut{Mount: "fore port", Steps: float64(i % 40)})
	}
}

// A visit as long as any: begun again, all its edits are replayed; read, those
// since the last snapshot.
func BenchmarkLongVisit(b *testing.B) {
	book := inFolder(b)
	_, id := aVisit(b, book, "Eider")
	s := at(b, book, id)
	do(b, s, day()...)
	for i := range 1000 {
		do(b, s, &visit.NoteVisit{Note: fmt.Sprint(i)})
	}
	b.Run("begin", func(b *testing.B) {
		for b.Loop() {
			at(b, book, id)
		}
	})
	b.Run("read", func(b *testing.B) {
		for b.Loop() {
			if _, err := book.Document(id); err != nil {
				b.Fatal(err)
			}
		}
	})
}

func BenchmarkExport(b *testing.B) {
	book := inFolder(b)
	hull := aBoat(b, book)
	for b.Loop() {
		exported(b, book, hull)
	}
}
