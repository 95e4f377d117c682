package drawn

// This file is the hand on the picture: taking a handle, turning, moving and
// zooming the view.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"aligner/scene"
)

// drag is what the hand has hold of.
type drag struct {
	button desktop.MouseButton // 0: none down
	at     fyne.Position       // where it is now
	from   scene.Point         // where it went down
	handle scene.Handle        // as it was then; ID 0: the view
	moved  bool
	over   bool // the pointer is over a handle
}

// MouseDown takes a handle, or the view.
func (p *Picture) MouseDown(e *desktop.MouseEvent) {
	p.hand.Touched()
	p.endDrag() // a drag that ended outside the window sent no MouseUp
	p.StopTurn()
	p.drag = drag{button: e.Button, at: e.Position, from: p.pixel(e.Position)}
	if e.Button == desktop.MouseButtonPrimary && e.Modifier&fyne.KeyModifierControl == 0 && p.model != nil {
		w, h := p.PixelSize()
		if handle, ok := p.model.PickHandle(p.model.Camera(p.State.View), w, h, p.drag.from.X, p.drag.from.Y); ok {
			p.drag.handle = handle
			p.State.Active = handle.ID
			p.hand.TakeHandle(handle.ID)
		}
	}
}

// Dragged moves whatever the hand has.
func (p *Picture) Dragged(e *fyne.DragEvent) {
	if p.model == nil {
		return
	}
	p.drag.moved = true
	w, h := p.PixelSize()
	if p.drag.handle.ID != 0 {
		p.drag.at = e.Position
		mm := scene.DragToMM(p.drag.handle, p.drag.from, p.pixel(e.Position), p.model.Camera(p.State.View), w, h, p.State.Exaggeration)
		p.hand.MoveHandle(p.drag.handle.ID, mm, keysDown()&fyne.KeyModifierShift != 0)
		return
	}
	dx, dy := float64(e.Dragged.DX), float64(e.Dragged.DY)
	width := float64(p.Size().Width)
	if p.drag.button == desktop.MouseButtonTertiary || keysDown()&fyne.KeyModifierShift != 0 {
		scale := float64(w) / max(width, 1)
		p.State.View = p.model.Pan(p.State.View, dx*scale, dy*scale, w, h)
	} else {
		p.State.View = p.State.View.Orbit(dx, dy, max(width, 1))
	}
	p.fitted = ""
	p.Refresh()
}

// keysDown are the modifier keys held; drag events do not carry them.
func keysDown() fyne.KeyModifier {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok {
		return d.CurrentKeyModifiers()
	}
	return 0
}

// DragEnd and MouseUp both end a drag, whichever comes.
func (p *Picture) DragEnd() { p.endDrag() }

// MouseUp ends a press or a drag.
func (p *Picture) MouseUp(*desktop.MouseEvent) { p.endDrag() }

func (p *Picture) endDrag() {
	had := p.drag.handle.ID != 0
	over := p.drag.over
	p.drag = drag{over: over}
	if had {
		p.State.Active = 0
		p.hand.LeaveHandle()
	}
}

// Scrolled zooms about what is under the pointer.
func (p *Picture) Scrolled(e *fyne.ScrollEvent) {
	if p.model == nil {
		return
	}
	at := p.pixel(e.Position)
	point, ok := p.renderer.Point(int(at.X), int(at.Y))
	if !ok {
		point = p.State.View.Target
	}
	p.State.View = p.State.View.Zoom(math.Pow(zoomStep, float64(e.Scrolled.DY)/wheelClick), point)
	p.fitted = ""
	p.Refresh()
}

// A click of the wheel is 25 in the library's units.
const (
	wheelClick = 25
	zoomStep   = 1.15
)

// MouseIn, MouseMoved and MouseOut tell where the pointer is, for its shape.
func (p *Picture) MouseIn(e *desktop.MouseEvent) { p.MouseMoved(e) }

// MouseMoved notes whether the pointer is over a handle.
func (p *Picture) MouseMoved(e *desktop.MouseEvent) {
	if p.model == nil {
		return
	}
	w, h := p.PixelSize()
	at := p.pixel(e.Position)
	_, p.drag.over = p.model.PickHandle(p.model.Camera(p.State.View), w, h, at.X, at.Y)
}

// MouseOut forgets the pointer.
func (p *Picture) MouseOut() { p.drag.over = false }

// Cursor is a hand over a handle.
func (p *Picture) Cursor() desktop.Cursor {
	if p.drag.over || p.drag.handle.ID != 0 {
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

// FocusGained needs nothing done: what the keys act on is marked in the sheet.
func (p *Picture) FocusGained() {}

// FocusLost needs nothing done.
func (p *Picture) FocusLost() {}

// TypedKey hands a key on.
func (p *Picture) TypedKey(e *fyne.KeyEvent) { p.hand.PictureKey(e) }

// TypedRune hands a letter on.
func (p *Picture) TypedRune(r rune) { p.hand.PictureRune(r) }
