package logbook

// This file tests that photos are kept small, upright and bare.

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/color"
	"image/gif"
	"image/jpeg"
	"image/png"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"golang.org/x/image/bmp"
	"golang.org/x/image/tiff"
)

// quarters is a picture whose corners differ: red, green, blue, white, as read.
func quarters(w, h int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			c := color.RGBA{R: 255, A: 255}
			switch {
			case x >= w/2 && y < h/2:
				c = color.RGBA{G: 255, A: 255}
			case x < w/2 && y >= h/2:
				c = color.RGBA{B: 255, A: 255}
			case x >= w/2 && y >= h/2:
				c = color.RGBA{R: 255, G: 255, B: 255, A: 255}
			}
			img.SetRGBA(x, y, c)
		}
	}
	return img
}

// noise is a JPEG that cannot be made much smaller.
func noise(t testing.TB, w, h int) []byte {
	t.Helper()
	random := rand.New(rand.NewPCG(1, 1))
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for i := range img.Pix {
		img.Pix[i] = byte(random.Uint32())
	}
	return asJPEG(t, img)
}

func asJPEG(t testing.TB, img image.Image) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := jpeg.Encode(&out, img, nil); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// withExif puts an orientation into a JPEG, and a place that must not be kept.
func withExif(data []byte, orientation uint16, order binary.AppendByteOrder) []byte {
	body := []byte("Exif\x00\x00")
	mark := "MM\x00*"
	if order == binary.AppendByteOrder(binary.LittleEndian) {
		mark = "II*\x00"
	}
	body = order.AppendUint32(append(body, mark...), 8)
	body = order.AppendUint16(body, 2)
	for _, e := range []struct{ tag, kind, value uint16 }{{0x010f, 2, 4}, {tagOrientation, typeShort, orientation}} {
		body = order.AppendUint16(order.AppendUint16(body, e.tag), e.kind)
		body = order.AppendUint16(order.AppendUint32(body, 1), e.value)
		body = append(body, 0, 0)
	}
	body = append(body, "\x00\x00\x00\x00berth 7"...)
	segment := binary.BigEndian.AppendUint16([]byte{0xff, 0xe1}, uint16(len(body)+2))
	return bytes.Join([][]byte{data[:2], segment, body, data[2:]}, nil)
}

func TestPhotosAreShrunk(t *testing.T) {
	for _, c := range []struct{ w, h, wantW, wantH int }{
		{1600, 1200, 1600, 1200}, {4000, 3000, 1600, 1200}, {3000, 4000, 1200, 1600}, {40, 30, 40, 30}, {5000, 1, 1600, 1},
	} {
		p, err := shrink(asJPEG(t, quarters(c.w, c.h)))
		if err != nil {
			t.Fatal(err)
		}
		head, format, err := image.DecodeConfig(bytes.NewReader(p.data))
		if err != nil || format != "jpeg" || head.Width != c.wantW || head.Height != c.wantH || p.widthPX != c.wantW || p.heightPX != c.wantH {
			t.Errorf("%d x %d is kept as a %s of %d x %d (%v)", c.w, c.h, format, head.Width, head.Height, err)
		}
	}
}

func TestKindsOfPictures(t *testing.T) {
	img := quarters(20, 10)
	var asPNG, asGIF, asBMP, asTIFF bytes.Buffer
	for _, err := range []error{png.Encode(&asPNG, img), gif.Encode(&asGIF, img, nil), bmp.Encode(&asBMP, img), tiff.Encode(&asTIFF, img, nil)} {
		if err != nil {
			t.Fatal(err)
		}
	}
	for name, data := range map[string][]byte{"PNG": asPNG.Bytes(), "GIF": asGIF.Bytes(), "BMP": asBMP.Bytes(), "TIFF": asTIFF.Bytes()} {
		if _, err := shrink(data); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	clear := image.NewNRGBA(image.Rect(0, 0, 8, 8)) // wholly see-through
	var seen bytes.Buffer
	if err := png.Encode(&seen, clear); err != nil {
		t.Fatal(err)
	}
	p, err := shrink(seen.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	white, err := jpeg.Decode(bytes.NewReader(p.data))
	if r, g, b, _ := white.At(4, 4).RGBA(); err != nil || min(r, g, b) < 0xf000 {
		t.Errorf("what shows through is %v (%v), want white", white.At(4, 4), err)
	}
}

// A picture stored turned is kept upright. The tag says at which side the stored
// picture's first row and first column belong (CIPA DC-008, Orientation).
func TestPhotosAreUpright(t *testing.T) {
	for tag, c := range map[uint16]struct{ row, column string }{
		1: {"top", "left"}, 2: {"top", "right"}, 3: {"bottom", "right"}, 4: {"bottom", "left"},
		5: {"left", "top"}, 6: {"right", "top"}, 7: {"right", "bottom"}, 8: {"left", "bottom"},
	} {
		for _, order := range []binary.AppendByteOrder{binary.BigEndian, binary.LittleEndian} {
			firstRows := withExif(asJPEG(t, lit(image.Rect(0, 0, 48, 8))), tag, order)
			firstColumns := withExif(asJPEG(t, lit(image.Rect(0, 0, 8, 32))), tag, order)
			for side, data := range map[string][]byte{c.row: firstRows, c.column: firstColumns} {
				p, err := shrink(data)
				if err != nil {
					t.Fatal(err)
				}
				if got := litSide(t, p.data); got != side {
					t.Errorf("orientation %d: what belongs at the %s is at the %s", tag, side, got)
				}
				if bytes.Contains(p.data, []byte("berth 7")) || bytes.Contains(p.data, []byte("Exif")) {
					t.Errorf("orientation %d: what the camera wrote beside the picture is kept", tag)
				}
			}
		}
	}
}

// lit is a dark picture of 48 x 32 with a part lit.
func lit(part image.Rectangle) *image.Gray {
	img := image.NewGray(image.Rect(0, 0, 48, 32))
	for y := part.Min.Y; y < part.Max.Y; y++ {
		for x := part.Min.X; x < part.Max.X; x++ {
			img.SetGray(x, y, color.Gray{255})
		}
	}
	return img
}

// litSide is the side all of which is lit.
func litSide(t *testing.T, data []byte) string {
	t.Helper()
	img, err := jpeg.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	w, h := img.Bounds().Dx(), img.Bounds().Dy()
	bright := func(x, y int) bool {
		r, _, _, _ := img.At(x, y).RGBA()
		return r > 0x8000
	}
	corners := [4]bool{bright(3, 3), bright(w-4, 3), bright(3, h-4), bright(w-4, h-4)}
	return map[[4]bool]string{
		{true, true, false, false}: "top", {false, false, true, true}: "bottom",
		{true, false, true, false}: "left", {false, true, false, true}: "right",
	}[corners]
}

func TestPhotosRefused(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	good := asJPEG(t, quarters(40, 30))
	huge := bytes.Clone(good)
	at := bytes.Index(huge, []byte{0xff, 0xc0}) // the frame's header says how large it is
	binary.BigEndian.PutUint32(huge[at+5:], 0xffffffff)
	for name, data := range map[string][]byte{
		"nothing": nil, "a text": []byte("not a picture"), "cut off": good[:len(good)/2], "of 4 thousand million pixels": huge,
		"too many bytes": make([]byte, mostPhotoBytes+1),
	} {
		_, err := b.AddPhoto(id, data, "")
		if err == nil || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v", name, err)
		}
		wantTrouble(t, err, ErrRefused)
	}
	_, err := b.AddPhoto(id, good, "two\nlines")
	wantTrouble(t, err, ErrRefused)
	_, err = b.AddPhoto(id+1, good, "")
	wantTrouble(t, err, ErrUnknown)
	if n := rowsOf(t, b, "photos"); n != 0 {
		t.Errorf("%d photos kept", n)
	}
}

func TestPhotosOfAVisit(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	one, err := b.AddPhoto(id, asJPEG(t, quarters(400, 300)), "strut from aft")
	if err != nil {
		t.Fatal(err)
	}
	two, err := b.AddPhoto(id, asJPEG(t, quarters(300, 400)), "")
	if err != nil {
		t.Fatal(err)
	}
	same, err := b.AddPhoto(id, asJPEG(t, quarters(400, 300)), "strut, clearance at the top")
	if err != nil || same != one {
		t.Errorf("the same photo again is number %d (%v), want %d", same, err, one)
	}
	list, err := b.Photos(id)
	if err != nil || len(list) != 2 || list[0].ID != one || list[1].ID != two || list[0].Caption != "strut, clearance at the top" || list[0].WidthPX != 400 {
		t.Fatalf("listed as %+v (%v)", list, err)
	}
	data, err := b.PhotoJPEG(one)
	if err != nil || len(data) != list[0].Bytes {
		t.Errorf("%d bytes (%v), want %d", len(data), err, list[0].Bytes)
	}
	if err := b.RemovePhoto(one); err != nil {
		t.Fatal(err)
	}
	_, err = b.PhotoJPEG(one)
	wantTrouble(t, err, ErrUnknown)
	wantTrouble(t, b.RemovePhoto(one), ErrUnknown)
	if lines, err := b.Visits(VisitQuery{}); err != nil || len(lines) != 1 || lines[0].Photos != 1 {
		t.Errorf("listed as %+v (%v)", lines, err)
	}
}

func TestSettings(t *testing.T) {
	b := inFolder(t)
	for _, c := range [][3]string{{"Ann", "units", "thou"}, {"Ben", "units", "mm"}, {"Ann", "units", "mm"}, {"Ann", "leaves", "[1.5, 2]"}} {
		if err := b.Set(c[0], c[1], c[2]); err != nil {
			t.Fatal(err)
		}
	}
	ann, err := b.Settings("Ann")
	if err != nil || len(ann) != 2 || ann["units"] != "mm" || ann["leaves"] != "[1.5, 2]" {
		t.Errorf("Ann's are %v (%v)", ann, err)
	}
	if names, err := b.Mechanics(); err != nil || strings.Join(names, " ") != "Ann Ben" {
		t.Errorf("mechanics are %v (%v)", names, err)
	}
	if none, err := b.Settings("Cat"); err != nil || len(none) != 0 {
		t.Errorf("one not known has %v (%v)", none, err)
	}
	for _, c := range [][3]string{{"", "units", "mm"}, {"Ann", " ", "mm"}, {"A\nB", "units", "mm"}, {strings.Repeat("n", 61), "units", "mm"}, {"Ann", "units", strings.Repeat("v", longestSetting+1)}} {
		wantTrouble(t, b.Set(c[0], c[1], c[2]), ErrRefused)
	}
}

func TestBackup(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	do(t, s, day()...)
	if _, err := b.AddPhoto(id, asJPEG(t, quarters(400, 300)), ""); err != nil {
		t.Fatal(err)
	}
	to := filepath.Join(t.TempDir(), "copy of logbook.db")
	if err := b.Backup(t.Context(), to); err != nil {
		t.Fatal(err)
	}
	c := openAt(t, to, Write)
	if contents(t, c) != contents(t, b) {
		t.Error("the backup differs")
	}
	if list, err := c.Hulls(HullQuery{Words: "eid"}); err != nil || len(list) != 1 {
		t.Errorf("the backup finds %v (%v)", list, err)
	}
	wantTrouble(t, b.Backup(t.Context(), to), ErrRefused)
	wantTrouble(t, b.Backup(t.Context(), b.Path()), ErrRefused)
	wantTrouble(t, b.Backup(t.Context(), filepath.Join(t.TempDir(), "none", "x.db")), ErrReadOnly)
	if _, err := os.Stat(to + ".part"); err == nil {
		t.Error("the half copy is left behind")
	}
}

// What cameras and others write must not end the program.
func FuzzOrientation(f *testing.F) {
	good := asJPEG(f, quarters(8, 8))
	f.Add(good)
	f.Add(withExif(good, 6, binary.BigEndian))
	f.Add(withExif(good, 8, binary.LittleEndian)[:40])
	f.Fuzz(func(t *testing.T, data []byte) {
		if o := orientation(data); o < 1 || o > 8 {
			t.Errorf("orientation %d", o)
		}
	})
}
