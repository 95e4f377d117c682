package paper

// This file lets the plot library draw onto a page as lines and letters: its canvas
// measures in points from the lower left corner, y upwards, and turns, moves and
// scales what is drawn.

import (
	"image"
	"image/color"
	"math"

	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// mmPerPoint is a point of the plot library, 1/72 in.
const mmPerPoint = 25.4 / 72

// plotArea is a rectangle of the page as a canvas of the plot library.
type plotArea struct {
	s          *Sheet
	x, y, w, h float64 // mm, from the page's upper left corner
	now        plotState
	kept       []plotState
}

// plotState is what Push keeps: pen, dashes, grey, and the way from the canvas to
// its unturned self, [x y] = [a c; b d] [x y] + [e f].
type plotState struct {
	width            vg.Length
	dash             []vg.Length
	grey             uint8
	a, b, c, d, e, f float64
}

var _ vg.CanvasSizer = (*plotArea)(nil)

// PlotArea is a rectangle of the current page, in mm, to be drawn on by the plot
// library. Colours come out as the greys they are seen as.
func (s *Sheet) PlotArea(x, y, w, h float64) vg.CanvasSizer {
	return &plotArea{s: s, x: x, y: y, w: w, h: h, now: plotState{width: 1, a: 1, d: 1}}
}

// Size is the rectangle's.
func (p *plotArea) Size() (w, h vg.Length) {
	return vg.Length(p.w / mmPerPoint), vg.Length(p.h / mmPerPoint)
}

// SetLineWidth, SetLineDash and SetColor choose the pen.
func (p *plotArea) SetLineWidth(w vg.Length) { p.now.width = w }

// SetLineDash chooses dashes; where in them a line begins is left out.
func (p *plotArea) SetLineDash(pattern []vg.Length, _ vg.Length) { p.now.dash = pattern }

// SetColor chooses the grey a colour is seen as (ITU-R BT.601).
func (p *plotArea) SetColor(c color.Color) {
	p.now.grey = 0
	if c != nil {
		p.now.grey = color.GrayModel.Convert(c).(color.Gray).Y
	}
}

// Push keeps the pen and the turns; Pop comes back to them.
func (p *plotArea) Push() { p.kept = append(p.kept, p.now) }

// Pop comes back to what Push kept.
func (p *plotArea) Pop() {
	if n := len(p.kept); n > 0 {
		p.now, p.kept = p.kept[n-1], p.kept[:n-1]
	}
}

// by applies another map before the present one.
func (p *plotArea) by(a, b, c, d, e, f float64) {
	n := p.now
	p.now.a, p.now.b = n.a*a+n.c*b, n.b*a+n.d*b
	p.now.c, p.now.d = n.a*c+n.c*d, n.b*c+n.d*d
	p.now.e, p.now.f = n.a*e+n.c*f+n.e, n.b*e+n.d*f+n.f
}

// Rotate turns what is drawn after it, anticlockwise.
func (p *plotArea) Rotate(rad float64) {
	sin, cos := math.Sincos(rad)
	p.by(cos, sin, -sin, cos, 0, 0)
}

// Translate moves it; Scale makes it larger.
func (p *plotArea) Translate(pt vg.Point) { p.by(1, 0, 0, 1, float64(pt.X), float64(pt.Y)) }

// Scale makes what is drawn after it larger.
func (p *plotArea) Scale(x, y float64) { p.by(x, 0, 0, y, 0, 0) }

// onPage is a point of the canvas on the page, in mm.
func (p *plotArea) onPage(pt vg.Point) (x, y float64) {
	n, u, v := &p.now, float64(pt.X), float64(pt.Y)
	return p.x + mmPerPoint*(n.a*u+n.c*v+n.e), p.y + p.h - mmPerPoint*(n.b*u+n.d*v+n.f)
}

// scale is how much longer lengths have become.
func (p *plotArea) scale() float64 { return math.Sqrt(math.Abs(p.now.a*p.now.d - p.now.b*p.now.c)) }

// Stroke draws a path's outline.
func (p *plotArea) Stroke(path vg.Path) {
	if p.now.width <= 0 {
		return
	}
	mm := func(l vg.Length) float64 { return float64(l) * mmPerPoint * p.scale() }
	var dash []float64
	for _, d := range p.now.dash {
		dash = append(dash, mm(d))
	}
	p.s.pen(Pen{MM: mm(p.now.width), Grey: p.now.grey, Dash: dash})
	p.trace(path, "D")
}

// Fill fills a path.
func (p *plotArea) Fill(path vg.Path) {
	g := int(p.now.grey)
	p.s.pdf.SetFillColor(g, g, g)
	p.trace(path, "F")
}

// arcStepRad is how far apart the points of an arc are.
const arcStepRad = math.Pi / 24

func (p *plotArea) trace(path vg.Path, how string) {
	pdf := p.s.pdf
	begun := false
	to := func(pt vg.Point) {
		x, y := p.onPage(pt)
		if begun {
			pdf.LineTo(x, y)
		} else {
			pdf.MoveTo(x, y)
		}
		begun = true
	}
	for _, c := range path {
		switch c.Type {
		case vg.MoveComp:
			begun = false
			to(c.Pos)
		case vg.LineComp:
			to(c.Pos)
		case vg.ArcComp:
			n := max(1, math.Ceil(math.Abs(c.Angle)/arcStepRad))
			for i := 0.0; i <= n; i++ {
				sin, cos := math.Sincos(c.Start + c.Angle*i/n)
				to(vg.Point{X: c.Pos.X + c.Radius*vg.Length(cos), Y: c.Pos.Y + c.Radius*vg.Length(sin)})
			}
		case vg.CurveComp:
			p.curve(c)
		case vg.CloseComp:
			pdf.ClosePath()
			begun = false
		}
	}
	pdf.DrawPath(how)
}

// curve draws a Bezier curve of one control point or two.
func (p *plotArea) curve(c vg.PathComp) {
	x, y := p.onPage(c.Pos)
	x1, y1 := p.onPage(c.Control[0])
	if len(c.Control) == 1 {
		p.s.pdf.CurveTo(x1, y1, x, y)
		return
	}
	x2, y2 := p.onPage(c.Control[1])
	p.s.pdf.CurveBezierCubicTo(x1, y1, x2, y2, x, y)
}

// FillString writes a text with its baseline's left end at a point, in the
// document's own regular font.
func (p *plotArea) FillString(f font.Face, pt vg.Point, text string) {
	if f.Font.Size <= 0 {
		return
	}
	x, y := p.onPage(pt)
	g := int(p.now.grey)
	p.s.pdf.SetTextColor(g, g, g)
	p.s.pdf.SetFont(family, "", float64(f.Font.Size)*p.scale())
	turnDeg := math.Atan2(p.now.b, p.now.a) * 180 / math.Pi
	if turnDeg != 0 {
		p.s.pdf.TransformBegin()
		p.s.pdf.TransformRotate(turnDeg, x, y)
		defer p.s.pdf.TransformEnd()
	}
	p.s.pdf.Text(x, y, text)
}

// DrawImage puts a picture into a rectangle of the canvas, which stands upright.
func (p *plotArea) DrawImage(r vg.Rectangle, img image.Image) {
	x, y := p.onPage(vg.Point{X: r.Min.X, Y: r.Max.Y})
	mm := func(l vg.Length) float64 { return float64(l) * mmPerPoint * p.scale() }
	if err := p.s.Picture(x, y, mm(r.Max.X-r.Min.X), mm(r.Max.Y-r.Min.Y), img); err != nil {
		p.s.pdf.SetError(err)
	}
}
