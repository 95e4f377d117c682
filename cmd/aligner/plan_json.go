package main

// This file is a plan for programs: one JSON object, units in its keys.

import (
	"math"

	"aligner/hulls"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
)

// planJSON is what plan --json prints. Nuts count flats (shims of solid feet), +
// raises; slides mm, + to port; every mount is named.
type planJSON struct {
	Status  string  `json:"status"`
	WhyNot  string  `json:"why_not"`
	WantedP float64 `json:"probability_wanted"`

	NutFlats          map[string]int     `json:"nut_flats"`
	SlideMM           map[string]float64 `json:"slide_mm"`
	Minutes           float64            `json:"minutes"`
	Present           *expectedJSON      `json:"present"`
	Expected          *expectedJSON      `json:"expected"`
	ProbabilityWithin float64            `json:"probability_within"`
	DrawBackMM        float64            `json:"draw_back_mm"`
	Steps             []stepJSON         `json:"steps"`

	Binding   []limitJSON    `json:"binding"`
	Freeing   []limitJSON    `json:"freeing"`
	Warnings  []warningJSON  `json:"warnings"`
	Learnt    int            `json:"moves_learnt_from"`
	Surprises []surpriseJSON `json:"surprises"`
	Complete  bool           `json:"search_complete"`
}

type expectedJSON struct {
	CosMM         float64       `json:"cos_mm"`
	SinMM         float64       `json:"sin_mm"`
	SpreadMM      float64       `json:"spread_mm"`
	CovarianceMM2 [2][2]float64 `json:"covariance_mm2"`
}

type stepJSON struct {
	NutFlats     map[string]int     `json:"nut_flats"`
	SlideMM      map[string]float64 `json:"slide_mm"`
	GapAtClockMM [12]float64        `json:"gap_at_clock_mm"`
	CosMM        float64            `json:"cos_mm"`
	SinMM        float64            `json:"sin_mm"`
	OnLever      *ab                `json:"on_lever,omitempty"`
	StopClockDeg float64            `json:"stop_clock_deg"`
	StopBelowMM  float64            `json:"stop_below_mm"`
	StopAboveMM  float64            `json:"stop_above_mm"`
}

type limitJSON struct {
	What   string   `json:"what"`
	Mounts []string `json:"mounts"`
	MM     float64  `json:"mm"`
}

type warningJSON struct {
	What string `json:"what"`
	Name string `json:"name"`
}

type surpriseJSON struct {
	Change             int        `json:"change"`
	ExpectedMM         [2]float64 `json:"expected_cos_sin_mm"`
	FoundMM            [2]float64 `json:"found_cos_sin_mm"`
	StandardDeviations float64    `json:"standard_deviations"`
	Causes             []string   `json:"causes"`
}

func planJSONOf(h *hulls.Hull, p *plan.Plan) planJSON {
	out := planJSON{Status: string(p.Status), WhyNot: string(p.WhyNot), WantedP: p.Wanted, Minutes: p.Minutes,
		ProbabilityWithin: p.Probability, DrawBackMM: p.DrawBackMM, Complete: p.Complete, Steps: []stepJSON{},
		Binding: []limitJSON{}, Freeing: []limitJSON{}, Warnings: []warningJSON{}, Surprises: []surpriseJSON{}}
	out.NutFlats, out.SlideMM = byName(h, p.NutFlats, p.SlideMM)
	if p.Status != plan.NotForMoves {
		out.Present = gapJSON(p.Present)
	}
	if p.Status == plan.Found || p.Status == plan.Unsure || p.Status == plan.Nothing {
		out.Expected = gapJSON(p.Expected)
	}
	for i := range p.Steps {
		out.Steps = append(out.Steps, stepJSONOf(h, &p.Steps[i]))
	}
	for _, b := range p.Binding {
		out.Binding = append(out.Binding, limitJSON{string(b.What), names(h, b.Mounts), b.MM})
	}
	for _, f := range p.Freeing {
		out.Freeing = append(out.Freeing, limitJSON{string(f.How), names(h, f.Mounts), f.MM})
	}
	for _, w := range p.Warnings {
		out.Warnings = append(out.Warnings, warningJSON{string(w.What), w.Name})
	}
	if p.Learnt != nil {
		out.Learnt = p.Learnt.Response.Learnt
		for _, s := range p.Learnt.Surprises {
			j := surpriseJSON{s.Change, s.ExpectedMM, s.FoundMM, s.StandardDeviations, nil}
			for _, c := range s.Causes {
				j.Causes = append(j.Causes, string(c))
			}
			out.Surprises = append(out.Surprises, j)
		}
	}
	return out
}

func gapJSON(g gauge.Gaussian) *expectedJSON {
	return &expectedJSON{g.MeanMM[0], g.MeanMM[1], 2 * math.Hypot(g.MeanMM[0], g.MeanMM[1]), g.CovMM2}
}

func stepJSONOf(h *hulls.Hull, s *plan.Step) stepJSON {
	out := stepJSON{CosMM: s.After.MeanMM[0], SinMM: s.After.MeanMM[1],
		StopClockDeg: s.StopClockDeg, StopBelowMM: s.StopBelowMM, StopAboveMM: s.StopAboveMM}
	out.NutFlats, out.SlideMM = byName(h, s.NutFlats, s.SlideMM)
	for hour := range out.GapAtClockMM {
		out.GapAtClockMM[hour] = s.GapAtMM(float64(30 * hour))
	}
	if s.OnLever != nil {
		out.OnLever = &ab{s.OnLever[0], s.OnLever[1]}
	}
	return out
}

func byName(h *hulls.Hull, nuts []int, slidesMM []float64) (map[string]int, map[string]float64) {
	n, s := map[string]int{}, map[string]float64{}
	for i, m := range h.Mounts {
		n[m.Name], s[m.Name] = nuts[i], slidesMM[i]
	}
	return n, s
}

func names(h *hulls.Hull, mounts []int) []string {
	all := []string{}
	for _, i := range mounts {
		all = append(all, h.Mounts[i].Name)
	}
	return all
}
