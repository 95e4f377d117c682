package rounds

// This file is the mechanic's hand: leaves tried between two faces, each trial
// with a feel error of its own, and a burr now and then.

import (
	"math"
	"math/rand/v2"

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
func (f *faces) read(r *rand.Rand, clockDeg float64) visit.Leaf {
	leaf := min(max(1, int(f.gapThou(clockDeg))-sureThou), mostStacked*thickestLeaf)
	for leaf <= mostStacked*thickestLeaf && f.try(r, clockDeg, float64(leaf)) {
		leaf++
	}
	reading := visit.Leaf{ClockDeg: clockDeg}
	if leaf > 1 {
		reading.Goes = visit.Thou(float64(leaf - 1))
	}
	if leaf <= mostStacked*thickestLeaf {
		reading.Stops = visit.Thou(float64(leaf))
	}
	return reading
}

// trial is one leaf tried at one place.
func (f *faces) trial(r *rand.Rand, clockDeg float64, leaf visit.Length) visit.Leaf {
	if f.try(r, clockDeg, leaf.Thou()) {
		return visit.Leaf{ClockDeg: clockDeg, Goes: leaf}
	}
	return visit.Leaf{ClockDeg: clockDeg, Stops: leaf}
}
