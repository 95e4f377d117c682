// This file holds the third stage: one tile from bins to pixels.

package render

// draw finishes one tile.
func (t *tiler) draw(tile int) {
	r := t.r
	tileX, tileY := tile%r.tilesX, tile/r.tilesX
	t.window = tileWindow{int64(tileX*tileSize - apron), int64(tileY*tileSize - apron)}
	slot := r.cache.slots[tile]
	t.overs = 0
	for layer := range layers {
		still, moving := r.still.touches(layer, tile), r.moving.touches(layer, tile)
		if layer != layerSolid {
			if !still && !moving {
				continue
			}
			t.over[t.overs] = layer
			t.overs++
		}
		t.fillLayer(layer, tile, slot, still, moving)
	}
	if slot != nil {
		slot.filled = true
	}
	t.resolve(tileX, tileY)
}

// fillLayer brings a layer's samples into the tile's buffer: those of the still
// parts from the cache's slot, if it has them, and the moving parts' on top.
func (t *tiler) fillLayer(layer, tile int, slot *slot, still, moving bool) {
	r, buf := t.r, t.buf[layer]
	switch {
	case !still:
		clear(buf)
	case slot != nil && slot.filled:
		copy(buf, slot.samples[layer])
	default:
		clear(buf)
		t.rasterise(&r.still, layer, tile)
		if slot != nil {
			slot.samples[layer] = append(slot.samples[layer][:0], buf...)
		}
	}
	if moving {
		t.rasterise(&r.moving, layer, tile)
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
