package say

// This file says an estimate: how the engine stands, how sure that is, what
// does not fit, and what to gauge next.

import (
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
)

// Estimate is an estimate in lines, the most important first.
func Estimate(s words.Speaker, u Units, v *visit.Visit, e *gauge.Estimate) []string {
	var lines []string
	add := func(id words.ID, args words.Args) { lines = append(lines, s.Say(id, args)) }
	for _, f := range v.LookOver {
		if f.Finding == "failed" {
			add(words.LookOverFailed, words.Args{"Check": f.Check})
		}
	}
	switch e.Status {
	case gauge.Nothing:
		add(words.NothingGauged, nil)
	case gauge.Moved:
		add(words.NotSinceMove, nil)
	default:
		if e.GapCount == 0 {
			add(words.NoGapGauged, nil)
			break
		}
		if e.Flat {
			lines = append(lines, Stands(s, u, e)...)
		}
		lines = append(lines, Verdict(s, u, v, e)...)
		if e.TightenedSince {
			add(words.TightenedSince, nil)
		}
		lines = append(lines, power(s, u, e)...)
		lines = append(lines, runOut(s, u, e)...)
		lines = append(lines, indexed(s, u, e)...)
		lines = append(lines, touching(s, u, e)...)
	}
	lines = append(lines, Odd(s, u, e)...)
	for _, o := range e.Untold {
		if o.What == gauge.Offset {
			continue // seated, it is in the gap already: true, and no help in the bay
		}
		add(words.UntoldLine, words.Args{"What": s.Say(words.Of("untold", string(o.What)), nil)})
	}
	for _, a := range e.SetAside {
		add(words.SetAsideLine, words.Args{"Event": a.Event + 1, "Why": s.Say(words.Of("aside", string(a.Why)), nil)})
	}
	if e.Status == gauge.Ready {
		lines = append(lines, Next(s, u, e)...)
	}
	return lines
}

// Brief is what a mechanic needs between two readings: how it stands, the
// verdict, what does not fit, what next.
func Brief(s words.Speaker, u Units, v *visit.Visit, e *gauge.Estimate) []string {
	switch {
	case e.Status == gauge.Nothing:
		return []string{s.Say(words.NothingGauged, nil)}
	case e.Status == gauge.Moved:
		return []string{s.Say(words.NotSinceMove, nil)}
	case e.GapCount == 0:
		return append([]string{s.Say(words.NoGapGauged, nil)}, Next(s, u, e)...)
	}
	var lines []string
	if e.Flat {
		lines = Stands(s, u, e)
	}
	verdicts := Verdict(s, u, v, e)
	lines = append(lines, verdicts[len(verdicts)-1])
	lines = append(lines, runOut(s, u, e)...)
	lines = append(lines, Odd(s, u, e)...)
	return append(lines, Next(s, u, e)...)
}

// Stands is the gap that the engine's position gives.
func Stands(s words.Speaker, u Units, e *gauge.Estimate) []string {
	size := 2 * math.Hypot(e.Gap.MeanMM[0], e.Gap.MeanMM[1])
	large, _, _ := e.Gap.Axes()
	give := 2 * large
	if give > e.LimitMM && size < 2*give {
		return []string{s.Say(words.EstimateUnsure, words.Args{"Gap": u.LeafWithUnit(give)})}
	}
	if size < give || u.Leaf(size) == 0 {
		return []string{s.Say(words.EstimateFlat, words.Args{"Gap": u.LeafWithUnit(math.Max(size, give))})}
	}
	opens := degrees(e.Gap.MeanMM)
	return []string{s.Say(words.EstimateGap, words.Args{"Gap": u.LeafWithUnit(size), "Error": u.LeafWithUnit(give), "Opens": Place(s, opens)})}
}

// degrees is the clock angle where [cos, sin] is largest.
func degrees(ab [2]float64) float64 {
	return math.Mod(math.Atan2(ab[1], ab[0])*180/math.Pi+360, 360)
}

// Verdict is the rule, the target and what is said against them.
func Verdict(s words.Speaker, u Units, v *visit.Visit, e *gauge.Estimate) []string {
	var lines []string
	if v.Target.Spread.Given() {
		lines = append(lines, s.Say(words.EstimateTarget, words.Args{"Gap": u.LeafWithUnit(v.Target.Spread.MM()),
			"Opens": Place(s, v.Target.OpensAtDeg), "Reason": v.Target.Reason}))
	}
	rule := s.Say(words.RuleLine, words.Args{"Named": e.Rule.Named, "Limits": s.Say(words.Of("limits", e.Rule.Limits), nil), "Limit": u.GapWithUnit(e.LimitMM)})
	if !e.RuleChosen {
		rule += " " + s.Say(words.RuleDefault, nil)
	}
	verdict := s.Say(words.VerdictLine, words.Args{"Verdict": s.Say(words.Of("verdict", string(e.Verdict)), nil), "Chance": Chance(s, e.Within)})
	return append(lines, rule, verdict)
}

// Chance says a probability.
func Chance(s words.Speaker, p float64) string {
	switch {
	case p < 0.01:
		return s.Say(words.ChanceUnder, nil)
	case p > 0.99:
		return s.Say(words.ChanceOver, nil)
	}
	return s.Say(words.ChanceIn100, words.Args{"Number": int(math.Round(100 * p))})
}

// Place says a clock position looking forward, with the side it lies on.
func Place(s words.Speaker, deg float64) string {
	side := ""
	sin, cos := math.Sincos(deg * math.Pi / 180)
	switch {
	case math.Abs(sin) < 0.26 && cos > 0:
		side = s.Say(words.Top, nil)
	case math.Abs(sin) < 0.26:
		side = s.Say(words.Bottom, nil)
	case sin > 0:
		side = s.Say(words.Starboard, nil)
	default:
		side = s.Say(words.Port, nil)
	}
	return s.Say(words.ClockPlace, words.Args{"Clock": Clock(deg, false), "Side": side})
}

// runOutShown is the share of its own error that a half's run-out must exceed
// to be worth a line.
const runOutShown = 2

// RunOut says how much the halves run out, where the readings tell.
func RunOut(s words.Speaker, u Units, e *gauge.Estimate) []string { return runOut(s, u, e) }

func runOut(s words.Speaker, u Units, e *gauge.Estimate) []string {
	var lines []string
	for _, o := range e.Untold {
		if o.What == gauge.WhichHalf {
			both := [2]float64{e.RunOut[0].MeanMM[0] + e.RunOut[1].MeanMM[0], e.RunOut[0].MeanMM[1] + e.RunOut[1].MeanMM[1]}
			return []string{s.Say(words.RunOutOne, words.Args{"TIR": u.LeafWithUnit(2 * math.Hypot(both[0], both[1]))})}
		}
	}
	for half, name := range [2]words.ID{words.HalfShaft, words.HalfFlange} {
		r := e.RunOut[half]
		size := math.Hypot(r.MeanMM[0], r.MeanMM[1])
		large, _, _ := r.Axes()
		args := words.Args{"Half": s.Say(name, nil), "TIR": u.LeafWithUnit(2 * size), "Opens": Place(s, degrees(r.MeanMM))}
		switch {
		case r.Untrue:
			lines = append(lines, s.Say(words.RunOutUntrue, args))
		case size > runOutShown*large && u.Leaf(2*size) > 0:
			lines = append(lines, s.Say(words.RunOutLine, args))
		}
	}
	return lines
}

// power says what power adds to the gap and what is therefore aimed at, at rest.
func power(s words.Speaker, u Units, e *gauge.Estimate) []string {
	size := 2 * math.Hypot(e.PowerMM[0], e.PowerMM[1])
	if size == 0 {
		return nil
	}
	aim := 2 * math.Hypot(e.TargetMM[0], e.TargetMM[1])
	return []string{s.Say(words.EstimatePower, words.Args{"Gap": u.GapWithUnit(size), "Opens": Place(s, degrees(e.PowerMM)),
		"Aim": u.GapWithUnit(aim), "AimOpens": Place(s, degrees(e.TargetMM))})}
}

// indexed says what bolting the halves together otherwise would give, where that
// helps.
func indexed(s words.Speaker, u Units, e *gauge.Estimate) []string {
	if !e.IndexingHelps() {
		return nil
	}
	all := e.Indexed()
	return []string{s.Say(words.RunOutIndexed, words.Args{"Now": u.LeafWithUnit(all[0]), "Quarter": u.LeafWithUnit(all[1]),
		"Half": u.LeafWithUnit(all[2]), "ThreeQuarters": u.LeafWithUnit(all[3])})}
}

// touching tells of seatings of the present state whose faces did not touch.
func touching(s words.Speaker, u Units, e *gauge.Estimate) []string {
	var lines []string
	for _, seat := range e.Seatings {
		if seat.State == len(e.States)-1 && seat.Touching && !seat.Touched && seat.LeastMM > 0 {
			lines = append(lines, s.Say(words.NotTouching, words.Args{"Least": u.LeafWithUnit(seat.LeastMM), "Event": seat.Events[0] + 1}))
		}
	}
	return lines
}

// Odd names the readings that do not fit.
func Odd(s words.Speaker, u Units, e *gauge.Estimate) []string {
	var lines, places []string
	var several []gauge.Cause
	for _, o := range e.Odd {
		if !o.Alone {
			places = append(places, Place(s, o.ClockDeg))
			several = o.Causes
			continue
		}
		off := words.OddLess
		if o.OffMM > 0 {
			off = words.OddMore
		}
		lines = append(lines, s.Say(words.OddAlone, words.Args{"Place": Place(s, o.ClockDeg), "Event": o.Event + 1,
			"Off": s.Say(off, words.Args{"Gap": u.LeafWithUnit(math.Abs(o.OffMM))}), "Causes": causes(s, o.Causes)}))
	}
	if len(places) > 0 {
		lines = append(lines, s.Say(words.OddOneOf, words.Args{"Places": strings.Join(places, "; "), "Causes": causes(s, several)}))
	}
	return lines
}

func causes(s words.Speaker, all []gauge.Cause) string {
	var said []string
	for _, c := range all {
		said = append(said, s.Say(words.Of("cause", string(c)), nil))
	}
	return strings.Join(said, "; ")
}

// Next says what to gauge next, and why nothing may be moved yet.
func Next(s words.Speaker, u Units, e *gauge.Estimate) []string {
	var lines []string
	if e.WhyNot != "" {
		lines = append(lines, s.Say(words.RefusedLine, words.Args{"Why": s.Say(words.Of("refusal", string(e.WhyNot)), nil)}))
	}
	n := e.Next
	switch {
	case n == nil && e.Verdict == gauge.CannotTell:
		lines = append(lines, s.Say(words.NextNone, nil))
	case n == nil:
	case n.What == gauge.GaugeGaps:
		lines = append(lines, s.Say(words.NextGaps, words.Args{"Place": Place(s, n.ClockDeg)}))
	case n.What == gauge.GaugeOffset:
		lines = append(lines, s.Say(words.NextOffset, nil))
	case e.WhyNot == gauge.NotFlat:
		lines = append(lines, s.Say(words.NextAllAgain, nil))
	case n.What == gauge.TakeItAgain:
		lines = append(lines, s.Say(words.NextAgain, words.Args{"Place": Place(s, n.ClockDeg)}))
	case n.What == gauge.TurnShaft:
		lines = append(lines, s.Say(words.NextTurn, words.Args{"Shaft": u.Plain(n.ShaftTurnDeg, 0), "Flange": u.Plain(n.FlangeTurnDeg, 0)}))
	default:
		lines = append(lines, s.Say(words.NextLeaf, words.Args{"Leaf": u.Thickness(n.LeafMM), "Place": Place(s, n.ClockDeg)}))
	}
	return lines
}
