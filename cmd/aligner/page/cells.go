package page

// This file lays a table out: each column as wide as its widest cell.

import "fyne.io/fyne/v2"

// Cells is a fyne.Layout of rows of so many columns, filled row by row.
type Cells struct{ Columns int }

// sizes are the columns' widths and the rows' heights.
func (c *Cells) sizes(o []fyne.CanvasObject) (wide, tall []float32) {
	wide = make([]float32, c.Columns)
	tall = make([]float32, (len(o)+c.Columns-1)/c.Columns)
	for i, cell := range o {
		m := cell.MinSize()
		wide[i%c.Columns] = max(wide[i%c.Columns], m.Width)
		tall[i/c.Columns] = max(tall[i/c.Columns], m.Height)
	}
	return wide, tall
}

// MinSize holds every cell.
func (c *Cells) MinSize(o []fyne.CanvasObject) fyne.Size {
	wide, tall := c.sizes(o)
	var s fyne.Size
	for _, w := range wide {
		s.Width += w
	}
	for _, h := range tall {
		s.Height += h
	}
	return s
}

// Layout places the cells.
func (c *Cells) Layout(o []fyne.CanvasObject, _ fyne.Size) {
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
