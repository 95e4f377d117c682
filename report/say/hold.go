package say

// This file says how a shaft is held while it is gauged, and the lift that
// brings it to its middle.

import (
	"math"

	"aligner/assets/words"
	"aligner/kinematics"
)

// Held says what a way of holding means for the readings.
func Held(s words.Speaker, held string) string {
	return s.Say(words.Of("hold", held), nil)
}

// Lift says how to bring a hanging shaft to its middle with a hook so far aft of
// the face: by how much it is lifted, by which pull or why by none, what the
// half-weight rule would do, and what an error of height costs.
func Lift(s words.Speaker, u Units, c *kinematics.Centring, hangMM, hookMM float64) []string {
	lines := []string{s.Say(words.LiftHow, words.Args{"Lift": u.MM(c.HeightMM - hangMM), "Hook": u.Plain(hookMM, 0)})}
	unit, mmPerUnit := words.LiftNewton, c.MMPerN
	if !u.Metric {
		unit, mmPerUnit = words.LiftPound, c.MMPerN*NPerLbf
	}
	id := words.LiftNoScale
	if c.ByForce() {
		id = words.LiftScale
	}
	lines = append(lines, s.Say(id, words.Args{"Pull": u.Force(c.HookN), "Unit": s.Say(unit, nil), "Span": u.MM(mmPerUnit)}))
	off := words.RuleHigh
	if c.RuleErrorMM < 0 {
		off = words.RuleLow
	}
	costs := math.Abs(c.RuleErrorMM * c.GapPerHeight)
	lines = append(lines, s.Say(words.LiftRule, words.Args{"Rule": u.Force(c.RuleN), "Error": s.Say(off, words.Args{"Gap": u.MM(math.Abs(c.RuleErrorMM))}),
		"Gap": u.LeafWithUnit(costs)}))
	return append(lines, s.Say(words.LiftHeight, words.Args{"Gap": u.GapWithUnit(math.Abs(c.GapPerHeight))}))
}
