package plan

// This file weighs a move that somebody is trying by hand: what it costs, what
// it leaves of thread and slides, how the mounts then share the load, and how
// sure it keeps the rule; the same questions that a plan answers of its own.

import (
	"math"

	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/response"
)

// Weighed is what a move would come to.
type Weighed struct {
	Minutes     float64
	Expected    gauge.Gaussian
	Probability float64 // of keeping the rule after it
	Mounts      []After // by mount of the hull
	Warnings    []Warning
}

// After is one mount after a move.
type After struct {
	LoadN float64
	// UpMM and DownMM are the thread in hand either way, PortMM and StarboardMM
	// what is left of the slide, counted from the hull's ranges; negative: beyond.
	UpMM, DownMM, PortMM, StarboardMM float64
}

// Weigh says what a move would come to after the visit as it stands. The
// estimate must be ready, whatever it lets be moved by; s as for Plan.
func (p *Planner) Weigh(v *visit.Visit, e *gauge.Estimate, s Settings, move visit.Move) (*Weighed, error) {
	j, _, err := p.begin(v, e, s)
	if err != nil {
		return nil, err
	}
	moves := p.moves([]visit.Move{move})
	w := &Weighed{Minutes: j.effort.Minutes(p.hull, p.model.Items, moves), Expected: j.chance.after(moves)}
	w.Probability = w.Expected.Inside(j.chance.target, j.chance.radiusMM)
	at := j.found.plus(p.model.Items, moves)
	r, err := p.model.Solve(kinematics.State{LiftMM: at.liftMM, SlideMM: at.slideMM})
	if err != nil {
		return nil, err
	}
	w.Mounts = j.left(moves)
	for i := range w.Mounts {
		w.Mounts[i].LoadN = r.MountLoadN[i]
	}
	margins, err := j.margins(moves)
	if err != nil {
		return nil, err
	}
	for _, m := range margins {
		if m.value <= 0 {
			w.Warnings = append(w.Warnings, Warning{m.limit, m.name, m.value})
		}
	}
	return w, nil
}

// left is what each mount has left of its ranges after moves.
func (j *job) left(moves []float64) []After {
	n := j.noStand()
	total := append([]float64(nil), moves...)
	for k := range total {
		total[k] += j.done[k]
	}
	response.Add(j.model.Items, total, n.liftMM, n.slideMM)
	all := make([]After, len(n.liftMM))
	for i, m := range j.hull.Mounts {
		all[i] = After{UpMM: m.NutRangeMM[1] - n.liftMM[i], DownMM: n.liftMM[i] - m.NutRangeMM[0],
			PortMM: m.SlideRangeMM[1] - n.slideMM[i], StarboardMM: n.slideMM[i] - m.SlideRangeMM[0]}
	}
	return all
}

// Least is the smaller of the thread left up and down.
func (a *After) Least() float64 { return math.Min(a.UpMM, a.DownMM) }
