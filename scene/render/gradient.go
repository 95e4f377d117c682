// This file holds the slopes of a quantity over a triangle in the picture.

package render

// gradient turns values at three corners into slopes per pixel.
type gradient struct {
	x0, y0         float64 // first corner, pixels
	ax, ay, bx, by float64 // slopes = (a, b)x times the two differences from the first corner
}

// sliverPx is the height under which a triangle counts as a sliver. Across so
// little, slopes would be huge and rounding would show as speckles; then the
// quantity is taken to change along the longest edge only.
const sliverPx = 1.0 / 64

func (g *gradient) set(c *[3]corner) {
	const px = 1.0 / subpixel
	x0, y0 := float64(c[0].x)*px, float64(c[0].y)*px
	ux, uy := float64(c[1].x-c[0].x)*px, float64(c[1].y-c[0].y)*px
	vx, vy := float64(c[2].x-c[0].x)*px, float64(c[2].y-c[0].y)*px
	area := ux*vy - vx*uy
	longest := max(ux*ux+uy*uy, vx*vx+vy*vy, (vx-ux)*(vx-ux)+(vy-uy)*(vy-uy))
	if area*area < sliverPx*sliverPx*longest {
		*g = sliverGradient(x0, y0, ux, uy, vx, vy, longest)
		return
	}
	d := 1 / area
	g.x0, g.y0, g.ax, g.ay, g.bx, g.by = x0, y0, vy*d, -vx*d, -uy*d, ux*d
}

// sliverGradient weighs the two differences so that the slope along the longest
// edge is right and the slope across it nothing.
func sliverGradient(x0, y0, ux, uy, vx, vy, longest float64) gradient {
	switch longest {
	case ux*ux + uy*uy:
		return gradient{x0, y0, ux / longest, uy / longest, 0, 0}
	case vx*vx + vy*vy:
		return gradient{x0, y0, 0, 0, vx / longest, vy / longest}
	}
	ex, ey := (vx-ux)/longest, (vy-uy)/longest
	return gradient{x0, y0, -ex, -ey, ex, ey}
}

// of returns the slopes per pixel to the right and down.
func (g *gradient) of(f0, f1, f2 float64) (dx, dy float64) {
	u, v := f1-f0, f2-f0
	return u*g.ax + v*g.bx, u*g.ay + v*g.by
}

// plane fills in a whole plane in single precision. The constant is worked out in
// double precision because it lies far from the triangle.
func (g *gradient) plane(p *plane, f0, f1, f2 float32) {
	dx, dy := g.of(float64(f0), float64(f1), float64(f2))
	p.a, p.b, p.c = float32(dx), float32(dy), float32(float64(f0)-dx*g.x0-dy*g.y0)
}
