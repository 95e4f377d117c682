package visit

// This file writes a visit in its one canonical form: keys in the order of the
// format, optional keys left out where they hold their default. Reading it
// gives the same visit back, and writing that the same bytes.

import (
	"maps"
	"slices"

	"aligner/hulls"
)

// Encode writes a visit file. The visit must be one that Validate does not
// refuse.
func Encode(v Visit) []byte {
	e := &encoder{}
	e.visit(v)
	e.EndLine()
	return e.Bytes()
}

func (e *encoder) visit(v Visit) {
	e.Open("", '{')
	e.Text("format", FormatVisit)
	if v.Embedded != nil {
		e.Embed("hull", hulls.Encode(*v.Embedded))
	} else {
		e.Text("hull", v.HullName)
	}
	e.Text("date", v.Date)
	if v.State != (State{}) {
		e.state("state", v.State)
	}
	e.leaves(v.Leaves)
	if v.Rule != (Rule{}) {
		e.rule("rule", v.Rule)
	}
	if v.Target != (Target{}) {
		e.target("target", v.Target)
	}
	writeList(e, "mounts", v.Mounts, func(m MountFound) { e.mountFound(m) })
	e.OptionalBool("cautions_minded", v.CautionsMinded)
	writeList(e, "look_over", v.LookOver, func(f Finding) { e.finding(f) })
	if !v.Reach.AllRound() {
		e.Numbers("reach_deg", []float64{v.Reach.FromDeg, v.Reach.ToDeg})
	}
	writeList(e, "events", v.Events, func(ev Event) { e.event(ev) })
	if v.Seal != (Seal{}) {
		e.seal("seal", v.Seal)
	}
	if v.Bolts != (Bolts{}) {
		e.bolts("coupling_bolts", v.Bolts)
	}
	if v.HandedOver != (HandedOver{}) {
		e.handedOver("handed_over", v.HandedOver)
	}
	if v.UnderPower != (UnderPower{}) {
		e.underPower("under_power", v.UnderPower)
	}
	if v.Linked != (Linked{}) {
		e.linked("linked", v.Linked)
	}
	if !v.Trouble.None() {
		e.trouble("trouble", v.Trouble)
	}
	e.OptionalText("note", v.Note)
	e.Close('}')
}

// writeList leaves an empty list out. Each item's keys are written by fill.
func writeList[T any](e *encoder, key string, list []T, fill func(T)) {
	if len(list) == 0 {
		return
	}
	e.Open(key, '[')
	for i, item := range list {
		e.Item(i, '{')
		fill(item)
		e.Close('}')
	}
	e.Close(']')
}

func (e *encoder) state(key string, s State) {
	e.Open(key, '{')
	e.OptionalText("boat", s.Boat)
	e.maybe("hours_since_launch", s.HoursSinceLaunch)
	e.maybe("fuel_percent", s.FuelPercent)
	e.OptionalText("ballast", s.Ballast)
	e.OptionalText("rig", s.Rig)
	e.maybe("mount_age_months", s.MountAgeMonths)
	e.maybe("mount_hours_standing", s.MountHoursStanding)
	e.maybe("engine_hours", s.EngineHours)
	e.OptionalText("note", s.Note)
	e.Close('}')
}

func (e *encoder) leaves(s LeafSet) {
	s = s.canonical()
	if len(s.Leaves) > 0 {
		e.Numbers("leaves_"+string(s.Unit), s.Leaves)
	}
	e.OptionalNumber("leaves_stacked", float64(s.MostStacked), 0)
	e.length("feel_error", s.FeelError)
}

func (e *encoder) rule(key string, r Rule) {
	e.Open(key, '{')
	e.Text("limits", r.Limits)
	e.length("limit", r.Limit)
	e.Text("named", r.Named)
	e.Close('}')
}

func (e *encoder) target(key string, t Target) {
	e.Open(key, '{')
	e.length("spread", t.Spread)
	e.Number("opens_at_deg", t.OpensAtDeg)
	e.Text("reason", t.Reason)
	e.Close('}')
}

func (e *encoder) mountFound(m MountFound) {
	e.Text("mount", m.Mount)
	e.freedom("nut", m.Nut)
	e.freedom("slide", m.Slide)
	e.maybe("stud_found_mm", m.StudFoundMM)
	e.maybe("stud_left_mm", m.StudLeftMM)
	e.OptionalText("mark", m.Mark)
	e.OptionalText("note", m.Note)
}

func (e *encoder) freedom(key string, f Freedom) {
	if f != Free {
		e.OptionalText(key, string(f))
	}
}

func (e *encoder) finding(f Finding) {
	e.Text("check", f.Check)
	e.Text("finding", f.Finding)
	e.maybe("tight_at_deg", f.TightAtDeg)
	e.OptionalText("note", f.Note)
}

// byMount writes numbers by mount, in the order of names.
func (e *encoder) byMount(key string, m map[string]float64) {
	if len(m) == 0 {
		return
	}
	e.Open(key, '{')
	for _, name := range slices.Sorted(maps.Keys(m)) {
		e.Number(name, m[name])
	}
	e.Close('}')
}
