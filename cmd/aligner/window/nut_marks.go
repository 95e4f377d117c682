package window

// This file is the marks across nuts and studs as they were found: in line, or
// turned, which tells a nut that wandered from rubber that sank.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
)

// markSheet is a choice a mount.
type markSheet struct {
	w         *Window
	box, grid *fyne.Container
	found     []*page.Choice
}

func newMarkSheet(w *Window) *markSheet {
	s := &markSheet{w: w, grid: container.NewVBox()}
	s.box = container.NewVBox(heading(w.speaker.Say(words.MarksTitle, nil)), s.grid)
	return s
}

// fill makes the rows of a boat.
func (s *markSheet) fill(d *visit.Document) {
	s.grid.Objects, s.found = nil, nil
	options := []string{s.w.speaker.Say(words.BeginUnsaid, nil)}
	for _, mark := range visit.Marks {
		options = append(options, s.w.speaker.Say(words.Of("mark", mark), nil))
	}
	for i, m := range d.Hull.Mounts {
		c := newChoice(s.w, options, func(at int) { s.take(i, append([]string{""}, visit.Marks...)[at]) })
		name := widget.NewLabel(s.w.speaker.Part(m.Name))
		name.Truncation = fyne.TextTruncateEllipsis
		s.found = append(s.found, c)
		s.grid.Add(container.New(shares{0.5, 0.5}, name, c))
	}
}

func (s *markSheet) take(mount int, mark string) {
	d := s.w.history.Now()
	found := d.Visit.Found(d.Hull.Mounts[mount].Name)
	if found.Mark != mark {
		found.Mark = mark
		s.w.do(&visit.FindMount{Found: found})
	}
}

// show chooses what was found, on rows made by fill.
func (s *markSheet) show(d *visit.Document) {
	for i, c := range s.found {
		c.Put(placeOf(d.Visit.Found(d.Hull.Mounts[i].Name).Mark, visit.Marks))
	}
}
