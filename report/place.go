package report

// This file says places and gaps as the reader of a sheet sees them.

import (
	"math"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// clock writes a stored clock position as it is seen.
func (d *drawer) clock(deg float64) string { return say.Clock(deg, d.o.Seen == visit.LookingAft) }

// place says a stored clock position as it is seen, with its side of the boat.
func (d *drawer) place(deg float64) string {
	side := words.Bottom
	sin, cos := math.Sincos(deg * math.Pi / 180)
	switch {
	case math.Abs(sin) < 0.26 && cos > 0:
		side = words.Top
	case math.Abs(sin) < 0.26:
	case sin > 0:
		side = words.Starboard
	default:
		side = words.Port
	}
	return d.say(words.ClockPlace, words.Args{"Clock": d.clock(deg), "Side": d.say(side, nil)})
}

// seenRad is the angle on the page, clockwise from the top, of a stored clock
// position.
func (d *drawer) seenRad(deg float64) float64 {
	if d.o.Seen == visit.LookingAft {
		deg = -deg
	}
	return deg * math.Pi / 180
}

// seen says which way the clock is looked at.
func (d *drawer) seen() string {
	if d.o.Seen == visit.LookingAft {
		return d.say(words.SeenAft, nil)
	}
	return d.say(words.SeenForward, nil)
}

// leaf writes a gap as fine as a leaf, without its unit.
func (d *drawer) leaf(mm float64) string {
	if d.u.Metric {
		return d.u.Plain(d.u.Leaf(mm), 2)
	}
	return d.u.Plain(d.u.Leaf(mm)/say.MMPerThou, 1)
}

// leafUnit is the unit the leaves are marked in, whatever gaps are told in: a
// metric set has no leaf of 1.97 thou.
func (d *drawer) leafUnit() string {
	if d.v.Leaves.Unit == visit.InMM {
		return "mm"
	}
	return d.u.GapUnit()
}

// thickness writes a leaf or stack as it is marked, without its unit.
func (d *drawer) thickness(mm float64) string {
	if d.leafUnit() == "mm" {
		return d.u.Plain(mm, 3)
	}
	return d.u.Plain(mm/say.MMPerThou, 2)
}

// gapAt is the gap of two planes that touch, at a clock position.
func gapAt(ab [2]float64, deg float64) float64 {
	sin, cos := math.Sincos(deg * math.Pi / 180)
	return math.Hypot(ab[0], ab[1]) + ab[0]*cos + ab[1]*sin
}

// opensDeg is the clock angle where [A, B] is widest.
func opensDeg(ab [2]float64) float64 {
	return math.Mod(math.Atan2(ab[1], ab[0])*180/math.Pi+360, 360)
}

// present is the gap now as it would be gauged, shaft and flange at their marks:
// the engine's part and what the halves' own faces add.
func (d *drawer) present() [2]float64 {
	ab := d.e.Gap.MeanMM
	for _, r := range d.e.RunOut {
		ab[0] += r.MeanMM[0]
		ab[1] += r.MeanMM[1]
	}
	return ab
}

// told reports whether there is a gap to tell of.
func (d *drawer) told() bool { return d.e.Status == "ready" && d.e.Flat && d.e.GapCount > 0 }

// mostPositions is how many columns a table takes before its numbers get small, and
// fewPositions how many one of half a page's width.
const mostPositions, fewPositions = 12, 8

// fewer leaves of more positions than most those nearest to as many about the clock.
func fewer(list []float64, most int) []float64 {
	if len(list) <= most {
		return list
	}
	step := 360 / float64(most)
	off := func(deg, hour float64) float64 { return math.Abs(math.Mod(deg-hour+540, 360) - 180) }
	keep := map[float64]bool{}
	for hour := 0.0; hour < 360; hour += step {
		best := list[0]
		for _, deg := range list {
			if off(deg, hour) < off(best, hour) {
				best = deg
			}
		}
		if off(best, hour) < step/2 {
			keep[best] = true
		}
	}
	var some []float64
	for _, deg := range list {
		if keep[deg] {
			some = append(some, deg)
		}
	}
	return some
}

// positions are the clock positions to gauge at, as the visit did, in the order
// they are seen.
func (d *drawer) positions() []float64 {
	most := mostPositions
	if d.few {
		most = fewPositions
	}
	list := fewer(d.e.ClockDeg, most)
	if len(list) == 0 {
		list = []float64{0, 45, 90, 135, 180, 225, 270, 315}
	}
	if d.o.Seen == visit.LookingAft {
		turned := make([]float64, len(list))
		for i, deg := range list {
			turned[(len(list)-i)%len(list)] = deg
		}
		if list[0] != 0 { // nothing stands at 12 to begin with
			turned = append(turned[1:], turned[0])
		}
		return turned
	}
	return list
}

// boat says where the boat is.
func (d *drawer) boat() string {
	switch {
	case d.v.State.Afloat():
		return d.say(words.Afloat, nil)
	case d.v.State.Boat == "":
		return d.say(words.PaperBoatUnsaid, nil)
	}
	return d.say(words.Of("paper_boat", d.v.State.Boat), nil)
}

func (d *drawer) held() string { return d.say(words.Of("paper_held", string(d.e.Aim)), nil) }
