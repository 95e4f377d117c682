package gauge

// This file is the gap under power. What is aimed at is what shall be there under
// power, so at rest as much less as power adds.

import (
	"math"

	"aligner/hulls/visit"
	"aligner/kinematics"
)

// Loads from which the change per newton and per N m is taken: about what an
// engine of these boats gives (own judgement; the change is linear but for
// clearances).
const (
	probeThrustN  = 500.0
	probeTorqueNM = 150.0
)

// underPower sees how the gap follows thrust and torque.
func (m *Model) underPower(d *kinematics.DriveLine, afloat bool) error {
	rest, err := m.solve(d, kinematics.State{Held: m.aim, Afloat: afloat})
	if err != nil {
		return err
	}
	restMM := [2]float64{rest.Gap.CosMM, rest.Gap.SinMM}
	for k, s := range [2]kinematics.State{{ThrustN: probeThrustN}, {TorqueNMM: 1000 * probeTorqueNM}} {
		s.Held, s.Afloat = m.aim, afloat
		r, err := m.solve(d, s)
		if err != nil {
			return err
		}
		per := [2]float64{probeThrustN, probeTorqueNM}[k]
		m.powerMM[k] = [2]float64{(r.Gap.CosMM - restMM[0]) / per, (r.Gap.SinMM - restMM[1]) / per}
	}
	return nil
}

// PowerMM is how the gap [A, B] changes under power: as measured, or else worked
// out.
func (m *Model) PowerMM(p visit.UnderPower) (ab [2]float64) {
	if p.Shift.Given() {
		sin, cos := math.Sincos(p.ShiftOpensAtDeg * math.Pi / 180)
		return [2]float64{p.Shift.MM() / 2 * cos, p.Shift.MM() / 2 * sin}
	}
	for k, load := range [2]float64{p.ThrustN, p.TorqueNM} {
		for i := range ab {
			ab[i] += load * m.powerMM[k][i]
		}
	}
	return ab
}
