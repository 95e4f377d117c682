package cost

// This file works the costs out.

import (
	"math"

	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/turn"
)

// Grade is how much something matters.
type Grade string

// The grades, the mildest first.
const (
	Nothing Grade = "nothing"
	Little  Grade = "little"
	Wears   Grade = "wears"
	Harms   Grade = "harms"
)

// What is borne.
type Part string

// The parts.
const (
	Shaft    Part = "shaft"
	Bearing  Part = "bearing"
	Shake    Part = "shake"
	Seal     Part = "seal"
	Bolts    Part = "bolts"
	Whirling Part = "whirling"
	Carries  Part = "carries" // whether every bearing is pressed downward
	Mounts   Part = "mounts"  // how evenly they share the engine
	Rocking  Part = "rocking" // the mounts pushed to and fro once a turn
	Spacing  Part = "spacing" // of the bearings
)

// met are the grades each part can have, the mildest first.
var met = map[Part][]Grade{
	Shaft: {Nothing, Little, Wears, Harms}, Bearing: {Nothing, Little, Wears}, Shake: {Nothing, Little, Wears}, Seal: {Nothing, Little, Wears},
	Bolts: {Nothing, Little, Harms}, Whirling: {Nothing, Little, Harms}, Carries: {Nothing, Little, Wears}, Mounts: {Nothing, Little, Wears},
	Rocking: {Little}, Spacing: {Nothing, Little},
}

// Sure says how well a number is known.
type Sure string

// How sure: worked out by the model, or leaning on a figure of low confidence.
const (
	WorkedOut     Sure = "worked out"
	LowConfidence Sure = "low confidence"
)

// Item is one cost.
type Item struct {
	Part    Part
	Grade   Grade
	Sure    Sure
	Bearing string // of Bearing, Shake and Carries; of Spacing where its span begins, "": at the face
	Mount   string // of Mounts and Rocking

	StressMPa, YieldMPa float64    // Shaft
	FatigueMPa          [2]float64 // Shaft: a range, low confidence
	MomentNMM           float64    // Shaft, Seal
	LoadN, CarriedN     float64    // Bearing, Shake, Rocking: added, and carried anyway; Carries, Mounts: carried now, and lined up
	BoltN, ClampN       float64    // Bolts: added on the worst one, and its clamping
	SpeedRPM            float64    // Whirling: the shaft's greatest; 0: not told
	WhirlRPM            [2]float64 // Whirling: hinged to held at the coupling

	// Spacing: the span furthest from the rule, in mm and shaft diameters, where it
	// ends, and the longest the formula allows at SpeedRPM.
	SpanMM, SpanDiameters, FormulaMM float64
	To                               string
}

// Costs are all of them, the gravest first, and the turn they come from.
type Costs struct {
	Items []Item
	Turn  *turn.Turn
}

// Of works out what it costs to bolt a boat up as she stands. The error says where
// that cannot be: through a soft coupling.
func Of(h *hulls.Hull, stands kinematics.State, fault kinematics.RunOut) (*Costs, error) {
	t, err := turn.Play(h, stands, fault, turn.Settings{})
	if err != nil {
		return nil, err
	}
	d, err := kinematics.Prepare(*h)
	if err != nil {
		return nil, err
	}
	lined := kinematics.State{Held: kinematics.Bolted, Afloat: stands.Afloat}
	var rest kinematics.Result
	if err := d.Solve(&lined, &rest); err != nil {
		return nil, err
	}
	m, err := hulls.MaterialOf(h.Shaft.Material, h.Shaft.Condition)
	if err != nil {
		return nil, err
	}
	c := &Costs{Turn: t}
	if err := c.shaft(d, m, stands, fault); err != nil {
		return nil, err
	}
	c.bearings(h, &rest)
	c.carries(h, &rest)
	c.mounts(h)
	c.spacing(h, m)
	c.sealAndBolts(h, rest.CouplingMomentNMM)
	if err := c.whirling(h, d); err != nil {
		return nil, err
	}
	c.order()
	return c, nil
}

// Parts of the cautious fatigue figure from which a stress is worth a word, and of
// yield from which it bends for good.
const (
	littleOfFatigue = 1.0 / 3
	harmsOfYield    = 2.0 / 3
)

// shaft is its worst bending, as the drive line was bolted last.
func (c *Costs) shaft(d *kinematics.DriveLine, m hulls.Material, stands kinematics.State, fault kinematics.RunOut) error {
	stands.Held, stands.RunOut = kinematics.Bolted, fault
	var r kinematics.Result
	if err := d.Solve(&stands, &r); err != nil {
		return err
	}
	stress, _ := d.BendingStressMPa()
	i := Item{Part: Shaft, Sure: LowConfidence, StressMPa: stress, YieldMPa: m.YieldMinMPa, FatigueMPa: m.EnduranceMPa, MomentNMM: c.Turn.MomentNMM}
	switch {
	case stress < littleOfFatigue*m.EnduranceMPa[0]:
		i.Grade = Nothing
	case stress < m.EnduranceMPa[0]:
		i.Grade = Little
	case stress < harmsOfYield*m.YieldMinMPa:
		i.Grade = Wears
	default:
		i.Grade = Harms
	}
	c.Items = append(c.Items, i)
	return nil
}

// Parts of what a bearing carries anyway from which more of it is little, wears it,
// or is as much again and more.
const (
	littleOfLoad, wearsOfLoad = 0.25, 1.0
	leastLoadN                = 5 // a bearing that carries next to nothing is held to this
)

func (c *Costs) bearings(h *hulls.Hull, rest *kinematics.Result) {
	for i, b := range h.Bearings {
		carried := math.Hypot(rest.BearingForceN[i][0], rest.BearingForceN[i][1])
		add := func(part Part, load float64) {
			grade := Nothing
			switch share := load / max(carried, leastLoadN); {
			case share >= wearsOfLoad:
				grade = Wears
			case share >= littleOfLoad:
				grade = Little
			}
			c.Items = append(c.Items, Item{Part: part, Grade: grade, Sure: WorkedOut, Bearing: b.Name, LoadN: load, CarriedN: carried})
		}
		add(Bearing, c.Turn.SteadyN[i])
		if swing := c.Turn.SwingN[i]; swing > littleOfLoad*leastLoadN {
			add(Shake, swing)
		}
	}
}

// Parts of the bolts' clamping from which a bend works on them, and of the bolt
// circle in the face's diameter (own judgement: halves are drilled there).
const (
	littleOfClamp, harmsOfClamp = 0.1, 0.5
	circleOfFace                = 0.75
)

// sealAndBolts carry the moment beyond what the boat lined up has.
func (c *Costs) sealAndBolts(h *hulls.Hull, linedNMM float64) {
	m := max(0, c.Turn.MomentNMM-linedNMM)
	seal := Item{Part: Seal, Grade: Nothing, Sure: LowConfidence, MomentNMM: m}
	// A gearbox's output bearing carries the propeller's thrust at the flange's edge
	// without harm; a moment of the overhung half's weight is nothing to it.
	if own := h.Coupling.ShaftHalfMassKg * 9.80665 * h.Coupling.ShaftHalfLengthMM; m > own {
		seal.Grade = Little
		if m > 10*own {
			seal.Grade = Wears
		}
	}
	c.Items = append(c.Items, seal)
	b := h.Coupling.Bolts
	t, err := hulls.Tighten(b, false, 0)
	if err != nil || b.Count < 2 {
		return // an unknown grade: nothing is said of its bolts
	}
	radius := circleOfFace * h.Coupling.OuterDiameterMM / 2
	i := Item{Part: Bolts, Grade: Nothing, Sure: LowConfidence, BoltN: 2 * m / (float64(b.Count) * radius), ClampN: t.ClampN}
	switch share := i.BoltN / i.ClampN; {
	case share >= harmsOfClamp:
		i.Grade = Harms
	case share >= littleOfClamp:
		i.Grade = Little
	}
	c.Items = append(c.Items, i)
}

// Parts of the lower whirling speed up to which a shaft's speed is nowhere near it,
// and from which it is.
const nothingOfWhirl, littleOfWhirl = 0.8, 0.9

func (c *Costs) whirling(h *hulls.Hull, d *kinematics.DriveLine) error {
	hinged, bolted, err := d.WhirlRPM()
	if err != nil {
		return err
	}
	i := Item{Part: Whirling, Grade: Nothing, Sure: LowConfidence, SpeedRPM: h.ShaftSpeedMaxRPM, WhirlRPM: [2]float64{hinged, bolted}}
	switch share := h.ShaftSpeedMaxRPM / hinged; {
	case share >= littleOfWhirl:
		i.Grade = Harms
	case share >= nothingOfWhirl:
		i.Grade = Little
	}
	c.Items = append(c.Items, i)
	return nil
}
