package kinematics

// This file is the engine: a rigid body on its mounts under gravity and an
// outside wrench at the face, out of balance or not at a given pose.

import (
	"errors"
	"fmt"
	"math"

	"aligner/hulls"

	"github.com/go-gl/mathgl/mgl64"
)

// gravityMPerS2 is standard gravity (the CGPM's value of 1901).
const gravityMPerS2 = 9.80665

// engine is everything about the engine that does not change with its state.
type engine struct {
	bed     bed
	mounts  []mount
	weightN mgl64.Vec3 // in S
	pFC_S   mgl64.Vec3 // arm from the face centre to the centre of mass
}

// newEngine places the engine and finds its preloads.
func newEngine(h *hulls.Hull) (engine, error) {
	sin, cos := math.Sincos(h.Engine.DownAngleDeg * math.Pi / 180)
	e := engine{bed: bed{c: cos, s: sin}}
	up, level := math.Sincos(h.ShaftAngleDeg * math.Pi / 180)
	w := h.Engine.MassKg * gravityMPerS2
	e.weightN = mgl64.Vec3{-w * up, 0, -w * level}
	e.pFC_S = e.bed.toS(mgl64.Vec3(h.Engine.CentreOfMassMM))
	for _, m := range h.Mounts {
		e.mounts = append(e.mounts, newMount(m, e.bed))
	}
	return e, e.preload(h)
}

// preload is the linear elastic solution with the engine drawn and all seats
// in one plane. A solid foot it would pull on is let go and the rest share its
// load; the drawn engine then rests on the others.
func (e *engine) preload(h *hulls.Hull) error {
	for i := range e.mounts {
		e.mounts[i].preloadE = mgl64.Vec3{}
	}
	k := make([]mgl64.Vec3, len(e.mounts))
	for i := range k {
		k[i] = e.mounts[i].kE
	}
	for range len(e.mounts) + 1 {
		var a system
		for i, m := range e.mounts {
			a.addSpring(e.bed, m.pFM_S, k[i])
		}
		moment := e.pFC_S.Cross(e.weightN)
		a.rhs = [6]float64{e.weightN[0], e.weightN[1], e.weightN[2], moment[0], moment[1], moment[2]}
		q, ok := a.solve()
		if !ok {
			return fmt.Errorf("%s: the mounts do not hold the engine in every direction; give three or more that are not in one line", h.Name)
		}
		lifted := false
		t, turn := mgl64.Vec3{q[0], q[1], q[2]}, mgl64.Vec3{q[3], q[4], q[5]}
		for i := range e.mounts {
			m := &e.mounts[i]
			d := e.bed.toE(t.Add(turn.Cross(m.pFM_S)))
			m.preloadE = mgl64.Vec3{-k[i][0] * d[0], -k[i][1] * d[1], -k[i][2] * d[2]}
			if m.solid && m.preloadE[2] < 0 {
				k[i][2], lifted = 0, true
			}
		}
		if !lifted {
			return nil
		}
	}
	return errors.New(h.Name + ": no set of solid feet carries the engine")
}

// wrench is a force and a moment about the face centre, in S.
type wrench struct{ forceN, momentNMM mgl64.Vec3 }

// unbalance is what acts on the engine at a pose, the shaft apart: nil at
// rest. With a not nil, the
// stiffness against a step is added to it; a careful one leaves out what
// turning forces do, so that it always leads downhill.
func (e *engine) unbalance(x *Pose, seats []seat, outside wrench, careful bool, a *system) wrench {
	sum := outside
	lifted := liftedShare
	if careful {
		lifted = liftedShareCareful
	}
	for i := range e.mounts {
		m := &e.mounts[i]
		turned := x.turn(m.pFM_S)
		arm := m.pFM_S.Add(turned)
		forceE, kE := m.push(e.bed.toE(x.TranslationMM.Add(turned)), seats[i], lifted)
		force := e.bed.toS(forceE)
		sum.forceN = sum.forceN.Add(force)
		sum.momentNMM = sum.momentNMM.Add(arm.Cross(force))
		if a != nil {
			a.addSpring(e.bed, arm, kE)
			if !careful {
				a.addFollower(arm, force)
			}
		}
	}
	arm := e.pFC_S.Add(x.turn(e.pFC_S))
	sum.forceN = sum.forceN.Add(e.weightN)
	sum.momentNMM = sum.momentNMM.Add(arm.Cross(e.weightN))
	if a != nil && !careful {
		a.addFollower(arm, e.weightN)
	}
	return sum
}

// mountLoadN is the force of mount i on the engine along +z_E.
func (e *engine) mountLoadN(x *Pose, i int, s seat) float64 {
	f, _ := e.mounts[i].push(e.bed.toE(x.Travel(e.mounts[i].pFM_S)), s, liftedShare)
	return f[2]
}
