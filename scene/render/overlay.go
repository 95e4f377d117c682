// This file holds the overlay: marks that are drawn over the finished picture.

package render

import (
	"image/color"

	"github.com/go-gl/mathgl/mgl64"
)

// Overlay is drawn over the picture in this order: lines, arrows, dots, labels;
// within a kind the later lies on top. Sizes are in pixels, so marks stay as
// legible however far the camera is.
type Overlay struct {
	Lines  []Line
	Arrows []Arrow
	Dots   []Dot
	Labels []Label
}

// Behind says what becomes of a mark where a solid stands in front of it.
type Behind uint8

const (
	ShowBehind  Behind = iota // drawn as if nothing stood in front
	FaintBehind               // drawn at a quarter of its strength
	HideBehind                // not drawn
)

// share is how much of a hidden mark shows.
func (b Behind) share() float32 {
	return [...]float32{ShowBehind: 1, FaintBehind: 0.25, HideBehind: 0}[b]
}

// Line joins points by straight pieces with round ends and joints.
type Line struct {
	// Points are in the scene; with Flat in pixels of the picture (x right, y
	// down, z unused).
	Points []mgl64.Vec3
	Flat   bool
	Width  float32
	// Dash and Gap are lengths along the line in pixels; a zero Gap draws it
	// whole.
	Dash, Gap float32
	Colour    color.NRGBA
	Behind    Behind
}

// Arrow runs from From to its tip at To. Its head shrinks with an arrow that
// would be shorter than it.
type Arrow struct {
	From, To mgl64.Vec3
	Flat     bool
	Width    float32
	Head     float32 // length of the head; 0 means four widths
	BothEnds bool    // a head at From too
	Colour   color.NRGBA
	Behind   Behind
}

// Dot is a disc with a ring round it: a handle.
type Dot struct {
	At     mgl64.Vec3
	Flat   bool
	Radius float32 // to the outside of the ring
	Fill   color.NRGBA
	Ring   color.NRGBA
	Width  float32 // of the ring
	Behind Behind  // judged at the middle, for the dot as a whole
}

// Label is text on a plate.
type Label struct {
	At   mgl64.Vec3
	Flat bool
	Text string // lines are parted by \n
	Font *Font
	// Offset moves the plate from the anchor in pixels, and Pivot says which
	// point of the plate comes to lie there: {0, 0} its top left corner,
	// {0.5, 1} the middle of its lower edge.
	Offset, Pivot [2]float32
	Colour        color.NRGBA
	Plate         color.NRGBA // transparent for no plate
	// Leader, unless transparent, draws a thin line from the anchor to the plate.
	Leader color.NRGBA
	// Behind is judged at the anchor, for the label as a whole.
	Behind Behind
	// Keep moves the plate into the picture if it would reach outside, as long
	// as the anchor is inside.
	Keep bool
	// Yield moves the plate aside where it would lie on one of an earlier label,
	// to the nearest free place about it; where there is none it stays.
	Yield bool
}

// overlay draws the scene's marks.
func (r *Renderer) overlay(o *Overlay) {
	p := &r.painter
	p.begin(r)
	for i := range o.Lines {
		p.line(&o.Lines[i])
	}
	for i := range o.Arrows {
		p.arrow(&o.Arrows[i])
	}
	for i := range o.Dots {
		p.dot(&o.Dots[i])
	}
	p.plates = p.plates[:0]
	for i := range o.Labels {
		p.label(&o.Labels[i])
	}
}
