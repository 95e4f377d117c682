package faces

// This file draws the edge-on views.

// strip draws both halves and the wedge between them.
func (p *pen) strip(v *stripPlan, l *layout, f *Faces, s *Style) {
	if f.state() == Open {
		p.wedge(v, l, f)
	}
	p.half(v, l, func(across, ahead float64) point { return v.place(across, -ahead) }, f)
	p.half(v, l, func(across, ahead float64) point { return v.engine(f, across, ahead) }, f)
	if f.state() == Bolted {
		p.bolts(v, l)
	}
	for _, o := range []struct {
		gap    *Gap
		dashed bool
	}{{f.AsGauged, false}, {f.Planned, true}} {
		if o.gap != nil && o.gap.finite() && f.state() == Open {
			r := v.facePx / 2
			p.overlay([]point{v.place(-r, v.gapAt(f, o.gap, -1)), v.place(r, v.gapAt(f, o.gap, 1))}, o.dashed, l.textPx)
		}
	}
}

// half draws one half: flange and hub, ahead counted from its face.
func (p *pen) half(v *stripPlan, l *layout, at func(across, ahead float64) point, f *Faces) {
	r, h := v.facePx/2, v.hubHalf
	outline := []point{
		at(-r, 0), at(r, 0), at(r, v.flange), at(h, v.flange), at(h, v.flange+v.hub),
		at(-h, v.flange+v.hub), at(-h, v.flange), at(-r, v.flange),
	}
	p.fill(shape{outline}, inkMetal)
	closed := append(outline, outline[0])
	if f.state() == Hanging {
		p.fill(dashes(closed, l.linePx, 0.4*l.textPx, 0.3*l.textPx), inkLine)
		return
	}
	for i := range outline {
		p.fill(stroke(closed[i:i+2], l.linePx), inkLine)
	}
}

// wedge fills the gap, tight and open parts apart.
func (p *pen) wedge(v *stripPlan, l *layout, f *Faces) {
	r := v.facePx / 2
	area := func(from, to float64) shape {
		return polygon(
			v.place(from*r, 0), v.place(to*r, 0),
			v.place(to*r, v.gapAt(f, &f.Now, to)), v.place(from*r, v.gapAt(f, &f.Now, from)))
	}
	p.fill(area(-1, 1), inkOpen)
	if f.parallel() {
		return
	}
	half := (f.Now.AtMM(v.toGap) - f.Now.AtMM(v.fromGap)) / 2
	if half == 0 {
		return
	}
	cut := (f.Now.tightBelowMM() - f.Now.G0MM) / half // the share of the radius where it begins
	var tight shape
	switch {
	case cut > -1 && cut < 1 && half > 0:
		tight = area(-1, cut)
	case cut > -1 && cut < 1:
		tight = area(cut, 1)
	default:
		return
	}
	p.fill(tight, inkTight)
	p.hatched(tight, inkTightText, max(1, l.textPx*0.11), l.textPx*0.4)
}

// bolts draws two bolts across the faces.
func (p *pen) bolts(v *stripPlan, l *layout) {
	for _, side := range []float64{-1, 1} {
		c, w, long := side*(v.facePx/2+v.hubHalf)/2, 0.16*l.textPx, v.flange+0.35*l.textPx
		for _, part := range []struct{ half, from, to float64 }{{w, -long, long}, {2.4 * w, -long, -v.flange}, {2.4 * w, v.flange, long}} {
			s := polygon(v.place(c-part.half, part.from), v.place(c+part.half, part.from), v.place(c+part.half, part.to), v.place(c-part.half, part.to))
			p.fill(s, inkLine)
		}
	}
}
