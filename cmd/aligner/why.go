package main

// This file is the verb why: what a nut or slide does to the gap, taken apart, or the
// table of all of them.

import (
	"fmt"
	"math"

	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/why"
	"aligner/report/say"
)

type whyCmd struct {
	Hull   string `arg:"" help:"${help_hull}"`
	Nut    string `placeholder:"MOUNT=FLATS" help:"${help_why_nut}"`
	Slide  string `placeholder:"MOUNT=MM" help:"${help_why_slide}"`
	Held   string `enum:"seated,centred," default:"" help:"${help_predict_held}"`
	Afloat bool   `help:"${help_predict_afloat}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// Run takes one move apart, or lists what each does.
func (c *whyCmd) Run(e *env) error {
	h, doubts, err := openHull(c.Hull)
	if err != nil {
		return err
	}
	e.warnDoubts(doubts)
	held := kinematics.Held(c.Held)
	if held == "" {
		held = kinematics.Seated
		if !h.Coupling.HasPilot() {
			held = kinematics.Centred
		}
	}
	move, err := c.move(&h)
	if err != nil {
		return err
	}
	if move == nil {
		return c.table(e, &h, held)
	}
	w, err := why.Of(&h, kinematics.State{Held: held, Afloat: c.Afloat}, *move)
	if err != nil {
		return err
	}
	if c.JSON {
		return e.printJSON(whyJSON(&h, w))
	}
	for i, step := range say.Why(speaker, readerUnits(c.Metric), &h, w) {
		fmt.Fprintf(e.stdout, "%d. %s\n", i+1, step.Text)
	}
	return nil
}

// move is the nut or slide asked for; nil: none.
func (c *whyCmd) move(h *hulls.Hull) (*why.Move, error) {
	var f moveFlags
	if c.Nut != "" {
		f.Nut = []string{c.Nut}
	}
	if c.Slide != "" {
		f.Slide = []string{c.Slide}
	}
	nuts, slides, err := f.steps(h)
	if err != nil {
		return nil, err
	}
	for i := range h.Mounts {
		switch {
		case nuts[i] != 0 && c.Slide != "":
			return nil, &hulls.Fault{Value: "--nut and --slide", Limit: "one of the two", Mend: "ask for one after the other"}
		case nuts[i] != 0:
			return &why.Move{Mounts: []int{i}, Steps: nuts[i]}, nil
		case slides[i] != 0:
			return &why.Move{Mounts: []int{i}, Slide: true, Steps: slides[i]}, nil
		}
	}
	return nil, nil
}

func (c *whyCmd) table(e *env, h *hulls.Hull, held kinematics.Held) error {
	rows, err := why.Table(h, held, c.Afloat)
	if err != nil {
		return err
	}
	if c.JSON {
		return e.printJSON(map[string]any{"hull": h.Name, "held": held, "rows": rowsJSON(h, rows)})
	}
	for _, line := range say.NutTable(speaker, readerUnits(c.Metric), h, held, rows) {
		fmt.Fprintln(e.stdout, line)
	}
	return nil
}

func mountNames(h *hulls.Hull, mounts []int) []string {
	var list []string
	for _, i := range mounts {
		list = append(list, h.Mounts[i].Name)
	}
	return list
}

// whyJSON is a move taken apart, for programs; gaps are [cos, sin] in mm.
func whyJSON(h *hulls.Hull, w *why.Why) map[string]any {
	return map[string]any{"mounts": mountNames(h, w.Mounts), "slide": w.Slide, "steps": w.Steps, "rise_mm": w.RiseMM,
		"line_at_mm": w.Line.At, "line_along": w.Line.Along, "turned_rad": w.Line.Turned, "line_mounts": append([]string{}, mountNames(h, w.Line.On)...),
		"face_mm": w.FaceMM, "tilt_mm": w.Tilt, "stick_mm": w.Stick, "bend_mm": w.Bend, "rest_mm": w.Rest, "total_mm": w.Total,
		"first_bearing_mm": w.FirstBearingMM}
}

func rowsJSON(h *hulls.Hull, rows []why.Row) []map[string]any {
	list := []map[string]any{}
	for _, r := range rows {
		list = append(list, map[string]any{"mounts": mountNames(h, r.Mounts), "slide": r.Slide, "steps": r.Steps, "change_mm": r.Change,
			"sd_mm": r.SD, "face_mm": r.FaceMM, "spread_mm": r.SpreadMM(), "opens_at_deg": math.Round(r.OpensAtDeg()*10) / 10, "hardly": r.Hardly})
	}
	return list
}
