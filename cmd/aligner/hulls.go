package main

// This file is the verb hulls: the boats that are built in.

import (
	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
)

type hullsCmd struct {
	List hullsListCmd `cmd:"" default:"withargs" help:"${help_hulls_list}"`
	Show hullsShowCmd `cmd:"" help:"${help_hulls_show}"`
}

type hullsListCmd struct {
	JSON bool `name:"json" help:"${help_json}"`
}

// listedHull is one hull's entry of --json.
type listedHull struct {
	Name     string       `json:"name"`
	Layout   hulls.Layout `json:"layout"`
	Mounts   int          `json:"mounts"`
	Bearings int          `json:"bearings"`
	Diameter float64      `json:"shaft_diameter_mm"`
	Length   float64      `json:"shaft_length_mm"`
}

// Run lists the built-in hulls.
func (c *hullsListCmd) Run(e *env) error {
	list := []listedHull{}
	for _, name := range assets.HullNames() {
		h, _, err := openBuiltIn(name)
		if err != nil {
			return err
		}
		list = append(list, listedHull{h.Name, h.Layout, len(h.Mounts), len(h.Bearings), h.Shaft.DiameterMM, h.Shaft.LengthMM})
		if !c.JSON {
			e.say(words.HullLine, words.Args{"Name": h.Name, "Layout": h.Layout, "Mounts": count(words.Mounts, len(h.Mounts)),
				"Bearings": count(words.Bearings, len(h.Bearings)), "Shaft": number(h.Shaft.DiameterMM) + " x " + mm(h.Shaft.LengthMM)})
		}
	}
	if c.JSON {
		return e.printJSON(map[string]any{"hulls": list})
	}
	return nil
}

// openBuiltIn reads a built-in hull, whatever files lie about.
func openBuiltIn(name string) (hulls.Hull, []hulls.Fault, error) {
	data, _ := assets.Hull(name)
	h, report := hulls.Check(data, name)
	return h, report.Doubts, report.Err()
}

type hullsShowCmd struct {
	Hull string `arg:"" help:"${help_hull}"`
	JSON bool   `name:"json" help:"${help_json}"`
}

// Run shows one hull.
func (c *hullsShowCmd) Run(e *env) error {
	h, doubts, err := openHull(c.Hull)
	if err != nil {
		return err
	}
	e.warnDoubts(doubts)
	if c.JSON {
		_, err := e.stdout.Write(hulls.Encode(h))
		return err
	}
	showEngine(e, h)
	showShaft(e, h)
	return nil
}

func showEngine(e *env, h hulls.Hull) {
	e.say(words.HullTitle, words.Args{"Name": h.Name, "Layout": h.Layout, "Angle": number(h.ShaftAngleDeg) + " deg"})
	e.say(words.HullEngine, words.Args{"Mass": number(h.Engine.MassKg) + " kg", "Down": number(h.Engine.DownAngleDeg) + " deg"})
	for _, m := range h.Mounts {
		args := words.Args{"Name": m.Name, "X": number(m.AtMM[0]), "Y": number(m.AtMM[1]), "Z": number(m.AtMM[2]),
			"Thread": m.Thread, "Shim": number(m.ShimStepMM), "Low": number(m.NutRangeMM[0]), "High": number(m.NutRangeMM[1])}
		if m.Kind == hulls.Solid {
			e.say(words.HullSolid, args)
		} else {
			e.say(words.HullRubber, args)
		}
	}
}

func showShaft(e *env, h hulls.Hull) {
	coupling := words.HullNoPilot
	if h.Coupling.HasPilot() {
		coupling = words.HullCoupling
	}
	e.say(coupling, words.Args{"Outer": mm(h.Coupling.OuterDiameterMM), "Pilot": mm(h.Coupling.PilotDiameterMM)})
	e.say(words.HullShaft, words.Args{"Diameter": mm(h.Shaft.DiameterMM), "Length": mm(h.Shaft.LengthMM), "Material": h.Shaft.Material})
	for _, b := range h.Bearings {
		e.say(words.HullBearing, words.Args{"Name": b.Name, "At": mm(b.AtMM), "Length": mm(b.LengthMM), "Clearance": mm(b.DiametralClearanceMM)})
	}
	e.say(words.HullLog, words.Args{"At": mm(h.Log.AtMM), "Length": mm(h.Log.LengthMM), "Bore": mm(h.Log.BoreMM)})
	if b := h.StuffingBox; b != nil {
		e.say(words.HullBox, words.Args{"At": mm(b.AtMM), "Mass": number(b.MassKg) + " kg"})
	}
	e.say(words.HullScrew, words.Args{"At": mm(h.Propeller.AtMM), "Mass": number(h.Propeller.MassKg) + " kg", "Diameter": mm(h.Propeller.DiameterMM)})
}
