package kinematics

// This file holds the laws of the package comment against every built-in hull,
// every way to hold the shaft and a handful of states.

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"aligner/assets"
	"aligner/hulls"

	"aligner/hulls/visit/builtin"
	"github.com/go-gl/mathgl/mgl64"
)

// builtIn is every hull that comes with the program.
func builtIn(t testing.TB) []hulls.Hull {
	var all []hulls.Hull
	for _, name := range assets.HullNames() {
		all = append(all, builtInHull(t, name))
	}
	return all
}

func builtInHull(t testing.TB, name string) hulls.Hull {
	t.Helper()
	return builtin.Hull(t, name)
}

func prepare(t testing.TB, h hulls.Hull) *DriveLine {
	t.Helper()
	d, err := Prepare(h)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func solve(t testing.TB, d *DriveLine, s State) Result {
	t.Helper()
	var r Result
	if err := d.Solve(&s, &r); err != nil {
		t.Fatal(err)
	}
	return r
}

// eachCase runs a law on every hull, hold and a few random states of it.
func eachCase(t *testing.T, law func(t *testing.T, h hulls.Hull, s State)) {
	for n, h := range builtIn(t) {
		for _, held := range HeldWays {
			for i := range 6 {
				r := rand.New(rand.NewPCG(uint64(100*n+i), 11))
				s := randomState(r, &h)
				s.Held, s.LeverOn, s.PullN = held, false, 0
				t.Run(fmt.Sprintf("%s/%s/%d", h.Name, held, i), func(t *testing.T) { law(t, h, s) })
			}
		}
	}
}

// within fails where a and b differ by more than tol.
func within(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: %.12g, want %.12g within %.1e", what, got, want, tol)
	}
}

// mirrored swaps port and starboard.
func mirrored(h hulls.Hull, s State) (hulls.Hull, State) {
	m := h
	m.Engine.CentreOfMassMM[1] *= -1
	m.Mounts = append([]hulls.Mount(nil), h.Mounts...)
	for i := range m.Mounts {
		m.Mounts[i].AtMM[1] *= -1
	}
	m.Bearings = append([]hulls.Bearing(nil), h.Bearings...)
	for i := range m.Bearings {
		m.Bearings[i].OffsetMM[0] *= -1
	}
	m.Log.OffsetMM[0] *= -1
	if h.StuffingBox != nil {
		box := *h.StuffingBox
		box.OffsetMM[0] *= -1
		m.StuffingBox = &box
	}
	s.SlideMM = append([]float64(nil), s.SlideMM...)
	for i := range s.SlideMM {
		s.SlideMM[i] *= -1
	}
	s.TorqueNMM *= -1
	s.BlockMM[0] *= -1
	for _, a := range []*float64{&s.RunOut.ShaftLowDeg, &s.RunOut.ShaftTurnDeg, &s.RunOut.FlangeLowDeg, &s.RunOut.FlangeTurnDeg} {
		*a *= -1
	}
	return m, s
}

func TestMirroringPortAndStarboardMirrorsTheAnswer(t *testing.T) {
	eachCase(t, func(t *testing.T, h hulls.Hull, s State) {
		mh, ms := mirrored(h, s)
		a, b := solve(t, prepare(t, h), s), solve(t, prepare(t, mh), ms)
		tol := 1e-9
		if s.Held == Hanging {
			tol = 1e-4 // sideways a hanging shaft is nearly free
		}
		within(t, "cos", b.Gap.CosMM, a.Gap.CosMM, 1e-9)
		within(t, "sin", b.Gap.SinMM, -a.Gap.SinMM, 1e-9)
		within(t, "front y", b.FrontEndMM[0], -a.FrontEndMM[0], tol)
		within(t, "front z", b.FrontEndMM[1], a.FrontEndMM[1], tol)
		for i, sign := range [3]float64{1, -1, 1} {
			within(t, "travel", b.TranslationMM[i], sign*a.TranslationMM[i], 1e-9)
			within(t, "turn", b.RotationRad[i], -sign*a.RotationRad[i], 1e-11)
		}
		for i := range a.MountLoadN {
			within(t, "load", b.MountLoadN[i], a.MountLoadN[i], 1e-5)
		}
	})
}

// rodrigues is the rotation matrix of a rotation vector, by Rodrigues' formula
// and so independent of the quaternions the solver uses.
func rodrigues(v [3]float64) mgl64.Mat3 {
	a := mgl64.Vec3(v).Len()
	if a == 0 {
		return mgl64.Ident3()
	}
	k := mgl64.Vec3(v).Mul(1 / a)
	x := mgl64.Mat3FromRows(mgl64.Vec3{0, -k[2], k[1]}, mgl64.Vec3{k[2], 0, -k[0]}, mgl64.Vec3{-k[1], k[0], 0})
	return mgl64.Ident3().Add(x.Mul(math.Sin(a))).Add(x.Mul3(x).Mul(1 - math.Cos(a)))
}

// Mounts, weight, outside wrench and the shaft's end balance on the engine.
func TestLoadsBalanceWeightAndMoments(t *testing.T) {
	eachCase(t, func(t *testing.T, h hulls.Hull, s State) {
		d := prepare(t, h)
		r := solve(t, d, s)
		rot := rodrigues(r.RotationRad)
		weight := h.Engine.MassKg * 9.80665
		up, level := math.Sincos(h.ShaftAngleDeg * math.Pi / 180)
		w := mgl64.Vec3{-weight * up, 0, -weight * level}
		force := w.Add(mgl64.Vec3{s.ThrustN, 0, 0})
		moment := rot.Mul3x1(d.engine.pFC_S).Cross(w).Add(mgl64.Vec3{s.TorqueNMM, 0, 0})
		if s.Held == Seated || s.Held == Bolted {
			force = force.Sub(mgl64.Vec3{0, r.EndForceN[0], r.EndForceN[1]})
		}
		for i, m := range d.engine.mounts {
			arm := rot.Mul3x1(m.pFM_S)
			travel := arm.Sub(m.pFM_S).Add(mgl64.Vec3(r.TranslationMM))
			fE, _ := m.push(d.engine.bed.toE(travel), seat{liftMM: s.LiftMM[i], slideMM: s.SlideMM[i]}, 0)
			within(t, "load "+h.Mounts[i].Name, r.MountLoadN[i], fE[2], 1e-4)
			f := d.engine.bed.toS(fE)
			force, moment = force.Add(f), moment.Add(arm.Cross(f))
		}
		if s.Held == Bolted { // the moment in the coupling acts too
			p := d.last.model.FrontForce(d.last.state)
			c := d.face.carry()
			for i := range 3 {
				moment[i] -= c[1][3+i]*p[1] + c[3][3+i]*p[3]
			}
		}
		for i := range 3 {
			within(t, "force", force[i], 0, 1e-4)
			within(t, "moment", moment[i], 0, 0.05)
		}
	})
}

// The force seen at a nut is the energy's derivative by its lift, so lifting
// nut i loads mount j as lifting nut j loads mount i.
func TestResponseIsReciprocal(t *testing.T) {
	eachCase(t, func(t *testing.T, h hulls.Hull, s State) {
		if h.Mounts[0].Kind == hulls.Solid {
			s.LiftMM = make([]float64, len(h.Mounts)) // all feet down
			s.ThrustN, s.TorqueNMM = 0, 0
		}
		d := prepare(t, h)
		const step = 1e-5
		slope := func(i, j int) float64 {
			at := func(u float64) float64 {
				s.LiftMM[i] += u
				defer func() { s.LiftMM[i] -= u }()
				return solve(t, d, s).MountLoadN[j]
			}
			return (at(step) - at(-step)) / (2 * step)
		}
		k := h.Mounts[0].StiffnessNPerMM.Along
		within(t, "dF3/du0 - dF0/du3", slope(0, 3), slope(3, 0), 2e-4*k)
		within(t, "dF1/du2 - dF2/du1", slope(2, 1), slope(1, 2), 2e-4*k)
	})
}

func TestAnswerDoesNotDependOnTheStart(t *testing.T) {
	eachCase(t, func(t *testing.T, h hulls.Hull, s State) {
		cold := solve(t, prepare(t, h), s)
		d := prepare(t, h)
		for i := range uint64(5) {
			other := randomState(rand.New(rand.NewPCG(i, 13)), &h)
			other.LeverOn = false
			other.Held = s.Held
			solve(t, d, other)
		}
		warm := solve(t, d, s)
		tol, sideways := 1e-9, 1e-9
		if s.Held == Hanging {
			sideways = 1e-4
		}
		within(t, "cos", warm.Gap.CosMM, cold.Gap.CosMM, tol)
		within(t, "sin", warm.Gap.SinMM, cold.Gap.SinMM, tol)
		within(t, "front y", warm.FrontEndMM[0], cold.FrontEndMM[0], sideways)
		within(t, "front z", warm.FrontEndMM[1], cold.FrontEndMM[1], sideways)
		for i := range 3 {
			within(t, "travel", warm.TranslationMM[i], cold.TranslationMM[i], tol)
		}
	})
}

// Lowering one pair slowly through every contact there is moves the seated gap
// without a jump.
func TestSeatedGapIsContinuousThroughContact(t *testing.T) {
	for _, h := range builtIn(t) {
		d := prepare(t, h)
		s := State{Held: Seated, LiftMM: make([]float64, len(h.Mounts))}
		const step = 1e-3
		radius := h.Coupling.OuterDiameterMM / 2
		before := math.NaN()
		for u := -12.0; u <= 12; u += step {
			for i := range s.LiftMM {
				if h.Mounts[i].AtMM[0] > h.Engine.CentreOfMassMM[0] {
					s.LiftMM[i] = u
				}
			}
			a := solve(t, d, s).Gap.CosMM
			// No layout here turns a lift into more than a tenth of a radius a mm.
			if math.Abs(a-before) > step*radius/10 {
				t.Fatalf("%s: gap jumps by %.4g mm at a lift of %.4f mm", h.Name, a-before, u)
			}
			before = a
		}
	}
}

// Zero seated gap means zero bending moment in the bolted coupling.
func TestBoltedMomentVanishesWhereTheSeatedGapIsNil(t *testing.T) {
	for _, h := range builtIn(t) {
		d := prepare(t, h)
		s := State{Held: Seated, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
		set := func(lift, slide float64) {
			for i, m := range h.Mounts {
				if m.AtMM[0] > h.Engine.CentreOfMassMM[0] {
					s.LiftMM[i], s.SlideMM[i] = lift, slide
				}
			}
		}
		set(1, 1) // first a crooked one, for the size of things
		s.Held = Bolted
		crooked := solve(t, d, s).CouplingMomentNMM
		s.Held = Seated
		lift, slide := 0.0, 0.0
		const step = 0.01
		for range 20 {
			set(lift, slide)
			g := solve(t, d, s).Gap
			set(lift+step, slide)
			gl := solve(t, d, s).Gap
			set(lift, slide+step)
			gs := solve(t, d, s).Gap
			a, b := (gl.CosMM-g.CosMM)/step, (gs.CosMM-g.CosMM)/step
			c, e := (gl.SinMM-g.SinMM)/step, (gs.SinMM-g.SinMM)/step
			det := a*e - b*c
			lift -= (e*g.CosMM - b*g.SinMM) / det
			slide -= (a*g.SinMM - c*g.CosMM) / det
		}
		set(lift, slide)
		within(t, h.Name+" seated spread", solve(t, d, s).Gap.SpreadMM(), 0, 1e-9)
		s.Held = Bolted
		// The two are laid out with 17 and 65 stations a bearing; what is left is
		// their difference.
		within(t, h.Name+" bolted moment", solve(t, d, s).CouplingMomentNMM, 0, 5e-3*crooked)
	}
}
