package logbook

// This file tests what is saved of damaged logbooks, page by page.

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"aligner/hulls/visit"
)

// aYard has some boats, visits long and short, photos and settings.
func aYard(t testing.TB) *Book {
	t.Helper()
	b := inFolder(t)
	aBoat(t, b)
	for i, name := range []string{"Wren", "Kittiwake", "Avocet"} {
		_, id := aVisit(t, b, name)
		s := at(t, b, id)
		for n := range 60 * i {
			do(t, s, &visit.NoteVisit{Note: fmt.Sprint(n, strings.Repeat(" note", n%30))})
		}
		if err := b.Set([]string{"Ann", "Ben"}[i%2], name, "mm"); err != nil {
			t.Fatal(err)
		}
	}
	return b
}

// kept is every row of what is no derived table.
func kept(t testing.TB, b *Book) string {
	t.Helper()
	var out strings.Builder
	for line := range strings.Lines(contents(t, b)) {
		if !strings.HasPrefix(line, "derived_") {
			out.WriteString(line)
		}
	}
	return out.String()
}

// saved salvages bytes and opens what came of it; every document in it must be
// readable.
func saved(t testing.TB, file, log []byte) (*Book, Salvaged) {
	t.Helper()
	folder := t.TempDir()
	from, to := filepath.Join(folder, "damaged.db"), filepath.Join(folder, "saved.db")
	write := func(path string, data []byte) {
		if err := os.WriteFile(path, data, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	write(from, file)
	if log != nil {
		write(from+"-wal", log)
	}
	s, err := Salvage(t.Context(), from, to)
	if err != nil {
		t.Fatal(err)
	}
	if after, err := os.ReadFile(from); err != nil || !bytes.Equal(file, after) {
		t.Errorf("the damaged file was touched (%v)", err)
	}
	b := openAt(t, to, Write)
	if err := b.Check(t.Context()); err != nil {
		t.Error(err)
	}
	lines, err := b.Visits(VisitQuery{Limit: 1000})
	if err != nil || len(lines) != s.Visits {
		t.Errorf("%d visits listed (%v), %d told", len(lines), err, s.Visits)
	}
	for _, l := range lines {
		if _, err := b.Document(l.ID); err != nil {
			t.Errorf("visit %d: %v", l.ID, err)
		}
	}
	return b, s
}

func bytesOf(t testing.TB, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// Where only what leads to the rows is lost, every row is saved.
func TestSalvageWhole(t *testing.T) {
	b := aYard(t)
	want := kept(t, b)
	inUse, log := bytesOf(t, b.Path()), bytesOf(t, b.Path()+"-wal")
	if len(log) == 0 {
		t.Fatal("there is no log ahead of the file")
	}
	b.Close()
	closed := bytesOf(t, b.Path())
	headless := append(make([]byte, pageBytes), closed[pageBytes:]...)
	noWays := bytes.Clone(headless) // all pages lost that lead to others
	for at := pageBytes; at < len(noWays); at += pageBytes {
		if noWays[at] == 0x05 {
			clear(noWays[at : at+pageBytes])
		}
	}
	for name, c := range map[string]struct{ file, log []byte }{
		"sound": {closed, nil}, "in use": {inUse, log}, "first page lost": {headless, nil}, "ways lost": {noWays, nil},
		"more in the log": {closed, append(bytes.Clone(log[:32]), make([]byte, 24+pageBytes)...)},
	} {
		got, s := saved(t, c.file, c.log)
		if kept(t, got) != want || len(s.Lost) > 0 {
			t.Errorf("%s: not all is saved; lost %q", name, s.Lost)
		}
	}
}

// Whichever page is lost or overwritten, the rest is saved; what is lost is told
// unless it left no trace.
func TestSalvageWithoutAnyPage(t *testing.T) {
	b := aYard(t)
	all, total := map[string]bool{}, map[string]int{}
	for line := range strings.Lines(kept(t, b)) {
		all[line] = true
		table, _, _ := strings.Cut(line, "|")
		total[table]++
	}
	b.Close()
	file := bytesOf(t, b.Path())
	random := rand.New(rand.NewPCG(2, 2))
	silent, worst := 0, 0
	for n := 2; n <= len(file)/pageBytes; n++ {
		damaged := bytes.Clone(file)
		page := damaged[(n-1)*pageBytes : n*pageBytes]
		if clear(page); n%2 == 0 {
			for i := range page {
				page[i] = byte(random.Uint32())
			}
		}
		got, s := saved(t, damaged, nil)
		got.Close()
		lost := total["edits"] - s.Edits + total["photos"] - s.Photos + total["visits"] - s.Visits + total["hulls"] - s.Hulls
		worst = max(worst, lost)
		if lost > 0 && len(s.Lost) == 0 {
			silent++
		}
	}
	pages := len(file)/pageBytes - 1
	t.Logf("%d pages lost one by one, of %d edits at worst %d rows lost; %d losses left no trace", pages, total["edits"], worst, silent)
	// The pages of a photo leave none.
	if silent > 3 || worst > total["edits"]/2 {
		t.Errorf("%d of %d losses not told, %d rows at worst", silent, pages, worst)
	}
}

// A visit whose middle is lost goes on from its snapshot.
func TestSalvageGoesOnFromASnapshot(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	do(t, s, day()...)
	for n := range 80 {
		do(t, s, &visit.NoteVisit{Note: fmt.Sprint("note ", n)})
	}
	now := s.Now()
	if _, err := b.db.Exec("DROP TRIGGER edits_last; DELETE FROM edits WHERE number BETWEEN 20 AND 22"); err != nil {
		t.Fatal(err)
	}
	b.Close()
	got, told := saved(t, bytesOf(t, b.Path()), nil)
	d, err := got.Document(id)
	if err != nil || string(visit.Encode(d.Visit)) != string(visit.Encode(now.Visit)) {
		t.Errorf("the visit is another (%v)", err)
	}
	if len(told.Lost) != 1 || !strings.Contains(told.Lost[0], "between edits 20 and 64") {
		t.Errorf("told %q", told.Lost)
	}
	e, err := at(t, got, id).Undo()
	if err != nil || e == nil {
		t.Errorf("undo gives %v (%v)", e, err)
	}
}

func TestSalvageRefuses(t *testing.T) {
	folder := t.TempDir()
	text := filepath.Join(folder, "text")
	if err := os.WriteFile(text, []byte(strings.Repeat("dear diary ", 1000)), 0o600); err != nil {
		t.Fatal(err)
	}
	b := aYard(t)
	for _, c := range []struct {
		from, to string
		want     error
	}{
		{filepath.Join(folder, "none"), filepath.Join(folder, "new"), ErrMissing},
		{folder, filepath.Join(folder, "new"), ErrMissing},
		{text, filepath.Join(folder, "new"), ErrDamaged},
		{b.Path(), text, ErrRefused},
		{b.Path(), b.Path(), ErrRefused},
		{b.Path(), filepath.Join(folder, "no", "folder"), ErrReadOnly},
	} {
		_, err := Salvage(t.Context(), c.from, c.to)
		wantTrouble(t, err, c.want)
	}
	if left, _ := filepath.Glob(filepath.Join(folder, "*")); len(left) != 1 {
		t.Errorf("left behind: %v", left)
	}
	if _, err := Salvage(t.Context(), b.Path(), filepath.Join(folder, "new")); err != nil {
		t.Errorf("a sound one in use: %v", err)
	}
}

// Whatever the bytes, looking through them ends.
func FuzzPages(f *testing.F) {
	b := inFolder(f)
	aBoat(f, b)
	b.Close()
	file := bytesOf(f, b.Path())
	for at := 0; at+pageBytes <= len(file); at += pageBytes {
		if kind := file[at]; kind == tableLeaf || kind == indexLeaf {
			f.Add(file[at:at+pageBytes], file[at:min(at+3*pageBytes, len(file))])
		}
	}
	f.Fuzz(func(t *testing.T, page, log []byte) {
		two := make([]byte, 3*pageBytes)
		copy(two[pageBytes:], page)
		search(&pages{two, committed(log)})
	})
}
