// This file holds the glyph cache.

package render

import (
	"image"
	"strings"

	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/math/fixed"
)

// Font is a face with its glyphs kept, so that a warm picture draws text
// without allocating. It must not be shared by renderers that draw at the same
// time.
type Font struct {
	face   font.Face
	ascent int
	height int
	glyphs map[rune]glyph
}

// glyph is one glyph's coverage, its place from the pen and its advance.
type glyph struct {
	mask    []uint8
	bounds  image.Rectangle
	advance fixed.Int26_6
}

// NewFont makes a font from a face of a fixed size. The face must not be used
// elsewhere at the same time.
func NewFont(face font.Face) *Font {
	m := face.Metrics()
	return &Font{face, m.Ascent.Ceil(), (m.Ascent + m.Descent).Ceil(), make(map[rune]glyph)}
}

// ParseFace makes a face of a TrueType or OpenType font, so many pixels high.
func ParseFace(ttf []byte, sizePx float64) (font.Face, error) {
	f, err := opentype.Parse(ttf)
	if err != nil {
		return nil, err
	}
	return opentype.NewFace(f, &opentype.FaceOptions{Size: sizePx, DPI: 72, Hinting: font.HintingFull})
}

// Measure returns the size in pixels of text without a plate.
func (f *Font) Measure(text string) (width, height int) {
	for more := true; more; {
		var line string
		line, text, more = strings.Cut(text, "\n")
		var pen fixed.Int26_6
		for _, c := range line {
			pen += f.glyph(c).advance
		}
		width = max(width, pen.Ceil())
		height += f.height
	}
	return width, height
}

// glyph returns a glyph, drawing it the first time. A rune the face lacks gets
// the face's replacement.
func (f *Font) glyph(c rune) glyph {
	if g, ok := f.glyphs[c]; ok {
		return g
	}
	var g glyph
	r, mask, at, advance, ok := f.face.Glyph(fixed.Point26_6{}, c)
	g.advance = advance
	if ok {
		g.bounds = r
		for y := range r.Dy() {
			for x := range r.Dx() {
				_, _, _, a := mask.At(at.X+x, at.Y+y).RGBA()
				g.mask = append(g.mask, uint8(a>>8))
			}
		}
	}
	f.glyphs[c] = g
	return g
}
