// This file holds the painter: coverage to pixels, and back again.

package render

import (
	"image/color"

	"github.com/go-gl/mathgl/mgl64"
)

// painter draws marks. A mark first gathers its coverage in mask, the largest
// where its pieces overlap, and is then blended once, so joints of a
// translucent line do not show. What lay under the marks is kept by tile and
// put back before the next picture, because the drag cache counts on it.
type painter struct {
	r     *Renderer
	mask  []uint8
	marks []int32 // tiles the present mark touches
	isOn  []bool  // whether a tile is among them
	under []keptTile
	bytes []uint8 // pixels of the kept tiles
	kept  []bool  // whether a tile is kept
	// plates are those of the labels so far.
	plates []plateBox
}

type keptTile struct{ tile, at int }

// begin makes ready for a picture; restore must have run before.
func (p *painter) begin(r *Renderer) {
	p.r = r
	tiles := r.tilesX * r.tilesY
	if n := r.view.width * r.view.height; len(p.mask) != n {
		p.mask = make([]uint8, n)
	}
	if len(p.isOn) != tiles {
		p.isOn, p.kept = make([]bool, tiles), make([]bool, tiles)
	}
}

// restore puts back what the marks of the last picture cover. With keep false
// the picture is about to be redrawn wholly and nothing need be put back.
func (p *painter) restore(pix []uint8, keep bool) {
	for _, k := range p.under {
		p.kept[k.tile] = false
		if keep {
			p.copyTile(k, pix, false)
		}
	}
	p.under, p.bytes = p.under[:0], p.bytes[:0]
}

// keep saves a tile's pixels unless that was done.
func (p *painter) keep(tile int) {
	if p.kept[tile] {
		return
	}
	p.kept[tile] = true
	k := keptTile{tile, len(p.bytes)}
	for range 4 * tileSize * tileSize / len(emptyBytes) {
		p.bytes = append(p.bytes, emptyBytes[:]...)
	}
	p.under = append(p.under, k)
	p.copyTile(k, p.r.pix, true)
}

var emptyBytes [4096]uint8

// copyTile copies a tile from the picture or back.
func (p *painter) copyTile(k keptTile, pix []uint8, save bool) {
	r := p.r
	x, y := k.tile%r.tilesX*tileSize, k.tile/r.tilesX*tileSize
	wide, high := min(tileSize, r.view.width-x), min(tileSize, r.view.height-y)
	for row := range high {
		at := 4 * ((y+row)*r.view.width + x)
		picture := pix[at : at+4*wide]
		own := p.bytes[k.at+4*tileSize*row:][:4*wide]
		if save {
			copy(own, picture)
		} else {
			copy(picture, own)
		}
	}
}

// row announces that columns x0 to x1-1 of a row are about to be covered and
// returns the mask's part for them.
func (p *painter) row(x0, x1, y int) []uint8 {
	for tx := x0 >> tileBits; tx <= (x1-1)>>tileBits; tx++ {
		tile := y>>tileBits*p.r.tilesX + tx
		if !p.isOn[tile] {
			p.isOn[tile] = true
			p.marks = append(p.marks, int32(tile))
		}
	}
	at := y * p.r.view.width
	return p.mask[at+x0 : at+x1]
}

// blend paints the mask in a colour and clears it.
func (p *painter) blend(c color.NRGBA) {
	r := p.r
	for _, tile := range p.marks {
		p.isOn[tile] = false
		p.keep(int(tile))
		x, y := int(tile)%r.tilesX*tileSize, int(tile)/r.tilesX*tileSize
		wide, high := min(tileSize, r.view.width-x), min(tileSize, r.view.height-y)
		for row := range high {
			at := (y+row)*r.view.width + x
			mask, pix := p.mask[at:at+wide], r.pix[4*at:4*(at+wide)]
			for i, m := range mask {
				if m == 0 {
					continue
				}
				mask[i] = 0
				blendPixel(pix[4*i:4*i+4], c, uint32(m)*uint32(c.A))
			}
		}
	}
	p.marks = p.marks[:0]
}

// blendPixel mixes a colour in; weight is of 255 x 255.
func blendPixel(pix []uint8, c color.NRGBA, weight uint32) {
	const full = 255 * 255
	keep := full - weight
	pix[0] = uint8((uint32(pix[0])*keep + uint32(c.R)*weight + full/2) / full)
	pix[1] = uint8((uint32(pix[1])*keep + uint32(c.G)*weight + full/2) / full)
	pix[2] = uint8((uint32(pix[2])*keep + uint32(c.B)*weight + full/2) / full)
}

// place is a point of a mark in the picture. The key is above 1 for flat marks:
// nothing hides them.
type place struct{ x, y, key float32 }

const flatKey = 2

// project takes a mark's point to the picture; ok is false before Near.
func (p *painter) project(at mgl64.Vec3, flat bool) (q place, ok bool) {
	if flat {
		return place{float32(at[0]), float32(at[1]), flatKey}, true
	}
	v := &p.r.view
	a := v.m.Apply(at)
	if -a[2] < v.near {
		return q, false
	}
	x, y, key := v.project(a)
	return place{float32(x), float32(y), float32(key)}, true
}

// projectPiece is project for a straight piece: the part before Near is cut off.
func (p *painter) projectPiece(from, to mgl64.Vec3, flat bool) (a, b place, ok bool) {
	if flat {
		a, _ = p.project(from, true)
		b, _ = p.project(to, true)
		return a, b, true
	}
	v := &p.r.view
	f, t := v.m.Apply(from), v.m.Apply(to)
	df, dt := -f[2]-v.near, -t[2]-v.near
	if df < 0 && dt < 0 {
		return a, b, false
	}
	if df < 0 {
		f = f.Add(t.Sub(f).Mul(df / (df - dt)))
		f[2] = -v.near
	} else if dt < 0 {
		t = t.Add(f.Sub(t).Mul(dt / (dt - df)))
		t[2] = -v.near
	}
	x, y, key := v.project(f)
	a = place{float32(x), float32(y), float32(key)}
	x, y, key = v.project(t)
	return a, place{float32(x), float32(y), float32(key)}, true
}
