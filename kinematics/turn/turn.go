package turn

// This file plays the turn.

import (
	"math"
	"slices"

	"aligner/hulls"
	"aligner/kinematics"
)

// Turn is one turn.
type Turn struct {
	Steps []Step // evenly spread, the first at 0
	// By bearing: how much load stands still beyond that of the boat lined up and
	// true, and how far it strays from its mean as the shaft turns, N.
	SteadyN, SwingN []float64
	// By bearing: the mean force on the shaft, [y, z], z upward.
	MeanN [][2]float64
	// By mount: its load lined up and true, its mean over the turn, and how far it
	// strays from that, N.
	MountLinedN, MountMeanN, MountSwingN []float64
	MomentNMM                            float64 // of the coupling, mean over the turn
	MomentSwingNMM                       float64 // how far it strays from that
	// StressMPa is half of what the marked fibre goes through in a turn.
	StressMPa float64
}

// Step is one position of the shaft.
type Step struct {
	TurnDeg  float64 // clockwise looking forward
	State    kinematics.State
	Result   kinematics.Result
	FibreMPa float64
}

// Settings say how the turn is played.
type Settings struct {
	Steps int // of one turn; 0: 24
	Turns int // played one after the other; 0: one
}

const usualSteps = 24

// Play plays a turn of a boat whose engine stands as a state says (Held is taken as
// bolted), the halves crooked by fault.
func Play(h *hulls.Hull, stands kinematics.State, fault kinematics.RunOut, set Settings) (*Turn, error) {
	d, err := kinematics.Prepare(*h)
	if err != nil {
		return nil, err
	}
	if set.Steps == 0 {
		set.Steps = usualSteps
	}
	stands.Held = kinematics.Bolted
	t := &Turn{}
	for i := range set.Steps * max(1, set.Turns) {
		s := Step{TurnDeg: 360 * float64(i) / float64(set.Steps), State: stands}
		s.State.RunOut = fault
		s.State.RunOut.ShaftTurnDeg += s.TurnDeg
		s.State.RunOut.FlangeTurnDeg += s.TurnDeg
		if err := d.Solve(&s.State, &s.Result); err != nil {
			return nil, err
		}
		s.Result = s.Result.Clone()
		s.FibreMPa = fibre(h, &s.Result, s.TurnDeg)
		t.Steps = append(t.Steps, s)
	}
	var lined kinematics.Result
	if err := d.Solve(&kinematics.State{Held: kinematics.Bolted, Afloat: stands.Afloat}, &lined); err != nil {
		return nil, err
	}
	t.sort(&lined)
	return t, nil
}

// fibre is the stress at the mark: M c / I of a round bar, 32 M / (pi d^3), with the
// moment's part in the plane of the mark.
func fibre(h *hulls.Hull, r *kinematics.Result, turnDeg float64) float64 {
	sin, cos := math.Sincos(turnDeg * math.Pi / 180)
	d := h.Shaft.DiameterMM
	// At clock angle t the surface is at y = -sin t, z = cos t; a moment that turns
	// the end's slope up presses the top.
	return -(cos*r.CouplingBendNMM[1] - sin*r.CouplingBendNMM[0]) * 32 / (math.Pi * d * d * d)
}

// sort parts what stands still from what turns.
func (t *Turn) sort(lined *kinematics.Result) {
	n := float64(len(t.Steps))
	least, most := math.Inf(1), math.Inf(-1)
	var moment float64
	for i := range t.Steps {
		s := &t.Steps[i]
		moment += s.Result.CouplingMomentNMM / n
		least, most = min(least, s.FibreMPa), max(most, s.FibreMPa)
	}
	t.MomentNMM, t.StressMPa = moment, (most-least)/2
	for i := range t.Steps {
		t.MomentSwingNMM = max(t.MomentSwingNMM, math.Abs(t.Steps[i].Result.CouplingMomentNMM-moment))
	}
	for b := range lined.BearingForceN {
		var mean [2]float64
		for i := range t.Steps {
			for k := range mean {
				mean[k] += t.Steps[i].Result.BearingForceN[b][k] / n
			}
		}
		swing := 0.0
		for i := range t.Steps {
			f := t.Steps[i].Result.BearingForceN[b]
			swing = max(swing, math.Hypot(f[0]-mean[0], f[1]-mean[1]))
		}
		t.SteadyN = append(t.SteadyN, math.Hypot(mean[0]-lined.BearingForceN[b][0], mean[1]-lined.BearingForceN[b][1]))
		t.SwingN = append(t.SwingN, swing)
		t.MeanN = append(t.MeanN, mean)
	}
	t.mounts(lined)
}

// mounts parts the mounts' loads.
func (t *Turn) mounts(lined *kinematics.Result) {
	t.MountLinedN = slices.Clone(lined.MountLoadN)
	for m := range lined.MountLoadN {
		least, most, mean := math.Inf(1), math.Inf(-1), 0.0
		for i := range t.Steps {
			load := t.Steps[i].Result.MountLoadN[m]
			least, most, mean = min(least, load), max(most, load), mean+load/float64(len(t.Steps))
		}
		t.MountMeanN = append(t.MountMeanN, mean)
		t.MountSwingN = append(t.MountSwingN, max(most-mean, mean-least))
	}
}
