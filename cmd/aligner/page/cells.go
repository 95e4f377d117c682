package page

// This file lays a table out: each column as wide as its widest cell, the first as
// wide as there is room for.

import "fyne.io/fyne/v2"

// Cells is a fyne.Layout of rows of so many columns, filled row by row.
type Cells struct {
	Columns int
	// First is the width the first column, whose texts may wrap, would like to have.
	First float32
	width float32 // as laid out last; 0: not yet
}

// leastFirst is what the first column has at least.
const leastFirst = 110

// sizes are the columns' widths and the rows' heights.
func (c *Cells) sizes(o []fyne.CanvasObject) (wide, tall []float32) {
	wide = make([]float32, c.Columns)
	tall = make([]float32, (len(o)+c.Columns-1)/c.Columns)
	rest := c.width
	for i, cell := range o {
		if k := i % c.Columns; k > 0 {
			w := cell.MinSize().Width
			rest -= max(w-wide[k], 0)
			wide[k] = max(wide[k], w)
		}
	}
	wide[0] = c.First
	if c.width > 0 {
		wide[0] = max(min(c.First, rest), leastFirst)
	}
	for i, cell := range o {
		if i%c.Columns == 0 { // its height is that of its width
			cell.Resize(fyne.NewSize(wide[0], cell.MinSize().Height))
		}
		tall[i/c.Columns] = max(tall[i/c.Columns], cell.MinSize().Height)
	}
	return wide, tall
}

// MinSize holds every cell, the first column wrapped.
func (c *Cells) MinSize(o []fyne.CanvasObject) fyne.Size {
	wide, tall := c.sizes(o)
	s := fyne.NewSize(leastFirst, 0)
	for _, w := range wide[1:] {
		s.Width += w
	}
	for _, h := range tall {
		s.Height += h
	}
	return s
}

// Layout places the cells.
func (c *Cells) Layout(o []fyne.CanvasObject, s fyne.Size) {
	c.width = s.Width
	wide, tall := c.sizes(o)
	var x, y float32
	for i, cell := range o {
		if i%c.Columns == 0 && i > 0 {
			x, y = 0, y+tall[i/c.Columns-1]
		}
		cell.Move(fyne.NewPos(x, y))
		cell.Resize(fyne.NewSize(wide[i%c.Columns], tall[i/c.Columns]))
		x += wide[i%c.Columns]
	}
}
