// This file holds triangles that are lit at their corners: so flat, or so small,
// that nobody could tell.

package render

import "math"

// inkPlane is the finished colour of a triangle as a plane over the picture. Red,
// green and blue are bytes with 13 binary places, side by side in one number:
//
//	bits 62 .. 42 red   41 .. 21 green   20 .. 0 blue
//
// so that two multiplications step all three. Borrows between them while adding
// do no harm: the sum is exact, and in the end every field is positive.
//
// Positions are in eighths of a pixel, where all samples lie, counted from a
// corner so that the slopes' rounding does not add up: over 512 pixels to a
// quarter of a byte's step at most.
type inkPlane struct {
	x0, y0      int32
	at0, dx, dy int64
}

const (
	inkPlaces = 13
	inkField  = 21
	eighths   = 8 // of a pixel
	inkReach  = 512 * subpixel
)

// set works the plane out from the levels at the corners.
func (p *inkPlane) set(g *gradient, c *[3]corner) {
	const perEighth = subpixel / eighths
	p.x0, p.y0 = c[0].x/perEighth, c[0].y/perEighth
	// From the corner to the whole eighth beside it, in pixels.
	ox, oy := float64(p.x0)/eighths-g.x0, float64(p.y0)/eighths-g.y0
	p.at0, p.dx, p.dy = 0, 0, 0
	for i := range 3 {
		f0 := float64(c[0].attribute[i])
		sx, sy := g.of(f0, float64(c[1].attribute[i]), float64(c[2].attribute[i]))
		const one = 1 << inkPlaces
		p.at0 = p.at0<<inkField + int64(math.RoundToEven((f0+sx*ox+sy*oy+0.5)*one))
		p.dx = p.dx<<inkField + int64(math.RoundToEven(sx*(one/eighths)))
		p.dy = p.dy<<inkField + int64(math.RoundToEven(sy*(one/eighths)))
	}
}

// at is the pixel for a position in eighths.
func (p *inkPlane) at(x, y int32) uint32 {
	v := uint64(p.at0 + p.dx*int64(x-p.x0) + p.dy*int64(y-p.y0))
	return uint32(v>>(2*inkField+inkPlaces)&0xff | v>>(inkField+inkPlaces)&0xff<<8 | v>>inkPlaces&0xff<<16 | 0xff<<24)
}

// light turns the finished pixel back into light, for what is laid over it.
func (p *pixel) light() {
	if p.inked {
		p.inked = false
		p.r, p.g, p.b = unToned[p.ink&0xff], unToned[p.ink>>8&0xff], unToned[p.ink>>16&0xff]
	}
}

// unToned is the light that tone turns into each byte.
var unToned = func() (t [256]float32) {
	for i := range t {
		t[i] = float32(unTone(float64(i) / 255))
	}
	return t
}()

// nearlyFlat reports whether a solid triangle may be lit at its corners. Between
// normals an angle t apart a quantity with curvature k differs from a straight
// line by k t^2/8; k is about 1 for the light and, near the highlight, its
// exponent times the gloss. Half a percent is not seen. Small triangles are
// allowed more of the highlight, because there is no room to see its shape. In
// perspective all corners must be about equally far away, because the light is
// interpolated without regard to depth; and their levels must be alike enough
// that it makes no odds that they are interpolated as levels, not as light: the
// middle is then off by about difference^2 / (8 x mean).
func nearlyFlat(a, b, c *vertex, gloss float32, half [3]float32) bool {
	n, m, o := &a.normal, &b.normal, &c.normal
	cosine := min(n[0]*m[0]+n[1]*m[1]+n[2]*m[2], n[0]*o[0]+n[1]*o[1]+n[2]*o[2], m[0]*o[0]+m[1]*o[1]+m[2]*o[2])
	const seen, small, depthRatio = 0.005, 8 * subpixel, 1.1
	bend := (1 - cosine) / 4 // t^2/8
	if bend > seen || max(a.key, b.key, c.key) > depthRatio*min(a.key, b.key, c.key) {
		return false
	}
	low, high := min(a.levels[1], b.levels[1], c.levels[1]), max(a.levels[1], b.levels[1], c.levels[1])
	if (high-low)*(high-low) > 4*(high+low) {
		return false
	}
	wide, tall := max(a.x, b.x, c.x)-min(a.x, b.x, c.x), max(a.y, b.y, c.y)-min(a.y, b.y, c.y)
	if wide > inkReach || tall > inkReach {
		return false
	}
	if bend*32*gloss < seen || wide < small && tall < small {
		return true
	}
	return max(dot(n, &half), dot(m, &half), dot(o, &half)) < 0.8
}

func dot(a, b *[3]float32) float32 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }
