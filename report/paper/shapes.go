package paper

// This file draws lines, boxes, polygons and hatching.

import (
	"math"

	"github.com/jung-kurt/gofpdf"
)

// Point is a place on the page, in mm.
type Point struct{ X, Y float64 }

// Pen is how an outline is drawn.
type Pen struct {
	MM   float64   // its width; 0: 0.25
	Grey uint8     // 0 is black
	Dash []float64 // nil: a full line
}

func (s *Sheet) pen(p Pen) {
	if p.MM == 0 {
		p.MM = 0.25
	}
	s.pdf.SetDrawColor(int(p.Grey), int(p.Grey), int(p.Grey))
	s.pdf.SetLineWidth(p.MM)
	s.pdf.SetDashPattern(p.Dash, 0)
}

// fill chooses how a shape is drawn: outlined, filled, or both.
func (s *Sheet) fill(p *Pen, grey *uint8) string {
	how := ""
	if grey != nil {
		s.pdf.SetFillColor(int(*grey), int(*grey), int(*grey))
		how = "F"
	}
	if p != nil {
		s.pen(*p)
		how += "D"
	}
	return how
}

// Shade is a fill of a grey, 0 black to 255 white.
func Shade(grey uint8) *uint8 { return &grey }

// Stroke draws a line through points.
func (s *Sheet) Stroke(p Pen, points ...Point) {
	s.pen(p)
	for i := 1; i < len(points); i++ {
		s.pdf.Line(points[i-1].X, points[i-1].Y, points[i].X, points[i].Y)
	}
}

// Rect draws a rectangle; a nil pen draws no outline, a nil shade does not fill.
func (s *Sheet) Rect(x, y, w, h float64, p *Pen, grey *uint8) {
	if how := s.fill(p, grey); how != "" {
		s.pdf.Rect(x, y, w, h, how)
	}
}

// Circle draws a circle.
func (s *Sheet) Circle(c Point, r float64, p *Pen, grey *uint8) {
	if how := s.fill(p, grey); how != "" {
		s.pdf.Circle(c.X, c.Y, r, how)
	}
}

// Polygon draws a closed shape.
func (s *Sheet) Polygon(points []Point, p *Pen, grey *uint8) {
	if how := s.fill(p, grey); how != "" {
		s.pdf.Polygon(converted(points), how)
	}
}

func converted(points []Point) []gofpdf.PointType {
	out := make([]gofpdf.PointType, len(points))
	for i, p := range points {
		out[i] = gofpdf.PointType{X: p.X, Y: p.Y}
	}
	return out
}

// Regular is a regular polygon of n corners, its first at an angle clockwise
// from the top of the page.
func Regular(c Point, r float64, n int, fromRad float64) []Point {
	points := make([]Point, n)
	for i := range points {
		points[i] = Around(c, r, fromRad+2*math.Pi*float64(i)/float64(n))
	}
	return points
}

// Around is the point at a distance and an angle clockwise from the top.
func Around(c Point, r, rad float64) Point {
	sin, cos := math.Sincos(rad)
	return Point{c.X + r*sin, c.Y - r*cos}
}

// Arc are points along a circle from one angle to another, clockwise from the
// top; going backwards if to is less.
func Arc(c Point, r, from, to float64) []Point {
	n := int(math.Ceil(math.Abs(to-from)/0.06)) + 1
	points := make([]Point, n+1)
	for i := range points {
		points[i] = Around(c, r, from+(to-from)*float64(i)/float64(n))
	}
	return points
}

// Hatch fills a shape with slanting lines a distance apart.
func (s *Sheet) Hatch(points []Point, apart float64, p Pen) {
	if len(points) < 3 {
		return
	}
	low, high := points[0], points[0]
	for _, q := range points {
		low = Point{min(low.X, q.X), min(low.Y, q.Y)}
		high = Point{max(high.X, q.X), max(high.Y, q.Y)}
	}
	s.pdf.ClipPolygon(converted(points), false)
	s.pen(p)
	tall := high.Y - low.Y
	for x := low.X - tall; x < high.X; x += apart * math.Sqrt2 {
		s.pdf.Line(x, high.Y, x+tall, low.Y)
	}
	s.pdf.ClipEnd()
}
