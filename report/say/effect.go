package say

// This file says what a move did, and why, in parts that add up.

import (
	"math"

	"aligner/assets/words"
	"aligner/kinematics"
)

// Effect is one sentence on what a move, already in words, did to the gap.
// Rounded parts are made to add up to the rounded total.
func Effect(s words.Speaker, u Units, move string, e kinematics.Effect) string {
	total, tilt := u.RoundGap(e.TotalMM), u.RoundGap(e.TiltMM)
	swing := total - tilt
	if math.Abs(e.RestMM) > math.Abs(e.SwingMM) { // afloat or run-out changed, not a nut
		return s.Say(words.EffectPlain, words.Args{"Move": move, "Total": change(s, u, total),
			"Place": place(s, e.Hour), "Against": place(s, opposite(e.Hour))})
	}
	args := words.Args{"Move": move, "Place": place(s, e.Hour), "Against": place(s, opposite(e.Hour)),
		"Tilt": tip(s, u, tilt), "Swing": change(s, u, swing), "Carry": carry(s, e.CouplingMM), "Total": change(s, u, total)}
	switch {
	case total == 0 && tilt == 0:
		return s.Say(words.EffectNone, args)
	case u.RoundGap(e.SwingMM) == 0:
		return s.Say(words.EffectTilt, args)
	case math.Abs(total) < hardly*math.Abs(tilt):
		return s.Say(words.EffectHardly, args)
	case tilt*swing < 0:
		return s.Say(words.EffectAgainst, args)
	}
	return s.Say(words.EffectBoth, args)
}

// hardly is the share of its own tilt below which a move's total is too little
// to work with.
const hardly = 0.15

// change says "opens it by 1.3" or "closes it by 1.3".
func change(s words.Speaker, u Units, mm float64) string {
	id := words.OpensBy
	if mm < 0 {
		id = words.ClosesBy
	}
	return s.Say(id, words.Args{"Gap": u.Gap(math.Abs(mm)), "Unit": u.GapUnit()})
}

// tip says "shut by 2.4" or "open by 2.4".
func tip(s words.Speaker, u Units, mm float64) string {
	id := words.TipsOpen
	if mm < 0 {
		id = words.TipsShut
	}
	return s.Say(id, words.Args{"Gap": u.Gap(math.Abs(mm)), "Unit": u.GapUnit()})
}

// carry says which way the coupling went.
func carry(s words.Speaker, couplingMM [2]float64) string {
	y, z := couplingMM[0], couplingMM[1]
	switch {
	case math.Abs(z) >= math.Abs(y) && z >= 0:
		return s.Say(words.LiftsCoupling, nil)
	case math.Abs(z) >= math.Abs(y):
		return s.Say(words.LowersCoupling, nil)
	case y > 0:
		return s.Say(words.CouplingToPort, nil)
	}
	return s.Say(words.CouplingToStarboard, nil)
}
