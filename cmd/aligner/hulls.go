package main

// This file is the verb hulls: the boats of the logbook and those built in,
// listed and shown. What changes the logbook is in hulls_keep.go.

import (
	"strings"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/report/say"
)

type hullsCmd struct {
	List    hullsListCmd    `cmd:"" default:"withargs" help:"${help_hulls_list}"`
	Show    hullsShowCmd    `cmd:"" help:"${help_hulls_show}"`
	New     hullsNewCmd     `cmd:"" help:"${help_hulls_new}"`
	Copy    hullsCopyCmd    `cmd:"" help:"${help_hulls_copy}"`
	Compare hullsCompareCmd `cmd:"" help:"${help_hulls_compare}"`
	History hullsHistoryCmd `cmd:"" help:"${help_hulls_history}"`
	Matters hullsMattersCmd `cmd:"" help:"${help_hulls_matters}"`
	Learn   hullsLearnCmd   `cmd:"" help:"${help_hulls_learn}"`
	Export  hullsExportCmd  `cmd:"" help:"${help_hulls_export}"`
	Import  hullsImportCmd  `cmd:"" help:"${help_hulls_import}"`
	Refresh hullsRefreshCmd `cmd:"" help:"${help_hulls_refresh}"`
	Backup  hullsBackupCmd  `cmd:"" help:"${help_hulls_backup}"`
	Salvage hullsSalvageCmd `cmd:"" help:"${help_hulls_salvage}"`
}

type hullsListCmd struct {
	Find   string `placeholder:"WORDS" help:"${help_hulls_find}"`
	Limit  int    `default:"100" help:"${help_limit}"`
	Metric bool   `help:"${help_metric}"`
	JSON   bool   `name:"json" help:"${help_json}"`
}

// listedHull is one built-in hull's entry of --json.
type listedHull struct {
	Name     string       `json:"name"`
	Layout   hulls.Layout `json:"layout"`
	Mounts   int          `json:"mounts"`
	Bearings int          `json:"bearings"`
	Diameter float64      `json:"shaft_diameter_mm"`
	Length   float64      `json:"shaft_length_mm"`
}

// keptHullJSON is one hull of the logbook in --json. Dates are "" and numbers
// null where there are none.
type keptHullJSON struct {
	Number         logbook.HullID `json:"number"`
	Name           string         `json:"name"`
	HIN            string         `json:"hin"`
	OwnerReference string         `json:"owner_reference"`
	Layout         hulls.Layout   `json:"layout"`
	Visits         int            `json:"visits"`
	LastVisit      string         `json:"last_visit"`
	LastSpreadMM   *float64       `json:"last_spread_mm"`
	Due            string         `json:"due"`
	DueReason      string         `json:"due_reason"`
	Overdue        bool           `json:"overdue"`
}

// Run lists the hulls of the logbook, if there is one, and the built-in ones.
func (c *hullsListCmd) Run(e *env) error {
	if c.Limit < 1 {
		return atLeastOneLine(c.Limit)
	}
	kept := []keptHullJSON{}
	file, there := "", false
	err := lookIn(func(b *logbook.Book) error {
		file, there = b.Path(), true
		lines, err := b.Hulls(logbook.HullQuery{Words: c.Find, Limit: c.Limit})
		if err != nil {
			return err
		}
		if !c.JSON {
			return c.text(e, b, lines)
		}
		for _, l := range lines {
			kept = append(kept, keptHullJSON{l.ID, l.Name, l.HIN, l.OwnerReference, l.Layout, l.Visits, l.LastVisit, known(l.LastSpreadMM), l.Due, l.DueReason, l.Overdue})
		}
		return nil
	})
	if err != nil {
		return err
	}
	if there && !c.JSON {
		e.say(words.LogbookBuiltIn, nil)
	}
	builtIn, err := c.builtIn(e)
	if err != nil || !c.JSON {
		return err
	}
	return e.printJSON(map[string]any{"hulls": builtIn, "logbook": file, "kept": kept})
}

// text lists the hulls of the logbook for people.
func (c *hullsListCmd) text(e *env, b *logbook.Book, lines []logbook.HullLine) error {
	e.say(words.LogbookTitle, words.Args{"File": b.Path()})
	if len(lines) == 0 {
		e.say(words.LogbookNone, nil)
	}
	for _, l := range lines {
		e.say(words.LogbookHull, words.Args{"Number": l.ID, "Name": l.Name, "Parts": strings.Join(say.KeptHull(speaker, readerUnits(c.Metric), &l), ", ")})
	}
	n, err := b.CountHulls(c.Find)
	if n > len(lines) {
		e.say(words.LogbookMore, words.Args{"Count": n - len(lines)})
	}
	return err
}

// builtIn lists the built-in hulls that have the words looked for.
func (c *hullsListCmd) builtIn(e *env) ([]listedHull, error) {
	list := []listedHull{}
	for _, name := range assets.HullNames() {
		h, _, err := openBuiltIn(name)
		if err != nil {
			return nil, err
		}
		if !hasWords(h.Name+" "+string(h.Layout), c.Find) {
			continue
		}
		list = append(list, listedHull{h.Name, h.Layout, len(h.Mounts), len(h.Bearings), h.Shaft.DiameterMM, h.Shaft.LengthMM})
		if !c.JSON {
			e.say(words.HullLine, words.Args{"Name": h.Name, "Layout": h.Layout, "Mounts": count(words.Mounts, len(h.Mounts)),
				"Bearings": count(words.Bearings, len(h.Bearings)), "Shaft": number(h.Shaft.DiameterMM) + " x " + mm(h.Shaft.LengthMM)})
		}
	}
	return list, nil
}

func hasWords(text, wanted string) bool {
	for _, w := range strings.Fields(strings.ToLower(wanted)) {
		if !strings.Contains(strings.ToLower(text), w) {
			return false
		}
	}
	return true
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
