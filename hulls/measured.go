package hulls

// This file holds what a boat has answered: nuts turned and engine slid by a known
// amount, the gap gauged before and after. It fits the boat better than any
// figure of its rubber.

import (
	"fmt"
	"maps"
	"slices"

	"aligner/hulls/strictjson"
)

// Measured is one such answer.
type Measured struct {
	When     string             // a date, or what else tells it from others; "" (default): not told
	NutFlats map[string]float64 // by mount; flats, or shims of a solid foot; + raises
	SlideMM  map[string]float64 // by mount, lever off; + to port
	Held     string             // how the shaft was held both times, one of MeasuredWays
	Afloat   bool               // default: not
	Before   FaceGap
	After    FaceGap
	ErrorMM  float64 // standard deviation of each cosine and sine
}

// FaceGap is the part of a gap that moves change: gap(t) = g0 + cos cos t + sin sin t.
type FaceGap struct{ CosMM, SinMM float64 }

// MeasuredWays are the words Measured.Held may be.
var MeasuredWays = []string{"seated", "centred"}

// MostMeasured bounds what is kept of one boat.
const MostMeasured = 200

func (d *decoder) measured(n *strictjson.Node, path string) (m Measured) {
	o := d.Object(n, path, "when?", "nut_flats?", "slide_mm?", "held", "afloat?", "before", "after", "error_mm")
	m.When = o.Text("when")
	m.NutFlats, m.SlideMM = d.byMount(o, "nut_flats"), d.byMount(o, "slide_mm")
	m.Held = o.OneOf("held", "", MeasuredWays...)
	m.Afloat = o.Bool("afloat")
	m.Before, m.After = d.faceGap(o, "before"), d.faceGap(o, "after")
	m.ErrorMM = o.Number("error_mm")
	return m
}

func (d *decoder) faceGap(o strictjson.Object, key string) FaceGap {
	g := d.Object(o.Get(key), strictjson.Join(o.Path, key), "cos_mm", "sin_mm")
	return FaceGap{CosMM: g.Number("cos_mm"), SinMM: g.Number("sin_mm")}
}

// byMount reads numbers by mount; an empty table is none.
func (d *decoder) byMount(o strictjson.Object, key string) map[string]float64 {
	n := o.Of(key, strictjson.IsObject)
	if n == nil || len(n.Keys) == 0 {
		return nil
	}
	m := make(map[string]float64, len(n.Keys))
	for i, name := range n.Keys {
		if item := n.Items[i]; item.Kind == strictjson.IsNumber {
			m[name] = item.Number
		} else {
			d.WrongKind(item, strictjson.Join(strictjson.Join(o.Path, key), name), strictjson.IsNumber)
		}
	}
	return m
}

func (e *encoder) measured(i int, m Measured) {
	e.Item(i, '{')
	e.OptionalText("when", m.When)
	e.byMount("nut_flats", m.NutFlats)
	e.byMount("slide_mm", m.SlideMM)
	e.Text("held", m.Held)
	e.OptionalBool("afloat", m.Afloat)
	e.faceGap("before", m.Before)
	e.faceGap("after", m.After)
	e.Number("error_mm", m.ErrorMM)
	e.Close('}')
}

func (e *encoder) faceGap(key string, g FaceGap) {
	e.Open(key, '{')
	e.Number("cos_mm", g.CosMM)
	e.Number("sin_mm", g.SinMM)
	e.Close('}')
}

func (e *encoder) byMount(key string, m map[string]float64) {
	if len(m) == 0 {
		return
	}
	e.Open(key, '{')
	for _, name := range slices.Sorted(maps.Keys(m)) {
		e.Number(name, m[name])
	}
	e.Close('}')
}

func (c *checker) measured() {
	if n := len(c.h.MeasuredResponse); n > MostMeasured {
		c.refuse("measured_response", fmt.Sprintf("a list of %d", n), fmt.Sprintf("at most %d", MostMeasured), "keep the newest")
		return
	}
	for i, m := range c.h.MeasuredResponse {
		place := fmt.Sprintf("measured_response[%d]", i)
		if m.When != "" {
			c.name(place+".when", m.When)
		}
		c.moved(place+".nut_flats", m.NutFlats, window{-72, 72, -36, 36, "flats"})
		c.moved(place+".slide_mm", m.SlideMM, window{-30, 30, -10, 10, "mm"})
		if len(m.NutFlats)+len(m.SlideMM) == 0 {
			c.refuse(place, "nothing moved", "nut_flats or slide_mm", "say what was moved between the two gaugings")
		}
		switch {
		case !slices.Contains(MeasuredWays, m.Held):
			c.refuse(place+".held", strictjson.Quoted(m.Held), `"seated" or "centred"`, "choose one of these")
		case m.Held == "seated" && !c.h.Coupling.HasPilot():
			c.refuse(place+".held", `"seated"`, c.h.Name+" has no pilot to seat the shaft on", "centre it instead")
		}
		gap := window{-20, 20, -5, 5, "mm"}
		c.within(place+".before.cos_mm", m.Before.CosMM, gap)
		c.within(place+".before.sin_mm", m.Before.SinMM, gap)
		c.within(place+".after.cos_mm", m.After.CosMM, gap)
		c.within(place+".after.sin_mm", m.After.SinMM, gap)
		c.within(place+".error_mm", m.ErrorMM, window{0.0005, 5, 0.002, 0.2, "mm"})
	}
}

// moved holds what was moved against the mounts there are.
func (c *checker) moved(place string, by map[string]float64, w window) {
	for _, name := range slices.Sorted(maps.Keys(by)) {
		at := strictjson.Join(place, name)
		if !slices.ContainsFunc(c.h.Mounts, func(m Mount) bool { return m.Name == name }) {
			c.refuse(at, strictjson.Quoted(name), "a mount of this hull", "name the mount as the hull does")
		}
		c.within(at, by[name], w)
	}
}
