package form

// This file lays out the page's thirds, and a field's row.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// thirds are parts, fields and picture side by side.
type thirds struct{}

// Shares of the width; the parts take what their names need.
const (
	partsShare              = 0.19
	leastParts, mostParts   = 186, 240
	fieldsShare, mostFields = 0.42, 540
	between                 = 6
)

func (thirds) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(640, 300) }

func (thirds) Layout(o []fyne.CanvasObject, s fyne.Size) {
	a := min(max(partsShare*s.Width, leastParts), mostParts)
	b := min(fieldsShare*s.Width, mostFields)
	x := float32(0)
	for i, w := range []float32{a, b, s.Width - a - b - 2*between} {
		o[i].Move(fyne.NewPos(x, 0))
		o[i].Resize(fyne.NewSize(w, s.Height))
		x += w + between
	}
}

// shares puts things in one row, each with its share of the width.
type shares []float32

// fieldShares are a field's name, input, unit and mark.
var fieldShares = shares{0.5, 0.28, 0.13, 0.09}

func (l shares) MinSize(o []fyne.CanvasObject) (least fyne.Size) {
	for _, object := range o {
		least.Height = max(least.Height, object.MinSize().Height)
	}
	return least
}

func (l shares) Layout(o []fyne.CanvasObject, s fyne.Size) {
	x := float32(0)
	for i, object := range o {
		w := l[i] * s.Width
		object.Move(fyne.NewPos(x, 0))
		object.Resize(fyne.NewSize(w, s.Height))
		x += w
	}
}

// tight stacks things without room between, as wide as there is room: what is too
// wide does not make the rest wider.
type tight struct{}

func (tight) MinSize(o []fyne.CanvasObject) (least fyne.Size) {
	for _, object := range o {
		if object.Visible() {
			least.Height += object.MinSize().Height
		}
	}
	return least
}

func (tight) Layout(o []fyne.CanvasObject, s fyne.Size) {
	y := float32(0)
	for _, object := range o {
		if object.Visible() {
			h := object.MinSize().Height
			object.Move(fyne.NewPos(0, y))
			object.Resize(fyne.NewSize(s.Width, h))
			y += h
		}
	}
}

// overWords gives the words what they need, up to a share, and the picture the rest.
type overWords struct{}

const (
	wordsShare = 0.42
	leastWords = 110
)

func (overWords) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(240, 240) }

func (overWords) Layout(o []fyne.CanvasObject, size fyne.Size) {
	scroll := o[1].(*container.Scroll)
	scroll.Resize(fyne.NewSize(size.Width, leastWords)) // so that its words wrap
	need := scroll.Content.MinSize().Height
	high := min(max(need, leastWords), wordsShare*size.Height)
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(fyne.NewSize(size.Width, size.Height-high-between))
	o[1].Move(fyne.NewPos(0, size.Height-high))
	o[1].Resize(fyne.NewSize(size.Width, high))
}
