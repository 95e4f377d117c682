package job

// This file is what a visit can begin with: the acceptance rules in use, leaf
// sets as they are sold, gaps left on purpose, and what stands where nothing is
// said; each with where it is from. Rules in use disagree, so one is chosen and
// none is hard-wired.

import (
	"aligner/assets/words"
	"aligner/hulls/visit"
)

// Rule is an acceptance rule in use.
type Rule struct {
	visit.Rule
	Sources []Source
}

// Rules are those in use, by name; visit.DefaultRule is among them.
func Rules() []Rule {
	largest := func(thou float64, named string, sources ...Source) Rule {
		return Rule{visit.Rule{Limits: visit.LargestGap, Limit: visit.Thou(thou), Named: named}, sources}
	}
	return []Rule{
		largest(2, "common practice, 2 thou", CommonPractice, ArmyCraft),
		largest(3, "common practice, 3 thou", CommonPractice, GearManual),
		largest(4, "common practice, 4 thou", CommonPractice),
		{visit.Rule{Limits: visit.PerInch, Limit: visit.Thou(1), Named: "common practice, 1 thou an inch of face"}, []Source{CommonPractice}},
		{visit.Rule{Limits: visit.DifferenceAcross, Limit: visit.Thou(4), Named: "common practice, 4 thou across"}, []Source{CommonPractice}},
	}
}

// LeafSet is a set as it is sold.
type LeafSet struct {
	Name Text
	visit.LeafSet
	Sources []Source
}

// LeafSets are the usual ones; the first stands where none is told.
func LeafSets() []LeafSet {
	set := func(id string, unit visit.Unit, leaves ...float64) LeafSet {
		return LeafSet{Text{ID: words.Of("leaf_set", id)}, visit.LeafSet{Leaves: leaves, Unit: unit}, []Source{CommonPractice}}
	}
	return []LeafSet{
		set("inch", visit.InThou, visit.DefaultLeavesThou...),
		set("inch fine", visit.InThou, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 25),
		set("metric", visit.InMM, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1),
		set("metric fine", visit.InMM, 0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.8),
	}
}

// Target is a gap left on purpose.
type Target struct {
	Name Text
	visit.Target
	Sources []Source
}

// Targets are those in use. Where a hull takes another shape under way, the gap
// is left where it will close.
func Targets() []Target {
	return []Target{
		{Text{ID: words.TargetHogs}, visit.Target{Spread: visit.Thou(4), OpensAtDeg: 180, Reason: "hogs when loaded"}, []Source{ArmyCraft}},
	}
}

// Default is what stands where nothing is said.
type Default struct {
	Text    Text
	Sources []Source
}

// Defaults are those of a visit.
func Defaults() []Default {
	d := func(id words.ID, args Args, sources ...Source) Default { return Default{Text{id, args}, sources} }
	return []Default{
		d(words.DefaultLeaves, Args{"From": ThicknessMM(visit.Thou(visit.DefaultLeavesThou[0]).MM()), "To": ThicknessMM(visit.Thou(visit.DefaultLeavesThou[len(visit.DefaultLeavesThou)-1]).MM())}, CommonPractice),
		d(words.DefaultStacked, Args{"Count": visit.DefaultStacked}, CommonPractice),
		d(words.DefaultFeel, Args{"Feel": ThicknessMM(visit.Thou(visit.DefaultFeelErrorThou).MM()), "Repeat": GapMM(visit.Thou(2).MM())}, CommonPractice),
		d(words.DefaultRuleSaid, Args{"Limit": ThicknessMM(visit.DefaultRule.Limit.MM())}, CommonPractice, GearManual),
		d(words.DefaultTarget, nil, CommonPractice),
		d(words.DefaultStanding, Args{"Hours": StandingHours}, CommonPractice),
	}
}
