package photos

// This file is one photo, small in the strip and large over the window.

import (
	"bytes"
	"image"
	_ "image/jpeg" // photos are kept as JPEG

	"golang.org/x/image/draw"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/logbook"
)

// thumb is a photo with its small picture.
type thumb struct {
	photo logbook.Photo
	small image.Image
}

// The height of a small picture on the screen, and of its pixels: enough for a
// screen of twice as many.
const (
	thumbDP = 110
	thumbPX = 2 * thumbDP
)

// thumbsOf reads a visit's photos and makes them small.
func thumbsOf(book *logbook.Book, id logbook.VisitID) (list []thumb, err error) {
	photos, err := book.Photos(id)
	if err != nil {
		return nil, err
	}
	for _, p := range photos {
		whole, err := read(book, p.ID)
		if err != nil {
			return list, err
		}
		size := whole.Bounds().Size()
		height := min(thumbPX, size.Y)
		small := image.NewRGBA(image.Rect(0, 0, max(1, size.X*height/max(1, size.Y)), height))
		draw.ApproxBiLinear.Scale(small, small.Bounds(), whole, whole.Bounds(), draw.Src, nil)
		list = append(list, thumb{p, small})
	}
	return list, nil
}

func read(book *logbook.Book, id logbook.PhotoID) (image.Image, error) {
	data, err := book.PhotoJPEG(id)
	if err != nil {
		return nil, err
	}
	whole, _, err := image.Decode(bytes.NewReader(data))
	return whole, err
}

// shown is the small picture over its caption, which shows it large.
func (s *Strip) shown(t thumb) fyne.CanvasObject {
	size := t.small.Bounds().Size()
	picture := canvas.NewImageFromImage(t.small)
	picture.FillMode = canvas.ImageFillContain
	picture.SetMinSize(fyne.NewSize(thumbDP*float32(size.X)/float32(max(size.Y, 1)), thumbDP))
	caption := s.newButton(shortened(t.photo.Caption), func() { s.enlarge(t.photo) })
	caption.Importance = widget.LowImportance
	return container.NewBorder(nil, caption, nil, nil, picture)
}

// longestCaption is how many letters of a caption stand under a small picture.
const longestCaption = 18

func shortened(caption string) string {
	if r := []rune(caption); len(r) > longestCaption {
		return string(r[:longestCaption-1]) + "\u2026"
	}
	return caption
}

// enlarge shows a photo over the window.
func (s *Strip) enlarge(p logbook.Photo) {
	var whole image.Image
	var err error
	book := s.book
	s.aside(func() { whole, err = read(book, p.ID) }, func() {
		if err != nil {
			s.tell(s.desk.Speaker.Retell(err.Error()))
			return
		}
		picture := canvas.NewImageFromImage(whole)
		picture.FillMode = canvas.ImageFillContain
		d := dialog.NewCustom(p.Caption, s.say(words.PageBack, nil), picture, s.desk.Window)
		size := s.desk.Window.Canvas().Size()
		d.Resize(fyne.NewSize(size.Width*0.92, size.Height*0.92))
		d.Show()
	})
}
