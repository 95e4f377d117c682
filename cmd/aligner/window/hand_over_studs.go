package window

// This file is the stud heights: how much of each stud stands above its nut, as
// found and as left, so that next time a nut that has wandered shows.

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/job"
)

// studSheet is two fields a mount.
type studSheet struct {
	w           *Window
	box, grid   *fyne.Container
	names       []string
	found, left []*field
	marks       *markSheet
}

func newStudSheet(w *Window) *studSheet {
	s := &studSheet{w: w, grid: container.NewVBox(), marks: newMarkSheet(w)}
	head := container.New(otherShares, widget.NewLabel(""), caption(w.speaker.Say(words.StudFound, nil)), caption(w.speaker.Say(words.StudLeft, nil)))
	s.box = container.NewVBox(heading(w.speaker.Say(words.StudTitle, nil)), head, s.grid,
		small(w.from([]job.Source{job.CommonPractice})), s.marks.box)
	return s
}

func caption(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.TextStyle.Bold = true
	l.Truncation = fyne.TextTruncateEllipsis
	return l
}

// fill makes the rows of a boat.
func (s *studSheet) fill(d *visit.Document) {
	s.grid.Objects, s.names, s.found, s.left = nil, nil, nil, nil
	for i, m := range d.Hull.Mounts {
		found := newField(s.w, func(text string) { s.take(i, text, func(m *visit.MountFound) *visit.Maybe { return &m.StudFoundMM }) })
		left := newField(s.w, func(text string) { s.take(i, text, func(m *visit.MountFound) *visit.Maybe { return &m.StudLeftMM }) })
		name := widget.NewLabel(s.w.speaker.Part(m.Name))
		name.Truncation = fyne.TextTruncateEllipsis
		s.names, s.found, s.left = append(s.names, m.Name), append(s.found, found), append(s.left, left)
		s.grid.Add(container.New(otherShares, name, found, left))
	}
}

// take makes an edit of a height as typed; nothing takes it back.
func (s *studSheet) take(mount int, text string, of func(*visit.MountFound) *visit.Maybe) {
	d := s.w.history.Now()
	found := d.Visit.Found(d.Hull.Mounts[mount].Name)
	height := visit.Maybe{}
	if text != "" {
		v, ok := number(text)
		if !ok {
			s.w.tell(s.w.speaker.Say(words.NotANumber, words.Args{"Text": text}))
			return
		}
		height = visit.Known(v)
	}
	*of(&found) = height
	s.w.do(&visit.FindMount{Found: found})
}

// show fills the fields.
func (s *studSheet) show(d *visit.Document) {
	var names []string
	for _, m := range d.Hull.Mounts {
		names = append(names, m.Name)
	}
	if !slices.Equal(names, s.names) {
		s.fill(d)
		s.marks.fill(d)
	}
	s.marks.show(d)
	for i, name := range names {
		m := d.Visit.Found(name)
		s.found[i].show(s.height(m.StudFoundMM))
		s.left[i].show(s.height(m.StudLeftMM))
	}
}

func (s *studSheet) height(m visit.Maybe) string {
	if !m.Known {
		return ""
	}
	return s.w.units().Plain(m.Value, 2)
}
