package called

// This file reads the parts of a line: places, arcs, lengths, limits.

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"aligner/hulls/visit"
)

// sides are the boat's in German; visit.ParseClock knows the English ones.
var sides = map[string]float64{"oben": 0, "steuerbord": 90, "stb": 90, "unten": 180, "backbord": 270, "bb": 270}

// Place reads a clock position as it is seen.
func Place(text string, seen visit.Direction) (deg float64, ok bool) {
	text = strings.TrimSpace(text)
	if deg, ok := sides[strings.ToLower(text)]; ok {
		return deg, true
	}
	deg, err := visit.ParseClock(text, seen)
	return deg, err == nil
}

// ParseArc reads "10-2", clockwise as seen; an arc that ends where it begins is
// all round.
func ParseArc(text string, seen visit.Direction) (visit.Arc, bool) {
	a, b, ok := strings.Cut(text, "-")
	from, okFrom := Place(a, seen)
	to, okTo := Place(b, seen)
	if !ok || !okFrom || !okTo {
		return visit.Arc{}, false
	}
	if from == to {
		return visit.Arc{FromDeg: 0, ToDeg: 360}, true
	}
	if seen == visit.LookingAft { // clockwise as seen is the other way round as stored
		from, to = to, from
	}
	return visit.Arc{FromDeg: from, ToDeg: to}, true
}

// round is a leaf and two lists of arcs.
func (l *line) round() (visit.Reading, error) {
	r := visit.LeafRound{RadiusMM: l.radiusMM, Note: l.note}
	var ok bool
	if r.Leaf, ok = l.length(l.words[0], false); !ok {
		return nil, l.fault(NoLength)
	}
	enters, stops, parted := strings.Cut(strings.Join(l.words[1:], " "), "/")
	if !parted {
		return nil, l.fault(NoArc)
	}
	for _, list := range []struct {
		text string
		arcs *[]visit.Arc
	}{{enters, &r.Enters}, {stops, &r.Stops}} {
		for _, word := range strings.Fields(list.text) {
			a, ok := ParseArc(word, l.Seen)
			if !ok {
				return nil, l.fault(NoArc)
			}
			*list.arcs = append(*list.arcs, a)
		}
	}
	if len(r.Enters)+len(r.Stops) == 0 {
		return nil, l.fault(NoArc)
	}
	return r, nil
}

// limits reads "goes/stops", or what goes alone.
func (l *line) limits(text string) (goes, stops visit.Length, err error) {
	first, second, pair := strings.Cut(text, "/")
	var ok bool
	// "6.5/7mm": a unit at the end is both numbers'.
	if unit := unitOf(second); unit != "" && unitOf(first) == "" && !none(first) {
		first += string(unit)
	}
	if !none(first) {
		if goes, ok = l.length(first, false); !ok {
			return goes, stops, l.fault(NoLength)
		}
		if goes.Value == 0 { // 0.0 and the like
			goes = visit.Length{}
		}
	}
	switch {
	case pair && !none(second):
		if stops, ok = l.length(second, false); !ok || stops.Value == 0 {
			return goes, stops, l.fault(NoLength)
		}
	case !pair && l.Leaves == nil:
		return goes, stops, l.fault(NoPair)
	case !pair:
		stops = l.nextLeaf(goes)
	}
	switch {
	case !goes.Given() && !stops.Given():
		return goes, stops, l.fault(NoLength)
	case goes.Given() && stops.Given() && goes.MM() >= stops.MM():
		return goes, stops, l.fault(WrongWay)
	}
	return goes, stops, nil
}

// none reports whether nothing went, or nothing was tried.
func none(text string) bool { return text == "" || text == "-" || text == "0" }

// nextLeaf is the next thicker leaf of the set, which is taken to have stopped;
// none where nothing thicker is there.
func (l *line) nextLeaf(goes visit.Length) visit.Length {
	value := 0.0
	if goes.Given() {
		value = in(goes, l.unit())
	}
	// A leaf named in another unit is the same leaf to a hundredth of a thou.
	i := slices.IndexFunc(l.Leaves, func(leaf float64) bool { return leaf > value+1e-5 })
	if i < 0 {
		return visit.Length{}
	}
	return visit.Length{Value: l.Leaves[i], Unit: l.unit()}
}

func in(l visit.Length, unit visit.Unit) float64 {
	if unit == visit.InMM {
		return l.MM()
	}
	return l.Thou()
}

func (l *line) unit() visit.Unit {
	if l.Unit == "" {
		return visit.InThou
	}
	return l.Unit
}

// unitOf is the unit a text ends in, or "".
func unitOf(text string) visit.Unit {
	for _, u := range []visit.Unit{visit.InMM, visit.InThou} {
		if strings.HasSuffix(text, string(u)) {
			return u
		}
	}
	return ""
}

// rounded takes off what adding and changing units leave behind the sixth
// decimal.
func rounded(v float64) float64 { return math.Round(v*1e6) / 1e6 }

// length reads one length; several joined by + are put together.
func (l *line) length(text string, signed bool) (visit.Length, bool) {
	unit := unitOf(text)
	text = strings.TrimSuffix(text, string(unit))
	if unit == "" {
		unit = l.unit()
	}
	sign := 1.0
	if signed && strings.HasPrefix(text, "-") {
		sign, text = -1, text[1:]
	} else if signed {
		text = strings.TrimPrefix(text, "+")
	}
	sum := 0.0
	for _, part := range strings.Split(text, "+") {
		v, err := strconv.ParseFloat(part, 64)
		if err != nil || !(v >= 0) || math.IsInf(v, 0) || strings.ContainsAny(part, "+-xXpP_") {
			return visit.Length{}, false
		}
		sum += v
	}
	return visit.Length{Value: sign * rounded(sum), Unit: unit}, true
}
