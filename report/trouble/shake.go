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
// what is out of line is put there by the flange's own face standing still, which
// bends the shaft as an engine tipped by as much would.
func ShakeOf(h *hulls.Hull, afloat bool) (s Shake, err error) {
	line, err := kinematics.Prepare(*h)
	if err != nil {
		return s, err
	}
	s.GapMM = shakeMM
	var r kinematics.Result
	force := func(turn float64, mm float64) ([][2]float64, error) {
		state := kinematics.State{Held: kinematics.Bolted, Afloat: afloat,
			RunOut: kinematics.RunOut{ShaftMM: mm / 2, ShaftTurnDeg: turn}}
		if err := line.Solve(&state, &r); err != nil {
			return nil, err
		}
		return append([][2]float64(nil), r.BearingForceN...), nil
	}
	rest, err := force(0, 0)
	if err != nil {
		return s, err
	}
	restMoment := r.CouplingMomentNMM
	back, err := force(180, shakeMM)
	if err != nil {
		return s, err
	}
	backMoment := r.CouplingMomentNMM
	still, err := force(0, shakeMM)
	if err != nil {
		return s, err
	}
	// Only sizes are told of the moment: |M0 + m| and |M0 - m| give |m|.
	s.MomentNMM = math.Sqrt(max(0, (square(r.CouplingMomentNMM)+square(backMoment))/2-square(restMoment)))
	d := h.Shaft.DiameterMM
	s.StressMPa = s.MomentNMM / (math.Pi * d * d * d / 32) // section modulus of a round bar
	for i, b := range h.Bearings {
		most := 0.0
		for k := range steps {
			f, err := force(360*float64(k)/steps, shakeMM)
			if err != nil {
				return s, err
			}
			if back, err = force(360*float64(k)/steps+180, shakeMM); err != nil {
				return s, err
			}
			most = max(most, math.Hypot(f[i][0]-back[i][0], f[i][1]-back[i][1])/2)
		}
		if most >= s.SwingN {
			s.Bearing, s.SwingN = b.Name, most
			s.SteadyN = math.Hypot(still[i][0]-rest[i][0], still[i][1]-rest[i][1])
		}
	}
	return s, nil
}

func square(v float64) float64 { return v * v }

// Text says both.
func (s *Shake) Text(in words.Speaker, u say.Units) []string {
	args := words.Args{"Gap": u.GapWithUnit(s.GapMM), "Bend": u.Moment(s.MomentNMM), "Stress": u.Plain(s.StressMPa, 0) + " MPa",
		"Steady": u.Force(s.SteadyN), "Swing": u.Force(s.SwingN), "Bearing": s.Bearing}
	return []string{in.Say(words.TroubleShake, args), in.Say(words.TroubleShakeHalf, args)}
}
