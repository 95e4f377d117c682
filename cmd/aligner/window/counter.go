package window

// This file turns to the counter view.

import (
	"math"

	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/counter"
	"aligner/cmd/aligner/page"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/report"
)

// counterKey turns to the counter view wherever the keyboard is, with the control key
// held.
const counterKey = fyne.KeyB

// seeCounter turns to the counter view: of the visit as its readings say, or, where
// they say nothing, of what is tried.
func (w *Window) seeCounter() {
	d := w.history.Now()
	boat := counter.Boat{Hull: d.Hull, Before: stateOf(&d)}
	boat.Before.ThrustN, boat.Before.TorqueNMM, boat.Before.LeverOn = 0, 0, false
	boat.After = kinematics.State{LiftMM: make([]float64, len(d.Hull.Mounts)), SlideMM: make([]float64, len(d.Hull.Mounts))}
	in, err := report.Work(d)
	if err == nil && in.Estimate.Status == gauge.Ready {
		before, after, planned, err := in.States()
		if err == nil && before != nil {
			boat.Before, boat.After, boat.Planned = *before, *before, planned
			if after != nil {
				boat.After = *after
			}
		}
		boat.Fault = fault(in.Estimate)
	}
	boat.Before.Held = kinematics.Seated
	if !d.Hull.Coupling.HasPilot() {
		boat.Before.Held = kinematics.Centred
	}
	w.turnTo(func(desk page.Desk) page.Page { return counter.New(desk, boat) })
}

// fault is what an estimate says of the halves, where they are untrue.
func fault(e *gauge.Estimate) (r kinematics.RunOut) {
	polar := func(ab [2]float64) (mm, deg float64) {
		return math.Hypot(ab[0], ab[1]), math.Atan2(ab[1], ab[0]) * 180 / math.Pi
	}
	if e.RunOut[0].Untrue {
		r.ShaftMM, r.ShaftLowDeg = polar(e.RunOut[0].MeanMM)
	}
	if e.RunOut[1].Untrue {
		r.FlangeMM, r.FlangeLowDeg = polar(e.RunOut[1].MeanMM)
	}
	return r
}
