package kinematics

// This file is how to bring a parted shaft to the middle of its free travel.

import (
	"fmt"

	"aligner/kinematics/shaftline"
)

// Centring is the lift that holds a hanging shaft's front end in the middle of
// its free travel, at its hook.
type Centring struct {
	shaftline.Lift
	// RuleN is what the half-weight rule says instead, and RuleErrorMM how far
	// from the middle that leaves the front end, + high.
	RuleN, RuleErrorMM float64
	// GapPerHeight is how much the gap across the faces changes for each mm the
	// block is wrong in height, in mm per mm.
	GapPerHeight float64
}

// SteadyNPerMM is the least stiffness at which a pull centres a shaft; a
// softer one spans millimetres by a newton.
const SteadyNPerMM = 10

// ByForce reports whether a pull can centre the shaft at all.
func (c Centring) ByForce() bool { return c.MMPerN > 0 && 1/c.MMPerN > SteadyNPerMM }

// Centring works the lift out, dry or afloat, the hook at the middle of the
// coupling half.
func (d *DriveLine) Centring(afloat bool) (Centring, error) {
	i := 0
	if afloat {
		i = 1
	}
	b := d.shafts[i][1]
	b.state = b.model.NewState()
	return d.centring(b)
}

// CentringAt is Centring with the hook at another place, negative aft of the
// face.
func (d *DriveLine) CentringAt(afloat bool, hookMM float64) (Centring, error) {
	line, err := Line(d.hull, afloat)
	if err != nil {
		return Centring{}, err
	}
	line.HookAtMM = hookMM
	if why := line.Invalid(); why != "" {
		return Centring{}, fmt.Errorf("%s: %s", d.hull.Name, why)
	}
	b, err := newBent(line, stationsFine)
	if err != nil {
		return Centring{}, err
	}
	return d.centring(b)
}

func (d *DriveLine) centring(b bent) (Centring, error) {
	lift, err := b.model.LiftTo(b.state, d.middle[1])
	if err != nil {
		return Centring{}, err
	}
	c := Centring{Lift: lift, RuleN: b.model.HalfWeightRule()}
	rule, err := b.model.LiftBy(b.state, c.RuleN)
	if err != nil {
		return Centring{}, err
	}
	c.RuleErrorMM = rule.HeightMM - d.middle[1]
	c.GapPerHeight, err = d.gapPerHeight(&b)
	return c, err
}

// gapPerHeight is the change of the gap across by the block's height.
func (d *DriveLine) gapPerHeight(b *bent) (float64, error) {
	const stepMM = 0.01
	slope := func(z float64) (float64, error) {
		at := shaftline.Pinned{AtMM: [2]float64{d.middle[0], d.middle[1] + z}}
		if err := b.model.Bend(b.state, at, shaftline.Limits{}).Err(); err != nil {
			return 0, err
		}
		return b.model.Front(b.state)[3], nil
	}
	b.state.HookN = 0
	lo, err := slope(-stepMM)
	if err != nil {
		return 0, err
	}
	hi, err := slope(stepMM)
	return 2 * d.face.radius * (hi - lo) / (2 * stepMM), err
}
