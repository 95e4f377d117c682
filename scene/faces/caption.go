package faces

// This file lays out what stands under the clock: the direction of view, the
// scale, and the key to outlines and dashes.

import "fmt"

// key is a sample of a line before its words.
type key struct {
	from, to point
	dashed   bool
}

// captions fills rows up from the bottom of an area and returns their height.
func (l *layout) captions(area rect, f *Faces, s *Style) float64 {
	size := 0.92 * l.textPx
	pitch := 1.4 * size
	type row struct {
		text   string
		i      ink
		sample bool
		dashed bool
	}
	var rows []row
	add := func(text string, i ink) {
		for _, line := range wrap(s.Fonts, text, size, false, area.width()) {
			rows = append(rows, row{text: line, i: i})
		}
	}
	view := s.Words.SeenForward
	if s.LookingAft {
		view = s.Words.SeenAft
	}
	add(view, inkText)
	scale := "" // the row stays, so that the clock does not jump
	if f.state() == Open || f.AsGauged != nil || f.Planned != nil {
		scale = fmt.Sprintf(s.Words.OuterRing, s.Units.round(l.clock.fullMM)+" "+s.Units.unit(s.Words))
	}
	add(scale, inkQuiet)
	if len(f.Marks) > 0 {
		add(f.keyToMarks(s.Words), inkText)
	}
	if f.NextRad != nil {
		add(fmt.Sprintf(s.Words.NextAt, OpensAt(s.turn(*f.NextRad))), inkText)
	}
	if f.AsGauged != nil && f.AsGauged.finite() {
		rows = append(rows, row{f.AsGauged.tell(s, s.Words.AsGauged, s.Words.AsGaugedFlat), inkText, true, false})
	}
	if f.Planned != nil && f.Planned.finite() {
		rows = append(rows, row{f.Planned.tell(s, s.Words.Planned, s.Words.PlannedFlat), inkText, true, true})
	}
	if f.RunOut != nil && f.RunOut.finite() {
		add(f.RunOut.tell(s, s.Words.RunOut, s.Words.RunOut), inkText)
	}
	y := area.y1 - float64(len(rows))*pitch + pitch/2
	for _, r := range rows {
		sample := 0.0
		if r.sample {
			sample = 2.6 * size
		}
		own := shrunk(s.Fonts, r.text, size, false, area.width()-sample)
		if own < 0.7*size {
			l.fits = false
		}
		c := newLabel(s.Fonts, r.text, own, false, r.i, point{area.middle().x + sample/2, y})
		if r.sample {
			l.keys = append(l.keys, key{point{c.box.x0 - sample, y}, point{c.box.x0 - 0.5*size, y}, r.dashed})
		}
		l.labels = append(l.labels, c)
		y += pitch
	}
	return float64(len(rows))*pitch + 0.2*size
}

// tell says a gap's spread and where it opens, or its spread alone.
func (g *Gap) tell(s *Style, words, flat string) string {
	spread := s.Units.gap(g.SpreadMM()) + " " + s.Units.unit(s.Words)
	if g.SpreadMM() < leastToldMM/2 && flat != words {
		return fmt.Sprintf(flat, spread)
	}
	return fmt.Sprintf(words, spread, OpensAt(s.turn(g.OpensAtRad())))
}

// key draws a sample of a line.
func (p *pen) key(k key, textPx float64) {
	p.overlay([]point{k.from, k.to}, k.dashed, textPx)
}

// overlay draws a line of a gap that is not the present one.
func (p *pen) overlay(points []point, dashed bool, textPx float64) {
	width := max(1.4, textPx/8)
	p.fill(stroke(points, 1.8*width), inkFace) // so that it is seen on any colour
	if dashed {
		p.fill(dashes(points, width, textPx*0.55, textPx*0.4), inkOverlay)
		return
	}
	p.fill(stroke(points, width*0.8), inkOverlay)
}
