package window

// This file is the sheet for gauging: how the shaft is held, a line to type
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
	"aligner/hulls/visit/called"
	"aligner/kinematics/gauge"
	"aligner/report/job"
	"aligner/report/say"
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

// setting is what stands while readings are called.
func (s *gaugeSheet) setting(v *visit.Visit) called.Setting {
	set := called.Setting{Kind: s.kinds.kind(), Seen: s.w.seen(), Unit: s.w.unitShown()}
	if set.Kind == "leaf" || set.Kind == "leaf round" || set.Kind == "rim step" {
		set.Unit, set.Leaves = s.leaves(v)
	}
	set.AskedDeg, set.Then, _ = s.askedFor(v)
	if set.Kind != "leaf" {
		set.AskedDeg, set.Then = s.kinds.askedFor(v)
	}
	s.kinds.fill(&set)
	return set
}

// leaves are the set's thicknesses in the unit they are called in: the set's
// own, or where none was told, the unit on the screen.
func (s *gaugeSheet) leaves(v *visit.Visit) (visit.Unit, []float64) {
	unit, per := v.Leaves.Unit, say.MMPerThou
	if unit == "" {
		unit = s.w.unitShown()
	}
	if unit == visit.InMM {
		per = 1
	}
	var all []float64
	for _, mm := range v.Leaves.SinglesMM() {
		all = append(all, mm/per)
	}
	return unit, all
}

// typed takes a line: a reading, or what the one picked should have been.
func (s *gaugeSheet) typed(text string) {
	d := s.w.history.Now()
	if strings.ContainsAny(text, "\n\t") {
		s.paste(text)
		return
	}
	r, err := called.Line(text, s.setting(&d.Visit))
	if err != nil {
		s.w.sentence.SetText(s.w.calledFault(err))
		return
	}
	event, taken := lastGauging(&d.Visit), false
	if s.picked >= 0 {
		taken = s.w.try(&visit.ChangeReading{Event: event, At: s.picked, Reading: visit.OneReading{Reading: r}})
	} else {
		taken = s.take(event, []visit.Reading{r})
	}
	if taken {
		s.leave()
	}
}

// paste takes several lines at once, all or none.
func (s *gaugeSheet) paste(text string) {
	d := s.w.history.Now()
	readings, faults := called.Table(text, s.setting(&d.Visit))
	if faults != nil {
		var lines []string
		for _, f := range faults {
			lines = append(lines, s.w.calledFault(f))
		}
		s.w.sentence.SetText(strings.Join(append(lines, s.w.speaker.Say(words.CalledNoneTaken, nil)), "\n"))
		return
	}
	if s.take(lastGauging(&d.Visit), readings) {
		s.leave()
	}
}

// take adds readings to the gauging that goes on, or begins one with them, held
// as asked for.
func (s *gaugeSheet) take(event int, readings []visit.Reading) bool {
	switch {
	case event < 0:
		g := s.hold.asked()
		g.Readings = readings
		return s.w.try(&visit.BeginGauging{Gauging: g})
	case len(readings) == 1:
		return s.w.try(&visit.AddReading{Event: event, Reading: visit.OneReading{Reading: readings[0]}})
	}
	all := make([]visit.OneReading, len(readings))
	for i, r := range readings {
		all[i].Reading = r
	}
	return s.w.try(&visit.AddReadings{Event: event, Readings: all})
}

// try does an edit and reports whether it was taken; a refused one is told.
func (w *Window) try(e visit.Edit) bool {
	if _, err := w.history.Preview(e); err != nil {
		w.tell(w.told(err))
		return false
	}
	w.do(e)
	return true
}

// pick goes to the reading before or after, to be corrected.
func (s *gaugeSheet) pick(by int) {
	d := s.w.history.Now()
	event := lastGauging(&d.Visit)
	if event < 0 {
		return
	}
	n := len(d.Visit.Events[event].Gauging.Readings)
	at := s.picked + by
	if s.picked < 0 && by < 0 {
		at = n - 1
	}
	if at < 0 || at >= n || s.picked < 0 && by > 0 {
		if by > 0 {
			s.leave()
		}
		return
	}
	s.pickAt(at)
}

// pickAt puts a reading into the line.
func (s *gaugeSheet) pickAt(at int) {
	d := s.w.history.Now()
	event := lastGauging(&d.Visit)
	if event < 0 || at >= len(d.Visit.Events[event].Gauging.Readings) {
		return
	}
	r := d.Visit.Events[event].Gauging.Readings[at]
	s.picked = at
	set := s.setting(&d.Visit)
	if leaf, unit := r.Kind(), visit.Unit(""); leaf == "leaf" || leaf == "leaf round" || leaf == "rim step" {
		unit, _ = s.leaves(&d.Visit)
		set.Unit = unit
	} else {
		set.Unit = s.w.unitShown()
	}
	text, with := called.Write(r, set)
	if s.w.units().DecimalComma {
		text = commas(text)
	}
	s.kinds.use(with)
	s.entry.SetText(text)
	s.entry.CursorColumn = len([]rune(text))
	s.show(&d)
	s.w.win.Canvas().Focus(s.entry)
}

// commas writes a line's numbers with decimal commas; its note stays.
func commas(text string) string {
	body, note, has := strings.Cut(text, "#")
	body = strings.ReplaceAll(body, ".", ",")
	if has {
		return body + "#" + note
	}
	return body
}

// takeOut takes the picked reading out.
func (s *gaugeSheet) takeOut() {
	d := s.w.history.Now()
	if event := lastGauging(&d.Visit); event >= 0 && s.picked >= 0 {
		at := s.picked
		s.picked = -1
		s.entry.SetText("")
		s.w.try(&visit.RemoveReading{Event: event, At: at})
		s.w.win.Canvas().Focus(s.entry)
	}
}

// leave leaves a correction, the line empty.
func (s *gaugeSheet) leave() {
	s.picked = -1
	s.entry.SetText("")
	d := s.w.document()
	s.show(&d)
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

// titleOf names the gauging, how the shaft is held, and how it was turned.
func (s *gaugeSheet) titleOf(v *visit.Visit, event int) string {
	sp, u := s.w.speaker, s.w.units()
	g, id := s.hold.asked(), words.GaugeTitleNew
	if event >= 0 {
		g, id = *v.Events[event].Gauging, words.GaugeTitle
	}
	unit, _ := s.leaves(v)
	by := ""
	if g.HeldBy != "" {
		by = sp.Say(words.Of("by", g.HeldBy), nil)
		if strings.HasPrefix(by, "[") {
			by = g.HeldBy
		}
	}
	number := 1
	for _, e := range v.Events[:max(event, 0)] {
		if e.Gauging != nil {
			number++
		}
	}
	title := sp.Say(id, words.Args{"Number": number, "Held": g.Held, "By": by, "Turn": u.Plain(g.ShaftTurnDeg, 0),
		"Flange": u.Plain(g.FlangeTurnDeg, 0), "Apart": g.ShaftTurnDeg != g.FlangeTurnDeg, "Unit": string(unit)})
	if _, aside := s.became(event, 0); aside && event >= 0 {
		title += sp.Say(words.GaugeSetAside, nil)
	}
	return title
}

// told is what the readings come to, and whether it is enough.
func (s *gaugeSheet) told(d *visit.Document) []string {
	sp, u := s.w.speaker, s.w.units()
	m := &s.w.mind
	switch {
	case m.err != nil:
		return []string{s.w.told(m.err)}
	case m.estimate == nil:
		return nil
	}
	e := m.estimate
	lines := say.Brief(sp, u, &d.Visit, e)
	if e.Status == gauge.Ready && e.Next == nil && e.WhyNot == "" {
		switch e.Verdict {
		case gauge.Within:
			lines = append(lines, sp.Say(words.GaugeEnoughWithin, nil))
		case gauge.Outside:
			lines = append(lines, sp.Say(words.GaugeEnoughOutside, nil))
		}
	}
	return lines
}

// fillChips writes a reading each, which can be taken to be corrected.
func (s *gaugeSheet) fillChips(v *visit.Visit, event int) {
	var readings []visit.Reading
	if event >= 0 {
		readings = v.Events[event].Gauging.Readings
	}
	for i := len(s.chips); i < len(readings); i++ {
		s.chips = append(s.chips, newPress(s.w, "", func() { s.pickAt(i) }))
		s.list.Add(s.chips[i])
	}
	for i := len(readings); i < len(s.chips); i++ {
		s.list.Remove(s.chips[i])
	}
	s.chips = s.chips[:len(readings)]
	for i, r := range readings {
		text, importance := s.w.readingText(r), widget.LowImportance
		switch odd, aside := s.became(event, i); {
		case odd:
			text, importance = text+s.w.speaker.Say(words.GaugeDoesNotFit, nil), widget.WarningImportance
		case aside:
			text = "(" + text + ")"
		}
		if i == s.picked {
			importance = widget.HighImportance
		}
		if b := s.chips[i]; b.Text != text || b.Importance != importance {
			b.Importance = importance
			b.SetText(text)
		}
	}
	s.list.Refresh()
}

// became says what became of a reading: it does not fit, or is not used.
func (s *gaugeSheet) became(event, i int) (odd, aside bool) {
	e := s.w.mind.estimate
	if e == nil {
		return false, false
	}
	for _, o := range e.Odd {
		odd = odd || o.Event == event && o.Reading == i
	}
	for _, a := range e.SetAside {
		aside = aside || a.Event == event && (a.Reading == i || a.Reading < 0)
	}
	return odd, aside
}

// readingText is a reading as a list has it.
func (w *Window) readingText(r visit.Reading) string {
	return say.Reading(w.speaker, w.units(), r, w.settings.LookingAft)
}
