// This file holds resolving: from a tile's samples to pixels.

package render

import "encoding/binary"

// tiler is one worker's own memory for a tile.
type tiler struct {
	r      *Renderer
	window tileWindow
	buf    [layers][]uint64
	filled [layers]bool // whether the layer holds anything in this tile
	// What the outline pass compares: the surface of each pixel of the row
	// above, and of the pixel on the left; mixed where samples differ.
	above [tileSize]uint32
	left  uint32
}

// Surface 0 of part 0 would be 0; ids of pixels are therefore one more.
const (
	surfaceNone  = 0
	surfaceMixed = ^uint32(0)
)

func newTiler(r *Renderer) *tiler {
	t := &tiler{r: r}
	for i := range t.buf {
		t.buf[i] = make([]uint64, tileRows*tileColumns)
	}
	return t
}

// pixel is a pixel on its way to the picture.
type pixel struct {
	r, g, b float32
	surface uint32
	nearest uint32 // id of the nearest sample's triangle, 0 for none
}

// resolve writes the tile's pixels and its part of the id buffer.
func (t *tiler) resolve(tileX, tileY int) {
	r := t.r
	x0, y0 := tileX*tileSize, tileY*tileSize
	wide, high := min(tileSize, r.view.width-x0), min(tileSize, r.view.height-y0)
	for i := range t.above {
		t.above[i] = surfaceMixed // the row above belongs to another tile: look at its samples
	}
	for y := range high {
		at := (y0+y)*r.view.width + x0
		t.left = surfaceMixed
		t.resolveRow(x0, y0+y, (y+apron)*samples*tileColumns+apron, r.pix[4*at:4*(at+wide)], r.front[at:at+wide])
	}
}

// resolveRow writes one row of the tile; at is where its first sample lies.
func (t *tiler) resolveRow(x0, y, at int, pix []uint8, front []uint32) {
	r := t.r
	solid := t.buf[layerSolid]
	wide := len(front)
	row0 := solid[at:][:wide]
	row1 := solid[at+tileColumns:][:wide]
	row2 := solid[at+2*tileColumns:][:wide]
	row3 := solid[at+3*tileColumns:][:wide]
	ground := &r.ground[y]
	translucent := t.filled[1] || t.filled[2] || t.filled[3] || t.filled[4]
	centreY := float32(y) + 0.5
	for x := range front {
		a, b, c, d := row0[x], row1[x], row2[x], row3[x]
		var p pixel
		centreX := float32(x0+x) + 0.5
		switch {
		case a|b|c|d == 0:
			front[x] = 0
			if !translucent && t.left == surfaceNone && t.above[x] == surfaceNone {
				binary.LittleEndian.PutUint32(pix[4*x:], ground.pixel[(x0+x)&7])
				continue
			}
			p.r, p.g, p.b = ground.rgb[0], ground.rgb[1], ground.rgb[2]
		case ((a^b)|(a^c)|(a^d))&idMask == 0:
			p.nearest = uint32(a & idMask)
			s := &r.shades[p.nearest-1]
			p.surface = s.surface + 1
			p.r, p.g, p.b = r.shadeAt(s, centreX, centreY)
		default:
			t.mixed(&p, [samples]uint64{a, b, c, d}, x0+x, y)
		}
		front[x] = p.nearest
		if translucent {
			t.cover(&p, at+x, x0+x, y, [samples]uint64{a, b, c, d})
		}
		if p.surface != t.left || p.surface != t.above[x] || p.surface == surfaceMixed {
			t.outline(&p, at+x, x0+x, y)
		}
		t.left, t.above[x] = p.surface, p.surface
		binary.LittleEndian.PutUint32(pix[4*x:],
			uint32(toneByte(p.r))|uint32(toneByte(p.g))<<8|uint32(toneByte(p.b))<<16|0xff000000)
	}
}

// shadeAt shades a solid triangle at a picture position.
func (r *Renderer) shadeAt(s *shadeTriangle, x, y float32) (red, green, blue float32) {
	a := &s.attribute
	return r.lamp.solid(&r.materials[s.surface>>16], a[0].at(x, y), a[1].at(x, y), a[2].at(x, y), a[3].at(x, y))
}

// mixed shades a pixel whose samples belong to different triangles: once for
// each smooth surface among them. It is always shaded at a sample the triangle
// covers, for a plane extended beyond its triangle can have any value.
func (t *tiler) mixed(p *pixel, s [samples]uint64, x, y int) {
	r := t.r
	p.nearest = uint32(max(s[0], s[1], s[2], s[3]) & idMask)
	p.surface = r.surfaceOf(s[0])
	var colour [samples][3]float32
	for i, v := range s {
		j := 0
		for j < i && !r.sameSurface(&s, j, i, x, y) {
			j++
		}
		switch {
		case j < i:
			colour[i] = colour[j]
		case v == 0:
			colour[i] = r.ground[y].rgb
		default:
			sx, sy := samplePlace(x, y, i)
			red, green, blue := r.shadeAt(&r.shades[v&idMask-1], sx, sy)
			colour[i] = [3]float32{red, green, blue}
		}
		p.r += colour[i][0]
		p.g += colour[i][1]
		p.b += colour[i][2]
		if i > 0 && j > 0 {
			p.surface = surfaceMixed
		}
	}
	p.r, p.g, p.b = p.r/samples, p.g/samples, p.b/samples
}

// samplePlace is where a pixel's sample lies in the picture.
func samplePlace(x, y, sample int) (sx, sy float32) {
	return float32(x) + float32(sampleX[sample])/subpixel, float32(y) + float32(sampleY[sample])/subpixel
}

// surfaceOf is the surface a sample shows, plus one; 0 for none.
func (r *Renderer) surfaceOf(v uint64) uint32 {
	if v == 0 {
		return surfaceNone
	}
	return r.shades[v&idMask-1].surface + 1
}

// sameSurface reports whether two samples of a pixel can share one shading:
// they are of one triangle, or of one smooth surface that does not pass behind
// itself between them. For the latter either triangle's plane must foretell the
// other sample's depth to within half a pixel along its slope. A wrong no costs
// a shading; a wrong yes would leave a jagged edge.
func (r *Renderer) sameSurface(s *[samples]uint64, i, j, x, y int) bool {
	a, b := s[i]&idMask, s[j]&idMask
	if a == b {
		return true
	}
	if a == 0 || b == 0 {
		return false
	}
	sa, sb := &r.shades[a-1], &r.shades[b-1]
	if sa.surface != sb.surface {
		return false
	}
	xi, yi := samplePlace(x, y, i)
	xj, yj := samplePlace(x, y, j)
	ki, kj := float32(s[i]>>idBits)/keyScale, float32(s[j]>>idBits)/keyScale
	slack := r.slackOfKey*ki + r.slack
	return abs32(sa.key.at(xj, yj)-kj) <= slack+0.5*(abs32(sa.key.a)+abs32(sa.key.b)) &&
		abs32(sb.key.at(xi, yi)-ki) <= slack+0.5*(abs32(sb.key.a)+abs32(sb.key.b))
}

func abs32(x float32) float32 { return max(x, -x) }
