package visit

// This file tells what is allowed while trying, yet cannot be done in the boat.

import (
	"fmt"

	"aligner/hulls/strictjson"
)

// Outside lists the mounts whose adjuster or slide is tried beyond its range.
func (d *Document) Outside() []string {
	var names []string
	for i, m := range d.Hull.Mounts {
		if beyond(d.LiftMM(i), m.NutRangeMM) || beyond(d.Trial.SlideMM[i], m.SlideRangeMM) {
			names = append(names, m.Name)
		}
	}
	return names
}

// Warnings tells, a line each, what is tried beyond a mount's range, and what
// is tried with a nut or slide that the visit calls stuck or forbidden.
func Warnings(d Document) []string {
	var lines []string
	say := func(format string, args ...any) { lines = append(lines, fmt.Sprintf(format, args...)) }
	for i, m := range d.Hull.Mounts {
		found := d.Visit.Found(m.Name)
		lift, slide := d.LiftMM(i), d.Trial.SlideMM[i]
		if beyond(lift, m.NutRangeMM) {
			say("%s: raised %s mm; its nut allows %s to %s mm", m.Name, strictjson.Plain(lift), strictjson.Plain(m.NutRangeMM[0]), strictjson.Plain(m.NutRangeMM[1]))
		}
		if beyond(slide, m.SlideRangeMM) {
			say("%s: slid %s mm to port; its slide allows %s to %s mm", m.Name, strictjson.Plain(slide), strictjson.Plain(m.SlideRangeMM[0]), strictjson.Plain(m.SlideRangeMM[1]))
		}
		if lift != 0 && found.Nut != Free && found.Nut != "" {
			say("%s: its nut is turned here, but is %s in this visit", m.Name, found.Nut)
		}
		if slide != 0 && found.Slide != Free && found.Slide != "" {
			say("%s: it is slid here, but its slide is %s in this visit", m.Name, found.Slide)
		}
	}
	return lines
}

// beyond allows for rounding.
func beyond(v float64, r [2]float64) bool { return v < r[0]-1e-9 || v > r[1]+1e-9 }
