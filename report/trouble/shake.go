package trouble

// This file works out, for one boat, why line-up seldom shakes her and a crooked
// half does: the bolted shaft once out of line, once with a half crooked by as
// much.
//
//	out of line      the bend stands still; each fibre of the shaft goes through it
//	                 once a turn; bearings are pressed always the same way
//	half crooked     the bend turns with the shaft; bearings are pulled round

import (
	"math"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/turn"
	"aligner/report/say"
)

// Shake is what the two do, bolted up.
type Shake struct {
	GapMM     float64 // between opposite sides, of both
	MomentNMM float64 // of the coupling, out of line
	StressMPa float64 // at the shaft's surface there, plus and minus once a turn
	Bearing   string  // the one pulled most
	SteadyN   float64 // what being out of line adds on it, always one way
	SwingN    float64 // what the crooked half adds, one way and then the other
}

// shakeMM is what both are worked out for: 10 thou, a gap nobody leaves.
const shakeMM = 10 * 0.0254

// steps are how many places of a turn are worked out.
const steps = 12

// ShakeOf works it out for a boat. Both are faults of the same size at the faces:
// what is out of line is put there by a face that stands still, which bends the shaft
// as an engine tipped by as much would.
func ShakeOf(h *hulls.Hull, afloat bool) (s Shake, err error) {
	s.GapMM = shakeMM
	stands := kinematics.State{Afloat: afloat}
	lined, err := turn.Play(h, stands, kinematics.RunOut{}, turn.Settings{Steps: 1})
	if err != nil {
		return s, err
	}
	round, err := turn.Play(h, stands, kinematics.RunOut{ShaftMM: shakeMM / 2}, turn.Settings{Steps: steps})
	if err != nil {
		return s, err
	}
	rest, still := &lined.Steps[0].Result, &round.Steps[0].Result
	s.MomentNMM = math.Hypot(still.CouplingBendNMM[0]-rest.CouplingBendNMM[0], still.CouplingBendNMM[1]-rest.CouplingBendNMM[1])
	d := h.Shaft.DiameterMM
	s.StressMPa = s.MomentNMM / (math.Pi * d * d * d / 32) // section modulus of a round bar
	for i, b := range h.Bearings {
		if swing := round.SwingN[i]; swing >= s.SwingN {
			s.Bearing, s.SwingN = b.Name, swing
			s.SteadyN = math.Hypot(still.BearingForceN[i][0]-rest.BearingForceN[i][0], still.BearingForceN[i][1]-rest.BearingForceN[i][1])
		}
	}
	return s, nil
}

// Text says both.
func (s *Shake) Text(in words.Speaker, u say.Units) []string {
	args := words.Args{"Gap": u.GapWithUnit(s.GapMM), "Bend": u.Moment(s.MomentNMM), "Stress": u.Plain(s.StressMPa, 0) + " MPa",
		"Steady": u.Force(s.SteadyN), "Swing": u.Force(s.SwingN), "Bearing": s.Bearing}
	return []string{in.Say(words.TroubleShake, args), in.Say(words.TroubleShakeHalf, args)}
}
