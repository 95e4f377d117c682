package window

// This file is what the sheet for gauging tells: the gauging that goes on, what its
// readings come to, and each of them.

import (
	"strings"

	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/say"
)

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
