package paper

// This file puts a picture on the page.

import (
	"bytes"
	"fmt"
	"image"
	"image/jpeg"
	"image/png"

	"github.com/jung-kurt/gofpdf"
)

// Picture fills a rectangle with an image, which should have its proportions.
func (s *Sheet) Picture(x, y, w, h float64, picture image.Image) error {
	s.images++
	var data bytes.Buffer
	encoder := png.Encoder{CompressionLevel: png.BestSpeed} // the library packs it anew
	if err := encoder.Encode(&data, opaque{s.ownWidth(picture)}); err != nil {
		return err
	}
	name := fmt.Sprintf("picture %d", s.images)
	options := gofpdf.ImageOptions{ImageType: "PNG"}
	s.pdf.RegisterImageOptionsReader(name, options, &data)
	s.pdf.ImageOptions(name, x, y, w, h, false, options, 0, "")
	return s.pdf.Error()
}

// ownWidth takes a few columns off a picture so that no two have the same width:
// the library lists pictures by their widths, and those alike in any order.
func (s *Sheet) ownWidth(picture image.Image) image.Image {
	part, ok := picture.(interface {
		SubImage(image.Rectangle) image.Image
	})
	b := picture.Bounds()
	for s.widths[b.Dx()] && ok && b.Dx() > 1 {
		b.Max.X--
	}
	s.widths[b.Dx()] = true
	if !ok {
		return picture
	}
	return part.SubImage(b)
}

// opaque is a picture without its transparency, which paper has none of.
type opaque struct{ image.Image }

// Opaque tells the encoder to write no alpha.
func (opaque) Opaque() bool { return true }

// photoQuality is how finely photos are packed: they were packed once already.
const photoQuality = 90

// Photo fills a rectangle with a photograph, which should have its proportions.
// It is packed as a JPEG, a tenth of what Picture takes.
func (s *Sheet) Photo(x, y, w, h float64, photo image.Image) error {
	s.images++
	var data bytes.Buffer
	if err := jpeg.Encode(&data, s.ownWidth(photo), &jpeg.Options{Quality: photoQuality}); err != nil {
		return err
	}
	name := fmt.Sprintf("picture %d", s.images)
	options := gofpdf.ImageOptions{ImageType: "JPG"}
	s.pdf.RegisterImageOptionsReader(name, options, &data)
	s.pdf.ImageOptions(name, x, y, w, h, false, options, 0, "")
	return s.pdf.Error()
}
