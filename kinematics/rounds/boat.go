package rounds

// This file makes a boat: what the tool is told of it, and what is true.

import (
	"fmt"
	"math/rand/v2"
	"slices"

	"aligner/hulls"
	"aligner/kinematics"
)

const mmPerThou = 0.0254 // an inch is 25.4 mm by definition

// Boat is one simulated boat. Its truth is for the simulation alone.
type Boat struct {
	Number  int
	Nominal *hulls.Hull // what the tool is told
	Afloat  bool

	True            hulls.Hull
	LiftMM, SlideMM []float64 // the engine's error, by mount
	RunOut          kinematics.RunOut
	ClockDeg        []float64 // the positions that can be reached
	Together        bool      // those that cannot lie side by side
	// CosMM and SinMM are the seated gap the engine's error gives, run-out left
	// out.
	CosMM, SinMM float64

	line *kinematics.DriveLine
}

// How far the truth may lie from the nominal hull.
const (
	mountStiffnessPart   = 0.3
	bearingStiffnessPart = 0.5
	clearancePart        = 0.5
	placeMM              = 5
	massPart             = 0.05
)

// What is wrong with a boat when the mechanic comes.
const (
	leastSpreadThou, mostSpreadThou = 12, 40
	mostRunOutThou                  = 2 // total indicator reading of each half
	fewestPositions, mostPositions  = 6, 10
)

// mostTries bounds how often a draw that cannot be a boat is drawn again.
const mostTries = 100

// NewBoat draws boat number n of a seed on a nominal hull. The same seed and
// number give the same boat whatever else is drawn.
func NewBoat(seed uint64, n int, nominal *hulls.Hull) (*Boat, error) {
	r := stream(seed, n, truthStream)
	b := &Boat{Number: n, Nominal: nominal, Afloat: r.IntN(2) == 1}
	var err error
	for range mostTries {
		b.True = perturbed(nominal, r)
		if bad := hulls.Validate(b.True).Err(); bad != nil {
			err = bad
			continue
		}
		if b.line, err = kinematics.Prepare(b.True); err != nil {
			continue
		}
		if err = b.drawEngineError(r); err == nil {
			b.drawFaces(r)
			return b, nil
		}
	}
	return nil, fmt.Errorf("boat %d on %s: no truth in %d draws: %w", n, nominal.Name, mostTries, err)
}

// Which of a boat's random streams: what one mechanic does must not change what
// another finds.
const (
	truthStream = iota
	toolStream
	plainStream
	carefulStream
	streams
)

func stream(seed uint64, n, which int) *rand.Rand {
	return rand.New(rand.NewPCG(seed, uint64(n*streams+which)))
}

func within(r *rand.Rand, lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }

// scaled is v times something within part of 1.
func scaled(r *rand.Rand, v, part float64) float64 { return v * within(r, 1-part, 1+part) }

// perturbed is a hull that a tape measure and a maker's list might take for the
// nominal one.
func perturbed(nominal *hulls.Hull, r *rand.Rand) hulls.Hull {
	h := *nominal
	h.Mounts = slices.Clone(h.Mounts)
	for i := range h.Mounts {
		m := &h.Mounts[i]
		for _, k := range []*float64{&m.StiffnessNPerMM.Along, &m.StiffnessNPerMM.ForeAft, &m.StiffnessNPerMM.Athwart} {
			*k = scaled(r, *k, mountStiffnessPart)
		}
		for j := range m.AtMM {
			m.AtMM[j] += within(r, -placeMM, placeMM)
		}
	}
	h.Bearings = slices.Clone(h.Bearings)
	for i := range h.Bearings {
		b := &h.Bearings[i]
		b.RadialStiffnessNPerMM = scaled(r, b.RadialStiffnessNPerMM, bearingStiffnessPart)
		b.DiametralClearanceMM = scaled(r, b.DiametralClearanceMM, clearancePart)
		b.AtMM += within(r, -placeMM, placeMM)
	}
	h.Engine.MassKg = scaled(r, h.Engine.MassKg, massPart)
	for i := range h.Engine.CentreOfMassMM {
		h.Engine.CentreOfMassMM[i] += within(r, -placeMM, placeMM)
	}
	return h
}

// drawFaces draws the halves' run-out and which positions can be reached.
func (b *Boat) drawFaces(r *rand.Rand) {
	half := func() float64 { return within(r, 0, mostRunOutThou) / 2 * mmPerThou }
	b.RunOut = kinematics.RunOut{
		ShaftMM: half(), ShaftLowDeg: within(r, 0, 360),
		FlangeMM: half(), FlangeLowDeg: within(r, 0, 360),
	}
	n := fewestPositions + r.IntN(mostPositions-fewestPositions+1)
	b.Together = r.IntN(2) == 1
	hours := r.Perm(12)[:n]
	if b.Together {
		first := r.IntN(12)
		for i := range hours {
			hours[i] = (first + i) % 12
		}
	}
	slices.Sort(hours)
	for _, hour := range hours {
		b.ClockDeg = append(b.ClockDeg, float64(30*hour))
	}
}
