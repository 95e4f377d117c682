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
	levered         bool // slack, and its foot held by a lever
}

// leverNPerMM is the stiffness a lever holds a slackened foot with: enough for
// the foot to stand where it is put to a few millionths of a millimetre.
const leverNPerMM = 1e8

func newMount(m hulls.Mount, b bed) mount {
	k := m.StiffnessNPerMM
	return mount{
		pFM_S: b.toS(mgl64.Vec3(m.AtMM)),
		kE:    mgl64.Vec3{k.ForeAft, k.Athwart, k.Along},
		solid: m.Kind == hulls.Solid,
	}
}

// push is the mount's force on the engine at a foot's travel in E, and the
// stiffness it shows there.
func (m *mount) push(travelE mgl64.Vec3, s seat) (forceE, kE mgl64.Vec3) {
	kE = m.kE
	if s.levered {
		kE[1] = leverNPerMM
	}
	forceE = mgl64.Vec3{
		m.preloadE[0] - kE[0]*travelE[0],
		m.preloadE[1] - kE[1]*(travelE[1]-s.slideMM),
		m.preloadE[2] - kE[2]*(travelE[2]-s.liftMM),
	}
	if m.solid && forceE[2] < 0 {
		forceE[2], kE[2] = 0, 0
	}
	return forceE, kE
}
