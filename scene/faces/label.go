package faces

// This file places words and numbers, and tells whether they overlap.

import (
	"math"
	"strings"
)

// rect is a rectangle, y down.
type rect struct{ x0, y0, x1, y1 float64 }

func (r rect) width() float64  { return r.x1 - r.x0 }
func (r rect) height() float64 { return r.y1 - r.y0 }
func (r rect) middle() point   { return point{(r.x0 + r.x1) / 2, (r.y0 + r.y1) / 2} }

func (r rect) grown(by float64) rect { return rect{r.x0 - by, r.y0 - by, r.x1 + by, r.y1 + by} }

// overlaps tells whether two rectangles share any area.
func (r rect) overlaps(o rect) bool {
	return r.x0 < o.x1 && o.x0 < r.x1 && r.y0 < o.y1 && o.y0 < r.y1
}

func (r rect) holds(o rect) bool {
	return o.x0 >= r.x0 && o.x1 <= r.x1 && o.y0 >= r.y0 && o.y1 <= r.y1
}

// label is a line of text and where it stands.
type label struct {
	text   string
	sizePx float64
	bold   bool
	ink    ink
	at     point // the middle of its capitals
	box    rect
	// leader runs from the clock to a number that had to step aside.
	leader []point
	// number is set for gaps round the clock, at a stored clock angle.
	number   bool
	clockRad float64
}

// newLabel places text by the middle of its capitals.
func newLabel(fonts *Fonts, text string, sizePx float64, bold bool, i ink, at point) label {
	// What is drawn is in half pixels; so is what is measured.
	sizePx = math.Max(1, math.Floor(sizePx*2)/2)
	l := label{text: text, sizePx: sizePx, bold: bold, ink: i}
	l.box = rect{x1: fonts.width(text, bold) * sizePx, y1: sizePx * 0.84}
	if strings.ContainsAny(text, "gjpqy;()Q") {
		l.box.y1 += sizePx * (descent - 0.04)
	}
	for _, c := range text {
		if c >= 0xC0 && c <= 0x17F && c != '×' && c != '÷' { // an accent may stand on a capital
			l.box.y0 = -sizePx * 0.2
		}
	}
	l.at = point{l.box.x1 / 2, sizePx * 0.42}
	l.moveTo(at)
	return l
}

// moveTo places a label by the middle of its capitals.
func (l *label) moveTo(at point) {
	d := at.sub(l.at)
	l.box = rect{l.box.x0 + d.x, l.box.y0 + d.y, l.box.x1 + d.x, l.box.y1 + d.y}
	l.at = at
}

// shrunk is a size at which text is no wider than given, at most the size given.
func shrunk(fonts *Fonts, text string, sizePx float64, bold bool, width float64) float64 {
	w := fonts.width(text, bold) * sizePx
	if w <= width || w == 0 {
		return sizePx
	}
	return max(0, sizePx*width/w)
}

// wrap cuts text into lines no wider than given, at its spaces.
func wrap(fonts *Fonts, text string, sizePx float64, bold bool, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && fonts.width(longer, bold)*sizePx > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	return append(lines, line)
}

// label writes it.
func (p *pen) label(l *label) {
	if len(l.leader) > 1 {
		p.fill(stroke(l.leader, max(1, l.sizePx/12)), inkQuiet)
	}
	p.text(l.text, l.box.x0, l.at.y+l.sizePx*capHeight/2, l.sizePx, l.bold, l.ink)
}

// arcText writes along a circle, centred on an angle as seen, readable from
// below: in the lower half it runs the other way round. radius is that of the
// middle of the capitals.
func (p *pen) arcText(s string, centre point, radius, seenRad, sizePx float64, i ink) {
	out, up := ray(seenRad), 1.0
	if out.y > 0.1 {
		up = -1
	}
	base := radius - up*sizePx*capHeight/2
	angle := seenRad - up*p.fonts.width(s, true)*sizePx/radius/2
	for _, c := range s {
		half := p.fonts.advance(c, true) * sizePx / 2
		angle += up * half / radius
		p.arcGlyph(c, centre, base, angle, up, sizePx, half, i)
		angle += up * half / radius
	}
}

// arcGlyph draws one glyph upright on a circle.
func (p *pen) arcGlyph(c rune, centre point, base, angle, up, sizePx, half float64, i ink) {
	out := ray(angle)
	right := point{-out.y, out.x}.times(up)
	foot := centre.plus(base, out)
	place := func(q point) point { return foot.plus(q.x-half, right).plus(-q.y*up, out) }
	corners := []point{{0, -sizePx}, {2 * half, -sizePx}, {2 * half, sizePx / 2}, {0, sizePx / 2}}
	for k := range corners {
		corners[k] = place(corners[k])
	}
	r := p.bounds(shape{corners})
	if r.Empty() {
		return
	}
	z := &p.fonts.raster
	z.Reset(r.Dx(), r.Dy())
	p.fonts.outline(c, true, sizePx, walker{raster: z, bend: place, shift: point{-float64(r.Min.X), -float64(r.Min.Y)}})
	p.blend(p.rasterized(r.Size()), r.Min, i)
}
