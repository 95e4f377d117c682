package plan

// This file asks the whole model what a found move does to the log and the
// bearings, and turns a limit it breaks into a row for the next search.

import (
	"fmt"
	"math"

	"aligner/kinematics"
	"aligner/kinematics/plan/search"
	"aligner/kinematics/response"
)

// margin is one quantity that must stay above nought.
type margin struct {
	limit Limit
	name  string
	value float64
}

// margins are what the log has left of clearance, seated, and every bearing of
// downward load, bolted; through a soft coupling whose stiffness is not known, and
// which passes on next to no moment, as seated.
func (j *job) margins(moves []float64) ([]margin, error) {
	at := j.found.plus(j.model.Items, moves)
	s := kinematics.State{LiftMM: at.liftMM, SlideMM: at.slideMM}
	r, err := j.model.Solve(s)
	if err != nil {
		return nil, fmt.Errorf("after the move: %w", err)
	}
	all := []margin{{LogLimit, "log", r.LogClearanceMM}}
	if j.hull.Coupling.BoltedKnown() {
		s.Held = kinematics.Bolted
		if r, err = j.model.Solve(s); err != nil {
			return nil, fmt.Errorf("after the move, bolted: %w", err)
		}
	}
	for i, f := range r.BearingForceN {
		all = append(all, margin{BearingLimit, j.hull.Bearings[i].Name, f[1]})
	}
	return all, nil
}

// verify compares the margins after a move with those of doing nothing: what is
// wrong already and gets no worse is warned of, what the move breaks is cut off.
func (j *job) verify(move []int) ([]search.Row, []Warning, error) {
	moves := make([]float64, len(move))
	for k, m := range move {
		moves[k] = float64(m)
	}
	after, err := j.margins(moves)
	if err != nil {
		return nil, nil, err
	}
	before, err := j.margins(make([]float64, len(move)))
	if err != nil {
		return nil, nil, err
	}
	var cuts []search.Row
	var warnings []Warning
	for i, m := range after {
		if m.value > 0 {
			continue
		}
		warnings = append(warnings, Warning{m.limit, m.name, m.value})
		if least := math.Min(0, before[i].value); m.value < least {
			cut, err := j.cut(i, m.value-least, moves)
			if err != nil {
				return nil, nil, err
			}
			cuts = append(cuts, cut)
		}
	}
	return cuts, warnings, nil
}

// cut is the linear row that keeps margin i from being short, by differences
// round the move that broke it.
func (j *job) cut(i int, short float64, moves []float64) (search.Row, error) {
	of := make([]float64, len(moves))
	base, err := j.margins(moves)
	if err != nil {
		return search.Row{}, err
	}
	most := short
	for k := range moves {
		step := append([]float64(nil), moves...)
		step[k]++
		there, err := j.margins(step)
		if err != nil {
			return search.Row{}, err
		}
		of[k] = base[i].value - there[i].value // - gradient
		most += of[k] * moves[k]
	}
	return search.Row{Of: of, Most: most}, nil
}

// leverGap is what the gap is while a station's slide is on the lever, over
// what it is once let go: added to the gap expected after.
func (j *job) leverGap(k int, moves []float64) ([2]float64, error) {
	only := make([]float64, len(moves))
	only[k] = moves[k]
	at := j.noStand()
	response.Add(j.model.Items, only, at.liftMM, at.slideMM)
	var gap [2][2]float64
	for i, on := range [2]bool{false, true} {
		r, err := j.model.Solve(kinematics.State{SlideMM: at.slideMM, LeverOn: on})
		if err != nil {
			return [2]float64{}, fmt.Errorf("on the lever: %w", err)
		}
		gap[i] = [2]float64{r.Gap.CosMM, r.Gap.SinMM}
	}
	return [2]float64{gap[1][0] - gap[0][0], gap[1][1] - gap[0][1]}, nil
}
