package shaftline

// This file is the gap-and-sag case: a parted shaft overhanging its forward
// bearing, drooping under its coupling half. One master case in full and four
// sizes, in inches and pounds, all worked out exactly with fractions from the
// closed forms of a span with two overhangs (Roark, table 8.1) and again by a
// stiffness matrix; no printed source.
//
//	30 lb      strut                     log bearing     coupling half 12 lb
//	  O----------^-------------------------^---------------#
//	  |<- 6 in ->|<-------- 60 in -------->|<--- 24 in --->|   1.5 in, steel

import (
	"fmt"
	"math"
	"testing"
)

// sagShaft is a shaft of the gap-and-sag tables.
type sagShaft struct {
	diameterIn, spanIn, overhangIn, aftIn float64
	propellerLb, halfLb                   float64
	bare                                  bool // weighs nothing itself
}

var masterShaft = sagShaft{diameterIn: 1.5, spanIn: 60, overhangIn: 24, aftIn: 6, propellerLb: 30, halfLb: 12}

// Steel of the tables: 28e6 psi, 0.286 lb/in3.
const (
	sagYoungMPa      = 28e6 * psi
	sagDensityLbPer3 = 0.286
)

// weightLbPerIn of the bare shaft.
func (s sagShaft) weightLbPerIn() float64 {
	return sagDensityLbPer3 * math.Pi / 4 * s.diameterIn * s.diameterIn
}

// line lays the shaft out on two short stiff bearings. A bearing a millionth of
// a millimetre long turns freely, like a knife edge.
func (s sagShaft) line() Line {
	const bearingMM = 1e-6
	front := s.overhangIn * inMM
	strut := front + s.spanIn*inMM
	end := strut + s.aftIn*inMM
	d := s.diameterIn * inMM
	l := Line{
		LengthMM: end, DiameterMM: d, BendingStiffnessNMM2: CircularBendingStiffness(sagYoungMPa, d),
		AftFromMM: -2 * end,
		Points: []Point{
			{AtMM: -end, WeightN: s.propellerLb * lbfN, MassKg: s.propellerLb * lbKg},
			{AtMM: 0, WeightN: s.halfLb * lbfN, MassKg: s.halfLb * lbKg},
		},
		Bearings: []Bearing{
			{Name: "strut", AtMM: -strut, LengthMM: bearingMM, StiffnessNPerMM: 1e10},
			{Name: "log", AtMM: -front, LengthMM: bearingMM, StiffnessNPerMM: 1e10},
		},
	}
	if !s.bare {
		l.WeightNPerMM = s.weightLbPerIn() * lbfN / inMM
	}
	return l
}

// digits is one unit of the last place a table prints: half for its rounding,
// half for the give of the bearings.
func digits(places int) float64 { return math.Pow(10, -float64(places)) }

func TestGapAndSagMasterCase(t *testing.T) {
	line := masterShaft.line()
	within(t, "I in in4", line.BendingStiffnessNMM2/sagYoungMPa/math.Pow(inMM, 4), 0.248504887637, digits(12))
	within(t, "weight in lb/in", masterShaft.weightLbPerIn(), 0.505403718146, digits(12))
	within(t, "EI in lbf in2", line.BendingStiffnessNMM2/lbfN/(inMM*inMM), 6958136.8538, digits(4))

	m := mustPrepare(t, line)
	st := mustBend(t, m, Free{})
	q := m.Front(st)
	within(t, "droop in inches", q[2]/inMM, -0.03170091, digits(8))
	within(t, "slope", q[3], -0.00152827, digits(8))
	within(t, "slope at the log bearing", m.At(st, line.Bearings[1].AtMM).DZ, -0.00086423, digits(8))
	within(t, "propeller end in inches", m.At(st, -line.LengthMM).Z/inMM, -0.00339963, digits(8))
	within(t, "sideways", q[0], 0, 0)

	s := make([]Support, m.Supports())
	m.ReadSupports(st, s)
	within(t, "strut in lbf", s[0].ForceN[1]/lbfN, 44.120217, digits(6))
	within(t, "log bearing in lbf", s[1].ForceN[1]/lbfN, 43.366118, digits(6))
	within(t, "both in lbf", (s[0].ForceN[1]+s[1].ForceN[1])/lbfN, 87.486335, digits(6))

	// The half looks forward and down: an engine on the line would show its gap
	// open at the bottom by slope times diameter.
	within(t, "face gap over 5 in", -q[3]*5, 0.00764135, digits(8))
}

// TestGapAndSagShares parts the droop among what weighs.
func TestGapAndSagShares(t *testing.T) {
	var sum float64
	for _, c := range []struct {
		name         string
		bare         bool
		prop, half   float64
		droopIn, tol float64
	}{
		{"shaft", false, 0, 0, 0.00232199, digits(8)},
		{"propeller", true, 30, 0, -0.00620856, digits(8)},
		{"coupling half", true, 0, 12, -0.02781434, digits(8)},
	} {
		shaft := masterShaft
		shaft.bare, shaft.propellerLb, shaft.halfLb = c.bare, c.prop, c.half
		m := mustPrepare(t, shaft.line())
		droop := m.Front(mustBend(t, m, Free{}))[2] / inMM
		within(t, c.name+" alone, at the face", droop, c.droopIn, c.tol)
		sum += droop
	}
	within(t, "the shares together", sum, -0.03170091, digits(8))
}

// TestLiftsOfTheMasterCase: the pull that brings the half level, and what the
// trade's rule of half the overhang and all of the half does instead.
func TestLiftsOfTheMasterCase(t *testing.T) {
	m := mustPrepare(t, masterShaft.line())
	st := m.NewState()
	lift, err := m.LiftTo(st, 0)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "pull in lbf", lift.HookN/lbfN, 13.676789, digits(6))
	within(t, "slope left at that pull", lift.SlopeZ, -0.00001870, digits(8))
	within(t, "give in in/lbf", lift.MMPerN*lbfN/inMM, 0.0023178619, digits(10))

	rule := m.HalfWeightRule()
	within(t, "the rule's pull in lbf", rule/lbfN, 18.064845, digits(6))
	lift, err = m.LiftBy(st, rule)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "height by the rule in inches", lift.HeightMM/inMM, 0.01017091, digits(8))
	within(t, "slope by the rule", lift.SlopeZ, 0.00046563, digits(8))
	free := m.Front(mustBend(t, m, Free{}))[3]
	within(t, "slope per lbf", (lift.SlopeZ-free)/(rule/lbfN), 0.0001103744, digits(10))
}

// TestGapAndSagSizes: propeller 20 lb per inch of diameter, 6 in aft.
func TestGapAndSagSizes(t *testing.T) {
	for _, c := range []struct {
		d, span, overhang, half, faceIn    float64
		weight, droopMil, slopeMil, gapMil float64
		liftLbf, ruleLbf                   float64
	}{
		{1.00, 40, 18, 6, 4, 0.2246, 38.83, 2.4326, 9.73, 8.52, 8.02},
		{1.25, 48, 20, 9, 5, 0.3510, 30.92, 1.7596, 8.80, 11.44, 12.51},
		{1.50, 60, 24, 12, 5, 0.5054, 31.70, 1.5283, 7.64, 13.68, 18.06},
		{2.00, 72, 30, 22, 6, 0.8985, 33.12, 1.3000, 7.80, 23.80, 35.48},
	} {
		shaft := sagShaft{diameterIn: c.d, spanIn: c.span, overhangIn: c.overhang, aftIn: 6, propellerLb: 20 * c.d, halfLb: c.half}
		name := fmt.Sprintf("%.2f in", c.d)
		m := mustPrepare(t, shaft.line())
		st := m.NewState()
		if err := m.Bend(st, Free{}, Limits{}).Err(); err != nil {
			t.Fatal(name, err)
		}
		q := m.Front(st)
		within(t, name+", weight", shaft.weightLbPerIn(), c.weight, digits(4))
		within(t, name+", droop", -q[2]/inMM*1000, c.droopMil, digits(2))
		within(t, name+", slope", -q[3]*1000, c.slopeMil, digits(4))
		within(t, name+", face gap", -q[3]*1000*c.faceIn, c.gapMil, digits(2))
		lift, err := m.LiftTo(st, 0)
		if err != nil {
			t.Fatal(name, err)
		}
		within(t, name+", lift", lift.HookN/lbfN, c.liftLbf, digits(2))
		within(t, name+", the rule's lift", m.HalfWeightRule()/lbfN, c.ruleLbf, digits(2))
	}
}
