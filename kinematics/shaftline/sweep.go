package shaftline

// This file is the linear algebra: the shaft condensed forward, station by
// station, and followed back.

// End is a cut end of the shaft as felt from there: P = S q + s with
// q = (y, dy/dx, z, dz/dx) and P the force and moment that hold it, each
// conjugate to its movement. S is symmetric; its upper half is kept.
type End struct {
	s00, s01, s02, s03 float64
	s11, s12, s13      float64
	s22, s23           float64
	s33                float64
	f0, f1, f2, f3     float64
}

// Force is P at a movement q.
func (e *End) Force(q *[4]float64) [4]float64 {
	return [4]float64{
		e.s00*q[0] + e.s01*q[1] + e.s02*q[2] + e.s03*q[3] + e.f0,
		e.s01*q[0] + e.s11*q[1] + e.s12*q[2] + e.s13*q[3] + e.f1,
		e.s02*q[0] + e.s12*q[1] + e.s22*q[2] + e.s23*q[3] + e.f2,
		e.s03*q[0] + e.s13*q[1] + e.s23*q[2] + e.s33*q[3] + e.f3,
	}
}

// Stiffness is S in full.
func (e *End) Stiffness() [4][4]float64 {
	return [4][4]float64{
		{e.s00, e.s01, e.s02, e.s03},
		{e.s01, e.s11, e.s12, e.s13},
		{e.s02, e.s12, e.s22, e.s23},
		{e.s03, e.s13, e.s23, e.s33},
	}
}

// Soften puts a spring in bending in front of the end, the same in both planes: S and
// F are then those of the spring's fore side.
func (e *End) Soften(slopePerNmm float64) { e.soften(0, slopePerNmm) }

// shift carries the cut a rigid length h forward: y_aft = y - h dy/dx.
func (e *End) shift(h float64) {
	e.s11 += h * (h*e.s00 - 2*e.s01)
	e.s13 += h * (h*e.s02 - e.s03 - e.s12)
	e.s33 += h * (h*e.s22 - 2*e.s23)
	e.s01 -= h * e.s00
	e.s03 -= h * e.s02
	e.s12 -= h * e.s02
	e.s23 -= h * e.s22
	e.f1 -= h * e.f0
	e.f3 -= h * e.f2
}

// soften puts the compliances of a length of shaft in series: travel in y and
// z, slope in both planes. Each is the rank-one update
// S - c/(1 + c S_jj) S_j S_j', in which row j is divided rather than
// subtracted from, so that a stiff contact loses no digits there.
func (e *End) soften(travelPerN, slopePerNmm float64) {
	d := 1 / (1 + travelPerN*e.s00)
	g := travelPerN * d
	b, c, f := g*e.s01, g*e.s02, g*e.s03
	e.s11 -= b * e.s01
	e.s12 -= b * e.s02
	e.s13 -= b * e.s03
	e.s22 -= c * e.s02
	e.s23 -= c * e.s03
	e.s33 -= f * e.s03
	e.f1 -= b * e.f0
	e.f2 -= c * e.f0
	e.f3 -= f * e.f0
	e.s00, e.s01, e.s02, e.s03, e.f0 = d*e.s00, d*e.s01, d*e.s02, d*e.s03, d*e.f0

	d = 1 / (1 + travelPerN*e.s22)
	g = travelPerN * d
	a, b, f := g*e.s02, g*e.s12, g*e.s23
	e.s00 -= a * e.s02
	e.s01 -= a * e.s12
	e.s03 -= a * e.s23
	e.s11 -= b * e.s12
	e.s13 -= b * e.s23
	e.s33 -= f * e.s23
	e.f0 -= a * e.f2
	e.f1 -= b * e.f2
	e.f3 -= f * e.f2
	e.s02, e.s12, e.s22, e.s23, e.f2 = d*e.s02, d*e.s12, d*e.s22, d*e.s23, d*e.f2

	d = 1 / (1 + slopePerNmm*e.s11)
	g = slopePerNmm * d
	a, c, f = g*e.s01, g*e.s12, g*e.s13
	e.s00 -= a * e.s01
	e.s02 -= a * e.s12
	e.s03 -= a * e.s13
	e.s22 -= c * e.s12
	e.s23 -= c * e.s13
	e.s33 -= f * e.s13
	e.f0 -= a * e.f1
	e.f2 -= c * e.f1
	e.f3 -= f * e.f1
	e.s01, e.s11, e.s12, e.s13, e.f1 = d*e.s01, d*e.s11, d*e.s12, d*e.s13, d*e.f1

	d = 1 / (1 + slopePerNmm*e.s33)
	g = slopePerNmm * d
	a, b, c = g*e.s03, g*e.s13, g*e.s23
	e.s00 -= a * e.s03
	e.s01 -= a * e.s13
	e.s02 -= a * e.s23
	e.s11 -= b * e.s13
	e.s12 -= b * e.s23
	e.s22 -= c * e.s23
	e.f0 -= a * e.f3
	e.f1 -= b * e.f3
	e.f2 -= c * e.f3
	e.s03, e.s13, e.s23, e.s33, e.f3 = d*e.s03, d*e.s13, d*e.s23, d*e.s33, d*e.f3
}

// sweep condenses the whole shaft to its front end, with every contact
// linearised about the state's present movement. damping (N/mm) holds each
// contact back towards where it is; hold forgets clearances.
func (m *Model) sweep(st *State, damping float64, hold bool) *End {
	e := End{f2: m.aftEnd[2], f3: m.aftEnd[3]}
	last := len(m.stations) - 1
	c := 0
	for i := m.first; i <= last; i++ {
		s := &m.stations[i]
		if i > m.first {
			p := &m.stations[i-1]
			e.shift(p.halfMM)
			e.soften(p.travelPerN, p.slopePerNmm)
			e.shift(p.halfMM)
		}
		st.ends[i] = e
		e.f2 -= s.load[0]
		e.f3 -= s.load[1]
		if i == m.hook {
			e.f2 -= st.HookN
		}
		for ; c < s.contactEnd; c++ {
			y, z := st.q[i][0], st.q[i][2]
			var p push
			if hold {
				p = m.contacts[c].held(y, z)
			} else {
				p = m.contacts[c].at(y, z)
			}
			p.kyy += damping
			p.kzz += damping
			st.pushes[c] = p
			e.s00 += p.kyy
			e.s02 += p.kyz
			e.s22 += p.kzz
			e.f0 += p.fy - p.kyy*y - p.kyz*z
			e.f2 += p.fz - p.kyz*y - p.kzz*z
		}
	}
	st.end = e
	return &st.end
}

// follow finds every station's movement from the front end's, in st.qNew, and
// the contact forces that go with them in the linearised law, in st.fNew.
func (m *Model) follow(st *State, q [4]float64) {
	last := len(m.stations) - 1
	st.pNew = st.end.Force(&q)
	for i := last; ; i-- {
		st.qNew[i] = q
		if i == m.first {
			break
		}
		p := st.ends[i].Force(&q)
		q = m.stations[i-1].back(q, p)
	}
	m.overhang(st)
	c := 0
	for i := m.first; i <= last; i++ {
		for ; c < m.stations[i].contactEnd; c++ {
			p := &st.pushes[c]
			dy, dz := st.qNew[i][0]-st.q[i][0], st.qNew[i][2]-st.q[i][2]
			st.fNew[c] = [2]float64{p.fy + p.kyy*dy + p.kyz*dz, p.fz + p.kyz*dy + p.kzz*dz}
		}
	}
}

// overhang carries the movement on to the free aft end, which is loaded by its
// weight alone.
func (m *Model) overhang(st *State) {
	p := [4]float64{2: m.aftEnd[2], 3: m.aftEnd[3]}
	for i := m.first; i > 0; i-- {
		s := &m.stations[i-1]
		st.qNew[i-1] = s.back(st.qNew[i], p)
		p[3] += s.lengthMM*p[2] + s.load[1]
		p[2] += s.load[0]
	}
}

// back is the movement at the aft end of a length, from that at its fore end
// and the force held there.
func (s *station) back(q, p [4]float64) [4]float64 {
	h := s.halfMM
	my, mz := p[1]+h*p[0], p[3]+h*p[2]
	ay := q[1] - s.slopePerNmm*my
	az := q[3] - s.slopePerNmm*mz
	return [4]float64{
		q[0] - h*(q[1]+ay) - s.travelPerN*p[0], ay,
		q[2] - h*(q[3]+az) - s.travelPerN*p[2], az,
	}
}
