// This file holds clipping: triangles that reach before Near or far outside the
// picture are cut in view space and come back as a fan of pieces.

package render

// clipVertex is a corner in the view frame.
type clipVertex struct {
	p, normal [3]float32
	openSky   float32
}

// maxClipped is three corners and one more for each of six planes.
const maxClipped = 9

// setUpClipped cuts one triangle and emits its pieces. All pieces carry the
// triangle's number and, lying in one plane, its shading; the largest piece is
// the best conditioned to work that out from.
func (r *Renderer) setUpClipped(l *lane, part, tri int) {
	p, f, v := &r.parts[part], &r.frames[part], &r.view
	var buf [2][maxClipped]clipVertex
	poly := buf[0][:0]
	for _, i := range p.Mesh.Triangles[tri] {
		a := &p.Mesh.Positions[i]
		m := &f.toView
		o := &r.vertices[f.vertexBase+int(i)]
		poly = append(poly, clipVertex{[3]float32{
			m[0]*a[0] + m[1]*a[1] + m[2]*a[2] + m[3],
			m[4]*a[0] + m[5]*a[1] + m[6]*a[2] + m[7],
			m[8]*a[0] + m[9]*a[1] + m[10]*a[2] + m[11],
		}, o.normal, o.openSky})
	}
	for i, pl := range v.clipPlanes() {
		poly = clipAgainst(buf[(i+1)&1][:0], poly, pl)
		if len(poly) < 3 {
			return
		}
	}
	var corners [maxClipped]vertex
	for i := range poly {
		o := &corners[i]
		if !poly[i].project(o, v) {
			return
		}
		o.illuminate(&r.lamp, &r.materials[part])
	}
	r.emitFan(l, part, tri, corners[:len(poly)])
}

// emitFan emits a convex polygon as triangles round its first corner.
func (r *Renderer) emitFan(l *lane, part, tri int, corners []vertex) {
	p, f := &r.parts[part], &r.frames[part]
	piece := func(i int) int64 {
		a, b, c := &corners[0], &corners[i], &corners[i+1]
		return int64(b.x-a.x)*int64(c.y-a.y) - int64(c.x-a.x)*int64(b.y-a.y)
	}
	var total, widest int64
	largest := 1
	for i := 1; i+1 < len(corners); i++ {
		area := piece(i)
		total += area
		if abs := max(area, -area); abs > widest {
			largest, widest = i, abs
		}
	}
	front := total < 0 != f.mirrored
	if total == 0 || !front && !p.TwoSided && f.layer == 0 {
		return
	}
	for i := 1; i+1 < len(corners); i++ {
		if piece(i) == 0 {
			continue
		}
		r.setCorners(l, p, f, front, &corners[0], &corners[i], &corners[i+1])
		r.emit(l, part, tri, front, i == largest)
	}
}

// clipPlane keeps points with n . p + d >= 0.
type clipPlane struct {
	n [3]float32
	d float32
}

// clipPlanes are Near, the far end of an orthographic picture, and the four
// sides of the guard band. They are computed for each clipped triangle; there
// are few.
func (v *view) clipPlanes() [6]clipPlane {
	s, g := float32(v.scale), float32(guardPx-1)
	planes := [6]clipPlane{{n: [3]float32{0, 0, -1}, d: -float32(v.near)}}
	if v.perspective {
		planes[1] = planes[0]
		planes[2] = clipPlane{n: [3]float32{s, 0, -g}}
		planes[3] = clipPlane{n: [3]float32{-s, 0, -g}}
		planes[4] = clipPlane{n: [3]float32{0, s, -g}}
		planes[5] = clipPlane{n: [3]float32{0, -s, -g}}
		return planes
	}
	planes[1] = clipPlane{n: [3]float32{0, 0, 1}, d: float32(v.near + 0.999/v.depthPerUnit)}
	planes[2] = clipPlane{n: [3]float32{s, 0, 0}, d: g}
	planes[3] = clipPlane{n: [3]float32{-s, 0, 0}, d: g}
	planes[4] = clipPlane{n: [3]float32{0, s, 0}, d: g}
	planes[5] = clipPlane{n: [3]float32{0, -s, 0}, d: g}
	return planes
}

// clipAgainst cuts a convex polygon (Sutherland and Hodgman, Reentrant Polygon
// Clipping, 1974). A crossing is always computed from the kept corner to the
// dropped one, so that two triangles sharing the edge find the same point.
func clipAgainst(out, poly []clipVertex, pl clipPlane) []clipVertex {
	distance := func(a *clipVertex) float32 {
		return pl.n[0]*a.p[0] + pl.n[1]*a.p[1] + pl.n[2]*a.p[2] + pl.d
	}
	for i := range poly {
		a, b := &poly[i], &poly[(i+1)%len(poly)]
		da, db := distance(a), distance(b)
		if da >= 0 {
			out = append(out, *a)
		}
		if da >= 0 && db < 0 {
			out = append(out, between(a, b, da/(da-db)))
		} else if da < 0 && db >= 0 {
			out = append(out, between(b, a, db/(db-da)))
		}
	}
	return out
}

func between(a, b *clipVertex, t float32) clipVertex {
	var c clipVertex
	for i := range 3 {
		c.p[i] = a.p[i] + t*(b.p[i]-a.p[i])
		c.normal[i] = a.normal[i] + t*(b.normal[i]-a.normal[i])
	}
	c.openSky = a.openSky + t*(b.openSky-a.openSky)
	return c
}

// project finishes a clipped corner. It refuses what is still no number or
// outside, which only input that is not finite can cause.
func (a *clipVertex) project(o *vertex, v *view) bool {
	o.normal, o.openSky = a.normal, a.openSky
	var px, py float32
	if v.perspective {
		// Clipping may leave a corner a rounding before Near.
		z := min(a.p[2], -float32(v.near))
		// Just as transform does it, so that a corner that was not cut stays put.
		invZ := -1 / z
		px = float32(v.centreX) + float32(v.scale)*a.p[0]*invZ
		py = float32(v.centreY) - float32(v.scale)*a.p[1]*invZ
		o.key = v.near / -float64(z)
	} else {
		px = float32(v.centreX) + float32(v.scale)*a.p[0]
		py = float32(v.centreY) - float32(v.scale)*a.p[1]
		o.key = min(1+(float64(a.p[2])+v.near)*v.depthPerUnit, 1)
	}
	o.place(px, py, v)
	return o.out&outClip == 0 && o.key > 0
}
