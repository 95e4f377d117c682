package logbook

// This file tests the lists: order, search, and what derives from visits.

import (
	"fmt"
	"reflect"
	"strings"
	"testing"
	"time"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// named is a hull under another name.
func named(h hulls.Hull, name, hin, owner string) hulls.Hull {
	h.Name, h.HIN, h.OwnerReference = name, hin, owner
	return h
}

func namesOf(list []HullLine) string {
	var names []string
	for _, l := range list {
		names = append(names, l.Name)
	}
	return strings.Join(names, ", ")
}

func found(t testing.TB, b *Book, words string) string {
	t.Helper()
	list, err := b.Hulls(HullQuery{Words: words, Today: "2026-06-01"})
	if err != nil {
		t.Fatalf("%q: %v", words, err)
	}
	if n, err := b.CountHulls(words); err != nil || n != len(list) {
		t.Errorf("%q: counted %d (%v), listed %d", words, n, err, len(list))
	}
	return namesOf(list)
}

func TestSearch(t *testing.T) {
	b := inFolder(t)
	for _, h := range []hulls.Hull{
		named(builtIn(t, "Eider"), "Bécassine", "us-zzz12345d404", "berth 7"),
		named(builtIn(t, "Wren"), "Corncrake", "ZZZ54321A000", `the "old" yard, 100 %`),
		named(builtIn(t, "Avocet"), "Wigeon", "read half: ZZ?", "berth_17"),
		named(builtIn(t, "Wren"), "Wheatear", "", ""),
		named(builtIn(t, "Wren"), "燕", "", ""),
	} {
		if _, err := b.NewHull(h); err != nil {
			t.Fatal(err)
		}
	}
	layouts := map[string]string{}
	for _, l := range []string{"in-line", "down-angle", "v-drive"} {
		layouts[l] = found(t, b, l)
	}
	for _, c := range []struct{ typed, want string }{
		{"", "燕, Wheatear, Wigeon, Corncrake, Bécassine"},
		{"   ", "燕, Wheatear, Wigeon, Corncrake, Bécassine"},
		{"becas", "Bécassine"}, {"BÉCAS", "Bécassine"}, {"cassine", "Bécassine"}, // accents, capitals, middles
		{"berth", "Wigeon, Bécassine"}, {"berth 7", "Wigeon, Bécassine"}, {"berth cass", "Bécassine"},
		{"345d404", "Bécassine"}, {"USZZZ12345", "Bécassine"}, {"US-ZZZ12345D404", "Bécassine"}, {"zzz12345d404", "Bécassine"},
		{"zzz", "Corncrake, Bécassine"}, {"zz", "Wigeon, Corncrake, Bécassine"}, {"half:", "Wigeon"},
		{`"old"`, "Corncrake"}, {`"`, "Corncrake"}, {"%", "Corncrake"}, {"100%", ""}, {"_", "Wigeon"}, {"h_1", "Wigeon"},
		{"燕", "燕"}, {"W", "Wheatear, Wigeon"},
		{"nonesuch", ""}, {"name:wigeon", ""}, {"wigeon OR corncrake", ""}, {"NEAR(", ""}, {"wig*", ""}, {"'; DROP TABLE hulls; --", ""},
		{"wren v-drive nonesuch", ""}, {"\x00", "燕, Wheatear, Wigeon, Corncrake, Bécassine"},
	} {
		if c.typed == "W" { // of layout and name alike
			c.want = found(t, b, "w")
		}
		if got := found(t, b, c.typed); got != c.want {
			t.Errorf("%q finds %q; want %q", c.typed, got, c.want)
		}
	}
	for layout, got := range layouts {
		for _, h := range strings.Split(got, ", ") {
			list, _ := b.Hulls(HullQuery{Words: h})
			if h != "" && (len(list) != 1 || string(list[0].Layout) != layout) {
				t.Errorf("%s finds %s, which is %v", layout, h, list)
			}
		}
	}
	// A hull under a new name is found by it and no longer by the old one.
	list, _ := b.Hulls(HullQuery{Words: "wigeon"})
	h, err := b.Hull(list[0].ID)
	if err != nil {
		t.Fatal(err)
	}
	if err := b.SaveHull(h.ID, named(h.Hull, "Gadwall", "", "")); err != nil {
		t.Fatal(err)
	}
	if found(t, b, "wigeon") != "" || found(t, b, "gadwall") != "Gadwall" {
		t.Error("found by its old name, or not by its new one")
	}
}

// Whatever is typed, the search ends without an error.
func FuzzSearch(f *testing.F) {
	b := inFolder(f)
	if _, err := b.NewHull(builtIn(f, "Eider")); err != nil {
		f.Fatal(err)
	}
	for _, s := range []string{"eider", `"`, "a AND b", "*", "^x", "-", "a\x00b", "\xff\xfe", "{a b}: c", "NEAR(a b, 2)", `\`, "'"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, typed string) { found(t, b, typed) })
}

// Overdue first, the longest overdue at the head; then the latest visit; pages
// follow one another without gap or repeat.
func TestOrderOfHulls(t *testing.T) {
	b := inFolder(t)
	for i, c := range []struct{ name, visited, due string }{
		{"never visited", "", ""}, {"old", "2024-05-01", ""}, {"recent", "2026-05-01", ""},
		{"due later", "2026-04-01", "2026-09-01"}, {"due today", "2025-04-01", "2026-06-01"},
		{"overdue", "2025-05-01", "2026-05-31"}, {"long overdue", "2026-05-20", "2025-10-01"},
	} {
		id, err := b.NewHull(named(builtIn(t, "Wren"), c.name, "", ""))
		if err != nil {
			t.Fatal(err)
		}
		if c.visited == "" {
			continue
		}
		v, err := b.NewVisit(id, c.visited)
		if err != nil {
			t.Fatal(err)
		}
		if err := b.Summarise(v, 0, Summary{SpreadMM: visit.Known(float64(i)), Due: c.due, DueReason: "first season"}); err != nil {
			t.Fatal(err)
		}
	}
	want := "long overdue, overdue, recent, due later, due today, old, never visited"
	if got := found(t, b, ""); got != want {
		t.Errorf("listed as %s\nwant %s", got, want)
	}
	for size := 1; size <= 8; size++ {
		var pages []HullLine
		for {
			page, err := b.Hulls(HullQuery{Today: "2026-06-01", Limit: size, Offset: len(pages)})
			if err != nil {
				t.Fatal(err)
			}
			if pages = append(pages, page...); len(page) < size {
				break
			}
		}
		if got := namesOf(pages); got != want {
			t.Errorf("by pages of %d: %s", size, got)
		}
	}
	list, _ := b.Hulls(HullQuery{Today: "2026-06-01"})
	if l := list[0]; !l.Overdue || l.Due != "2025-10-01" || l.DueReason != "first season" || l.LastVisit != "2026-05-20" || l.LastSpreadMM != visit.Known(6) || l.Visits != 1 {
		t.Errorf("the head of the list is %+v", l)
	}
	if l := list[4]; l.Overdue {
		t.Errorf("due today is overdue: %+v", l)
	}
}

func TestSummaries(t *testing.T) {
	b := inFolder(t)
	hull, first := aVisit(t, b, "Eider")
	second, err := b.NewVisit(hull, "2025-01-01") // entered later, done before
	if err != nil {
		t.Fatal(err)
	}
	s := at(t, b, first)
	do(t, s, day()...)
	worked := Summary{SpreadMM: visit.Known(0.1), OpensAtDeg: visit.Known(180), Verdict: "outside", Due: "2026-11-14", DueReason: "new rubber"}
	for _, v := range []VisitID{first, second} {
		if err := b.Summarise(v, map[VisitID]int{first: s.LastEdit()}[v], worked); err != nil {
			t.Fatal(err)
		}
		worked = Summary{SpreadMM: visit.Known(0.5), Due: "2025-06-01"}
	}
	list, err := b.Visits(VisitQuery{Hull: hull})
	if err != nil || len(list) != 2 {
		t.Fatalf("listed as %+v (%v)", list, err)
	}
	want := VisitLine{ID: first, UID: list[0].UID, Hull: hull, HullName: "Eider", Date: "2026-05-14", Events: 2, LastEdit: s.LastEdit(),
		Summary: Summary{SpreadMM: visit.Known(0.1), OpensAtDeg: visit.Known(180), Verdict: "outside", Due: "2026-11-14", DueReason: "new rubber"}}
	if !reflect.DeepEqual(list[0], want) || list[1].ID != second || list[1].Stale {
		t.Errorf("listed as\n%+v, want\n%+v", list, want)
	}
	line := func() HullLine {
		lines, err := b.Hulls(HullQuery{})
		if err != nil {
			t.Fatal(err)
		}
		return lines[0]
	}
	if l := line(); l.LastSpreadMM != visit.Known(0.1) || l.Due != "2026-11-14" || l.LastVisit != "2026-05-14" || l.Visits != 2 {
		t.Errorf("the hull's line is %+v", l)
	}
	// An edit leaves the summary behind, and a change of date the order.
	do(t, s, &visit.SetDate{Date: "2024-05-14"})
	list, _ = b.Visits(VisitQuery{})
	if list[0].ID != second || !list[1].Stale || list[1].SpreadMM != visit.Known(0.1) {
		t.Errorf("after an edit listed as %+v", list)
	}
	if l := line(); l.LastSpreadMM != visit.Known(0.5) || l.Due != "2025-06-01" || l.LastVisit != "2025-01-01" {
		t.Errorf("after a change of date the hull's line is %+v", l)
	}
	wantTrouble(t, b.Summarise(second+1, 0, Summary{}), ErrUnknown)
	for _, due := range []string{"soon", "2026-02-30", "2026-2-3"} {
		wantTrouble(t, b.Summarise(first, 0, Summary{Due: due}), ErrRefused)
	}
	wantTrouble(t, b.Summarise(first, 0, Summary{DueReason: strings.Repeat("r", 201)}), ErrRefused)
}

// What is derived can be thrown away and made again, results by whoever works
// them out.
func TestRebuild(t *testing.T) {
	b := inFolder(t)
	work := func(d visit.Document) (Summary, error) {
		return Summary{SpreadMM: visit.Known(float64(len(d.Visit.Events))), Due: "2027-01-01"}, nil
	}
	for _, name := range []string{"Eider", "Kittiwake"} {
		_, id := aVisit(t, b, name)
		s := at(t, b, id)
		do(t, s, day()...)
		for i := range 70 {
			do(t, s, &visit.TurnNut{Mount: "fore port", Steps: float64(i)})
		}
		sum, _ := work(s.Now())
		if err := b.Summarise(id, s.LastEdit(), sum); err != nil {
			t.Fatal(err)
		}
	}
	want := contents(t, b)
	for _, table := range []string{"derived_hulls", "derived_visits", "derived_words", "derived_snapshots"} {
		if _, err := b.db.Exec("DELETE FROM " + table); err != nil {
			t.Fatal(err)
		}
	}
	if found(t, b, "eider") != "" {
		t.Fatal("found without an index")
	}
	if err := b.Rebuild(t.Context(), work); err != nil {
		t.Fatal(err)
	}
	wantContents(t, b, want)
	if found(t, b, "eider") != "Eider" {
		t.Error("not found by the index made again")
	}
	if err := b.Rebuild(t.Context(), func(visit.Document) (Summary, error) { return Summary{}, fmt.Errorf("no answer") }); err == nil {
		t.Error("work that failed is passed over")
	}
	wantContents(t, b, want)
}

func TestLatest(t *testing.T) {
	b := inFolder(t)
	if id, ok, err := b.Latest(); ok || err != nil {
		t.Errorf("of an empty logbook: %d, %v, %v", id, ok, err)
	}
	hull, first := aVisit(t, b, "Eider")
	if id, ok, err := b.Latest(); !ok || err != nil || id != first {
		t.Errorf("of one visit: %d, %v, %v", id, ok, err)
	}
	second, err := b.NewVisit(hull, "")
	if err != nil {
		t.Fatal(err)
	}
	do(t, at(t, b, second), &visit.NoteVisit{Note: "n"})
	do(t, at(t, b, first), &visit.NoteVisit{Note: "n"})
	if id, ok, err := b.Latest(); !ok || err != nil || id != first {
		t.Errorf("the last edit was in %d, %v, %v; want %d", id, ok, err, first)
	}
	list, err := b.Visits(VisitQuery{Hull: hull})
	if err != nil || list[0].Date != time.Now().UTC().Format(time.DateOnly) {
		t.Errorf("a visit without a date is listed by the day it was entered: %+v (%v)", list, err)
	}
}

// One hull's line is the one that the list has of it.
func TestHullLine(t *testing.T) {
	b := inFolder(t)
	hull, id := aVisit(t, b, "Wren")
	list, err := b.Hulls(HullQuery{})
	if err != nil {
		t.Fatal(err)
	}
	of, err := b.HullOf(id)
	if err != nil || of != hull {
		t.Errorf("visit %d is of hull %d, %v", id, of, err)
	}
	if l, err := b.HullLine(hull); err != nil || l != list[0] {
		t.Errorf("%+v, %v; listed %+v", l, err, list[0])
	}
	_, err = b.HullLine(hull + 1)
	wantTrouble(t, err, ErrUnknown)
}
