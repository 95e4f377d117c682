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

// shadeTriangle is what resolving needs, laid out in two cache lines of which a
// lit triangle uses the first only. A plane (a, b, c) has the value a x + b y + c
// at pixel position (x, y).
type shadeTriangle struct {
	surface uint32 // part << 16 | smooth surface of its mesh
	lit     bool   // its light was worked out at its corners: see ink
	key     plane
	ink     inkPlane
	_       [8]byte
	// attribute is, for other solids, normal and open sky times key; for
	// translucent triangles premultiplied light and opacity.
	attribute [4]plane
	_         [16]byte
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
		r.setCorners(l, p, f, front, a, b, c)
		r.emit(l, part, lo+i, front, true)
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

// setCorners puts a triangle's corners and what is to be interpolated between
// them into the lane.
func (r *Renderer) setCorners(l *lane, p *Part, f *partFrame, front bool, v ...*vertex) {
	l.lit = front && f.layer == layerSolid && nearlyFlat(v[0], v[1], v[2], r.materials[f.index].gloss, r.lamp.half)
	for i, v := range v {
		c := &l.corners[i]
		c.x, c.y, c.key = v.x, v.y, v.key
		if l.lit {
			c.attribute[0], c.attribute[1], c.attribute[2] = v.levels[0], v.levels[1], v.levels[2]
			continue
		}
		n := v.normal
		if !front {
			n = [3]float32{-n[0], -n[1], -n[2]}
		}
		if f.layer != layerSolid {
			// Translucent parts are lit at their corners: they are smooth and faint.
			c.attribute = r.lamp.translucent(&r.materials[f.index], n, v.openSky)
			continue
		}
		q := float32(1)
		if r.view.perspective {
			q = float32(v.key)
		}
		c.attribute[0], c.attribute[1], c.attribute[2], c.attribute[3] = n[0]*q, n[1]*q, n[2]*q, v.openSky*q
	}
}

// emit writes the records of the triangle in the lane's corners, or of one piece
// of a clipped one. Pieces of a triangle share its planes, so one of them,
// shades, writes them.
func (r *Renderer) emit(l *lane, part, tri int, front, shades bool) {
	f, c := &r.frames[part], &l.corners
	id := f.triBase + tri
	l.triangles = append(l.triangles, rasterTriangle{})
	t := &l.triangles[len(l.triangles)-1]
	t.id = uint32(id) + 1
	g := &l.gradient
	g.set(c)
	t.keyX, t.keyY = g.of(c[0].key, c[1].key, c[2].key)
	t.key0 = c[0].key - t.keyX*g.x0 - t.keyY*g.y0
	if shades {
		s := &r.shades[id]
		if s.lit = l.lit; s.lit {
			s.ink.set(g, c)
		} else {
			for i := range s.attribute {
				g.plane(&s.attribute[i], c[0].attribute[i], c[1].attribute[i], c[2].attribute[i])
			}
		}
		s.key = plane{float32(t.keyX), float32(t.keyY), float32(t.key0)}
		s.surface = uint32(part)<<16 | uint32(r.parts[part].Mesh.surfaces[tri])
	}
	t.sortCorners(c)
	layer := f.layer
	if layer != layerSolid && front {
		layer++
	}
	l.bin(r, layer)
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
