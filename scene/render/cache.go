// This file holds the drag cache: what stands still is not drawn again.

package render

import (
	"image"
	"image/color"
	"unsafe"
)

// cache remembers the last picture. While only moving parts change, the still
// parts' vertices, bins and shading planes stay; their samples are kept for
// each tile that a moving part has touched; and of the tiles only the rectangle
// is redone that a moving part can change now or could in the last picture.
// Everything a pixel depends on lies in its own samples and those of its left and
// upper neighbour, so the result equals a full redraw.
type cache struct {
	full                    bool // this picture is drawn from nothing
	moved                   bool // a moving part differs from the last picture
	look                    look
	keys                    []partKey
	stillParts, movingParts []int
	touched                 []tileRect // what the moving parts could change in the last picture
	slots                   []*slot
	spare                   []*slot
}

// slot keeps the still samples of one tile.
type slot struct {
	filled  bool
	samples [layers][]quad
}

// look is what every pixel depends on.
type look struct {
	width, height    int
	dst              *uint8
	camera           Camera
	light            Light
	background       Background
	outline          Outline
	parts, triangles int
}

// partKey is what one part's look depends on.
type partKey struct {
	mesh             *Mesh
	revision         uint64
	transform        Affine
	occlusion        *float32
	colour           color.NRGBA
	gloss            float32
	id               uint16
	shell            uint8
	moving, twoSided bool
	drawn            bool
	triBase          int
}

// Invalidate makes the next Draw redo everything: for a caller that wrote into
// the picture.
func (r *Renderer) Invalidate() { r.cache.look = look{} }

// renew compares the scene with the last one and sorts the parts into still and
// moving.
func (c *cache) renew(r *Renderer, dst *image.RGBA, s *Scene) {
	l := look{
		width: r.view.width, height: r.view.height, dst: unsafe.SliceData(dst.Pix),
		camera: s.Camera, light: s.Light, background: s.Background, outline: s.Outline,
		parts: len(s.Parts), triangles: len(r.shades),
	}
	c.full, c.moved = l != c.look, false
	c.look = l
	c.keys = resize(c.keys, len(s.Parts))
	c.stillParts, c.movingParts = c.stillParts[:0], c.movingParts[:0]
	for i := range s.Parts {
		p, drawn := &s.Parts[i], r.frames[i].drawn
		key := newPartKey(p, &r.frames[i])
		if key != c.keys[i] {
			if p.Moving && c.keys[i].moving {
				c.moved = true
			} else {
				c.full = true
			}
			c.keys[i] = key
		}
		switch {
		case !drawn:
		case p.Moving:
			c.movingParts = append(c.movingParts, i)
		default:
			c.stillParts = append(c.stillParts, i)
		}
	}
}

func newPartKey(p *Part, f *partFrame) partKey {
	k := partKey{
		mesh: p.Mesh, transform: p.Transform, occlusion: unsafe.SliceData(p.Occlusion),
		colour: p.Colour, gloss: p.Gloss, id: p.ID, shell: p.Shell,
		moving: p.Moving, twoSided: p.TwoSided, drawn: f.drawn, triBase: f.triBase,
	}
	if p.Mesh != nil {
		k.revision = p.Mesh.revision
	}
	return k
}

// listDirty lists the tiles to be redone and gives those that moving parts
// touch a slot to keep their still samples in.
func (r *Renderer) listDirty() {
	c, tiles := &r.cache, r.tilesX*r.tilesY
	if c.full {
		for _, s := range c.slots {
			if s != nil {
				s.filled = false
				c.spare = append(c.spare, s)
			}
		}
		c.slots, c.touched = resize(c.slots, tiles), resize(c.touched, tiles)
		clear(c.slots)
		clear(c.touched)
	}
	r.dirty = r.dirty[:0]
	for i := range tiles {
		now := r.moving.changes(i)
		redo := now.and(c.touched[i])
		c.touched[i] = now
		switch {
		case c.full:
			// No slot yet: while the camera turns it would be thrown away unused.
			redo = wholeTile
		case redo == (tileRect{}):
			continue
		default:
			c.keepSlot(i)
		}
		r.dirty = append(r.dirty, dirtyTile{i, redo})
	}
}

// dirtyTile is a tile and what of it must be redone.
type dirtyTile struct {
	tile int
	redo tileRect
}

// keepSlot makes sure that a tile has a slot.
func (c *cache) keepSlot(tile int) {
	if c.slots[tile] != nil {
		return
	}
	if n := len(c.spare); n > 0 {
		c.slots[tile] = c.spare[n-1]
		c.spare = c.spare[:n-1]
		return
	}
	c.slots[tile] = &slot{}
}
