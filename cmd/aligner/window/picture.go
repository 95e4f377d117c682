package window

// This file is the picture: the scene drawn into a raster, and a hand on it.
// What the hand means is told to a pictureHand; the picture itself changes
// nothing but its view.

import (
	"image"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"aligner/scene"
	"aligner/scene/render"
)

// pictureHand is told what the hand does to a handle.
type pictureHand interface {
	// takeHandle begins a drag; moveHandle says how far, in true mm from where
	// it was taken, snapped unless free; leaveHandle ends it as one edit.
	takeHandle(scene.HandleID)
	moveHandle(mm float64, free bool)
	leaveHandle()
	// touched is any other press: the picture wants the keyboard.
	touched()
	// painted says that a picture was made.
	painted()
	typedKey(*fyne.KeyEvent)
	typedRune(rune)
}

// picture is the widget.
type picture struct {
	widget.BaseWidget
	hand     pictureHand
	raster   *canvas.Raster
	renderer *render.Renderer
	model    *scene.Model
	state    scene.State
	scene    render.Scene
	pixels   *image.RGBA
	fitted   string // the view's name, while it is a fitted one

	drag drag
	turn *fyne.Animation
}

var (
	_ desktop.Mouseable  = (*picture)(nil)
	_ desktop.Hoverable  = (*picture)(nil)
	_ desktop.Cursorable = (*picture)(nil)
	_ fyne.Draggable     = (*picture)(nil)
	_ fyne.Scrollable    = (*picture)(nil)
	_ fyne.Focusable     = (*picture)(nil)
)

func newPicture(hand pictureHand) *picture {
	p := &picture{hand: hand, renderer: render.New(render.Settings{})}
	p.raster = canvas.NewRaster(p.paint)
	p.raster.ScaleMode = canvas.ImageScalePixels
	p.ExtendBaseWidget(p)
	return p
}

// CreateRenderer shows the raster alone.
func (p *picture) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(p.raster) }

// MinSize lets the picture give way to everything else.
func (p *picture) MinSize() fyne.Size { return fyne.NewSize(240, 200) }

// paint is asked by the library for exactly the pixels it needs, once a frame
// at most, and only when something was marked.
func (p *picture) paint(w, h int) image.Image {
	resized := p.pixels == nil || p.pixels.Rect.Dx() != w || p.pixels.Rect.Dy() != h
	if resized {
		p.pixels = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	if p.model == nil || w < 2 || h < 2 {
		return p.pixels
	}
	p.pose()
	if p.fitted != "" && (resized || p.state.View.DistanceMM == 0) { // a fitted view stays fitted
		if to, ok := p.model.FitView(p.fitted, float64(w)/float64(h)); ok {
			p.state.View = to
			p.pose()
		}
	}
	p.renderer.Draw(p.pixels, &p.scene)
	p.hand.painted()
	return p.pixels
}

// pose brings the scene up to date without drawing it.
func (p *picture) pose() { p.model.Pose(&p.state, &p.scene) }

// size is the picture's in pixels.
func (p *picture) size() (w, h int) {
	if p.pixels == nil {
		return int(p.Size().Width), int(p.Size().Height)
	}
	return p.pixels.Rect.Dx(), p.pixels.Rect.Dy()
}

// pixel is the pixel under a position of the library's.
func (p *picture) pixel(at fyne.Position) scene.Point {
	w, h := p.size()
	s := p.Size()
	if s.Width <= 0 || s.Height <= 0 {
		return scene.Point{}
	}
	return scene.Point{X: float64(at.X) * float64(w) / float64(s.Width), Y: float64(at.Y) * float64(h) / float64(s.Height)}
}

// show puts a model on the picture, looked at as a whole.
func (p *picture) show(m *scene.Model) {
	p.model = m
	p.scene = render.Scene{}
	p.renderer.Invalidate()
	p.fitted = scene.ViewWhole
	p.state.View = scene.View{}
}

// fit looks at a named view: at once, or turning there when smooth.
func (p *picture) fit(name string, smooth bool) {
	if p.model == nil {
		return
	}
	w, h := p.size()
	if w < 2 || h < 2 {
		return
	}
	p.pose()
	to, ok := p.model.FitView(name, float64(w)/float64(h))
	if !ok {
		return
	}
	p.fitted = name
	p.stopTurn()
	from := p.state.View
	if !smooth || from.DistanceMM == 0 {
		p.state.View = to
		p.Refresh()
		return
	}
	p.turn = fyne.NewAnimation(turnTime, func(t float32) {
		p.state.View = from.Between(to, float64(t))
		p.Refresh()
	})
	p.turn.Curve = fyne.AnimationEaseInOut
	p.turn.Start()
}

// stopTurn leaves the view where a turn has come to.
func (p *picture) stopTurn() {
	if p.turn != nil {
		p.turn.Stop()
		p.turn = nil
	}
}

// turnTime is how long a turn to a fitted view takes.
const turnTime = 300 * time.Millisecond
