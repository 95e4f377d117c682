package rounds

// This file joins the program's own estimate and plan to the simulation.

import (
	"fmt"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/kinematics/response"
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
	if p.Status == plan.Nothing {
		return Move{InLine: true}, nil
	}
	if p.Status != plan.Found && p.Status != plan.Unsure {
		return Move{None: true, Why: string(p.Status)}, nil
	}
	return Move{NutFlats: p.NutFlats, SlideMM: p.SlideMM}, nil
}

// MoveMinutes prices a move by the planner's own list, for whoever made it.
func MoveMinutes(h *hulls.Hull, nutFlats []int, slideMM []float64) float64 {
	items := response.Items(h)
	nuts, slides := map[string]float64{}, map[string]float64{}
	for i, m := range h.Mounts {
		nuts[m.Name], slides[m.Name] = float64(nutFlats[i]), slideMM[i]
	}
	return plan.DefaultEffort.Minutes(h, items, response.MovesOf(h, items, nuts, slides))
}
