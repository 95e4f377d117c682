package lesson

// This file is what a question may ask for, and how it is worked out.

import (
	"fmt"
	"math"
	"slices"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/report/say"
)

// Asked is one quantity of a boat in a state.
type Asked struct {
	Quantity string
	ClockDeg float64          // of the gap
	Mount    string           // of load and change of load
	State    kinematics.State // in which it is asked for
	// Before is the state a change is counted from; used by the quantities of change.
	Before kinematics.State
}

// The quantities.
const (
	Gap       = "gap"            // at a clock position, thou
	GapChange = "change of gap"  // at a clock position against the one opposite, thou
	Spread    = "spread"         // thou
	OpensAt   = "opens at"       // degrees clockwise from 12
	Load      = "load"           // on a mount, N
	LoadShare = "change of load" // on a mount, per cent of what it carried
	Rise      = "rise"           // of the coupling, mm
	Moment    = "moment"         // in the bolted coupling, N m
	Sag       = "hang"           // of a hanging shaft's end below the true line, mm
)

// Quantities are all of them with their units.
var Quantities = map[string]string{Gap: "thou", GapChange: "thou", Spread: "thou", OpensAt: "deg", Load: "N", LoadShare: "%", Rise: "mm", Moment: "N m", Sag: "mm"}

const thouMM = 0.0254

// Value works it out, in its unit.
func (a *Asked) Value(h *hulls.Hull) (float64, error) {
	d, err := kinematics.Prepare(*h)
	if err != nil {
		return 0, err
	}
	var before, r kinematics.Result
	if a.ofChange() {
		if err := d.Solve(&a.Before, &before); err != nil {
			return 0, err
		}
		before.MountLoadN = slices.Clone(before.MountLoadN)
	}
	if err := d.Solve(&a.State, &r); err != nil {
		return 0, err
	}
	mount := slices.IndexFunc(h.Mounts, func(m hulls.Mount) bool { return m.Name == a.Mount })
	switch a.Quantity {
	case Gap:
		return r.Gap.AtMM(a.ClockDeg*math.Pi/180) / thouMM, nil
	case GapChange:
		across := func(g kinematics.Gap) float64 {
			t := a.ClockDeg * math.Pi / 180
			return g.AtMM(t) - g.AtMM(t+math.Pi)
		}
		return (across(r.Gap) - across(before.Gap)) / thouMM, nil
	case Spread:
		return r.Gap.SpreadMM() / thouMM, nil
	case OpensAt:
		return math.Mod(360+math.Atan2(r.Gap.SinMM, r.Gap.CosMM)*180/math.Pi, 360), nil
	case Load:
		return r.MountLoadN[mount], nil
	case LoadShare:
		if before.MountLoadN[mount] == 0 {
			return 0, fmt.Errorf("%s carries nothing before: its load cannot change by a part", a.Mount)
		}
		return 100 * (r.MountLoadN[mount]/before.MountLoadN[mount] - 1), nil
	case Rise:
		return r.TranslationMM[2] - before.TranslationMM[2], nil
	case Moment:
		return r.CouplingMomentNMM / 1000, nil
	case Sag:
		return -r.FrontEndMM[1], nil
	}
	return 0, fmt.Errorf("quantity %q is not known", a.Quantity)
}

func (a *Asked) ofChange() bool {
	return a.Quantity == GapChange || a.Quantity == LoadShare || a.Quantity == Rise
}

// ofMount reports whether a mount must be named.
func (a *Asked) ofMount() bool { return a.Quantity == Load || a.Quantity == LoadShare }

// Said is a value of it in words, with its unit, or as a clock position.
func (a *Asked) Said(s words.Speaker, u say.Units, value float64) string {
	if a.Quantity == OpensAt {
		return say.Place(s, value)
	}
	sign, decimals := "", 1
	switch a.Quantity {
	case Rise:
		decimals = 2
	case Load, LoadShare:
		decimals = 0
	}
	if value < 0 {
		sign = "\u2212"
	} else if a.ofChange() {
		sign = "+"
	}
	return sign + u.Plain(math.Abs(value), decimals) + " " + Quantities[a.Quantity]
}

// in reports whether a choice is right at a value. Round the clock a range may go
// through 12: from 315 below 45.
func (a *Asked) in(c *Choice, value float64) bool {
	if a.Quantity == OpensAt && c.From > c.Below {
		return value >= c.From || value < c.Below
	}
	return value >= c.From && value < c.Below
}

// Right is the index of the right choice, and the value worked out; -1 where a number
// is asked for.
func (l *Lesson) Right() (choice int, value float64, err error) {
	if value, err = l.Question.Of.Value(&l.Hull); err != nil {
		return -1, 0, err
	}
	for i, c := range l.Question.Choices {
		if l.Question.Of.in(&c, value) {
			return i, value, nil
		}
	}
	return -1, value, nil
}

// RightNumber reports whether a number answers the question.
func (l *Lesson) RightNumber(answer float64) (bool, error) {
	_, value, err := l.Right()
	return err == nil && math.Abs(answer-value) <= l.Question.Tolerance, err
}
