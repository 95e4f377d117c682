package lessons

// This file gives each title in the list as many lines as it needs.

import "fyne.io/fyne/v2"

// titles is a fyne.Layout of the list, and of a label nobody sees.
type titles struct {
	p     *Page
	width float32 // the lines were measured for
}

// MinSize is the list's.
func (*titles) MinSize(o []fyne.CanvasObject) fyne.Size { return o[0].MinSize() }

// Layout measures the lines anew where the width is another.
func (t *titles) Layout(o []fyne.CanvasObject, s fyne.Size) {
	o[0].Resize(s)
	if s.Width != t.width {
		t.width = s.Width
		t.p.measure(s.Width)
	}
}

// measure gives each line the height its title needs in a width. The label measured by
// stands unseen beside the list, so that its type is the list's.
func (p *Page) measure(width float32) {
	if width <= 0 {
		return
	}
	l := p.measured
	for i := range p.lessons {
		l.SetText(p.lessons[i].Title.In(p.language()))
		l.Resize(fyne.NewSize(width, l.MinSize().Height))
		p.list.SetItemHeight(i, l.MinSize().Height)
	}
	p.list.Refresh() // the lines below stand elsewhere now
}
