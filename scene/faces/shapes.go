package faces

// This file makes outlines: rings, bands round the clock, lines and dashes.

import "math"

// arcStepRad is how finely round things are cut: on a rim of 500 pixels the
// chord lies 0.08 pixels inside the arc.
const arcStepRad = math.Pi / 180

// around samples a radius that changes with the clock angle as seen.
func around(centre point, fromRad, toRad float64, radius func(seenRad float64) float64) []point {
	n := max(2, int(math.Ceil(math.Abs(toRad-fromRad)/arcStepRad)))
	out := make([]point, 0, n+1)
	for i := range n + 1 {
		a := fromRad + (toRad-fromRad)*float64(i)/float64(n)
		out = append(out, centre.plus(radius(a), ray(a)))
	}
	return out
}

// sector is the part of a ring between two angles; inner and outer may change
// with the angle.
func sector(centre point, fromRad, toRad float64, inner, outer func(float64) float64) shape {
	outline := around(centre, fromRad, toRad, outer)
	return shape{append(outline, around(centre, toRad, fromRad, inner)...)}
}

func constant(r float64) func(float64) float64 { return func(float64) float64 { return r } }

// disc is a full circle.
func disc(centre point, r float64) shape {
	return shape{around(centre, 0, 2*math.Pi, constant(r))}
}

// ring is a circle's line.
func ring(centre point, r, width float64) shape {
	return annulus(centre, r-width/2, r+width/2)
}

// annulus is the area between two circles.
func annulus(centre point, inner, outer float64) shape {
	return shape{
		around(centre, 0, 2*math.Pi, constant(outer)),
		around(centre, 2*math.Pi, 0, constant(max(inner, 0))),
	}
}

// stroke is a line of some width along points.
func stroke(points []point, width float64) shape {
	if len(points) < 2 {
		return nil
	}
	left := make([]point, 0, 2*len(points))
	right := make([]point, 0, len(points))
	for i, p := range points {
		n := normal(points, i).times(width / 2)
		left = append(left, p.add(n))
		right = append(right, p.sub(n))
	}
	for i := len(right) - 1; i >= 0; i-- {
		left = append(left, right[i])
	}
	return shape{left}
}

// normal is the unit normal at a point, long enough at a corner to keep the
// line's width.
func normal(points []point, i int) point {
	before, after := points[max(i-1, 0)], points[min(i+1, len(points)-1)]
	n := side(before, after)
	if i == 0 || i == len(points)-1 {
		return n
	}
	along := side(points[i], after)
	cos := n.x*along.x + n.y*along.y
	return n.times(1 / max(cos, 0.5))
}

// side is the unit normal of a line from a to b, or nothing.
func side(a, b point) point {
	d := b.sub(a)
	long := d.length()
	if long == 0 {
		return point{}
	}
	return point{-d.y / long, d.x / long}
}

// dashes cuts a line into dashes of some length with gaps of some length.
func dashes(points []point, width, on, off float64) shape {
	var out shape
	var dash []point
	left, drawing := on, true
	flush := func() {
		if s := stroke(dash, width); s != nil {
			out = append(out, s...)
		}
		dash = nil
	}
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		long := b.sub(a).length()
		if drawing && dash == nil {
			dash = append(dash, a)
		}
		for at := 0.0; long > 0; {
			if left > long-at {
				left -= long - at
				break
			}
			at += left
			cut := a.plus(at/long, b.sub(a))
			if drawing {
				dash = append(dash, cut)
				flush()
				left = off
			} else {
				dash = []point{cut}
				left = on
			}
			drawing = !drawing
		}
		if drawing {
			dash = append(dash, b)
		}
	}
	flush()
	return out
}

// polygon is one closed outline.
func polygon(points ...point) shape { return shape{points} }

// box is a rectangle's outline.
func (r rect) shape() shape {
	return polygon(point{r.x0, r.y0}, point{r.x1, r.y0}, point{r.x1, r.y1}, point{r.x0, r.y1})
}
