package history

// This file turns a past into points: what is plotted, against the date or the
// engine's hours.

import (
	"time"

	"aligner/hulls/visit"
)

// point is one number at a visit; known is false where there is none.
type point struct{ x, y, sd float64 }

// line is points of one kind in the order of the visits.
type line struct {
	name   string
	shape  int // which marker and dashes
	points []point
	marks  bool // markers alone, no line between
}

// at is where a visit stands on the axis: days since 1970, or engine hours.
func (p *Past) at(i int, byHours bool) (float64, bool) {
	e := &p.Entries[i]
	if byHours {
		return e.EngineHours.Value, e.EngineHours.Known
	}
	day, err := time.Parse(time.DateOnly, e.Date)
	return float64(day.Unix()) / secondsPerDay, err == nil
}

const secondsPerDay = 24 * 60 * 60

// HasHours reports whether two visits at least have engine hours to be plotted
// against.
func (p *Past) HasHours() bool {
	n := 0
	for i := range p.Entries {
		if p.Entries[i].EngineHours.Known {
			n++
		}
	}
	return n > 1
}

// gaps are one number of the gaps as found and as left.
func (d *Drawing) gaps(of func(Gap) (y, sd float64, ok bool)) []line {
	found, left := line{name: d.say("found"), shape: 0, marks: true}, line{name: d.say("left"), shape: 1, marks: true}
	for i := range d.Past.Entries {
		x, ok := d.Past.at(i, d.ByHours)
		if !ok {
			continue
		}
		e := &d.Past.Entries[i]
		if y, sd, ok := of(e.Begin); ok {
			found.points = append(found.points, point{x, y, sd})
		}
		if y, sd, ok := of(e.HandOver); ok {
			left.points = append(left.points, point{x, y, sd})
		}
	}
	return []line{found, left}
}

// joined is the way a number went through the visits: found, left, found ...
func joined(l []line) line {
	way := line{shape: -1}
	found, left := l[0].points, l[1].points
	for len(found)+len(left) > 0 {
		switch {
		case len(left) == 0 || len(found) > 0 && found[0].x <= left[0].x:
			way.points, found = append(way.points, found[0]), found[1:]
		default:
			way.points, left = append(way.points, left[0]), left[1:]
		}
	}
	return way
}

// byMount are two numbers of each mount at each visit, before and after.
func (d *Drawing) byMount(before, after func(e *Entry, mount int) visit.Maybe) []line {
	var all []line
	for m := range d.Past.Hull.Mounts {
		l := line{name: d.Past.Hull.Mounts[m].Name, shape: m}
		for i := range d.Past.Entries {
			x, ok := d.Past.at(i, d.ByHours)
			if !ok {
				continue
			}
			for _, of := range []func(*Entry, int) visit.Maybe{before, after} {
				if y := of(&d.Past.Entries[i], m); y.Known {
					l.points = append(l.points, point{x: x, y: y.Value})
				}
			}
		}
		if l.points != nil {
			all = append(all, l)
		}
	}
	return all
}
