// This file holds the second stage: triangles that face the viewer get their
// raster record, their shading planes and their place in the tiles' bins.

package render

import "math"

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
	// attribute is, for solids, normal and open sky times key, or light if the
	// last plane's slope is litMark; for translucent triangles premultiplied
	// light and opacity.
	attribute [4]plane
	key       plane
	surface   uint32 // part << 16 | smooth surface of its mesh
}

// litMark marks a solid triangle that was lit at its corners.
const litMark = math.MaxFloat32

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
			c.attribute[0], c.attribute[1], c.attribute[2] = v.light[0], v.light[1], v.light[2]
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

// nearlyFlat reports whether a solid triangle may be lit at its corners. Between
// normals an angle t apart a quantity with curvature k differs from a straight
// line by k t^2/8; k is about 1 for the light and, near the highlight, its
// exponent times the gloss. Half a percent is not seen. Small triangles are
// allowed more of the highlight, because there is no room to see its shape; and
// in perspective all corners must be about equally far away, because the light
// is then interpolated without regard to depth.
func nearlyFlat(a, b, c *vertex, gloss float32, half [3]float32) bool {
	n, m, o := &a.normal, &b.normal, &c.normal
	cosine := min(n[0]*m[0]+n[1]*m[1]+n[2]*m[2], n[0]*o[0]+n[1]*o[1]+n[2]*o[2], m[0]*o[0]+m[1]*o[1]+m[2]*o[2])
	const seen, small, depthRatio = 0.005, 8 * subpixel, 1.1
	bend := (1 - cosine) / 4 // t^2/8
	if bend > seen || max(a.key, b.key, c.key) > depthRatio*min(a.key, b.key, c.key) {
		return false
	}
	if bend*32*gloss < seen || max(a.x, b.x, c.x)-min(a.x, b.x, c.x) < small && max(a.y, b.y, c.y)-min(a.y, b.y, c.y) < small {
		return true
	}
	return max(dot(n, &half), dot(m, &half), dot(o, &half)) < 0.8
}

func dot(a, b *[3]float32) float32 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }

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
		for i := range s.attribute {
			g.plane(&s.attribute[i], c[0].attribute[i], c[1].attribute[i], c[2].attribute[i])
		}
		if l.lit {
			s.attribute[3].a = litMark
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
