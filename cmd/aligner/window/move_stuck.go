package window

// This file is what cannot be moved: told of a nut or a slide, the plan goes
// round it.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
)

// stuckSheet is two boxes a mount.
type stuckSheet struct {
	w      *Window
	box    *fyne.Container
	grid   *fyne.Container
	names  []*widget.Label
	nuts   []*tickBox
	slides []*tickBox
	quiet  bool // being filled, not touched
}

func newStuckSheet(w *Window) *stuckSheet {
	s := &stuckSheet{w: w, grid: container.NewVBox()}
	s.box = container.NewVBox(heading(w.speaker.Say(words.MoveStuckTitle, nil)), s.grid)
	return s
}

// fill makes the rows of a boat.
func (s *stuckSheet) fill(d *visit.Document) {
	s.grid.Objects, s.names, s.nuts, s.slides = nil, nil, nil, nil
	for i, m := range d.Hull.Mounts {
		name := widget.NewLabel(s.w.speaker.Part(m.Name))
		name.Truncation = fyne.TextTruncateEllipsis
		nut := newTickBox(s.w, s.w.speaker.Say(words.MoveStuckNut, nil), func(on bool) { s.say(i, on, false) })
		slide := newTickBox(s.w, s.w.speaker.Say(words.MoveStuckSlide, nil), func(on bool) { s.say(i, on, true) })
		s.names, s.nuts, s.slides = append(s.names, name), append(s.nuts, nut), append(s.slides, slide)
		s.grid.Add(container.New(otherShares, name, nut, slide))
	}
}

// toggle turns over whether a mount's nut can be turned.
func (s *stuckSheet) toggle(mount int) {
	d := s.w.history.Now()
	s.say(mount, d.Visit.Found(d.Hull.Mounts[mount].Name).Nut == visit.Free, false)
}

// say tells that a nut or slide is stuck, or free again.
func (s *stuckSheet) say(mount int, stuck, slide bool) {
	if s.quiet {
		return
	}
	d := s.w.history.Now()
	found := d.Visit.Found(d.Hull.Mounts[mount].Name)
	to := visit.Free
	if stuck {
		to = visit.Stuck
	}
	if slide {
		found.Slide = to
	} else {
		found.Nut = to
	}
	s.w.do(&visit.FindMount{Found: found})
}

// show fills the boxes.
func (s *stuckSheet) show(d *visit.Document) {
	same := len(s.names) == len(d.Hull.Mounts)
	for i := range s.names {
		same = same && s.names[i].Text == s.w.speaker.Part(d.Hull.Mounts[i].Name)
	}
	if !same {
		s.fill(d)
	}
	s.quiet = true
	defer func() { s.quiet = false }()
	for i, m := range d.Hull.Mounts {
		found := d.Visit.Found(m.Name)
		s.nuts[i].SetChecked(found.Nut != visit.Free)
		s.slides[i].SetChecked(found.Slide != visit.Free)
		if bold := i == s.w.chosen; s.names[i].TextStyle.Bold != bold {
			s.names[i].TextStyle.Bold = bold
			s.names[i].Refresh()
		}
	}
}
