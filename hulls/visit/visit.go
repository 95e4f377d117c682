package visit

// This file holds the visit itself: plain data, field for key as in the visit
// file. Lists and maps in it are never changed in place: an edit copies.

import "aligner/hulls"

// FormatVisit is the value of a visit file's "format" key.
const FormatVisit = "visit/1"

// Visit is one job on one boat, from look-over to hand-over.
type Visit struct {
	// The hull: HullName is a built-in name or a path beside the visit; Embedded
	// is the hull itself. One of the two is there.
	HullName string
	Embedded *hulls.Hull

	Date   string  // "2026-05-14"; "": not set yet
	State  State   // zero (default): nothing said
	Leaves LeafSet // zero (default): the usual leaves
	Rule   Rule    // zero (default): none chosen, 3 thou of largest gap is taken
	Target Target  // zero (default): no gap anywhere
	Mounts []MountFound
	// CautionsMinded: what can hurt someone was read at the start.
	CautionsMinded bool
	LookOver       []Finding
	// Reach is the part of the rim a leaf can be got at, clockwise looking
	// forward; zero (default): all round.
	Reach  Arc
	Events []Event // in the order they happened

	Seal       Seal       // of the shaft; zero (default): nothing said
	Bolts      Bolts      // of the coupling; zero (default): nothing said
	HandedOver HandedOver // zero (default): not begun
	UnderPower UnderPower // zero (default): nothing said
	Linked     Linked     // zero (default): a job of its own
	Trouble    Trouble    // zero (default): none told
	Note       string
}

// Event is one thing done: exactly one of Gauging, Move and Fasten is there.
type Event struct {
	Date    string // "" (default): that of the event before, or of the visit
	Gauging *Gauging
	Move    *Move
	Fasten  *Fasten
}

// Gauging is the readings of one way of holding and turning the shaft.
type Gauging struct {
	Held   string // one of GaugedWays
	HeldBy string // block, scale, hand ...; "" (default): not said
	// Seating numbers the seating; gaugings with the same number were made
	// without moving the shaft's end between. 0 (default): one of its own.
	Seating int
	// How far shaft and gearbox flange were turned from their marks, clockwise
	// looking forward; default 0.
	ShaftTurnDeg, FlangeTurnDeg float64
	Apart                       Length  // left out (default): the faces touch
	Between                     Between // the halves; zero (default): nothing
	PushN                       float64 // 0 (default): pushed until they first touch, no more
	LeverOn                     bool    // default: let go
	BoltsIn                     bool    // default: out
	Readings                    []Reading
	Note                        string
}

// GaugedWays are the words Gauging.Held may be. "snug" (bolts in, not tight)
// and "bolted" are not for moves.
var GaugedWays = []string{"hanging", "centred", "seated", "snug", "bolted"}

// Move is what was turned and slid since the gauging before.
type Move struct {
	NutFlats map[string]float64 // by mount; flats, or shims of a solid foot; + raises
	SlideMM  map[string]float64 // by mount; + to port
	LeverOn  bool               // left with the lever on; default: let go
	Note     string
}

// Fasten is something tightened. What it moved shows between the gauging before
// it and the one after.
type Fasten struct {
	What   string   // a mount's jam nut, the coupling's bolts ...
	Kind   string   // one of FastenKinds; "" (default): as What says
	Mounts []string // whose; nil (default): as What says
	Round  int      // of the coupling's bolts, from 1; 0 (default): not in rounds
	Torque Torque   // left out (default): not measured
	Note   string
}

// MountFound is how one mount was found and left.
type MountFound struct {
	Mount       string
	Nut, Slide  Freedom // default: free
	StudFoundMM Maybe   // height of the stud above its nut when the visit began; default: not measured
	StudLeftMM  Maybe   // and when it ended
	Mark        string  // one of Marks; "" (default): none, or not looked at
	Note        string
}

// Marks are the words MountFound.Mark may be: whether the mark across nut and
// stud, made at a visit before, is still one line.
var Marks = []string{MarkInLine, MarkTurned}

// A mark in line says the nut has not turned since.
const (
	MarkInLine = "in line"
	MarkTurned = "turned"
)

// Freedom says whether a nut or a slide can and may be moved.
type Freedom string

// A stuck one cannot be moved, a forbidden one shall not.
const (
	Free      Freedom = "free"
	Stuck     Freedom = "stuck"
	Forbidden Freedom = "forbidden"
)

// Finding is one check of the look-over.
type Finding struct {
	Check   string // what was looked at, once in a visit
	Finding string // one of Findings
	// TightAtDeg is the turn of the shaft, clockwise looking forward from its
	// mark, at which it goes heavily; default: nowhere, or not marked.
	TightAtDeg Maybe
	Note       string
}

// Findings are the words Finding.Finding may be.
var Findings = []string{"good", "failed", "skipped"}

// Found is what was found of a mount; one nobody spoke of is free.
func (v *Visit) Found(mount string) MountFound {
	for _, m := range v.Mounts {
		if m.Mount == mount {
			return m
		}
	}
	return MountFound{Mount: mount, Nut: Free, Slide: Free}
}

// SeatingOf numbers the seatings of the visit so that every gauging has one:
// two gaugings belong together if their numbers are the same. Event i must be a
// gauging.
func (v *Visit) SeatingOf(i int) int {
	if n := v.Events[i].Gauging.Seating; n > 0 {
		return n
	}
	return -1 - i // no seating is numbered below 1
}
