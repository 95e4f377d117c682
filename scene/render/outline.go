// This file holds the thin outlines where parts or smooth surfaces meet.

package render

// outline darkens a pixel across which an outline runs. Each sample is compared
// with the same sample of the pixel on the left and of the pixel above. Of the
// four samples of a row exactly as many differ as the edge lies between them,
// so an edge gives one pixel's width of line in all, shared smoothly by the two
// pixels it runs between. It reports whether one does.
func (t *tiler) outline(p *pixel, at, x, y int) bool {
	o := &t.r.line
	if !o.on {
		return false
	}
	var left, above float32
	buf := t.buf[layerSolid]
	for s := range samples {
		k := at + s*tileColumns
		own := t.r.surfaceOf(buf[k])
		if x > 0 {
			left += o.strength(own, t.r.surfaceOf(buf[k-1]))
		}
		if y > 0 {
			above += o.strength(own, t.r.surfaceOf(buf[k-samples*tileColumns]))
		}
	}
	w := max(left, above) * (1.0 / samples)
	if w == 0 {
		return false
	}
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
