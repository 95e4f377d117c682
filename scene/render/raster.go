// This file holds scan conversion: a triangle's samples into a tile.

package render

import "math"

// Every pixel has four samples, one on each of four sample rows a quarter pixel
// apart, so that a tile is scan converted row by row like a picture four times
// as high. This is the standard pattern of four of the Vulkan specification
// (Standard Sample Locations): no two samples share a row or a column.
const samples = 4

// sampleX is a sample's place from its pixel's left edge in 1/256 pixel;
// sampleY from the top. Sample row k of the picture is sample k%4 of pixel row
// k/4 and lies at 64 k + 32.
var (
	sampleX = [samples]int64{96, 224, 32, 160}
)

// The same in pixels, and in eighths of one.
var (
	sampleAtX = [samples]float32{0.375, 0.875, 0.125, 0.625}
	sampleAtY = [samples]float32{0.125, 0.375, 0.625, 0.875}
	sampleX8  = [samples]int32{3, 7, 1, 5}
	sampleY8  = [samples]int32{1, 3, 5, 7}
)

// A sample is a key and an id in one number: the larger is the nearer, and at
// equal depth the higher triangle number wins, whoever draws first.
const (
	idBits   = 24
	idMask   = 1<<idBits - 1
	keyScale = 1 << 39 // one bit of headroom above key 1
)

// quad is the samples of one pixel.
type quad = [samples]uint64

// edge is the x of one side of a triangle on successive sample rows, in 32.32
// fixed point pixels.
type edge struct{ x, step int64 }

// edgeFrom starts the edge from its upper to its lower end at sample row k. It
// depends on nothing else than the ends: two triangles that share an edge find
// the same x on every row, which leaves neither cracks nor double hits.
func edgeFrom(x0, y0, x1, y1 int32, k int64) edge {
	step := int64(x1-x0) << 30 / int64(y1-y0)
	first := (int64(y0) + 31) >> 6 // first sample row at or below the upper end
	x := int64(x0)<<24 + step*(first<<6+32-int64(y0))>>6
	return edge{x + step*(k-first), step}
}

// tileWindow is where a tile's buffer lies in the picture.
type tileWindow struct {
	x, y int64 // pixel of the buffer's first column and row
}

// depthRows steps a triangle's depth key through a tile. Rows are stepped with
// eight bits more than a sample keeps, so that rounding does not add up; along
// a row the rounding of a step grows to half a bit times 64 columns.
type depthRows struct {
	atRow  int64 // key at the buffer's left edge on the current row, times keyScale << 8
	perRow int64
	perPx  int64          // times keyScale
	inset  [samples]int64 // from the left edge to the first column's sample
	id     uint64
}

func newDepthRows(t *rasterTriangle, w tileWindow, row int64) depthRows {
	const fine = keyScale << 8
	d := depthRows{perPx: int64(math.RoundToEven(t.keyX * keyScale)), id: uint64(t.id)}
	corner := t.key0 + t.keyX*float64(w.x) + t.keyY*(float64(w.y)+1.0/8)
	d.perRow = int64(t.keyY * (fine / samples))
	d.atRow = int64(corner*fine) + d.perRow*(row-w.y*samples)
	for s := range d.inset {
		d.inset[s] = d.perPx * sampleX[s] >> subpixelBits
	}
	return d
}

// rasterise puts a triangle's samples into a tile's buffer.
func (w tileWindow) rasterise(buf []quad, t *rasterTriangle) {
	k0, k1, k2 := (int64(t.y[0])+31)>>6, (int64(t.y[1])+31)>>6, (int64(t.y[2])+31)>>6
	first := w.y * samples
	from, to := max(k0, first), min(k2, first+tileRows)
	if from >= to {
		return
	}
	d := newDepthRows(t, w, from)
	long := edgeFrom(t.x[0], t.y[0], t.x[2], t.y[2], from)
	middle := max(from, min(k1, to))
	if from < middle {
		short := edgeFrom(t.x[0], t.y[0], t.x[1], t.y[1], from)
		w.fillBetween(buf, &d, long, short, t.middleIsOnLeft, from, middle)
		long.x += long.step * (middle - from)
	}
	if middle < to {
		short := edgeFrom(t.x[1], t.y[1], t.x[2], t.y[2], middle)
		w.fillBetween(buf, &d, long, short, t.middleIsOnLeft, middle, to)
	}
}

// unrolled is how many samples of a span are written without looking at its
// length: most spans are short, and a loop that runs a different number of times
// on each row costs more in mispredicted branches than some samples written as
// nothing. Buffers are longer by as much.
const unrolled = 4

// fillBetween fills sample rows from to to-1. A sample at x is inside when
// left <= x < right.
func (w tileWindow) fillBetween(buf []quad, d *depthRows, long, short edge, shortIsLeft bool, from, to int64) {
	left, right := long, short
	if shortIsLeft {
		left, right = short, long
	}
	const roundUp = 1<<32 - 1
	lx, rx := left.x-w.x<<32+roundUp, right.x-w.x<<32+roundUp
	atRow := d.atRow
	step := uint64(d.perPx) << idBits
	for k := from; k < to; k++ {
		s := k & (samples - 1)
		c0, c1 := (lx-sampleX[s]<<24)>>32, (rx-sampleX[s]<<24)>>32
		c0, c1 = max(c0, 0), min(c1, tileColumns)
		if n := c1 - c0; n > 0 {
			v := uint64(atRow>>8+d.inset[s]+d.perPx*c0)<<idBits | d.id
			at := (k>>2-w.y)*tileColumns + c0
			row := buf[at : at+unrolled]
			row[0][s] = max(row[0][s], v)
			v += step
			// Past the span's end nothing is written: 0 is farther than all.
			v1, v2, v3 := v, v+step, v+2*step
			if n < 2 {
				v1 = 0
			}
			if n < 3 {
				v2 = 0
			}
			if n < 4 {
				v3 = 0
			}
			v += 2 * step
			row[1][s] = max(row[1][s], v1)
			row[2][s] = max(row[2][s], v2)
			row[3][s] = max(row[3][s], v3)
			if n > unrolled {
				row = buf[at+unrolled : at+n]
				for i := range row {
					v += step
					row[i][s] = max(row[i][s], v)
				}
			}
		}
		lx += left.step
		rx += right.step
		atRow += d.perRow
	}
	d.atRow = atRow
}
