package rounds

// This file is the mechanic who works by the tool: gauge, ask, move, gauge
// again.

import (
	"fmt"
	"math/rand/v2"
)

// Settings of the mechanics' patience and pace.
type Settings struct {
	MostMoves      int // the tool's; default 4
	MostLeverMoves int // default 10
	MostFurther    int // leaves and gaugings more, in one state, while the tool cannot tell; default 12
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
		if m.InLine {
			y.job.Given = append(y.job.Given, Given{y.job.Moves, "moves say within", m.P, y.job.LastTrue()})
			y.job.ended(InLine, "by readings and moves together")
			return y.job, nil
		}
		if m.None {
			y.job.ended(NoPlan, m.Why)
			return y.job, nil
		}
		if err := y.move(m.NutFlats, m.SlideMM); err != nil {
			return y.job, err
		}
		y.job.Planned = append(y.job.Planned, Given{y.job.Moves, "planned", m.P, y.job.LastTrue()})
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
		switch n := e.Next; {
		case n == nil:
			return e, nil
		case n.Again && again < mostAgain:
			again++
			err = y.readAgain(n.Event, n.ClockDeg)
		case n.Again || e.Verdict == Within || further == s.MostFurther:
			return e, nil
		case n.Turn:
			further++
			err = y.gaugeAll(n.ShaftTurnDeg, n.FlangeTurnDeg)
		case !y.reaches(n.ClockDeg):
			y.job.OutOfReach++
			return e, nil
		default:
			further++
			y.tryLeaf(n.ClockDeg, n.Leaf)
		}
		if err != nil {
			return e, err
		}
	}
}
