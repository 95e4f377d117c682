package window

// This file is what is typed into the sheet for gauging: readings as they are called,
// and corrections of those picked.

import (
	"strings"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/hulls/visit/called"
	"aligner/report/say"
)

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
