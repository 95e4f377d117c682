package practice

// This file judges a piece of work: in line or not, and where the thinking went
// astray.

import (
	"math"
	"slices"

	"aligner/hulls/visit"
)

// overThou is let pass above the rule: leaves do not show it.
const overThou = 0.5

// PassThou is the widest true gap that is let pass.
func PassThou() float64 { return visit.DefaultRule.Limit.Thou() + overThou }

// Debrief is what came of a piece of work.
type Debrief struct {
	Passed    bool    `json:"passed"` // in line and every mount tight
	LeftThou  float64 `json:"left_thou"`
	FoundThou float64 `json:"found_thou"` // both true spreads that the engine's place gives
	// The same gaps, [cos, sin] as kinematics.Gap.
	FoundMM    [2]float64 `json:"found_mm"`
	LeftMM     [2]float64 `json:"left_mm"`
	Cause      Cause      `json:"cause"` // the true one
	CauseFound bool       `json:"cause_found"`
	// Yours is the learner's work, Tools the same boat worked by the tool.
	Yours    Tally     `json:"yours"`
	Tools    Tally     `json:"tools"`
	Mistakes []Mistake `json:"mistakes"` // in the order made
}

// Mistake is one thing a master would have told the learner off for.
type Mistake struct {
	Kind Kind `json:"kind"`
	Act  int  `json:"act"` // counted from 0; -1: of the whole work
	// How large: by how much a move widened the true gap, how far a half runs out, what
	// was left; MM out of one plane. Mounts it was made at.
	Thou   float64  `json:"thou,omitempty"`
	MM     float64  `json:"mm,omitempty"`
	Mounts []string `json:"mounts,omitempty"`
}

// Kind says what went astray.
type Kind string

// The kinds.
const (
	ChasedRunOut   Kind = "chased run-out"               // the gap at the marks was closed, the engine put out by it
	NotTurned      Kind = "moved before turning"         // a half runs out, and the shaft was not turned before moving
	WrongWay       Kind = "wrong way"                    // the move made the true gap wider
	WrongEnd       Kind = "wrong end first"              // most was turned where the gap hardly answers
	Twisted        Kind = "twisted the engine"           // nuts left out of one plane by more than the tool's
	HangingShaft   Kind = "trusted a hanging shaft"      // moved on readings with the shaft hanging
	BoltedFaces    Kind = "trusted bolted faces"         // moved on readings with the faces drawn together
	NotGauged      Kind = "moved without gauging"        // moved on no readings of the engine as it stood
	Impossible     Kind = "moved on impossible readings" // the set cannot be two flat faces
	TooFew         Kind = "too few places"               // read at places too few, or too close together, to tell
	ForcedNut      Kind = "forced the stuck nut"         // tried again after it was found stuck
	LeftLoose      Kind = "left loose"                   // handed over with mounts not tight
	NotGaugedTight Kind = "not gauged when tight"        // handed over without a gauging after tightening
	LeftOutside    Kind = "left out of line"             // the readings would have shown it
)

// Kinds are all of them.
var Kinds = []Kind{ChasedRunOut, NotTurned, WrongWay, WrongEnd, Twisted, HangingShaft, BoltedFaces, NotGauged,
	Impossible, TooFew, ForcedNut, LeftLoose, NotGaugedTight, LeftOutside}

// Judge replays a piece of work that was handed over, and judges it.
func Judge(t Task, acts []Act) (*Debrief, error) {
	tools, err := ByPlan(t)
	if err != nil {
		return nil, err
	}
	return tools.beside(acts)
}

// beside judges a piece of work on the same task beside the tool's.
func (tools *Work) beside(acts []Act) (*Debrief, error) {
	w, err := tools.Task.begin(tools.hidden)
	if err != nil {
		return nil, err
	}
	j := &judge{Work: w, tools: tools, d: &Debrief{Cause: w.hidden.cause, Tools: tools.Tally()}}
	if j.thinking, err = w.thinking(); err != nil {
		return nil, err
	}
	if j.d.FoundThou, _, err = w.bench.Truth(); err != nil {
		return nil, err
	}
	if j.d.FoundMM, err = w.bench.EngineGapMM(); err != nil {
		return nil, err
	}
	for _, a := range acts {
		if err := j.watch(a); err != nil {
			return nil, err
		}
	}
	return j.d, j.sum()
}

// judge watches a piece of work.
type judge struct {
	*Work
	*thinking
	tools      *Work
	d          *Debrief
	turned     bool // shaft or flange was
	stuckKnown bool
}

// ofTheWhole stands for an act where a mistake is of no single one.
const ofTheWhole = -1

func (j *judge) fault(act int, m Mistake) {
	m.Act = act
	// A fault made again and again is told once.
	if !slices.ContainsFunc(j.d.Mistakes, func(o Mistake) bool { return o.Kind == m.Kind }) {
		j.d.Mistakes = append(j.d.Mistakes, m)
	}
}

// watch does one act and sees what it was.
func (j *judge) watch(a Act) error {
	switch {
	case a.Read != nil, a.Leaf != nil:
		j.turned = j.turned || j.turnedNow()
	case a.Turn != nil:
		return j.watchTurn(a)
	case a.HandOver != nil:
		j.d.CauseFound = a.HandOver.Cause == j.hidden.cause
	}
	_, err := j.Do(a)
	return err
}

// turnedNow reports whether the gauging that goes on is of a seated shaft, and shaft or
// flange turned off its mark.
func (j *judge) turnedNow() bool {
	events := j.Visit().Events
	if len(events) == 0 || events[len(events)-1].Gauging == nil {
		return false
	}
	g := events[len(events)-1].Gauging
	return g.Held == "seated" && (math.Mod(g.ShaftTurnDeg, 360) != 0 || math.Mod(g.FlangeTurnDeg, 360) != 0)
}

// sum judges the whole.
func (j *judge) sum() error {
	left, marks, err := j.bench.Truth()
	if err != nil {
		return err
	}
	limit := PassThou()
	if j.d.LeftMM, err = j.bench.EngineGapMM(); err != nil {
		return err
	}
	j.d.LeftThou, j.d.Yours = left, j.Tally()
	j.d.Passed = left <= limit && j.tight
	switch {
	case !j.tight:
		j.fault(ofTheWhole, Mistake{Kind: LeftLoose})
	case !j.gauged(j.Visit()):
		j.fault(ofTheWhole, Mistake{Kind: NotGaugedTight})
	}
	switch {
	case left <= limit:
	case marks <= limit && j.untrueTIR() >= tellTaleThou:
		j.fault(ofTheWhole, Mistake{Kind: ChasedRunOut, Thou: left})
	default:
		j.fault(ofTheWhole, Mistake{Kind: LeftOutside, Thou: left})
	}
	return j.judgeTwist()
}

// fewest readings make a gauging: two tell of no plane.
const fewest = 3

// gauged reports whether a seated shaft was read at enough places since the engine was
// last moved or tightened.
func (j *judge) gauged(v *visit.Visit) bool {
	for _, e := range slices.Backward(v.Events) {
		switch {
		case e.Gauging == nil:
			return false
		case e.Gauging.Held == "seated" && len(e.Gauging.Readings) >= fewest:
			return true
		}
	}
	return false
}
