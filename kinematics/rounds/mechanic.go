package rounds

// This file is the mechanic who works by the tool: gauge, ask, move, gauge
// again.

import (
	"fmt"
	"math/rand/v2"

	"aligner/hulls"
)

// Settings of the mechanics' patience and pace.
type Settings struct {
	MostMoves      int // the tool's; default 4
	MostLeverMoves int // default 10
	MostFurther    int // leaves and gaugings more, in one state, while the tool cannot tell; default 12
	// MoveMinutes is what a move takes; default a rough table.
	MoveMinutes func(h *hulls.Hull, nutFlats []int, slideMM []float64) float64
}

func (s Settings) filled() Settings {
	if s.MostMoves == 0 {
		s.MostMoves = 4
	}
	if s.MostLeverMoves == 0 {
		s.MostLeverMoves = 10
	}
	if s.MostFurther == 0 {
		s.MostFurther = 12
	}
	if s.MoveMinutes == nil {
		s.MoveMinutes = roughMoveMinutes
	}
	return s
}

// mostAgain bounds how often readings are taken again in one state: a wiped
// place seldom needs a third time.
const mostAgain = 6

// ByTool lets a mechanic line a boat up by the tool alone.
func ByTool(b *Boat, tool Tool, r *rand.Rand, s Settings) (Job, error) {
	s = s.filled()
	y, err := newYard(b, r)
	if err != nil {
		return Job{}, err
	}
	for refused := 0; ; {
		e, err := y.gaugeByTool(tool, s)
		switch {
		case err != nil:
			return y.job, err
		case e.Verdict == Within:
			y.job.ended(InLine, "")
			return y.job, nil
		case y.job.Moves == s.MostMoves:
			y.job.ended(MovesSpent, e.Verdict)
			return y.job, nil
		case !e.ForMoves && refused == 1:
			y.job.ended(NotFlat, e.Why)
			return y.job, nil
		case !e.ForMoves:
			refused++ // all of it anew
			continue
		}
		refused = 0
		m, err := tool.Plan(&y.visit, e)
		if err != nil {
			return y.job, fmt.Errorf("boat %d, plan: %w", b.Number, err)
		}
		if m.None {
			y.job.ended(NoPlan, m.Why)
			return y.job, nil
		}
		if err := y.move(m.NutFlats, m.SlideMM, s.MoveMinutes(b.Nominal, m.NutFlats, m.SlideMM)); err != nil {
			return y.job, err
		}
	}
}

// gaugeByTool gauges the state as it stands, shaft and flange as they stand,
// and does what the tool asks for until it has its verdict or will not get one.
func (y *yard) gaugeByTool(tool Tool, s Settings) (Estimate, error) {
	if err := y.gaugeAll(y.turnDeg, y.turnDeg); err != nil {
		return Estimate{}, err
	}
	again, further := 0, 0
	for {
		e, err := tool.Estimate(&y.visit)
		if err != nil {
			return e, fmt.Errorf("boat %d, estimate: %w", y.boat.Number, err)
		}
		y.job.Given = append(y.job.Given, Given{Moves: y.job.Moves, Verdict: e.Verdict, P: e.P, TrueThou: y.job.LastTrue()})
		odd := e.Odd
		if len(odd) == 0 && e.Next != nil && e.Next.Again != nil {
			odd = []Ref{*e.Next.Again}
		}
		if len(odd) > 0 && again < mostAgain {
			taken, err := y.takeAgain(odd)
			if err != nil {
				return e, err
			}
			if again += taken; taken > 0 {
				continue
			}
		}
		if e.Next == nil || further == s.MostFurther || !y.worthIt(e) {
			return e, nil
		}
		if done, err := y.gaugeNext(e.Next); err != nil || !done {
			return e, err
		}
		further++
	}
}

// worthIt reports whether the mechanic gauges on: while the tool cannot tell;
// and once before the first move, where it wants shaft and flange turned, since
// what it learns of the run-out holds for the rest of the job.
func (y *yard) worthIt(e Estimate) bool {
	if e.Verdict == CannotTell {
		return true
	}
	return e.Verdict == Outside && e.Next.Turn && y.job.Moves == 0 && len(y.faces) == 1
}

// takeAgain takes readings again, those before the last move left out.
func (y *yard) takeAgain(odd []Ref) (taken int, err error) {
	for _, ref := range odd {
		done, err := y.readAgain(ref.Event, ref.Reading)
		if err != nil {
			return taken, err
		}
		if done {
			taken++
			y.job.Again++
		}
	}
	return taken, nil
}

// gaugeNext gauges what the tool asked for, if it can be.
func (y *yard) gaugeNext(n *Next) (done bool, err error) {
	if n.Turn {
		return true, y.gaugeAll(n.ShaftTurnDeg, n.FlangeTurnDeg)
	}
	if !y.reaches(n.ClockDeg) {
		y.job.OutOfReach++
		return false, nil
	}
	g := y.visit.Events[y.last()].Gauging
	if n.ShaftTurnDeg != g.ShaftTurnDeg || n.FlangeTurnDeg != g.FlangeTurnDeg {
		if err := y.seat(n.ShaftTurnDeg, n.FlangeTurnDeg); err != nil {
			return false, err
		}
	}
	y.tryLeaf(n.ClockDeg, n.Leaf)
	y.job.Trials++
	return true, nil
}
