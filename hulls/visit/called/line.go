package called

// This file reads one line, by its kind.

import (
	"strconv"
	"strings"

	"aligner/hulls/visit"
)

// line is a line taken apart: its words, and what any line may end in.
type line struct {
	Setting
	text     string
	words    []string
	radiusMM float64
	note     string
}

// Line reads one line. The error is a *Fault.
func Line(text string, s Setting) (visit.Reading, error) {
	l, err := take(text, s)
	if err != nil {
		return nil, err
	}
	var r visit.Reading
	switch s.kind() {
	case "leaf":
		r, err = l.leaf()
	case "leaf round":
		r, err = l.round()
	case "rim step":
		r, err = l.step()
	case "dial":
		r, err = l.dial()
	case "run-out":
		r, err = l.runOut()
	case "clearance":
		r, err = l.clearance()
	case "pilot":
		r, err = l.pilot()
	default:
		err = l.fault(Unreadable)
	}
	if err != nil {
		return nil, err
	}
	return r, nil
}

// take parts a line into words, radius and note.
func take(text string, s Setting) (*line, error) {
	l := &line{Setting: s, text: strings.TrimSpace(text)}
	body, note, _ := strings.Cut(l.text, "#")
	l.note = strings.TrimSpace(note)
	body = strings.ReplaceAll(body, ",", ".")
	body, radius, has := strings.Cut(body, "@")
	if has {
		mm, err := strconv.ParseFloat(strings.TrimSuffix(strings.TrimSpace(radius), "mm"), 64)
		if err != nil || !(mm > 0) {
			return nil, l.fault(NoLength)
		}
		l.radiusMM = mm
	}
	if l.words = strings.Fields(body); len(l.words) == 0 {
		return nil, l.fault(Unreadable)
	}
	return l, nil
}

func (l *line) fault(why Why) error { return &Fault{Why: why, Text: l.text} }

// place takes the first word as the place where there are more than wanted, and
// gives what is left; else the place asked for stands.
func (l *line) place(wanted int) (deg float64, rest []string, err error) {
	switch len(l.words) {
	case wanted:
		return l.AskedDeg, l.words, nil
	case wanted + 1:
		deg, ok := Place(l.words[0], l.Seen)
		if !ok {
			return 0, nil, l.fault(NoPlace)
		}
		return deg, l.words[1:], nil
	}
	return 0, nil, l.fault(Unreadable)
}

func (l *line) leaf() (visit.Reading, error) {
	deg, rest, err := l.place(1)
	if err != nil {
		return nil, err
	}
	r := visit.Leaf{ClockDeg: deg, RadiusMM: l.radiusMM, Note: l.note}
	r.Goes, r.Stops, err = l.limits(rest[0])
	return r, err
}

func (l *line) step() (visit.Reading, error) {
	r := visit.RimStep{Note: l.note}
	for i, w := range l.words {
		if half, ok := halves[strings.ToLower(w)]; ok && i < len(l.words)-1 {
			r.High = half
			l.words = append(append([]string(nil), l.words[:i]...), l.words[i+1:]...)
			break
		}
	}
	deg, rest, err := l.place(1)
	if err != nil {
		return nil, err
	}
	r.ClockDeg = deg
	if r.Goes, r.Stops, err = l.limits(rest[0]); err != nil {
		return nil, err
	}
	if r.High == "" && r.Goes.Given() && r.Goes.Value > 0 {
		return nil, l.fault(NoHalf)
	}
	if !r.Goes.Given() {
		r.High = "" // not even the thinnest enters: neither is the higher
	}
	return r, l.rimless()
}

// halves are the letters of the halves, English and German.
var halves = map[string]string{"e": visit.EngineSide, "m": visit.EngineSide, "s": visit.ShaftSide, "w": visit.ShaftSide}

// rimless refuses a radius where there is none.
func (l *line) rimless() error {
	if l.radiusMM != 0 {
		return l.fault(Unreadable)
	}
	return nil
}

func (l *line) dial() (visit.Reading, error) {
	deg, rest, err := l.place(1)
	if err != nil {
		return nil, err
	}
	r := visit.Dial{On: or(l.On, "face"), CarriedBy: or(l.CarriedBy, visit.ShaftSide), ClockDeg: deg, ZeroDeg: l.ZeroDeg,
		Sag: l.Sag, RadiusMM: l.radiusMM, Note: l.note}
	if r.On == "rim" {
		err = l.rimless()
	}
	var ok bool
	if r.Reads, ok = l.length(rest[0], true); !ok {
		return nil, l.fault(NoLength)
	}
	return r, err
}

func (l *line) runOut() (visit.Reading, error) {
	if len(l.words) > 2 {
		return nil, l.fault(Unreadable)
	}
	r := visit.RunOut{Half: or(l.Half, visit.ShaftSide), On: or(l.On, "face"), RadiusMM: l.radiusMM, Note: l.note}
	var ok bool
	if r.TIR, ok = l.length(l.words[0], false); !ok {
		return nil, l.fault(NoLength)
	}
	if len(l.words) == 2 {
		deg, ok := Place(l.words[1], l.Seen)
		if !ok {
			return nil, l.fault(NoPlace)
		}
		r.LowDeg = visit.Known(deg)
	}
	if r.On == "rim" {
		return r, l.rimless()
	}
	return r, nil
}

func (l *line) clearance() (visit.Reading, error) {
	deg, rest, err := l.place(1)
	if err != nil {
		return nil, err
	}
	r := visit.Clearance{Where: or(l.Where, "log"), End: or(l.End, "fore"), ClockDeg: deg, Note: l.note}
	l.Leaves = nil // strips are no set: both are named
	if r.Goes, r.Stops, err = l.limits(rest[0]); err != nil {
		return nil, err
	}
	return r, l.rimless()
}

func (l *line) pilot() (visit.Reading, error) {
	enters, ok := pilots[strings.ToLower(l.words[0])]
	if !ok || len(l.words) > 1 {
		return nil, l.fault(Unreadable)
	}
	return visit.Pilot{Enters: enters, Note: l.note}, l.rimless()
}

// pilots are the letters of how a pilot enters, English and German.
var pilots = map[string]string{"f": visit.PilotEnters[0], "w": visit.PilotEnters[1], "g": visit.PilotEnters[1], "n": visit.PilotEnters[2]}
