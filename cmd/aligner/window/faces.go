package window

// This file is the coupling faces close up: scene/faces drawn into a raster.

import (
	"image"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"aligner/assets"
	"aligner/kinematics"
	"aligner/report/say"
	"aligner/scene/faces"
)

// closeUp is the widget.
type closeUp struct {
	widget.BaseWidget
	raster *canvas.Raster
	pixels *image.RGBA
	what   faces.Faces
	style  faces.Style
	words  faces.Words
}

func newCloseUp() *closeUp {
	c := &closeUp{}
	// The fonts are embedded: only a damaged program has none, and it then
	// draws the band without numbers.
	c.style.Fonts, _ = faces.NewFonts(assets.Font("regular"), assets.Font("bold"))
	c.raster = canvas.NewRaster(c.paint)
	c.raster.ScaleMode = canvas.ImageScalePixels
	c.ExtendBaseWidget(c)
	return c
}

// CreateRenderer shows the raster alone.
func (c *closeUp) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(c.raster) }

// MinSize holds twelve numbers apart.
func (c *closeUp) MinSize() fyne.Size { return fyne.NewSize(230, 230) }

// show puts an answer on the faces.
func (c *closeUp) show(r *kinematics.Result, diameterMM float64, u say.Units, s *Settings) {
	c.what = faces.Faces{
		State:      faces.Open,
		Now:        faces.Gap{G0MM: r.Gap.G0MM, CosMM: r.Gap.CosMM, SinMM: r.Gap.SinMM},
		AsGauged:   c.what.AsGauged,
		Planned:    c.what.Planned,
		DiameterMM: diameterMM,
	}
	if !r.Gap.Known { // hanging, or no answer: never shown as a number
		c.what.Now.G0MM = math.NaN()
	}
	switch r.Held {
	case kinematics.Hanging:
		c.what.State = faces.Hanging
	case kinematics.Bolted:
		c.what.State, c.what.Moment = faces.Bolted, u.Moment(r.CouplingMomentNMM)
	}
	c.style.Units, c.style.LookingAft, c.style.Dark, c.style.Text = faces.Units(u), s.LookingAft, s.Dark, s.TextSize
	c.style.Words = &c.words
	c.Refresh()
}

// paint is asked for exactly the pixels needed.
func (c *closeUp) paint(w, h int) image.Image {
	if c.pixels == nil || c.pixels.Rect.Dx() != w || c.pixels.Rect.Dy() != h {
		c.pixels = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	if width := float64(c.Size().Width); width > 0 {
		c.style.Scale = float64(w) / width
	}
	if c.style.Fonts != nil {
		faces.Draw(c.pixels, c.what, c.style)
	}
	return c.pixels
}

// spread is what the faces show between widest and least.
func (c *closeUp) spread(u say.Units) string { return u.GapWithUnit(c.what.Now.SpreadMM()) }
