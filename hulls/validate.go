package hulls

// This file judges a hull as a whole: what is impossible is refused, what is
// improbable is doubted, each by name with its limit and a mend. The limits
// themselves stand beside the parts they belong to, in validate_*.go.
//
// Where a limit has a source it is named there; the others are common
// practice, no source, set wide enough for any boat a mechanic would meet.

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"aligner/hulls/strictjson"
)

// Validate looks a hull over. Places in the report are paths in the hull file
// (mounts[1].thread_pitch_mm), without file and line.
func Validate(h Hull) Report {
	c := &checker{h: &h}
	c.validate()
	return c.report
}

func (c *checker) validate() {
	c.identity()
	c.engine()
	c.mounts()
	c.coupling()
	c.shaft()
	c.bearings()
	c.log()
	c.stuffingBox()
	c.propeller()
	c.tolerance()
	c.look()
	c.measured()
	if len(c.report.Refusals) == 0 {
		// Odd proportions are worth telling only of a possible hull.
		c.footprint()
		c.layout()
		c.spans()
	}
}

// checker collects what is found.
type checker struct {
	h      *Hull
	report Report
	limits map[string]Limit // nil: not wanted
}

func (c *checker) refuse(place, value, limit, mend string) {
	c.report.Refusals = append(c.report.Refusals, Fault{Place: place, Value: value, Limit: limit, Mend: mend})
}

func (c *checker) doubt(place, value, limit, mend string) {
	c.report.Doubts = append(c.report.Doubts, Fault{Place: place, Value: value, Limit: limit, Mend: mend})
}

// window says which values of a number are possible and which are usual.
type window struct {
	least, most float64 // refused outside
	low, high   float64 // doubted outside
	unit        string
}

// within holds a number against its window. NaN is outside every window.
func (c *checker) within(place string, v float64, w window) bool {
	c.bound(place, w)
	switch {
	case !(v >= w.least && v <= w.most):
		c.refuse(place, with(v, w.unit), fmt.Sprintf("%s to %s", strictjson.Plain(w.least), with(w.most, w.unit)), "correct the number or its unit")
		return false
	case v < w.low || v > w.high:
		c.doubt(place, with(v, w.unit), fmt.Sprintf("%s to %s as a rule", strictjson.Plain(w.low), with(w.high, w.unit)), "measure again; keep it if it is so")
	}
	return true
}

// with writes a number and its unit.
func with(v float64, unit string) string {
	if unit == "" {
		return strictjson.Plain(v)
	}
	return strictjson.Plain(v) + " " + unit
}

func (c *checker) offsets(place string, v [2]float64) {
	for i := range v {
		c.within(fmt.Sprintf("%s[%d]", place, i), v[i], window{-50, 50, -6, 6, "mm"})
	}
}

// name holds a name against what can be written on one line and on paper.
func (c *checker) name(place, s string) bool {
	switch {
	case strings.TrimSpace(s) == "":
		c.refuse(place, strictjson.Quoted(s), "a name", "give it a name")
	case !printableText(s):
		c.refuse(place, strictjson.Quoted(s), "letters, digits and signs that can be printed", "take the control characters out")
	case s != strings.TrimSpace(s):
		c.refuse(place, strictjson.Quoted(s), "no space before or after the name", "write "+strictjson.Quoted(strings.TrimSpace(s)))
	case utf8.RuneCountInString(s) > 60:
		c.refuse(place, fmt.Sprintf("%d characters", utf8.RuneCountInString(s)), "at most 60", "shorten the name")
	default:
		return true
	}
	return false
}

// printableText reports whether a text holds nothing that could break a line,
// turn it round, or stand for letters that were lost (U+FFFD, which the JSON
// decoder puts in place of half a surrogate pair).
func printableText(s string) bool {
	return strings.IndexFunc(s, func(r rune) bool { return !unicode.IsPrint(r) || r == utf8.RuneError }) < 0
}

// distinct refuses a name already taken, capitals or not: at the command line
// and on paper the two could not be told apart.
func (c *checker) distinct(place, name string, taken map[string]string) {
	key := strings.ToLower(name)
	if first, ok := taken[key]; ok {
		c.refuse(place, strictjson.Quoted(name), "a name of its own, not that of "+first, "rename one of the two")
		return
	}
	taken[key] = strings.TrimSuffix(place, ".name")
}

func (c *checker) identity() {
	h := c.h
	c.name("name", h.Name)
	if !printableText(h.HIN) {
		c.refuse("hin", strictjson.Quoted(h.HIN), "letters and digits", "read the plate again")
	} else if h.HIN != "" {
		c.plate(h.HIN)
	}
	if h.OwnerReference != "" {
		c.name("owner_reference", h.OwnerReference)
	}
	switch h.Layout {
	case InLine, DownAngle, VDrive:
	default:
		c.refuse("layout", strictjson.Quoted(string(h.Layout)), `one of "in-line", "down-angle", "v-drive"`, "choose one of these")
	}
	c.within("shaft_angle_deg", h.ShaftAngleDeg, window{-10, 35, 0, 20, "degrees"})
	speed := window{10, 20000, 200, 5000, "turns a minute"}
	if c.bound("shaft_speed_max_rpm", speed); h.ShaftSpeedMaxRPM != 0 {
		c.within("shaft_speed_max_rpm", h.ShaftSpeedMaxRPM, speed)
	}
}

// plate doubts a number that is not of today's form: the boat is there all the
// same.
func (c *checker) plate(hin string) {
	_, doubt, err := ParseHIN(hin)
	if f, ok := err.(*Fault); ok {
		doubt = f
	}
	if doubt != nil {
		c.doubt(doubt.Place, doubt.Value, doubt.Limit, doubt.Mend)
	}
}

func (c *checker) tolerance() {
	for _, pointer := range slices.Sorted(maps.Keys(c.h.Tolerance)) {
		if v := c.h.Tolerance[pointer]; !(v >= 0 && v <= math.MaxFloat64) {
			c.refuse(strictjson.Join("tolerance", pointer), strictjson.Plain(v), "0 or more", "give the plus-or-minus without its sign")
		}
	}
	if len(c.h.Tolerance) == 0 {
		return
	}
	// Pointers lead into the file this hull is written as.
	root, f := strictjson.Parse(Encode(*c.h), "", hullFormat)
	if f != nil {
		c.refuse("tolerance", f.Value, f.Limit, f.Mend)
		return
	}
	d := newDecoder("", "")
	d.tolerancePointers(root, c.h.Tolerance)
	for _, f := range d.Faults {
		c.refuse(f.Place, f.Value, f.Limit, f.Mend)
	}
}

func (c *checker) look() {
	for _, l := range []struct {
		key, value string
		known      []string
	}{
		{"look.engine", c.h.Look.Engine, lookEngines},
		{"look.hull_section", c.h.Look.HullSection, lookSections},
		{"look.hose", c.h.Look.Hose, lookHoses},
	} {
		if l.value != "" && !slices.Contains(l.known, l.value) {
			c.refuse(l.key, strictjson.Quoted(l.value), `one of "`+strings.Join(l.known, `", "`)+`"`, "choose one of these")
		}
	}
}
