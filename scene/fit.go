package scene

// This file fits views: the whole drive line, the coupling, a bearing, a mount.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Names of the fitted views. A mount's or bearing's own name is one too.
const (
	ViewWhole    = "whole"
	ViewEngine   = "engine"
	ViewCoupling = "coupling"
	ViewStrut    = "strut" // the aftmost bearing and the propeller
)

// Views of the whole from one side; the eye is named by where it stands.
const (
	ViewFromPort      = "from port"
	ViewFromStarboard = "from starboard"
	ViewFromAft       = "from aft"
	ViewFromAhead     = "from ahead"
	ViewFromAbove     = "from above"
)

// sides are the directions of those views.
var sides = []struct {
	name string
	view View
}{
	{ViewFromPort, View{YawRad: 90 * degree, PitchRad: 6 * degree}},
	{ViewFromStarboard, View{YawRad: -90 * degree, PitchRad: 10 * degree}},
	{ViewFromAft, View{PitchRad: 10 * degree}},
	{ViewFromAhead, View{YawRad: 180 * degree, PitchRad: 14 * degree}},
	{ViewFromAbove, View{YawRad: 90 * degree, PitchRad: mostPitchRad}},
}

const degree = math.Pi / 180

// mountWord may stand before a mount's name.
const mountWord = "mount "

// FitView is a view that shows what the name says, as last posed, in a picture
// of the given aspect (width over height). ok is false for a name unknown.
func (m *Model) FitView(name string, aspect float64) (v View, ok bool) {
	points, v := m.focus(name)
	if points == nil {
		return v, false
	}
	return m.fit(v, points, aspect, 0.86), true
}

// ViewNames are the names FitView knows for this model.
func (m *Model) ViewNames() []string {
	names := []string{ViewWhole}
	for i := range sides {
		names = append(names, sides[i].name)
	}
	names = append(names, ViewEngine, ViewCoupling, ViewStrut)
	for i := range m.hull.Mounts {
		names = append(names, m.hull.Mounts[i].Name)
	}
	for i := range m.hull.Bearings {
		if n := m.hull.Bearings[i].Name; n != ViewStrut {
			names = append(names, n)
		}
	}
	return names
}

// focus is what a view has to show, and the direction it looks from.
func (m *Model) focus(name string) ([]mgl64.Vec3, View) {
	for i := range sides {
		if sides[i].name == name {
			return m.whole(), sides[i].view
		}
	}
	switch name {
	case ViewTape:
		return m.tapeFocus()
	case ViewWhole:
		return m.whole(), View{YawRad: 62 * degree, PitchRad: 20 * degree}
	case ViewEngine:
		keep := func(p *piece) bool {
			return p.kind == EngineKind || p.kind == GearboxKind || p.kind == MountKind || p.kind == NutKind
		}
		return m.corners(keep), View{YawRad: 58 * degree, PitchRad: 20 * degree}
	case ViewCoupling:
		return m.couplingFocus(), View{YawRad: 74 * degree, PitchRad: 16 * degree}
	case ViewStrut:
		aft := -1
		for i := range m.hull.Bearings {
			if aft < 0 || m.hull.Bearings[i].AtMM < m.hull.Bearings[aft].AtMM {
				aft = i
			}
		}
		if aft >= 0 {
			return m.bearingFocus(aft)
		}
	}
	for i := range m.hull.Mounts {
		if own := m.hull.Mounts[i].Name; own == name || mountWord+own == name {
			return m.mountFocus(i)
		}
	}
	for i := range m.hull.Bearings {
		if m.hull.Bearings[i].Name == name {
			return m.bearingFocus(i)
		}
	}
	return nil, View{}
}

// whole is everything, with the marks of the directions.
func (m *Model) whole() []mgl64.Vec3 {
	return append(m.corners(func(p *piece) bool { return p.when == always }), m.marks.compass[:]...)
}

// couplingFocus is round both halves, from a little before the engine side to
// behind the shaft half's hub.
func (m *Model) couplingFocus() []mgl64.Vec3 {
	r := m.dims.faceRadius
	engine, shaft := m.posed.engineOrRest(), m.posed.halfOrRest()
	var out []mgl64.Vec3
	for i := range 12 {
		sin, cos := math.Sincos(float64(i) * 30 * degree)
		round := func(x, wide float64) mgl64.Vec3 { return mgl64.Vec3{x, wide * r * sin, wide * r * cos} }
		out = append(out, engine.Apply(round(0.9*r, 1.15)), engine.Apply(round(0, 1.15)),
			shaft.Apply(round(0, 1.15)), shaft.Apply(round(-m.hull.Coupling.ShaftHalfLengthMM-0.8*r, 0.8)))
	}
	return out
}

func (m *Model) bearingFocus(i int) ([]mgl64.Vec3, View) {
	b := &m.hull.Bearings[i]
	n := m.posed.exaggeration()
	r := m.hull.Shaft.DiameterMM*1.6 + n*b.DiametralClearanceMM/2
	c := mgl64.Vec3{b.AtMM, n * b.OffsetMM[0], n * b.OffsetMM[1]}
	half := b.LengthMM/2 + m.hull.Shaft.DiameterMM
	points := append(box(c.Add(mgl64.Vec3{half}), r), box(c.Sub(mgl64.Vec3{half}), r)...)
	return points, View{YawRad: 98 * degree, PitchRad: 12 * degree}
}

func (m *Model) mountFocus(i int) ([]mgl64.Vec3, View) {
	d := m.dims
	t := &d.mounts[i]
	at := m.posed.engineOrRest().Apply(d.fromE.Apply(mgl64.Vec3(m.hull.Mounts[i].AtMM)))
	low := t.bedS
	yaw := 60 * degree
	if m.hull.Mounts[i].AtMM[1] < 0 {
		yaw = -yaw
	}
	if m.hull.Mounts[i].AtMM[0] > m.hull.Engine.CentreOfMassMM[0] {
		yaw = math.Copysign(math.Pi, yaw) - yaw
	}
	grip := m.posed.engineOrRest().Apply(t.gripS).Add(d.alongStud().Mul(2.2 * t.gripHalf))
	return append(append(box(at, 2*t.stud), box(low, 4.6*t.stud)...), grip), View{YawRad: yaw, PitchRad: 14 * degree}
}

// box is the corners of a cube about a point.
func box(c mgl64.Vec3, half float64) []mgl64.Vec3 {
	out := make([]mgl64.Vec3, 0, 8)
	for i := range 8 {
		d := mgl64.Vec3{-half, -half, -half}
		for k := range 3 {
			if i>>k&1 == 1 {
				d[k] = half
			}
		}
		out = append(out, c.Add(d))
	}
	return out
}

// corners are those of the boxes round the pieces that keep says.
func (m *Model) corners(keep func(*piece) bool) []mgl64.Vec3 {
	var out []mgl64.Vec3
	for i := range m.pieces {
		p := &m.pieces[i]
		if !keep(p) {
			continue
		}
		low, high := p.low, p.high
		for k := range 8 {
			c := low
			for j := range 3 {
				if k>>j&1 == 1 {
					c[j] = high[j]
				}
			}
			out = append(out, c)
		}
	}
	return out
}

// fit finds target and distance at which points fill the picture to a share,
// looking from the view's direction. With a, b a point's place to the right and
// up, d towards the eye, and the eye at (p, q, e): a - p and p - a are at most
// (e - d) tan of half the opening, which bounds p and e from both sides.
func (m *Model) fit(v View, points []mgl64.Vec3, aspect, share float64) View {
	toEye := v.toEye(m.dims.up, m.dims.ahead)
	right := m.dims.up.Cross(toEye).Normalize()
	over := toEye.Cross(right)
	tanV := math.Tan(FieldOfViewDeg*math.Pi/360) * share
	tanH := tanV * aspect
	inf := math.Inf(-1)
	m1, m2, m3, m4 := inf, inf, inf, inf
	var middle float64
	for _, p := range points {
		a, b, d := p.Dot(right), p.Dot(over), p.Dot(toEye)
		m1, m2 = max(m1, a+tanH*d), max(m2, -a+tanH*d)
		m3, m4 = max(m3, b+tanV*d), max(m4, -b+tanV*d)
		middle += d / float64(len(points))
	}
	e := max((m1+m2)/(2*tanH), (m3+m4)/(2*tanV))
	v.Target = right.Mul((m1 - m2) / 2).Add(over.Mul((m3 - m4) / 2)).Add(toEye.Mul(middle))
	v.DistanceMM = min(max(e-middle, leastDistanceMM), mostDistanceMM)
	return v
}
