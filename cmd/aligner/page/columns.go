package page

// This file lays a page out in two columns.

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
