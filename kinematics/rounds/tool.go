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

// Next is what the tool would have gauged next: with Again a reading anew, its
// place wiped and filed first; with Turn a whole gauging; else one leaf.
type Next struct {
	Again                       bool
	Turn                        bool
	Event                       int // of the reading to be taken again
	ClockDeg                    float64
	Leaf                        visit.Length
	ShaftTurnDeg, FlangeTurnDeg float64 // of the whole gauging
}

// Move is what the tool would have moved.
type Move struct {
	None     bool // no move will do
	InLine   bool // none is needed: readings and moves together say within
	Why      string
	P        float64   // that the gap is within the rule after it
	NutFlats []int     // by mount; shims of solid feet
	SlideMM  []float64 // by mount
}
