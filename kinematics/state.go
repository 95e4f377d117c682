package kinematics

// This file is the question: what has been done to a drive line and how its
// shaft is held.

import (
	"fmt"
	"math"
	"slices"

	"aligner/hulls"
)

// Held says how the shaft's front end is held.
type Held string

// The ways to hold it; see the package comment.
const (
	Hanging Held = "hanging"
	Centred Held = "centred"
	Seated  Held = "seated"
	Bolted  Held = "bolted"
)

// HeldWays are all of them, in the order of a job.
var HeldWays = []Held{Hanging, Centred, Seated, Bolted}

// State is everything done to a drawn drive line. The zero value, Held set, is
// the drawn state, dry.
type State struct {
	LiftMM  []float64 // seat raised along z_E, by mount; nil: none
	SlideMM []float64 // seat shifted to port, by mount; nil: none
	// LeverOn holds the feet of the mounts being slid where the slides say, the
	// mounts slack; off, they are clamped there and let go.
	LeverOn bool

	Held   Held
	Afloat bool

	ThrustN   float64 // forward, on the face
	TorqueNMM float64 // about +x, on the face

	// ApartMM holds the faces that far apart at their nearest, seated or
	// centred; 0: they touch.
	ApartMM float64
	// BlockMM is how far [y, z] the block stands from the middle of the shaft's
	// free travel, when centred.
	BlockMM [2]float64
	// PullN centres the shaft by a pull at the coupling half instead of the
	// block; 0: the block.
	PullN float64

	RunOut RunOut
}

// RunOut is what the two halves' own faces add to the gap: each a height
// counted as gap, its low side (where it opens the gap most) at a clock angle
// on the half, and how far the half has been turned clockwise.
type RunOut struct {
	ShaftMM, ShaftLowDeg, ShaftTurnDeg    float64
	FlangeMM, FlangeLowDeg, FlangeTurnDeg float64
}

// cosSin is the run-out as gap: cos t and sin t terms.
func (r RunOut) cosSin() [2]float64 {
	if r.ShaftMM == 0 && r.FlangeMM == 0 {
		return [2]float64{}
	}
	ss, cs := math.Sincos((r.ShaftLowDeg + r.ShaftTurnDeg) * math.Pi / 180)
	sf, cf := math.Sincos((r.FlangeLowDeg + r.FlangeTurnDeg) * math.Pi / 180)
	return [2]float64{r.ShaftMM*cs + r.FlangeMM*cf, r.ShaftMM*ss + r.FlangeMM*sf}
}

// Invalid says what makes the state impossible for a hull, or "".
func (s *State) Invalid(h *hulls.Hull) string {
	switch {
	case !slices.Contains(HeldWays, s.Held):
		return fmt.Sprintf("held %q: must be one of %v", s.Held, HeldWays)
	case s.Held == Seated && !h.Coupling.HasPilot():
		return fmt.Sprintf("held seated: %s has no pilot to carry the shaft; use centred", h.Name)
	case s.Held == Bolted && !h.Coupling.BoltedKnown():
		return fmt.Sprintf("held bolted: %s has a soft coupling, whose stiffness in bending is not known; give it, or gauge seated or centred", h.Name)
	case s.LiftMM != nil && len(s.LiftMM) != len(h.Mounts),
		s.SlideMM != nil && len(s.SlideMM) != len(h.Mounts):
		return fmt.Sprintf("%d lifts and %d slides for %d mounts: give one for each, or none",
			len(s.LiftMM), len(s.SlideMM), len(h.Mounts))
	case s.ApartMM < 0:
		return fmt.Sprintf("faces held %g mm apart: must not be negative", s.ApartMM)
	case s.PullN < 0:
		return fmt.Sprintf("pull of %g N: must not be negative", s.PullN)
	}
	if s.LeverOn {
		if why := invalidLevers(h, s.SlideMM); why != "" {
			return why
		}
	}
	for _, v := range [...]float64{s.ThrustN, s.TorqueNMM, s.ApartMM, s.BlockMM[0], s.BlockMM[1], s.PullN,
		s.RunOut.ShaftMM, s.RunOut.FlangeMM} {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return fmt.Sprintf("a load or distance of %g: must be a number", v)
		}
	}
	for i := range h.Mounts {
		if v := at(s.LiftMM, i); !(math.Abs(v) < mostMM) {
			return fmt.Sprintf("%s lifted %g mm: must be within %g", h.Mounts[i].Name, v, mostMM)
		}
		if v := at(s.SlideMM, i); !(math.Abs(v) < mostMM) {
			return fmt.Sprintf("%s slid %g mm: must be within %g", h.Mounts[i].Name, v, mostMM)
		}
	}
	return ""
}

// mostMM is more than any adjuster travels, and little enough for the engine
// to stay the right way up.
const mostMM = 100.0

// at is element i of a list that may be missing.
func at(list []float64, i int) float64 {
	if list == nil {
		return 0
	}
	return list[i]
}

// Carries reports whether the engine carries the shaft's end, so that it goes where
// the engine goes.
func (h Held) Carries() bool { return h == Seated || h == Bolted }
