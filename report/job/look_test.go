package job

// This file holds the checks: their order by layout, their states, what they
// stop.

import (
	"slices"
	"testing"

	"aligner/assets"
	"aligner/hulls/visit"
)

func checkIDs(list []Check) []string {
	ids := make([]string, len(list))
	for i, c := range list {
		ids[i] = c.ID
	}
	return ids
}

func TestChecksByLayout(t *testing.T) {
	common := []string{SafeToWork, StrutFirm, BearingEven, ShaftFree, ShaftTrue, CouplingTight, KeyAndBolts, FacesClean, BedSound}
	for _, c := range []struct {
		hull string
		rest []string
	}{
		{"Kittiwake", []string{MountsSound, NutsFree, ShaftCentral, BoxSound, EngineClear, BoatAsUsed, MountsStood}},
		{"Eider", []string{MountsSound, NutsFree, ShaftCentral, BoxSound, EngineClear, BoatAsUsed, MountsStood}},
		{"Avocet", []string{MountsSound, NutsFree, ShaftCentral, BoxSound, EngineClear, ShaftUnderEngine, BoatAsUsed, MountsStood}},
		{"Cormorant", []string{FeetFlat, ShaftCentral, BoxSound, EngineClear, BoatAsUsed}},
	} {
		got := checkIDs(LookOver(hull(t, c.hull), &visit.Visit{}))
		if want := append(slices.Clone(common), c.rest...); !slices.Equal(got, want) {
			t.Errorf("%s:\n got %q\nwant %q", c.hull, got, want)
		}
	}
}

// Laws: each check once, with a source, and what a check needs comes before it.
func TestChecksLaws(t *testing.T) {
	for _, name := range assets.HullNames() {
		list := LookOver(hull(t, name), &visit.Visit{})
		ids := checkIDs(list)
		for i, c := range list {
			if slices.Index(ids, c.ID) != i || len(c.Sources) == 0 || c.State != Unseen {
				t.Errorf("%s: %s: twice, without a source, or %s of an empty visit", name, c.ID, c.State)
			}
		}
		for _, pair := range [][2]string{{StrutFirm, BearingEven}, {BearingEven, ShaftTrue}, {ShaftTrue, CouplingTight},
			{CouplingTight, FacesClean}, {FacesClean, EngineClear}, {BedSound, MountsSound}} {
			if a, b := slices.Index(ids, pair[0]), slices.Index(ids, pair[1]); b >= 0 && a > b {
				t.Errorf("%s: %s comes after %s", name, pair[0], pair[1])
			}
		}
	}
}

func TestStatesOfChecks(t *testing.T) {
	h := hull(t, "Kittiwake")
	for _, c := range []struct {
		name  string
		visit visit.Visit
		check string
		want  State
		told  bool
	}{
		{"good", visit.Visit{LookOver: found("good", StrutFirm)}, StrutFirm, Good, false},
		{"failed", visit.Visit{LookOver: found("failed", StrutFirm)}, StrutFirm, Failed, false},
		{"skipped", visit.Visit{LookOver: found("skipped", StrutFirm)}, StrutFirm, Skipped, false},
		{"nobody looked", visit.Visit{LookOver: found("good", StrutFirm)}, ShaftFree, Unseen, false},
		{"a wider finding", visit.Visit{LookOver: found("failed", "mounts and bed sound")}, BedSound, Failed, false},
		{"its own goes before", visit.Visit{LookOver: append(found("failed", "mounts and bed sound"), found("good", BedSound)...)}, BedSound, Good, false},
		{"on a trailer", visit.Visit{State: visit.State{Boat: "trailer"}}, BoatAsUsed, Skipped, true},
		{"afloat, since when?", visit.Visit{State: visit.State{Boat: "afloat"}}, BoatAsUsed, Unseen, false},
		{"just launched", visit.Visit{State: visit.State{Boat: "afloat", HoursSinceLaunch: visit.Known(3)}}, BoatAsUsed, Failed, true},
		{"a day afloat", visit.Visit{State: visit.State{Boat: "afloat", HoursSinceLaunch: visit.Known(24)}}, BoatAsUsed, Good, true},
		{"rig down", visit.Visit{State: visit.State{Boat: "afloat", HoursSinceLaunch: visit.Known(50), Rig: "down"}}, BoatAsUsed, Failed, true},
		{"new rubber", visit.Visit{State: visit.State{MountAgeMonths: visit.Known(0), MountHoursStanding: visit.Known(2)}}, MountsStood, Failed, true},
		{"new rubber, since when?", visit.Visit{State: visit.State{MountAgeMonths: visit.Known(0)}}, MountsStood, Unseen, false},
		{"new rubber, stood", visit.Visit{State: visit.State{MountAgeMonths: visit.Known(0), MountHoursStanding: visit.Known(24)}}, MountsStood, Good, true},
		{"old rubber", visit.Visit{State: visit.State{MountAgeMonths: visit.Known(20)}}, MountsStood, Good, true},
	} {
		list := LookOver(h, &c.visit)
		got := list[slices.Index(checkIDs(list), c.check)]
		if got.State != c.want || got.Told != c.told || got.Provisional() != (c.want != Good) {
			t.Errorf("%s: %s is %s, told %v; want %s, %v", c.name, c.check, got.State, got.Told, c.want, c.told)
		}
	}
}

func TestWhatFailedChecksStop(t *testing.T) {
	h := hull(t, "Kittiwake")
	for _, c := range []struct {
		failed []string
		afloat bool
		want   Stage
		by     int
	}{
		{nil, true, "", 0},
		{[]string{ShaftTrue, ShaftFree}, true, "", 0}, // set true to the middle of it
		{[]string{StrutFirm}, true, Moving, 1},
		{[]string{StrutFirm, BearingEven, KeyAndBolts}, true, Moving, 2},
		{[]string{StrutFirm, CouplingTight}, true, Gauging, 1},
		{[]string{KeyAndBolts}, true, Fastening, 1},
		{[]string{BoxSound}, true, Gauging, 1},
		{[]string{BoxSound}, false, "", 0}, // dry, it only waits
		{[]string{SafeToWork}, false, Gauging, 1},
	} {
		v := visit.Visit{State: settled, LookOver: found("failed", c.failed...)}
		if !c.afloat {
			v.State.Boat = "trailer"
		}
		stage, by := Standing(LookOver(h, &v))
		if stage != c.want || len(by) != c.by {
			t.Errorf("%q failed, afloat %v: stops %q by %q; want %q by %d", c.failed, c.afloat, stage, checkIDs(by), c.want, c.by)
		}
	}
}
