package faces

// This file holds what is drawn and the one call that draws it.

import (
	"image"
	"math"
)

// State is how the faces stand to each other.
type State int

const (
	// Open faces have a gap, which may be nothing.
	Open State = iota
	// Hanging: the shaft hangs free, so there is no gap to tell.
	Hanging
	// Bolted faces are drawn flat together; what was gap is now moment.
	Bolted
)

// Gap is the distance between the faces, along the shaft, at their outer radius:
// G0 + Cos cos t + Sin sin t at clock angle t.
type Gap struct{ G0MM, CosMM, SinMM float64 }

// AtMM is the gap at a clock angle.
func (g Gap) AtMM(clockRad float64) float64 {
	sin, cos := math.Sincos(clockRad)
	return g.G0MM + g.CosMM*cos + g.SinMM*sin
}

// SpreadMM is the largest gap less the smallest.
func (g Gap) SpreadMM() float64 { return 2 * math.Hypot(g.CosMM, g.SinMM) }

// LargestMM and LeastMM are the ends of the gap's range.
func (g Gap) LargestMM() float64 { return g.G0MM + g.SpreadMM()/2 }

// LeastMM is the smallest gap.
func (g Gap) LeastMM() float64 { return g.G0MM - g.SpreadMM()/2 }

// OpensAtRad is the clock angle of the largest gap, within half a turn of 12.
func (g Gap) OpensAtRad() float64 { return math.Atan2(g.SinMM, g.CosMM) }

// tightBelowMM is the gap under which the faces are tight.
func (g Gap) tightBelowMM() float64 { return g.LeastMM() + g.SpreadMM()/4 }

// finite tells whether a gap can be drawn.
func (g Gap) finite() bool {
	sum := g.G0MM + g.CosMM + g.SinMM
	return !math.IsNaN(sum) && !math.IsInf(sum, 0)
}

// Faces is what is known of the two faces. Nothing in it depends on the view.
type Faces struct {
	State State
	// Now is the gap shown by the band and the numbers. A gap that is not a
	// finite number is drawn as not known.
	Now Gap
	// AsGauged is drawn as an outline and Planned as dashes, if given.
	AsGauged, Planned *Gap
	// RunOut is the part of Now that turns with shaft and flange, if given.
	RunOut *Gap
	// PositionsRad are the clock angles that get a number; empty means the
	// twelve hours.
	PositionsRad []float64
	// DiameterMM is the faces' outer diameter, to say by how much the gap is
	// drawn larger edge-on; 0 if unknown.
	DiameterMM float64
	// Moment is what the bolted coupling carries, written with its unit; may be
	// empty.
	Moment string
	// FullMM is the gap at the outer ring; 0 lets the drawing choose.
	FullMM float64
	// Marks are readings, each at its clock place; NextRad is the clock
	// angle to be gauged next, if given. With either the track holds no words.
	Marks   []Mark
	NextRad *float64
	// MarksLess: of the readings was taken what is between the faces and is not
	// in Now.
	MarksLess bool
}

// Mark is a reading: the gap lies between two limits there.
type Mark struct {
	ClockRad        float64
	LeastMM, MostMM float64 // infinite where open to that side
	Odd             bool    // does not fit the others
	Unused          bool    // kept, but not gone by
}

// state is State, with a gap that is no number taken as not known.
func (f *Faces) state() State {
	if f.State == Open && !f.Now.finite() {
		return Hanging
	}
	return f.State
}

// parallel tells whether the gap is the same all round, as far as it is written.
func (f *Faces) parallel() bool { return f.Now.SpreadMM() < leastToldMM/2 }

// Style is how a person wants it drawn. Fonts are needed; the zero value of
// everything else is a light picture in thou, looking forward.
type Style struct {
	Fonts      *Fonts
	Words      *Words // nil means DefaultWords
	Units      Units
	LookingAft bool
	Dark       bool
	// Scale is pixels per unit of the screen, 0 for 1; Text is the text size
	// wanted, 0 for 1.
	Scale, Text float64
	// NoStrips leaves the edge-on views out.
	NoStrips bool
}

// turn is a stored clock angle as seen, and back.
func (s *Style) turn(clockRad float64) float64 {
	if s.LookingAft {
		return -clockRad
	}
	return clockRad
}

// fill puts defaults in place of zeros.
func (s *Style) fill() {
	if s.Words == nil {
		w := DefaultWords()
		s.Words = &w
	}
	if s.Scale <= 0 {
		s.Scale = 1
	}
	if s.Text <= 0 {
		s.Text = 1
	}
}

// Draw covers the whole of dst. Pictures are meant to be 240 x 240 to 1600 x
// 1200; smaller ones are drawn as well as they can be.
func Draw(dst *image.RGBA, f Faces, style Style) {
	style.fill()
	style.Fonts.mu.Lock()
	defer style.Fonts.mu.Unlock()
	size := dst.Bounds().Size()
	p := newPen(dst, style.Fonts, style.Dark)
	p.clear()
	l := plan(float64(size.X), float64(size.Y), &f, &style)
	if l.clock.outer > 0 {
		p.clock(&l, &f, &style)
	}
	for i := range l.strips {
		p.strip(&l.strips[i], &l, &f, &style)
	}
	for i := range l.labels {
		p.label(&l.labels[i])
	}
	for _, k := range l.keys {
		p.key(k, l.textPx)
	}
}
