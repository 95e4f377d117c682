package drawn

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

// Faces is the widget.
type Faces struct {
	widget.BaseWidget
	raster *canvas.Raster
	pixels *image.RGBA
	What   faces.Faces
	Style  faces.Style
	Words  faces.Words
}

func NewFaces() *Faces {
	c := &Faces{}
	// The fonts are embedded: only a damaged program has none, and it then
	// draws the band without numbers.
	c.Style.Fonts, _ = faces.NewFonts(assets.Font("regular"), assets.Font("bold"))
	c.raster = canvas.NewRaster(c.paint)
	c.raster.ScaleMode = canvas.ImageScalePixels
	c.ExtendBaseWidget(c)
	return c
}

// CreateRenderer shows the raster alone.
func (c *Faces) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(c.raster) }

// MinSize holds twelve numbers apart.
func (c *Faces) MinSize() fyne.Size { return fyne.NewSize(230, 230) }

// SetResult puts an answer on the faces. What AsGauged, Planned, Marks and NextRad
// show stays.
func (c *Faces) SetResult(r *kinematics.Result, diameterMM float64, s Looks) {
	c.What = faces.Faces{
		State:      faces.Open,
		Now:        faces.Gap{G0MM: r.Gap.G0MM, CosMM: r.Gap.CosMM, SinMM: r.Gap.SinMM},
		AsGauged:   c.What.AsGauged,
		Planned:    c.What.Planned,
		Marks:      c.What.Marks,
		NextRad:    c.What.NextRad,
		MarksLess:  c.What.MarksLess,
		DiameterMM: diameterMM,
	}
	if !r.Gap.Known { // hanging, or no answer: never shown as a number
		c.What.Now.G0MM = math.NaN()
	}
	switch r.Held {
	case kinematics.Hanging:
		c.What.State = faces.Hanging
	case kinematics.Bolted:
		c.What.State, c.What.Moment = faces.Bolted, s.Units.Moment(r.CouplingMomentNMM)
	}
	c.Style.Units, c.Style.LookingAft, c.Style.Dark, c.Style.Text = faces.Units(s.Units), s.LookingAft, s.Dark, s.TextSize
	c.Style.Words = &c.Words
	c.Refresh()
}

// paint is asked for exactly the pixels needed.
func (c *Faces) paint(w, h int) image.Image {
	if c.pixels == nil || c.pixels.Rect.Dx() != w || c.pixels.Rect.Dy() != h {
		c.pixels = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	if width := float64(c.Size().Width); width > 0 {
		c.Style.Scale = float64(w) / width
	}
	if c.Style.Fonts != nil {
		faces.Draw(c.pixels, c.What, c.Style)
	}
	return c.pixels
}

// Spread is what the faces show between widest and least.
func (c *Faces) Spread(u say.Units) string { return u.GapWithUnit(c.What.Now.SpreadMM()) }
