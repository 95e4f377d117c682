package rounds

// This file joins the program's own estimate and plan to the simulation.

import (
	"fmt"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
)

// thinking is the tool under test: packages gauge and plan.
type thinking struct {
	gauge *gauge.Model
	plan  *plan.Planner
}

// NewTool makes the program's own estimate and plan ready for a nominal hull.
func NewTool(h *hulls.Hull, afloat bool) (Tool, error) {
	m, err := gauge.NewModel(h, afloat)
	if err != nil {
		return nil, err
	}
	p, err := plan.NewPlanner(h, afloat)
	if err != nil {
		return nil, err
	}
	return &thinking{m, p}, nil
}

// Estimate is package gauge's, in the words the mechanic asks for.
func (t *thinking) Estimate(v *visit.Visit) (Estimate, error) {
	g, err := t.gauge.Estimate(v)
	if err != nil {
		return Estimate{}, err
	}
	if g.Status != gauge.Ready {
		return Estimate{}, fmt.Errorf("no estimate: %s", g.Status)
	}
	e := Estimate{Verdict: string(g.Verdict), P: g.Within, ForMoves: g.ForMoves, Why: string(g.WhyNot), Whole: g}
	if n := g.Next; n != nil {
		e.Next = &Next{Again: n.What == gauge.TakeItAgain, Turn: n.What == gauge.TurnShaft, ClockDeg: n.ClockDeg,
			Leaf: visit.MM(n.LeafMM), ShaftTurnDeg: n.ShaftTurnDeg, FlangeTurnDeg: n.FlangeTurnDeg}
		if n.Again != nil {
			e.Next.Event = n.Again.Event
		}
	}
	return e, nil
}

// Plan is package plan's.
func (t *thinking) Plan(v *visit.Visit, e Estimate) (Move, error) {
	p, err := t.plan.Plan(v, e.Whole.(*gauge.Estimate), plan.Settings{})
	if err != nil {
		return Move{}, err
	}
	m := Move{NutFlats: p.NutFlats, SlideMM: p.SlideMM, P: p.Probability}
	switch p.Status {
	case plan.Found, plan.Unsure:
	case plan.Nothing:
		m.InLine = true
	default:
		m.None, m.Why = true, string(p.Status)
	}
	return m, nil
}
