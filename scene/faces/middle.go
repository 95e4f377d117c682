package faces

// This file lays out the words inside the rim: PORT and STBD at their hands,
// the spread above, where it opens below.

import (
	"fmt"
	"math"
)

// line is a line of the middle.
type line struct {
	text string
	size float64 // of the text size
	bold bool
	ink  ink
}

// middleLines are the lines above PORT and STBD, upwards, and below, downwards.
func (f *Faces) middleLines(s *Style, headline float64) (above, below []line) {
	w, u := s.Words, s.Units
	withUnit := func(mm float64) string { return u.gap(mm) + " " + u.unit(w) }
	switch {
	case f.state() == Hanging:
		return []line{{w.Hanging, 1.2, true, inkText}}, []line{{w.NoGap, 1, false, inkText}}
	case f.state() == Bolted:
		above = []line{{w.DrawnFlat, 0.9, false, inkText}, {w.Bolted, headline, true, inkText}}
		if f.Moment != "" {
			below = []line{{f.Moment, 1.1, true, inkText}, {w.InCoupling, 0.9, false, inkText}}
		}
		return above, below
	}
	above = []line{{w.Spread, 0.9, false, inkQuiet}, {withUnit(f.Now.SpreadMM()), headline, true, inkText}}
	switch {
	case !f.parallel():
		below = []line{{fmt.Sprintf(w.OpensAt, OpensAt(s.turn(f.Now.OpensAtRad()))), min(max(headline/2, 1.05), 1.35), true, inkOpenText}}
	case f.Now.G0MM < leastToldMM/2:
		below = []line{{w.Parallel, 1, true, inkText}, {w.TouchAllRound, 0.9, false, inkText}}
	default:
		below = []line{{w.Parallel, 1, true, inkText}, {fmt.Sprintf(w.AllRound, withUnit(f.Now.G0MM)), 0.9, false, inkText}}
	}
	return above, below
}

// middle lays them out.
func (l *layout) middle(f *Faces, s *Style) {
	c, size := &l.clock, l.textPx
	inner := c.inner - 0.35*size
	above, below := f.middleLines(s, min(max(0.3*c.inner/size, 1.25), 2.8))
	left, right := s.Words.Port, s.Words.Starboard
	if s.LookingAft {
		left, right = right, left
	}
	highest := l.stack(above, -1, inner, s)
	lowest := l.stack(below, 1, inner, s)
	numeral := 0.8 * size
	edge := 0.15*size + numeral*0.6
	side := 0.0
	if inner-edge-numeral*0.55 > max(highest, lowest) && l.clock.inner > 5.2*size {
		l.numerals(numeral, inner-edge, s)
		side = numeral * 1.55
	}
	for k, text := range []string{left, right} {
		sign := float64(2*k - 1)
		half := s.Fonts.width(text, true) * size / 2
		x := math.Sqrt(max(0, inner*inner-0.16*size*size)) - half - side
		if x < half+0.3*size {
			l.fits = false
		}
		l.labels = append(l.labels, newLabel(s.Fonts, text, size, true, inkText, point{c.centre.x + sign*x, c.centre.y}))
	}
}

// stack places lines away from the middle row, upwards for sign -1, and tells
// how far they reach. Each stays inside the rim.
func (l *layout) stack(lines []line, sign, inner float64, s *Style) float64 {
	reach, gap := 0.55*l.textPx, 0.24*l.textPx
	for _, n := range lines {
		size := n.size * l.textPx
		size = shrunk(s.Fonts, n.text, size, n.bold, chord(inner, reach+gap+0.9*size))
		if size < 0.78*l.textPx*min(n.size, 1.25) {
			l.fits = false
		}
		m := newLabel(s.Fonts, n.text, size, n.bold, n.ink, l.clock.centre)
		near := l.clock.centre.y - m.box.y0 // from the near edge to the middle
		if sign < 0 {
			near = m.box.y1 - l.clock.centre.y
		}
		m.moveTo(point{m.at.x, m.at.y + sign*(reach+gap+near)})
		reach += gap + m.box.height()
		l.labels = append(l.labels, m)
	}
	return reach
}

// chord is a circle's width at a distance from its middle.
func chord(r, y float64) float64 { return 2 * math.Sqrt(max(0, r*r-y*y)) }

// numerals writes 12, 3, 6 and 9 inside the rim.
func (l *layout) numerals(size, radius float64, s *Style) {
	for hour := 0; hour < 12; hour += 3 {
		at := l.clock.centre.plus(radius, ray(float64(hour)*math.Pi/6))
		l.labels = append(l.labels, newLabel(s.Fonts, HourText(hour), size, false, inkQuiet, at))
	}
}
