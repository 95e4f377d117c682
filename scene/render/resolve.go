// This file holds resolving: from a tile's samples to pixels.

package render

import (
	"encoding/binary"
	"math"
)

// tiler is one worker's own memory for a tile.
type tiler struct {
	r      *Renderer
	window tileWindow
	buf    [layers][]quad
	// above is the surface of each pixel of the row above, surfaceMixed where its
	// samples differ: where a pixel's neighbours are all like it no outline runs.
	above [tileSize]uint32
	out   pixel
	over  [layers]int    // the translucent layers that hold something in this tile
	overs int            // how many they are
	keys  [layers]uint64 // see cover
	order [layers]int
}

// Surface 0 of part 0 would be 0; ids of pixels are therefore one more.
const (
	surfaceNone  = 0
	surfaceMixed = ^uint32(0)
)

func newTiler(r *Renderer) *tiler {
	t := &tiler{r: r}
	for i := range t.buf {
		t.buf[i] = make([]quad, tilePixels+unrolled)
	}
	return t
}

// pixel is a pixel on its way to the picture.
type pixel struct {
	r, g, b float32
	surface uint32
	nearest uint32 // id of the nearest sample's triangle, 0 for none
	bare    bool   // nothing but background
}

// resolve writes a rectangle of the tile's pixels, and of the id buffer; (x0, y0)
// is the tile's first pixel.
func (t *tiler) resolve(x0, y0 int, redo tileRect) {
	r := t.r
	fromX, toX := int(redo.x0), min(int(redo.x1), r.view.width-x0)
	fromY, toY := int(redo.y0), min(int(redo.y1), r.view.height-y0)
	if fromX >= toX {
		return
	}
	for i := range t.above {
		t.above[i] = surfaceMixed // not known: look at its samples
	}
	for y := fromY; y < toY; y++ {
		at := (y0+y)*r.view.width + x0
		t.resolveRow(x0+fromX, y0+y, (y+apron)*tileColumns+apron+fromX,
			r.pix[4*(at+fromX):4*(at+toX)], r.front[at+fromX:at+toX])
	}
}

// resolveRow writes one row of the tile; at is where its first sample lies. The
// two plain kinds of pixel are finished here, background and the inside of a
// solid triangle with nothing over it; all others go through a pixel's stages.
func (t *tiler) resolveRow(x0, y, at int, pix []uint8, front []uint32) {
	r := t.r
	wide := len(front)
	pix = pix[:4*wide]
	solid, above := t.buf[layerSolid][at:][:wide], t.above[:wide]
	ground, shades := &r.ground[y], r.shades
	centreY := float32(y) + 0.5
	left, corner := surfaceMixed, surfaceMixed // of the pixels on the left and above it; not known yet either
	// It lives in the tiler and is handed on by pointer: copying a small struct
	// just written stalls the processor.
	p := &t.out
	for x := range front {
		s := &solid[x]
		around := above[x]
		if left != around || corner != around {
			around = surfaceMixed // not known to be all the same
		}
		corner = above[x]
		if t.overs == 0 || t.isOpen(at+x) {
			if around == surfaceNone && s[0]|s[1]|s[2]|s[3] == 0 {
				front[x], left = 0, surfaceNone
				binary.LittleEndian.PutUint32(pix[4*x:], ground.pixel[(x0+x)&7])
				continue
			}
			if id := uint32(s[0] & idMask); id != 0 && oneTriangle(s) {
				own := &shades[id-1]
				if own.surface+1 == around {
					front[x] = id
					red, green, blue := r.shadeAt(own, float32(x0+x)+0.5, centreY)
					binary.LittleEndian.PutUint32(pix[4*x:], tonePixel(red, green, blue))
					continue
				}
			}
		}
		t.pixel(p, s, at+x, x0+x, y, around)
		front[x], left, above[x] = p.nearest, p.surface, p.surface
		if p.bare {
			binary.LittleEndian.PutUint32(pix[4*x:], ground.pixel[(x0+x)&7])
			continue
		}
		binary.LittleEndian.PutUint32(pix[4*x:], tonePixel(p.r, p.g, p.b))
	}
}

// isOpen reports that no translucent layer holds anything at a pixel.
func (t *tiler) isOpen(at int) bool {
	var any uint64
	for _, layer := range t.over[:t.overs] {
		q := &t.buf[layer][at]
		any |= q[0] | q[1] | q[2] | q[3]
	}
	return any == 0
}

// pixel takes one pixel through all its stages: solids, translucent layers,
// outline. around is the surface that its three neighbours before it share.
func (t *tiler) pixel(p *pixel, s *quad, at, x, y int, around uint32) {
	r := t.r
	p.surface, p.nearest = surfaceNone, 0
	switch {
	case s[0]|s[1]|s[2]|s[3] == 0:
		ground := &r.ground[y]
		p.r, p.g, p.b = ground.rgb[0], ground.rgb[1], ground.rgb[2]
	case oneTriangle(s):
		p.nearest = uint32(s[0] & idMask)
		own := &r.shades[p.nearest-1]
		p.surface = own.surface + 1
		p.r, p.g, p.b = r.shadeAt(own, float32(x)+0.5, float32(y)+0.5)
	default:
		t.mixed(p, s, x, y)
	}
	p.bare = p.nearest == 0
	if t.overs > 0 && t.cover(p, at, x, y, s) {
		p.bare = false
	}
	if p.surface != around || around == surfaceMixed {
		p.bare = !t.outline(p, at, x, y) && p.bare
	}
}

// shadeAt shades a solid triangle at a picture position.
func (r *Renderer) shadeAt(s *shadeTriangle, x, y float32) (red, green, blue float32) {
	a := &s.attribute
	if a[3].a == litMark {
		return a[0].at(x, y), a[1].at(x, y), a[2].at(x, y)
	}
	return r.lamp.solid(&r.materials[s.surface>>16], a[0].at(x, y), a[1].at(x, y), a[2].at(x, y), a[3].at(x, y))
}

// mixed shades a pixel whose samples belong to different triangles: once for
// each smooth surface among them. It is always shaded at a sample the triangle
// covers, for a plane extended beyond its triangle can have any value.
func (t *tiler) mixed(p *pixel, s *quad, x, y int) {
	r := t.r
	nearest := max(s[0], s[1], s[2], s[3])
	p.nearest = uint32(nearest & idMask)
	if s[0] != 0 && s[1] != 0 && s[2] != 0 && s[3] != 0 && r.oneSurface(s, nearest) {
		own := &r.shades[s[0]&idMask-1]
		p.surface = own.surface + 1
		p.r, p.g, p.b = r.shadeAt(own, float32(x)+sampleAtX[0], float32(y)+sampleAtY[0])
		return
	}
	p.surface = surfaceMixed
	p.r, p.g, p.b = 0, 0, 0
	var colour [samples][3]float32
	for i, v := range s {
		j := 0
		for j < i && (s[j]^v)&idMask != 0 {
			j++
		}
		switch {
		case j < i:
			colour[i] = colour[j]
		case v == 0:
			colour[i] = r.ground[y].rgb
		default:
			red, green, blue := r.shadeAt(&r.shades[v&idMask-1], float32(x)+sampleAtX[i], float32(y)+sampleAtY[i])
			colour[i] = [3]float32{red, green, blue}
		}
		p.r += colour[i][0] * (1.0 / samples)
		p.g += colour[i][1] * (1.0 / samples)
		p.b += colour[i][2] * (1.0 / samples)
	}
}

// oneSurface reports whether a pixel's samples, none of them empty, lie on one
// smooth surface that does not pass behind itself: their depths must not differ
// by more than the least steep of their triangles allows over two pixels. A
// wrong no costs a shading; a wrong yes would leave a jagged edge.
func (r *Renderer) oneSurface(s *quad, nearest uint64) bool {
	a, b := &r.shades[s[0]&idMask-1], &r.shades[s[1]&idMask-1]
	c, d := &r.shades[s[2]&idMask-1], &r.shades[s[3]&idMask-1]
	if a.surface != b.surface || a.surface != c.surface || a.surface != d.surface {
		return false
	}
	farthest := min(s[0], s[1], s[2], s[3])
	spread := float32((nearest-farthest)>>idBits) * (1.0 / keyScale)
	slack := r.slack + r.slackOfKey*float32(nearest>>idBits)*(1.0/keyScale)
	least := 0.5 * (spread - slack)
	return a.steepness() >= least && b.steepness() >= least && c.steepness() >= least && d.steepness() >= least
}

// steepness is how much the depth key changes over a pixel, at most.
func (s *shadeTriangle) steepness() float32 { return abs32(s.key.a) + abs32(s.key.b) }

// surfaceOf is the surface a sample shows, plus one; 0 for none.
func (r *Renderer) surfaceOf(v uint64) uint32 {
	if v == 0 {
		return surfaceNone
	}
	return r.shades[v&idMask-1].surface + 1
}

// abs32 clears the sign bit: no branch, no minding of NaN.
func abs32(x float32) float32 { return math.Float32frombits(math.Float32bits(x) &^ (1 << 31)) }
