package boats

// This file is one line of the list.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// newRow is an empty line: the name and when she is due, below it what she is.
func newRow() fyne.CanvasObject {
	name, when, what := widget.NewLabel(""), widget.NewLabel(""), widget.NewLabel("")
	name.TextStyle.Bold = true
	name.Truncation, what.Truncation = fyne.TextTruncateEllipsis, fyne.TextTruncateEllipsis
	return container.New(tight{}, container.NewBorder(nil, nil, nil, when, name), what)
}

// row fills line i.
func (p *Page) row(i int, o fyne.CanvasObject) {
	both := o.(*fyne.Container).Objects
	top := both[0].(*fyne.Container).Objects
	l, _ := p.shelf.line(i)
	write(top[0], l.Name, true)
	write(top[1], shortDue(p.desk.Speaker, &l), l.Overdue)
	write(both[1], short(p.desk.Speaker, p.desk.Looks.Units, &l), false)
}

// write fills a label, unless it says so already: a list asks for its lines many
// times, and laying text out is what takes the time.
func write(o fyne.CanvasObject, text string, bold bool) {
	if l := o.(*widget.Label); l.Text != text || l.TextStyle.Bold != bold {
		l.TextStyle.Bold = bold
		l.SetText(text)
	}
}

// tight is a fyne.Layout of lines that belong together, closer than others.
type tight struct{}

// closer is how much of the space between two lines is given up.
const closer = 10

// MinSize is the lines' own, less the space between.
func (tight) MinSize(o []fyne.CanvasObject) fyne.Size {
	var s fyne.Size
	for _, c := range o {
		m := c.MinSize()
		s.Width, s.Height = max(s.Width, m.Width), s.Height+m.Height-closer
	}
	return s.AddWidthHeight(0, closer)
}

// Layout puts one below the other.
func (tight) Layout(o []fyne.CanvasObject, s fyne.Size) {
	var y float32
	for _, c := range o {
		h := c.MinSize().Height
		c.Move(fyne.NewPos(0, y))
		c.Resize(fyne.NewSize(s.Width, h))
		y += h - closer
	}
}
