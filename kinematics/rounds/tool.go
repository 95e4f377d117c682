package rounds

// This file says what the mechanic wants of the tool: no more than it tells
// any user.

import (
	"aligner/hulls/visit"
)

// Tool judges readings and plans moves for one nominal hull, from its visit
// alone. It must be safe for concurrent use and give the same answer to the same
// visit.
type Tool interface {
	Estimate(v *visit.Visit) (Estimate, error)
	Plan(v *visit.Visit, e Estimate) (Move, error)
}

// Estimate is what the tool makes of the readings.
type Estimate struct {
	Verdict  string  // Within, Outside or CannotTell
	P        float64 // that the gap is within the rule
	Odd      []Ref   // readings to be wiped, filed and taken again
	ForMoves bool    // false: not to be planned on
	Why      string  // of that
	Next     *Next   // nil: nothing more to gauge
	// Whole is what the tool's own Plan goes by.
	Whole any
}

// The verdicts.
const (
	Within     = "within"
	Outside    = "outside"
	CannotTell = "cannot tell yet"
)

// Ref is a reading of the visit.
type Ref struct{ Event, Reading int }

// Next is what the tool would have gauged next: a reading again, or else a whole
// further gauging, or else one leaf.
type Next struct {
	Again                       *Ref
	Turn                        bool // a whole gauging, shaft and flange turned so far
	ClockDeg                    float64
	Leaf                        visit.Length
	ShaftTurnDeg, FlangeTurnDeg float64
}

// Move is what the tool would have moved.
type Move struct {
	None     bool // no move will do, or none is needed
	Why      string
	NutFlats []int     // by mount; shims of solid feet
	SlideMM  []float64 // by mount
}
