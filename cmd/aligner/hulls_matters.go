package main

// This file is the verb hulls matters: which numbers of a boat are worth measuring
// well.

import (
	"fmt"

	"aligner/hulls/fields"
	"aligner/kinematics"
	"aligner/kinematics/sensitivity"
	"aligner/report/say"
)

type hullsMattersCmd struct {
	Hull   string `arg:"" help:"${help_hull}"`
	Afloat bool   `help:"${help_predict_afloat}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// matterJSON is one number in --json, the most worth measuring first. The changes are
// for each unit of the number, in the unit of the hull file's key; shares are of what
// the most telling nut or slide does.
type matterJSON struct {
	Pointer      string              `json:"pointer"`
	NutMM        float64             `json:"gap_mm_per_flat_and_unit"`
	SlideMM      float64             `json:"gap_mm_per_slide_step_and_unit"`
	PlusOrMinus  float64             `json:"plus_or_minus"`
	Share        float64             `json:"share_as_known"`
	ShareCareful float64             `json:"share_if_measured_with_care"`
	Verdict      sensitivity.Verdict `json:"verdict"`
}

// Run ranks the numbers.
func (c *hullsMattersCmd) Run(e *env) error {
	h, doubts, err := openHull(c.Hull)
	if err != nil {
		return err
	}
	e.warnDoubts(doubts)
	held := kinematics.Seated
	if !h.Coupling.HasPilot() {
		held = kinematics.Centred
	}
	all, err := sensitivity.Effects(&h, held, c.Afloat)
	if err != nil {
		return err
	}
	list := []matterJSON{}
	s, u, in := speaker, readerUnits(c.Metric), fields.Inches(!c.Metric)
	for _, x := range sensitivity.Ranked(all) {
		if x.Verdict() == sensitivity.Nothing {
			continue
		}
		list = append(list, matterJSON{x.Field.Pointer, x.NutMMPerUnit, x.SlideMMPerUnit, x.Plus, x.Now, x.Care, x.Verdict()})
		if !c.JSON {
			line := say.Field(s, &x.Field) + ": " + say.Matter(s, u, in, &x, x.Field.Get(&h))
			if known := say.KnownNow(s, u, in, &x); known != "" {
				line += " " + known
			}
			fmt.Fprintln(e.stdout, oneLine(line))
		}
	}
	if c.JSON {
		return e.printJSON(map[string]any{"hull": h.Name, "held": held, "numbers": list})
	}
	return nil
}
