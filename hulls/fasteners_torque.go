package hulls

// This file works out what a coupling bolt is tightened to.
//
//	T = K d F,   F = 3/4 x proof stress x stress area
//
// with d the bolt's nominal diameter and F the pull of a joint that is to be
// taken apart again. K is 0.20 dry, as plated bolts come, and 0.15 oiled.
// Friction is what it is: at one torque the pull differs by 25 to 30 % either
// way from bolt to bolt (from memory; common in handbooks), and three quarters
// of proof leaves room for just that.
//
// Sources. Proof stress: SAE J429 table 1 (grades 2 and 5 compared with a
// published torque card, grade 8 by its clamp loads), ISO 898-1 tables 3 to 5
// (8.8 to 16 mm from memory; a published card agrees within a twentieth); ISO
// 3506-1 from memory, the 0.2 % proof strength standing for the proof stress.
//
// The maker's figure comes first, always.

import (
	"fmt"
	"strings"
)

// Friction factors, and the part of the proof load a bolt is tightened to.
const (
	FactorDry        = 0.20
	FactorLubricated = 0.15
	PartOfProof      = 0.75
	// Scatter of the pull at one torque, as parts either way.
	ScatterLow, ScatterHigh = 0.25, 0.30
)

// Tightening is what a bolt is to be tightened to.
type Tightening struct {
	NM    float64
	Maker bool // NM is the maker's figure, not the computed one

	// The computed figure; all 0 where the bolt's grade or thread is not known.
	ComputedNM float64
	Factor     float64 // K
	ProofMPa   float64
	ClampN     float64 // F
	// ClampLeastN and ClampMostN are what the computed torque may come to.
	ClampLeastN, ClampMostN float64
	FromMemory              bool // the proof stress is

	// BeyondProof: by this K the maker's figure would pull the bolt past its
	// proof load. Thread, grade or figure is likely wrong, or meant for a bolt
	// with less or more friction.
	BeyondProof bool
}

// Tighten works out the torque of a bolt. makerNM is the maker's figure; 0: there
// is none. It fails where there is none and none can be worked out.
func Tighten(b Bolts, lubricated bool, makerNM float64) (Tightening, error) {
	t, err := computed(b, lubricated)
	if makerNM > 0 {
		t.NM, t.Maker = makerNM, true
		t.BeyondProof = err == nil && makerNM*PartOfProof > t.ComputedNM
		return t, nil
	}
	t.NM = t.ComputedNM
	return t, err
}

func computed(b Bolts, lubricated bool) (Tightening, error) {
	thread, err := ThreadOf(b.Thread)
	if err != nil {
		return Tightening{}, &Fault{Place: "coupling.bolts.thread", Value: fmt.Sprintf("%q", b.Thread), Limit: err.Error(), Mend: "read the thread with a pitch gauge"}
	}
	p, err := proofOf(b.Grade, thread)
	if err != nil {
		return Tightening{}, err
	}
	t := Tightening{Factor: FactorDry, ProofMPa: p.mpa, FromMemory: p.fromMemory}
	if lubricated {
		t.Factor = FactorLubricated
	}
	t.ClampN = PartOfProof * p.mpa * thread.StressAreaMM2
	t.ClampLeastN, t.ClampMostN = (1-ScatterHigh)*t.ClampN, (1+ScatterHigh)*t.ClampN
	t.ComputedNM = t.Factor * thread.MajorMM / 1000 * t.ClampN
	return t, nil
}

// mpaPerKsi is exact: lbf/in2 by the pound and the inch.
const mpaPerKsi = 4.4482216152605 / (25.4 * 25.4) * 1000

// proof is the proof stress of a grade over a range of diameters in mm.
type proof struct {
	grade      string
	overMM     float64 // nominal diameters above this ...
	toMM       float64 // ... up to this
	mpa        float64
	fromMemory bool
}

var proofs = []proof{
	{"SAE J429 grade 2", 6.3, 0.75 * 25.4, 55 * mpaPerKsi, false},
	{"SAE J429 grade 2", 0.75 * 25.4, 1.5 * 25.4, 33 * mpaPerKsi, false},
	{"SAE J429 grade 5", 6.3, 25.4, 85 * mpaPerKsi, false},
	{"SAE J429 grade 5", 25.4, 1.5 * 25.4, 74 * mpaPerKsi, false},
	{"SAE J429 grade 8", 6.3, 1.5 * 25.4, 120 * mpaPerKsi, false},
	{"ISO 898-1 8.8", 0, 16, 580, false},
	{"ISO 898-1 8.8", 16, 39, 600, false},
	{"ISO 898-1 10.9", 0, 39, 830, false},
	{"ISO 3506-1 A2-70", 0, 24, 450, true},
	{"ISO 3506-1 A4-70", 0, 24, 450, true},
}

func proofOf(grade string, t Thread) (proof, error) {
	const mend = "take the maker's figure"
	known := false
	for _, p := range proofs {
		if p.grade != grade {
			continue
		}
		known = true
		if inch := strings.HasPrefix(grade, "SAE"); inch != (t.ThreadsPerInch > 0) {
			return p, &Fault{Place: "coupling.bolts.grade", Value: grade + " on " + t.Designation, Limit: "SAE J429 grades on inch threads, ISO classes on metric ones", Mend: "read the head mark again, or " + mend}
		}
		if t.MajorMM > p.overMM+1e-6 && t.MajorMM <= p.toMM+1e-6 {
			return p, nil
		}
	}
	if known {
		return proof{}, &Fault{Place: "coupling.bolts.thread", Value: t.Designation, Limit: "a size that " + grade + " is laid down for", Mend: mend}
	}
	return proof{}, &Fault{Place: "coupling.bolts.grade", Value: fmt.Sprintf("%q", grade), Limit: "one of " + strings.Join(boltGrades, ", "), Mend: "read the head mark, or " + mend}
}
