package kinematics

// This file is one mount: its springs, its seat, its force on the engine.

import (
	"aligner/hulls"

	"github.com/go-gl/mathgl/mgl64"
)

// bed holds the mounts' axes in S: fore and aft x_E = (c, 0, -s), athwart y,
// along the stud z_E = (s, 0, c).
type bed struct{ c, s float64 }

// toE are the components of a vector of S along x_E, y_E, z_E.
func (b bed) toE(v mgl64.Vec3) mgl64.Vec3 {
	return mgl64.Vec3{b.c*v[0] - b.s*v[2], v[1], b.s*v[0] + b.c*v[2]}
}

// toS is its inverse.
func (b bed) toS(v mgl64.Vec3) mgl64.Vec3 {
	return mgl64.Vec3{b.c*v[0] + b.s*v[2], v[1], -b.s*v[0] + b.c*v[2]}
}

// mount is three springs on the engine at a foot.
type mount struct {
	pFM_S    mgl64.Vec3 // arm from the face centre, as drawn
	kE       mgl64.Vec3 // N/mm along x_E, y_E, z_E
	preloadE mgl64.Vec3 // force on the engine as drawn
	solid    bool       // pushes only, along z_E
}

// seat is where a mount's nut and slide have put its seat.
type seat struct {
	liftMM, slideMM float64
	levered         bool    // slack, and its foot held by a lever
	footMM          float64 // where the lever is to hold it
	aimMM           float64 // where it aims, to land there
}

// leverNPerMM is the stiffness a lever holds a slackened foot with. What the
// lever gives way by is made up for afterwards (see lever.go), so it need not
// be stiffer than rounding allows.
const leverNPerMM = 1e6

// liftedShare of a solid foot's stiffness stays in the Newton step, not in the
// force, while the foot is off its shims: an engine left on two feet is then
// still held, and a converging step loses next to nothing. A careful step
// keeps more of it.
const (
	liftedShare        = 1e-4
	liftedShareCareful = 1e-2
)

func newMount(m hulls.Mount, b bed) mount {
	k := m.StiffnessNPerMM
	return mount{
		pFM_S: b.toS(mgl64.Vec3(m.AtMM)),
		kE:    mgl64.Vec3{k.ForeAft, k.Athwart, k.Along},
		solid: m.Kind == hulls.Solid,
	}
}

// push is the mount's force on the engine at a foot's travel in E, and the
// stiffness a step reckons with there: lifted is the share of a lifted foot's.
func (m *mount) push(travelE mgl64.Vec3, s seat, lifted float64) (forceE, kE mgl64.Vec3) {
	kE = m.kE
	sideMM := s.slideMM
	if s.levered {
		kE[1], sideMM = leverNPerMM, s.aimMM
	}
	forceE = mgl64.Vec3{
		m.preloadE[0] - kE[0]*travelE[0],
		m.preloadE[1] - kE[1]*(travelE[1]-sideMM),
		m.preloadE[2] - kE[2]*(travelE[2]-s.liftMM),
	}
	if m.solid && forceE[2] < 0 {
		forceE[2] = 0
		kE[2] *= lifted
	}
	return forceE, kE
}
