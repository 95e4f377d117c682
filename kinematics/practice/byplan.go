package practice

// This file is the tool's own work on a task: acts by its estimate and plan alone.
// It knows nothing that a learner is not told.

import (
	"errors"
	"fmt"
	"math"

	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
)

// thinking is the tool made ready for a task's boat.
type thinking struct {
	gauge *gauge.Model
	plan  *plan.Planner
}

func (w *Work) thinking() (*thinking, error) {
	g, err := gauge.NewModel(w.hull, w.afloat)
	if err != nil {
		return nil, err
	}
	p, err := plan.NewPlanner(w.hull, w.afloat)
	if err != nil {
		return nil, err
	}
	return &thinking{g, p}, nil
}

// How patient the tool's own mechanic is.
const (
	mostRounds  = 8  // moves
	mostFurther = 12 // leaves and gaugings more while the tool cannot tell
	mostAgain   = 6  // readings wiped and taken again, in one state
)

// byPlan is one piece of work by the tool.
type byPlan struct {
	*Work
	*thinking
	turnDeg                   float64
	burr, stuck, drawn, stops bool // met on the way
	last                      *gauge.Estimate
}

// ByPlan works a task by the tool's estimate and plan until it says that the engine
// is in line with every mount tight, or has no way further; then it hands her over.
func ByPlan(t Task) (*Work, error) {
	w, err := Begin(t)
	if err != nil {
		return nil, err
	}
	return w, w.byPlan()
}

func (w *Work) byPlan() error {
	b := &byPlan{Work: w}
	var err error
	if b.thinking, err = w.thinking(); err != nil {
		return err
	}
	for !b.stops && err == nil {
		err = b.round()
	}
	if err == nil {
		err = b.tellApart()
	}
	if err == nil {
		err = b.do(Act{HandOver: &HandOver{b.cause()}})
	}
	if err != nil {
		return fmt.Errorf("%s %d, by plan: %w", w.Task.Grade, w.Task.Number, err)
	}
	return nil
}

func (b *byPlan) do(a Act) error {
	told, err := b.Do(a)
	b.burr = b.burr || told.Burr
	b.stuck = b.stuck || told.Stuck != ""
	return err
}

// round gauges, and then moves, tightens or stops.
func (b *byPlan) round() error {
	if err := b.gaugeOn(); err != nil {
		return err
	}
	if b.last.Verdict != gauge.Within && !b.last.ForMoves {
		if err := b.gaugeOn(); err != nil { // all of it anew, once
			return err
		}
	}
	for {
		flats, slides, err := b.planned()
		switch {
		case err != nil:
			return err
		case flats == nil && b.Tight():
			b.stops = true
			return nil
		case flats == nil:
			return b.do(Act{Fasten: &Fasten{}})
		case b.tally.Rounds == mostRounds:
			b.stops = true
			return nil
		}
		// A mount that pulls when tightened shows as a move after all was in line.
		b.drawn = b.drawn || b.Tight()
		before := b.tally.Rounds
		if err := b.do(Act{Turn: &Turn{flats, slides}}); err != nil {
			return err
		}
		if b.tally.Rounds > before {
			return nil
		}
		// The nut is stuck: another plan, without it.
	}
}

// planned is the tool's move; nil: none is needed, or none would do.
func (b *byPlan) planned() (flats map[string]int, slideMM map[string]float64, err error) {
	if b.last.Verdict == gauge.Within {
		return nil, nil, nil
	}
	p, err := b.plan.Plan(b.Visit(), b.last, plan.Settings{})
	if err != nil {
		return nil, nil, err
	}
	if p.Status != plan.Found && p.Status != plan.Unsure {
		return nil, nil, nil
	}
	flats, slideMM = map[string]int{}, map[string]float64{}
	for i, m := range b.hull.Mounts {
		if p.NutFlats[i] != 0 {
			flats[m.Name] = p.NutFlats[i]
		}
		if p.SlideMM[i] != 0 {
			slideMM[m.Name] = p.SlideMM[i]
		}
	}
	return flats, slideMM, nil
}

// gaugeOn gauges all round and does what the tool asks for until it can tell.
func (b *byPlan) gaugeOn() error {
	if err := b.allRound(b.turnDeg, b.turnDeg); err != nil {
		return err
	}
	again, further := 0, 0
	for {
		e, err := b.estimate(b.Visit())
		if err != nil {
			return err
		}
		b.last = e
		n := e.Next
		switch {
		case n == nil:
			return nil
		case n.What == gauge.TakeItAgain && again < mostAgain:
			again++
			err = b.again(n)
		case n.What == gauge.TakeItAgain || e.Verdict == gauge.Within || further == mostFurther:
			return nil
		case n.What == gauge.TurnShaft:
			further++
			err = b.allRound(n.ShaftTurnDeg, n.FlangeTurnDeg)
		case !b.bench.Reaches(n.ClockDeg):
			return nil
		default:
			further++
			err = b.do(Act{Leaf: &Leaf{n.ClockDeg, n.LeafMM}})
		}
		if err != nil {
			return err
		}
	}
}

func (b *byPlan) allRound(shaftTurnDeg, flangeTurnDeg float64) error {
	if err := b.do(Act{Gauge: &Gauge{kinematics.Seated, shaftTurnDeg, flangeTurnDeg}}); err != nil {
		return err
	}
	b.turnDeg = shaftTurnDeg
	for _, deg := range b.ClockDeg() {
		if err := b.do(Act{Read: &Place{deg}}); err != nil {
			return err
		}
	}
	return nil
}

// again wipes a place and reads it anew, in its gauging or in one like it.
func (b *byPlan) again(n *gauge.Next) error {
	events := b.Visit().Events
	if n.Again != nil && n.Again.Event != len(events)-1 {
		g := events[n.Again.Event].Gauging
		if err := b.do(Act{Gauge: &Gauge{kinematics.Seated, g.ShaftTurnDeg, g.FlangeTurnDeg}}); err != nil {
			return err
		}
		b.turnDeg = g.ShaftTurnDeg
	}
	if err := b.do(Act{Clean: &Place{n.ClockDeg}}); err != nil {
		return err
	}
	return b.do(Act{Read: &Place{n.ClockDeg}})
}

var errNoEstimate = errors.New("no estimate")

// estimate is the tool's of a visit.
func (t *thinking) estimate(v *visit.Visit) (*gauge.Estimate, error) {
	e, err := t.gauge.Estimate(v)
	if err != nil {
		return nil, err
	}
	if e.Status != gauge.Ready {
		return nil, fmt.Errorf("%w: %s", errNoEstimate, e.Status)
	}
	return e, nil
}

// tellApart gauges once more with the flange alone turned half round, where a half
// runs out: turned together only their sum shows.
func (b *byPlan) tellApart() error {
	if b.untrueThou() < leastUntrueThou {
		return nil
	}
	if err := b.allRound(b.turnDeg, math.Mod(b.turnDeg+halfTurnDeg, 360)); err != nil {
		return err
	}
	var err error
	b.last, err = b.estimate(b.Visit())
	return err
}

const halfTurnDeg = 180

// cause is what was met on the way; of several the one that leaves no doubt.
func (b *byPlan) cause() Cause {
	switch {
	case b.stuck:
		return AStuckNut
	case b.burr:
		return ABurr
	case b.drawn:
		return ASoftFoot
	case b.untrueThou() < leastUntrueThou:
		return EngineAlone
	case tirThou(b.last, 0) >= tirThou(b.last, 1):
		return ShaftHalf
	}
	return Flange
}

// untrueThou is the larger run-out of the halves, as the readings tell it.
func (b *byPlan) untrueThou() float64 { return max(tirThou(b.last, 0), tirThou(b.last, 1)) }

func tirThou(e *gauge.Estimate, half int) float64 {
	mean := e.RunOut[half].MeanMM
	return 2 * math.Hypot(mean[0], mean[1]) / mmPerThou
}

// leastUntrueThou is a half's run-out that a class should hear of. It is above what
// a good face and the leaves' feel come to.
const leastUntrueThou = 1.8
