package reader

// This file lays lines out: a column no wider than can be read, keys beside
// their words, sources close under their lines.

import "fyne.io/fyne/v2"

// column is a fyne.Layout of one object.
type column struct{}

func (column) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, o[0].MinSize().Height)
}

func (column) Layout(o []fyne.CanvasObject, s fyne.Size) {
	w := min(s.Width, readWide)
	o[0].Resize(fyne.NewSize(w, s.Height))
	o[0].Move(fyne.NewPos((s.Width-w)/2, 0))
}

// keyed is a fyne.Layout of a key and its words.
type keyed struct{}

// keyShare is how much of the width keys take.
const keyShare = 0.3

func (keyed) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, max(o[0].MinSize().Height, o[1].MinSize().Height))
}

func (keyed) Layout(o []fyne.CanvasObject, s fyne.Size) {
	o[0].Resize(fyne.NewSize(s.Width*keyShare, s.Height))
	o[0].Move(fyne.NewPos(0, 0))
	o[1].Resize(fyne.NewSize(s.Width*(1-keyShare), s.Height))
	o[1].Move(fyne.NewPos(s.Width*keyShare, 0))
}

// tight is a fyne.Layout of a text and its source, a little apart.
type tight struct{}

// closer is how much nearer they stand than the library would put them.
const closer = 8

func (tight) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, o[0].MinSize().Height+o[1].MinSize().Height-closer)
}

func (tight) Layout(o []fyne.CanvasObject, s fyne.Size) {
	h := o[0].MinSize().Height
	o[0].Resize(fyne.NewSize(s.Width, h))
	o[0].Move(fyne.NewPos(0, 0))
	o[1].Resize(fyne.NewSize(s.Width, o[1].MinSize().Height))
	o[1].Move(fyne.NewPos(0, h-closer))
}
