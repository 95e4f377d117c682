package kinematics

// This file holds the engine on its mounts against a rigid body on springs as
// statics has it: linear, upright springs. Answers were worked out exactly with
// fractions by least squares, z = X (X'KX)^-1 X'K u; no printed source but for
// the table on four legs.
//
// Positions in these tables count x aft from the middle and y to starboard.
// Turning that frame half a turn about the vertical makes it the shaft's.

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"aligner/hulls"
)

// foot is a mount of the tables: x aft, y to starboard, N/mm.
type foot struct{ x, y, k float64 }

// body is an engine of the tables, with its coupling face centre at faceX on
// the middle line, level with its feet and its centre of mass.
type body struct {
	feet    []foot
	weightN float64
	xg, yg  float64 // centre of mass
	faceX   float64
	solid   bool
}

// driveLine puts the body into a boat with a level shaft. Held hanging, the
// shaft leaves the engine to itself.
func (b body) driveLine(t *testing.T) *DriveLine {
	t.Helper()
	h := builtInHull(t, "Bench")
	h.ShaftAngleDeg, h.Engine.DownAngleDeg = 0, 0
	h.Engine.MassKg = b.weightN / gravityMPerS2
	h.Engine.CentreOfMassMM = [3]float64{b.faceX - b.xg, -b.yg, 0}
	h.Mounts = nil
	for i, f := range b.feet {
		m := hulls.Mount{Name: fmt.Sprint("mount ", i), AtMM: [3]float64{b.faceX - f.x, -f.y, 0}, Kind: hulls.Rubber,
			StiffnessNPerMM: hulls.Stiffness{Along: f.k, ForeAft: 1.1 * f.k, Athwart: 0.6 * f.k}}
		if b.solid {
			m.Kind = hulls.Solid
		}
		h.Mounts = append(h.Mounts, m)
	}
	return prepare(t, h)
}

// response is what a millimetre of lift does, in the tables' terms.
type response struct {
	rise, loadN []float64 // by foot
	pitch, roll float64   // dz/dx aft, dz/dy to starboard
	faceRise    float64
}

// respond takes the middle of a lift up and the same lift down, which cancels
// what turning by finite angles adds to second order: 1e-2 mm over 500 mm leaves
// parts in 1e10.
func respond(t *testing.T, b body, liftMM []float64) response {
	t.Helper()
	const share = 0.01
	d := b.driveLine(t)
	both := [2]response{}
	for i, sign := range [...]float64{share, -share} {
		s := State{Held: Hanging}
		for _, u := range liftMM {
			s.LiftMM = append(s.LiftMM, sign*u)
		}
		r := solve(t, d, s)
		for _, m := range d.Hull().Mounts {
			both[i].rise = append(both[i].rise, d.EngineTravelMM(m.AtMM)[2])
		}
		both[i].loadN = append([]float64(nil), r.MountLoadN...)
		both[i].pitch, both[i].roll = r.RotationRad[1], -r.RotationRad[0]
		both[i].faceRise = r.TranslationMM[2]
	}
	half := func(up, down float64) float64 { return (up - down) / (2 * share) }
	a, z := both[0], both[1]
	out := response{pitch: half(a.pitch, z.pitch), roll: half(a.roll, z.roll), faceRise: half(a.faceRise, z.faceRise)}
	for i := range a.rise {
		out.rise = append(out.rise, half(a.rise[i], z.rise[i]))
		out.loadN = append(out.loadN, half(a.loadN[i], z.loadN[i]))
	}
	return out
}

// riseTolerance is in mm per mm of lift.
const riseTolerance = 1e-9

func compareList(t *testing.T, what string, got, want []float64, tolerance float64) {
	t.Helper()
	if len(got) != len(want) {
		t.Fatalf("%s: %d numbers, want %d", what, len(got), len(want))
	}
	for i := range want {
		within(t, fmt.Sprintf("%s at foot %d", what, i), got[i], want[i], tolerance)
	}
}

// lifts raises the feet named by a millimetre.
func lifts(feet int, raised ...int) []float64 {
	u := make([]float64, feet)
	for _, i := range raised {
		u[i] = 1
	}
	return u
}

func rectangle(a, b, k float64) []foot {
	return []foot{{a, b, k}, {-a, b, k}, {a, -b, k}, {-a, -b, k}}
}

// TestFourEqualSprings: feet in the order same corner, beside it along x,
// beside it along y, opposite.
func TestFourEqualSprings(t *testing.T) {
	const a, b, k, beyond = 400.0, 250.0, 150.0, 230.0
	rig := body{feet: rectangle(a, b, k), weightN: 3000, faceX: a + beyond}
	for _, c := range []struct {
		name     string
		raised   []int
		rise     []float64
		loadByK  float64 // on the first foot; the others follow
		faceRise float64 // of a point beyond the pair at +a
		roll     float64
	}{
		{"one corner", []int{0}, []float64{3. / 4, 1. / 4, 1. / 4, -1. / 4}, 1. / 4, 1./2 + beyond/(4*a), 1 / (4 * b)},
		{"pair at one end", []int{0, 2}, []float64{1, 0, 1, 0}, 0, 1 + beyond/(2*a), 0},
		{"pair on one side", []int{0, 1}, []float64{1, 1, 0, 0}, 0, 1. / 2, 1 / (2 * b)},
		{"diagonal pair", []int{0, 3}, []float64{1. / 2, 1. / 2, 1. / 2, 1. / 2}, 1. / 2, 1. / 2, 0},
		{"all four", []int{0, 1, 2, 3}, []float64{1, 1, 1, 1}, 0, 1, 0},
	} {
		r := respond(t, rig, lifts(4, c.raised...))
		compareList(t, c.name+", rise", r.rise, c.rise, riseTolerance)
		f := c.loadByK * k
		compareList(t, c.name+", load", r.loadN, []float64{f, -f, -f, f}, riseTolerance*k)
		within(t, c.name+", rise of the face", r.faceRise, c.faceRise, riseTolerance)
		within(t, c.name+", roll", r.roll, c.roll, riseTolerance/b)
	}
}

// unequal is an engine on two soft mounts forward and two stiff ones aft: feet
// in the order fore port, fore starboard, aft port, aft starboard.
var unequal = body{
	feet:    []foot{{-400, -250, 100}, {-400, 250, 100}, {400, -250, 200}, {400, 250, 200}},
	weightN: 2943, xg: 60, yg: 10, faceX: 650,
}

func TestUnequalSprings(t *testing.T) {
	for i, c := range []struct {
		rise        []float64
		pitch, roll float64
		faceRise    float64
		load        []float64
	}{
		{[]float64{2. / 3, 1. / 3, 1. / 6, -1. / 6}, -1. / 1600, -1. / 1500, -5. / 32, []float64{100. / 3, -100. / 3, -100. / 3, 100. / 3}},
		{[]float64{1. / 3, 2. / 3, -1. / 6, 1. / 6}, -1. / 1600, 1. / 1500, -5. / 32, []float64{-100. / 3, 100. / 3, 100. / 3, -100. / 3}},
		{[]float64{1. / 3, -1. / 3, 5. / 6, 1. / 6}, 1. / 1600, -1. / 750, 21. / 32, []float64{-100. / 3, 100. / 3, 100. / 3, -100. / 3}},
		{[]float64{-1. / 3, 1. / 3, 1. / 6, 5. / 6}, 1. / 1600, 1. / 750, 21. / 32, []float64{100. / 3, -100. / 3, -100. / 3, 100. / 3}},
	} {
		what := fmt.Sprintf("foot %d raised", i)
		r := respond(t, unequal, lifts(4, i))
		compareList(t, what+", rise", r.rise, c.rise, riseTolerance)
		compareList(t, what+", load", r.loadN, c.load, riseTolerance*200)
		within(t, what+", pitch", r.pitch, c.pitch, riseTolerance/400)
		within(t, what+", roll", r.roll, c.roll, riseTolerance/250)
		within(t, what+", rise of the face", r.faceRise, c.faceRise, riseTolerance)
	}
	// Pairs are pure levers whatever the stiffnesses, and leave the loads alone.
	for _, c := range []struct {
		raised   []int
		faceRise float64
	}{{[]int{0, 1}, -5. / 16}, {[]int{2, 3}, 21. / 16}, {[]int{0, 1, 2, 3}, 1}} {
		r := respond(t, unequal, lifts(4, c.raised...))
		within(t, fmt.Sprint(c.raised, " raised, rise of the face"), r.faceRise, c.faceRise, riseTolerance)
		compareList(t, fmt.Sprint(c.raised, " raised, load"), r.loadN, make([]float64, 4), riseTolerance*200)
	}
}

// TestUnequalSpringsAtRest: the loads the engine was drawn with are those of
// its sag, -load/k, which is a plane, and they sum to its weight where it is.
func TestUnequalSpringsAtRest(t *testing.T) {
	r := solve(t, unequal.driveLine(t), State{Held: Hanging})
	compareList(t, "load", r.MountLoadN, []float64{605.7675, 645.0075, 806.8725, 885.3525}, 1e-8)
	var sag []float64
	var sum, x, y float64
	for i, f := range unequal.feet {
		load := r.MountLoadN[i]
		sag = append(sag, -load/f.k)
		sum, x, y = sum+load, x+load*f.x, y+load*f.y
	}
	compareList(t, "sag", sag, []float64{-6.057675, -6.450075, -4.0343625, -4.4267625}, 1e-10)
	within(t, "pitch", (sag[2]-sag[0])/800, 0.002529140625, 1e-12)
	within(t, "roll", (sag[1]-sag[0])/500, -0.0007848, 1e-12)
	within(t, "weight", sum, 2943, 1e-8)
	within(t, "centre aft", x/sum, 60, 1e-8)
	within(t, "centre to starboard", y/sum, 10, 1e-8)

	// Over the elastic centre, x = 133.33 mm, it sags level.
	level := unequal
	level.xg, level.yg = 400./3, 0
	r = solve(t, level.driveLine(t), State{Held: Hanging})
	compareList(t, "load over the elastic centre", r.MountLoadN, []float64{490.5, 490.5, 981, 981}, 1e-8)
}

// TestTrapezoid: narrow forward, wide aft, all mounts alike.
func TestTrapezoid(t *testing.T) {
	rig := body{weightN: 3000, faceX: 500,
		feet: []foot{{-500, -200, 150}, {-500, 200, 150}, {300, -300, 150}, {300, 300, 150}}}
	r := respond(t, rig, lifts(4, 0))
	compareList(t, "fore port raised, rise", r.rise, []float64{17. / 26, 9. / 26, 3. / 13, -3. / 13}, riseTolerance)
	compareList(t, "fore port raised, load", r.loadN, []float64{675. / 13, -675. / 13, -450. / 13, 450. / 13}, riseTolerance*150)
	r = respond(t, rig, lifts(4, 2))
	compareList(t, "aft port raised, rise", r.rise, []float64{3. / 13, -3. / 13, 11. / 13, 2. / 13}, riseTolerance)
}

// TestAnyFeetAreAWeightedPlane: four to six feet anywhere, of any stiffness,
// rise to the plane nearest their lifts, weighted by stiffness.
func TestAnyFeetAreAWeightedPlane(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for trial := range 50 {
		rig := body{weightN: between(random, 800, 15000), xg: between(random, -100, 100), yg: between(random, -30, 30),
			faceX: between(random, 300, 900)}
		var u []float64
		for i := range 4 + trial%3 {
			side := float64(1 - 2*(i%2))
			rig.feet = append(rig.feet, foot{between(random, -600, 600), side * between(random, 150, 400), between(random, 80, 900)})
			u = append(u, between(random, -1, 1))
		}
		r := respond(t, rig, u)
		plane := nearestPlane(rig.feet, u)
		var want, load []float64
		for i, f := range rig.feet {
			want = append(want, plane[0]+plane[1]*f.x+plane[2]*f.y)
			load = append(load, f.k*(u[i]-want[i]))
		}
		what := fmt.Sprintf("trial %d", trial)
		compareList(t, what+", rise", r.rise, want, 1e-8)
		compareList(t, what+", load", r.loadN, load, 1e-8*900)
		within(t, what+", rise of the face", r.faceRise, plane[0]+plane[1]*rig.faceX, 1e-8)
	}
}

// nearestPlane is (X'KX)^-1 X'K u by Cramer's rule.
func nearestPlane(feet []foot, u []float64) [3]float64 {
	var m [3][3]float64
	var b [3]float64
	for i, f := range feet {
		x := [3]float64{1, f.x, f.y}
		for r := range 3 {
			for c := range 3 {
				m[r][c] += f.k * x[r] * x[c]
			}
			b[r] += f.k * x[r] * u[i]
		}
	}
	det := func(m [3][3]float64) float64 {
		return m[0][0]*(m[1][1]*m[2][2]-m[1][2]*m[2][1]) -
			m[0][1]*(m[1][0]*m[2][2]-m[1][2]*m[2][0]) + m[0][2]*(m[1][0]*m[2][1]-m[1][1]*m[2][0])
	}
	var out [3]float64
	for c := range 3 {
		swapped := m
		for r := range 3 {
			swapped[r][c] = b[r]
		}
		out[c] = det(swapped) / det(m)
	}
	return out
}

// tableOnLegs is 1000 N on four equal legs at (0.3 a, -0.2 b); legs in the
// order (+,+), (-,+), (+,-), (-,-).
func tableOnLegs(k float64, solid bool) body {
	const a, b = 400.0, 250.0
	return body{feet: rectangle(a, b, k), weightN: 1000, xg: 0.3 * a, yg: -0.2 * b, faceX: 700, solid: solid}
}

// TestTableOnFourLegs: Euler's table (De pressione ponderis in planum cui
// incumbit, 1773; history and a test in a laboratory in Applied Mathematics 6
// (2015) 599-616, doi 10.4236/am.2015.63055). Equal springs share a load as
// (W/4)(1 + x/a + y/b); the split by products, which statics allows as well,
// would be 260, 140, 390, 210.
func TestTableOnFourLegs(t *testing.T) {
	for _, solid := range []bool{false, true} {
		r := solve(t, tableOnLegs(5e4, solid).driveLine(t), State{Held: Hanging})
		compareList(t, "load", r.MountLoadN, []float64{275, 125, 375, 225}, 1e-8)
	}
	// Outside |x/a| + |y/b| < 1 one leg would have to pull: rubber does, a solid
	// foot lets go and three legs carry all.
	out := tableOnLegs(5e4, false)
	out.xg, out.yg = 0.7*400, -0.5*250
	r := solve(t, out.driveLine(t), State{Held: Hanging})
	compareList(t, "load, rubber", r.MountLoadN, []float64{300, -50, 550, 200}, 1e-8)
	out.solid = true
	r = solve(t, out.driveLine(t), State{Held: Hanging})
	compareList(t, "load, solid", r.MountLoadN, []float64{250, 0, 600, 150}, 1e-8)
}

// TestSoftFoot: a foot short by s loses k s/4 with its diagonal opposite, the
// other two gain it, and it is off its shims from s = 4F/k, four times its own
// sag, on.
func TestSoftFoot(t *testing.T) {
	const k, light = 5e4, 125.0 // the lightest foot, number 1
	const off = 4 * light / k
	short := func(s float64) State { return State{Held: Hanging, LiftMM: []float64{0, -s, 0, 0}} }
	// The engine turns by some 1e-5. To second order that moves its feet sideways
	// only, they and the face centre being in one plane: nothing along a stud.
	const tolerance = 1e-6
	for _, share := range []float64{0.25, 0.5, 0.99} {
		f := share * light
		r := solve(t, tableOnLegs(k, true).driveLine(t), short(share*off))
		compareList(t, fmt.Sprintf("short by %g of 4F/k, load", share), r.MountLoadN, []float64{275 + f, 125 - f, 375 - f, 225 + f}, tolerance)
	}
	// Once it is off, the loads are those of the other three whatever s is.
	for _, share := range []float64{1.002, 1.5, 3} {
		d := tableOnLegs(k, true).driveLine(t)
		r := solve(t, d, short(share*off))
		compareList(t, fmt.Sprintf("short by %g of 4F/k, load", share), r.MountLoadN, []float64{400, 0, 250, 350}, tolerance)
		// Its seat has sunk from the foot by what is over.
		sag := light/k - (d.EngineTravelMM(d.Hull().Mounts[1].AtMM)[2] + share*off)
		if !(sag < 0) {
			t.Errorf("short by %g of 4F/k: foot still pressed by %g mm", share, sag)
		}
		// Rubber pulls instead.
		f := share * light
		r = solve(t, tableOnLegs(k, false).driveLine(t), short(share*off))
		compareList(t, "the same, bonded, load", r.MountLoadN, []float64{275 + f, 125 - f, 375 - f, 225 + f}, tolerance)
	}
	// A shim too many under a foot lightens its neighbours alike.
	shim := State{Held: Hanging, LiftMM: []float64{0.5 * off, 0, 0, 0}}
	f := 0.5 * light
	r := solve(t, tableOnLegs(k, true).driveLine(t), shim)
	compareList(t, "a shim too many, load", r.MountLoadN, []float64{275 + f, 125 - f, 375 - f, 225 + f}, tolerance)
}

// TestSoftFootUnderEqualLoads: loads W/4 each; short by nearly 4F/k the engine
// stands on a diagonal.
func TestSoftFootUnderEqualLoads(t *testing.T) {
	rig := tableOnLegs(5e4, true)
	rig.xg, rig.yg = 0, 0
	const share = 0.999
	s := share * 4 * 250 / 5e4
	r := solve(t, rig.driveLine(t), State{Held: Hanging, LiftMM: []float64{-s, 0, 0, 0}})
	compareList(t, "load", r.MountLoadN, []float64{250 * (1 - share), 250 * (1 + share), 250 * (1 + share), 250 * (1 - share)}, 1e-6)
}
