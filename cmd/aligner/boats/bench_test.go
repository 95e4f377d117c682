//go:build linux

package boats

// This file measures the page on a logbook of 100,000 visits of 20,000 boats.
//
//	go test -run '^$' -bench . ./cmd/aligner/boats

import (
	"database/sql"
	"fmt"
	"path/filepath"
	"syscall"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

const (
	manyBoats  = 20_000
	manyVisits = 100_000
)

// manyRows multiply one boat and her visit.
var manyRows = []string{
	`INSERT INTO hulls SELECT i, printf('%032x', i), @moment FROM n`,
	`INSERT INTO hull_versions SELECT i, i, @moment, replace(@hull, 'Kittiwake', 'Boat ' || i) FROM n`,
	`INSERT INTO derived_hulls (hull_id, name, hin, owner_reference, layout) SELECT i, 'Boat ' || i, '', 'owner ' || (i * 7919 % @boats), CASE i % 2 WHEN 0 THEN 'in-line' ELSE 'v-drive' END FROM n`,
	`INSERT INTO derived_words (rowid, name, owner_reference, hin, layout) SELECT hull_id, name, owner_reference, hin, layout FROM derived_hulls`,
}

var manyVisitRows = []string{
	`INSERT INTO visits SELECT i, printf('%032x', i), i % @boats + 1, i % @boats + 1, @moment, @visit FROM n`,
	`INSERT INTO derived_visits SELECT i, i % @boats + 1, date('2020-01-01', '+' || (i * 31 % 2000) || ' days'), 0, 0, 0, i % 40 / 100.0, i % 360, 'within', date('2025-01-01', '+' || (i * 17 % 900) || ' days'), 'season' FROM n`,
	`UPDATE derived_hulls SET visits = 5,
		last_visit = (SELECT max(date) FROM derived_visits AS v WHERE v.hull_id = derived_hulls.hull_id),
		(last_spread_mm, due, due_reason) = (SELECT spread_mm, due, due_reason FROM derived_visits AS v WHERE v.hull_id = derived_hulls.hull_id ORDER BY date DESC LIMIT 1)`,
}

func manyBook(b *testing.B) *logbook.Book {
	b.Helper()
	path := filepath.Join(b.TempDir(), "logbook.db")
	book, err := logbook.Open(path, logbook.Write)
	if err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { book.Close() })
	db, err := sql.Open("sqlite", path)
	if err != nil {
		b.Fatal(err)
	}
	defer db.Close()
	h := builtin.Hull(b, "Kittiwake")
	args := []any{sql.Named("moment", "2026-01-01T00:00:00.000Z"), sql.Named("hull", string(hulls.Encode(h))), sql.Named("boats", manyBoats),
		sql.Named("visit", string(visit.Encode(visit.Visit{HullName: "Kittiwake", Date: "2026-01-01"})))}
	for i, part := range [][]string{manyRows, manyVisitRows} {
		most := []int{manyBoats, manyVisits}[i]
		for _, row := range part {
			query := fmt.Sprintf("WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %d) %s", most, row)
			if _, err := db.Exec(query, args...); err != nil {
				b.Fatalf("%s: %v", row, err)
			}
		}
	}
	return book
}

func manyPage(b *testing.B, book *logbook.Book, w fyne.Window) *Page {
	p := New(page.Desk{Speaker: words.In("en"), Looks: drawn.Looks{TextSize: 1}, Window: w, Back: func() {}, Key: func(*fyne.KeyEvent) bool { return false },
		Aside: func(work, rest func()) {}}, book, Do{})
	if w != nil {
		w.SetContent(p.Content())
	}
	return p
}

// timed runs a benchmark and tells the processor's time beside the clock's: other
// work on the machine counts for the latter only.
func timed(b *testing.B, name string, do func()) {
	b.Run(name, func(b *testing.B) {
		var before, after syscall.Rusage
		syscall.Getrusage(syscall.RUSAGE_SELF, &before)
		for b.Loop() {
			do()
		}
		syscall.Getrusage(syscall.RUSAGE_SELF, &after)
		spent := after.Utime.Nano() + after.Stime.Nano() - before.Utime.Nano() - before.Stime.Nano()
		b.ReportMetric(float64(spent)/1e6/float64(b.N), "cpu-ms/op")
	})
}

func BenchmarkPage(b *testing.B) {
	app := test.NewTempApp(b)
	defer app.Quit()
	w := test.NewTempWindow(b, nil)
	w.Resize(fyne.NewSize(1280, 800))
	book := manyBook(b)
	timed(b, "Open", func() {
		if p := manyPage(b, book, w); p.shelf.count != atATime || p.boat.line == nil {
			b.Fatal(p.shelf.count)
		}
	})
	p := manyPage(b, book, w)
	for _, typed := range []string{"19999", "v-drive", "owner 77", "ow", "albatross"} {
		timed(b, "Find="+typed, func() { p.find(typed) })
	}
	p.find("")
	p.shelf.count = manyBoats
	timed(b, "Last", func() {
		p.shelf.pages = map[int][]logbook.HullLine{}
		p.list.Select(manyBoats - 1)
		p.list.Forget()
	})
	timed(b, "Count", func() { book.CountHulls("v-drive") }) // aside
}
