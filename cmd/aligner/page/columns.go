package page

// This file lays a page out in two columns, and one of them in two halves.

import "fyne.io/fyne/v2"

// Columns is a fyne.Layout of two: the left has a share of the width, but no less
// than is said, the right has the rest.
type Columns struct {
	Share float32 // of the width
	Least float32 // of the left
}

const (
	rightLeast = 320
	columnGap  = 8
)

// MinSize is enough for both.
func (c Columns) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(c.Least+columnGap+rightLeast, max(o[0].MinSize().Height, o[1].MinSize().Height))
}

// Layout gives the left its share and the right the rest.
func (c Columns) Layout(o []fyne.CanvasObject, s fyne.Size) {
	w := max(s.Width*c.Share, c.Least)
	o[0].Resize(fyne.NewSize(w, s.Height))
	o[1].Move(fyne.NewPos(w+columnGap, 0))
	o[1].Resize(fyne.NewSize(s.Width-w-columnGap, s.Height))
}

// Upper is a fyne.Layout of two, one above the other: the upper one has a share of the
// height, and is no taller than wide.
type Upper struct{ Share float32 }

// MinSize is enough for both.
func (Upper) MinSize(o []fyne.CanvasObject) fyne.Size {
	a, b := o[0].MinSize(), o[1].MinSize()
	return fyne.NewSize(max(a.Width, b.Width), a.Height+b.Height)
}

// Layout gives the upper one its share and the lower one the rest.
func (u Upper) Layout(o []fyne.CanvasObject, s fyne.Size) {
	h := min(s.Height*u.Share, s.Width)
	o[0].Resize(fyne.NewSize(s.Width, h))
	o[0].Move(fyne.NewPos(0, 0))
	o[1].Resize(fyne.NewSize(s.Width, s.Height-h))
	o[1].Move(fyne.NewPos(0, h))
}
