package faces

// This file keeps fonts: outlines scaled to a size, and the coverage of glyphs
// already drawn.

import (
	"fmt"
	"image"
	"image/draw"
	"math"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/image/vector"
)

// Fonts are a regular and a bold face with their glyphs kept. They may be used
// by several drawings at once, which then wait for each other.
type Fonts struct {
	mu     sync.Mutex
	face   [2]*sfnt.Font // regular, bold
	buffer sfnt.Buffer
	widths map[glyphKey]float64 // advance in ems; key without size and phase
	glyphs map[glyphKey]glyph
	raster vector.Rasterizer
	// scratch is coverage, used again by each path.
	scratch []uint8
}

// glyphKey finds a glyph. Sizes are in half pixels, phases quarters of a pixel.
type glyphKey struct {
	bold        bool
	char        rune
	size, phase int16
}

// glyph is one glyph's coverage and its place from the pen on the baseline.
type glyph struct {
	mask *image.Alpha
}

// mostGlyphs are kept; more begin anew.
const mostGlyphs = 3000

// NewFonts takes two TrueType or OpenType fonts.
func NewFonts(regular, bold []byte) (*Fonts, error) {
	f := &Fonts{widths: make(map[glyphKey]float64), glyphs: make(map[glyphKey]glyph)}
	for i, data := range [][]byte{regular, bold} {
		face, err := sfnt.Parse(data)
		if err != nil {
			return nil, fmt.Errorf("faces: font %d of 2 (regular, bold) cannot be read: %w", i+1, err)
		}
		f.face[i] = face
	}
	return f, nil
}

func (f *Fonts) weight(bold bool) *sfnt.Font {
	if bold {
		return f.face[1]
	}
	return f.face[0]
}

// advance is a glyph's width in ems.
func (f *Fonts) advance(c rune, bold bool) float64 {
	key := glyphKey{bold: bold, char: c}
	if w, ok := f.widths[key]; ok {
		return w
	}
	face := f.weight(bold)
	const em = 1000
	w := 0.5 // a glyph that cannot be read takes room all the same
	if i, err := face.GlyphIndex(&f.buffer, c); err == nil {
		if a, err := face.GlyphAdvance(&f.buffer, i, fixed.I(em), font.HintingNone); err == nil {
			w = float64(a) / 64 / em
		}
	}
	f.widths[key] = w
	return w
}

// width is a text's width in ems.
func (f *Fonts) width(text string, bold bool) float64 {
	w := 0.0
	for _, c := range text {
		w += f.advance(c, bold)
	}
	return w
}

// Heights of DejaVu Sans in ems, measured on its capitals and on "p"; other
// fonts come close.
const (
	capHeight = 0.729
	descent   = 0.236
)

// outline walks a glyph's outline at a size, y down from the baseline.
func (f *Fonts) outline(c rune, bold bool, sizePx float64, to walker) {
	face := f.weight(bold)
	i, err := face.GlyphIndex(&f.buffer, c)
	if err != nil {
		return
	}
	segments, err := face.LoadGlyph(&f.buffer, i, fixed.Int26_6(sizePx*64+0.5), nil)
	if err != nil {
		return
	}
	at := func(p fixed.Point26_6) point { return point{float64(p.X) / 64, float64(p.Y) / 64} }
	for k, s := range segments {
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			if k > 0 {
				to.close()
			}
			to.move(at(s.Args[0]))
		case sfnt.SegmentOpLineTo:
			to.line(at(s.Args[0]))
		case sfnt.SegmentOpQuadTo:
			to.quad(at(s.Args[0]), at(s.Args[1]))
		case sfnt.SegmentOpCubeTo:
			to.cube(at(s.Args[0]), at(s.Args[1]), at(s.Args[2]))
		}
	}
	to.close()
}

// glyph draws a glyph's coverage, or finds it drawn already.
func (f *Fonts) glyph(key glyphKey) glyph {
	if g, ok := f.glyphs[key]; ok {
		return g
	}
	if len(f.glyphs) >= mostGlyphs {
		clear(f.glyphs)
	}
	size := float64(key.size) / 2
	width := int(math.Ceil(f.advance(key.char, key.bold)*size)) + 4
	up, down := int(math.Ceil(size*1.1)), int(math.Ceil(size*0.4))
	w := walker{raster: &f.raster, shift: point{2 + float64(key.phase)/4, float64(up)}}
	f.raster.Reset(width+1, up+down)
	f.outline(key.char, key.bold, size, w)
	mask := image.NewAlpha(image.Rect(-2, -up, width-1, down))
	f.raster.DrawOp = draw.Src
	f.raster.Draw(mask, mask.Rect, image.Opaque, image.Point{})
	g := glyph{mask}
	f.glyphs[key] = g
	return g
}
