package page

// This file lays things side by side, over as many rows as they need.

import "fyne.io/fyne/v2"

// Flow is a fyne.Layout of a row that goes on below where the width ends.
type Flow struct {
	Narrow float32 // the width taken before it is known
	width  float32 // as laid out last
}

const flowGap = 2

// flow places the objects in a width and tells the height they took.
func flow(o []fyne.CanvasObject, width float32, place bool) float32 {
	var x, y, row float32
	for _, c := range o {
		if !c.Visible() {
			continue
		}
		m := c.MinSize()
		if x > 0 && x+m.Width > width {
			x, y, row = 0, y+row+flowGap, 0
		}
		if place {
			c.Move(fyne.NewPos(x, y))
			c.Resize(fyne.NewSize(min(m.Width, max(width, 0)), m.Height))
		}
		x += m.Width + flowGap
		row = max(row, m.Height)
	}
	return y + row
}

// MinSize is the height needed in the width there is; before that is known, in
// the narrowest column.
func (f *Flow) MinSize(o []fyne.CanvasObject) fyne.Size {
	width := f.width
	if width == 0 {
		width = f.Narrow
	}
	return fyne.NewSize(0, flow(o, width, false))
}

// Layout places them.
func (f *Flow) Layout(o []fyne.CanvasObject, s fyne.Size) {
	f.width = s.Width
	flow(o, s.Width, true)
}
