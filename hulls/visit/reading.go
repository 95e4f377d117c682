package visit

// This file holds the kinds of readings. A reading is an interval or a count of
// marks on an instrument, never a gap: what the gap is, is estimated elsewhere.

import "math"

// Reading is one of Leaf, LeafRound, RimStep, Dial, RunOut, Clearance and Pilot.
type Reading interface {
	// Kind is its name in files.
	Kind() string

	write(e *encoder)
	check(c *checker, place string)
}

// The halves of the coupling.
const (
	EngineSide = "engine side"
	ShaftSide  = "shaft side"
)

// Leaf is a leaf tried at a clock position: goes is the thickest that enters,
// stops the thinnest that does not. Without goes not even the thinnest entered;
// without stops nothing thicker was tried. One of the two is there.
type Leaf struct {
	ClockDeg    float64
	Goes, Stops Length
	RadiusMM    float64 // where on the face; 0 (default): its outer edge
	Note        string
}

// LeafRound is one leaf carried round the rim.
type LeafRound struct {
	Leaf     Length
	Enters   []Arc // where it enters
	Stops    []Arc // where it does not; what is in neither could not be reached
	RadiusMM float64
	Note     string
}

// Arc runs clockwise looking forward, from one position to another; past 12 it
// is written 330 to 30. 0 to 360 is all round.
type Arc struct{ FromDeg, ToDeg float64 }

// AllRound reports whether an arc leaves nothing out, or was left out itself.
func (a Arc) AllRound() bool { return a == Arc{} || a == Arc{0, 360} }

// canonical leaves out an arc that leaves nothing out.
func (a Arc) canonical() Arc {
	if a.AllRound() {
		return Arc{}
	}
	return a
}

// Reaches reports whether a position lies on the arc or at one of its ends.
func (a Arc) Reaches(clockDeg float64) bool {
	return a.AllRound() || math.Mod(clockDeg-a.FromDeg+720, 360) <= a.SpanDeg()
}

// SpanDeg is how far the arc runs.
func (a Arc) SpanDeg() float64 {
	if a == (Arc{0, 360}) {
		return 360
	}
	return math.Mod(a.ToDeg-a.FromDeg+360, 360)
}

// Holds reports whether a position lies on the arc, its ends left out.
func (a Arc) Holds(clockDeg float64) bool {
	past := math.Mod(clockDeg-a.FromDeg+720, 360)
	return past > 0 && past < a.SpanDeg()
}

// RimStep is a straightedge along both rims with a leaf under it: High tells
// which half it lies on, the other is lower by goes to stops.
type RimStep struct {
	ClockDeg    float64
	High        string // EngineSide or ShaftSide; "" (default): neither, not even the thinnest leaf enters
	Goes, Stops Length
	Note        string
}

// Dial is one mark of a dial carried round on one half, its tip on the other. +
// is the tip pushed in.
type Dial struct {
	On        string // "face" or "rim"
	CarriedBy string // default ShaftSide
	ClockDeg  float64
	Reads     Length
	ZeroDeg   float64 // where it was set to nought; default 0
	// Sag is what the dial shows at 6 with nought at 12 on a straight bar,
	// bracket as used. Left out (default): none.
	Sag      Length
	RadiusMM float64 // of the tip on a face; 0 (default): its outer edge
	Note     string
}

// RunOut is a half turned once under a dial that stands still.
type RunOut struct {
	Half     string // the half that was turned
	On       string // "face" or "rim"
	TIR      Length // total indicator reading: highest less lowest
	LowDeg   Maybe  // clock position of the low spot with the half at its mark; default: not noted
	RadiusMM float64
	Note     string
}

// Clearance is a strip tried between the shaft and what it runs in.
type Clearance struct {
	Where       string // "log" or a bearing's name
	End         string // "fore" or "aft"
	ClockDeg    float64
	Goes, Stops Length
	Note        string
}

// Pilot is how the pilot enters its bore.
type Pilot struct {
	Enters string // one of PilotEnters
	Note   string
}

// PilotEnters are the words Pilot.Enters may be.
var PilotEnters = []string{"freely", "with force", "not"}

// Kind is "leaf".
func (Leaf) Kind() string { return "leaf" }

// Kind is "leaf round".
func (LeafRound) Kind() string { return "leaf round" }

// Kind is "rim step".
func (RimStep) Kind() string { return "rim step" }

// Kind is "dial".
func (Dial) Kind() string { return "dial" }

// Kind is "run-out".
func (RunOut) Kind() string { return "run-out" }

// Kind is "clearance".
func (Clearance) Kind() string { return "clearance" }

// Kind is "pilot".
func (Pilot) Kind() string { return "pilot" }

// ReadingKinds are the names of all kinds.
var ReadingKinds = []string{"leaf", "leaf round", "rim step", "dial", "run-out", "clearance", "pilot"}

// WithinMM is the interval go and no-go leave, without the feel error; without
// a limit it is open to that side.
func WithinMM(goes, stops Length) (least, most float64) {
	least, most = math.Inf(-1), math.Inf(1)
	if goes.Given() {
		least = goes.MM()
	}
	if stops.Given() {
		most = stops.MM()
	}
	return least, most
}
