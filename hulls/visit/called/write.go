package called

// This file writes a reading as the line that reads back to it, to be
// corrected.

import (
	"strconv"
	"strings"

	"aligner/hulls/visit"
)

// Write writes a reading as a line, and the setting in which it reads back to
// the same reading.
func Write(r visit.Reading, s Setting) (string, Setting) {
	s.Kind = r.Kind()
	var text, note string
	radius := 0.0
	switch r := r.(type) {
	case visit.Leaf:
		text, radius, note = s.clock(r.ClockDeg)+" "+s.pair(r.Goes, r.Stops), r.RadiusMM, r.Note
	case visit.LeafRound:
		text, radius, note = s.length(r.Leaf)+" "+s.arcs(r.Enters)+"/"+s.arcs(r.Stops), r.RadiusMM, r.Note
	case visit.RimStep:
		half := map[string]string{visit.EngineSide: "e ", visit.ShaftSide: "s "}[r.High]
		text, note = s.clock(r.ClockDeg)+" "+half+s.pair(r.Goes, r.Stops), r.Note
	case visit.Dial:
		s.On, s.CarriedBy, s.ZeroDeg, s.Sag = r.On, r.CarriedBy, r.ZeroDeg, r.Sag
		text, radius, note = s.clock(r.ClockDeg)+" "+s.length(r.Reads), r.RadiusMM, r.Note
	case visit.RunOut:
		s.Half, s.On = r.Half, r.On
		text, radius, note = s.length(r.TIR), r.RadiusMM, r.Note
		if r.LowDeg.Known {
			text += " " + s.clock(r.LowDeg.Value)
		}
	case visit.Clearance:
		s.Where, s.End = r.Where, r.End
		text, note = s.clock(r.ClockDeg)+" "+s.pair(r.Goes, r.Stops), r.Note
	case visit.Pilot:
		text, note = map[string]string{visit.PilotEnters[0]: "f", visit.PilotEnters[1]: "w", visit.PilotEnters[2]: "n"}[r.Enters], r.Note
	}
	if radius > 0 {
		text += " @" + number(radius)
	}
	if note != "" {
		text += " # " + note
	}
	return text, s
}

// clock writes a place: an hour, a time to the minute, or degrees where that is
// not the whole truth.
func (s Setting) clock(deg float64) string {
	text := visit.ClockText(deg, s.Seen)
	if back, ok := Place(text, s.Seen); ok && back == deg {
		return strings.TrimSuffix(text, ":00")
	}
	if s.Seen == visit.LookingAft && deg != 0 {
		deg = 360 - deg
	}
	return number(deg) + "deg"
}

func (s Setting) arcs(arcs []visit.Arc) string {
	var list []string
	for _, a := range arcs {
		from, to := a.FromDeg, a.ToDeg
		if a.AllRound() {
			from, to = 0, 0
		} else if s.Seen == visit.LookingAft {
			from, to = to, from
		}
		list = append(list, s.clock(from)+"-"+s.clock(to))
	}
	return strings.Join(list, " ")
}

// pair writes limits; a unit other than the setting's is named.
func (s Setting) pair(goes, stops visit.Length) string {
	first, second := "-", "-"
	if goes.Given() {
		first = s.length(goes)
	}
	if stops.Given() {
		second = s.length(stops)
	}
	if goes.Given() && stops.Given() && goes.Unit != stops.Unit { // a unit at the end would be both numbers'
		first, second = number(goes.Value)+string(goes.Unit), number(stops.Value)+string(stops.Unit)
	}
	return first + "/" + second
}

func (s Setting) length(l visit.Length) string {
	text := number(l.Value)
	if own := (&line{Setting: s}).unit(); l.Unit != own {
		text += string(l.Unit)
	}
	return text
}

func number(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
