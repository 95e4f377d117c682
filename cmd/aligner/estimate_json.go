package main

// This file is an estimate for programs: one JSON object, units in its keys.

import (
	"math"

	"aligner/kinematics/gauge"
)

// estimateJSON is what estimate --json prints. Numbers of the present state are
// null where it was not gauged. Events and readings count from 0, as in the
// visit file.
type estimateJSON struct {
	Status string `json:"status"`
	Held   string `json:"held"`

	CosMM         *float64       `json:"cos_mm"`
	SinMM         *float64       `json:"sin_mm"`
	CovarianceMM2 *[2][2]float64 `json:"covariance_mm2"`
	SpreadMM      *float64       `json:"spread_mm"`
	OpensAtDeg    *float64       `json:"opens_at_deg"`

	Verdict           string   `json:"verdict"`
	ProbabilityWithin *float64 `json:"probability_within"`
	Rule              ruleJSON `json:"rule"`
	TargetMM          ab       `json:"target"`

	TightenedSince bool          `json:"tightened_since"`
	Flat           bool          `json:"flat"`
	ForMoves       bool          `json:"for_moves"`
	WhyNot         string        `json:"why_not"`
	OddReadings    []oddJSON     `json:"odd_readings"`
	NextReading    *nextJSON     `json:"next_reading"`
	Untold         []untoldJSON  `json:"untold"`
	SetAside       []asideJSON   `json:"set_aside"`
	OffsetMM       *[2]float64   `json:"offset_mm"`
	OffsetSDMM     *[2]float64   `json:"offset_sd_mm"`
	RunOut         *runOutsJSON  `json:"run_out"`
	Seatings       []seatingJSON `json:"seatings"`
	States         []stateJSON   `json:"states"`
}

type ab struct {
	CosMM float64 `json:"cos_mm"`
	SinMM float64 `json:"sin_mm"`
}

type ruleJSON struct {
	Named   string  `json:"named"`
	Limits  string  `json:"limits"`
	LimitMM float64 `json:"limit_mm"`
	Chosen  bool    `json:"chosen"`
}

type oddJSON struct {
	Event    int           `json:"event"`
	Reading  int           `json:"reading"`
	ClockDeg float64       `json:"clock_deg"`
	OffMM    float64       `json:"off_mm"`
	Alone    bool          `json:"alone"`
	SetAside bool          `json:"set_aside"`
	Causes   []gauge.Cause `json:"causes"`
}

type nextJSON struct {
	What              string  `json:"what"`
	ClockDeg          float64 `json:"clock_deg"`
	LeafMM            float64 `json:"leaf_mm"`
	ShaftTurnDeg      float64 `json:"shaft_turn_deg"`
	FlangeTurnDeg     float64 `json:"flange_turn_deg"`
	DoubtNow          float64 `json:"doubt_now"`
	DoubtToBeExpected float64 `json:"doubt_to_be_expected"`
}

type untoldJSON struct {
	What     string  `json:"what"`
	ClockDeg float64 `json:"clock_deg"`
	SDMM     float64 `json:"sd_mm"`
}

type asideJSON struct {
	Event   int    `json:"event"`
	Reading int    `json:"reading"` // -1: the whole gauging
	Why     string `json:"why"`
}

type runOutJSON struct {
	CosMM         float64       `json:"cos_mm"`
	SinMM         float64       `json:"sin_mm"`
	TIRMM         float64       `json:"tir_mm"`
	CovarianceMM2 [2][2]float64 `json:"covariance_mm2"`
	Untrue        bool          `json:"untrue"`
}

type runOutsJSON struct {
	ShaftSide  runOutJSON `json:"shaft_side"`
	EngineSide runOutJSON `json:"engine_side"`
}

type seatingJSON struct {
	Events  []int   `json:"events"`
	State   int     `json:"state"`
	G0MM    float64 `json:"g0_mm"`
	SDMM    float64 `json:"sd_mm"`
	LeastMM float64 `json:"least_mm"`
	Touched bool    `json:"touched"`
}

type stateJSON struct {
	FirstEvent int     `json:"first_event"`
	LastEvent  int     `json:"last_event"`
	CosMM      float64 `json:"cos_mm"`
	SinMM      float64 `json:"sin_mm"`
}

func estimateJSONOf(e *gauge.Estimate) estimateJSON {
	out := estimateJSON{Status: string(e.Status), Held: string(e.Aim), Verdict: string(e.Verdict),
		Rule:     ruleJSON{e.Rule.Named, e.Rule.Limits, e.LimitMM, e.RuleChosen},
		TargetMM: ab{e.TargetMM[0], e.TargetMM[1]}, Flat: e.Flat, ForMoves: e.ForMoves, WhyNot: string(e.WhyNot),
		OddReadings: []oddJSON{}, Untold: []untoldJSON{}, SetAside: []asideJSON{}, Seatings: []seatingJSON{}, States: []stateJSON{}}
	for _, o := range e.Odd {
		out.OddReadings = append(out.OddReadings, oddJSON{o.Event, o.Reading, o.ClockDeg, o.OffMM, o.Alone, o.SetAside, o.Causes})
	}
	for _, u := range e.Untold {
		out.Untold = append(out.Untold, untoldJSON{string(u.What), u.ClockDeg, u.SDMM})
	}
	for _, a := range e.SetAside {
		out.SetAside = append(out.SetAside, asideJSON{a.Event, a.Reading, string(a.Why)})
	}
	for _, s := range e.Seatings {
		out.Seatings = append(out.Seatings, seatingJSON{s.Events, s.State, s.G0MM, s.SD, s.LeastMM, s.Touched})
	}
	for _, s := range e.States {
		out.States = append(out.States, stateJSON{s.FirstEvent, s.LastEvent, s.CosMM, s.SinMM})
	}
	if e.Status == gauge.Ready {
		out.present(e)
	}
	return out
}

// present fills the keys that tell of the present state.
func (out *estimateJSON) present(e *gauge.Estimate) {
	a, b := e.Gap.MeanMM[0], e.Gap.MeanMM[1]
	spread, opens := 2*math.Hypot(a, b), math.Mod(math.Atan2(b, a)*180/math.Pi+360, 360)
	out.CosMM, out.SinMM, out.CovarianceMM2, out.SpreadMM, out.OpensAtDeg = &a, &b, &e.Gap.CovMM2, &spread, &opens
	out.ProbabilityWithin, out.OffsetMM, out.OffsetSDMM = &e.Within, &e.OffsetMM, &e.OffsetSD
	half := func(r gauge.RunOut) runOutJSON {
		return runOutJSON{r.MeanMM[0], r.MeanMM[1], 2 * math.Hypot(r.MeanMM[0], r.MeanMM[1]), r.CovMM2, r.Untrue}
	}
	out.RunOut = &runOutsJSON{half(e.RunOut[0]), half(e.RunOut[1])}
	out.TightenedSince = e.TightenedSince
	if n := e.Next; n != nil {
		out.NextReading = &nextJSON{string(n.What), n.ClockDeg, n.LeafMM, n.ShaftTurnDeg, n.FlangeTurnDeg, n.DoubtNow, n.DoubtAfter}
	}
}
