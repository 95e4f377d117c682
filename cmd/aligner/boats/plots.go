package boats

// This file is the plots of a boat's past on the page: all four or one, against
// the date or the engine's hours.

import (
	"image"
	"image/draw"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/report/history"
)

// plots is the picture and what chooses it.
type plots struct {
	choice  *fyne.Container
	picture *canvas.Raster
	hours   *page.Button
	which   *page.Button
	drawing history.Drawing
	desk    page.Desk
	made    *image.RGBA // of the picture's pixels, as long as nothing changes
}

// whichPlot names the plots, all of them first.
var whichPlot = []words.ID{words.PastAll, words.PastOne, words.PastTwo, words.PastThree, words.PastFour}

func newPlots(desk page.Desk) *plots {
	l := desk.Looks
	p := &plots{desk: desk, drawing: history.Drawing{Speaker: desk.Speaker, Units: l.Units, Dark: l.Dark, Points: plotPoints * max(l.TextSize, 0.8)}}
	if desk.Window.Canvas().Size().Width < roomForAll {
		p.drawing.Only = 1 // one that can be read, the others a press away
	}
	p.picture = canvas.NewRaster(p.pixels)
	p.picture.ScaleMode = canvas.ImageScalePixels
	p.picture.SetMinSize(fyne.NewSize(240, 160))
	p.which = page.NewButton(desk.Key, "", func() { p.change(func() { p.drawing.Only = (p.drawing.Only + 1) % len(whichPlot) }) })
	p.hours = page.NewButton(desk.Key, "", func() { p.change(func() { p.drawing.ByHours = !p.drawing.ByHours }) })
	p.choice = container.NewHBox(p.which, p.hours)
	p.name()
	return p
}

// plotPoints is the size of type on the screen, in points at plotDPI.
const (
	plotPoints = 9
	plotDPI    = 96
)

// roomForAll is the window's width from which four plots can be read beside the
// visits.
const roomForAll = 1000

// show draws another past.
func (p *plots) show(past *history.Past) {
	p.change(func() { p.drawing.Past = past })
}

func (p *plots) change(how func()) {
	how()
	p.made = nil
	p.name()
	p.picture.Refresh()
}

// name says on the buttons what is shown; they step on to the next.
func (p *plots) name() {
	say := func(id words.ID) string { return p.desk.Speaker.Say(id, nil) }
	p.which.SetText(say(whichPlot[p.drawing.Only]) + " \u203a")
	by := words.PastByDate
	if p.drawing.ByHours {
		by = words.PastByHours
	}
	p.hours.SetText(say(by) + " \u203a")
	if p.drawing.Past != nil && p.drawing.Past.HasHours() {
		p.hours.Show()
	} else {
		p.hours.Hide()
	}
}

// pixels draws for so many pixels.
func (p *plots) pixels(w, h int) image.Image {
	if p.made != nil && p.made.Bounds().Dx() == w && p.made.Bounds().Dy() == h {
		return p.made
	}
	all := image.NewRGBA(image.Rect(0, 0, w, h))
	if p.drawing.Past == nil || w < 8 || h < 8 {
		return all
	}
	scale := float32(1)
	if c := fyne.CurrentApp().Driver().CanvasForObject(p.picture); c != nil {
		scale = c.Scale()
	}
	drawn, err := p.drawing.Image(w, h, plotDPI*float64(scale))
	if err != nil {
		return all
	}
	draw.Draw(all, all.Bounds(), drawn, drawn.Bounds().Min, draw.Src)
	p.made = all
	return all
}
