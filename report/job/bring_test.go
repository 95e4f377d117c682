package job

// This file holds cautions and what to bring.

import (
	"slices"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/report/say"
)

func cautionIDs(list []Caution) []string {
	var ids []string
	for _, c := range list {
		ids = append(ids, strings.TrimPrefix(string(c.Text.ID), "job_caution_"))
	}
	return ids
}

func TestCautionsByStage(t *testing.T) {
	for _, c := range []struct {
		stage  Stage
		afloat bool
		want   string
	}{
		{LookingOver, false, "maker_first locked_out sign vapour propeller under_mount"},
		{LookingOver, true, "maker_first locked_out sign vapour propeller stream gland under_mount"},
		{Gauging, false, "between_faces shaft_slides"},
		{Gauging, true, "stream gland between_faces shaft_slides"},
		{Moving, false, "under_mount weight lever"},
		{Moving, true, "gland under_mount weight lever"},
		{Fastening, true, "spanner_slips lock_out_last"},
		{HandingOver, false, "lock_out_last clear_to_turn first_start"},
		{HandingOver, true, "lock_out_last clear_to_turn first_start gland_runs"},
	} {
		if got := strings.Join(cautionIDs(Cautions(c.stage, c.afloat)), " "); got != c.want {
			t.Errorf("%s, afloat %v: %q, want %q", c.stage, c.afloat, got, c.want)
		}
	}
}

// Laws: what holds dry holds afloat; every caution has a source and a stage.
func TestCautionsLaws(t *testing.T) {
	said := map[string]bool{}
	for _, s := range Stages {
		afloat := cautionIDs(Cautions(s, true))
		for _, id := range cautionIDs(Cautions(s, false)) {
			if !slices.Contains(afloat, id) {
				t.Errorf("%s: %s is said dry and not afloat", s, id)
			}
		}
		for _, id := range afloat {
			said[id] = true
		}
	}
	for _, d := range dangers {
		if !said[strings.ReplaceAll(d.id, " ", "_")] || len(d.sources) == 0 {
			t.Errorf("%s: never said, or without a source", d.id)
		}
	}
}

// lines are what to bring, in English and inches.
func lines(items []Item) []string {
	var list []string
	for _, it := range items {
		list = append(list, string(it.Stage)+": "+it.Text.Say(words.In("en"), say.Units{}))
	}
	return list
}

func TestBring(t *testing.T) {
	avocet, kittiwake, cormorant, eider := hull(t, "Avocet"), hull(t, "Kittiwake"), hull(t, "Cormorant"), hull(t, "Eider")
	noPilot, odd := *kittiwake, *kittiwake
	noPilot.Coupling.PilotDiameterMM = 0
	odd.Coupling.Bolts = hulls.Bolts{Count: 4, Thread: "#10-24 UNC", Grade: "none"}
	open := *avocet
	open.Mounts = slices.Clone(open.Mounts)
	for i := range open.Mounts {
		open.Mounts[i].Reach = hulls.Open
	}
	afloat := visit.Visit{State: settled}
	stuck := visit.Visit{Mounts: []visit.MountFound{{Mount: "fore port", Nut: visit.Stuck}}}
	for _, c := range []struct {
		name  string
		hull  *hulls.Hull
		visit visit.Visit
		want  []string // lines there are
		not   []string // what no line says
	}{
		{"7/16 bolts", avocet, visit.Visit{}, []string{
			"gauge: One 5/8 in spanner for heads of the coupling's bolts.",
			"gauge: One 11/16 in spanner for nuts of the coupling's bolts.",
			"move: 2 spanners of 15/16 in for adjusting nuts and jam nuts: one holds, one turns.",
			"look over: A mirror on a handle: aft starboard can only be felt for.",
			"gauge: Leaves from 1.5 thou to 25 thou, the ones this visit is told.",
		}, []string{"pump", "Shims", "scale", "stuck"}},
		{"V-drive, all open", &open, visit.Visit{}, []string{"look over: A mirror on a handle, for the far side of the faces."}, nil},
		{"metric, of two makes", eider, afloat, []string{
			"gauge: 2 spanners of 16 mm for heads of the coupling's bolts and nuts of the coupling's bolts: one holds, one turns.",
			"gauge: 2 spanners of 17 mm for heads of the coupling's bolts and nuts of the coupling's bolts, if they are of the older width.",
			"look over: Packing, a plug for the log, the pump: she is afloat.",
		}, nil},
		{"solid feet", cormorant, visit.Visit{}, []string{
			"move: Shims in steps of 0.05 mm, of each foot's shape.",
			"move: Spanners for the foot bolts, whose size the hull does not say.",
		}, []string{"jam nuts"}},
		{"no pilot", &noPilot, visit.Visit{}, []string{"gauge: A block and wedges, or a hanging scale, to hold the shaft at its centre."}, []string{"pilot enters"}},
		{"odd bolts", &odd, visit.Visit{}, []string{
			"gauge: Spanners for the #10-24 UNC thread, whose widths are not known here: try them.",
			"fasten: A torque wrench and the maker's figure: none can be worked out for these bolts.",
		}, nil},
		{"a stuck nut", kittiwake, stuck, []string{
			"move: Freeing oil and time for fore port, which are stuck.",
			"fasten: A torque wrench good from 8.7 lb-ft to 35 lb-ft, for the coupling's bolts.",
		}, nil},
	} {
		got := lines(Bring(c.hull, &c.visit, 0))
		for _, want := range c.want {
			if !slices.Contains(got, want) {
				t.Errorf("%s: no %q in\n%s", c.name, want, strings.Join(got, "\n"))
			}
		}
		for _, not := range c.not {
			if i := slices.IndexFunc(got, func(l string) bool { return strings.Contains(l, not) }); i >= 0 {
				t.Errorf("%s: %q", c.name, got[i])
			}
		}
	}
}

// Laws: grouped by stage in the order of the job, each thing once in a stage,
// each with a source; a torque wrench and spanners for every boat.
func TestBringLaws(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := hull(t, name)
		items := Bring(h, &visit.Visit{State: settled}, 30)
		for i, it := range items {
			if i > 0 && it.Stage.Before(items[i-1].Stage) {
				t.Errorf("%s: %s after %s", name, it.Stage, items[i-1].Stage)
			}
			if len(it.Sources) == 0 {
				t.Errorf("%s: %s has no source", name, it.Text.ID)
			}
		}
		all := lines(items)
		if len(slices.Compact(slices.Sorted(slices.Values(all)))) != len(all) {
			t.Errorf("%s: something is named twice:\n%s", name, strings.Join(all, "\n"))
		}
		if !strings.Contains(strings.Join(all, "\n"), "spanner") {
			t.Errorf("%s: no spanner", name)
		}
	}
}
