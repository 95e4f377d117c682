package window

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
func (p *picture) MouseDown(e *desktop.MouseEvent) {
	p.hand.touched()
	p.endDrag() // a drag that ended outside the window sent no MouseUp
	p.stopTurn()
	p.drag = drag{button: e.Button, at: e.Position, from: p.pixel(e.Position)}
	if e.Button == desktop.MouseButtonPrimary && e.Modifier&fyne.KeyModifierControl == 0 && p.model != nil {
		w, h := p.size()
		if handle, ok := p.model.PickHandle(p.model.Camera(p.state.View), w, h, p.drag.from.X, p.drag.from.Y); ok {
			p.drag.handle = handle
			p.state.Active = handle.ID
			p.hand.takeHandle(handle.ID)
		}
	}
}

// Dragged moves whatever the hand has.
func (p *picture) Dragged(e *fyne.DragEvent) {
	if p.model == nil {
		return
	}
	p.drag.moved = true
	w, h := p.size()
	if p.drag.handle.ID != 0 {
		p.drag.at = e.Position
		mm := scene.DragToMM(p.drag.handle, p.drag.from, p.pixel(e.Position), p.model.Camera(p.state.View), w, h, p.state.Exaggeration)
		p.hand.moveHandle(mm, keysDown()&fyne.KeyModifierShift != 0)
		return
	}
	dx, dy := float64(e.Dragged.DX), float64(e.Dragged.DY)
	width := float64(p.Size().Width)
	if p.drag.button == desktop.MouseButtonTertiary || keysDown()&fyne.KeyModifierShift != 0 {
		scale := float64(w) / max(width, 1)
		p.state.View = p.model.Pan(p.state.View, dx*scale, dy*scale, w, h)
	} else {
		p.state.View = p.state.View.Orbit(dx, dy, max(width, 1))
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
func (p *picture) DragEnd() { p.endDrag() }

// MouseUp ends a press or a drag.
func (p *picture) MouseUp(*desktop.MouseEvent) { p.endDrag() }

func (p *picture) endDrag() {
	had := p.drag.handle.ID != 0
	over := p.drag.over
	p.drag = drag{over: over}
	if had {
		p.state.Active = 0
		p.hand.leaveHandle()
	}
}

// Scrolled zooms about what is under the pointer.
func (p *picture) Scrolled(e *fyne.ScrollEvent) {
	if p.model == nil {
		return
	}
	at := p.pixel(e.Position)
	point, ok := p.renderer.Point(int(at.X), int(at.Y))
	if !ok {
		point = p.state.View.Target
	}
	p.state.View = p.state.View.Zoom(math.Pow(zoomStep, float64(e.Scrolled.DY)/wheelClick), point)
	p.fitted = ""
	p.Refresh()
}

// A click of the wheel is 25 in the library's units.
const (
	wheelClick = 25
	zoomStep   = 1.15
)

// MouseIn, MouseMoved and MouseOut tell where the pointer is, for its shape.
func (p *picture) MouseIn(e *desktop.MouseEvent) { p.MouseMoved(e) }

// MouseMoved notes whether the pointer is over a handle.
func (p *picture) MouseMoved(e *desktop.MouseEvent) {
	if p.model == nil {
		return
	}
	w, h := p.size()
	at := p.pixel(e.Position)
	_, p.drag.over = p.model.PickHandle(p.model.Camera(p.state.View), w, h, at.X, at.Y)
}

// MouseOut forgets the pointer.
func (p *picture) MouseOut() { p.drag.over = false }

// Cursor is a hand over a handle.
func (p *picture) Cursor() desktop.Cursor {
	if p.drag.over || p.drag.handle.ID != 0 {
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

// FocusGained needs nothing done: what the keys act on is marked in the sheet.
func (p *picture) FocusGained() {}

// FocusLost needs nothing done.
func (p *picture) FocusLost() {}

// TypedKey hands a key on.
func (p *picture) TypedKey(e *fyne.KeyEvent) { p.hand.typedKey(e) }

// TypedRune hands a letter on.
func (p *picture) TypedRune(r rune) { p.hand.typedRune(r) }
