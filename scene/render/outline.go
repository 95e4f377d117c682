// This file holds the thin outlines where parts or smooth surfaces meet.

package render

// outline darkens a pixel across which an outline runs, and reports whether one
// does. Each sample is compared with the same sample of the pixels on the left,
// above, and above on the left: it counts when an edge passes between the four.
// They stand in a square one pixel wide, so an edge darkens a strip as wide as
// that square looks from along the edge, 1 to 1.4 pixels, in quarter steps and
// alike for all directions.
func (t *tiler) outline(p *pixel, at, x, y int) bool {
	o := &t.r.line
	if !o.on {
		return false
	}
	left, above := 1, tileColumns
	if x == 0 {
		left = 0 // nothing there: compare with itself
	}
	if y == 0 {
		above = 0
	}
	buf := t.buf[layerSolid]
	own, a, b, c := &buf[at], &buf[at-left], &buf[at-above], &buf[at-left-above]
	var w float32
	for s, v := range own {
		if ((v^a[s])|(v^b[s])|(v^c[s]))&idMask == 0 {
			continue
		}
		surface := t.r.surfaceOf(v)
		w += max(o.strength(surface, t.r.surfaceOf(a[s])), o.strength(surface, t.r.surfaceOf(b[s])), o.strength(surface, t.r.surfaceOf(c[s])))
	}
	if w == 0 {
		return false
	}
	w *= 1.0 / samples
	p.r += (o.rgb[0] - p.r) * w
	p.g += (o.rgb[1] - p.g) * w
	p.b += (o.rgb[2] - p.b) * w
	return true
}

// lineStyle is the Outline made ready.
type lineStyle struct {
	on                 bool
	rgb                [3]float32
	silhouette, crease float32
}

func newLineStyle(o Outline) lineStyle {
	return lineStyle{o.Silhouette > 0 || o.Crease > 0, linearRGB(o.Colour), o.Silhouette, o.Crease}
}

// strength is that of a line between two surfaces, each one more than its id.
func (o *lineStyle) strength(a, b uint32) float32 {
	switch {
	case a == b:
		return 0
	case a == surfaceNone || b == surfaceNone || (a-1)>>16 != (b-1)>>16:
		return o.silhouette
	}
	return o.crease
}
