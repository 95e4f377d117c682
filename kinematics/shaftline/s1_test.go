package shaftline

import (
	"math"
	"testing"
)

// Units of the published shaft tables.
const (
	inMM  = 25.4
	lbfN  = 4.4482216152605
	psi   = 0.006894757293168361
	gMMS2 = 9806.65
)

// knife is a support as near to a knife edge as the model has: 1e-4 mm under
// 100 kN.
func knife(atMM float64) Spring { return Spring{AtMM: atMM, StiffnessNPerMM: 1e9} }

// gapAndSag is the overhung shaft of the gap-and-sag tables: propeller, strut,
// log bearing, coupling half, all in inches and pounds.
func gapAndSag(dIn, spanIn, overhangIn, propIn, propLb, halfLb float64) Line {
	d := dIn * inMM
	front := overhangIn * inMM
	strut := front + spanIn*inMM
	prop := strut + propIn*inMM
	w := 0.286 * math.Pi / 4 * dIn * dIn * lbfN / inMM
	return Line{
		LengthMM: prop, DiameterMM: d, BendingStiffnessNMM2: CircularBendingStiffness(28e6*psi, d),
		WeightNPerMM: w, AftWeightNPerMM: w, AftFromMM: -2 * prop,
		Points: []Point{
			{AtMM: -prop, WeightN: propLb * lbfN, MassKg: propLb * 0.45359237},
			{AtMM: 0, WeightN: halfLb * lbfN, MassKg: halfLb * 0.45359237},
		},
		Springs: []Spring{knife(-strut), knife(-front)},
	}
}

func near(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if math.Abs(got-want) > rel*math.Abs(want) {
		t.Errorf("%s: %.9g, want %.9g within %.0e", what, got, want, rel)
	}
}

func TestGapAndSagMasterCase(t *testing.T) {
	m, err := Prepare(gapAndSag(1.5, 60, 24, 6, 30, 12), Settings{})
	if err != nil {
		t.Fatal(err)
	}
	st := m.NewState()
	if r := m.Bend(st, Free{}, Limits{}); r.Err() != nil {
		t.Fatal(r.Err())
	}
	q := m.Front(st)
	near(t, "droop", q[2]/inMM, -0.03170091, 1e-6)
	near(t, "slope", q[3], -0.00152827, 1e-5)
	sup := make([]Support, m.Supports())
	m.ReadSupports(st, sup)
	near(t, "strut", sup[1].ForceN[1]/lbfN, 44.120217, 1e-7)
	near(t, "log", sup[2].ForceN[1]/lbfN, 43.366118, 1e-7)
	l, err := m.LiftTo(st, 0)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "lift", l.HookN/lbfN, 13.676789, 1e-6)
	near(t, "lift slope", l.SlopeZ, -0.00001870, 1e-3)
	for hold, want := range map[FrontHold]float64{FrontFree: 913.33} {
		rpm, err := m.WhirlRPM(hold, gMMS2)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "whirl", rpm, want, 1e-5)
	}
}
