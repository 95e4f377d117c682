package fields

// This file reads what is typed into a field: mm, or inches with fractions; a
// decimal comma as good as a point.

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

const mmPerInch = 25.4 // exact, by definition

// A number, or a whole number and a fraction, perhaps with a unit.
var (
	decimal  = regexp.MustCompile(`^([-+]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*([^\d/.,].*)?$`)
	fraction = regexp.MustCompile(`^([-+]?)\s*(?:(\d+)(?:\s+|-))?(\d+)\s*/\s*(\d+)\s*(\D.*)?$`)
)

// units are what may be written behind a number, as factors to the hull file's
// unit.
var units = map[Kind]map[string]float64{
	Length:    {"mm": 1, "cm": 10, "m": 1000, "in": mmPerInch, `"`: mmPerInch, "ft": 12 * mmPerInch, "'": 12 * mmPerInch},
	Clearance: {"mm": 1, "in": mmPerInch, `"`: mmPerInch, "thou": mmPerInch / 1000},
	Mass:      {"kg": 1, "lb": 0.45359237, "lbs": 0.45359237},
	Stiffness: {"n/mm": 1, "kn/m": 1, "lb/in": 4.4482216152605 / mmPerInch},
	Angle:     {"deg": 1, "°": 1, "degrees": 1, "grad": 1},
	Speed:     {"rpm": 1, "1/min": 1},
	Density:   {"kg/m3": 1, "kg/m³": 1},
	Number:    {},
}

// Inches says whether lengths without a unit are inches.
type Inches bool

// Parse reads a value typed into a field of a kind. ok is false for what is none.
func Parse(text string, kind Kind, in Inches) (v Value, ok bool) {
	text = strings.TrimSpace(text)
	if !kind.IsNumber() {
		return Value{Text: text}, true
	}
	n, unit, ok := number(text)
	if !ok {
		return Value{}, false
	}
	factor, ok := factorOf(strings.ToLower(strings.TrimSpace(unit)), kind, in)
	// A ten-thousandth of a mm: 22 3/4 in is 577.85, not 577.8499999999999.
	return Value{Number: math.Round(n*factor*1e4)/1e4 + 0}, ok && !math.IsInf(n, 0)
}

// number reads the number and leaves the unit.
func number(text string) (n float64, unit string, ok bool) {
	sign := ""
	if m := fraction.FindStringSubmatch(text); m != nil {
		whole, _ := strconv.ParseFloat("0"+m[2], 64)
		over, err1 := strconv.ParseFloat(m[3], 64)
		under, err2 := strconv.ParseFloat(m[4], 64)
		sign, n, unit, ok = m[1], whole+over/under, m[5], err1 == nil && err2 == nil && under > 0
	} else if m := decimal.FindStringSubmatch(text); m != nil {
		v, err := strconv.ParseFloat(strings.Replace(m[2], ",", ".", 1), 64)
		sign, n, unit, ok = m[1], v, m[3], err == nil
	}
	if sign == "-" {
		n = -n
	}
	return n, unit, ok
}

// plusOrMinus are the ways to write it.
var plusOrMinus = []string{"±", "+-", "+/-"}

// ParseKnown reads a value as Parse does, and behind "±" how well it is known, in the
// same unit: "820 ± 2". plus is nil where that is not told.
func ParseKnown(text string, kind Kind, in Inches) (v Value, plus *float64, ok bool) {
	if kind.IsNumber() {
		for _, sign := range plusOrMinus {
			number, known, told := strings.Cut(text, sign)
			if !told {
				continue
			}
			p, fine := Parse(known, kind, in)
			v, ok = Parse(number, kind, in)
			return v, &p.Number, ok && fine && p.Number >= 0
		}
	}
	v, ok = Parse(text, kind, in)
	return v, nil, ok
}

func factorOf(unit string, kind Kind, in Inches) (float64, bool) {
	switch {
	case unit != "":
		f, ok := units[kind][unit]
		return f, ok
	case bool(in) && kind == Length:
		return mmPerInch, true
	case bool(in) && kind == Clearance:
		return mmPerInch / 1000, true
	}
	return 1, true
}
