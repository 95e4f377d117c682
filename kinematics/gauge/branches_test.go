package gauge

// This file gauges the unusual: through a dummy, with a soft coupling in, faces far
// apart, for a gap under power; and bolts halves together otherwise.

import (
	"math"
	"strings"
	"testing"

	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

// allRound gauges gap(t) at every hour, within plus or minus half.
func allRound(g *visit.Gauging, half float64, gap func(t float64) float64) *visit.Gauging {
	for hour := range 12 {
		t := float64(hour) * 30
		v := gap(t * math.Pi / 180)
		r := visit.Leaf{ClockDeg: t, Stops: visit.Length{Value: v + half, Unit: visit.InMM}}
		if v > half {
			r.Goes = visit.Length{Value: v - half, Unit: visit.InMM}
		}
		g.Readings = append(g.Readings, r)
	}
	return g
}

func estimateOf(t *testing.T, m *Model, v *visit.Visit) *Estimate {
	t.Helper()
	e, err := m.Estimate(v)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// touchingGap is a gap with touching faces.
func touchingGap(a, b float64) func(t float64) float64 {
	return func(t float64) float64 { return math.Hypot(a, b) + a*math.Cos(t) + b*math.Sin(t) }
}

func TestADummysUnevennessIsTakenOut(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	m, err := NewModel(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	const a, b, uneven, thin = 0.06, -0.04, 0.08, 120.0
	for _, turn := range []float64{0, 90} {
		through := func(angle float64) float64 {
			return 0.05 + touchingGap(a, b)(angle) + uneven/2*math.Cos(angle-(thin+turn)*math.Pi/180)
		}
		g := &visit.Gauging{Held: "seated", ShaftTurnDeg: turn, FlangeTurnDeg: turn, Apart: visit.Length{Value: 0.05, Unit: visit.InMM},
			Between: visit.Between{What: visit.Dummy, Uneven: visit.Length{Value: uneven, Unit: visit.InMM}, ThinAtDeg: thin}}
		e := estimateOf(t, m, &visit.Visit{Events: []visit.Event{{Gauging: allRound(g, 0.004, through)}}})
		if math.Abs(e.Gap.MeanMM[0]-a) > 0.012 || math.Abs(e.Gap.MeanMM[1]-b) > 0.012 {
			t.Errorf("turned %v: estimated %v, true %v, %v", turn, e.Gap.MeanMM, a, b)
		}
		g.Between = visit.Between{}
		if e := estimateOf(t, m, &visit.Visit{Events: []visit.Event{{Gauging: g}}}); math.Hypot(e.Gap.MeanMM[0]-a, e.Gap.MeanMM[1]-b) < 0.02 {
			t.Errorf("turned %v: the dummy makes no difference: %v", turn, e.Gap.MeanMM)
		}
	}
}

// A dummy bolted to the shaft half and pushed up to the flange until they first
// touch: what touches is the dummy's face, not the shaft half's.
func TestADummysFaceIsWhatTouches(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	m, err := NewModel(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	const a, b, uneven, thin = 0.03, -0.02, 0.1, 120.0
	v := &visit.Visit{}
	for _, turn := range []float64{0, 180} {
		sin, cos := math.Sincos((thin + turn) * math.Pi / 180)
		g := &visit.Gauging{Held: "seated", ShaftTurnDeg: turn, FlangeTurnDeg: turn,
			Between: visit.Between{What: visit.Dummy, Uneven: visit.Length{Value: uneven, Unit: visit.InMM}, ThinAtDeg: thin}}
		v.Events = append(v.Events, visit.Event{Gauging: allRound(g, 0.004, touchingGap(a+uneven/2*cos, b+uneven/2*sin))})
	}
	e := estimateOf(t, m, v)
	if math.Abs(e.Gap.MeanMM[0]-a) > 0.006 || math.Abs(e.Gap.MeanMM[1]-b) > 0.006 || !e.Flat || e.RunOut[0].Untrue || e.RunOut[1].Untrue {
		t.Errorf("estimated %v, true %v, %v; flat %v, untrue %v %v", e.Gap.MeanMM, a, b, e.Flat, e.RunOut[0].Untrue, e.RunOut[1].Untrue)
	}
	for _, s := range e.Seatings {
		if !s.Touched || math.Abs(s.LeastMM) > 0.006 {
			t.Errorf("seating: touched %v, least %v", s.Touched, s.LeastMM)
		}
	}
}

// The leaf asked for next is one that may go or not where the dummy leaves the gap,
// not where the halves alone would.
func TestTheNextLeafIsOfTheDummysGap(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	m, err := NewModel(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	const uneven, thin = 0.5, 0.0
	through := touchingGap(uneven/2, 0.02)
	g := allRound(&visit.Gauging{Held: "seated", Between: visit.Between{What: visit.Dummy, Uneven: visit.Length{Value: uneven, Unit: visit.InMM}, ThinAtDeg: thin}}, 0.02, through)
	g.Readings = []visit.Reading{g.Readings[0], g.Readings[4], g.Readings[8]}
	e := estimateOf(t, m, &visit.Visit{Reach: visit.Arc{FromDeg: 60, ToDeg: 120}, Events: []visit.Event{{Gauging: g}}})
	if e.Next == nil || e.Next.What != TryLeaf {
		t.Fatalf("asked for %+v", e.Next)
	}
	// The leaf lies near the gap through the dummy, and far from what it would be
	// without one: half its unevenness less at its thin side.
	gap := through(e.Next.ClockDeg * math.Pi / 180)
	if math.Abs(e.Next.LeafMM-gap) > 0.08 {
		t.Errorf("asked for a leaf of %.3f mm at %g, where the gap is %.3f", e.Next.LeafMM, e.Next.ClockDeg, gap)
	}
}

func TestASoftCouplingIsNotGaugedThrough(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 22
	gauging := func() *visit.Visit {
		g := &visit.Gauging{Held: "seated", Between: visit.Between{What: visit.SoftCoupling}}
		return &visit.Visit{Events: []visit.Event{{Gauging: allRound(g, 0.01, touchingGap(0.05, 0))}}}
	}
	m, err := NewModel(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	if e := estimateOf(t, m, gauging()); e.Status != Nothing || len(e.SetAside) == 0 || e.SetAside[0].Why != SoftIn {
		t.Errorf("through it: %v, set aside %v", e.Status, e.SetAside)
	}
	h.Coupling.Soft.InPlaceMM = 0.25 // its maker allows it
	if m, err = NewModel(&h, false); err != nil {
		t.Fatal(err)
	}
	if e := estimateOf(t, m, gauging()); e.Status != Ready {
		t.Errorf("where its maker allows it: %v", e.Status)
	}
}

func TestBoltedIsRefusedThroughASoftCoupling(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 22
	d, err := kinematics.Prepare(h)
	if err != nil {
		t.Fatal(err)
	}
	var r kinematics.Result
	if err := d.Solve(&kinematics.State{Held: kinematics.Bolted}, &r); err == nil || !strings.Contains(err.Error(), "soft coupling") {
		t.Errorf("bolted: %v", err)
	}
	if err := d.Solve(&kinematics.State{Held: kinematics.Seated}, &r); err != nil {
		t.Error(err)
	}
}

// Faces 25 mm apart, read by block and leaves to a tenth of a millimetre.
func TestAWideGap(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	m, err := NewModel(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	const a, b, apart = -0.3, 0.2, 25.0
	wide := func(angle float64) float64 { return apart + 0.4 + touchingGap(a, b)(angle) } // the distance itself was read 0.4 off
	g := &visit.Gauging{Held: "seated", Apart: visit.Length{Value: apart, Unit: visit.InMM}}
	e := estimateOf(t, m, &visit.Visit{Events: []visit.Event{{Gauging: allRound(g, 0.05, wide)}}})
	if !e.Flat || math.Abs(e.Gap.MeanMM[0]-a) > 0.03 || math.Abs(e.Gap.MeanMM[1]-b) > 0.03 {
		t.Errorf("estimated %v, true %v, %v; flat %v, odd %v", e.Gap.MeanMM, a, b, e.Flat, e.Odd)
	}
}

// An estimate is asked for after every reading: none of them may be refused, nor
// where nobody said how far apart the faces are held.
func TestAWideGapReadingByReading(t *testing.T) {
	doc := builtin.Visit(t, "far-apart")
	m, err := NewModel(&doc.Hull, doc.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	for n, event := range doc.Visit.Events {
		if event.Gauging == nil {
			continue
		}
		for k := range event.Gauging.Readings {
			v := doc.Visit
			v.Events = append([]visit.Event(nil), v.Events[:n+1]...)
			g := *event.Gauging
			g.Readings = g.Readings[:k+1]
			v.Events[n].Gauging = &g
			estimateOf(t, m, &v)
			g.Apart = visit.Length{}
			estimateOf(t, m, &v)
		}
	}
}

// What is right at rest is not what is right under power; aimed at is the gap that
// the mechanics turn into none under the same thrust and torque.
func TestTheGapUnderPowerIsAimedAt(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Eider", "Avocet"} {
		h := builtin.Hull(t, name)
		m, err := NewModel(&h, true)
		if err != nil {
			t.Fatal(err)
		}
		p := visit.UnderPower{ThrustN: 900, TorqueNM: 180}
		e := estimateOf(t, m, &visit.Visit{UnderPower: p, State: visit.State{Boat: "afloat"},
			Events: []visit.Event{{Gauging: allRound(&visit.Gauging{Held: "seated"}, 0.01, touchingGap(0.03, 0))}}})
		d, err := kinematics.Prepare(h)
		if err != nil {
			t.Fatal(err)
		}
		var rest, power kinematics.Result
		if err := d.Solve(&kinematics.State{Held: kinematics.Seated, Afloat: true}, &rest); err != nil {
			t.Fatal(err)
		}
		restMM := [2]float64{rest.Gap.CosMM, rest.Gap.SinMM}
		if err := d.Solve(&kinematics.State{Held: kinematics.Seated, Afloat: true, ThrustN: 900, TorqueNMM: 180e3}, &power); err != nil {
			t.Fatal(err)
		}
		for i, now := range [2]float64{power.Gap.CosMM, power.Gap.SinMM} {
			if off := e.TargetMM[i] + now - restMM[i]; math.Abs(off) > 0.1*math.Abs(now-restMM[i])+1e-4 {
				t.Errorf("%s: aimed at %.4f, power adds %.4f", name, e.TargetMM[i], now-restMM[i])
			}
		}
	}
}

func TestAMeasuredShiftComesBeforeAWorkedOutOne(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	m, err := NewModel(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	ab := m.PowerMM(visit.UnderPower{ThrustN: 5000, Shift: visit.Thou(4), ShiftOpensAtDeg: 180})
	if math.Abs(ab[0]+0.0508) > 1e-9 || math.Abs(ab[1]) > 1e-9 {
		t.Errorf("shift %v", ab)
	}
}

func TestIndexed(t *testing.T) {
	e := &Estimate{}
	e.RunOut[0].MeanMM, e.RunOut[1].MeanMM = [2]float64{0.05, 0}, [2]float64{0.05, 0}
	e.RunOut[0].Untrue = true
	// Low sides together add up; half a turn on they cancel; a quarter on, root two.
	for k, want := range []float64{0.2, 0.1 * math.Sqrt2, 0, 0.1 * math.Sqrt2} {
		if got := e.Indexed()[k]; math.Abs(got-want) > 1e-12 {
			t.Errorf("%d quarters on: %v, want %v", k, got, want)
		}
	}
	if !e.IndexingHelps() {
		t.Error("it does not say so")
	}
	e.RunOut[1].MeanMM = [2]float64{-0.05, 0}
	if e.IndexingHelps() {
		t.Error("turned away from the best position")
	}
}
