package window

// This file drops photos on the window, and sees them at hand-over.

import (
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"

	"aligner/assets/words"
	"aligner/hulls/visit"
)

func TestADroppedPhotoGoesToTheVisit(t *testing.T) {
	w := opened(t, "Kittiwake")
	file := filepath.Join(t.TempDir(), "aft port.png")
	f, err := os.Create(file)
	if err != nil {
		t.Fatal(err)
	}
	if err := png.Encode(f, image.NewGray(image.Rect(0, 0, 60, 40))); err != nil {
		t.Fatal(err)
	}
	f.Close()
	drop := func() { w.dropped([]fyne.URI{storage.NewFileURI(file)}) }
	drop() // nothing is kept yet
	if w.sentence.Text != w.speaker.Say(words.PhotoNoVisit, nil) {
		t.Errorf("told %q", w.sentence.Text)
	}
	keep := bookFor(t)
	w.Keep(keep, nil)
	w.do(&visit.Float{Afloat: true})
	drop()
	book, id := w.keptVisit()
	list, err := book.Photos(id)
	if err != nil || len(list) != 1 || list[0].Caption != "aft port" || w.stage != stageHandOver {
		t.Errorf("%+v, %v, stage %v", list, err, w.stage)
	}
}

// A nut whose mark has turned is said by keys, at hand-over.
func TestMarksAsFound(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageHandOver)
	marks := w.handing.studs.marks
	if len(marks.found) != 4 {
		t.Fatalf("%d marks", len(marks.found))
	}
	w.win.Canvas().Focus(marks.found[1])
	for range 2 {
		marks.found[1].TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	}
	if d := w.history.Now(); d.Visit.Found("fore starboard").Mark != visit.MarkTurned {
		t.Errorf("%+v, chosen %d", d.Visit.Mounts, marks.found[1].SelectedIndex())
	}
	w.undo()
	w.undo()
	if marks.found[1].SelectedIndex() != 0 {
		t.Error("undone and still chosen")
	}
}
