package scene

// These tests hold what is drawn to the law X + N u(X).

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// solved is a hull's model with the answer to a state.
type solved struct {
	m *Model
	d *kinematics.DriveLine
	s kinematics.State
	r kinematics.Result
	v Movement
}

// move solves a hull moved about: lifts and slides of every mount.
func move(t testing.TB, name string, held kinematics.Held, change func(*kinematics.State)) *solved {
	t.Helper()
	h := builtIn(t, name)
	d, err := kinematics.Prepare(h)
	if err != nil {
		t.Fatal(err)
	}
	q := &solved{m: NewModel(h), d: d}
	q.s = kinematics.State{Held: held, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	for i := range h.Mounts {
		q.s.LiftMM[i] = 0.3 * math.Sin(float64(3*i+1))
		q.s.SlideMM[i] = 0.2 * math.Cos(float64(i))
		if h.Mounts[i].Kind == hulls.Solid {
			q.s.LiftMM[i] *= 0.1
		}
	}
	if change != nil {
		change(&q.s)
	}
	if err := d.Solve(&q.s, &q.r); err != nil {
		t.Fatal(err)
	}
	q.m.Read(d, &q.s, &q.r, &q.v)
	return q
}

// rimPoints finds the vertices of a posed coupling half that are drawn for its
// face's rim, the one at clock angle i / solid.RimPoints of a turn at place i.
func (q *solved) rimPoints(t *testing.T, sc *render.Scene, half int) [solid.RimPoints]mgl64.Vec3 {
	t.Helper()
	r := q.m.dims.faceRadius
	var out [solid.RimPoints]mgl64.Vec3
	found := 0
	for i := range q.m.pieces {
		p := &q.m.pieces[i]
		if p.kind != CouplingKind || p.index != half || p.when != always {
			continue
		}
		for _, x := range p.mesh.Positions {
			at := int(math.Round(math.Atan2(-float64(x[1]), float64(x[2])) / clockStep))
			at = (at + solid.RimPoints) % solid.RimPoints
			sin, cos := math.Sincos(float64(at) * clockStep)
			if double(x).Sub(mgl64.Vec3{0, -r * sin, r * cos}).Len() < 1e-3 && out[at] == (mgl64.Vec3{}) {
				out[at] = sc.Parts[i].Transform.Apply(double(x))
				found++
			}
		}
	}
	if found != solid.RimPoints {
		t.Fatalf("half %d has %d vertices round its face, not %d", half, found, solid.RimPoints)
	}
	return out
}

// clockStep is between two of them.
const clockStep = 2 * math.Pi / solid.RimPoints

// TestDrawnGapIsNTimesTheGap measures the drawn faces at every vertex round
// their rims, four to the hour, and compares with the gap of package kinematics.
// The tolerance is 1 % of the gap there, and where it is less, of the spread's
// hundredth part of that.
func TestDrawnGapIsNTimesTheGap(t *testing.T) {
	crooked := func(s *kinematics.State) {
		s.RunOut = kinematics.RunOut{ShaftMM: 0.03, ShaftLowDeg: 70, FlangeMM: 0.02, FlangeTurnDeg: 200}
		s.ApartMM = 0.05
	}
	for _, name := range assets.HullNames() {
		for _, held := range []kinematics.Held{kinematics.Seated, kinematics.Centred} {
			for _, change := range []func(*kinematics.State){nil, crooked} {
				q := move(t, name, held, change)
				for _, n := range []float64{1, 50, 200, 500} {
					var sc render.Scene
					q.m.Pose(&State{Now: &q.v, Exaggeration: n}, &sc)
					engine, shaft := q.rimPoints(t, &sc, 0), q.rimPoints(t, &sc, 1)
					for i := range engine {
						clockRad := float64(i) * clockStep
						got, want := engine[i][0]-shaft[i][0], n*q.r.Gap.AtMM(clockRad)
						slack := 0.01*math.Abs(want) + 1e-4*n*q.r.Gap.SpreadMM() + 1e-5
						if math.Abs(got-want) > slack {
							t.Errorf("%s %s, N %g, %.4g o'clock: drawn gap %g, N times the gap %g", name, held, n, clockRad*6/math.Pi, got, want)
						}
					}
				}
			}
		}
	}
}

// TestEngineIsDrawnAtXPlusNU compares drawn points of engine and shaft with the
// mechanics' own travel of them.
func TestEngineIsDrawnAtXPlusNU(t *testing.T) {
	for _, name := range assets.HullNames() {
		q := move(t, name, kinematics.Seated, nil)
		for _, n := range []float64{1, 50, 200, 500} {
			var sc render.Scene
			q.m.Pose(&State{Now: &q.v, Exaggeration: n}, &sc)
			for i := range q.m.pieces {
				p := &q.m.pieces[i]
				if p.body != engineBody || i%3 != 0 {
					continue
				}
				x := double(p.mesh.Positions[len(p.mesh.Positions)/2])
				u := mgl64.Vec3(q.d.EngineTravelMM(x))
				if got, want := sc.Parts[i].Transform.Apply(x), x.Add(u.Mul(n)); got.Sub(want).Len() > 1e-9*n+1e-9 {
					t.Fatalf("%s, N %g: a point of the engine at %v is drawn at %v, not %v", name, n, x, got, want)
				}
			}
		}
	}
}

// TestShaftIsDrawnWhereItLies compares drawn sections with the mechanics'.
func TestShaftIsDrawnWhereItLies(t *testing.T) {
	for _, held := range []kinematics.Held{kinematics.Seated, kinematics.Hanging, kinematics.Bolted} {
		q := move(t, "Eider", held, nil)
		n := min(200, q.m.MaxExaggeration(&q.v))
		var sc render.Scene
		q.m.Pose(&State{Now: &q.v, Exaggeration: n}, &sc)
		for i := range q.m.pieces {
			p := &q.m.pieces[i]
			if p.body != shaftBody {
				continue
			}
			for k, x := range p.rest {
				at := q.d.ShaftAt(x[0])
				got, want := double(p.mesh.Positions[k]), mgl64.Vec3{0, x[1] + n*at.Y, x[2] + n*at.Z}
				if math.Abs(got[1]-want[1]) > 1e-3 || math.Abs(got[2]-want[2]) > 1e-3 {
					t.Fatalf("%s: shaft point %v drawn at %v, not %v", held, x, got, want)
				}
			}
		}
	}
}

// TestAFlatTurnedIsAFlatSeen follows the mark on a nut: a lift by one flat turns
// it by a sixth of a turn, anticlockwise from above.
func TestAFlatTurnedIsAFlatSeen(t *testing.T) {
	q := move(t, "Kittiwake", kinematics.Seated, func(s *kinematics.State) {
		clear(s.SlideMM)
		clear(s.LiftMM)
		s.LiftMM[0] = 1.41111 / 6
	})
	var sc render.Scene
	q.m.Pose(&State{Now: &q.v}, &sc)
	for i := range q.m.pieces {
		p := &q.m.pieces[i]
		if p.paint != nutMark || p.index > 1 {
			continue
		}
		low, high := p.solid.Bounds()
		axis := q.m.dims.fromE.Apply(mgl64.Vec3(q.m.hull.Mounts[p.index].AtMM))
		was := low.Add(high).Mul(0.5)
		was, is := was.Sub(axis), sc.Parts[i].Transform.Apply(was).Sub(q.m.posed.engine.Apply(axis))
		turn := math.Atan2(is[1], is[0]) - math.Atan2(was[1], was[0])
		want := math.Pi / 3
		if p.index == 1 {
			want = 0
		}
		if math.Abs(math.Remainder(turn-want, 2*math.Pi)) > 0.02 {
			t.Errorf("mount %d: the mark turned by %g, not %g", p.index, turn, want)
		}
	}
}

// TestABearingIsDrawnAsFarAsItIsClear: the drawn bore stands N times half the
// clearance off a shaft on its axis.
func TestABearingIsDrawnAsFarAsItIsClear(t *testing.T) {
	m := NewModel(builtIn(t, "Eider"))
	for _, n := range []float64{1, 200} {
		var sc render.Scene
		m.Pose(&State{Exaggeration: n}, &sc)
		for i := range m.pieces {
			p := &m.pieces[i]
			if p.body != boreBody || p.paint != bearingMix {
				continue
			}
			b := &m.hull.Bearings[p.index]
			least := math.Inf(1)
			for _, x := range p.mesh.Positions {
				least = min(least, math.Hypot(float64(x[1]), float64(x[2])))
			}
			if want := m.hull.Shaft.DiameterMM/2 + n*b.DiametralClearanceMM/2; math.Abs(least-want) > 1e-4 {
				t.Errorf("%s, N %g: bore radius %g, not %g", b.Name, n, least, want)
			}
		}
	}
}

// TestTheLogTurnsToGlass where the shaft is drawn outside it, and only there.
func TestTheLogTurnsToGlass(t *testing.T) {
	q := move(t, "Eider", kinematics.Seated, nil)
	for _, c := range []struct {
		n     float64
		glass bool
	}{{1, false}, {400, true}} {
		var sc render.Scene
		q.m.Pose(&State{Now: &q.v, Exaggeration: c.n}, &sc)
		for i := range q.m.pieces {
			if p := &q.m.pieces[i]; p.kind == LogKind && (sc.Parts[i].Colour.A < 255) != c.glass {
				t.Errorf("N %g: the log's opacity is %d", c.n, sc.Parts[i].Colour.A)
			}
		}
	}
}

// TestMaxExaggeration: a hanging shaft allows less than a seated one.
func TestMaxExaggeration(t *testing.T) {
	seated := move(t, "Kittiwake", kinematics.Seated, nil)
	hanging := move(t, "Kittiwake", kinematics.Hanging, nil)
	a, b := seated.m.MaxExaggeration(&seated.v), hanging.m.MaxExaggeration(&hanging.v)
	t.Logf("seated %g, hanging %g", a, b)
	if !(b < a) || b < LeastExaggeration || a > MostExaggeration {
		t.Errorf("largest exaggeration seated %g, hanging %g", a, b)
	}
	if drawn := seated.m.MaxExaggeration(&Movement{}); drawn != MostExaggeration {
		t.Errorf("nothing moved allows %g", drawn)
	}
}
