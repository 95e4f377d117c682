package shaftline

// This file holds the package's laws against random shafts: contact, balance,
// reciprocity, mirror, independence of the start, and that stations may lie as
// close as they like.

import (
	"math"
	"math/rand/v2"
	"testing"
)

func between(r *rand.Rand, lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }

// randomLine is a shaft in one to three bearings, some out of line, with a log
// that may overlap one of them.
func randomLine(r *rand.Rand) Line {
	d := between(r, 15, 80)
	l := Line{DiameterMM: d, BendingStiffnessNMM2: CircularBendingStiffness(2e5, d), WeightNPerMM: 6e-5 * d * d}
	l.AftWeightNPerMM, l.AftFromMM = 0.87*l.WeightNPerMM, -between(r, 5, 30)*d
	x := 0.0
	for range 1 + r.IntN(3) {
		x -= between(r, 15, 50) * d
		l.Bearings = append(l.Bearings, Bearing{AtMM: x, LengthMM: between(r, 1, 5) * d,
			StiffnessNPerMM: math.Exp(between(r, 6, 12)), ClearanceMM: between(r, 0, 0.6),
			OffsetMM: [2]float64{between(r, -1, 1), between(r, -1, 1)}})
	}
	log := x * between(r, 0.2, 1)
	for _, at := range []float64{log, log - between(r, 0, 5)*d} {
		l.Lips = append(l.Lips, Lip{AtMM: max(at, x-2*d), StiffnessNPerMM: 1e5, ClearanceMM: between(r, 0.5, 20)})
	}
	if r.IntN(2) == 0 {
		l.Springs = append(l.Springs, Spring{AtMM: log / 2, StiffnessNPerMM: between(r, 1, 50)})
	}
	prop := x - between(r, 3, 9)*d
	l.LengthMM = -prop + d
	l.HookAtMM = -d
	l.Points = []Point{{AtMM: -d, WeightN: between(r, 0, 100)}, {AtMM: prop, WeightN: between(r, 0, 400)}}
	return l
}

// eachShaft bends random shafts by each front and hands them over.
func eachShaft(t *testing.T, n int, law func(t *testing.T, r *rand.Rand, m *Model, st *State, front Front)) {
	for i := range n {
		r := rand.New(rand.NewPCG(uint64(i), 3))
		m, err := Prepare(randomLine(r), Settings{})
		if err != nil {
			t.Fatal(err)
		}
		y, z := between(r, -4, 4), between(r, -4, 4)
		for _, front := range []Front{Free{}, Pinned{AtMM: [2]float64{y, z}}, Clamped{Q: [4]float64{y, y / 500, z, z / 700}}} {
			st := m.NewState()
			if err := m.Bend(st, front, Limits{}).Err(); err != nil {
				t.Fatalf("shaft %d, %T: %v", i, front, err)
			}
			law(t, r, m, st, front)
		}
	}
}

func TestContactForceIsTheLawsAtItsOwnTravel(t *testing.T) {
	eachShaft(t, 200, func(t *testing.T, _ *rand.Rand, m *Model, st *State, front Front) {
		c := 0
		for i := range m.stations {
			for ; c < m.stations[i].contactEnd; c++ {
				k := m.contacts[c]
				dy, dz := st.q[i][0]-k.axisMM[0], st.q[i][2]-k.axisMM[1]
				r := math.Hypot(dy, dz)
				want := k.kNPerMM * max(0, r-k.roomMM)
				fy, fz := 0.0, 0.0
				if r > 0 {
					fy, fz = want*dy/r, want*dz/r
				}
				if math.Abs(st.f[c][0]-fy) > 1e-6 || math.Abs(st.f[c][1]-fz) > 1e-6 {
					t.Fatalf("%T: contact at %.1f mm pushes %.9g, its law says %.9g %.9g", front, k.xMM, st.f[c], fy, fz)
				}
			}
		}
	})
}

// Reactions and the front's force balance weight, forces and moments about
// x = 0 in both planes.
func TestReactionsBalanceWeight(t *testing.T) {
	eachShaft(t, 200, func(t *testing.T, _ *rand.Rand, m *Model, st *State, front Front) {
		p := m.FrontForce(st)
		force := [2]float64{p[0], p[2]}
		moment := [2]float64{p[1], p[3]}
		size, arm := 1.0, m.line.LengthMM
		c := 0
		for i := range m.stations {
			s := m.stations[i]
			force[1] += s.load[0]
			moment[1] += s.load[0]*s.xMM + s.load[1]
			for ; c < s.contactEnd; c++ {
				for j := range 2 {
					force[j] -= st.f[c][j]
					moment[j] -= st.f[c][j] * s.xMM
					size += math.Abs(st.f[c][j])
				}
			}
		}
		for j := range 2 {
			if math.Abs(force[j]) > 1e-8*size || math.Abs(moment[j]) > 1e-8*size*arm {
				t.Fatalf("%T: %.3g N and %.3g N mm out of balance on forces of %.0f N", front, force[j], moment[j], size)
			}
		}
	})
}

// At a fixed set of contacts a newton at the hook lifts the face by what a
// newton at the face lifts the hook.
func TestResponseIsReciprocal(t *testing.T) {
	for i := range 100 {
		r := rand.New(rand.NewPCG(uint64(i), 5))
		m, err := Prepare(randomLine(r), Settings{})
		if err != nil {
			t.Fatal(err)
		}
		st := m.NewState()
		if err := m.Bend(st, Free{}, Limits{}).Err(); err != nil {
			t.Fatal(err)
		}
		// Linear about the bent state: freeze the contacts as they stand.
		base := st.q[m.hook][2]
		face := m.Front(st)[2]
		st.HookN = 1
		end := *m.sweep(st, 0, false)
		q, ok := end.SolveFree()
		if !ok {
			t.Fatalf("shaft %d: nothing holds it", i)
		}
		faceByHook := q[2] - face
		st.HookN = 0
		end = *m.sweep(st, 0, false)
		end.f2-- // a newton up at the face
		q, _ = end.SolveFree()
		m.follow(st, q)
		hookByFace := st.qNew[m.hook][2] - base
		if math.Abs(faceByHook-hookByFace) > 1e-7*math.Abs(faceByHook) {
			t.Errorf("shaft %d: face rises %.9g by the hook, hook %.9g by the face", i, faceByHook, hookByFace)
		}
	}
}

func TestMirroringYMirrorsTheShaft(t *testing.T) {
	eachShaft(t, 100, func(t *testing.T, _ *rand.Rand, m *Model, st *State, front Front) {
		l := m.line
		l.Bearings = append([]Bearing(nil), l.Bearings...)
		for i := range l.Bearings {
			l.Bearings[i].OffsetMM[0] *= -1
		}
		switch f := front.(type) {
		case Pinned:
			f.AtMM[0] *= -1
			front = f
		case Clamped:
			f.Q[0], f.Q[1] = -f.Q[0], -f.Q[1]
			front = f
		}
		mm, err := Prepare(l, Settings{})
		if err != nil {
			t.Fatal(err)
		}
		ms := mm.NewState()
		if err := mm.Bend(ms, front, Limits{}).Err(); err != nil {
			t.Fatal(err)
		}
		a, b := m.Front(st), mm.Front(ms)
		for j, sign := range [4]float64{-1, -1, 1, 1} {
			tol := 1e-9
			if _, free := front.(Free); free {
				tol = 1e-4 // nearly flat sideways
			}
			if math.Abs(b[j]-sign*a[j]) > tol {
				t.Fatalf("%T: front %.9g mirrors to %.9g", front, a, b)
			}
		}
	})
}

// A station a nanometre beside another changes nothing: lengths that short
// condense without loss.
func TestStationsMayLieTogether(t *testing.T) {
	base := Line{LengthMM: 1700, DiameterMM: 25, BendingStiffnessNMM2: CircularBendingStiffness(2e5, 25),
		WeightNPerMM: 0.04, AftWeightNPerMM: 0.04, AftFromMM: -2000,
		Bearings: []Bearing{{AtMM: -1400, LengthMM: 100, StiffnessNPerMM: 6000, ClearanceMM: 0.2}},
		Points:   []Point{{AtMM: -1600, WeightN: 40}, {AtMM: -30, WeightN: 30}}}
	front := func(x float64) [4]float64 {
		l := base
		l.Lips = []Lip{{AtMM: -1400 + x, StiffnessNPerMM: 1e5, ClearanceMM: 0.3}}
		m, err := Prepare(l, Settings{})
		if err != nil {
			t.Fatal(err)
		}
		st := m.NewState()
		if err := m.Bend(st, Pinned{AtMM: [2]float64{1, 6}}, Limits{}).Err(); err != nil {
			t.Fatal(err)
		}
		return m.Front(st)
	}
	on := front(0)
	for _, x := range []float64{1e-8, 1e-7, 1e-6, 1e-4} {
		beside := front(x)
		for j := range on {
			if math.Abs(on[j]-beside[j]) > 1e-9+x*1e-2 {
				t.Errorf("a lip %g mm beside a station: front %.12g, on it %.12g", x, beside, on)
			}
		}
	}
}
