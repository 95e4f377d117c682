package visit

// This file reads a visit file: the keys of format visit/1, which of them may
// be left out, and what stands for them then.

import (
	"fmt"
	"slices"

	"aligner/hulls"
	"aligner/hulls/strictjson"
)

// Parse reads a visit file. The error is the first refusal, a *hulls.Fault.
func Parse(data []byte, file string) (Visit, error) {
	v, report := Check(data, file)
	if err := report.Err(); err != nil {
		return Visit{}, err
	}
	return v, nil
}

// Check reads a visit file and reports all that is wrong or doubtful with it,
// faults of structure first. What only the hull can tell (names of mounts) is
// looked at when the hull is embedded; else see Validate.
func Check(data []byte, file string) (Visit, hulls.Report) {
	root, f := strictjson.Parse(data, file, visitFormat)
	if f != nil {
		return Visit{}, hulls.Report{Refusals: []hulls.Fault{*f}}
	}
	d := newDecoder(file)
	v := d.visit(root)
	if len(d.Faults) > 0 {
		return Visit{}, hulls.Report{Refusals: d.Faults}
	}
	var report hulls.Report
	if v.Embedded != nil {
		if _, report = hulls.CheckWithin(root.Member("hull"), file, "hull"); len(report.Refusals) > 0 {
			return v, report
		}
	}
	// Written out, with its line breaks, it must be short enough to be read again.
	if n := len(Encode(v)); n > MaxFileBytes {
		return v, hulls.Report{Refusals: []hulls.Fault{{File: file, Value: fmt.Sprintf("%d bytes when written out", n),
			Limit: fmt.Sprintf("at most %d bytes", MaxFileBytes), Mend: "part the visit in two"}}}
	}
	own := Validate(v, v.Embedded)
	root.Locate(own.Refusals, file, "")
	root.Locate(own.Doubts, file, "")
	return v, hulls.Report{Refusals: own.Refusals, Doubts: append(report.Doubts, own.Doubts...)}
}

// Locate gives faults that Validate found in a visit the file it came from, and
// their lines.
func Locate(faults []hulls.Fault, data []byte, file string) {
	if root, f := strictjson.Parse(data, file, visitFormat); f == nil {
		root.Locate(faults, file, "")
	}
}

func (d *decoder) visit(n *strictjson.Node) (v Visit) {
	// The format first: of a file of another kind nothing else is worth saying.
	if n.Kind == strictjson.IsObject {
		f := n.Member("format")
		if f != nil && (f.Kind != strictjson.IsString || f.Text != FormatVisit) {
			d.Refuse("format", f.Line, f.Show(), strictjson.Quoted(FormatVisit), "give a visit file")
			return v
		}
	}
	o := d.Object(n, "", slices.Concat([]string{"format", "hull", "date", "state?"}, leafKeys,
		[]string{"rule?", "target?", "mounts?", "cautions_minded?", "look_over?", "reach_deg?", "events?", "seal?", "coupling_bolts?", "handed_over?", "under_power?", "linked?", "trouble?", "note?"})...)
	v.HullName, v.Embedded = d.hull(o)
	v.Date, v.Note = o.Text("date"), o.Text("note")
	v.State = d.state(o.Get("state"), "state")
	v.Leaves = d.leaves(o)
	v.Rule = d.rule(o.Get("rule"), "rule")
	v.Target = d.target(o.Get("target"), "target")
	v.Mounts = listOf(o, "mounts", mostItems, d.mountFound)
	v.CautionsMinded = o.Bool("cautions_minded")
	if n := o.Get("reach_deg"); n != nil {
		v.Reach = d.arc(n, "reach_deg").canonical()
	}
	v.LookOver = listOf(o, "look_over", mostItems, d.finding)
	v.Events = listOf(o, "events", mostEvents, d.event)
	v.Seal = d.seal(o.Get("seal"), "seal")
	v.Bolts, v.HandedOver = d.bolts(o.Get("coupling_bolts"), "coupling_bolts"), d.handedOver(o.Get("handed_over"), "handed_over")
	v.UnderPower, v.Linked = d.underPower(o.Get("under_power"), "under_power"), d.linked(o.Get("linked"), "linked")
	v.Trouble = d.trouble(o.Get("trouble"), "trouble")
	return v
}

// listOf reads a list of objects; nil when it is empty or left out.
func listOf[T any](o strictjson.Object, key string, most int, read func(n *strictjson.Node, path string) T) []T {
	items, path := o.List(key, most)
	var list []T
	for i, item := range items {
		list = append(list, read(item, at(path, i)))
	}
	return list
}

// hull reads what the visit calls its hull. Only its structure is judged here.
func (d *decoder) hull(o strictjson.Object) (string, *hulls.Hull) {
	n := o.Get("hull")
	switch {
	case n == nil:
	case n.Kind == strictjson.IsString:
		return n.Text, nil
	case n.Kind == strictjson.IsObject:
		h, faults := hulls.ReadWithin(n, d.File, "hull")
		d.Faults = append(d.Faults, faults...)
		return "", &h
	default:
		d.Refuse("hull", n.Line, n.Show(), "a hull file's path beside the visit, a built-in name, or a hull",
			"name the hull in quotes, or embed it")
	}
	return "", nil
}

func (d *decoder) state(n *strictjson.Node, path string) State {
	o := d.Object(n, path, "boat?", "hours_since_launch?", "fuel_percent?", "ballast?", "rig?",
		"mount_age_months?", "mount_hours_standing?", "engine_hours?", "note?")
	return State{
		Boat:               o.OneOf("boat", "", Boats...),
		HoursSinceLaunch:   maybe(o, "hours_since_launch"),
		FuelPercent:        maybe(o, "fuel_percent"),
		Ballast:            o.OneOf("ballast", "", Ballasts...),
		Rig:                o.OneOf("rig", "", Rigs...),
		MountAgeMonths:     maybe(o, "mount_age_months"),
		MountHoursStanding: maybe(o, "mount_hours_standing"),
		EngineHours:        maybe(o, "engine_hours"),
		Note:               o.Text("note"),
	}
}

// leafKeys are the keys of a leaf set, which stand in the visit itself.
var leafKeys = []string{"leaves_thou?", "leaves_mm?", "leaves_stacked?", "feel_error_thou?", "feel_error_mm?"}

func (d *decoder) leaves(o strictjson.Object) (s LeafSet) {
	if o.Has("leaves_thou") && o.Has("leaves_mm") {
		d.twice(o, "leaves_thou", "leaves_mm")
	}
	for _, unit := range []Unit{InThou, InMM} {
		items, path := o.List("leaves_"+string(unit), mostItems)
		if n := o.Of(path, strictjson.IsArray); n != nil && len(n.Items) == 0 {
			d.Refuse(path, n.Line, "a list of 0", "at least one leaf", "add the leaves, or leave the key out for the usual ones")
		}
		for i, item := range items {
			if item.Kind != strictjson.IsNumber {
				d.WrongKind(item, at(path, i), strictjson.IsNumber)
			}
			s.Leaves, s.Unit = append(s.Leaves, item.Number), unit
		}
	}
	slices.Sort(s.Leaves)
	s.MostStacked = d.atLeastOne(o, "leaves_stacked")
	s.FeelError = d.length(o, "feel_error")
	return s.canonical()
}

// canonical leaves out what says no more than the default.
func (s LeafSet) canonical() LeafSet {
	if s.MostStacked == DefaultStacked {
		s.MostStacked = 0
	}
	if s.FeelError == Thou(DefaultFeelErrorThou) {
		s.FeelError = Length{}
	}
	return s
}

func (d *decoder) rule(n *strictjson.Node, path string) Rule {
	o := d.Object(n, path, slices.Concat([]string{"limits"}, lengthKeys("limit"), []string{"named"})...)
	d.needLength(o, "limit")
	return Rule{Limits: o.OneOf("limits", "", RuleLimits...), Limit: d.length(o, "limit"), Named: o.Text("named")}
}

func (d *decoder) target(n *strictjson.Node, path string) Target {
	o := d.Object(n, path, slices.Concat(lengthKeys("spread"), []string{"opens_at_deg", "reason"})...)
	d.needLength(o, "spread")
	return Target{Spread: d.length(o, "spread"), OpensAtDeg: o.Number("opens_at_deg"), Reason: o.Text("reason")}
}

func (d *decoder) mountFound(n *strictjson.Node, path string) MountFound {
	o := d.Object(n, path, "mount", "nut?", "slide?", "stud_found_mm?", "stud_left_mm?", "mark?", "note?")
	free := []string{string(Free), string(Stuck), string(Forbidden)}
	return MountFound{Mount: o.Text("mount"),
		Nut: Freedom(o.OneOf("nut", free[0], free...)), Slide: Freedom(o.OneOf("slide", free[0], free...)),
		StudFoundMM: maybe(o, "stud_found_mm"), StudLeftMM: maybe(o, "stud_left_mm"),
		Mark: o.OneOf("mark", "", Marks...), Note: o.Text("note")}
}

func (d *decoder) finding(n *strictjson.Node, path string) Finding {
	o := d.Object(n, path, "check", "finding", "tight_at_deg?", "note?")
	return Finding{Check: o.Text("check"), Finding: o.OneOf("finding", "", Findings...), TightAtDeg: maybe(o, "tight_at_deg"), Note: o.Text("note")}
}
