// This file holds resolving: from a tile's samples to pixels.

package render

import "encoding/binary"

// tiler is one worker's own memory for a tile.
type tiler struct {
	r      *Renderer
	window tileWindow
	buf    [layers][]quad
	// above is the surface of each pixel of the row above, surfaceMixed where its
	// samples differ: where a pixel's neighbours are all like it no outline runs.
	above  [tileSize]uint32
	out    pixel
	over   [layers]int    // the translucent layers that hold something in this tile
	overs  int            // how many they are
	ghosts bool           // whether there are ghosts among them, with outlines
	keys   [layers]uint64 // see cover
	order  [layers]int
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
	r, g, b float32 // its light, unless inked
	ink     uint32  // its finished bytes, if inked
	inked   bool
	surface uint32
	nearest uint32 // id of the nearest sample's triangle, 0 for none
}

// within cuts a tile's rectangle to the picture; (x0, y0) is the tile's first
// pixel.
func (a tileRect) within(v *view, x0, y0 int) (fromX, toX, fromY, toY int) {
	return int(a.x0), min(int(a.x1), v.width-x0), int(a.y0), min(int(a.y1), v.height-y0)
}

// resolve writes a rectangle of the tile's pixels, and of the id buffer.
func (t *tiler) resolve(x0, y0 int, redo tileRect) {
	r := t.r
	fromX, toX, fromY, toY := redo.within(&r.view, x0, y0)
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

// bare writes a rectangle of a tile in which there is nothing at all.
func (t *tiler) bare(x0, y0 int, redo tileRect) {
	r := t.r
	fromX, toX, fromY, toY := redo.within(&r.view, x0, y0)
	if fromX >= toX {
		return
	}
	for y := y0 + fromY; y < y0+toY; y++ {
		at := y*r.view.width + x0
		front, pix := r.front[at+fromX:at+toX], r.pix[4*(at+fromX):4*(at+toX)]
		clear(front)
		ground := &r.ground[y].pixel
		for i := range front {
			binary.LittleEndian.PutUint32(pix[4*i:], ground[(x0+fromX+i)&7])
		}
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
		open := t.overs == 0 || t.isOpen(at+x, s)
		if open && !t.ghosts {
			if around == surfaceNone && s[0]|s[1]|s[2]|s[3] == 0 {
				front[x], left = 0, surfaceNone
				binary.LittleEndian.PutUint32(pix[4*x:], ground.pixel[(x0+x)&7])
				continue
			}
			if id := uint32(s[0] & idMask); id != 0 && oneTriangle(s) {
				own := &shades[id-1]
				if own.surface+1 == around && own.lit {
					front[x] = id
					binary.LittleEndian.PutUint32(pix[4*x:], own.ink.at(int32(x0+x)*eighths+eighths/2, int32(y)*eighths+eighths/2))
					continue
				}
			}
		}
		t.pixel(p, s, at+x, x0+x, y, around, open)
		front[x], left, above[x] = p.nearest, p.surface, p.surface
		if !p.inked {
			p.ink = tonePixel(p.r, p.g, p.b)
		}
		binary.LittleEndian.PutUint32(pix[4*x:], p.ink)
	}
}

// isOpen reports that no translucent layer shows before a pixel's solids.
func (t *tiler) isOpen(at int, s *quad) bool {
	for _, layer := range t.over[:t.overs] {
		if !hidden(&t.buf[layer][at], s) {
			return false
		}
	}
	return true
}

// pixel takes one pixel through all its stages: solids, translucent layers,
// outline. around is the surface that its three neighbours before it share; open
// says that no layer shows before it.
func (t *tiler) pixel(p *pixel, s *quad, at, x, y int, around uint32, open bool) {
	r := t.r
	switch {
	case s[0]|s[1]|s[2]|s[3] == 0:
		p.surface, p.nearest = surfaceNone, 0
		p.ink, p.inked = r.ground[y].pixel[x&7], true
	case oneTriangle(s):
		p.nearest = uint32(s[0] & idMask)
		own := &r.shades[p.nearest-1]
		p.surface = own.surface + 1
		r.shade(p, own, int32(x)*eighths+eighths/2, int32(y)*eighths+eighths/2)
	default:
		t.mixed(p, s, x, y)
	}
	if !open {
		t.cover(p, at, x, y, s)
	}
	if p.surface != around || around == surfaceMixed {
		t.outline(p, at, x, y)
	}
	if t.ghosts {
		t.ghostOutline(p, at, x, y, s)
	}
}

// shade shades a solid triangle at a position in eighths of a pixel.
func (r *Renderer) shade(p *pixel, s *shadeTriangle, x, y int32) {
	if s.lit {
		p.ink, p.inked = s.ink.at(x, y), true
		return
	}
	a, px, py := &s.attribute, float32(x)*(1.0/eighths), float32(y)*(1.0/eighths)
	p.inked = false
	p.r, p.g, p.b = r.lamp.solid(&r.materials[s.surface>>16], a[0].at(px, py), a[1].at(px, py), a[2].at(px, py), a[3].at(px, py))
}
