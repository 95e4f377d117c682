// This file holds the background gradient.

package render

import "math"

// groundRow is one row of the background: its light, and the eight pixels that
// repeat along it.
type groundRow struct {
	rgb   [3]float32
	pixel [8]uint32
}

// bayer is one period of an ordered dither (Bayer, An optimum method for
// two-level rendition of continuous-tone pictures, 1973), 8 x 8. Without it the
// gradient of a dark background would show as bands.
var bayer = func() (m [8][8]float64) {
	for y := range 8 {
		for x := range 8 {
			v := 0
			for bit := range 3 {
				a, b := x>>bit&1, y>>bit&1
				v = v<<2 | (a^b)<<1 | b
			}
			m[y][x] = (float64(v) + 0.5) / 64
		}
	}
	return m
}()

// rows works the gradient out for a picture of the given height. It runs in
// sRGB, where equal steps look equal.
func (b Background) rows(rows []groundRow, height int) []groundRow {
	rows = resize(rows, height)
	top := [3]float64{float64(b.Top.R), float64(b.Top.G), float64(b.Top.B)}
	bottom := [3]float64{float64(b.Bottom.R), float64(b.Bottom.G), float64(b.Bottom.B)}
	for y := range rows {
		f := (float64(y) + 0.5) / float64(height)
		row := &rows[y]
		row.pixel = [8]uint32{}
		for c := range 3 {
			v := top[c] + f*(bottom[c]-top[c])
			row.rgb[c] = float32(unTone(v / 255))
			for x := range row.pixel {
				level := math.Floor(v + bayer[y&7][x])
				row.pixel[x] |= uint32(min(max(level, 0), 255)) << (8 * c)
			}
		}
		for x := range row.pixel {
			row.pixel[x] |= 0xff000000
		}
	}
	return rows
}

// unTone is the light that tone turns into the sRGB value v: the background
// shall look the same beside a part as in the open.
func unTone(v float64) float64 {
	x := decodeSRGB(v)
	const knee = 0.6
	if x <= knee {
		return x
	}
	return knee - (1-knee)*math.Log(max(1-(x-knee)/(1-knee), 1e-3))
}
