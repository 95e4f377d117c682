package paper

// This file draws arrows, straight and turning, and the stop sign.

import "math"

// Arrow draws a thick arrow with its head at to.
func (s *Sheet) Arrow(from, to Point, thickMM float64) {
	length := math.Hypot(to.X-from.X, to.Y-from.Y)
	if length == 0 {
		return
	}
	u := Point{(to.X - from.X) / length, (to.Y - from.Y) / length}
	head := min(3*thickMM, length)
	neck := Point{to.X - head*u.X, to.Y - head*u.Y}
	side := func(p Point, by float64) Point { return Point{p.X - by*u.Y, p.Y + by*u.X} }
	s.Polygon([]Point{
		side(from, -thickMM/2), side(neck, -thickMM/2), side(neck, -1.5*thickMM), to,
		side(neck, 1.5*thickMM), side(neck, thickMM/2), side(from, thickMM/2),
	}, nil, Shade(0))
}

// TurnArrow draws an arrow round a centre over three quarters of a turn,
// clockwise as seen on the page or against it.
func (s *Sheet) TurnArrow(c Point, r, thickMM float64, clockwise bool) {
	const from, to = -2.3, 1.7 // radians from the top; the gap is at the bottom
	sign := 1.0
	if !clockwise {
		sign = -1
	}
	head := 3 * thickMM / r // its length as an angle
	end := sign * to
	outer, inner := Arc(c, r+thickMM/2, sign*from, end), Arc(c, r-thickMM/2, end, sign*from)
	s.Polygon(append(outer, inner...), nil, Shade(0))
	s.Polygon([]Point{
		Around(c, r+1.5*thickMM, end), Around(c, r-1.5*thickMM, end), Around(c, r, end+sign*head),
	}, nil, Shade(0))
}

// StopSign draws the octagon with a word in it.
func (s *Sheet) StopSign(c Point, r float64, word string) {
	corners := Regular(c, r, 8, math.Pi/8)
	s.Polygon(corners, &Pen{MM: 0.3}, Shade(0))
	s.Polygon(Regular(c, r*0.9, 8, math.Pi/8), &Pen{MM: 0.25, Grey: 255}, nil)
	// As large as it goes in, however small that is: the outline says it too.
	t := Type{Points: 10, Bold: true, Align: Centre, Grey: 255}
	t.Points *= 1.6 * r / s.WidthMM(t, word)
	s.put(c.X-r, c.Y+t.Points*MMPerPoint*capHeight/2, 2*r, t, word)
}
