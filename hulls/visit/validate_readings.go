package visit

// This file judges readings, each kind by itself. Whether readings agree with
// one another is not asked here: that is what estimates are for.

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"aligner/hulls/strictjson"
)

// gaps are the thicknesses a reading may name, in thou: 0 to 50 mm.
var gaps = window{0, 2000, 0, 500, ""}

// WideMM is a gap no leaf reaches across: it is read with a block and leaves
// together, or with inside calipers (own judgement: twice the thickest leaf of a
// common set).
const WideMM = 3.0

// wideGaps are the same where the faces are held so far apart.
var wideGaps = window{0, 4000, 0, 1500, ""}

// limits holds what goes below what stops, and both against the leaves.
func (c *checker) limits(place string, goes, stops Length) {
	if !goes.Given() && !stops.Given() {
		c.refuse(place, "neither goes nor stops", "one of them at least", "add what was measured")
	}
	may := gaps
	if c.wide {
		may = wideGaps
	}
	c.length(place+".goes", goes, may)
	c.length(place+".stops", stops, may)
	if goes.Given() && stops.Given() && !(goes.MM() < stops.MM()) {
		c.refuse(place, fmt.Sprintf("goes %s, stops %s", goes.show(), stops.show()), "a thinner leaf that goes than the one that stops", "see whether the two are the wrong way round")
	}
}

// show writes a length as it was typed.
func (l Length) show() string { return strictjson.Plain(l.Value) + " " + string(l.Unit) }

// ownLeaf doubts a leaf the set cannot make. A set in one unit may be read in
// the other, rounded, so half a tenth of a thou is let pass.
func (c *checker) ownLeaf(place, key string, l Length) {
	if !l.Given() || c.wide {
		return
	}
	mm := l.MM()
	i, _ := slices.BinarySearch(c.thicknesses, mm)
	for _, near := range c.thicknesses[max(i-1, 0):min(i+1, len(c.thicknesses))] {
		if math.Abs(near-mm) <= 0.05*mmPerThou {
			return
		}
	}
	c.doubt(place+"."+key+"_"+string(l.Unit), l.show(), "a leaf of the set, or leaves put together", "check the reading, or add the leaf to the set")
}

// radius holds where on the face a reading was taken.
func (c *checker) radius(place string, mm float64) {
	if mm == 0 {
		return
	}
	c.within(place, mm, window{1, 1000, 10, 500, "mm"})
	if c.h != nil && mm > c.h.Coupling.OuterDiameterMM/2+1e-9 {
		c.doubt(place, strictjson.Plain(mm)+" mm", "at most "+strictjson.Plain(c.h.Coupling.OuterDiameterMM/2)+" mm, the faces' edge", "give the radius, not the diameter")
	}
}

func (r Leaf) check(c *checker, place string) {
	c.clock(place+".clock_deg", r.ClockDeg)
	c.limits(place, r.Goes, r.Stops)
	c.ownLeaf(place, "goes", r.Goes)
	c.ownLeaf(place, "stops", r.Stops)
	c.radius(place+".radius_mm", r.RadiusMM)
	c.note(place+".note", r.Note)
}

func (r LeafRound) check(c *checker, place string) {
	if !r.Leaf.Given() {
		c.refuse(place, "no leaf", "leaf_thou or leaf_mm", "add the leaf carried round")
	}
	c.length(place+".leaf", r.Leaf, window{0.1, 500, 0.5, 100, ""})
	c.ownLeaf(place, "leaf", r.Leaf)
	if len(r.Enters)+len(r.Stops) == 0 {
		c.refuse(place, "no arc", "enters_deg or stops_deg", "say where the leaf enters, or where it does not")
	}
	c.arcs(place+".enters_deg", r.Enters)
	c.arcs(place+".stops_deg", r.Stops)
	for i, e := range r.Enters {
		for j, s := range r.Stops {
			if e.meets(s) {
				c.refuse(at(place+".enters_deg", i), e.show(), fmt.Sprintf("no part of stops_deg[%d], %s", j, s.show()), "a leaf cannot both enter and not enter at one place")
			}
		}
	}
	c.radius(place+".radius_mm", r.RadiusMM)
	c.note(place+".note", r.Note)
}

func (c *checker) arcs(place string, arcs []Arc) {
	for i, a := range arcs {
		full := a == Arc{0, 360}
		inside := a.FromDeg >= 0 && a.FromDeg < 360 && a.ToDeg >= 0 && a.ToDeg < 360
		if !full && (!inside || a.FromDeg == a.ToDeg) {
			c.refuse(at(place, i), a.show(), "two positions of 0 to under 360 degrees, clockwise", "write 330 to 30 as [330, 30] and all round as [0, 360]")
		}
	}
}

func (a Arc) show() string {
	return strictjson.Plain(a.FromDeg) + " to " + strictjson.Plain(a.ToDeg) + " degrees"
}

// meets reports whether two arcs share more than an end.
func (a Arc) meets(b Arc) bool {
	middle := func(a Arc) float64 { return a.FromDeg + a.SpanDeg()/2 }
	return a.Holds(b.FromDeg) || b.Holds(a.FromDeg) || a.Holds(middle(b)) || b.Holds(middle(a))
}

func (r RimStep) check(c *checker, place string) {
	c.clock(place+".clock_deg", r.ClockDeg)
	c.oneOf(place+".high", r.High, "", EngineSide, ShaftSide)
	c.limits(place, r.Goes, r.Stops)
	c.ownLeaf(place, "goes", r.Goes)
	c.ownLeaf(place, "stops", r.Stops)
	if r.Goes.Given() && r.Goes.Value > 0 && r.High == "" {
		c.refuse(place+".high", "nothing", "the half the straightedge lies on", `add "high": "engine side" or "shaft side"`)
	}
	c.note(place+".note", r.Note)
}

// marks are what a dial may show, in thou.
var marks = window{-1000, 1000, -200, 200, ""}

func (r Dial) check(c *checker, place string) {
	c.oneOf(place+".on", r.On, "face", "rim")
	c.oneOf(place+".carried_by", r.CarriedBy, "", EngineSide, ShaftSide)
	c.clock(place+".clock_deg", r.ClockDeg)
	c.clock(place+".zero_deg", r.ZeroDeg)
	if !r.Reads.Given() {
		c.refuse(place, "no reading", "reads_thou or reads_mm", "add what the dial shows, + with its tip pushed in")
	}
	c.length(place+".reads", r.Reads, marks)
	c.length(place+".sag", r.Sag, window{-100, 100, -20, 20, ""})
	if r.ClockDeg == r.ZeroDeg && r.Reads.MM() != 0 {
		c.doubt(place+".reads_"+string(r.Reads.Unit), r.Reads.show(), "0 where the dial was set to nought", "see whether the bracket moved")
	}
	c.radiusOn(place, r.On, r.RadiusMM)
	c.note(place+".note", r.Note)
}

// radiusOn refuses a radius on a rim.
func (c *checker) radiusOn(place, on string, mm float64) {
	if on == "rim" && mm != 0 {
		c.refuse(place+".radius_mm", strictjson.Plain(mm)+" mm", "no radius on a rim", "delete it")
		return
	}
	c.radius(place+".radius_mm", mm)
}

func (r RunOut) check(c *checker, place string) {
	c.oneOf(place+".half", r.Half, EngineSide, ShaftSide)
	c.oneOf(place+".on", r.On, "face", "rim")
	if !r.TIR.Given() {
		c.refuse(place, "no reading", "tir_thou or tir_mm", "add highest less lowest")
	}
	c.length(place+".tir", r.TIR, window{0, 500, 0, 60, ""})
	if r.LowDeg.Known {
		c.clock(place+".low_deg", r.LowDeg.Value)
	}
	c.radiusOn(place, r.On, r.RadiusMM)
	c.note(place+".note", r.Note)
}

func (r Clearance) check(c *checker, place string) {
	c.text(place+".where", r.Where)
	if c.h != nil && r.Where != "log" {
		known := []string{"log"}
		for _, b := range c.h.Bearings {
			known = append(known, b.Name)
		}
		if !slices.Contains(known, r.Where) {
			c.refuse(place+".where", strictjson.Quoted(r.Where), "the log or a bearing of "+c.h.Name+": "+strings.Join(known, ", "), "write one of these")
		}
	}
	c.oneOf(place+".end", r.End, "fore", "aft")
	c.clock(place+".clock_deg", r.ClockDeg)
	c.limits(place, r.Goes, r.Stops)
	c.note(place+".note", r.Note)
}

func (r Pilot) check(c *checker, place string) {
	c.oneOf(place+".enters", r.Enters, PilotEnters...)
	if c.h != nil && !c.h.Coupling.HasPilot() {
		c.refuse(place+".enters", strictjson.Quoted(r.Enters), c.h.Name+" has no pilot", "delete the reading")
	}
	c.note(place+".note", r.Note)
}
