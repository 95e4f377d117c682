package say

// This file is the one formatter of numbers for people.

import (
	"math"
	"strconv"
	"strings"
)

// Units is how a person wants numbers.
type Units struct {
	Metric       bool // mm and N m; otherwise thou and lb-ft
	DecimalComma bool
}

// Exact conversions (NIST SP 811, appendix B).
const (
	MMPerThou = 0.0254
	NPerLbf   = 4.4482216152605
	NmPerLbFt = 1.3558179483314004
)

// number writes v with so many decimals, a minus sign only before what is not
// nil, and the decimal sign wanted.
func (u Units) number(v float64, decimals int) string {
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	if u.DecimalComma {
		s = strings.Replace(s, ".", ",", 1)
	}
	return s
}

// Fixed writes a number with all of so many decimals.
func (u Units) Fixed(v float64, decimals int) string { return u.number(v, decimals) }

// between parts the numbers of a list: a comma, unless that is the decimal sign.
func (u Units) between() string {
	if u.DecimalComma {
		return "; "
	}
	return ", "
}

// Gap writes a gap without its unit: tenths of a thou, or thousandths of a mm.
func (u Units) Gap(mm float64) string {
	if u.Metric {
		return u.number(mm, 3)
	}
	return u.number(mm/MMPerThou, 1)
}

// GapUnit is the unit of Gap.
func (u Units) GapUnit() string {
	if u.Metric {
		return "mm"
	}
	return "thou"
}

// RoundGap is a gap as Gap would write it, so that parts can be made to add up.
func (u Units) RoundGap(mm float64) float64 {
	step := MMPerThou / 10
	if u.Metric {
		step = 0.001
	}
	return math.Round(mm/step) * step
}

// GapWithUnit writes a gap and its unit.
func (u Units) GapWithUnit(mm float64) string { return u.Gap(mm) + " " + u.GapUnit() }

// MM writes a length in mm, hundredths.
func (u Units) MM(mm float64) string { return u.number(mm, 2) + " mm" }

// Force writes a force: N, or pounds.
func (u Units) Force(n float64) string {
	if u.Metric {
		return u.number(n, 0) + " N"
	}
	return u.number(n/NPerLbf, 0) + " lb"
}

// ForceUnit is the unit forces are written in, with the newtons of one.
func (u Units) ForceUnit() (name string, newtons float64) {
	if u.Metric {
		return "N", 1
	}
	return "lb", NPerLbf
}

// TorqueUnit is the same of moments, with the newton metres of one.
func (u Units) TorqueUnit() (name string, newtonMetres float64) {
	if u.Metric {
		return "N m", 1
	}
	return "lb-ft", NmPerLbFt
}

// Moment writes a moment given in N mm.
func (u Units) Moment(nmm float64) string {
	if u.Metric {
		return u.number(nmm/1000, 1) + " N m"
	}
	return u.number(nmm/1000/NmPerLbFt, 1) + " lb-ft"
}

// Plain writes a number with up to so many decimals, none that are nought.
func (u Units) Plain(v float64, decimals int) string {
	s := u.number(v, decimals)
	point := "."
	if u.DecimalComma {
		point = ","
	}
	if strings.Contains(s, point) {
		s = strings.TrimRight(strings.TrimRight(s, "0"), point)
	}
	return s
}

// Leaf is a gap rounded to what a leaf can tell: half a thou, or a hundredth of
// a mm.
func (u Units) Leaf(mm float64) float64 {
	step := MMPerThou / 2
	if u.Metric {
		step = 0.01
	}
	return math.Round(mm/step) * step
}

// LeafWithUnit writes a gap so rounded, with its unit.
func (u Units) LeafWithUnit(mm float64) string {
	if u.Metric {
		return u.number(u.Leaf(mm), 2) + " mm"
	}
	return u.Plain(u.Leaf(mm)/MMPerThou, 1) + " thou"
}

// Thickness writes a leaf, a stack of them or a shim as it is marked: one of whole
// hundredths of a mm in mm, whoever reads, as nothing of 1.97 thou is to be found.
func (u Units) Thickness(mm float64) string {
	if u.Metric || markedInMM(mm) {
		return u.Plain(mm, 3) + " mm"
	}
	return u.Plain(mm/MMPerThou, 2) + " thou"
}

// markedInMM tells a metric thickness from one of an inch set, of half thous.
func markedInMM(mm float64) bool {
	whole := func(v float64) bool { return math.Abs(v-math.Round(v)) < 1e-6 }
	return whole(mm*100) && !whole(2*mm/MMPerThou)
}
