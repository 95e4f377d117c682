// This file holds the translucent layers, laid over the solids.

package render

// cover lays the translucent layers over a pixel. Each shell holds in each
// sample its nearest back face and its nearest front face, drawn like solids
// but kept apart; here they are compared with the solids, so no triangle is
// ever sorted. The pixel's layers are laid from the farthest to the nearest.
//
// A layer that covers some of the pixel's samples covers that share of its
// colour: exact but where a solid's edge runs through the same pixel.
func (t *tiler) cover(p *pixel, at, x, y int, solid *[samples]uint64) {
	var keys [layers]uint64
	var order [layers]int
	n := 0
	for layer := 1; layer < layers; layer++ {
		if !t.filled[layer] {
			continue
		}
		key := t.nearestUncovered(layer, at, solid)
		if key == 0 {
			continue
		}
		i := n
		for ; i > 0 && keys[i-1] > key; i-- {
			keys[i], order[i] = keys[i-1], order[i-1]
		}
		keys[i], order[i] = key, layer
		n++
	}
	for _, layer := range order[:n] {
		t.lay(p, layer, at, x, y, solid)
	}
}

// nearestUncovered is the nearest sample of a layer that no solid hides, 0 for
// none.
func (t *tiler) nearestUncovered(layer, at int, solid *[samples]uint64) (key uint64) {
	buf := t.buf[layer][at:][:3*tileColumns+1]
	for s, hides := range solid {
		if v := buf[s*tileColumns]; v > hides {
			key = max(key, v)
		}
	}
	return key
}

// lay blends one layer over the pixel.
func (t *tiler) lay(p *pixel, layer, at, x, y int, solid *[samples]uint64) {
	buf := t.buf[layer][at:][:3*tileColumns+1]
	k0, k1, k2, k3 := buf[0], buf[tileColumns], buf[2*tileColumns], buf[3*tileColumns]
	if ((k0^k1)|(k0^k2)|(k0^k3))&idMask == 0 && k0 > solid[0] && k1 > solid[1] && k2 > solid[2] && k3 > solid[3] {
		p.over(&t.r.shades[k0&idMask-1], float32(x)+0.5, float32(y)+0.5)
		return
	}
	under := *p
	p.r, p.g, p.b = 0, 0, 0
	for i, hides := range solid {
		q := under
		if v := buf[i*tileColumns]; v > hides {
			q.over(&t.r.shades[v&idMask-1], float32(x)+sampleAtX[i], float32(y)+sampleAtY[i])
		}
		p.r += q.r * (1.0 / samples)
		p.g += q.g * (1.0 / samples)
		p.b += q.b * (1.0 / samples)
	}
}

// over lays premultiplied colour over the pixel.
func (p *pixel) over(s *shadeTriangle, x, y float32) {
	a := &s.attribute
	keep := 1 - a[3].at(x, y)
	p.r = p.r*keep + a[0].at(x, y)
	p.g = p.g*keep + a[1].at(x, y)
	p.b = p.b*keep + a[2].at(x, y)
}
