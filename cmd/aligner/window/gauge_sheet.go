package window

// This file is the sheet for gauging, its parts and where they stand: how the shaft is
// held, a line to type
// readings into, what was read, and what it comes to.

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report/job"
)

// gaugeSheet is the entry, the list and the estimate.
type gaugeSheet struct {
	w        *Window
	box      *fyne.Container
	title    *widget.Label
	asked    *widget.Label
	entry    *readingLine
	kinds    *kindForm
	list     *fyne.Container
	chips    []*page.Button
	out      *page.Button // takes the picked reading out
	bites    *widget.Label
	estimate *widget.Label
	turns    *turnForm
	hold     *holdForm
	picked   int // the reading being corrected; -1: none

	line *fyne.Container // the entry and what is asked for
}

func newGaugeSheet(w *Window) *gaugeSheet {
	s := &gaugeSheet{w: w, title: wrapped(""), asked: widget.NewLabel(""), list: container.New(&page.Flow{Narrow: columnLeast}), bites: small(""),
		estimate: wrapped(""), picked: -1}
	s.asked.TextStyle.Bold, s.title.TextStyle.Bold = true, true
	s.entry = newReadingLine(s)
	s.entry.OnSubmitted = s.typed
	s.kinds, s.hold, s.turns = newKindForm(s), newHoldForm(s), newTurnForm(s)
	s.out = newPress(w, w.speaker.Say(words.GaugeTakeOut, nil), s.takeOut)
	s.line = container.NewBorder(nil, nil, s.asked, nil, s.entry)
	s.box = container.NewVBox()
	s.arrange(false)
	return s
}

// arrange puts how the shaft is held before the first reading, what the readings
// come to before it afterwards; and what goes with a kind under the line, unless
// it is the leaf.
func (s *gaugeSheet) arrange(begun bool) {
	order := []fyne.CanvasObject{s.title, s.line}
	other := s.kinds.kind() != "leaf"
	if other {
		order = append(order, s.kinds.box)
	}
	if begun {
		order = append(order, s.list, s.out, s.estimate)
	} else {
		order = append(order, s.bites, s.hold.box)
	}
	if !other {
		order = append(order, s.kinds.box)
	}
	if begun {
		order = append(order, s.turns.box, s.hold.box)
	} else {
		order = append(order, s.estimate, s.turns.box)
	}
	if !slices.Equal(s.box.Objects, order) {
		s.box.Objects = order
		s.box.Refresh()
	}
}

// show fills the sheet.
func (s *gaugeSheet) show(d *visit.Document) {
	sp := s.w.speaker
	event := lastGauging(&d.Visit)
	if event < 0 || s.picked >= len(d.Visit.Events[event].Gauging.Readings) {
		s.picked = -1
	}
	s.title.SetText(s.titleOf(&d.Visit, event))
	set := s.setting(&d.Visit)
	switch {
	case s.picked >= 0:
		s.asked.SetText(sp.Say(words.GaugeCorrect, words.Args{"Number": s.picked + 1}))
	case s.kinds.placeless():
		s.asked.SetText(sp.Say(words.GaugeNextOne, words.Args{"Kind": s.kinds.kind()}))
	case s.kinds.kind() != "leaf":
		s.asked.SetText(sp.Say(words.GaugeNextKind, words.Args{"Kind": s.kinds.kind(), "Clock": s.w.writePlace(set.AskedDeg)}))
	default:
		s.asked.SetText(sp.Say(words.GaugeEntry, words.Args{"Clock": s.w.writePlace(set.AskedDeg)}))
	}
	s.kinds.show(d)
	s.fillChips(&d.Visit, event)
	showIf(s.out, s.picked >= 0)
	begun := event >= 0 && len(d.Visit.Events[event].Gauging.Readings) > 0
	if !anyGauged(&d.Visit) {
		s.bites.SetText(s.w.cautionLine(job.Gauging, d))
	} else {
		s.bites.SetText("")
	}
	showIf(s.bites, s.bites.Text != "")
	s.arrange(begun)
	s.estimate.SetText(strings.Join(s.told(d), "\n"))
	s.turns.show(&d.Visit, event)
	s.hold.show(d, event)
}
