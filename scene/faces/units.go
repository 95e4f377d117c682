package faces

// This file writes gaps and clock positions for people.

import (
	"math"
	"strconv"
	"strings"
)

// MMPerThou is exact (NIST SP 811, appendix B: 1 in = 25.4 mm).
const MMPerThou = 0.0254

// leastToldMM is the least gap that is told: a tenth of a thou. Feeler leaves do
// not tell that much; it keeps the parts of a sum adding up.
const leastToldMM = MMPerThou / 10

// Units is how a person wants numbers.
type Units struct {
	Metric       bool // mm; otherwise thou
	DecimalComma bool
}

// Thou writes a gap in thou, to a tenth: "8.5".
func Thou(mm float64) string { return number(mm/MMPerThou, 1) }

// MM writes a gap in mm, to a thousandth: "0.216".
func MM(mm float64) string { return number(mm, 3) }

// number writes v with so many decimals, without a minus sign before nothing.
func number(v float64, decimals int) string {
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}

// gap writes a gap without its unit.
func (u Units) gap(mm float64) string {
	s := Thou(mm)
	if u.Metric {
		s = MM(mm)
	}
	return u.comma(s)
}

// round writes a round gap with as few decimals as it needs: "10", "0.25".
func (u Units) round(mm float64) string {
	v := mm / MMPerThou
	if u.Metric {
		v = mm
	}
	return u.comma(strconv.FormatFloat(math.Round(v*1000)/1000, 'f', -1, 64))
}

func (u Units) comma(s string) string {
	if u.DecimalComma {
		s = strings.Replace(s, ".", ",", 1)
	}
	return s
}

// unit is the name of gap's unit.
func (u Units) unit(w *Words) string {
	if u.Metric {
		return w.MM
	}
	return w.Thou
}

// fullScales are the gaps the outer ring can stand for, in thou and in mm.
var (
	fullScalesThou = []float64{5, 10, 15, 20, 30, 50, 75, 100, 150, 200, 300, 500, 1000}
	fullScalesMM   = []float64{0.1, 0.2, 0.3, 0.4, 0.5, 0.75, 1, 1.5, 2, 3, 5, 10, 25}
)

// fullMM is the least of them that holds a gap; a gap beyond all is its own.
func (u Units) fullMM(largestMM float64) float64 {
	scales, unit := fullScalesThou, MMPerThou
	if u.Metric {
		scales, unit = fullScalesMM, 1
	}
	for _, s := range scales {
		if largestMM <= s*unit*1.0001 {
			return s * unit
		}
	}
	return largestMM
}

// OpensAt writes a clock angle, as seen, to the quarter of an hour: "1:30", and
// full hours without minutes: "12".
func OpensAt(seenRad float64) string {
	quarters := int(math.Round(seenRad / (2 * math.Pi) * 48))
	quarters = (quarters%48 + 48) % 48
	text := HourText(quarters / 4)
	if m := quarters % 4 * 15; m != 0 {
		text += ":" + strconv.Itoa(m)
	}
	return text
}

// HourText is the numeral of an hour; 0 and 12 are both "12".
func HourText(hour int) string {
	hour = (hour%12 + 12) % 12
	if hour == 0 {
		hour = 12
	}
	return strconv.Itoa(hour)
}
