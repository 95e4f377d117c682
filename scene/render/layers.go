// This file holds the translucent layers, laid over the solids.

package render

// cover lays the translucent layers over a pixel. Each shell holds in each
// sample its nearest back face and its nearest front face, drawn like solids
// but kept apart; here they are compared with the solids, so no triangle is
// ever sorted. The pixel's layers are laid from the farthest to the nearest.
//
// The solids' light is already averaged over the pixel. A layer that covers some
// samples is blended into that average sample by sample: exact but where a
// solid's edge runs through the same pixel.
func (t *tiler) cover(p *pixel, at, x, y int, solid *quad) {
	if t.overs == 2 && t.coverPair(p, at, x, y, solid) {
		return
	}
	n := 0
	for _, layer := range t.over[:t.overs] {
		q := &t.buf[layer][at]
		if q[0]|q[1]|q[2]|q[3] == 0 {
			continue
		}
		key, whole := q[0], before(q, solid)
		if !whole {
			if key = nearestUncovered(q, solid); key == 0 {
				continue
			}
		}
		i := n
		for ; i > 0 && t.keys[i-1] > key; i-- {
			t.keys[i], t.order[i] = t.keys[i-1], t.order[i-1]
		}
		t.keys[i], t.order[i] = key, layer
		if whole {
			t.order[i] = layerWhole
		}
		n++
	}
	if n == 0 {
		return
	}
	p.light()
	for i, layer := range t.order[:n] {
		if layer == layerWhole {
			p.lay(&t.r.shades[t.keys[i]&idMask-1], float32(x)+0.5, float32(y)+0.5)
			continue
		}
		t.layPartly(p, &t.buf[layer][at], x, y, solid)
	}
}

// coverPair is cover for the common pixel: in a tile of two layers, the nearer
// has one triangle before all the samples, the farther too or it does not show.
// It returns false for others.
func (t *tiler) coverPair(p *pixel, at, x, y int, solid *quad) bool {
	far, near := &t.buf[t.over[0]][at], &t.buf[t.over[1]][at]
	if far[0] > near[0] {
		far, near = near, far
	}
	farShows := before(far, solid)
	if !before(near, solid) || !farShows && !hidden(far, solid) {
		return false
	}
	p.light()
	px, py := float32(x)+0.5, float32(y)+0.5
	r, g, b := p.r, p.g, p.b
	if farShows {
		a := &t.r.shades[far[0]&idMask-1].attribute
		keep := 1 - a[3].at(px, py)
		r, g, b = r*keep+a[0].at(px, py), g*keep+a[1].at(px, py), b*keep+a[2].at(px, py)
	}
	a := &t.r.shades[near[0]&idMask-1].attribute
	keep := 1 - a[3].at(px, py)
	p.r, p.g, p.b = r*keep+a[0].at(px, py), g*keep+a[1].at(px, py), b*keep+a[2].at(px, py)
	return true
}

// before reports whether one triangle of a layer covers all of a pixel's samples
// and lies before the solids in each.
func before(q, solid *quad) bool {
	return oneTriangle(q) && q[0] > solid[0] && q[1] > solid[1] && q[2] > solid[2] && q[3] > solid[3]
}

// hidden reports whether a layer shows in none of a pixel's samples.
func hidden(q, solid *quad) bool {
	return q[0] <= solid[0] && q[1] <= solid[1] && q[2] <= solid[2] && q[3] <= solid[3]
}

// layerWhole stands in cover's order for a layer of which one triangle covers the
// whole pixel: its key tells the triangle.
const layerWhole = -1

// oneTriangle reports whether all samples of a pixel show the same triangle, or
// all nothing.
func oneTriangle(q *quad) bool { return ((q[0]^q[1])|(q[0]^q[2])|(q[0]^q[3]))&idMask == 0 }

// nearestUncovered is the nearest sample of a layer's pixel that no solid hides,
// 0 for none.
func nearestUncovered(q, solid *quad) (key uint64) {
	for s, hides := range solid {
		if q[s] > hides {
			key = max(key, q[s])
		}
	}
	return key
}

// layPartly lays a layer over the pixel sample by sample, unless all of them show
// one smooth surface.
func (t *tiler) layPartly(p *pixel, s *quad, x, y int, solid *quad) {
	if s[0] > solid[0] && s[1] > solid[1] && s[2] > solid[2] && s[3] > solid[3] && t.r.oneSurface(s, max(s[0], s[1], s[2], s[3])) {
		p.lay(&t.r.shades[s[0]&idMask-1], float32(x)+sampleAtX[0], float32(y)+sampleAtY[0])
		return
	}
	var r, g, b float32
	for i, hides := range solid {
		q := pixel{r: p.r, g: p.g, b: p.b}
		if v := s[i]; v > hides {
			q.lay(&t.r.shades[v&idMask-1], float32(x)+sampleAtX[i], float32(y)+sampleAtY[i])
		}
		r, g, b = r+q.r, g+q.g, b+q.b
	}
	p.r, p.g, p.b = r*(1.0/samples), g*(1.0/samples), b*(1.0/samples)
}

// lay lays premultiplied light over the pixel.
func (p *pixel) lay(s *shadeTriangle, x, y float32) {
	a := &s.attribute
	keep := 1 - a[3].at(x, y)
	p.r = p.r*keep + a[0].at(x, y)
	p.g = p.g*keep + a[1].at(x, y)
	p.b = p.b*keep + a[2].at(x, y)
}
