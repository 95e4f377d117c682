package window

// This file lays the window out between its strips: the picture, the faces, and
// the sheet at their right. On a high window the faces stand over the sheet; on
// a low one under the picture, so that the sheet has the whole height.
//
//	high                          low
//	+----------------+-------+    +----------------+-------+
//	|                | faces |    | picture        |       |
//	|   picture      +-------+    +----------------+ sheet |
//	|                | sheet |    | faces          |       |
//	+----------------+-------+    +----------------+-------+

import (
	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/page"
)

// middle is a fyne.Layout of three: picture, faces, sheet.
type middle struct{ share float32 } // of the height, for the faces of a high window

// The column at the right takes a share of the width, within these bounds.
const (
	columnShare              = 0.36
	columnLeast, columnMost  = 330, 520
	pictureLeast             = 200 // its width
	pictureLow, facesLow     = 110, 170
	facesLeast, facesMost    = 230, 560
	lowBelow                 = 560
	facesShareLow            = 0.5
	facesShareTrying         = 0.46 // more room while nuts are tried than beside a sheet to read
	facesShareReading        = 0.42
	sheetLeast               = 150
	columnShareLow, gapWidth = 0.44, 6
)

// MinSize is enough for all three as a low window has them.
func (*middle) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(pictureLeast+max(columnLeast, o[2].MinSize().Width), max(pictureLow+facesLow, sheetLeast))
}

// Layout shares the room out.
func (m *middle) Layout(o []fyne.CanvasObject, s fyne.Size) {
	least := max(columnLeast, o[2].MinSize().Width)
	if s.Height < lowBelow {
		w := min(max(s.Width*columnShareLow, least), max(columnMost, least))
		left := s.Width - w - gapWidth
		h := max(s.Height*facesShareLow, facesLow)
		put(o[0], 0, 0, left, s.Height-h)
		put(o[1], 0, s.Height-h, left, h)
		put(o[2], left+gapWidth, 0, w, s.Height)
		return
	}
	w := min(max(s.Width*columnShare, least), max(columnMost, least))
	left := s.Width - w - gapWidth
	h := min(max(s.Height*m.share, facesLeast), facesMost)
	put(o[0], 0, 0, left, s.Height)
	put(o[1], left+gapWidth, 0, w, h)
	put(o[2], left+gapWidth, h, w, s.Height-h)
}

func put(o fyne.CanvasObject, x, y, w, h float32) {
	o.Resize(fyne.NewSize(w, h))
	o.Move(fyne.NewPos(x, y))
}

// shares is a row of a sheet.
type shares = page.Shares

// sheetShares are name, nut, slide and load.
var sheetShares = shares{0.33, 0.24, 0.2, 0.23}
