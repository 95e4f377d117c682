package faces

// This file draws readings: a bar on the track from the leaf that goes to the
// one that stops, at the clock place it was tried at, and a ring with a question
// mark where to gauge next.

import (
	"math"
	"strings"
)

// keyToMarks says what bars are, and what crossed and dashed ones are where
// there are some.
func (f *Faces) keyToMarks(w *Words) string {
	say, odd, unused := []string{w.MarksKey}, false, false
	if f.MarksLess {
		say[0] = w.MarksLessKey
	}
	for _, m := range f.Marks {
		odd, unused = odd || m.Odd, unused || m.Unused
	}
	if odd {
		say = append(say, w.OddKey)
	}
	if unused {
		say = append(say, w.UnusedKey)
	}
	return strings.Join(say, "; ")
}

// marks draws them all, the odd ones last.
func (p *pen) marks(l *layout, f *Faces, s *Style) {
	for _, odd := range []bool{false, true} {
		for i := range f.Marks {
			if m := &f.Marks[i]; m.Odd == odd {
				p.mark(l, m, s)
			}
		}
	}
	if f.NextRad != nil {
		p.next(l, s.turn(*f.NextRad))
	}
}

// mark is one bar, lighter round its edge so that it is seen on any colour. A
// limit has a foot across the bar; without an upper one the bar ends in an
// arrow.
func (p *pen) mark(l *layout, m *Mark, s *Style) {
	c, d := &l.clock, ray(s.turn(m.ClockRad))
	across := point{-d.y, d.x}.times(0.55 * l.textPx)
	at := func(mm float64) point { return c.centre.plus(c.inner+c.bandPx(mm), d) }
	open := math.IsInf(m.MostMM, 1)
	from, to := c.centre.plus(c.inner, d), c.centre.plus(c.outer-0.15*l.textPx, d)
	if !open {
		to = at(m.MostMM)
	}
	if !math.IsInf(m.LeastMM, -1) {
		from = at(m.LeastMM)
	}
	lines := [][]point{{from, to}}
	if !math.IsInf(m.LeastMM, -1) {
		lines = append(lines, []point{from.add(across), from.sub(across)})
	}
	if open {
		back := to.plus(-0.45*l.textPx, d)
		lines = append(lines, []point{back.add(across), to, back.sub(across)})
	} else {
		lines = append(lines, []point{to.add(across), to.sub(across)})
	}
	wide := max(1.5, l.textPx*0.15)
	for _, line := range lines {
		p.fill(stroke(line, 2.4*wide), inkFace)
	}
	for _, line := range lines {
		if m.Unused {
			p.fill(dashes(line, wide, 0.3*l.textPx, 0.22*l.textPx), inkOverlay)
		} else {
			p.fill(stroke(line, wide), inkOverlay)
		}
	}
	if m.Odd {
		p.cross(from.add(to).times(0.5), l.textPx, wide)
	}
}

// cross lies over a bar whose reading does not fit, upright wherever it is.
func (p *pen) cross(at point, textPx, wide float64) {
	arm := 0.5 * textPx
	for _, pass := range []struct {
		wide float64
		ink  ink
	}{{3.4 * wide, inkFace}, {1.6 * wide, inkOverlay}} {
		for _, d := range []point{{arm, arm}, {arm, -arm}} {
			p.fill(stroke([]point{at.add(d), at.sub(d)}, pass.wide), pass.ink)
		}
	}
}

// next is a ring with a question mark on the outer ring, so that a bar at the same
// place is still seen.
func (p *pen) next(l *layout, seenRad float64) {
	c := &l.clock
	size := 0.8 * l.textPx
	at := c.centre.plus(c.outer, ray(seenRad))
	p.fill(disc(at, 0.78*l.textPx), inkText)
	p.fill(disc(at, 0.62*l.textPx), inkFace)
	p.text("?", at.x-p.fonts.width("?", true)*size/2, at.y+size*capHeight/2, size, true, inkText)
}
