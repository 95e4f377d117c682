package faces

// This file places the edge-on views and finds how much larger than true they
// show the gap.

import (
	"fmt"
	"math"
	"strconv"
)

// stripPlan is one edge-on view. It is laid out in its own directions: across
// runs along the faces, ahead from the shaft side to the engine side.
type stripPlan struct {
	centre         point // the middle of the shaft side's face
	across, ahead  point
	facePx         float64 // the faces' diameter
	gapPx          float64 // room for the gap
	pxPerMM        float64 // of gap
	flange, hub    float64 // how long
	hubHalf        float64
	fromGap, toGap float64 // clock angles, stored, at the across ends - and +
}

// times are the exaggerations offered.
var times = []float64{1, 2, 5, 10, 20, 50, 100, 200}

// layStrips places both views into an area.
func (l *layout) layStrips(area rect, a arrangement, f *Faces, s *Style) {
	first, second := area, area
	if a == under {
		cut := area.x0 + 0.56*area.width()
		first.x1, second.x0 = cut-0.5*l.textPx, cut+0.5*l.textPx
	} else {
		first.y1, second.y0 = area.middle().y-0.4*l.textPx, area.middle().y+0.4*l.textPx
	}
	above, port := l.fromAbove(first, f, s), l.fromPort(second, f, s)
	face, gap := min(above.facePx, port.facePx), min(above.gapPx, port.gapPx)
	if face < 3.5*l.textPx || gap < 0.8*l.textPx {
		l.fits = false
		return
	}
	perMM, n := exaggeration(f, face, gap)
	for _, v := range []*stripPlan{&above, &port} {
		v.gapPx, v.pxPerMM, v.facePx, v.hubHalf = gap, perMM, face, min(v.hubHalf, 0.36*face)
	}
	if a == beside { // each as high as it needs, title and all
		first = first.lowered(1.6*l.textPx + gap + 2*(above.flange+above.hub))
		second = second.lowered((1.6+2*1.45)*l.textPx + face)
	}
	titles := [2]string{s.Words.FromAbove, s.Words.FromPort}
	size := 0.92 * l.textPx
	for k, area := range []rect{first, second} {
		titles[k] = withTimes(titles[k], n, f, s)
		size = shrunk(s.Fonts, titles[k], size, false, area.width())
	}
	if size < 0.65*l.textPx {
		l.fits = false
	}
	l.finish(&above, first, titles[0], size, f, s)
	l.finish(&port, second, titles[1], size, f, s)
}

// lowered is a rectangle of less height in the middle of another.
func (r rect) lowered(height float64) rect {
	cut := max(0, r.height()-height) / 2
	return rect{r.x0, r.y0 + cut, r.x1, r.y1 - cut}
}

// exaggeration is how many pixels a mm of gap gets, and how many times the
// face's own scale that is; 0 times if the face's diameter is not known.
func exaggeration(f *Faces, facePx, gapPx float64) (pxPerMM, n float64) {
	largest := f.largestShownMM()
	if f.DiameterMM <= 0 {
		return gapPx / max(largest, 5*MMPerThou), 0
	}
	scale := facePx / f.DiameterMM
	if largest*scale > gapPx { // held so far apart that it does not fit
		return gapPx / largest, 0
	}
	for _, k := range times {
		if largest*k*scale <= gapPx {
			n = k
		}
	}
	return n * scale, n
}

// fromAbove looks down, in the same sense as the clock: looking forward the
// engine is above and port to the left; looking aft the shaft is above and
// starboard to the left.
func (l *layout) fromAbove(area rect, f *Faces, s *Style) stripPlan {
	size := l.textPx
	v := stripPlan{ahead: point{0, -1}, across: point{1, 0}, flange: 0.75 * size, hub: 1.4 * size}
	v.fromGap, v.toGap = -math.Pi/2, math.Pi/2
	if s.LookingAft {
		v.ahead, v.across = point{0, 1}, point{-1, 0}
	}
	v.facePx = area.width() - 2*l.endWidth(s)
	v.gapPx = min(area.height()-1.6*size-2*(v.flange+v.hub), 0.4*v.facePx)
	v.hubHalf = 0.34 * v.facePx
	return v
}

// endWidth is what stands beside the faces' ends, from above: a number, and the
// part of the side's name that does not fit under the flange.
func (l *layout) endWidth(s *Style) float64 {
	number := s.Fonts.width(s.Units.gap(12*MMPerThou), false)
	name := max(s.Fonts.width(s.Words.Port, true), s.Fonts.width(s.Words.Starboard, true))
	return max(number+0.4, name-0.4) * l.textPx
}

// fromPort looks to starboard: forward is at the left, whichever way the clock
// is seen.
func (l *layout) fromPort(area rect, f *Faces, s *Style) stripPlan {
	size := l.textPx
	v := stripPlan{ahead: point{-1, 0}, across: point{0, 1}, flange: 0.75 * size}
	v.fromGap, v.toGap = 0, math.Pi
	v.facePx = area.height() - (1.6+2*1.45)*size
	name := 0.85 * max(s.Fonts.width(s.Words.EngineSide, false), s.Fonts.width(s.Words.ShaftSide, false))
	v.hub = min((name+0.6)*size, (area.width()-2*v.flange-1.6*size)/2)
	v.gapPx = min(area.width()-2*(v.flange+v.hub), 0.4*v.facePx)
	v.hubHalf = max(0.3*v.facePx, 0.7*size)
	return v
}

// withTimes adds the exaggeration to a view's title, where a gap is shown.
func withTimes(title string, n float64, f *Faces, s *Style) string {
	switch {
	case f.state() != Open:
		return title
	case n == 0:
		return title + ", " + s.Words.NotToScale
	}
	return title + ", " + fmt.Sprintf(s.Words.GapTimes, strconv.FormatFloat(n, 'f', -1, 64))
}

// finish centres a view in its area and writes round it.
func (l *layout) finish(v *stripPlan, area rect, title string, titlePx float64, f *Faces, s *Style) {
	size := l.textPx
	l.labels = append(l.labels, newLabel(s.Fonts, title, titlePx, false, inkText, point{area.middle().x, area.y0 + 0.5*size}))
	body := area
	body.y0 += 1.6 * size
	v.centre = body.middle().plus(-v.gapPx/2, v.ahead)
	l.hubNames(v, f, s)
	if f.state() == Open {
		l.endNumbers(v, f, s)
	}
	l.strips = append(l.strips, *v)
}

// hubNames writes which half is which on their hubs, if both have room.
func (l *layout) hubNames(v *stripPlan, f *Faces, s *Style) {
	width, height := 2*v.hubHalf, v.hub
	if v.ahead.x != 0 {
		width, height = height, width
	}
	size := 0.85 * l.textPx
	for _, name := range []string{s.Words.EngineSide, s.Words.ShaftSide} {
		size = shrunk(s.Fonts, name, size, false, width-0.3*l.textPx)
	}
	if size < 0.6*l.textPx || height < 1.1*size {
		return
	}
	ahead := v.flange + v.hub/2
	l.labels = append(l.labels,
		newLabel(s.Fonts, s.Words.ShaftSide, size, false, inkText, v.place(0, -ahead)),
		newLabel(s.Fonts, s.Words.EngineSide, size, false, inkText, v.engine(f, 0, ahead)))
}

// endNumbers writes the gap at both ends, with the side's name.
func (l *layout) endNumbers(v *stripPlan, f *Faces, s *Style) {
	size := l.textPx
	w := s.Words
	if v.ahead.x != 0 { // from port: one row above, one below
		for k, name := range []string{w.Top, w.Bottom} {
			text := name + " " + s.Units.gap(f.Now.AtMM(float64(k)*math.Pi))
			at := v.place(float64(2*k-1)*(v.facePx/2+0.75*size), v.gapPx/2)
			l.labels = append(l.labels, newLabel(s.Fonts, text, 0.95*size, true, inkText, at))
		}
		return
	}
	for k, name := range []string{w.Port, w.Starboard} {
		angle := float64(2*k-1) * math.Pi / 2
		sign, end := float64(2*k-1), v.facePx/2+l.endWidth(s)
		wide := s.Fonts.width(s.Units.gap(12*MMPerThou), false) * size
		at := v.place(sign*(v.facePx/2+0.4*size+wide/2), v.gapAt(f, &f.Now, sign)/2)
		l.labels = append(l.labels, newLabel(s.Fonts, s.Units.gap(f.Now.AtMM(angle)), size, false, inkText, at))
		wide = s.Fonts.width(name, true) * 0.95 * size
		at = v.place(sign*(end-wide/2), -v.flange-v.hub/2-0.1*size)
		l.labels = append(l.labels, newLabel(s.Fonts, name, 0.95*size, true, inkText, at))
	}
}

// place is a point of the shaft side: so far across, so far ahead of its face.
func (v *stripPlan) place(across, ahead float64) point {
	return v.centre.plus(across, v.across).plus(ahead, v.ahead)
}

// gapAt is how wide the gap is drawn at a share of the radius across.
func (v *stripPlan) gapAt(f *Faces, g *Gap, share float64) float64 {
	switch f.state() {
	case Hanging:
		return v.gapPx / 2
	case Bolted:
		return 0
	}
	half := (g.AtMM(v.toGap) - g.AtMM(v.fromGap)) / 2
	return max(0, (g.G0MM+half*share)*v.pxPerMM)
}

// engine is a point of the engine side, so far across and ahead of its face,
// moved by N times its displacement: along by the gap, across by the tilt.
func (v *stripPlan) engine(f *Faces, across, ahead float64) point {
	share := across / (v.facePx / 2)
	tilt := (v.gapAt(f, &f.Now, 1) - v.gapAt(f, &f.Now, -1)) / v.facePx
	return v.place(across-tilt*ahead, ahead+v.gapAt(f, &f.Now, share))
}
