// This file holds the third stage: one tile from bins to pixels.

package render

// draw finishes one tile, or the rectangle of it that needs redoing.
func (t *tiler) draw(d dirtyTile) {
	r := t.r
	tileX, tileY := d.tile%r.tilesX, d.tile/r.tilesX
	t.window = tileWindow{int64(tileX*tileSize - apron), int64(tileY*tileSize - apron)}
	slot := r.cache.slots[d.tile]
	t.overs, t.ghosts = 0, false
	if !r.still.touchesAny(d.tile) && !r.moving.touchesAny(d.tile) {
		t.bare(tileX*tileSize, tileY*tileSize, d.redo)
		return
	}
	for layer := range layers {
		still, moving := r.still.touches(layer, d.tile), r.moving.touches(layer, d.tile)
		if layer != layerSolid {
			if !still && !moving {
				continue
			}
			t.over[t.overs] = layer
			t.overs++
			t.ghosts = t.ghosts || layer == layerGhost && r.line.ghost > 0
		}
		t.fillLayer(layer, d, slot, still, moving)
	}
	if slot != nil {
		slot.filled = true
	}
	t.resolve(tileX*tileSize, tileY*tileSize, d.redo)
}

// fillLayer brings a layer's samples into the tile's buffer: those of the still
// parts from the cache's slot, if it has them, and the moving parts' on top.
func (t *tiler) fillLayer(layer int, d dirtyTile, slot *slot, still, moving bool) {
	r, buf := t.r, t.buf[layer]
	switch {
	case !still:
		d.redo.samples(func(lo, hi int) { clear(buf[lo:hi]) })
	case slot != nil && slot.filled:
		kept := slot.samples[layer]
		d.redo.samples(func(lo, hi int) { copy(buf[lo:hi], kept[lo:hi]) })
	default:
		clear(buf)
		t.rasterise(&r.still, layer, d.tile)
		if slot != nil {
			slot.samples[layer] = append(slot.samples[layer][:0], buf...)
		}
	}
	if moving {
		t.rasterise(&r.moving, layer, d.tile)
	}
}

// samples calls f for each run of a buffer that the rectangle's pixels depend
// on: their own samples and those of the pixels on their left and above.
func (a tileRect) samples(f func(lo, hi int)) {
	if a == wholeTile {
		f(0, tilePixels)
		return
	}
	lo, hi := int(a.x0), int(a.x1)+apron
	for row := int(a.y0); row < int(a.y1)+apron; row++ {
		f(row*tileColumns+lo, row*tileColumns+hi)
	}
}

func (t *tiler) rasterise(set *binSet, layer, tile int) {
	buf := t.buf[layer]
	for i := range set.lanes {
		l := &set.lanes[i]
		if !l.used[layer] {
			continue
		}
		for _, n := range l.bins[layer][tile] {
			t.window.rasterise(buf, &l.triangles[n])
		}
	}
}
