package gauge

// This file holds what a hull's mechanics say about readings: how the gap and
// the shaft follow the engine's offset in each way of holding the shaft.

import (
	"fmt"

	"aligner/hulls"
	"aligner/kinematics"
)

// Model is a hull made ready for estimates. It is not changed by them, so it
// may be shared.
type Model struct {
	hull     hulls.Hull
	aim      kinematics.Held
	radiusMM float64

	// swing is how the seated gap [A, B] follows the offset [y, z], in mm per
	// mm; centredMM what a centred gap has that a seated one of an engine
	// without offset has not.
	swing     [2][2]float64
	centredMM [2]float64
	middleMM  [2]float64 // where a centred shaft's front end stands
	// powerMM is how the gap [A, B] changes per newton of thrust and per N m of
	// torque on the face.
	powerMM [2][2]float64
	rooms   []room // seated
}

// room is where a strip may be tried round the seated shaft: at the drawn
// offset the shaft stands at atMM [y, z] in a bore whose axis is boreMM, and
// follows the offset by follows.
type room struct {
	where, end string
	xMM        float64
	halfMM     float64 // half the diametral clearance
	boreMM     [2]float64
	atMM       [2]float64
	follows    [2]float64 // y by y, z by z
}

// probeMM is how far the engine is moved to see what follows: less than any
// clearance, more than rounding.
const probeMM = 0.5

// NewModel works a hull out, dry or afloat.
func NewModel(h *hulls.Hull, afloat bool) (*Model, error) {
	d, err := kinematics.Prepare(*h)
	if err != nil {
		return nil, err
	}
	m := &Model{hull: *h, aim: kinematics.Seated, radiusMM: h.Coupling.OuterDiameterMM / 2, middleMM: d.MiddleMM()}
	if !h.Coupling.HasPilot() {
		m.aim = kinematics.Centred
	}
	if err := m.underPower(d, afloat); err != nil {
		return nil, err
	}
	if m.aim == kinematics.Centred {
		return m, nil
	}
	m.placeRooms(h)
	return m, m.follow(d, afloat)
}

// follow moves the drawn engine bodily up and to port, and sees by how much the
// seated gap then differs from the centred one, and what the seated shaft does.
// The offset is the engine's with the shaft apart: seated, the shaft's weight
// presses it down a little, which is in all that follows.
func (m *Model) follow(d *kinematics.DriveLine, afloat bool) error {
	var apart, offset [5][2]float64 // at rest, then to starboard, to port, down, up
	at := make([][5][2]float64, len(m.rooms))
	for i, by := range [5]float64{0, -probeMM, probeMM, -probeMM, probeMM} {
		all := make([]float64, len(m.hull.Mounts))
		for j := range all {
			all[j] = by
		}
		s := kinematics.State{Held: kinematics.Centred, Afloat: afloat}
		if i < 3 {
			s.SlideMM = all
		} else {
			s.LiftMM = all
		}
		centred, err := m.solve(d, s)
		if err != nil {
			return err
		}
		s.Held = kinematics.Seated
		seated, err := m.solve(d, s)
		if err != nil {
			return err
		}
		apart[i] = [2]float64{seated.Gap.CosMM - centred.Gap.CosMM, seated.Gap.SinMM - centred.Gap.SinMM}
		offset[i] = [2]float64{centred.TranslationMM[1], centred.TranslationMM[2]}
		for j := range m.rooms {
			at[j][i] = front(d, m.rooms[j].xMM)
		}
	}
	for j := range m.rooms {
		m.rooms[j].atMM = at[j][0]
	}
	for k := range 2 { // y, then z
		less, more := 2*k+1, 2*k+2
		moved := offset[more][k] - offset[less][k]
		for c := range 2 {
			m.swing[c][k] = (apart[more][c] - apart[less][c]) / moved
		}
		for j := range m.rooms {
			m.rooms[j].follows[k] = (at[j][more][k] - at[j][less][k]) / moved
		}
	}
	m.centredMM = [2]float64{-apart[0][0], -apart[0][1]}
	return nil
}

// placeRooms lists where strips may be tried: both ends of the log and of each
// bearing.
func (m *Model) placeRooms(h *hulls.Hull) {
	add := func(where string, atMM, lengthMM, halfMM float64, boreMM [2]float64) {
		m.rooms = append(m.rooms,
			room{where: where, end: "fore", xMM: atMM + lengthMM/2, halfMM: halfMM, boreMM: boreMM},
			room{where: where, end: "aft", xMM: atMM - lengthMM/2, halfMM: halfMM, boreMM: boreMM})
	}
	add(hulls.ReservedBearingName, h.Log.AtMM, h.Log.LengthMM, (h.Log.BoreMM-h.Shaft.DiameterMM)/2, h.Log.OffsetMM)
	for _, b := range h.Bearings {
		add(b.Name, b.AtMM, b.LengthMM, b.DiametralClearanceMM/2, b.OffsetMM)
	}
}

func front(d *kinematics.DriveLine, xMM float64) [2]float64 {
	s := d.ShaftAt(xMM)
	return [2]float64{s.Y, s.Z}
}

func (m *Model) solve(d *kinematics.DriveLine, s kinematics.State) (*kinematics.Result, error) {
	var r kinematics.Result
	if err := d.Solve(&s, &r); err != nil {
		return nil, fmt.Errorf("%s, shaft %s: %w", m.hull.Name, s.Held, err)
	}
	return &r, nil
}
