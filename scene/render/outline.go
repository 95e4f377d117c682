// This file holds the thin outlines where parts or smooth surfaces meet.

package render

// outline darkens a pixel across which an outline runs. Each sample is compared with the same sample of the pixels on the left,
// above, and above on the left: it counts when an edge passes between the four.
// They stand in a square one pixel wide, so an edge darkens a strip as wide as
// that square looks from along the edge, 1 to 1.4 pixels, in quarter steps and
// alike for all directions.
func (t *tiler) outline(p *pixel, at, x, y int) {
	o := &t.r.line
	if !o.on {
		return
	}
	own, a, b, c := t.square(layerSolid, at, x, y)
	var w float32
	for s, v := range own {
		if ((v^a[s])|(v^b[s])|(v^c[s]))&idMask == 0 {
			continue
		}
		surface := t.r.surfaceOf(v)
		w += max(o.strength(surface, t.r.surfaceOf(a[s])), o.strength(surface, t.r.surfaceOf(b[s])), o.strength(surface, t.r.surfaceOf(c[s])))
	}
	if w == 0 {
		return
	}
	w *= 1.0 / samples
	p.light()
	p.r += (o.rgb[0] - p.r) * w
	p.g += (o.rgb[1] - p.g) * w
	p.b += (o.rgb[2] - p.b) * w
}

// square is a layer's samples of a pixel and of those on its left, above, and
// above on the left; where the picture ends, of the pixel itself.
func (t *tiler) square(layer, at, x, y int) (own, left, above, corner *quad) {
	dx, dy := 1, tileColumns
	if x == 0 {
		dx = 0
	}
	if y == 0 {
		dy = 0
	}
	buf := t.buf[layer]
	return &buf[at], &buf[at-dx], &buf[at-dy], &buf[at-dx-dy]
}

// ghostOutline is outline for the front faces of the ghosts' shell, where no
// solid hides them. The line has the colour of its part.
func (t *tiler) ghostOutline(p *pixel, at, x, y int, solid *quad) {
	o := &t.r.line
	own, a, b, c := t.square(layerGhost, at, x, y)
	var w float32
	var nearest uint64
	for s, v := range own {
		near := max(v, a[s], b[s], c[s])
		if ((v^a[s])|(v^b[s])|(v^c[s]))&idMask == 0 || near <= solid[s] {
			continue
		}
		surface := t.r.surfaceOf(v)
		w += max(o.strength(surface, t.r.surfaceOf(a[s])), o.strength(surface, t.r.surfaceOf(b[s])), o.strength(surface, t.r.surfaceOf(c[s])))
		nearest = max(nearest, near)
	}
	if w == 0 {
		return
	}
	w *= o.ghost / samples
	p.light()
	rgb := &t.r.materials[t.r.shades[nearest&idMask-1].surface>>16].rgb
	p.r += (rgb[0] - p.r) * w
	p.g += (rgb[1] - p.g) * w
	p.b += (rgb[2] - p.b) * w
}

// lineStyle is the Outline made ready.
type lineStyle struct {
	on                        bool
	rgb                       [3]float32
	silhouette, crease, ghost float32
}

func newLineStyle(o Outline) lineStyle {
	return lineStyle{o.Silhouette > 0 || o.Crease > 0, linearRGB(o.Colour), o.Silhouette, o.Crease, o.Ghost}
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
