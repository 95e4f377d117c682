package history

// This file is how a plot looks: type, lines, markers, room for the legend.

import (
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// pen draws plots of one drawing.
type pen struct {
	d    *Drawing
	text text.Style
}

// shapes are markers told apart in black and white, the first two for found and
// left.
var shapes = []draw.GlyphDrawer{draw.RingGlyph{}, draw.BoxGlyph{}, draw.TriangleGlyph{}, draw.CrossGlyph{}, draw.PlusGlyph{}, draw.PyramidGlyph{}, draw.SquareGlyph{}, draw.CircleGlyph{}}

// dashes part the lines of the mounts.
var dashes = [][]float64{nil, {4, 2}, {1, 2}, {6, 2, 1, 2}, {3, 3}}

// new is an empty plot under a heading.
func (p pen) new(heading string) *plot.Plot {
	g := plot.New()
	g.BackgroundColor = p.d.ground()
	text := p.text
	text.Color = p.d.ink()
	small := text
	small.Font.Size *= 0.9
	title := g.Title.TextStyle
	g.Title.Text, g.Title.TextStyle = heading, text
	g.Title.TextStyle.XAlign, g.Title.TextStyle.YAlign = title.XAlign, title.YAlign
	g.Title.Padding = vg.Points(p.d.points() / 2)
	g.TextHandler = text.Handler
	for _, a := range []*plot.Axis{&g.X, &g.Y} {
		label := a.Tick.Label
		a.Tick.Label = small
		a.Tick.Label.XAlign, a.Tick.Label.YAlign, a.Tick.Label.Rotation = label.XAlign, label.YAlign, label.Rotation
		a.Label.TextStyle = small
		a.LineStyle.Color, a.Tick.LineStyle.Color = p.d.ink(), p.d.ink()
		a.Tick.Length = vg.Points(p.d.points() / 2)
	}
	g.Y.Tick.Marker = decimals{p.d.Units.Plain}
	legend := g.Legend.TextStyle
	g.Legend.TextStyle = small
	g.Legend.TextStyle.YAlign = legend.YAlign
	g.Legend.Top, g.Legend.Left = true, true
	g.Legend.ThumbnailWidth = vg.Points(2.5 * p.d.points())
	g.Legend.Padding = vg.Points(p.d.points() / 8)
	grid := plotter.NewGrid()
	grid.Vertical.Color, grid.Horizontal.Color = p.d.faint(), p.d.faint()
	g.Add(grid)
	return g
}

func (p pen) lineStyle(shape int) draw.LineStyle {
	s := draw.LineStyle{Color: p.d.ink(), Width: vg.Points(p.d.points() / 12)}
	if shape < 0 {
		s.Color = p.d.pale()
		return s
	}
	for _, dash := range dashes[shape%len(dashes)] {
		s.Dashes = append(s.Dashes, vg.Points(dash*p.d.points()/8))
	}
	return s
}

func (p pen) glyph(shape int) draw.GlyphStyle {
	return draw.GlyphStyle{Color: p.d.ink(), Radius: vg.Points(p.d.points() / 3), Shape: shapes[shape%len(shapes)]}
}

// add draws lines, each with its name in the legend, and leaves room above for
// that. leastRange is the least stretch of the axis: less than it is told apart
// by nobody.
func (p pen) add(to *plot.Plot, lines []line, leastRange float64) {
	least, most, any := math.Inf(1), math.Inf(-1), false
	named := 0
	for _, l := range lines {
		if len(l.points) == 0 {
			continue
		}
		any = true
		for _, q := range l.points {
			least, most = min(least, q.y-q.sd), max(most, q.y+q.sd)
		}
		p.addOne(to, l)
		if l.shape >= 0 {
			named++
		}
	}
	if !any {
		to.Y.Min, to.Y.Max = 0, 1
		to.Y.Tick.Marker = plot.ConstantTicks{}
		to.Legend.Add(p.d.say("nothing"))
		return
	}
	room := max(most-least, leastRange)
	to.Y.Min, to.Y.Max = least-0.1*room, most+(0.15+0.16*float64(named))*room
}

func (p pen) addOne(to *plot.Plot, l line) {
	points, errors := make(plotter.XYs, len(l.points)), make(plotter.YErrors, len(l.points))
	for i, q := range l.points {
		points[i].X, points[i].Y = q.x, q.y
		errors[i].Low, errors[i].High = q.sd, q.sd
	}
	var thumbs []plot.Thumbnailer
	if !l.marks {
		way := &plotter.Line{XYs: points, LineStyle: p.lineStyle(l.shape)}
		to.Add(way)
		thumbs = append(thumbs, way)
	}
	if l.shape < 0 {
		return
	}
	if l.marks {
		bars := &plotter.YErrorBars{XYs: points, YErrors: errors, LineStyle: p.lineStyle(0), CapWidth: vg.Points(p.d.points() / 2)}
		to.Add(bars)
	}
	marks := &plotter.Scatter{XYs: points, GlyphStyle: p.glyph(l.shape)}
	to.Add(marks)
	to.Legend.Add(l.name, append(thumbs, marks)...)
}

// sameTime gives every plot the same stretch of time, with room at both ends.
func (p pen) sameTime(all []*plot.Plot) {
	least, last := math.Inf(1), math.Inf(-1)
	for i := range p.d.Past.Entries {
		if x, ok := p.d.Past.at(i, p.d.ByHours); ok {
			least, last = min(least, x), max(last, x)
		}
	}
	known := least <= last
	if !known {
		least, last = 0, 1
	}
	room := max(0.06*(last-least), 10)
	for _, g := range all {
		g.X.Min, g.X.Max = least-room, last+room
		if p.d.ByHours {
			g.X.Min = max(g.X.Min, 0)
			g.X.Tick.Marker = decimals{p.d.Units.Plain}
			g.X.Label.Text = p.d.say("hours")
		} else {
			g.X.Tick.Marker = calendar{most: 5}
			g.X.Label.Text = ""
		}
		if !known { // an axis of no days is of none in particular
			g.X.Tick.Marker = plot.ConstantTicks{}
		}
	}
}
