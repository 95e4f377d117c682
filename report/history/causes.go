package history

// This file lists what may have moved between two visits: which seats, by how
// much, and how likely each is before anything was measured. The chances and
// amounts are our own judgement (no source).

import (
	"slices"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// Cause is a kind of thing that moves an engine between two visits.
type Cause string

// The causes.
const (
	Steady        Cause = "steady"         // nothing moved
	Settled       Cause = "settled"        // all rubber sank, by its share of the weight
	MountDown     Cause = "mount down"     // one mount sank, or those of one side: tired rubber, or its bed
	NutBacked     Cause = "nut backed"     // the nut of one mount ran down its stud, or those of one side
	NutRaised     Cause = "nut raised"     // one nut was turned up, and nobody wrote it down
	ToOneSide     Cause = "to one side"    // the engine went sideways on its slides
	SomethingElse Cause = "something else" // shaft, bearings, the hull's shape, a slip
)

// Causes are all of them.
var Causes = []Cause{Steady, Settled, MountDown, NutBacked, NutRaised, ToOneSide, SomethingElse}

// How likely each cause is beforehand, in parts of one another; of those that
// may be at one mount, shared among the mounts.
const (
	steadyPart    = 0.36
	settledPart   = 0.20
	newRubberMore = 2.0 // times as likely while the rubber is new
	mountPart     = 0.12
	nutPart       = 0.12
	wholeSide     = 0.25 // of mountPart and nutPart: a whole side's
	raisedPart    = 0.02
	sidewaysPart  = 0.06
	elsePart      = 0.12
)

// How far each moves, in mm: the standard deviation of half a bell.
const (
	newSettleMM   = 1.5
	oldSettleMM   = 0.5
	mountMM       = 1.5
	nutMM         = 2.0
	sidewaysMM    = 1.0
	elseGapMM     = 0.15 // of A and B
	newRubberAgeM = 6    // months
	unevenPart    = 0.3  // seats that move together do so within this part
)

// candidate is one cause at certain mounts.
type candidate struct {
	cause  Cause
	mounts []int
	prior  float64
	amount float64   // sd of s in mm; 0: nothing moves
	lift   []float64 // of each seat by s = 1, + up
	slide  []float64 // + to port
	stud   []float64 // what more of the stud shows above the nut by s = 1
	side   int       // of ToOneSide: +1 port, -1 starboard
}

// candidates lists all causes there can be on a hull. sag is how far each mount's
// weight presses it down, at rest; state is what the visit before said.
func candidates(h *hulls.Hull, sag []float64, state visit.State) []candidate {
	n := len(h.Mounts)
	none := func() []float64 { return make([]float64, n) }
	l := []candidate{
		{cause: Steady, prior: steadyPart, lift: none(), slide: none(), stud: none()},
		{cause: SomethingElse, prior: elsePart, lift: none(), slide: none(), stud: none()},
	}
	if c, ok := settled(h, sag, state); ok {
		l = append(l, c)
	}
	l = append(l, atMounts(h)...)
	for _, side := range []int{1, -1} {
		c := candidate{cause: ToOneSide, prior: sidewaysPart / 2, amount: sidewaysMM, lift: none(), slide: none(), stud: none(), side: side}
		for i := range c.slide {
			c.slide[i] = float64(side)
			c.mounts = append(c.mounts, i)
		}
		l = append(l, c)
	}
	total := 0.0
	for _, c := range l {
		total += c.prior
	}
	for i := range l {
		l[i].prior /= total
	}
	return l
}

// settled is all rubber sinking in proportion to what it carries: rubber creeps
// by a part of how far its load presses it.
func settled(h *hulls.Hull, sag []float64, state visit.State) (candidate, bool) {
	n := len(h.Mounts)
	c := candidate{cause: Settled, prior: settledPart, amount: oldSettleMM, lift: make([]float64, n), slide: make([]float64, n), stud: make([]float64, n)}
	sum := 0.0
	for i, m := range h.Mounts {
		if m.Kind == hulls.Rubber {
			c.mounts = append(c.mounts, i)
			sum += max(0, sag[i])
		}
	}
	if sum == 0 {
		return c, false
	}
	for _, i := range c.mounts {
		c.lift[i] = -max(0, sag[i]) / sum * float64(len(c.mounts))
	}
	if age := state.MountAgeMonths; age.Known && age.Value < newRubberAgeM {
		c.prior, c.amount = settledPart*newRubberMore, newSettleMM
	}
	return c, true
}

// atMounts are the causes that sit at one mount, or at all of one side.
func atMounts(h *hulls.Hull) (l []candidate) {
	var rubber []int
	sides := map[bool][]int{}
	for i, m := range h.Mounts {
		if m.Kind == hulls.Rubber {
			rubber = append(rubber, i)
			if m.AtMM[1] != 0 {
				sides[m.AtMM[1] > 0] = append(sides[m.AtMM[1] > 0], i)
			}
		}
	}
	if len(rubber) == 0 {
		return nil
	}
	add := func(cause Cause, prior, amount, lift, stud float64, mounts ...int) {
		c := candidate{cause: cause, mounts: slices.Clone(mounts), prior: prior, amount: amount,
			lift: make([]float64, len(h.Mounts)), slide: make([]float64, len(h.Mounts)), stud: make([]float64, len(h.Mounts))}
		for _, i := range mounts {
			c.lift[i], c.stud[i] = lift, stud
		}
		l = append(l, c)
	}
	each := (1 - wholeSide) / float64(len(rubber))
	for _, i := range rubber {
		add(MountDown, mountPart*each, mountMM, -1, 0, i)
		add(NutBacked, nutPart*each, nutMM, -1, 1, i)
		add(NutRaised, raisedPart/float64(len(rubber)), nutMM, 1, -1, i)
	}
	for _, port := range []bool{true, false} {
		if len(sides[port]) > 1 {
			add(MountDown, mountPart*wholeSide/2, mountMM, -1, 0, sides[port]...)
			add(NutBacked, nutPart*wholeSide/2, nutMM, -1, 1, sides[port]...)
		}
	}
	return l
}
