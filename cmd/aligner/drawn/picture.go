package drawn

// This file is the picture: the scene drawn into a raster, and a hand on it.
// What the hand means is told to a Hand; the picture itself changes
// nothing but its view.

import (
	"image"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"aligner/assets"
	"aligner/scene"
	"aligner/scene/render"
)

// Hand is told what the hand does to a handle.
type Hand interface {
	// TakeHandle begins a drag; MoveHandle says how far, in true mm from where
	// it was taken, snapped unless free; LeaveHandle ends it as one edit.
	TakeHandle(scene.HandleID)
	MoveHandle(id scene.HandleID, mm float64, free bool)
	LeaveHandle()
	// touched is any other press: the picture wants the keyboard.
	Touched()
	PictureKey(*fyne.KeyEvent)
	PictureRune(rune)
}

// Picture is the widget.
type Picture struct {
	widget.BaseWidget
	hand     Hand
	raster   *canvas.Raster
	renderer *render.Renderer
	model    *scene.Model
	State    scene.State
	scene    render.Scene
	pixels   *image.RGBA
	fitted   string // the view's name, while it is a fitted one

	drag      drag
	turn      *fyne.Animation
	drawn     bool   // once, so that shadows may follow
	asked     int    // how often it was asked to be drawn anew
	stopShade func() // the shadows being worked out; nil: none
}

var (
	_ desktop.Mouseable  = (*Picture)(nil)
	_ desktop.Hoverable  = (*Picture)(nil)
	_ desktop.Cursorable = (*Picture)(nil)
	_ fyne.Draggable     = (*Picture)(nil)
	_ fyne.Scrollable    = (*Picture)(nil)
	_ fyne.Focusable     = (*Picture)(nil)
)

func NewPicture(hand Hand) *Picture {
	p := &Picture{hand: hand, renderer: render.New(render.Settings{})}
	p.raster = canvas.NewRaster(p.Paint)
	p.raster.ScaleMode = canvas.ImageScalePixels
	p.ExtendBaseWidget(p)
	return p
}

// CreateRenderer shows the raster alone.
func (p *Picture) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(p.raster) }

// Refresh asks for the picture to be drawn anew with the next frame.
func (p *Picture) Refresh() {
	p.asked++
	p.BaseWidget.Refresh()
}

// Asked is how often it was asked to be drawn anew so far.
func (p *Picture) Asked() int { return p.asked }

// MinSize lets the picture give way to everything else.
func (p *Picture) MinSize() fyne.Size { return fyne.NewSize(240, 200) }

// Paint is asked by the library for exactly the pixels it needs, once a frame
// at most, and only when something was marked.
func (p *Picture) Paint(w, h int) image.Image {
	resized := p.pixels == nil || p.pixels.Rect.Dx() != w || p.pixels.Rect.Dy() != h
	if resized {
		p.pixels = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	if p.model == nil || w < 2 || h < 2 {
		return p.pixels
	}
	p.pose()
	if p.fitted != "" && (resized || p.State.View.DistanceMM == 0) { // a fitted view stays fitted
		if to, ok := p.model.FitView(p.fitted, float64(w)/float64(h)); ok {
			p.State.View = to
			p.pose()
		}
	}
	p.renderer.Draw(p.pixels, &p.scene)
	p.shadeOnce()
	return p.pixels
}

// pose brings the scene up to date without drawing it.
func (p *Picture) pose() { p.model.Pose(&p.State, &p.scene) }

// PixelSize is the picture's in pixels.
func (p *Picture) PixelSize() (w, h int) {
	if p.pixels == nil {
		return int(p.Size().Width), int(p.Size().Height)
	}
	return p.pixels.Rect.Dx(), p.pixels.Rect.Dy()
}

// pixel is the pixel under a position of the library's.
func (p *Picture) pixel(at fyne.Position) scene.Point {
	w, h := p.PixelSize()
	s := p.Size()
	if s.Width <= 0 || s.Height <= 0 {
		return scene.Point{}
	}
	return scene.Point{X: float64(at.X) * float64(w) / float64(s.Width), Y: float64(at.Y) * float64(h) / float64(s.Height)}
}

// SetModel puts a model on the picture, looked at as a whole.
func (p *Picture) SetModel(m *scene.Model) {
	p.model = m
	p.scene = render.Scene{}
	p.renderer.Invalidate()
	p.fitted = scene.ViewWhole
	p.State.View = scene.View{}
	if p.drawn {
		p.shade()
	}
}

// Model is what is shown; nil: nothing yet.
func (p *Picture) Model() *scene.Model { return p.model }

// Fitted is the name of the view, "" once it was turned by hand.
func (p *Picture) Fitted() string { return p.fitted }

// Labels are the marks in the picture as last drawn.
func (p *Picture) Labels() []render.Label { return p.scene.Overlay.Labels }

// Turning reports whether the picture is on its way to a view.
func (p *Picture) Turning() bool { return p.turn != nil }

// SetTextSize makes the marks in the picture so many times their usual size.
func (p *Picture) SetTextSize(times float64) {
	// The font is embedded: without it there are no marks rather than no picture.
	if face, err := render.ParseFace(assets.Font("regular"), markSizePx*times); err == nil {
		p.State.Font = render.NewFont(face)
	}
}

// markSizePx is the usual size of marks in the picture.
const markSizePx = 13

// Close gives back what the picture holds.
func (p *Picture) Close() {
	p.StopTurn()
	if p.stopShade != nil {
		p.stopShade()
	}
	if p.renderer != nil {
		p.renderer.Close()
	}
	// What the window's library still remembers of a closed picture is no more
	// than its size.
	p.renderer, p.model, p.pixels, p.scene = nil, nil, nil, render.Scene{}
}

// Fit looks at a named view: at once, or turning there when smooth.
func (p *Picture) Fit(name string, smooth bool) {
	if p.model == nil {
		return
	}
	w, h := p.PixelSize()
	if w < 2 || h < 2 { // not painted yet: the first painting looks at it
		if _, ok := p.model.FitView(name, 1); ok {
			p.fitted, p.State.View = name, scene.View{}
		}
		return
	}
	p.pose()
	to, ok := p.model.FitView(name, float64(w)/float64(h))
	if !ok {
		return
	}
	p.fitted = name
	p.StopTurn()
	from := p.State.View
	if !smooth || from.DistanceMM == 0 {
		p.State.View = to
		p.Refresh()
		return
	}
	p.turn = fyne.NewAnimation(turnTime, func(t float32) {
		p.State.View = from.Between(to, float64(t))
		p.Refresh()
	})
	p.turn.Curve = fyne.AnimationEaseInOut
	p.turn.Start()
}

// StopTurn leaves the view where a turn has come to.
func (p *Picture) StopTurn() {
	if p.turn != nil {
		p.turn.Stop()
		p.turn = nil
	}
}

// turnTime is how long a turn to a fitted view takes.
const turnTime = 300 * time.Millisecond
