// This file holds text on plates.

package render

import (
	"image/color"
	"math"
	"strings"

	"golang.org/x/image/math/fixed"
)

func (p *painter) label(l *Label) {
	at, ok := p.project(l.At, l.Flat)
	if !ok || l.Font == nil || l.Text == "" {
		return
	}
	r := p.r
	share := p.shareAt(at, l.Behind)
	if share == 0 {
		return
	}
	inside := at.x >= 0 && at.y >= 0 && at.x < float32(r.view.width) && at.y < float32(r.view.height)
	box := l.box(at)
	if l.Keep && inside {
		box.moveInto(float32(r.view.width), float32(r.view.height))
	}
	if l.Yield && inside {
		box = p.aside(box)
	}
	p.plates = append(p.plates, box)
	if !(box.x1 > 0 && box.y1 > 0 && box.x0 < float32(r.view.width) && box.y0 < float32(r.view.height)) {
		return
	}
	if l.Leader.A > 0 {
		s := newStroke(1.2, 0, 0, ShowBehind)
		end := place{min(max(at.x, box.x0), box.x1), min(max(at.y, box.y0), box.y1), at.key}
		p.piece(at, end, 0, &s)
		p.blend(faded(l.Leader, share))
	}
	if l.Plate.A > 0 {
		p.plate(box, box.pad*0.8)
		p.blend(faded(l.Plate, share))
	}
	p.text(l, int(box.x0+box.pad), int(box.y0+box.pad/2))
	p.blend(faded(l.Colour, share))
}

// faded is a colour with a share of its opacity.
func faded(c color.NRGBA, share float32) color.NRGBA {
	c.A = uint8(float32(c.A)*share + 0.5)
	return c
}

// plateBox is where a label's plate lies.
type plateBox struct{ x0, y0, x1, y1, pad float32 }

// box works the plate out. It sits on whole pixels, for text between two pixel
// rows is blurred.
func (l *Label) box(at place) plateBox {
	w, h := l.Font.Measure(l.Text)
	pad := float32(math.Round(float64(l.Font.height) * 0.3))
	wide, high := float32(w)+2*pad, float32(h)+pad
	x := float32(math.Round(float64(at.x + l.Offset[0] - l.Pivot[0]*wide)))
	y := float32(math.Round(float64(at.y + l.Offset[1] - l.Pivot[1]*high)))
	return plateBox{x, y, x + wide, y + high, pad}
}

// moveInto shifts the plate into the picture; too large a plate keeps its top
// left corner in sight.
func (b *plateBox) moveInto(width, height float32) {
	dx := max(min(0, width-b.x1), -b.x0)
	dy := max(min(0, height-b.y1), -b.y0)
	b.x0, b.x1, b.y0, b.y1 = b.x0+dx, b.x1+dx, b.y0+dy, b.y1+dy
}

// asides are the ways a plate may go, in its own widths and heights: the nearest
// first, over and under before beside.
var asides = [...][2]float32{
	{0, -1}, {0, 1}, {-1, 0}, {1, 0}, {-0.6, -1}, {0.6, -1}, {-0.6, 1}, {0.6, 1},
	{0, -2}, {0, 2}, {-1, -1}, {1, -1}, {-1, 1}, {1, 1}, {0, -3}, {0, 3},
}

// aside is the nearest place for a plate on which no other lies, within the
// picture.
func (p *painter) aside(b plateBox) plateBox {
	if p.free(b) {
		return b
	}
	const between = 2
	wide, high := b.x1-b.x0+between, b.y1-b.y0+between
	for _, a := range asides {
		c := b
		c.x0, c.x1, c.y0, c.y1 = b.x0+a[0]*wide, b.x1+a[0]*wide, b.y0+a[1]*high, b.y1+a[1]*high
		c = c.onPixels()
		if c.x0 >= 0 && c.y0 >= 0 && c.x1 <= float32(p.r.view.width) && c.y1 <= float32(p.r.view.height) && p.free(c) {
			return c
		}
	}
	return b
}

// onPixels puts a plate's corner back onto whole pixels.
func (b plateBox) onPixels() plateBox {
	x, y := float32(math.Round(float64(b.x0))), float32(math.Round(float64(b.y0)))
	return plateBox{x, y, x + b.x1 - b.x0, y + b.y1 - b.y0, b.pad}
}

// free reports whether no earlier plate lies where this one would.
func (p *painter) free(b plateBox) bool {
	for _, o := range p.plates {
		if b.x0 < o.x1 && o.x0 < b.x1 && b.y0 < o.y1 && o.y0 < b.y1 {
			return false
		}
	}
	return true
}

// plate covers a rectangle with rounded corners.
func (p *painter) plate(b plateBox, radius float32) {
	x0, x1 := pixelRange(b.x0-1, b.x1+1, p.r.view.width)
	y0, y1 := pixelRange(b.y0-1, b.y1+1, p.r.view.height)
	cx, cy := (b.x0+b.x1)/2, (b.y0+b.y1)/2
	hx, hy := (b.x1-b.x0)/2-radius, (b.y1-b.y0)/2-radius
	for y := y0; y < y1 && x0 < x1; y++ {
		mask := p.row(x0, x1, y)
		dy := max(abs32(float32(y)+0.5-cy)-hy, 0)
		for i := range mask {
			dx := max(abs32(float32(x0+i)+0.5-cx)-hx, 0)
			mask[i] = max(mask[i], uint8(cover(radius-hypot32(dx, dy))*255+0.5))
		}
	}
}

// text covers the label's glyphs; (x, y) is the top left corner of the first
// line.
func (p *painter) text(l *Label, x, y int) {
	f := l.Font
	y += f.ascent
	rest := l.Text
	for more := true; more; {
		var line string
		line, rest, more = strings.Cut(rest, "\n")
		var pen fixed.Int26_6
		for _, c := range line {
			g := f.glyph(c)
			p.glyph(&g, x+pen.Round(), y)
			pen += g.advance
		}
		y += f.height
	}
}

// glyph covers one glyph with its origin at (x, y).
func (p *painter) glyph(g *glyph, x, y int) {
	b := g.bounds
	x0, x1 := max(x+b.Min.X, 0), min(x+b.Max.X, p.r.view.width)
	y0, y1 := max(y+b.Min.Y, 0), min(y+b.Max.Y, p.r.view.height)
	if x0 >= x1 {
		return
	}
	for py := y0; py < y1; py++ {
		own := g.mask[(py-y-b.Min.Y)*b.Dx()+x0-x-b.Min.X:]
		for i, m := range p.row(x0, x1, py) {
			at := py*p.r.view.width + x0 + i
			p.mask[at] = max(m, own[i])
		}
	}
}
