package logbook

// This file tests that a hull carried elsewhere arrives whole, that what would
// change is told first, and that it is all or nothing.

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"aligner/hulls/visit"
)

// exported is a hull's bundle.
func exported(t testing.TB, b *Book, hull HullID) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := b.Export(context.Background(), hull, &out); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

func bundleOf(t testing.TB, data []byte) *Bundle {
	t.Helper()
	got, err := ReadBundle(bytes.NewReader(data), int64(len(data)), "boat.zip")
	if err != nil {
		t.Fatal(err)
	}
	return got
}

func imported(t testing.TB, b *Book, data []byte, choice Choice) Changes {
	t.Helper()
	from := bundleOf(t, data)
	told, err := b.Compare(t.Context(), from)
	if err != nil {
		t.Fatal(err)
	}
	before := contents(t, b)
	c, err := b.Import(t.Context(), from, choice)
	if err != nil {
		t.Fatal(err)
	}
	if changed := contents(t, b) != before; changed != told.Any(choice) {
		t.Errorf("told that something would change: %v; changed: %v", told.Any(choice), changed)
	}
	if len(told.Visits) != len(c.Visits) || told.Hull != c.Hull {
		t.Errorf("told %+v, did %+v", told, c)
	}
	return c
}

// aBoat has two visits on two versions of its hull, with photos.
func aBoat(t testing.TB, b *Book) HullID {
	t.Helper()
	hull, first := aVisit(t, b, "Eider")
	do(t, at(t, b, first), day()...)
	h, err := b.Hull(hull)
	if err != nil {
		t.Fatal(err)
	}
	h.Hull.Shaft.LengthMM += 5
	if err := b.SaveHull(hull, h.Hull); err != nil {
		t.Fatal(err)
	}
	second, err := b.NewVisit(hull, "2026-06-01")
	if err != nil {
		t.Fatal(err)
	}
	s := at(t, b, second)
	do(t, s, &visit.NoteVisit{Note: "again"}, &visit.NoteVisit{Note: "no"})
	if _, err := s.Undo(); err != nil {
		t.Fatal(err)
	}
	for i, v := range []VisitID{first, second, second} {
		if _, err := b.AddPhoto(v, asJPEG(t, quarters(60+20*(i/2), 40)), []string{"strut", "strut, later", ""}[i]); err != nil {
			t.Fatal(err)
		}
	}
	return hull
}

// Exported, imported and exported again, a hull gives the same bytes; imported
// again it changes nothing.
func TestCarriedElsewhere(t *testing.T) {
	here, there := inFolder(t), inFolder(t)
	data := exported(t, here, aBoat(t, here))
	if again := exported(t, here, 1); !bytes.Equal(data, again) {
		t.Error("exported twice, the bytes differ")
	}
	aVisit(t, there, "Wren")
	c := imported(t, there, data, KeepOurs)
	if c.Hull != IsNew || len(c.Visits) != 2 || c.Visits[0].Change != IsNew || c.Visits[1].Date != "2026-06-01" || c.Photos[IsNew] != 3 || len(c.Alike) != 0 {
		t.Errorf("did %+v", c)
	}
	if got := exported(t, there, c.ID); !bytes.Equal(got, data) {
		t.Error("carried there and exported, the bytes differ")
	}
	for _, choice := range []Choice{KeepOurs, TakeTheirs} {
		if c := imported(t, there, data, choice); c.Any(TakeTheirs) || c.Photos[Same] != 3 {
			t.Errorf("the second time did %+v", c)
		}
	}
	if list, err := there.Hulls(HullQuery{Words: "eider"}); err != nil || len(list) != 1 || list[0].Visits != 2 || list[0].LastVisit != "2026-06-01" {
		t.Errorf("listed there as %+v (%v)", list, err)
	}
	want := contents(t, there)
	if err := there.Rebuild(t.Context(), nil); err != nil {
		t.Fatal(err)
	}
	wantContents(t, there, want)
	if err := there.Check(t.Context()); err != nil {
		t.Error(err)
	}
}

// What is different stays or is taken, as chosen; what was here is then still on
// record.
func TestDifferentThere(t *testing.T) {
	for _, choice := range []Choice{KeepOurs, TakeTheirs} {
		here, there := inFolder(t), inFolder(t)
		hull := aBoat(t, here)
		id := imported(t, there, exported(t, here, hull), KeepOurs).ID
		// Meanwhile both are worked on.
		lines, err := here.Visits(VisitQuery{Hull: hull})
		if err != nil {
			t.Fatal(err)
		}
		do(t, at(t, here, lines[0].ID), &visit.NoteVisit{Note: "theirs"}, &visit.TurnNut{Mount: "fore port", Steps: 1})
		if _, err := here.NewVisit(hull, "2026-07-01"); err != nil {
			t.Fatal(err)
		}
		h, err := here.Hull(hull)
		if err != nil {
			t.Fatal(err)
		}
		if err := here.SaveHull(hull, named(h.Hull, "Eider of theirs", "", "")); err != nil {
			t.Fatal(err)
		}
		if _, err := here.AddPhoto(lines[0].ID, asJPEG(t, quarters(80, 40)), "caption of theirs"); err != nil {
			t.Fatal(err)
		}
		ours, err := there.Visits(VisitQuery{Hull: id})
		if err != nil {
			t.Fatal(err)
		}
		s := at(t, there, ours[0].ID)
		do(t, s, &visit.NoteVisit{Note: "ours"})
		before := written(s.Now())

		c := imported(t, there, exported(t, here, hull), choice)
		if c.Hull != Different || c.Visits[0].Change != Same || c.Visits[1].Change != Different || c.Visits[2].Change != IsNew || c.Photos[Different] != 1 || c.Photos[Same] != 2 {
			t.Errorf("did %+v", c)
		}
		now, err := there.Hull(id)
		if err != nil {
			t.Fatal(err)
		}
		d, err := there.Document(ours[0].ID)
		if err != nil {
			t.Fatal(err)
		}
		wantName, wantNote := "Eider", "ours"
		if choice == TakeTheirs {
			wantName, wantNote = "Eider of theirs", "theirs"
		}
		if now.Hull.Name != wantName || d.Visit.Note != wantNote {
			t.Errorf("choice %d: the hull is %q, the note %q", choice, now.Hull.Name, d.Visit.Note)
		}
		if choice == KeepOurs {
			continue
		}
		_, err = s.Undo() // this session has not seen the import yet
		wantTrouble(t, err, ErrChanged)
		if e, err := s.Undo(); err != nil || e.Name() != "open visit" || written(s.Now()) != before {
			t.Errorf("undoing the import undid %v (%v)", e, err)
		}
		if _, err := s.Redo(); err != nil {
			t.Fatal(err)
		}
		if got := exported(t, there, id); !bytes.Equal(got, exported(t, here, hull)) {
			t.Error("taken over, the hull is another")
		}
		if n, err := there.Versions(id); err != nil || n < 3 {
			t.Errorf("%d versions (%v): ours is no longer on record", n, err)
		}
	}
}

func TestAlikeIsTold(t *testing.T) {
	here, there := inFolder(t), inFolder(t)
	id, err := here.NewHull(named(builtIn(t, "Wren"), "Kestrel", "ZZZ12345D404", ""))
	if err != nil {
		t.Fatal(err)
	}
	for _, h := range []struct{ name, hin string }{{"kestrel", ""}, {"Another", "zzz12345d404"}, {"Third", ""}} {
		if _, err := there.NewHull(named(builtIn(t, "Wren"), h.name, h.hin, "")); err != nil {
			t.Fatal(err)
		}
	}
	c, err := there.Compare(t.Context(), bundleOf(t, exported(t, here, id)))
	if err != nil || c.Hull != IsNew || namesOf(c.Alike) != "kestrel, Another" {
		t.Errorf("alike are %s (%v)", namesOf(c.Alike), err)
	}
}

// A visit of this bundle that is another hull's here: refused, nothing changed.
func TestVisitOfAnotherHull(t *testing.T) {
	here, there := inFolder(t), inFolder(t)
	hull := aBoat(t, here)
	data := exported(t, here, hull)
	imported(t, there, data, KeepOurs)
	var uid string
	if err := here.db.QueryRow("SELECT uid FROM hulls").Scan(&uid); err != nil {
		t.Fatal(err)
	}
	other := rewrite(t, data, func(files map[string]string) {
		files[manifestName] = strings.ReplaceAll(files[manifestName], uid, strings.Repeat("0", 32))
	})
	before := contents(t, there)
	_, err := there.Import(t.Context(), bundleOf(t, other), TakeTheirs)
	wantTrouble(t, err, ErrRefused)
	wantContents(t, there, before)
}

// An import that is cut short changes nothing.
func TestImportIsAllOrNothing(t *testing.T) {
	here := inFolder(t)
	data := exported(t, here, aBoat(t, here))
	there, err := open(here.Path()+".there", Write, []string{"max_page_count(60)"})
	if err != nil {
		t.Fatal(err)
	}
	defer there.Close()
	before := contents(t, there)
	cut, cancel := context.WithCancel(t.Context())
	cancel()
	if _, err := there.Import(cut, bundleOf(t, data), KeepOurs); err == nil {
		t.Error("an import called off goes on")
	}
	wantContents(t, there, before)
	_, v := aVisit(t, here, "Wren")
	if _, err := here.AddPhoto(v, noise(t, 1600, 1200), ""); err != nil {
		t.Fatal(err)
	}
	_, err = there.Import(t.Context(), bundleOf(t, exported(t, here, 2)), KeepOurs)
	wantTrouble(t, err, ErrFull)
	wantContents(t, there, before)
	imported(t, there, data, KeepOurs)
}
