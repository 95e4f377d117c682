package logbook

// This file makes a photo small enough to keep.

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	_ "image/gif"
	"image/jpeg"
	_ "image/png"

	_ "golang.org/x/image/bmp"
	"golang.org/x/image/draw"
	_ "golang.org/x/image/tiff"
	_ "golang.org/x/image/webp"
)

// MostPhotoPX is the longer side of a photo as it is kept.
const MostPhotoPX = 1600

// What is taken at most: 64 MB, and 100 million pixels, which is 400 MB while it
// is being shrunk. The usual camera gives 12 to 50 million.
const (
	mostPhotoBytes = 64 << 20
	mostPixels     = 100_000_000
)

// photoQuality of the JPEG kept: 1600 x 1200 take about 300 kB.
const photoQuality = 80

// jpegPhoto is a photo as it is kept.
type jpegPhoto struct {
	data              []byte
	widthPX, heightPX int
}

// shrink turns a photo upright, shrinks it to MostPhotoPX and writes it as a JPEG
// with nothing but the picture in it.
func shrink(data []byte) (jpegPhoto, error) {
	img, err := decodePhoto(data)
	if err != nil {
		return jpegPhoto{}, err
	}
	small := upright(smaller(img), orientation(data))
	var out bytes.Buffer
	if err := jpeg.Encode(&out, small, &jpeg.Options{Quality: photoQuality}); err != nil {
		return jpegPhoto{}, fmt.Errorf("photo: %w", err)
	}
	size := small.Bounds().Size()
	return jpegPhoto{out.Bytes(), size.X, size.Y}, nil
}

// decodePhoto reads a picture after seeing that it is no larger than a camera's.
func decodePhoto(data []byte) (image.Image, error) {
	if len(data) > mostPhotoBytes {
		return nil, refused("photo", fmt.Sprintf("%d bytes", len(data)), "at most 64 MB", "make it smaller first")
	}
	head, _, err := image.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return nil, noPhoto(err)
	}
	if head.Width <= 0 || head.Height <= 0 || head.Width > mostPixels/head.Height {
		return nil, refused("photo", fmt.Sprintf("%d x %d pixels", head.Width, head.Height), "at most 100 million", "make it smaller first")
	}
	img, _, err := image.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, noPhoto(err)
	}
	return img, nil
}

func noPhoto(err error) error {
	return refused("photo", "no picture ("+err.Error()+")", "a JPEG, PNG, GIF, WebP, TIFF or BMP", "save it as a JPEG")
}

// smaller has no side longer than MostPhotoPX, and no holes: what shows through
// is white.
func smaller(img image.Image) *image.RGBA {
	w, h := img.Bounds().Dx(), img.Bounds().Dy()
	if long := max(w, h); long > MostPhotoPX {
		w, h = max(w*MostPhotoPX/long, 1), max(h*MostPhotoPX/long, 1)
	}
	out := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(out, out.Bounds(), image.NewUniform(color.White), image.Point{}, draw.Src)
	draw.CatmullRom.Scale(out, out.Bounds(), img, img.Bounds(), draw.Over, nil)
	return out
}
