package hulls

// This file holds the hull itself: plain data, field for key as in the hull
// file. A zero value is not a hull; read one, or copy a built-in one.

import (
	"maps"
	"math"
	"slices"
)

// FormatHull is the value of a hull file's "format" key.
const FormatHull = "hull/1"

// Layout says how the engine stands to the shaft. It chooses words and
// pictures only: the mechanics follow from positions and the down angle.
type Layout string

// The layouts a hull file may name.
const (
	InLine    Layout = "in-line"
	DownAngle Layout = "down-angle"
	VDrive    Layout = "v-drive"
)

// MountKind tells rubber from solid feet.
type MountKind string

// Rubber is bonded and carries tension; a solid foot on shims is one-sided.
const (
	Rubber MountKind = "rubber"
	Solid  MountKind = "solid"
)

// Reach says how hard a mount is to get at.
type Reach string

// How a mechanic gets at a mount.
const (
	Open    Reach = "open"
	Awkward Reach = "awkward"
	Blind   Reach = "blind"
)

// Hull is one boat's drive line.
type Hull struct {
	Name           string
	HIN            string // hull identification number; "" (default): not known
	OwnerReference string // what the yard files the owner under; "" (default): none
	Layout         Layout

	ShaftAngleDeg    float64 // rise of the shaft line going forward
	ShaftSpeedMaxRPM float64 // 0 (default): not stated

	Engine      Engine
	Mounts      []Mount
	Coupling    Coupling
	Shaft       Shaft
	Bearings    []Bearing // in the file's order
	Log         Log
	StuffingBox *StuffingBox // nil (default): none
	Propeller   Propeller

	// Tolerance maps a JSON pointer into the hull file to the plus-or-minus of
	// the number it points at, in that number's own unit. nil (default): the
	// program's own tolerances hold.
	Tolerance map[string]float64
	Look      Look // zero (default): every part at its default

	OneSided bool // built so that port and starboard are no mirror images; default: not
	// MeasuredResponse is what the boat answered so far; nil (default): nothing
	// measured.
	MeasuredResponse []Measured
}

// Clone is a hull that shares nothing with this one.
func (h Hull) Clone() Hull {
	h.Mounts, h.Bearings = slices.Clone(h.Mounts), slices.Clone(h.Bearings)
	if h.StuffingBox != nil {
		box := *h.StuffingBox
		h.StuffingBox = &box
	}
	h.Tolerance = maps.Clone(h.Tolerance)
	h.MeasuredResponse = slices.Clone(h.MeasuredResponse)
	for i, m := range h.MeasuredResponse {
		h.MeasuredResponse[i].NutFlats, h.MeasuredResponse[i].SlideMM = maps.Clone(m.NutFlats), maps.Clone(m.SlideMM)
	}
	return h
}

// Engine is the rigid body on the mounts: engine, gearbox and its flange.
type Engine struct {
	MassKg         float64
	CentreOfMassMM [3]float64 // in E
	DownAngleDeg   float64
}

// Mount is one foot of the engine with its adjuster.
type Mount struct {
	Name            string
	AtMM            [3]float64 // in E, where the springs act on the engine
	Kind            MountKind  // default in a file: rubber
	Thread          string     // designation of the adjuster's thread; "" for solid feet
	ThreadPitchMM   float64    // 0 for solid feet
	ShimStepMM      float64    // 0 for rubber
	StiffnessNPerMM Stiffness
	NutRangeMM      [2]float64 // lift left, down (negative) and up, from the drawn height
	SlideRangeMM    [2]float64 // slide left, to starboard (negative) and to port
	Reach           Reach
}

// Stiffness of a mount along its adjuster (z_E), along the bed (x_E) and
// athwart (y_E).
type Stiffness struct {
	Along, ForeAft, Athwart float64
}

// LiftPerStepMM is the lift of one step of the adjuster: a flat (a sixth of a
// turn) of the nut, or one shim.
func (m Mount) LiftPerStepMM() float64 {
	if m.Kind == Solid {
		return m.ShimStepMM
	}
	return m.ThreadPitchMM / 6
}

// Coupling is the pair of faces and the half that rides on the shaft.
type Coupling struct {
	OuterDiameterMM   float64
	PilotDiameterMM   float64 // 0: no pilot
	ShaftHalfMassKg   float64
	ShaftHalfLengthMM float64
	Bolts             Bolts
	Soft              SoftCoupling // zero (default): the faces meet metal to metal
}

// SoftCoupling is a disc or rubber element between the two faces.
type SoftCoupling struct {
	ThicknessMM float64 // between the faces
	// InPlaceMM is the gap its maker allows with it in place, between opposite
	// sides; 0 (default): it is taken out, or a rigid dummy put in, to gauge.
	InPlaceMM float64
	// BendingStiffnessNMPerDeg is the moment that bends it by a degree, as its maker
	// tells it; 0 (default): not known, and nothing is worked out bolted through it.
	BendingStiffnessNMPerDeg float64
}

// IsSoft reports whether a soft coupling belongs between the faces.
func (c Coupling) IsSoft() bool { return c.Soft.ThicknessMM > 0 }

// BoltedKnown reports whether it is known what the coupling passes on when bolted:
// metal to metal everything, through a soft coupling what its stiffness lets.
func (c Coupling) BoltedKnown() bool { return !c.IsSoft() || c.Soft.BendingStiffnessNMPerDeg > 0 }

// HasPilot reports whether a pilot can carry the shaft's end (held "seated").
func (c Coupling) HasPilot() bool { return c.PilotDiameterMM > 0 }

// Bolts of the coupling.
type Bolts struct {
	Count  int
	Thread string
	Grade  string
}

// Shaft from the shaft-side face (x = 0) to its aft end.
type Shaft struct {
	DiameterMM float64
	LengthMM   float64
	Material   string // UNS number, e.g. "UNS S20910"
	Condition  string // "" (default): the first condition known for that number
}

// Bearing carries the shaft with a clearance.
type Bearing struct {
	Name                  string
	AtMM                  float64 // x of its middle in S
	LengthMM              float64
	RadialStiffnessNPerMM float64 // of the whole length
	DiametralClearanceMM  float64
	OffsetMM              [2]float64 // [y, z] of its axis in S; default 0, 0
}

// Log is the tube through the hull round the shaft.
type Log struct {
	AtMM, LengthMM, BoreMM float64    // AtMM: x of its middle in S
	OffsetMM               [2]float64 // [y, z] of its axis in S; default 0, 0
}

// StuffingBox is a mass on a soft hose: a spring without clearance at one
// point.
type StuffingBox struct {
	AtMM, MassKg, RadialStiffnessNPerMM float64
	OffsetMM                            [2]float64 // [y, z] of its rest in S; default 0, 0
}

// Propeller at the aft end.
type Propeller struct {
	MassKg, AtMM, DiameterMM float64
	DensityKgM3              float64 // default DefaultPropellerDensityKgM3
}

// Look is what only the picture needs.
type Look struct {
	Engine      string // "petrol-v", "in-line-diesel", "small-auxiliary"; "": chosen by mass
	HullSection string // "round", "vee", "flat"; "": round
	Hose        string // "plain", "bellows"; "": plain
}

// EToS is a point of the engine frame in the shaft frame.
func (h *Hull) EToS(pE [3]float64) [3]float64 {
	sin, cos := math.Sincos(h.Engine.DownAngleDeg * math.Pi / 180)
	return [3]float64{cos*pE[0] + sin*pE[2], pE[1], cos*pE[2] - sin*pE[0]}
}
