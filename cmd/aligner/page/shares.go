package page

// This file lays things out in a row by shares of the width.

import "fyne.io/fyne/v2"

// Shares is a fyne.Layout of one row, each object with its share of the width, together
// 1, whatever it would rather have: a sheet must not grow beyond its column.
type Shares []float32

const shareGap = 2

// MinSize asks for height alone.
func (s Shares) MinSize(o []fyne.CanvasObject) fyne.Size {
	var h float32
	for _, c := range o {
		h = max(h, c.MinSize().Height)
	}
	return fyne.NewSize(0, h)
}

// Layout shares the width out.
func (s Shares) Layout(o []fyne.CanvasObject, size fyne.Size) {
	var x float32
	for i, c := range o {
		w := size.Width * s[i]
		c.Resize(fyne.NewSize(w-shareGap, size.Height))
		c.Move(fyne.NewPos(x, 0))
		x += w
	}
}
