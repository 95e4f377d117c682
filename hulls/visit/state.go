package visit

// This file holds what a visit begins with: the boat's state, the leaves, the
// rule, the gap aimed at.

import (
	"math"
	"slices"
)

// State is where the boat is and what is in her.
type State struct {
	Boat               string // one of Boats; "" (default): not said, taken as out of the water
	HoursSinceLaunch   Maybe  // default, of this and the following: not known
	FuelPercent        Maybe  // 100: full
	Ballast            string // one of Ballasts
	Rig                string // one of Rigs
	MountAgeMonths     Maybe  // 0: new rubber
	MountHoursStanding Maybe  // how long new rubber has carried the engine
	EngineHours        Maybe  // what the engine's hour meter shows
	Note               string
}

// The words of a state.
var (
	Boats    = []string{"afloat", "trailer", "stands"}
	Ballasts = []string{"in", "out", "none"}
	Rigs     = []string{"set", "slack", "down", "none"}
)

// Afloat reports whether the boat is in the water.
func (s State) Afloat() bool { return s.Boat == "afloat" }

// LeafSet is the mechanic's own leaves and how finely he feels them.
type LeafSet struct {
	Leaves      []float64 // thinnest first; nil (default): DefaultLeavesThou
	Unit        Unit      // InThou or InMM; "" with nil
	MostStacked int       // leaves put together at most; 0 (default): DefaultStacked
	FeelError   Length    // one standard deviation; left out (default): DefaultFeelErrorThou
}

// What stands for a leaf set that says nothing: the leaves of a common inch set,
// two of them together at most, felt to 0.3 thou (common practice, no source).
const (
	DefaultStacked       = 2
	DefaultFeelErrorThou = 0.3
)

// DefaultLeavesThou are the leaves taken where none are told.
var DefaultLeavesThou = []float64{1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25}

// FeelErrorMM is how finely the leaves are felt.
func (s LeafSet) FeelErrorMM() float64 {
	if !s.FeelError.Given() {
		return Thou(DefaultFeelErrorThou).MM()
	}
	return s.FeelError.MM()
}

// thickest is the last leaf; there is one.
func (s LeafSet) thickest() Length { return Length{s.Leaves[len(s.Leaves)-1], s.Unit} }

// SinglesMM are the leaves one by one, thinnest first.
func (s LeafSet) SinglesMM() []float64 {
	leaves, per := s.Leaves, 1.0
	if leaves == nil {
		leaves = DefaultLeavesThou
	}
	if s.Unit != InMM {
		per = mmPerThou
	}
	mm := make([]float64, len(leaves))
	for i, l := range leaves {
		mm[i] = l * per
	}
	slices.Sort(mm)
	return mm
}

// mostStacks bounds the thicknesses made of several leaves.
const mostStacks = 20000

// ThicknessesMM are all thicknesses the set can make, single leaves and stacks,
// thinnest first, each once.
func (s LeafSet) ThicknessesMM() []float64 {
	singles := s.SinglesMM()
	most := s.MostStacked
	if most == 0 {
		most = DefaultStacked
	}
	// Level by level, so that a bound leaves out the thickest stacks only.
	type stack struct {
		mm   float64
		next int // leaves from here on may join
	}
	var all []float64
	level := []stack{{}}
	for range most {
		var thicker []stack
		for _, s := range level {
			for i := s.next; i < len(singles) && len(all) < mostStacks; i++ {
				thicker = append(thicker, stack{s.mm + singles[i], i + 1})
				all = append(all, s.mm+singles[i])
			}
		}
		level = thicker
	}
	slices.Sort(all)
	return slices.CompactFunc(all, sameThickness)
}

// sameThickness allows for rounding only: leaves differ by tenths of a thou.
func sameThickness(a, b float64) bool { return math.Abs(a-b) < 1e-6 }

// Rule is the acceptance rule chosen. Rules in use disagree, so a result always
// names its rule.
type Rule struct {
	Limits string // one of RuleLimits; "": no rule
	Limit  Length // for PerInch: of each inch of face diameter
	Named  string // what the rule is called, with its source
}

// What a rule may limit.
const (
	LargestGap       = "largest gap"               // of all positions, the faces touching
	DifferenceAcross = "difference across"         // between opposite positions
	PerInch          = "per inch of face diameter" // largest gap, the more the larger the faces
)

// RuleLimits are the words Rule.Limits may be.
var RuleLimits = []string{LargestGap, DifferenceAcross, PerInch}

// DefaultRule stands for a visit that chose none; whoever uses it says so.
var DefaultRule = Rule{Limits: LargestGap, Limit: Thou(3), Named: "common practice, 3 thou"}

// Chosen is the rule, or DefaultRule where none was chosen.
func (r Rule) Chosen() (rule Rule, chosen bool) {
	if r.Limits == "" {
		return DefaultRule, false
	}
	return r, true
}

// LimitMM is what the rule allows on faces of a diameter.
func (r Rule) LimitMM(faceDiameterMM float64) float64 {
	if r.Limits == PerInch {
		return r.Limit.MM() * faceDiameterMM / 25.4
	}
	return r.Limit.MM()
}

// Target is a gap wanted on purpose, such as in a hull that hogs when loaded.
type Target struct {
	Spread     Length  // left out: no gap anywhere
	OpensAtDeg float64 // where it is to be widest
	Reason     string
}

// CosSinMM are the amplitudes A and B of the gap wanted, A cos t + B sin t.
func (t Target) CosSinMM() (a, b float64) {
	sin, cos := math.Sincos(t.OpensAtDeg * math.Pi / 180)
	return t.Spread.MM() / 2 * cos, t.Spread.MM() / 2 * sin
}
