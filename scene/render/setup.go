// This file holds the second stage: triangles that face the viewer get their
// raster record, their shading planes and their place in the tiles' bins.

package render

// rasterTriangle is what scan conversion needs: corners from top to bottom and
// the plane of the depth key.
type rasterTriangle struct {
	x, y           [3]int32 // 1/256 pixel, sorted by y
	keyX, keyY     float64  // depth key per pixel to the right and down
	key0           float64  // depth key at the picture's top left corner
	id             uint32   // triangle number + 1; 0 means nothing is there
	middleIsOnLeft bool
}

// shadeTriangle is what resolving needs: one cache line. A plane (a, b, c) has
// the value a x + b y + c at pixel position (x, y).
type shadeTriangle struct {
	attribute [4]plane // solids: normal and open sky times key; translucent: premultiplied colour and opacity
	key       plane
	surface   uint32 // part << 16 | smooth surface of its mesh
}

type plane struct{ a, b, c float32 }

func (p plane) at(x, y float32) float32 { return p.a*x + p.b*y + p.c }

// corner is one corner of a triangle in set-up.
type corner struct {
	x, y      int32
	key       float64
	attribute [4]float32
}

// setUp takes triangles lo to hi of a part into a lane.
func (r *Renderer) setUp(l *lane, part, lo, hi int) {
	p, f := &r.parts[part], &r.frames[part]
	vertices := r.vertices[f.vertexBase:]
	bothSides := p.TwoSided || f.layer > 0
	for i, t := range p.Mesh.Triangles[lo:hi] {
		a, b, c := &vertices[t[0]], &vertices[t[1]], &vertices[t[2]]
		if a.out&b.out&c.out&outHidden != 0 {
			continue
		}
		if (a.out|b.out|c.out)&outClip != 0 {
			r.setUpClipped(l, part, lo+i)
			continue
		}
		// Anticlockwise with y up is clockwise with y down.
		area := int64(b.x-a.x)*int64(c.y-a.y) - int64(c.x-a.x)*int64(b.y-a.y)
		if f.mirrored {
			area = -area
		}
		if area == 0 || area > 0 && !bothSides {
			continue
		}
		if misses(a.x, a.y, b.x, b.y, c.x, c.y) {
			continue
		}
		front := area < 0
		corners := [3]corner{r.corner(p, f, a, front), r.corner(p, f, b, front), r.corner(p, f, c, front)}
		r.emit(l, part, lo+i, front, &corners, true)
	}
}

// misses reports that no sample can lie within the triangle's bounds: in x
// samples lie 32 to 224 of 256 from a pixel's left edge, in y every 64 from 32.
func misses(ax, ay, bx, by, cx, cy int32) bool {
	top, bottom := min(ay, by, cy), max(ay, by, cy)
	if (top+31)>>6 >= (bottom+31)>>6 {
		return true
	}
	left, right := min(ax, bx, cx), max(ax, bx, cx)
	return (left-224+255)>>8 >= (right-32+255)>>8
}

// corner prepares a vertex's attributes: what is interpolated over the picture.
func (r *Renderer) corner(p *Part, f *partFrame, v *vertex, front bool) corner {
	n := v.normal
	if !front {
		n = [3]float32{-n[0], -n[1], -n[2]}
	}
	c := corner{x: v.x, y: v.y, key: v.key}
	if f.layer > 0 {
		// Translucent parts are lit at their corners: they are smooth and faint.
		c.attribute = r.lamp.translucent(&r.materials[f.index], n, v.openSky)
		return c
	}
	q := float32(1)
	if r.view.perspective {
		q = float32(v.key)
	}
	c.attribute = [4]float32{n[0] * q, n[1] * q, n[2] * q, v.openSky * q}
	return c
}

// emit writes the records of one triangle or of one piece of a clipped one.
// Pieces of a triangle share its planes, so one of them, shades, writes them.
func (r *Renderer) emit(l *lane, part, tri int, front bool, c *[3]corner, shades bool) {
	f := &r.frames[part]
	id := f.triBase + tri
	t := rasterTriangle{id: uint32(id) + 1}
	g := newGradient(c)
	keyX, keyY := g.of(c[0].key, c[1].key, c[2].key)
	t.keyX, t.keyY = keyX, keyY
	t.key0 = c[0].key - keyX*g.x0 - keyY*g.y0
	if shades {
		s := &r.shades[id]
		for i := range s.attribute {
			s.attribute[i] = g.plane(c[0].attribute[i], c[1].attribute[i], c[2].attribute[i])
		}
		s.key = plane{float32(keyX), float32(keyY), float32(t.key0)}
		s.surface = uint32(part)<<16 | uint32(r.parts[part].Mesh.surfaces[tri])
	}
	t.sortCorners(c)
	layer := f.layer
	if layer > 0 && front {
		layer++
	}
	l.add(r, layer, &t)
}

// sortCorners fills in the corners from top to bottom. Corners of equal height
// may come in any order: an edge between them crosses no sample row.
func (t *rasterTriangle) sortCorners(c *[3]corner) {
	a, b, d := &c[0], &c[1], &c[2]
	if b.y < a.y {
		a, b = b, a
	}
	if d.y < b.y {
		b, d = d, b
		if b.y < a.y {
			a, b = b, a
		}
	}
	t.x = [3]int32{a.x, b.x, d.x}
	t.y = [3]int32{a.y, b.y, d.y}
	t.middleIsOnLeft = int64(d.x-a.x)*int64(b.y-a.y) > int64(b.x-a.x)*int64(d.y-a.y)
}
