package window

// This file lays the window out: strips across top and bottom, the picture,
// and a column at its right that keeps its width within reason.

import "fyne.io/fyne/v2"

// columns is a fyne.Layout of two: the picture, and the column at its right.
type columns struct{}

// The column takes a share of the width, within these bounds.
const (
	columnShare                = 0.36
	columnLeast, columnMost    = 330, 520
	pictureLeastW, pictureMinH = 260, 200
)

// MinSize is enough for both.
func (columns) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(pictureLeastW+columnLeast, max(pictureMinH, o[1].MinSize().Height))
}

// Layout gives the column its share and the picture the rest.
func (columns) Layout(o []fyne.CanvasObject, s fyne.Size) {
	w := min(max(s.Width*columnShare, columnLeast), columnMost)
	o[0].Resize(fyne.NewSize(s.Width-w, s.Height))
	o[0].Move(fyne.NewPos(0, 0))
	o[1].Resize(fyne.NewSize(w, s.Height))
	o[1].Move(fyne.NewPos(s.Width-w, 0))
}

// stack is a fyne.Layout of the column: the faces above take a share of the
// height, what follows takes the rest.
type stack struct{}

const facesShare, facesLeast, facesMost = 0.52, 230, 560

// MinSize is enough for both.
func (stack) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnLeast, facesLeast+o[1].MinSize().Height)
}

// Layout gives the faces their share.
func (stack) Layout(o []fyne.CanvasObject, s fyne.Size) {
	h := min(max(s.Height*facesShare, facesLeast), facesMost)
	o[0].Resize(fyne.NewSize(s.Width, h))
	o[0].Move(fyne.NewPos(0, 0))
	o[1].Resize(fyne.NewSize(s.Width, s.Height-h))
	o[1].Move(fyne.NewPos(0, h))
}
