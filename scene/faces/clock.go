package faces

// This file draws the clock: track, band, hatching, rings and words along them.

import "math"

// clock draws everything of the clock but its labels.
func (p *pen) clock(l *layout, f *Faces, s *Style) {
	c := &l.clock
	p.fill(annulus(c.centre, c.inner, c.outer), inkTrack)
	p.fill(disc(c.centre, c.inner), inkFace)
	if f.state() == Open {
		p.tight(l, f, s)
		p.band(l, f, s)
	}
	p.rings(l, f)
	if f.state() == Bolted {
		p.boltCircle(l)
	}
	for _, o := range []struct {
		gap    *Gap
		dashed bool
	}{{f.AsGauged, false}, {f.Planned, true}} {
		if o.gap != nil && o.gap.finite() {
			edge := func(seen float64) float64 { return c.inner + c.bandPx(o.gap.AtMM(s.turn(seen))) }
			p.overlay(around(c.centre, 0, 2*math.Pi, edge), o.dashed, l.textPx)
		}
	}
	p.ticks(l, f, s)
	for _, w := range []*arcWord{&c.widest, &c.narrowest} {
		p.arcWord(w, c)
	}
	p.marks(l, f, s)
}

// The lowest quarter of a sine is a third of the turn; openHalf is half the rest.
const openHalf = 2 * math.Pi / 3

// tight hatches the track where the gap is tight.
func (p *pen) tight(l *layout, f *Faces, s *Style) {
	if f.parallel() {
		return
	}
	c, from := &l.clock, s.turn(f.Now.OpensAtRad())+openHalf
	area := sector(c.centre, from, from+2*math.Pi-2*openHalf, constant(c.inner), constant(c.outer))
	p.hatched(area, inkTight, max(1, l.textPx*0.11), l.textPx*0.5)
}

// band draws the gap, as wide as it is, blue where open and orange where tight.
func (p *pen) band(l *layout, f *Faces, s *Style) {
	c := &l.clock
	rim := constant(c.inner)
	edge := func(seen float64) float64 { return c.inner + c.bandPx(f.Now.AtMM(s.turn(seen))) }
	if f.parallel() {
		p.fill(sector(c.centre, 0, 2*math.Pi, rim, edge), inkOpen)
		return
	}
	opens, under := s.turn(f.Now.OpensAtRad()), arcStepRad/2 // so that no seam shows
	p.fill(sector(c.centre, opens-openHalf-under, opens+openHalf+under, rim, edge), inkOpen)
	p.fill(sector(c.centre, opens+openHalf, opens+2*math.Pi-openHalf, rim, edge), inkTight)
}

// rings draws the rim, the full scale and half of it.
func (p *pen) rings(l *layout, f *Faces) {
	c := &l.clock
	if f.state() == Open {
		half := around(c.centre, 0, 2*math.Pi, constant((c.inner+c.outer)/2))
		p.fill(dashes(half, l.linePx*0.8, l.textPx*0.2, l.textPx*0.3), inkGrid)
	}
	p.fill(ring(c.centre, c.outer, l.linePx), inkLine)
	p.fill(ring(c.centre, c.inner, 1.8*l.linePx), inkLine)
}

// boltCircle draws bolt heads on the track.
func (p *pen) boltCircle(l *layout) {
	c := &l.clock
	r := 0.2 * (c.outer - c.inner)
	for k := range 4 {
		at := c.centre.plus((c.inner+c.outer)/2, ray((float64(k)+0.5)*math.Pi/2))
		var head []point
		for corner := range 6 {
			head = append(head, at.plus(r*1.2, ray(float64(corner)*math.Pi/3)))
		}
		p.fill(shape{head}, inkMetal)
		p.fill(stroke(append(head, head[0]), l.linePx), inkLine)
	}
}

// ticks draws the hours, and a pointer where the gap is widest.
func (p *pen) ticks(l *layout, f *Faces, s *Style) {
	c := &l.clock
	for hour := range 12 {
		d := ray(float64(hour) * math.Pi / 6)
		long, wide := 0.3*l.textPx, l.linePx
		if hour%3 == 0 {
			long, wide = 0.5*l.textPx, 1.8*l.linePx
		}
		p.fill(stroke([]point{c.centre.plus(c.outer, d), c.centre.plus(c.outer+long, d)}, wide), inkLine)
	}
	for _, a := range f.PositionsRad {
		p.fill(disc(c.centre.plus(c.outer, ray(s.turn(a))), 0.22*l.textPx), inkLine)
	}
	if f.state() == Open && !f.parallel() {
		p.pointer(l, s.turn(f.Now.OpensAtRad()), inkOpen)
	}
	if f.RunOut != nil && f.RunOut.finite() && f.RunOut.SpreadMM() > leastToldMM/2 {
		p.lozenge(l, s.turn(f.RunOut.OpensAtRad()))
	}
}

// pointer is a wedge that points inwards at the outer ring.
func (p *pen) pointer(l *layout, seenRad float64, i ink) {
	d := ray(seenRad)
	across := point{-d.y, d.x}.times(0.36 * l.textPx)
	tip, foot := l.clock.centre.plus(l.clock.outer+0.5*l.linePx, d), l.clock.centre.plus(l.clock.outer+0.66*l.textPx, d)
	p.fill(polygon(tip, foot.add(across), foot.sub(across)), i)
}

// lozenge marks where run-out adds most to the gap, on the rim.
func (p *pen) lozenge(l *layout, seenRad float64) {
	d := ray(seenRad)
	at := l.clock.centre.plus(l.clock.inner, d)
	out, across := d.times(0.45*l.textPx), point{-d.y, d.x}.times(0.45*l.textPx)
	outline := []point{at.add(out), at.add(across), at.sub(out), at.sub(across)}
	p.fill(shape{outline}, inkFace)
	p.fill(stroke(append(outline, outline[0], outline[1]), 1.4*l.linePx), inkText)
}

// arcWord writes a word on the track, clear of what is below it.
func (p *pen) arcWord(w *arcWord, c *clockPlan) {
	if w.text == "" {
		return
	}
	half := p.fonts.width(w.text, true)*w.sizePx/2/w.radius + 0.35*w.sizePx/w.radius
	band := 0.55 * w.sizePx
	inner, outer := max(w.radius-band, c.inner+2), min(w.radius+band, c.outer-1)
	p.fill(sector(c.centre, w.seenRad-half, w.seenRad+half, constant(inner), constant(outer)), w.plate)
	p.arcText(w.text, c.centre, w.radius, w.seenRad, w.sizePx, w.ink)
}
