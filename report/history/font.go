package history

// This file makes the embedded fonts those of the plots.

import (
	"sync"

	"golang.org/x/image/font/opentype"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/text"

	"aligner/assets"
)

// typeface is the name the embedded font goes by within a plot.
const typeface = font.Typeface("embedded")

// letters are the embedded regular font, read once.
var letters = sync.OnceValues(func() (text.Handler, error) {
	face, err := opentype.Parse(assets.Font("regular"))
	if err != nil {
		return nil, err
	}
	return text.Plain{Fonts: font.NewCache(font.Collection{{Font: font.Font{Typeface: typeface}, Face: face}})}, nil
})

// style is the embedded font in a size, in points.
func style(h text.Handler, points float64) text.Style {
	return text.Style{Font: font.Font{Typeface: typeface, Size: font.Points(points)}, Handler: h}
}
