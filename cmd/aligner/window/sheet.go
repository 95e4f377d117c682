package window

// This file is the mounts beside the picture: number fields for nuts and
// slides, loads, and the room in log and bearings.

import (
	"math"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/visit"
)

// sheet is a row a mount.
type sheet struct {
	w    *Window
	box  *fyne.Container
	rows []mountRow
	room *widget.Label

	thrust, torque *page.Entry // under power
	power          *widget.Label
}

type mountRow struct {
	name         *widget.Label
	steps, slide *page.Entry
	load         *widget.Label
}

func newSheet(w *Window) *sheet {
	return &sheet{w: w, box: container.NewVBox(), room: widget.NewLabel(""),
		thrust: page.NewEntry(w.keyEverywhere), torque: page.NewEntry(w.keyEverywhere)}
}

// fill makes the rows of a boat.
func (s *sheet) fill() {
	say := func(id words.ID) fyne.CanvasObject {
		l := widget.NewLabel(s.w.speaker.Say(id, nil))
		l.TextStyle.Bold = true
		return l
	}
	steps := words.SheetNut
	if s.w.boat.hull.Mounts[0].Kind == hulls.Solid {
		steps = words.SheetShims
	}
	s.box.Objects = []fyne.CanvasObject{container.New(sheetShares,
		say(words.SheetMount), say(steps), say(words.SheetSlide), say(words.SheetLoad))}
	s.rows = nil
	for i, m := range s.w.boat.hull.Mounts {
		row := mountRow{name: widget.NewLabel(s.w.speaker.Part(m.Name)), steps: page.NewEntry(s.w.keyEverywhere), slide: page.NewEntry(s.w.keyEverywhere), load: widget.NewLabel("")}
		row.steps.OnSubmitted = func(text string) {
			s.typed(text, func(v float64) visit.Edit {
				d := s.w.history.Now()
				return &visit.TurnNut{Mount: m.Name, Steps: v, By: v - d.Trial.Steps[i]}
			})
		}
		row.slide.OnSubmitted = func(text string) {
			s.typed(text, func(v float64) visit.Edit {
				d := s.w.history.Now()
				return &visit.SlideMount{Mount: m.Name, MM: v, By: v - d.Trial.SlideMM[i]}
			})
		}
		s.rows = append(s.rows, row)
		row.name.Truncation, row.load.Truncation = fyne.TextTruncateEllipsis, fyne.TextTruncateEllipsis
		s.box.Add(container.New(sheetShares, row.name, row.steps, row.slide, row.load))
	}
	s.room.Wrapping = fyne.TextWrapWord
	s.powerRow()
	s.box.Add(container.NewGridWithColumns(2, s.w.top.afloat, s.w.top.lever))
	s.box.Add(s.room)
	s.box.Refresh()
}

// powerRow is thrust and torque on the face, under power.
func (s *sheet) powerRow() {
	power := func(e *page.Entry, edit func(p *visit.Power, v float64)) {
		e.OnSubmitted = func(text string) {
			s.typed(text, func(v float64) visit.Edit {
				t := s.w.history.Now().Trial
				p := &visit.Power{ThrustN: t.ThrustN, TorqueNM: t.TorqueNM}
				edit(p, v)
				return p
			})
		}
	}
	power(s.thrust, func(p *visit.Power, v float64) { _, n := s.w.units().ForceUnit(); p.ThrustN = v * n })
	power(s.torque, func(p *visit.Power, v float64) { _, nm := s.w.units().TorqueUnit(); p.TorqueNM = v * nm })
	s.power = widget.NewLabel("")
	s.power.Truncation = fyne.TextTruncateEllipsis
	s.box.Add(container.New(sheetShares, widget.NewLabel(s.w.speaker.Say(words.UnderPower, nil)), s.thrust, s.torque, s.power))
}

// typed turns a number field into an edit; what is no number is put back.
func (s *sheet) typed(text string, edit func(float64) visit.Edit) {
	v, ok := number(text)
	if !ok {
		s.w.update()
		s.w.sentence.SetText(s.w.speaker.Say(words.NotANumber, words.Args{"Text": text}))
		return
	}
	s.w.do(edit(v))
}

// show fills the rows.
func (s *sheet) show(d *visit.Document) {
	u := s.w.units()
	for i := range s.rows {
		row := &s.rows[i]
		row.name.TextStyle.Bold = i == s.w.chosen
		row.name.Refresh()
		setEntry(row.steps, u.Plain(d.Trial.Steps[i], 2))
		setEntry(row.slide, u.Plain(d.Trial.SlideMM[i], 2))
		row.load.SetText("")
		if s.w.now.err == nil {
			row.load.SetText(u.Force(s.w.now.result.MountLoadN[i]))
		}
	}
	force, n := u.ForceUnit()
	torque, nm := u.TorqueUnit()
	s.power.SetText(force + ", " + torque)
	setEntry(s.thrust, u.Plain(d.Trial.ThrustN/n, 1))
	setEntry(s.torque, u.Plain(d.Trial.TorqueNM/nm, 1))
	s.room.SetText(s.rooms())
}

// setEntry does not disturb a field that says so already.
func setEntry(e *page.Entry, text string) {
	if e.Text != text {
		e.SetText(text)
	}
}

// rooms says how the shaft lies in its log and bearings.
func (s *sheet) rooms() string {
	r := &s.w.now.result
	if s.w.now.err != nil {
		return ""
	}
	u := s.w.units()
	var lines []string
	if r.LogClearanceMM > 0 {
		lines = append(lines, s.w.speaker.Say(words.LogClear, words.Args{"Room": u.MM(r.LogClearanceMM)}))
	} else {
		lines = append(lines, s.w.speaker.Say(words.LogTouches, words.Args{"Force": u.Force(math.Hypot(r.LogForceN[0], r.LogForceN[1]))}))
	}
	for i, b := range s.w.boat.hull.Bearings {
		f := r.BearingForceN[i]
		lines = append(lines, s.w.speaker.Say(words.BearingLine, words.Args{"Bearing": b.Name, "Force": u.Force(math.Hypot(f[0], f[1]))}))
	}
	return strings.Join(lines, "\n")
}
