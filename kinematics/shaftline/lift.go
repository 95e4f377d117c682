package shaftline

// This file is how to hold a parted shaft up: the pull at a hook that brings
// its front end to a height, beside the trade's rule of half the weight.

import (
	"errors"
	"math"
)

// Lift is a shaft held up at its hook.
type Lift struct {
	HookN float64 // pull, up
	// HeightMM and SlopeZ are the front end's.
	HeightMM, SlopeZ float64
	// MMPerN is how much the front end rises for one more newton: how finely
	// the pull must be known.
	MMPerN float64
}

// LiftTo finds the hook's pull at which the front end stands at a height. A
// pull is known only as well as MMPerN allows; a block does better.
func (m *Model) LiftTo(st *State, heightMM float64) (Lift, error) {
	height := func(pull float64) (float64, error) {
		st.HookN = pull
		if r := m.Bend(st, Free{}, Limits{}); r.Err() != nil {
			return 0, r.Err()
		}
		return m.Front(st)[2] - heightMM, nil
	}
	lo, hi := 0.0, m.totalWeightN()
	hLo, err := height(lo)
	if err != nil {
		return Lift{}, err
	}
	for range 60 { // widen until the height is passed
		h, err := height(hi)
		if err != nil {
			return Lift{}, err
		}
		if h > 0 {
			break
		}
		lo, hLo, hi = hi, h, 2*hi
	}
	if hLo > 0 {
		return Lift{}, errors.New("the shaft stands above that height unlifted")
	}
	for range 200 {
		if hi-lo < 1e-9*math.Max(1, hi) {
			break
		}
		mid := (lo + hi) / 2
		h, err := height(mid)
		if err != nil {
			return Lift{}, err
		}
		if h > 0 {
			hi = mid
		} else {
			lo = mid
		}
	}
	return m.LiftBy(st, (lo+hi)/2)
}

// LiftBy is what a given pull at the hook does.
func (m *Model) LiftBy(st *State, pullN float64) (Lift, error) {
	const stepN = 1e-3
	st.HookN = pullN + stepN
	if r := m.Bend(st, Free{}, Limits{}); r.Err() != nil {
		return Lift{}, r.Err()
	}
	above := m.Front(st)[2]
	st.HookN = pullN
	if r := m.Bend(st, Free{}, Limits{}); r.Err() != nil {
		return Lift{}, r.Err()
	}
	q := m.Front(st)
	return Lift{HookN: pullN, HeightMM: q[2], SlopeZ: q[3], MMPerN: (above - q[2]) / stepN}, nil
}

// HalfWeightRule is the trade's rule for the pull at the coupling: half the
// shaft forward of its first support, and all of the coupling half (common
// practice, no source). It ignores what hangs aft and how the shaft bends.
func (m *Model) HalfWeightRule() float64 {
	front := math.Inf(-1) // forward-most support that carries
	for _, b := range m.line.Bearings {
		front = max(front, b.AtMM)
	}
	pull := 0.5 * m.line.WeightNPerMM * -front
	for _, p := range m.line.Points {
		if p.AtMM > front {
			pull += p.WeightN
		}
	}
	return pull
}

func (m *Model) totalWeightN() float64 {
	var w float64
	for i := range m.stations {
		w -= m.stations[i].load[0]
	}
	return w
}
