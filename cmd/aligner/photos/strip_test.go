package photos

// This file attaches photos by keyboard and looks at what is shown.

import (
	"image"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/logbook"
	"aligner/hulls/visit/builtin"
)

func strip(t *testing.T) (*Strip, *logbook.Book, logbook.VisitID) {
	t.Helper()
	test.NewTempApp(t)
	b, err := logbook.Open(filepath.Join(t.TempDir(), "logbook.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	hull, err := b.NewHull(builtin.Hull(t, "Wren"))
	if err != nil {
		t.Fatal(err)
	}
	id, err := b.NewVisit(hull, "2026-05-14")
	if err != nil {
		t.Fatal(err)
	}
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(800, 500))
	s := New(page.Desk{Speaker: words.In("en"), Window: w, Key: func(*fyne.KeyEvent) bool { return false }})
	w.SetContent(s.Content())
	return s, b, id
}

func photoFile(t *testing.T, name string, w, h int) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, image.NewGray(image.Rect(0, 0, w, h))); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestAPhotoIsAttachedByKeys(t *testing.T) {
	s, b, id := strip(t)
	s.Show(b, id)
	if s.scroll.Visible() || !s.add.Visible() {
		t.Error("a strip of no photos takes room, or nothing can be attached")
	}
	changed := 0
	s.Changed = func() { changed++ }
	s.desk.Window.Canvas().Focus(s.path)
	test.Type(s.path, photoFile(t, "a very long name of a photo.png", 300, 200))
	s.path.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if list, err := b.Photos(id); err != nil || len(list) != 1 {
		t.Fatalf("%v, %v", list, err)
	}
	if len(s.thumbs.Objects) != 1 || !s.scroll.Visible() || changed != 1 || s.told.Text != "Attached: 1 photo." || s.path.Text != "" {
		t.Errorf("%d small pictures, changed %d times, told %q", len(s.thumbs.Objects), changed, s.told.Text)
	}
	s.Attach(photoFile(t, "two.png", 30, 90), filepath.Join(t.TempDir(), "none.jpg"))
	if len(s.thumbs.Objects) != 2 || !strings.Contains(s.told.Text, "none.jpg") {
		t.Errorf("%d small pictures, told %q", len(s.thumbs.Objects), s.told.Text)
	}
}

func TestALargePhotoAndNone(t *testing.T) {
	s, b, id := strip(t)
	if _, err := b.AddPhotoFile(id, photoFile(t, "a.png", 300, 200), "the strut"); err != nil {
		t.Fatal(err)
	}
	s.Show(b, id)
	list, err := thumbsOf(b, id)
	if err != nil || len(list) != 1 || list[0].small.Bounds().Dy() > thumbPX {
		t.Fatalf("%v, %v", list, err)
	}
	s.enlarge(list[0].photo)
	if s.desk.Window.Canvas().Overlays().Top() == nil {
		t.Error("nothing large stands over the window")
	}
	s.Show(nil, 0)
	if s.add.Visible() || len(s.thumbs.Objects) != 0 {
		t.Error("photos of no visit")
	}
	s.Attach("x.png") // goes nowhere
}

func TestIsPhoto(t *testing.T) {
	for path, want := range map[string]bool{"/a/b.JPG": true, "b.webp": true, "x.zip": false, "jpg": false} {
		if IsPhoto(path) != want {
			t.Errorf("%s: %v", path, !want)
		}
	}
}
