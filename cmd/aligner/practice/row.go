package practice

// This file lays things out in a row by shares of the width, however wide they would
// like to be, and running text above what is left: a page must not grow beyond its
// window.

import "fyne.io/fyne/v2"

// row is a fyne.Layout: each object's share of the width.
type row []float32

const rowGap = 4

// MinSize is the tallest's height; the width gives way.
func (r row) MinSize(o []fyne.CanvasObject) fyne.Size {
	var height float32
	for _, c := range o {
		height = max(height, c.MinSize().Height)
	}
	return fyne.NewSize(0, height)
}

// Layout gives each its share.
func (r row) Layout(o []fyne.CanvasObject, s fyne.Size) {
	var all, x float32
	for _, share := range r {
		all += share
	}
	width := s.Width - rowGap*float32(len(r)-1)
	for i, c := range o {
		w := width * r[i] / all
		c.Move(fyne.NewPos(x, 0))
		c.Resize(fyne.NewSize(w, s.Height))
		x += w + rowGap
	}
}

// above is a fyne.Layout of running text and what stands under it. Text that has no
// width yet would ask for a line a letter, so it asks for nothing.
type above struct{}

// MinSize is the lower one's.
func (above) MinSize(o []fyne.CanvasObject) fyne.Size { return o[1].MinSize() }

// Layout gives the text the height its lines take.
func (above) Layout(o []fyne.CanvasObject, s fyne.Size) {
	o[0].Resize(fyne.NewSize(s.Width, o[0].Size().Height))
	height := min(o[0].MinSize().Height, s.Height)
	o[0].Resize(fyne.NewSize(s.Width, height))
	o[1].Move(fyne.NewPos(0, height))
	o[1].Resize(fyne.NewSize(s.Width, s.Height-height))
}
