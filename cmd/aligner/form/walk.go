package form

// This file goes from field to field, and keeps the chosen one in sight.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// rowOf is the row of a field of the part shown.
func (p *Page) rowOf(pointer string) *row {
	for _, r := range p.rows {
		if r.pointer == pointer {
			return r
		}
	}
	return nil
}

// choose makes a field the chosen one: its limits show under it, its tape on the
// picture.
func (p *Page) choose(pointer string) {
	if p.d.field == pointer {
		return
	}
	p.d.field = pointer
	p.refill()
	p.side.show()
	p.bringInSight(pointer)
}

// bringInSight scrolls to a field with what stands under it.
func (p *Page) bringInSight(pointer string) {
	if r := p.rowOf(pointer); r != nil {
		keepInSight(p.scroll, r.box)
	}
}

// keepInSight scrolls no farther than it takes to see all of an object.
func keepInSight(s *container.Scroll, o fyne.CanvasObject) {
	top, high := o.Position().Y, o.MinSize().Height
	switch {
	case top < s.Offset.Y:
		s.ScrollToOffset(fyne.NewPos(0, top))
	case top+high > s.Offset.Y+s.Size().Height:
		s.ScrollToOffset(fyne.NewPos(0, top+high-s.Size().Height))
	}
}

// focus gives the keyboard to what is chosen.
func (p *Page) focus() {
	if r := p.rowOf(p.d.field); r != nil {
		p.first = r.input()
	}
	if p.first != nil {
		p.desk.Window.Canvas().Focus(p.first)
	} else { // keys come to the page
		p.desk.Window.Canvas().Unfocus()
	}
	p.bringInSight(p.d.field)
}

// next goes to the field after one: of this part, or the first of the next.
func (p *Page) next(pointer string) { p.step(pointer, 1) }

func (p *Page) step(pointer string, by int) {
	for i, r := range p.rows {
		if r.pointer != pointer {
			continue
		}
		switch to := i + by; {
		case to >= 0 && to < len(p.rows):
			p.choose(p.rows[to].pointer)
			p.focus()
		case to < 0 && p.d.part > 0:
			p.turnTo(p.d.part - 1)
			if n := len(p.rows); n > 0 {
				p.choose(p.rows[n-1].pointer)
				p.focus()
			}
		case to == len(p.rows):
			p.turnTo(p.d.part + 1)
		}
		return
	}
}
