package history

// This file draws the plots: spread, where it opens, nuts, studs, one beside the
// other, in black and white. Nothing is told by colour: found and left, and each
// mount, have a marker of their own.

import (
	"image"
	"image/color"
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// Drawing is a past to be drawn.
type Drawing struct {
	Past    *Past
	Speaker words.Speaker
	Units   say.Units
	ByHours bool // against the engine's hours; else the date
	Dark    bool // light on dark, for the screen
	Only    int  // the only plot, 1 to 4: spread, where it opens, nuts, studs; 0: all
	// Points is the size of type; 0: 8.
	Points float64
}

func (d *Drawing) say(what string) string { return d.Speaker.Say(words.Of("history_plot", what), nil) }

func (d *Drawing) points() float64 {
	if d.Points > 0 {
		return d.Points
	}
	return 8
}

// ink and ground are what is drawn with and on.
func (d *Drawing) ink() color.Color {
	if d.Dark {
		return color.Gray{0xe4}
	}
	return color.Black
}

func (d *Drawing) ground() color.Color {
	if d.Dark {
		return color.Gray{0x18}
	}
	return color.White
}

// faint is for the grid, pale for the way between points.
func (d *Drawing) faint() color.Color {
	if d.Dark {
		return color.Gray{0x38}
	}
	return color.Gray{0xd8}
}

func (d *Drawing) pale() color.Color { return color.Gray{0x80} }

// Image draws on so many pixels, dpi of them to the inch.
func (d *Drawing) Image(widthPX, heightPX int, dpi float64) (image.Image, error) {
	px := func(n int) vg.Length { return vg.Length(float64(n)/dpi) * vg.Inch }
	c := vgimg.NewWith(vgimg.UseWH(px(widthPX), px(heightPX)), vgimg.UseDPI(int(math.Round(dpi))), vgimg.UseBackgroundColor(d.ground()))
	err := d.Draw(draw.New(c))
	return c.Image(), err
}

// Draw draws on any canvas of the plot library (a PDF's, an SVG's, an image's):
// two plots beside two where it is wide, else one below the other.
func (d *Drawing) Draw(c draw.Canvas) error {
	h, err := letters()
	if err != nil {
		return err
	}
	pen := pen{d: d, text: style(h, d.points())}
	plots := pen.all()
	if d.Only > 0 && d.Only <= len(plots) {
		plots = plots[d.Only-1 : d.Only]
	}
	columns := 1
	if size := c.Size(); size.X > size.Y && len(plots) > 1 {
		columns = 2
	}
	rows := (len(plots) + columns - 1) / columns
	grid := make([][]*plot.Plot, rows)
	for i, p := range plots {
		grid[i/columns] = append(grid[i/columns], p)
	}
	pad := vg.Points(d.points())
	tiles := draw.Tiles{Rows: rows, Cols: columns, PadX: 2 * pad, PadY: pad, PadTop: pad / 2, PadBottom: pad / 2, PadLeft: pad / 2, PadRight: pad}
	for i, row := range plot.Align(grid, tiles, c) {
		for j, place := range row {
			grid[i][j].Draw(place)
		}
	}
	return nil
}

// all are the four plots.
func (p pen) all() []*plot.Plot {
	d := p.d
	per := say.MMPerThou
	if d.Units.Metric {
		per = 1
	}
	unit := words.Args{"Unit": d.Units.GapUnit()}
	spread := p.new(d.Speaker.Say(words.HistoryPlotSpread, unit))
	gaps := d.gaps(func(g Gap) (float64, float64, bool) { return g.SpreadMM / per, g.SpreadSDMM / per, g.Known })
	p.add(spread, append([]line{joined(gaps)}, gaps...), say.MMPerThou/per)
	p.limit(spread, per)
	spread.Y.Min = 0

	opens := p.new(d.Speaker.Say(words.HistoryPlotOpens, nil))
	p.add(opens, d.gaps(func(g Gap) (float64, float64, bool) { return g.OpensAtDeg, g.OpensSDDeg, g.Known && g.OpensKnown }), 1)
	opens.Y.Min, opens.Y.Max, opens.Y.Tick.Marker = 0, 430, clock(d.Speaker) // the legend above

	nuts := p.new(d.Speaker.Say(words.HistoryPlotNuts, nil))
	p.add(nuts, d.byMount(func(e *Entry, m int) visit.Maybe { return visit.Known(e.NutsBeforeMM[m]) },
		func(e *Entry, m int) visit.Maybe { return visit.Known(e.NutsAfterMM[m]) }), 1)
	studs := p.new(d.Speaker.Say(words.HistoryPlotStuds, nil))
	p.add(studs, d.byMount(func(e *Entry, m int) visit.Maybe { return e.StudFoundMM[m] }, func(e *Entry, m int) visit.Maybe { return e.StudLeftMM[m] }), 1)
	all := []*plot.Plot{spread, opens, nuts, studs}
	p.sameTime(all)
	return all
}

// limit draws what the last visit's rule allows.
func (p pen) limit(to *plot.Plot, per float64) {
	for i := len(p.d.Past.Entries) - 1; i >= 0; i-- {
		if e := &p.d.Past.Entries[i]; e.LimitMM > 0 {
			f := plotter.NewFunction(func(float64) float64 { return e.LimitMM / per })
			f.LineStyle = p.lineStyle(4)
			to.Add(f)
			to.Legend.Add(p.d.Speaker.Say(words.HistoryPlotLimit, words.Args{"Limit": p.d.Units.LeafWithUnit(e.LimitMM)}), f)
			to.Y.Max = 1.15 * math.Max(to.Y.Max, 1.4*e.LimitMM/per) // the legend's third line above
			return
		}
	}
}
