package history

// This file compares a visit with the one before: what moved, and what most
// likely moved it.

import (
	"slices"

	"aligner/hulls/visit"
)

// Change is what happened between two visits.
type Change struct {
	From, To int // entries
	Days     visit.Maybe
	Hours    visit.Maybe // the engine ran, where the meter went on
	// Gap is found less left: how much more it is open, and where. It is known
	// where both visits tell; WhyNot says what is missing.
	Gap    Gap
	Moved  bool // the gap changed by more than its error
	WhyNot Missing
	// StudMM is what more of a stud shows above its nut than was left.
	StudMM []visit.Maybe
	Marks  []string // as found
	// Likely are the causes, the likeliest first; their chances add up to 1.
	// None where the gap is not known.
	Likely  []Likely
	Caveats []Caveat
	Advice  []Advice
}

// Missing says why there is nothing to compare; "": there is.
type Missing string

// What may be missing.
const (
	NotLeft  Missing = "not left"  // the visit before was not gauged after its last move
	NotFound Missing = "not found" // this visit does not tell how she was found
)

// Likely is one cause with its chance.
type Likely struct {
	Cause  Cause
	Mounts []int // of the hull; nil: none in particular
	Side   int   // of ToOneSide: +1 port, -1 starboard
	Chance float64
	Grade  Grade
	// MM is by how much, if this was it, with one standard deviation.
	MM, SDMM float64
}

// Caveat is what makes a comparison weaker.
type Caveat string

// The caveats.
const (
	BoatStoodElse Caveat = "boat stood otherwise" // afloat one time, ashore the other
	MeasuredAnew  Caveat = "measured anew"        // the hull's numbers were changed in between
	NotFlat       Caveat = "not flat"             // the readings of one of the two are no flat faces
	LookFailed    Caveat = "look-over failed"     // this visit's: shaft and bearings may be the cause
)

// Advice is what to measure so that the next visit can tell.
type Advice string

// The advice.
const (
	MeasureStuds  Advice = "measure studs"
	MarkNuts      Advice = "mark nuts"
	MeasureRubber Advice = "measure rubber"
	GaugeAtEnd    Advice = "gauge at the end"
	GaugeAtBegin  Advice = "gauge at the beginning"
	WriteHours    Advice = "write hours"
)

// otherStandMM is how much more a gap may differ, in A and B, where the boat
// stood on land one time and floated the other: hulls change their shape, mostly
// up and down (our own judgement).
var otherStandMM = [2]float64{0.05, 0.02}

// compare fills in what happened before entry i.
func (p *Past) compare(i int, list []Visit, models *modelShelf) error {
	was, is := &p.Entries[i-1], &p.Entries[i]
	c := &Change{From: i - 1, To: i, Days: p.days(i-1, i), Marks: is.Marks, StudMM: make([]visit.Maybe, len(p.Hull.Mounts))}
	is.Since = c
	if was.EngineHours.Known && is.EngineHours.Known && is.EngineHours.Value >= was.EngineHours.Value {
		c.Hours = visit.Known(is.EngineHours.Value - was.EngineHours.Value)
	}
	for k := range c.StudMM {
		if was.StudLeftMM[k].Known && is.StudFoundMM[k].Known {
			c.StudMM[k] = visit.Known(is.StudFoundMM[k].Value - was.StudLeftMM[k].Value)
		}
	}
	switch {
	case !was.HandOver.Known:
		c.WhyNot = NotLeft
	case !is.Begin.Known:
		c.WhyNot = NotFound
	}
	before, now := &list[i-1].Document, &list[i].Document
	more := c.caveats(was, is, before, now)
	if c.WhyNot != "" {
		c.advise()
		return nil
	}
	c.Gap = less(is.Begin, was.HandOver)
	c.Moved = c.Gap.OpensKnown
	r, err := models.response(&p.Hull, is.Afloat)
	if err != nil {
		return err
	}
	s := shown{gap: c.Gap, studs: c.StudMM, marks: c.Marks}
	if !was.NutsMarked { // a mark of an older visit, or of somebody else
		s.marks = nil
	}
	for _, w := range weigh(candidates(&p.Hull, r.sagMM, before.Visit.State), s, r.response, more) {
		c.Likely = append(c.Likely, Likely{w.cause, w.mounts, w.side, w.chance, gradeOf(w.chance), w.meanMM, w.sdMM})
	}
	c.advise()
	return nil
}

// caveats lists them and gives the more error they bring.
func (c *Change) caveats(was, is *Entry, before, now *visit.Document) (moreSDMM [2]float64) {
	if was.Afloat != is.Afloat {
		c.Caveats = append(c.Caveats, BoatStoodElse)
		moreSDMM = otherStandMM
	}
	if !sameHull(before, now) {
		c.Caveats = append(c.Caveats, MeasuredAnew)
	}
	if was.HandOver.Known && !was.Flat || is.Begin.Known && !is.Flat {
		c.Caveats = append(c.Caveats, NotFlat)
	}
	for _, f := range now.Visit.LookOver {
		if f.Finding == "failed" {
			c.Caveats = append(c.Caveats, LookFailed)
			break
		}
	}
	return moreSDMM
}

// advise says what would have told more.
func (c *Change) advise() {
	studs := !slices.ContainsFunc(c.StudMM, func(m visit.Maybe) bool { return !m.Known })
	marks := !slices.Contains(c.Marks, "")
	switch c.WhyNot {
	case NotLeft:
		c.Advice = append(c.Advice, GaugeAtEnd)
	case NotFound:
		c.Advice = append(c.Advice, GaugeAtBegin)
	}
	if !studs {
		c.Advice = append(c.Advice, MeasureStuds)
	} else if !marks {
		c.Advice = append(c.Advice, MarkNuts)
	}
	if told := c.Told(); c.Moved && studs && (told.Cause == "" || c.Open(told)) {
		c.Advice = append(c.Advice, MeasureRubber)
	}
	if !c.Hours.Known {
		c.Advice = append(c.Advice, WriteHours)
	}
}
