package faces

// This file is the pen: filled paths, lines, dashes, hatching and text on an
// image. Coordinates are pixels from the picture's top left corner.

import (
	"encoding/binary"
	"image"
	"image/color"
	"image/draw"
	"math"

	"golang.org/x/image/vector"
)

// point is a place or a direction on the picture, y down.
type point struct{ x, y float64 }

func (a point) add(b point) point             { return point{a.x + b.x, a.y + b.y} }
func (a point) sub(b point) point             { return point{a.x - b.x, a.y - b.y} }
func (a point) times(k float64) point         { return point{a.x * k, a.y * k} }
func (a point) plus(k float64, b point) point { return point{a.x + k*b.x, a.y + k*b.y} }
func (a point) length() float64               { return math.Hypot(a.x, a.y) }

// ray is the direction of a clock angle as seen: 12 is up, 3 to the right.
func ray(seenRad float64) point {
	sin, cos := math.Sincos(seenRad)
	return point{sin, -cos}
}

// walker feeds a path into a rasterizer, shifted or bent on its way.
type walker struct {
	raster *vector.Rasterizer
	shift  point
	bend   func(point) point // applied before the shift, if given
}

func (w *walker) at(p point) (float32, float32) {
	if w.bend != nil {
		p = w.bend(p)
	}
	return float32(p.x + w.shift.x), float32(p.y + w.shift.y)
}

func (w *walker) close()       { w.raster.ClosePath() }
func (w *walker) move(p point) { w.raster.MoveTo(w.at(p)) }
func (w *walker) line(p point) { w.raster.LineTo(w.at(p)) }

func (w *walker) quad(a, b point) {
	ax, ay := w.at(a)
	bx, by := w.at(b)
	w.raster.QuadTo(ax, ay, bx, by)
}

func (w *walker) cube(a, b, c point) {
	ax, ay := w.at(a)
	bx, by := w.at(b)
	cx, cy := w.at(c)
	w.raster.CubeTo(ax, ay, bx, by, cx, cy)
}

// pen draws on one picture.
type pen struct {
	dst     *image.RGBA
	fonts   *Fonts
	palette *[inkCount]color.RGBA
}

func newPen(dst *image.RGBA, fonts *Fonts, dark bool) *pen {
	p := &pen{dst: dst, fonts: fonts, palette: &palettes[0]}
	if dark {
		p.palette = &palettes[1]
	}
	return p
}

// clear covers everything with the background.
func (p *pen) clear() {
	draw.Draw(p.dst, p.dst.Rect, image.NewUniform(p.palette[inkBack]), image.Point{}, draw.Src)
}

// shape is closed outlines; where they turn opposite ways the inner is a hole.
type shape [][]point

// bounds are the pixels a shape may touch, within the picture.
func (p *pen) bounds(s shape) image.Rectangle {
	x0, y0, x1, y1 := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, outline := range s {
		for _, q := range outline {
			x0, y0, x1, y1 = math.Min(x0, q.x), math.Min(y0, q.y), math.Max(x1, q.x), math.Max(y1, q.y)
		}
	}
	if !(x1 > x0) || !(y1 > y0) || math.IsInf(x1-x0+y1-y0, 0) {
		return image.Rectangle{}
	}
	r := image.Rect(int(math.Floor(x0)), int(math.Floor(y0)), int(math.Ceil(x1)), int(math.Ceil(y1)))
	return r.Intersect(image.Rectangle{Max: p.dst.Rect.Size()})
}

// cover works out how much of each pixel a shape covers, row by row, and the
// pixels it may touch.
func (p *pen) cover(s shape) (mask *image.Alpha, at image.Rectangle) {
	r := p.bounds(s)
	if r.Empty() {
		return nil, r
	}
	z := &p.fonts.raster
	z.Reset(r.Dx(), r.Dy())
	w := walker{raster: z, shift: point{-float64(r.Min.X), -float64(r.Min.Y)}}
	for _, outline := range s {
		for i, q := range outline {
			if i == 0 {
				w.move(q)
			} else {
				w.line(q)
			}
		}
		w.close()
	}
	return p.rasterized(r.Size()), r
}

// rasterized is the coverage of what the rasterizer has been given.
func (p *pen) rasterized(size image.Point) *image.Alpha {
	n := size.X * size.Y
	if len(p.fonts.scratch) < n {
		p.fonts.scratch = make([]uint8, n)
	}
	mask := &image.Alpha{Pix: p.fonts.scratch[:n], Stride: size.X, Rect: image.Rectangle{Max: size}}
	z := &p.fonts.raster
	z.DrawOp = draw.Src
	z.Draw(mask, mask.Rect, image.Opaque, image.Point{})
	return mask
}

// fill covers a shape.
func (p *pen) fill(s shape, i ink) {
	if mask, at := p.cover(s); mask != nil {
		p.blend(mask, at.Min, i)
	}
}

// blend lays an opaque colour on as far as a mask covers; much of a mask is
// empty, being the inside of a ring, and is passed over eight pixels at a time.
func (p *pen) blend(mask *image.Alpha, at image.Point, i ink) {
	c := p.palette[i]
	rgb := [3]uint32{uint32(c.R), uint32(c.G), uint32(c.B)}
	whole := uint32(c.R) | uint32(c.G)<<8 | uint32(c.B)<<16 | 255<<24
	at = at.Add(p.dst.Rect.Min)
	place := mask.Rect.Sub(mask.Rect.Min).Add(at).Intersect(p.dst.Rect)
	for y := place.Min.Y; y < place.Max.Y; y++ {
		cover := mask.Pix[(y-at.Y)*mask.Stride+place.Min.X-at.X:][:place.Dx()]
		pixels := p.dst.Pix[p.dst.PixOffset(place.Min.X, y):][:4*place.Dx()]
		for x := 0; x < len(cover); x++ {
			a := uint32(cover[x])
			switch a {
			case 0:
				for x+8 < len(cover) && binary.LittleEndian.Uint64(cover[x+1:]) == 0 {
					x += 8
				}
			case 255:
				binary.LittleEndian.PutUint32(pixels[4*x:], whole)
			default:
				q := pixels[4*x : 4*x+4]
				for k, v := range rgb {
					q[k] = uint8((uint32(q[k])*(255-a) + v*a + 127) / 255)
				}
				q[3] = uint8(uint32(q[3]) + (255-uint32(q[3]))*a/255)
			}
		}
	}
}

// hatched covers a shape with slanting lines, so wide and so far apart.
func (p *pen) hatched(s shape, i ink, width, apart float64) {
	mask, r := p.cover(s)
	if mask == nil {
		return
	}
	for y := range r.Dy() {
		row := mask.Pix[y*mask.Stride : y*mask.Stride+r.Dx()]
		for x := range row {
			if row[x] == 0 {
				continue
			}
			// Distance across the lines, from the middle of the nearest.
			across := float64(r.Min.X+x+r.Min.Y+y) * math.Sqrt2 / 2
			off := math.Abs(across - apart*math.Round(across/apart))
			share := math.Min(1, math.Max(0, width/2-off+0.5))
			row[x] = uint8(float64(row[x])*share + 0.5)
		}
	}
	p.blend(mask, r.Min, i)
}

// text writes one line, its pen starting at (x, y) on the baseline. The baseline
// lies on a pixel row, for text between two rows is blurred.
func (p *pen) text(s string, x, y, sizePx float64, bold bool, i ink) {
	half := int16(math.Round(sizePx * 2))
	size := float64(half) / 2
	row := int(math.Round(y))
	for _, c := range s {
		quarters := int(math.Floor(x*4 + 0.5))
		column, phase := quarters>>2, int16(quarters&3)
		g := p.fonts.glyph(glyphKey{bold, c, half, phase})
		p.blend(g.mask, g.mask.Rect.Min.Add(image.Pt(column, row)), i)
		x += p.fonts.advance(c, bold) * size
	}
}
