package window

// This file is the sheet for gauging: a line to type readings into, what was
// read, and what it comes to.

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// gaugeSheet is the entry, the list and the estimate.
type gaugeSheet struct {
	w        *Window
	box      *fyne.Container
	asked    *widget.Label
	entry    *page.Entry
	list     *widget.Label
	estimate *widget.Label
}

func newGaugeSheet(w *Window) *gaugeSheet {
	s := &gaugeSheet{w: w, asked: widget.NewLabel(""), entry: page.NewEntry(w.keyEverywhere), list: widget.NewLabel(""), estimate: widget.NewLabel("")}
	s.asked.TextStyle.Bold = true
	s.entry.SetPlaceHolder(w.speaker.Say(words.GaugeEntryHint, nil))
	s.entry.OnSubmitted = s.typed
	s.estimate.Wrapping, s.list.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	turns := container.NewGridWithColumns(4)
	for _, deg := range []float64{0, 90, 180, 270} {
		turns.Add(widget.NewButton(say.Units{}.Plain(deg, 0)+"\u00b0", func() { s.begin(deg) }))
	}
	s.box = container.NewVBox(container.NewBorder(nil, nil, s.asked, nil, s.entry), s.list, s.estimate,
		widget.NewLabel(w.speaker.Say(words.GaugeAgain, nil)), turns)
	return s
}

// last is the event of the gauging readings go to, or -1: none since the last
// move.
func lastGauging(v *visit.Visit) int {
	for i := len(v.Events) - 1; i >= 0; i-- {
		switch {
		case v.Events[i].Gauging != nil:
			return i
		case v.Events[i].Move != nil, v.Events[i].Fasten != nil:
			return -1
		}
	}
	return -1
}

// begin begins a gauging with shaft and flange turned together.
func (s *gaugeSheet) begin(deg float64) {
	d := s.w.history.Now()
	s.w.do(&visit.BeginGauging{Gauging: visit.Gauging{Held: heldToGauge(&d), ShaftTurnDeg: deg, FlangeTurnDeg: deg}})
	s.w.win.Canvas().Focus(s.entry)
}

// heldToGauge is how the shaft is taken to be held: as on the screen, where
// that can be gauged.
func heldToGauge(d *visit.Document) string {
	if d.Trial.Held == "centred" || !d.Hull.Coupling.HasPilot() {
		return "centred"
	}
	return "seated"
}

// places are where leaves were tried, in order: in the gauging that goes on, and
// in the last one before it.
func places(v *visit.Visit, current int) (before, now []float64) {
	at := func(i int) (all []float64) {
		for _, r := range v.Events[i].Gauging.Readings {
			if leaf, ok := r.(visit.Leaf); ok && !slices.Contains(all, leaf.ClockDeg) {
				all = append(all, leaf.ClockDeg)
			}
		}
		return all
	}
	if current >= 0 {
		now = at(current)
	}
	for i := len(v.Events) - 1; i >= 0; i-- {
		if v.Events[i].Gauging != nil && i != current {
			if before = at(i); len(before) > 0 {
				return before, now
			}
		}
	}
	return before, now
}

// typed takes a line.
func (s *gaugeSheet) typed(text string) {
	d := s.w.history.Now()
	event := lastGauging(&d.Visit)
	before, now := places(&d.Visit, event)
	unit, leaves := s.leaves(&d.Visit)
	leaf, err := readEntry(s.w.speaker, text, nextPlace(before, now), visit.Direction(s.w.settings.LookingAft), unit, leaves)
	if err != nil {
		s.w.sentence.SetText(s.w.told(err))
		return
	}
	if event < 0 {
		s.w.do(&visit.BeginGauging{Gauging: visit.Gauging{Held: heldToGauge(&d)}})
		d = s.w.history.Now()
		event = lastGauging(&d.Visit)
	}
	s.w.do(&visit.AddReading{Event: event, Reading: visit.OneReading{Reading: leaf}})
	s.entry.SetText("")
}

// leaves are the set's thicknesses in the unit they are called in: the set's
// own, or where none was told, the unit on the screen.
func (s *gaugeSheet) leaves(v *visit.Visit) (visit.Unit, []float64) {
	unit, per := v.Leaves.Unit, say.MMPerThou
	if unit == "" && s.w.settings.Metric {
		unit = visit.InMM
	}
	if unit == visit.InMM {
		per = 1
	} else {
		unit = visit.InThou
	}
	var all []float64
	for _, mm := range v.Leaves.SinglesMM() {
		all = append(all, mm/per)
	}
	return unit, all
}

// show fills the sheet.
func (s *gaugeSheet) show(d *visit.Document) {
	sp, u := s.w.speaker, s.w.units()
	event := lastGauging(&d.Visit)
	before, now := places(&d.Visit, event)
	aft := s.w.settings.LookingAft
	s.asked.SetText(sp.Say(words.GaugeEntry, words.Args{"Clock": say.Clock(nextPlace(before, now), aft)}))
	s.list.SetText(s.readings(&d.Visit, event))
	var lines []string
	switch m := &s.w.mind; {
	case m.err != nil:
		lines = []string{s.w.told(m.err)}
	case m.estimate != nil:
		lines = say.Brief(sp, u, &d.Visit, m.estimate)
	}
	s.estimate.SetText(strings.Join(lines, "\n"))
}

// readings lists the gauging that goes on, the odd ones marked.
func (s *gaugeSheet) readings(v *visit.Visit, event int) string {
	sp, u := s.w.speaker, s.w.units()
	if event < 0 {
		return sp.Say(words.GaugeNone, nil)
	}
	g := v.Events[event].Gauging
	var read []string
	for i, r := range g.Readings {
		read = append(read, s.reading(r)+s.mark(event, i))
	}
	title := sp.Say(words.GaugeTitle, words.Args{"Number": event + 1, "Held": g.Held, "Turn": u.Plain(g.ShaftTurnDeg, 0), "Unit": u.GapUnit()})
	return title + "\n" + strings.Join(read, "   ")
}

func (s *gaugeSheet) reading(r visit.Reading) string {
	sp := s.w.speaker
	clock := ""
	if deg, ok := visit.ClockOf(r); ok {
		clock = say.Clock(deg, s.w.settings.LookingAft)
	}
	leaf, ok := r.(visit.Leaf)
	args := words.Args{"Clock": clock, "Goes": s.marked(leaf.Goes), "Stops": s.marked(leaf.Stops)}
	switch {
	case !ok:
		return sp.Say(words.GaugeReadingOther, words.Args{"Clock": clock, "Kind": r.Kind()})
	case !leaf.Goes.Given():
		return sp.Say(words.GaugeReadingStops, args)
	case !leaf.Stops.Given():
		return sp.Say(words.GaugeReadingGoes, args)
	}
	return sp.Say(words.GaugeReading, args)
}

// marked writes a leaf as it is marked, in the unit on the screen.
func (s *gaugeSheet) marked(l visit.Length) string {
	if s.w.settings.Metric {
		return s.w.units().Plain(l.MM(), 3)
	}
	return s.w.units().Plain(l.Thou(), 2)
}

// mark says what became of a reading, if it was not simply used.
func (s *gaugeSheet) mark(event, i int) string {
	e := s.w.mind.estimate
	if e == nil {
		return ""
	}
	for _, o := range e.Odd {
		if o.Event == event && o.Reading == i {
			return s.w.speaker.Say(words.GaugeDoesNotFit, nil)
		}
	}
	for _, a := range e.SetAside {
		if a.Event == event && (a.Reading == i || a.Reading < 0) {
			return s.w.speaker.Say(words.GaugeSetAside, nil)
		}
	}
	return ""
}
