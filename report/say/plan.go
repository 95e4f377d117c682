package say

// This file says a plan: the move, its steps with what to expect after each,
// and what stops it.

import (
	"math"
	"slices"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/kinematics/response"
)

// Plan is a plan in lines. afloat adds the cautions that go with water.
func Plan(s words.Speaker, u Units, h *hulls.Hull, e *gauge.Estimate, p *plan.Plan, afloat bool) []string {
	var lines []string
	add := func(id words.ID, args words.Args) { lines = append(lines, s.Say(id, args)) }
	switch p.Status {
	case plan.NotForMoves:
		add(words.PlanNotForMoves, nil)
		return append(lines, Next(s, u, e)...)
	case plan.Nothing:
		add(words.PlanNothing, words.Args{"Chance": Chance(s, p.Probability)})
		return append(lines, warnings(s, p)...)
	case plan.None:
		add(words.PlanNone, nil)
		return append(lines, bindings(s, u, h, p)...)
	}
	large, _, _ := p.Expected.Axes()
	add(words.PlanFound, words.Args{"Move": Move(s, u, h, floats(p.NutFlats), p.SlideMM), "Minutes": int(math.Ceil(p.Minutes/5) * 5)})
	add(words.PlanChance, words.Args{"Chance": Chance(s, p.Probability), "Gap": u.LeafWithUnit(2 * math.Hypot(p.Expected.MeanMM[0], p.Expected.MeanMM[1])), "Error": u.LeafWithUnit(2 * large)})
	lines = append(lines, planDoubts(s, u, e, p)...)
	lines = append(lines, Learnt(s, u, h, p.Learnt)...)
	lines = append(lines, bindings(s, u, h, p)...)
	lines = append(lines, warnings(s, p)...)
	lines = append(lines, "", s.Say(words.PlanCautions, nil))
	if afloat {
		add(words.PlanAfloat, nil)
	}
	add(words.PlanDrawBack, words.Args{"Length": u.Plain(p.DrawBackMM, 1) + " mm"})
	for i := range p.Steps {
		lines = append(lines, Step(s, u, h, e, p, i)...)
	}
	add(words.PlanAfter, nil)
	return lines
}

// planDoubts say what makes a plan less than sure.
func planDoubts(s words.Speaker, u Units, e *gauge.Estimate, p *plan.Plan) []string {
	var lines []string
	if p.Status == plan.Unsure {
		lines = append(lines, s.Say(words.PlanUnsure, words.Args{"Wanted": Chance(s, p.Wanted)}))
	}
	if e.Next != nil {
		lines = append(lines, s.Say(words.PlanBetterFirst, nil)+" "+strings.Join(Next(s, u, e), " "))
	}
	return lines
}

// PlanNotes are what is to be said of a plan beside its steps: what makes it less
// than sure, what stops a better one, what the boat taught.
func PlanNotes(s words.Speaker, u Units, h *hulls.Hull, e *gauge.Estimate, p *plan.Plan) []string {
	lines := planDoubts(s, u, e, p)
	lines = append(lines, bindings(s, u, h, p)...)
	lines = append(lines, warnings(s, p)...)
	return append(lines, Told(s, h, p.Learnt)...)
}

// Step is one step in lines: what to do, what to expect, when to stop.
func Step(s words.Speaker, u Units, h *hulls.Hull, e *gauge.Estimate, p *plan.Plan, i int) []string {
	step := &p.Steps[i]
	lines := []string{s.Say(words.PlanStep, words.Args{"Number": i + 1, "Move": Move(s, u, h, floats(step.NutFlats), step.SlideMM)})}
	if step.OnLever != nil {
		lines = append(lines, "   "+lever(s, u, step))
	} else {
		how := words.PlanStepNuts
		if slices.ContainsFunc(h.Mounts, func(m hulls.Mount) bool { return m.Kind == hulls.Solid }) {
			how = words.PlanStepShims
		}
		lines = append(lines, "   "+s.Say(how, nil))
	}
	var gaps []string
	for _, deg := range e.ClockDeg {
		gaps = append(gaps, s.Say(words.PlanExpectAt, words.Args{"Clock": Clock(deg, false), "Gap": u.Plain(u.Leaf(step.GapAtMM(deg))/unitMM(u), 2)}))
	}
	lines = append(lines, "   "+s.Say(words.PlanExpect, words.Args{"Unit": u.GapUnit(), "Gaps": strings.Join(gaps, u.between())}))
	args := words.Args{"Place": Place(s, step.StopClockDeg), "Below": u.LeafWithUnit(step.StopBelowMM), "Above": u.LeafWithUnit(step.StopAboveMM)}
	if u.Leaf(step.StopBelowMM) == 0 {
		return append(lines, "   "+s.Say(words.PlanStopAbove, args))
	}
	return append(lines, "   "+s.Say(words.PlanStop, args))
}

func unitMM(u Units) float64 {
	if u.Metric {
		return 1
	}
	return MMPerThou
}

func lever(s words.Speaker, u Units, step *plan.Step) string {
	far := 0.0
	for _, mm := range step.SlideMM {
		if math.Abs(mm) > math.Abs(far) {
			far = mm
		}
	}
	side := words.ToPortWord
	if far < 0 {
		side = words.ToStarboardWord
	}
	on := *step.OnLever
	return s.Say(words.PlanStepLever, words.Args{"Length": u.Plain(math.Abs(far), 2) + " mm", "Side": s.Say(side, nil),
		"Gap": u.LeafWithUnit(2 * math.Hypot(on[0], on[1])), "Opens": Place(s, degrees(on))})
}

func floats(n []int) []float64 {
	f := make([]float64, len(n))
	for i, v := range n {
		f[i] = float64(v)
	}
	return f
}

// mounts names mounts: "aft port and aft starboard".
func mounts(s words.Speaker, h *hulls.Hull, at []int) string {
	var names []string
	for _, i := range at {
		names = append(names, s.Part(h.Mounts[i].Name))
	}
	n := len(names)
	if n < 2 {
		return strings.Join(names, "")
	}
	return s.Say(words.AndList, words.Args{"First": strings.Join(names[:n-1], ", "), "Last": names[n-1]})
}

func bindings(s words.Speaker, u Units, h *hulls.Hull, p *plan.Plan) []string {
	var lines []string
	say := func(line words.ID, kind, what string, at []int, mm float64) {
		args := words.Args{"Mounts": mounts(s, h, at), "Length": u.Plain(math.Abs(mm), 1) + " mm"}
		lines = append(lines, s.Say(line, words.Args{"What": s.Say(words.Of(kind, what), args)}))
	}
	for _, b := range p.Binding {
		say(words.BindingLine, "binding", string(b.What), b.Mounts, b.MM)
	}
	for _, f := range p.Freeing {
		how := string(f.How)
		if f.How == plan.PlateUnder && f.MM < 0 {
			how = "plate out"
		}
		say(words.FreeingLine, "freeing", how, f.Mounts, f.MM)
	}
	return lines
}

func warnings(s words.Speaker, p *plan.Plan) []string { return Warnings(s, p.Warnings) }

// Warnings say what is doubtful about a move itself.
func Warnings(s words.Speaker, all []plan.Warning) []string {
	var lines []string
	for _, w := range all {
		lines = append(lines, s.Say(words.Of("warning", string(w.What)), words.Args{"Name": w.Name}))
	}
	return lines
}

// toldEnough is the share of an item's error below which the moves so far are
// said not to tell.
const toldEnough = 0.1

// Learnt is what the boat's answers taught.
func Learnt(s words.Speaker, u Units, h *hulls.Hull, l *response.Learnt) []string {
	if l == nil || l.Response.Learnt == 0 {
		return before(s, l)
	}
	told := Told(s, h, l)
	lines := told[:1:1]
	for _, x := range l.Surprises {
		diff := [2]float64{x.FoundMM[0] - x.ExpectedMM[0], x.FoundMM[1] - x.ExpectedMM[1]}
		hour := math.Round(degrees(diff)/30) * 30
		sin, cos := math.Sincos(hour * math.Pi / 180)
		across := func(v [2]float64) string { return u.Signed(2 * (v[0]*cos + v[1]*sin)) }
		var causes []string
		for _, c := range x.Causes {
			causes = append(causes, s.Say(words.Of("learn", string(c)), nil))
		}
		lines = append(lines, s.Say(words.PlanSurprise, words.Args{"Number": x.Change + 1, "Place": Place(s, hour),
			"Expected": across(x.ExpectedMM), "Found": across(x.FoundMM), "Causes": strings.Join(causes, "; ")}))
	}
	return append(lines, told[1:]...)
}

// Told says by how many answers a plan goes, and of which nuts and slides they
// tell nothing yet.
func Told(s words.Speaker, h *hulls.Hull, l *response.Learnt) []string {
	if l == nil || l.Response.Learnt == 0 {
		return before(s, l)
	}
	lines := []string{s.Say(words.PlanLearnt, words.Args{"Count": l.Response.Learnt})}
	var open []string
	for j, told := range l.Told {
		if it := l.Response.Items[j]; told < toldEnough {
			if it.Slide {
				open = append(open, s.Say(words.SlidesOf, words.Args{"Mounts": mounts(s, h, it.Mounts)}))
			} else {
				open = append(open, s.Say(words.NutOf, words.Args{"Mount": mounts(s, h, it.Mounts)}))
			}
		}
	}
	switch len(open) {
	case 0:
	case len(l.Told):
		lines = append(lines, s.Say(words.PlanUntoldAll, nil))
	default:
		lines = append(lines, s.Say(words.PlanUntold, words.Args{"Items": strings.Join(open, ", ")}))
	}
	return append(lines, before(s, l)...)
}

// before says by how many answers of earlier visits a plan goes.
func before(s words.Speaker, l *response.Learnt) []string {
	if l == nil || l.Response.Measured == 0 {
		return nil
	}
	return []string{s.Say(words.PlanMeasured, words.Args{"Count": l.Response.Measured})}
}

// Signed writes a change of a gap with its sign.
func (u Units) Signed(mm float64) string {
	if u.Leaf(mm) > 0 {
		return "+" + u.LeafWithUnit(mm)
	}
	return u.LeafWithUnit(mm)
}
