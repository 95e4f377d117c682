package boats

// This file goes through the page by keyboard, on a logbook of its own.

import (
	"bytes"
	"context"
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

// shelfOf is a logbook of Knot, Dunlin and Ruff; Ruff's check is overdue, and
// Knot has two visits, the first with a photo.
func shelfOf(t *testing.T) *logbook.Book {
	t.Helper()
	b, err := logbook.Open(filepath.Join(t.TempDir(), "logbook.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	enter := func(name, owner string, dates ...string) {
		h := builtin.Hull(t, "Kittiwake")
		h.Name, h.OwnerReference = name, owner
		id, err := b.NewHull(h)
		if err != nil {
			t.Fatal(err)
		}
		for _, date := range dates {
			v, err := b.NewVisit(id, date)
			if err != nil {
				t.Fatal(err)
			}
			s := logbook.Summary{SpreadMM: visit.Known(0.1), OpensAtDeg: visit.Known(90), Verdict: "outside"}
			if name == "Ruff" {
				s.Due, s.DueReason = "2020-06-01", "season"
			}
			if err := b.Summarise(v, 0, s); err != nil {
				t.Fatal(err)
			}
			if date == "2026-04-01" {
				var picture bytes.Buffer
				if err := png.Encode(&picture, image.NewRGBA(image.Rect(0, 0, 40, 30))); err != nil {
					t.Fatal(err)
				}
				if _, err := b.AddPhoto(v, picture.Bytes(), "the strut"); err != nil {
					t.Fatal(err)
				}
			}
		}
	}
	enter("Knot", "berth 7", "2026-04-01", "2026-05-01")
	enter("Dunlin", "berth 8")
	enter("Ruff", "berth 9", "2019-06-01")
	return b
}

type asked struct {
	opened  []logbook.VisitID
	begun   []logbook.HullID
	hull    string
	back    int
	escapes int
}

func opened(t *testing.T, b *logbook.Book, language string) (*Page, *asked) {
	t.Helper()
	test.NewTempApp(t)
	var got asked
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(1280, 800))
	desk := page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1}, Window: w, Back: func() { got.back++ }}
	desk.Key = func(k *fyne.KeyEvent) bool {
		if k.Name == fyne.KeyEscape {
			got.escapes++
		}
		return k.Name == fyne.KeyEscape
	}
	p := New(desk, b, Do{
		Open: func(id logbook.VisitID) error { got.opened = append(got.opened, id); return nil },
		Begin: func(id logbook.HullID) error {
			got.begun = append(got.begun, id)
			return fmt.Errorf("logbook: disk full")
		},
		Hull: func(name string) { got.hull = name },
	})
	w.SetContent(p.Content())
	w.Canvas().Focus(p.Focus())
	return p, &got
}

func press(p *Page, keys ...fyne.KeyName) {
	for _, k := range keys {
		p.desk.Window.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: k})
	}
}

func TestABoatIsFoundAndAVisitOpenedByKeys(t *testing.T) {
	p, got := opened(t, shelfOf(t), "en")
	if p.boat.name.Text != "Ruff" || !strings.Contains(p.boat.due.Text, "overdue since 2020-06-01") {
		t.Errorf("first stands %q: %q", p.boat.name.Text, p.boat.due.Text)
	}
	test.Type(p.words, "kno")
	if p.shelf.count != 1 || p.boat.name.Text != "Knot" || p.count.Text != "1 boat" {
		t.Fatalf("found %d, shown %q", p.shelf.count, p.boat.name.Text)
	}
	press(p, fyne.KeyReturn)
	if p.desk.Window.Canvas().Focused() != fyne.Focusable(p.boat.visits) || len(p.boat.lines) != 2 {
		t.Fatalf("Enter did not go to her %d visits", len(p.boat.lines))
	}
	if len(p.boat.photos.Objects) != 0 {
		t.Error("the latest visit shows photos it has not")
	}
	press(p, fyne.KeyDown)
	if len(p.boat.photos.Objects) != 1 {
		t.Errorf("%d photos of the first visit", len(p.boat.photos.Objects))
	}
	press(p, fyne.KeyReturn)
	if len(got.opened) != 1 || got.opened[0] != p.boat.lines[1].ID {
		t.Errorf("opened %v", got.opened)
	}
	press(p, fyne.KeyEscape)
	if got.escapes != 1 {
		t.Error("Escape did not come through the list")
	}
}

func TestBeginningAndItsTrouble(t *testing.T) {
	p, got := opened(t, shelfOf(t), "de")
	test.Type(p.words, "berth 8")
	press(p, fyne.KeyReturn, fyne.KeyReturn) // no visits: to the button, and press it
	if len(got.begun) != 1 || got.begun[0] != p.boat.line.ID {
		t.Fatalf("begun %v", got.begun)
	}
	if p.told.Text != "Logbuch: Datenträger voll" || !p.told.Visible() {
		t.Errorf("told %q", p.told.Text)
	}
}

func TestNothingFound(t *testing.T) {
	p, _ := opened(t, shelfOf(t), "en")
	test.Type(p.words, "albatross")
	if p.shelf.count != 0 || p.boat.line != nil || !p.boat.none.Visible() || p.boat.begin.Visible() {
		t.Errorf("found %d, boat %v", p.shelf.count, p.boat.line)
	}
	press(p, fyne.KeyReturn, fyne.KeyDown, fyne.KeyUp) // go nowhere
}

// A boat taken out and into another logbook stands there with her visits.
func TestTakenOutAndIn(t *testing.T) {
	from := shelfOf(t)
	lines, err := from.Hulls(logbook.HullQuery{Words: "knot"})
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "knot.zip")
	f, err := os.Create(file)
	if err != nil {
		t.Fatal(err)
	}
	if err := from.Export(context.Background(), lines[0].ID, f); err != nil {
		t.Fatal(err)
	}
	f.Close()
	empty, err := logbook.Open(filepath.Join(t.TempDir(), "other.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { empty.Close() })
	p, _ := opened(t, empty, "en")
	r, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer r.Close()
	info, _ := r.Stat()
	bundle, err := logbook.ReadBundle(r, info.Size(), file)
	if err != nil {
		t.Fatal(err)
	}
	p.taken(bundle, logbook.KeepOurs)
	if p.boat.name.Text != "Knot" || len(p.boat.lines) != 2 || !strings.HasPrefix(p.told.Text, "Taken in") {
		t.Errorf("shown %q with %d visits, told %q", p.boat.name.Text, len(p.boat.lines), p.told.Text)
	}
	p.TakeIn(filepath.Join(t.TempDir(), "none.zip"))
	if !strings.Contains(p.told.Text, "none.zip") {
		t.Errorf("told %q of a file that is not there", p.told.Text)
	}
}

// What was worked out meanwhile shows, and the page stays on its boat and visit,
// though she now stands elsewhere in the list.
func TestAgainStaysOnTheBoat(t *testing.T) {
	b := shelfOf(t)
	p, _ := opened(t, b, "en")
	press(p, fyne.KeyDown) // Knot, after Ruff, whose check is overdue
	if p.boat.name.Text != "Knot" {
		t.Fatalf("shown %q", p.boat.name.Text)
	}
	press(p, fyne.KeyReturn, fyne.KeyDown)
	line := p.boat.lines[1]
	if err := b.Summarise(p.boat.lines[0].ID, 0, logbook.Summary{SpreadMM: visit.Known(0.254), Verdict: "outside", Due: "2019-01-01", DueReason: "season"}); err != nil {
		t.Fatal(err)
	}
	p.Again()
	if p.boat.name.Text != "Knot" || p.list.Chosen() != 0 || p.boat.lines[p.boat.visits.Chosen()].ID != line.ID {
		t.Errorf("shown %q at %d, visit %d", p.boat.name.Text, p.list.Chosen(), p.boat.visits.Chosen())
	}
	if !strings.Contains(p.boat.due.Text, "2019-01-01") {
		t.Errorf("next check %q", p.boat.due.Text)
	}
	if p.desk.Window.Canvas().Focused() != fyne.Focusable(p.boat.visits) {
		t.Error("the keyboard went elsewhere")
	}
}
