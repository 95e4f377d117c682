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
type stack struct{ share float32 } // of the height, for the faces

// The faces have more room while nuts are tried than beside a sheet to read.
const facesShareTrying, facesShareReading, facesLeast, facesMost = 0.52, 0.42, 230, 560

// MinSize is enough for both.
func (*stack) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnLeast, facesLeast+o[1].MinSize().Height)
}

// Layout gives the faces their share.
func (t *stack) Layout(o []fyne.CanvasObject, s fyne.Size) {
	h := min(max(s.Height*t.share, facesLeast), facesMost)
	o[0].Resize(fyne.NewSize(s.Width, h))
	o[0].Move(fyne.NewPos(0, 0))
	o[1].Resize(fyne.NewSize(s.Width, s.Height-h))
	o[1].Move(fyne.NewPos(0, h))
}

// shares is a fyne.Layout of one row, each object with its share of the width,
// whatever it would rather have.
type shares []float32

// sheetShares are name, nut, slide and load.
var sheetShares = shares{0.4, 0.18, 0.18, 0.24}

// MinSize asks for height alone.
func (s shares) MinSize(o []fyne.CanvasObject) fyne.Size {
	var h float32
	for _, c := range o {
		h = max(h, c.MinSize().Height)
	}
	return fyne.NewSize(0, h)
}

// Layout shares the width out.
func (s shares) Layout(o []fyne.CanvasObject, size fyne.Size) {
	var x float32
	for i, c := range o {
		w := size.Width * s[i]
		c.Resize(fyne.NewSize(w-2, size.Height))
		c.Move(fyne.NewPos(x, 0))
		x += w
	}
}
