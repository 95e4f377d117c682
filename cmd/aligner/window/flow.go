package window

// This file lays things side by side, over as many rows as they need.

import "fyne.io/fyne/v2"

// flow is a fyne.Layout of a row that goes on below where the width ends.
type flow struct{ width float32 } // as laid out last

const flowGap = 2

// lay places the objects in a width and tells the height they took.
func lay(o []fyne.CanvasObject, width float32, place bool) float32 {
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
			put(c, x, y, min(m.Width, max(width, 0)), m.Height)
		}
		x += m.Width + flowGap
		row = max(row, m.Height)
	}
	return y + row
}

// MinSize is the height needed in the width there is; before that is known, in
// the narrowest column.
func (f *flow) MinSize(o []fyne.CanvasObject) fyne.Size {
	width := f.width
	if width == 0 {
		width = columnLeast
	}
	return fyne.NewSize(0, lay(o, width, false))
}

// Layout places them.
func (f *flow) Layout(o []fyne.CanvasObject, s fyne.Size) {
	f.width = s.Width
	lay(o, s.Width, true)
}
