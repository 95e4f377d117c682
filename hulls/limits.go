package hulls

// This file tells the limits that looking a hull over goes by, number by number,
// so that a form can say them before anything is typed. They are noted as the
// judging itself comes past them: there is no second list.

import "math"

// Limit is what a number may be: refused under Least and over Most, doubted under
// Low and over High (infinite where nothing is doubted). Some of it follows from
// other numbers of the hull, as a log's bore from the shaft in it; Ever is what
// the number may be whatever the others are.
type Limit struct {
	Least, Most float64
	Low, High   float64
	Ever        [2]float64
	Unit        string
}

// Limits are those of a hull's numbers by their place in the file
// (mounts[1].at_mm[0]).
func Limits(h Hull) map[string]Limit {
	c := &checker{h: &h, limits: map[string]Limit{}}
	c.validate()
	return c.limits
}

// bound keeps a window that holds whatever the other numbers are.
func (c *checker) bound(place string, w window) {
	c.note(place, w)
	if l, ok := c.limits[place]; ok {
		l.Ever = [2]float64{max(l.Ever[0], w.least), min(l.Ever[1], w.most)}
		c.limits[place] = l
	}
}

// note keeps a window that follows from other numbers: of several for one number
// the narrowest on each side. It is false, to stand as the first case of a switch
// that judges by the same window.
func (c *checker) note(place string, w window) bool {
	if c.limits == nil {
		return false
	}
	lowest, highest := math.Inf(-1), math.Inf(1)
	l, had := c.limits[place]
	if !had {
		l = Limit{lowest, highest, lowest, highest, [2]float64{lowest, highest}, w.unit}
	}
	l.Least, l.Most = max(l.Least, w.least), min(l.Most, w.most)
	l.Low, l.High = max(l.Low, w.low), min(l.High, w.high)
	c.limits[place] = l
	return false
}
