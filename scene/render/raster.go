// This file holds scan conversion: a triangle's samples into a tile.

package render

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

// The same in pixels.
var (
	sampleAtX = [samples]float32{0.375, 0.875, 0.125, 0.625}
	sampleAtY = [samples]float32{0.125, 0.375, 0.625, 0.875}
)

// A sample is a key and an id in one number: the larger is the nearer, and at
// equal depth the higher triangle number wins, whoever draws first.
const (
	idBits   = 24
	idMask   = 1<<idBits - 1
	keyScale = 1 << 39 // one bit of headroom above key 1
)

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
	d := depthRows{perPx: int64(t.keyX * keyScale), id: uint64(t.id)}
	corner := t.key0 + t.keyX*float64(w.x) + t.keyY*(float64(w.y)+1.0/8)
	d.perRow = int64(t.keyY * (fine / samples))
	d.atRow = int64(corner*fine) + d.perRow*(row-w.y*samples)
	for s := range d.inset {
		d.inset[s] = int64(t.keyX * (keyScale / subpixel) * float64(sampleX[s]))
	}
	return d
}

// rasterise puts a triangle's samples into a tile's buffer.
func (w tileWindow) rasterise(buf []uint64, t *rasterTriangle) {
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

// fillBetween fills sample rows from to to-1. A sample at x is inside when
// left <= x < right.
func (w tileWindow) fillBetween(buf []uint64, d *depthRows, long, short edge, shortIsLeft bool, from, to int64) {
	left, right := long, short
	if shortIsLeft {
		left, right = short, long
	}
	const one = 1 << 32
	origin := w.x<<32 - (one - 1) // rounding up
	at := (from - w.y*samples) * tileColumns
	step := uint64(d.perPx) << idBits
	for k := from; k < to; k++ {
		s := k & (samples - 1)
		place := origin + sampleX[s]<<24
		c0, c1 := max((left.x-place)>>32, 0), min((right.x-place)>>32, tileColumns)
		if c0 < c1 {
			v := uint64(d.atRow>>8+d.inset[s]+d.perPx*c0)<<idBits | d.id
			row := buf[at+c0 : at+c1]
			for i := range row {
				row[i] = max(row[i], v)
				v += step
			}
		}
		left.x += left.step
		right.x += right.step
		d.atRow += d.perRow
		at += tileColumns
	}
}
