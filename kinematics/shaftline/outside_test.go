package shaftline

// This file is what the checks against handbooks share: units, knife edges,
// and a beam in the handbooks' own terms, built either way round.

import (
	"math"
	"testing"
)

// Units of the handbooks, exact by definition of inch, pound and standard
// gravity; psi rounded from them.
const (
	inMM  = 25.4
	lbKg  = 0.45359237
	lbfN  = 4.4482216152605
	psi   = lbfN / (inMM * inMM) // MPa
	gMMS2 = 9806.65
)

// knife is a support as near to a knife edge as the model has: 1e-4 mm under
// 100 kN.
func knife(atMM float64) Spring { return Spring{AtMM: atMM, StiffnessNPerMM: 1e9} }

// near fails unless got is within a share rel of want.
func near(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	within(t, what, got, want, rel*math.Abs(want))
}

// within fails unless got is within a tolerance of want. Written so that a NaN
// fails.
func within(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.12g, want %.12g within %.1e (off by %.1e)", what, got, want, tolerance, got-want)
	}
}

// mustPrepare makes a model or ends the test.
func mustPrepare(t *testing.T, line Line) *Model {
	t.Helper()
	m, err := Prepare(line, Settings{})
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// mustBend bends a model from cold or ends the test.
func mustBend(t *testing.T, m *Model, front Front) *State {
	t.Helper()
	st := m.NewState()
	if err := m.Bend(st, front, Limits{}).Err(); err != nil {
		t.Fatal(err)
	}
	return st
}

// The beam of the handbook checks, a 14 mm steel rod about a metre long. A knife
// edge is 2.5e9 times as stiff as it: its own give and the digits lost to so
// large a ratio are then alike, some 1e-8 of the beam's own bending.
const (
	beamEI   = 4e8  // N mm2
	beamLoad = 20.0 // N, or N/mm times 1000 mm
)

// handbookBeam is a beam as handbooks draw it: u runs from its left end to the
// right, v is up, loads are down.
type handbookBeam struct {
	lengthMM   float64
	clamped    bool      // at the left end; then there are no supports
	supports   []float64 // knife edges, at u
	sinkMM     []float64 // how far each is lowered; nil: not at all
	loadNPerMM float64   // over the whole length
	points     []beamPoint
}

// beamPoint is a load down at u.
type beamPoint struct{ uMM, loadN float64 }

// couple is a sagging moment on the beam left of u: loads down at u and up an
// arm further on. Between the left end and u the beam carries a moment and no
// shear, exactly as under a moment alone.
func couple(uMM, momentNMM float64) []beamPoint {
	return []beamPoint{{uMM, momentNMM / coupleArmMM}, {uMM + coupleArmMM, -momentNMM / coupleArmMM}}
}

const coupleArmMM = 100

// facing says which end of the shaft the beam's right end is.
type facing float64

const (
	forward facing = 1  // right end at the front, x = 0
	aft     facing = -1 // right end at the aft end
)

// bentBeam reads a bent handbookBeam in its own terms.
type bentBeam struct {
	handbookBeam
	way     facing
	model   *Model
	state   *State
	carries []Support
}

// x is where u is along the shaft.
func (b *bentBeam) x(uMM float64) float64 {
	if b.way == forward {
		return uMM - b.lengthMM
	}
	return -uMM
}

// bend lays the beam along the shaft and bends it.
func (h handbookBeam) bend(t *testing.T, way facing) *bentBeam {
	t.Helper()
	b := &bentBeam{handbookBeam: h, way: way}
	line := Line{LengthMM: h.lengthMM, DiameterMM: 14, BendingStiffnessNMM2: beamEI,
		WeightNPerMM: h.loadNPerMM, AftWeightNPerMM: h.loadNPerMM}
	for _, p := range h.points {
		line.Points = append(line.Points, Point{AtMM: b.x(p.uMM), WeightN: p.loadN})
	}
	for i, u := range h.supports {
		s := knife(b.x(u))
		if h.sinkMM != nil {
			s.OffsetMM[1] = -h.sinkMM[i]
		}
		line.Springs = append(line.Springs, s)
	}
	var front Front = Free{}
	if h.clamped {
		if way != aft {
			t.Fatal("only the front end can be clamped")
		}
		// A line must rest on something; on the clamp itself it carries nothing.
		front, line.Springs = Clamped{}, []Spring{knife(0)}
	}
	b.model = mustPrepare(t, line)
	b.state = mustBend(t, b.model, front)
	b.carries = make([]Support, b.model.Supports())
	b.model.ReadSupports(b.state, b.carries)
	return b
}

func (b *bentBeam) v(uMM float64) float64 { return b.model.At(b.state, b.x(uMM)).Z }

func (b *bentBeam) slope(uMM float64) float64 {
	return float64(b.way) * b.model.At(b.state, b.x(uMM)).DZ
}

// moment is sagging positive, whichever way round.
func (b *bentBeam) moment(uMM float64) float64 { return b.model.At(b.state, b.x(uMM)).MomentZ }

// reaction of support i, up on the beam. The supports follow the log.
func (b *bentBeam) reaction(i int) float64 { return b.carries[b.model.LogGroup()+1+i].ForceN[1] }
