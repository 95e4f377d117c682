package kinematics

// This file reads a converged state into a Result.

import (
	"math"

	"aligner/kinematics/shaftline"
)

// report fills r.
func (d *DriveLine) report(s *State, b *bent, status shaftline.Result, r *Result) {
	d.blank(r, s.Held)
	r.Status = status
	f := &d.face
	r.TranslationMM = f.pose.TranslationMM
	r.RotationRad = f.pose.RotationRad()
	q, p := b.model.Front(b.state), b.model.FrontForce(b.state)
	r.FrontEndMM = [2]float64{q[0], q[2]}
	r.FrontEndSlope = [2]float64{q[1], q[3]}
	r.OffsetMM = [2]float64{q[0] - r.TranslationMM[1], q[2] - r.TranslationMM[2]}
	if f.joint != apart || f.block {
		r.EndForceN = [2]float64{p[0], p[2]}
	}
	if f.joint == drawnFlat {
		r.CouplingMomentNMM = math.Hypot(p[1], p[3])
		r.CouplingBendNMM = [2]float64{p[1], p[3]}
	}
	for i := range r.MountLoadN {
		r.MountLoadN[i] = d.engine.mountLoadN(&f.pose, i, f.seats[i])
	}
	b.model.ReadSupports(b.state, b.supports)
	for i := range r.BearingForceN {
		r.BearingForceN[i] = b.supports[i].ForceN
		r.BearingClearanceMM[i] = b.supports[i].ClearanceMM
	}
	log := b.supports[b.model.LogGroup()]
	r.LogForceN, r.LogClearanceMM = log.ForceN, log.ClearanceMM
	d.gap(s, b, r)
}

// gap works out the faces, as far as the way of holding shows a gap.
func (d *DriveLine) gap(s *State, b *bent, r *Result) {
	switch s.Held {
	case Hanging:
		return
	case Bolted:
		r.Gap.Known = true
		return
	}
	radius := d.face.radius
	n := d.face.pose.Normal()
	dy, dz := r.FrontEndSlope[0], r.FrontEndSlope[1]
	r.Parts = Parts{
		Tilt:   [2]float64{0 - radius*n[2]/n[0], radius * n[1] / n[0]},
		Swing:  [2]float64{radius * (dz - b.sag[1]), radius * (b.sag[0] - dy)},
		Sag:    [2]float64{radius * b.sag[1], 0 - radius*b.sag[0]},
		RunOut: s.RunOut.cosSin(),
	}
	out := r.Parts.RunOut
	r.Gap = Gap{
		Known: true,
		CosMM: radius*(dz-n[2]/n[0]) + out[0],
		SinMM: radius*(n[1]/n[0]-dy) + out[1],
	}
	r.Gap.G0MM = s.ApartMM + math.Hypot(r.Gap.CosMM, r.Gap.SinMM)
}

// blank empties r, keeping its slices.
func (d *DriveLine) blank(r *Result, held Held) {
	n, k := len(d.hull.Mounts), len(d.hull.Bearings)
	loads, forces, rooms := r.MountLoadN, r.BearingForceN, r.BearingClearanceMM
	if len(loads) != n {
		loads = make([]float64, n)
	}
	if len(forces) != k || len(rooms) != k {
		forces, rooms = make([][2]float64, k), make([]float64, k)
	}
	clear(loads)
	clear(forces)
	clear(rooms)
	*r = Result{Held: held, MountLoadN: loads, BearingForceN: forces, BearingClearanceMM: rooms}
}

// ShaftAt is the shaft of the last answer at x: its movement, moment and shear.
func (d *DriveLine) ShaftAt(xMM float64) shaftline.Section { return d.last.model.At(d.last.state, xMM) }

// EngineTravelMM is how far a point of the engine, given as drawn in S, has
// moved in the last answer.
func (d *DriveLine) EngineTravelMM(pS [3]float64) [3]float64 { return d.face.pose.Travel(pS) }

// BendingStressMPa is the largest bending stress in the shaft of the last
// answer, and where. It reverses with every turn.
func (d *DriveLine) BendingStressMPa() (stressMPa, xMM float64) {
	m, x := d.last.model.Bending(d.last.state)
	return d.last.model.Line().StressMPa(m), x
}
