package faces

// This file places the clock, the numbers round it and the words on its track.

import (
	"cmp"
	"math"
	"slices"
)

// layClock fills an area with the clock.
func (l *layout) layClock(area rect, f *Faces, s *Style) {
	c := &l.clock
	c.centre = area.middle()
	numbers := l.numbers(f, s)
	pad := 0.85 * l.textPx
	c.outer = min(area.width(), area.height())/2 - pad
	for i := range numbers {
		c.outer = min(c.outer, room(&numbers[i], area, s.turn(numbers[i].clockRad))-pad)
	}
	if !(c.outer > 0) {
		c.outer, l.fits = 0, false
		return
	}
	track := max(0.27*c.outer, 2*l.textPx)
	c.inner = c.outer - track
	if c.inner < 2.2*l.textPx {
		l.fits = false
	}
	c.inner = max(c.inner, 0.2*c.outer)
	if f.state() == Open {
		spreadOut(numbers, c, pad, s)
		l.labels = append(l.labels, numbers...)
		l.arcWords(f, s)
	}
	l.middle(f, s)
}

// room is the largest radius at which a number, standing outside, stays in an
// area round whose middle the clock is drawn.
func room(n *label, area rect, seenRad float64) float64 {
	d := ray(seenRad)
	w, h := n.box.width()/2, n.box.height()/2
	reach := math.Abs(d.x)*w + math.Abs(d.y)*h
	most := math.Inf(1)
	if x := math.Abs(d.x); x > 1e-6 {
		most = min(most, (area.width()/2-w)/x-reach)
	}
	if y := math.Abs(d.y); y > 1e-6 {
		most = min(most, (area.height()/2-h)/y-reach)
	}
	return most
}

// numbers are the gaps round the clock, not yet placed. They keep room for two
// digits before the point, so that the clock does not breathe while a gap
// changes.
func (l *layout) numbers(f *Faces, s *Style) []label {
	at := f.PositionsRad
	if len(at) == 0 {
		for hour := range 12 {
			at = append(at, float64(hour)*math.Pi/6)
		}
	}
	least := s.Fonts.width(s.Units.gap(12*MMPerThou), true) * l.textPx
	out := make([]label, 0, len(at))
	lowest, highest := math.Inf(1), math.Inf(-1)
	for _, a := range at {
		lowest, highest = min(lowest, f.Now.AtMM(a)), max(highest, f.Now.AtMM(a))
	}
	for _, a := range at {
		text := s.Units.gap(f.Now.AtMM(a))
		i, bold := inkText, false
		if f.state() != Open {
			text = ""
		} else if !f.parallel() {
			switch text {
			case s.Units.gap(highest):
				i, bold = inkOpenText, true
			case s.Units.gap(lowest):
				i, bold = inkTightText, true
			}
		}
		n := newLabel(s.Fonts, text, l.textPx, bold, i, point{})
		if w := n.box.width(); w < least {
			n.box.x0 -= (least - w) / 2
			n.box.x1 += (least - w) / 2
		}
		n.number, n.clockRad = true, a
		out = append(out, n)
	}
	return out
}

// spreadOut places numbers outside the ring, each at its own angle or, where
// they crowd, as near to it as room allows, with a leader.
func spreadOut(numbers []label, c *clockPlan, pad float64, s *Style) {
	slices.SortStableFunc(numbers, func(a, b label) int {
		return cmp.Compare(wrapTurn(s.turn(a.clockRad)), wrapTurn(s.turn(b.clockRad)))
	})
	seen := make([]float64, len(numbers))
	for i := range numbers {
		seen[i] = wrapTurn(s.turn(numbers[i].clockRad))
	}
	want := slices.Clone(seen)
	put := func(i int) {
		d := ray(seen[i])
		w, h := numbers[i].box.width()/2, numbers[i].box.height()/2
		numbers[i].moveTo(c.centre.plus(c.outer+pad+math.Abs(d.x)*w+math.Abs(d.y)*h, d))
	}
	for i := range numbers {
		put(i)
	}
	const step, most = math.Pi / 360, 200
	for range most {
		moved := false
		for i := range numbers {
			k := (i + 1) % len(numbers)
			if i != k && numbers[i].box.grown(1).overlaps(numbers[k].box.grown(1)) {
				seen[i], seen[k] = seen[i]-step, seen[k]+step
				put(i)
				put(k)
				moved = true
			}
		}
		if !moved {
			break
		}
	}
	for i := range numbers {
		if math.Abs(seen[i]-want[i]) > 2*step {
			from, to := c.centre.plus(c.outer, ray(want[i])), c.centre.plus(c.outer+pad*0.85, ray(seen[i]))
			numbers[i].leader = []point{from, to}
		}
	}
}

// wrapTurn brings an angle into [0, 2 pi).
func wrapTurn(a float64) float64 {
	a = math.Mod(a, 2*math.Pi)
	if a < 0 {
		a += 2 * math.Pi
	}
	return a
}

// arcWord is a word written along the track.
type arcWord struct {
	text            string
	sizePx          float64
	seenRad, radius float64
	ink             ink
	plate           ink // what it stands on, where hatching would disturb it
}

// arcWords places "opens here" and "touches", opposite to each other.
func (l *layout) arcWords(f *Faces, s *Style) {
	if f.parallel() || len(f.Marks) > 0 || f.NextRad != nil {
		return
	}
	opens := s.turn(f.Now.OpensAtRad())
	l.clock.widest = l.arcWord(s, s.Words.OpensHere, opens, l.clock.bandPx(f.Now.LargestMM()), inkOpenText, inkOnOpen, inkOpen)
	word := s.Words.Tightest
	if f.Now.LeastMM() < leastToldMM/2 {
		word = s.Words.Touches
	}
	l.clock.narrowest = l.arcWord(s, word, opens+math.Pi, l.clock.bandPx(f.Now.LeastMM()), inkTightText, inkOnTight, inkTight)
}

// arcWord fits a word into the band or beside it, wherever there is more room,
// so that it hides nothing of the band's edge.
func (l *layout) arcWord(s *Style, text string, seenRad, bandPx float64, beside, on, band ink) arcWord {
	c := &l.clock
	track := c.outer - c.inner
	w := arcWord{text: text, seenRad: seenRad, ink: on, plate: band}
	from, to := c.inner, c.inner+bandPx
	if bandPx < track-bandPx {
		w.ink, w.plate = beside, inkTrack
		from, to = c.inner+bandPx, c.outer
	}
	w.radius = (from + to) / 2
	const mostRad = 1.9 // of track for a word
	w.sizePx = shrunk(s.Fonts, text, min(l.textPx, (to-from)/1.3), true, mostRad*w.radius)
	return w
}
