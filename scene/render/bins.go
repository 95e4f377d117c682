// This file holds the bins: which triangles touch which tile.

package render

// The picture is cut into tiles. A tile also looks at one more column on its
// left and one more row above, because outlines compare a pixel with these two
// neighbours; so each tile can be finished alone.
const (
	tileBits = 6
	tileSize = 1 << tileBits
	apron    = 1

	tileColumns = tileSize + apron             // of a tile's buffer of samples
	tileRows    = (tileSize + apron) * samples // sample rows of it
	tilePixels  = tileColumns * tileColumns
)

// Layers of samples: the solids, and a back and a front layer for either shell.
const (
	layerSolid = 0
	layerGhost = layers - 1 // the front layer of the second shell
	shells     = 2
	layers     = 1 + 2*shells
)

// laneCount is into how many shares set-up is cut. A lane's share does not
// depend on which worker takes it, so its bins settle at one size and warm
// pictures allocate nothing.
const laneCount = 8

// binSet is what set-up leaves for the tiles, for still or for moving parts.
type binSet struct {
	lanes [laneCount]lane
}

// lane is one share of set-up: its triangles, and for every layer and tile the
// numbers of those that touch it.
type lane struct {
	work      []span
	triangles []rasterTriangle
	bins      [layers][][]uint32
	used      [layers]bool
	bounds    []tileRect // for moving parts: of each tile's pixels, those its triangles can change

	// The triangle at hand.
	corners  [3]corner
	gradient gradient
	lit      bool // its light is taken from its corners
}

// span is a run of triangles or vertices of one part.
type span struct{ part, lo, hi int }

// tileRect is a rectangle of a tile's pixels, x0 <= x < x1.
type tileRect struct{ x0, y0, x1, y1 int16 }

var wholeTile = tileRect{0, 0, tileSize, tileSize}

// and is the smallest rectangle that holds both; an empty one adds nothing.
func (a tileRect) and(b tileRect) tileRect {
	if a.x0 >= a.x1 {
		return b
	}
	if b.x0 >= b.x1 {
		return a
	}
	return tileRect{min(a.x0, b.x0), min(a.y0, b.y0), max(a.x1, b.x1), max(a.y1, b.y1)}
}

// reset empties the set for a picture of the given number of tiles.
func (s *binSet) reset(tiles int, bounded bool) {
	for i := range s.lanes {
		l := &s.lanes[i]
		l.work = l.work[:0]
		l.triangles = l.triangles[:0]
		if bounded {
			l.bounds = resize(l.bounds, tiles)
			clear(l.bounds)
		}
		for k := range l.bins {
			if len(l.bins[k]) != tiles {
				l.bins[k] = make([][]uint32, tiles)
				continue
			}
			if !l.used[k] {
				continue
			}
			for t := range l.bins[k] {
				l.bins[k][t] = l.bins[k][t][:0]
			}
		}
		l.used = [layers]bool{}
	}
}

// share deals the triangles of the listed parts out to the lanes in runs.
func (s *binSet) share(parts []Part, list []int) {
	total := 0
	for _, i := range list {
		total += len(parts[i].Mesh.Triangles)
	}
	perLane := (total + laneCount - 1) / laneCount
	at, room := 0, perLane
	for _, i := range list {
		for lo, n := 0, len(parts[i].Mesh.Triangles); lo < n; {
			if room == 0 && at < laneCount-1 {
				at, room = at+1, perLane
			}
			hi := n
			if at < laneCount-1 {
				hi = min(n, lo+room)
			}
			s.lanes[at].work = append(s.lanes[at].work, span{i, lo, hi})
			room -= hi - lo
			lo = hi
		}
	}
}

// bin notes the last triangle in every tile it may touch; one that touches none
// is dropped.
func (l *lane) bin(r *Renderer, layer int) {
	n := len(l.triangles) - 1
	t := &l.triangles[n]
	left, right := min(t.x[0], t.x[1], t.x[2])>>subpixelBits, max(t.x[0], t.x[1], t.x[2])>>subpixelBits
	top, bottom := t.y[0]>>subpixelBits, t.y[2]>>subpixelBits
	if right < 0 || bottom < 0 || left >= int32(r.view.width) || top >= int32(r.view.height) {
		l.triangles = l.triangles[:n]
		return
	}
	tx0, tx1 := max(left, 0)>>tileBits, min((right+apron)>>tileBits, int32(r.tilesX)-1)
	ty0, ty1 := max(top, 0)>>tileBits, min((bottom+apron)>>tileBits, int32(r.tilesY)-1)
	l.used[layer] = true
	bins := l.bins[layer]
	for ty := ty0; ty <= ty1; ty++ {
		for tx := tx0; tx <= tx1; tx++ {
			k := ty*int32(r.tilesX) + tx
			bins[k] = append(bins[k], uint32(n))
			if l.bounds != nil {
				// One pixel more to the right and below: outlines.
				x, y := tx<<tileBits, ty<<tileBits
				l.bounds[k] = l.bounds[k].and(tileRect{
					int16(max(left-x, 0)), int16(max(top-y, 0)),
					int16(min(right+2-x, tileSize)), int16(min(bottom+2-y, tileSize)),
				})
			}
		}
	}
}

// touches reports whether any triangle of a layer is noted in a tile.
func (s *binSet) touches(layer, tile int) bool {
	for i := range s.lanes {
		if l := &s.lanes[i]; l.used[layer] && len(l.bins[layer][tile]) > 0 {
			return true
		}
	}
	return false
}

// touchesAny is touches for any layer.
func (s *binSet) touchesAny(tile int) bool {
	for layer := range layers {
		if s.touches(layer, tile) {
			return true
		}
	}
	return false
}

// changes is the rectangle of a tile's pixels that the set can change.
func (s *binSet) changes(tile int) (r tileRect) {
	for i := range s.lanes {
		r = r.and(s.lanes[i].bounds[tile])
	}
	return r
}
