package practice

// This file says what a learner can do. Acts are the inputs of a piece of work, and
// all that is kept of it.

import "aligner/kinematics"

// Act is one thing done: one of its fields is there.
type Act struct {
	Gauge    *Gauge    `json:"gauge,omitempty"`
	Read     *Place    `json:"read,omitempty"`  // leaves tried upward until one stops
	Leaf     *Leaf     `json:"leaf,omitempty"`  // one leaf tried
	Clean    *Place    `json:"clean,omitempty"` // wiped and filed; what was read there is struck out
	Turn     *Turn     `json:"turn,omitempty"`
	Fasten   *Fasten   `json:"fasten,omitempty"` // every mount
	HandOver *HandOver `json:"hand_over,omitempty"`
}

// HeldWays are how a learner can hold the shaft.
var HeldWays = []kinematics.Held{kinematics.Seated, kinematics.Hanging, kinematics.Bolted}

// Gauge holds the shaft anew and begins a gauging.
type Gauge struct {
	Held          kinematics.Held `json:"held"` // one of HeldWays
	ShaftTurnDeg  float64         `json:"shaft_turn_deg"`
	FlangeTurnDeg float64         `json:"flange_turn_deg"`
}

// Place is a position on the clock, looking forward.
type Place struct {
	ClockDeg float64 `json:"clock_deg"`
}

// Leaf is one thickness tried at one position.
type Leaf struct {
	ClockDeg float64 `json:"clock_deg"`
	LeafMM   float64 `json:"leaf_mm"`
}

// Turn turns nuts and shifts slides, by mount; + raises and + is to port.
type Turn struct {
	NutFlats map[string]int     `json:"nut_flats,omitempty"` // shims of solid feet
	SlideMM  map[string]float64 `json:"slide_mm,omitempty"`
}

// Fasten tightens every mount.
type Fasten struct{}

// HandOver ends the work: the learner holds the engine in line, and says what else
// was wrong.
type HandOver struct {
	Cause Cause `json:"cause"`
}
