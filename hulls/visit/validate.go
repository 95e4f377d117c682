package visit

// This file judges a visit as a whole: what is impossible is refused, what is
// improbable is doubted, each by name with its limit and a mend. Limits are
// common practice, no source, set wide enough for any job a mechanic meets.

import (
	"fmt"
	"slices"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"aligner/hulls"
	"aligner/hulls/strictjson"
)

// Validate looks a visit over. Places in the report are paths in the visit
// file, without file and line. With a hull, names of mounts and bearings are
// held against it; nil leaves that out.
func Validate(v Visit, h *hulls.Hull) hulls.Report {
	c := &checker{v: &v, h: h, thicknesses: v.Leaves.ThicknessesMM()}
	c.hull()
	c.dates()
	c.state()
	c.leaves()
	c.rule()
	c.target()
	c.mounts()
	c.lookOver()
	if !v.Reach.AllRound() {
		c.arcs("reach_deg", []Arc{v.Reach})
	}
	for i, e := range v.Events {
		c.event(e, at("events", i))
	}
	c.seal()
	c.closing()
	c.branches()
	c.trouble()
	c.note("note", v.Note)
	return c.report
}

// checker collects what is found.
type checker struct {
	v           *Visit
	h           *hulls.Hull
	thicknesses []float64 // what the leaves can make, in mm
	wide        bool      // the gauging judged has its faces farther apart than leaves reach
	report      hulls.Report
}

func (c *checker) refuse(place, value, limit, mend string) {
	c.report.Refusals = append(c.report.Refusals, hulls.Fault{Place: place, Value: value, Limit: limit, Mend: mend})
}

func (c *checker) doubt(place, value, limit, mend string) {
	c.report.Doubts = append(c.report.Doubts, hulls.Fault{Place: place, Value: value, Limit: limit, Mend: mend})
}

// window says which values of a number are possible and which are usual.
type window struct {
	least, most float64 // refused outside
	low, high   float64 // doubted outside
	unit        string
}

// within holds a number against its window. NaN is outside every window.
func (c *checker) within(place string, v float64, w window) {
	show := func(v float64) string { return strings.TrimSuffix(strictjson.Plain(v)+" "+w.unit, " ") }
	switch {
	case !(v >= w.least && v <= w.most):
		c.refuse(place, show(v), fmt.Sprintf("%s to %s", strictjson.Plain(w.least), show(w.most)), "correct the number or its unit")
	case v < w.low || v > w.high:
		c.doubt(place, show(v), fmt.Sprintf("%s to %s as a rule", strictjson.Plain(w.low), show(w.high)), "measure again; keep it if it is so")
	}
}

// maybe holds a number that is known against its window.
func (c *checker) maybe(place string, m Maybe, w window) {
	if m.Known {
		c.within(place, m.Value, w)
	}
}

// length holds a length against a window in thou.
func (c *checker) length(place string, l Length, w window) {
	if !l.Given() {
		return
	}
	if l.Unit != InThou && l.Unit != InMM {
		c.refuse(place, strictjson.Quoted(string(l.Unit)), "thou or mm", "say the unit")
		return
	}
	w.unit = "thou"
	c.within(place+"_"+string(l.Unit), l.Thou(), w)
}

// clock holds a clock position to one turn.
func (c *checker) clock(place string, deg float64) {
	if !(deg >= 0 && deg < 360) {
		c.refuse(place, strictjson.Plain(deg), "0 to under 360 degrees", "give the position clockwise from 12, looking forward")
	}
}

// mostText bounds a note, which may be long but has one line.
const mostText = 2000

// note holds a text that may be empty.
func (c *checker) note(place, s string) {
	switch {
	case strings.IndexFunc(s, func(r rune) bool { return !unicode.IsPrint(r) || r == utf8.RuneError }) >= 0:
		c.refuse(place, strictjson.Quoted(s), "letters, digits and signs that can be printed", "write it on one line, without control characters")
	case utf8.RuneCountInString(s) > mostText:
		c.refuse(place, fmt.Sprintf("%d characters", utf8.RuneCountInString(s)), fmt.Sprintf("at most %d", mostText), "shorten it")
	}
}

// text holds a text that must say something.
func (c *checker) text(place, s string) {
	if strings.TrimSpace(s) == "" {
		c.refuse(place, strictjson.Quoted(s), "a text", "say it in a few words")
		return
	}
	c.note(place, s)
}

// oneOf holds a word against a list.
func (c *checker) oneOf(place, s string, list ...string) {
	if !slices.Contains(list, s) {
		c.refuse(place, strictjson.Quoted(s), `one of "`+strings.Join(list, `", "`)+`"`, "choose one of these")
	}
}

func (c *checker) hull() {
	if c.v.Embedded == nil {
		c.text("hull", c.v.HullName)
	}
}

// dates are calendar dates (ISO 8601) that do not go back.
func (c *checker) dates() {
	last := c.v.Date
	if last == "" {
		c.doubt("date", `""`, "the date of the visit", "add it")
	} else if !isDate(last) {
		c.noDate("date", last)
		return
	}
	for i, e := range c.v.Events {
		place := at("events", i) + ".date"
		switch {
		case e.Date == "":
		case !isDate(e.Date):
			c.noDate(place, e.Date)
		case e.Date < last:
			c.refuse(place, e.Date, "no date before "+last, "put the events in the order they happened, or correct the date")
		default:
			last = e.Date
		}
	}
}

func (c *checker) noDate(place, s string) {
	c.refuse(place, strictjson.Quoted(s), "a date such as 2026-05-14", "write year, month and day")
}

// isDate reports a day of the calendar, written so that dates sort as texts.
func isDate(s string) bool {
	_, err := time.Parse(time.DateOnly, s)
	return err == nil && s >= "1900"
}
