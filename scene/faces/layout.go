package faces

// This file shares the picture out: clock, captions and edge-on views, in the
// largest text that fits.

import "math"

// layout is where everything goes.
type layout struct {
	textPx float64
	linePx float64 // a thin line
	clock  clockPlan
	labels []label
	strips []stripPlan
	keys   []key
	fits   bool
}

// clockPlan is the clock's place: the band stands on inner, outer is the full
// scale.
type clockPlan struct {
	centre       point
	inner, outer float64
	fullMM       float64
	widest       arcWord // unused where empty
	narrowest    arcWord
}

// pxPerMM is the band's width for a gap of 1 mm.
func (c *clockPlan) pxPerMM() float64 { return (c.outer - c.inner) / c.fullMM }

// bandPx is the band's width for a gap.
func (c *clockPlan) bandPx(gapMM float64) float64 {
	return min(max(gapMM, 0)*c.pxPerMM(), c.outer-c.inner)
}

// arrangement is where the edge-on views go.
type arrangement int

const (
	alone arrangement = iota
	under
	beside
)

// The smallest text, in units of the screen; and how fast it is sought.
const (
	leastText    = 5
	coarse, fine = 0.85, 0.95
)

// plan finds the arrangement with the edge-on views if that costs little, and
// otherwise the clock alone. It chooses for a plain gap, so that the picture does
// not jump from one arrangement to another while the gap changes.
func plan(w, h float64, f *Faces, s *Style) layout {
	if s.NoStrips {
		return fit(w, h, f, s, alone)
	}
	plain := *f
	plain.State, plain.Now = Open, Gap{5 * MMPerThou, 5 * MMPerThou, 0}
	bare := fit(w, h, &plain, s, alone)
	best, most := alone, 0.0
	for _, a := range []arrangement{under, beside} {
		l := fit(w, h, &plain, s, a)
		worth := l.fits && l.textPx >= 0.8*bare.textPx && l.clock.outer >= 0.65*bare.clock.outer
		if size := l.clock.outer * l.textPx; worth && size > most {
			best, most = a, size
		}
	}
	return fit(w, h, f, s, best)
}

// fit lays out with the largest text that fits: in big steps down, and then from
// the last that did not fit in small ones.
func fit(w, h float64, f *Faces, s *Style, a arrangement) layout {
	try := func(size float64) layout { return arrange(w, h, f, s, a, math.Floor(size*2)/2) }
	size, least := s.Text*max(13*s.Scale, min(w, h)/32), leastText*s.Scale
	l := try(size)
	for !l.fits && size > least {
		tooLarge := size
		size = max(least, size*coarse)
		if l = try(size); !l.fits {
			continue
		}
		for between := tooLarge * fine; between > size; between *= fine {
			if b := try(between); b.fits {
				return b
			}
		}
	}
	return l
}

// shares cuts the picture into the clock's part and that of the edge-on views,
// neither longer than it can use, with what is left round both.
func shares(area rect, a arrangement, textPx float64) (clock, strips rect) {
	clock, strips = area, area
	w, h := area.width(), area.height()
	switch a {
	case alone:
		clock = area.lowered(w + captionRoom*textPx)
	case under:
		high := min(max(0.3*h, 9*textPx), 0.42*h, 0.6*w+4*textPx)
		area = area.lowered(w + captionRoom*textPx + high)
		clock.y0, strips.y1 = area.y0, area.y1
		strips.y0 = area.y1 - high
		clock.y1 = strips.y0 - 0.6*textPx
	case beside:
		wide := min(max(0.28*w, 10.5*textPx), 0.45*w, 0.5*h+6*textPx)
		spare := max(0, w-wide-max(1.15*h, 24*textPx)) / 2
		clock.x0, strips.x1 = area.x0+spare, area.x1-spare
		strips.x0 = strips.x1 - wide
		clock.x1 = strips.x0 - 0.8*textPx
	}
	return clock, strips
}

// captionRoom is room for captions under a clock as wide as the picture.
const captionRoom = 5

// arrange lays out with text of one size and tells whether it fits.
func arrange(w, h float64, f *Faces, s *Style, a arrangement, textPx float64) layout {
	l := layout{textPx: textPx, linePx: max(1, textPx/13), fits: true}
	margin := 0.6 * textPx
	area := rect{margin, margin, w - margin, h - margin}
	clock, strips := shares(area, a, textPx)
	l.clock.fullMM = f.full(s)
	clock.y1 -= l.captions(clock, f, s)
	l.layClock(clock, f, s)
	if a != alone {
		l.layStrips(strips, a, f, s)
	}
	l.checkOverlaps(area.grown(margin * 0.9))
	return l
}

// full is the gap at the outer ring.
func (f *Faces) full(s *Style) float64 {
	if f.FullMM > 0 {
		return f.FullMM
	}
	return s.Units.fullMM(f.largestShownMM())
}

// largestShownMM is the widest gap of all that are drawn.
func (f *Faces) largestShownMM() float64 {
	most := 0.0
	if f.state() == Open {
		most = f.Now.LargestMM()
	}
	for _, g := range []*Gap{f.AsGauged, f.Planned} {
		if g != nil && g.finite() {
			most = max(most, g.LargestMM())
		}
	}
	for _, m := range f.Marks {
		for _, mm := range []float64{m.LeastMM, m.MostMM} {
			if !math.IsInf(mm, 0) && !math.IsNaN(mm) {
				most = max(most, mm)
			}
		}
	}
	return most
}

// checkOverlaps looks at all words and numbers: none may touch another or leave
// the picture.
func (l *layout) checkOverlaps(picture rect) {
	for i := range l.labels {
		if !picture.holds(l.labels[i].box) {
			l.fits = false
			return
		}
		for k := range i {
			if l.labels[i].box.overlaps(l.labels[k].box) {
				l.fits = false
				return
			}
		}
	}
}
