package scene

// This file works out the dimensions that the solids share and a hull file
// does not state: usual proportions, from the numbers it does state.

import (
	"math"

	"aligner/hulls"
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// dims are those of one hull. Lengths in mm.
type dims struct {
	hull      *hulls.Hull
	up, ahead mgl64.Vec3    // the world's, in S
	fromE     render.Affine // E to S
	size      float64       // 1 for an engine of 400 kg; the cube root of its mass
	backward  bool          // the engine's own front faces aft (V-drive)

	faceRadius   float64
	flangeThick  float64 // of the engine-side half
	boxEnd       float64 // x_E where the gearbox ends and the engine begins
	engineLength float64
	crankZ       float64 // height of the crank over the face centre, in E
	fromG        render.Affine
	character    string

	mounts       []mountDims
	mountSpacing float64 // least distance between two
	bottom       bottom
}

func newDims(h *hulls.Hull) *dims {
	a := h.ShaftAngleDeg * math.Pi / 180
	d := h.Engine.DownAngleDeg * math.Pi / 180
	sin, cos := math.Sincos(d)
	m := &dims{
		hull: h,
		up:   mgl64.Vec3{math.Sin(a), 0, math.Cos(a)}, ahead: mgl64.Vec3{math.Cos(a), 0, -math.Sin(a)},
		fromE:      render.Affine{cos, 0, sin, 0, 0, 1, 0, 0, -sin, 0, cos, 0},
		size:       math.Cbrt(h.Engine.MassKg / 400),
		backward:   h.Layout == hulls.VDrive,
		faceRadius: h.Coupling.OuterDiameterMM / 2,
		character:  character(h),
	}
	m.flangeThick = 0.16 * h.Coupling.OuterDiameterMM
	m.placeEngine()
	for i := range h.Mounts {
		m.mounts = append(m.mounts, newMountDims(&h.Mounts[i], m))
	}
	m.mountSpacing = math.Inf(1)
	for i := range h.Mounts {
		for j := range i {
			m.mountSpacing = min(m.mountSpacing, mgl64.Vec3(h.Mounts[i].AtMM).Sub(mgl64.Vec3(h.Mounts[j].AtMM)).Len())
		}
	}
	m.bottom = newBottom(m)
	return m
}

// The engines that can be drawn.
const (
	petrolV        = "petrol-v"
	inLineDiesel   = "in-line-diesel"
	smallAuxiliary = "small-auxiliary"
)

// character is what the hull file asks for, or what the mass suggests.
func character(h *hulls.Hull) string {
	switch {
	case h.Look.Engine != "":
		return h.Look.Engine
	case h.Engine.MassKg < 200:
		return smallAuxiliary
	case h.Layout == hulls.VDrive, h.Engine.MassKg >= 380 && h.Engine.MassKg < 550 && h.ShaftAngleDeg > 9:
		return petrolV
	}
	return inLineDiesel
}

// placeEngine lays the engine about its centre of mass, its far end beyond the
// farthest mount. Frame G is the engine's own: x along the crank from the
// flywheel to the engine's front, y to its left seen from the flywheel, z up
// from the crank.
func (m *dims) placeEngine() {
	h := m.hull
	x, z := h.Engine.CentreOfMassMM[0], h.Engine.CentreOfMassMM[2]
	low, high := math.Inf(1), math.Inf(-1)
	for _, mount := range h.Mounts {
		low, high = min(low, mount.AtMM[0]), max(high, mount.AtMM[0])
	}
	if m.backward {
		m.boxEnd = m.flangeThick + 80*m.size
		end := min(2*x-150*m.size, low-60)
		m.engineLength = max(m.boxEnd-end, 250)
		m.crankZ = max(z-90*m.size, m.panDepth()+m.faceRadius+25)
		m.fromG = m.fromE.Mul(render.Affine{-1, 0, 0, m.boxEnd, 0, -1, 0, 0, 0, 0, 1, m.crankZ})
		return
	}
	end := max(2*x, high+70*m.size)
	m.boxEnd = min(0.34*end, 380*m.size)
	m.engineLength = max(end-m.boxEnd, 250)
	m.crankZ = max(z-90*m.size, 0.35*m.faceRadius)
	m.fromG = m.fromE.Mul(render.Affine{1, 0, 0, m.boxEnd, 0, 1, 0, 0, 0, 0, 1, m.crankZ})
}

// panDepth is how far the oil pan reaches below the crank.
func (m *dims) panDepth() float64 {
	if m.backward {
		return 125 * m.size
	}
	return 185 * m.size
}

// bodyHalfWidth is how far engine or gearbox reach to either side at x_E, about
// the height of the crank.
func (m *dims) bodyHalfWidth(xE float64) float64 {
	inBox := xE < m.boxEnd
	if m.backward {
		inBox = xE > m.boxEnd
	}
	if inBox {
		return 105 * m.size
	}
	return 125 * m.size
}

// plantLength is the length of engine and gearbox together.
func (m *dims) plantLength() float64 { return m.engineLength + m.boxEnd }
