package shaftline

// This file reads a bent shaft: its movement anywhere along its length, the
// forces in its bearings, the moment and stress in it.

import "math"

// Front is the movement of the front end: y, dy/dx, z, dz/dx.
func (m *Model) Front(st *State) [4]float64 { return st.q[len(st.q)-1] }

// FrontForce is the force and moment that hold the front end, conjugate to
// its movement.
func (m *Model) FrontForce(st *State) [4]float64 { return st.p }

// Support is one bearing, the log (both lips) or one spring as the shaft
// leaves it.
type Support struct {
	ForceN      [2]float64 // [y, z], on the shaft
	ClearanceMM float64    // least room left; negative where it is pressed in
}

// Supports is how many there are: the bearings in the line's order, the log,
// the springs.
func (m *Model) Supports() int { return m.groups }

// LogGroup is the log's place among the supports.
func (m *Model) LogGroup() int { return len(m.line.Bearings) }

// ReadSupports fills out with every support.
func (m *Model) ReadSupports(st *State, out []Support) {
	for i := range out {
		out[i] = Support{ClearanceMM: math.Inf(1)}
	}
	c := 0
	for n := range m.stations {
		for ; c < m.stations[n].contactEnd; c++ {
			k := &m.contacts[c]
			s := &out[k.group]
			s.ForceN[0] -= st.f[c][0]
			s.ForceN[1] -= st.f[c][1]
			dy, dz := st.q[n][0]-k.axisMM[0], st.q[n][2]-k.axisMM[1]
			s.ClearanceMM = min(s.ClearanceMM, k.roomMM-math.Sqrt(dy*dy+dz*dz))
		}
	}
}

// Section is the shaft at one place: its movement, the bending moment
// E I d2/dx2 in each plane (N mm), and the shear dM/dx (N).
type Section struct {
	XMM              float64
	Y, DY, Z, DZ     float64 // mm and slopes
	MomentY, MomentZ float64 // bending in the x-y and the x-z plane
	ShearY, ShearZ   float64
}

// At is the shaft at x, exact between the stations.
func (m *Model) At(st *State, xMM float64) Section {
	i := 0
	for i < len(m.stations)-2 && xMM > m.stations[i+1].xMM {
		i++
	}
	return m.within(st, i, xMM-m.stations[i].xMM)
}

// within is the section a distance s forward of station i, on the length that
// begins there.
func (m *Model) within(st *State, i int, s float64) Section {
	a := &m.stations[i]
	h, ei := a.lengthMM, m.line.BendingStiffnessNMM2
	y, dy, my, vy := hermite(st.q[i][0], st.q[i][1], st.q[i+1][0], st.q[i+1][1], h, s, 0, ei)
	z, dz, mz, vz := hermite(st.q[i][2], st.q[i][3], st.q[i+1][2], st.q[i+1][3], h, s, -a.weightNPerMM, ei)
	return Section{XMM: a.xMM + s, Y: y, DY: dy, Z: z, DZ: dz,
		MomentY: ei * my, MomentZ: ei * mz, ShearY: ei * vy, ShearZ: ei * vz}
}

// hermite is a length h of beam between two end movements, under a uniform
// load w (up +): travel, slope, curvature and its derivative at s. The load
// adds the clamped-clamped sag w s^2 (h-s)^2 / 24 EI to the cubic.
func hermite(v0, p0, v1, p1, h, s, w, ei float64) (v, dv, ddv, dddv float64) {
	d := (v1 - v0) / h
	c2 := (3*d - 2*p0 - p1) / h
	c3 := (p0 + p1 - 2*d) / (h * h)
	k := w / (24 * ei)
	r := h - s
	v = v0 + s*(p0+s*(c2+s*c3)) + k*s*s*r*r
	dv = p0 + s*(2*c2+3*s*c3) + 2*k*s*r*(r-s)
	ddv = 2*c2 + 6*s*c3 + 2*k*(r*r-4*s*r+s*s)
	dddv = 6*c3 + 12*k*(s-r)
	return v, dv, ddv, dddv
}

// Bending is the largest bending moment in the shaft, in N mm, and where.
func (m *Model) Bending(st *State) (momentNMM, xMM float64) {
	for i := range len(m.stations) - 1 {
		h := m.stations[i].lengthMM
		// The moment of a length is a parabola at most: ends and peak suffice.
		a, b := m.within(st, i, 0), m.within(st, i, h)
		places := [3]float64{0, h, h / 2}
		if d := b.ShearZ - a.ShearZ; d != 0 {
			places[2] = min(max(-a.ShearZ/d*h, 0), h)
		}
		for _, s := range places {
			c := m.within(st, i, s)
			if v := math.Hypot(c.MomentY, c.MomentZ); v > momentNMM {
				momentNMM, xMM = v, c.XMM
			}
		}
	}
	return momentNMM, xMM
}

// StressMPa is the bending stress of a moment at the skin of the shaft,
// M d / 2 I. In a turning shaft it reverses with every turn.
func (l *Line) StressMPa(momentNMM float64) float64 {
	return momentNMM * 32 / (math.Pi * math.Pow(l.DiameterMM, 3))
}
