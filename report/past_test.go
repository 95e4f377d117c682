package report

// This file puts a visit out of a logbook on the record, with its photos and the
// boat's past.

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"path/filepath"
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/hulls/logbook"
	"aligner/report/paper"
)

// booked enters worked visits of one boat into a logbook; the second has photos,
// two of the same width.
func booked(t *testing.T) (*logbook.Book, []logbook.VisitID) {
	t.Helper()
	b, err := logbook.Open(filepath.Join(t.TempDir(), "logbook.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	var ids []logbook.VisitID
	var hull logbook.HullID
	for i, name := range []string{"crooked-flange", "low-to-port", "half-rim"} {
		d := document(t, name)
		if i == 0 {
			if hull, err = b.NewHull(d.Hull); err != nil {
				t.Fatal(err)
			}
		}
		id, err := b.EnterVisit(hull, d.Visit)
		if err != nil {
			t.Fatal(err)
		}
		ids = append(ids, id)
	}
	for i, caption := range []string{"the strut", "fore port, its nut", "the coupling"} {
		img := image.NewRGBA(image.Rect(0, 0, 320, 240))
		for k := range img.Pix {
			img.Pix[k] = uint8(k * (i + 3))
		}
		img.Set(1, 1, color.White)
		var data bytes.Buffer
		if err := png.Encode(&data, img); err != nil {
			t.Fatal(err)
		}
		if _, err := b.AddPhoto(ids[1], data.Bytes(), caption); err != nil {
			t.Fatal(err)
		}
	}
	return b, ids
}

func TestRecordHasPhotosAndPast(t *testing.T) {
	b, ids := booked(t)
	d, err := b.Document(ids[1])
	if err != nil {
		t.Fatal(err)
	}
	in := worked(t, d)
	o := Options{Kind: Record, Size: paper.A4, Quick: true}
	if o.Photos, o.Past, err = Kept(b, ids[1]); err != nil {
		t.Fatal(err)
	}
	if len(o.Photos) != 3 || len(o.Past.Entries) == 0 || o.Past.Entries[len(o.Past.Entries)-1].Number != int64(ids[1]) {
		t.Fatalf("%d photos, %d visits", len(o.Photos), len(o.Past.Entries))
	}
	pdf := made(t, in, o)
	sound(t, pdf, paper.A4)
	if !bytes.Equal(pdf, made(t, in, o)) {
		t.Error("made twice, it is not the same")
	}
	said := text(t, pdf)
	for _, want := range []string{"the strut", "fore port, its nut", "the coupling", "The boat's past", "Photos", "Spread, thou"} {
		if !strings.Contains(said, want) {
			t.Errorf("%q is not on the record", want)
		}
	}
	if n := strings.Count(tool(t, pdf, "pdfimages", "-list", "FILE"), "jpeg"); n != 3 {
		t.Errorf("%d photos in the file", n)
	}
	o.Speaker = words.In("de")
	if said := text(t, made(t, in, o)); hole.MatchString(said) || !strings.Contains(said, "Fotos") {
		t.Error("in German a sentence is missing")
	}
}
