package rounds

// This file is the mechanic's hand: leaves tried between two faces, each trial
// with a feel error of its own, and a burr now and then.

import (
	"math"
	"math/rand/v2"
	"sort"

	"aligner/hulls/visit"
)

const (
	feelThou                    = 0.3 // standard deviation of one trial
	thickestLeaf                = 40  // single leaf, in thou; the set goes up by 1
	mostStacked                 = 2
	burrChance                  = 1.0 / 20
	leastBurrThou, mostBurrThou = 2, 5
)

// leafSet is what the mechanic carries.
func leafSet() visit.LeafSet {
	leaves := make([]float64, thickestLeaf)
	for i := range leaves {
		leaves[i] = float64(i + 1)
	}
	return visit.LeafSet{Leaves: leaves, Unit: visit.InThou, MostStacked: mostStacked, FeelError: visit.Thou(feelThou)}
}

// faces are the two faces as they stand in one gauging.
type faces struct {
	g0, cos, sin float64 // thou, run-out counted
	burrAtDeg    float64
	burrThou     float64 // 0: none, or filed off
}

// gapThou is what a leaf finds at a clock position. A burr makes it read less,
// never less than nothing.
func (f *faces) gapThou(clockDeg float64) float64 {
	sin, cos := math.Sincos(clockDeg * math.Pi / 180)
	gap := f.g0 + f.cos*cos + f.sin*sin
	if f.burrThou > 0 && sameClock(clockDeg, f.burrAtDeg) {
		gap = max(0, gap-f.burrThou)
	}
	return gap
}

// sameClock reports whether two positions are one.
func sameClock(a, b float64) bool {
	return math.Abs(math.Remainder(a-b, 360)) < 1
}

// drawBurr puts a burr on one set of readings in twenty.
func (f *faces) drawBurr(r *rand.Rand, clockDeg []float64) {
	has, at, thou := r.Float64() < burrChance, r.IntN(len(clockDeg)), within(r, leastBurrThou, mostBurrThou)
	if has {
		f.burrAtDeg, f.burrThou = clockDeg[at], thou
	}
}

// clean wipes and files a place.
func (f *faces) clean(clockDeg float64) {
	if sameClock(clockDeg, f.burrAtDeg) {
		f.burrThou = 0
	}
}

// try reports whether a leaf goes in, as the hand feels it.
func (f *faces) try(r *rand.Rand, clockDeg, leafThou float64) bool {
	return f.gapThou(clockDeg)+feelThou*r.NormFloat64() > leafThou
}

// sureThou is so far from the gap that no hand errs.
const sureThou = 3

// read finds between which two leaves the gap lies, thinner ones first. Leaves
// that are sure to go need no trial.
func (f *faces) read(r *rand.Rand, thou []float64, clockDeg float64) visit.Leaf {
	sure := sort.Search(len(thou), func(i int) bool { return thou[i] > f.gapThou(clockDeg)-sureThou })
	at := max(0, sure-1)
	for at < len(thou) && f.try(r, clockDeg, thou[at]) {
		at++
	}
	reading := visit.Leaf{ClockDeg: clockDeg}
	if at > 0 {
		reading.Goes = visit.Thou(thou[at-1])
	}
	if at < len(thou) {
		reading.Stops = visit.Thou(thou[at])
	}
	return reading
}

// wholeThou are the thicknesses that leafSet makes.
func wholeThou() []float64 {
	all := make([]float64, mostStacked*thickestLeaf)
	for i := range all {
		all[i] = float64(i + 1)
	}
	return all
}

// trial is one leaf tried at one place.
func (f *faces) trial(r *rand.Rand, clockDeg float64, leaf visit.Length) visit.Leaf {
	if f.try(r, clockDeg, leaf.Thou()) {
		return visit.Leaf{ClockDeg: clockDeg, Goes: leaf}
	}
	return visit.Leaf{ClockDeg: clockDeg, Stops: leaf}
}
