package practice

// This file lays running text out above what is left: a page must not grow beyond its
// window.

import "fyne.io/fyne/v2"

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
