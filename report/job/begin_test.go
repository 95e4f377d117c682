package job

// This file holds that what a visit can begin with is good for a visit, names
// its source, and is said in every language.

import (
	"reflect"
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/say"
)

func TestBeginningsAreGoodAndSourced(t *testing.T) {
	good := func(what string, change func(*visit.Visit), sources []Source) {
		t.Helper()
		v := visit.Visit{HullName: "Eider", Date: "2026-05-14", Rule: visit.DefaultRule}
		change(&v)
		r := visit.Validate(v, nil)
		for _, f := range append(r.Refusals, r.Doubts...) {
			t.Errorf("%s: %v", what, f)
		}
		if len(sources) == 0 {
			t.Errorf("%s: from nowhere", what)
		}
	}
	def := false
	for _, r := range Rules() {
		good(r.Named, func(v *visit.Visit) { v.Rule = r.Rule }, r.Sources)
		def = def || r.Rule == visit.DefaultRule
		for _, tag := range words.Languages() {
			id := words.Of("rule", r.Named)
			if said := words.In(tag).Say(id, nil); strings.HasPrefix(said, "[") {
				t.Errorf("%s: no words for rule %q", tag, r.Named)
			}
		}
	}
	if !def {
		t.Error("the rule that stands where none is chosen cannot be chosen")
	}
	for i, s := range LeafSets() {
		good(string(s.Name.ID), func(v *visit.Visit) { v.Leaves = s.LeafSet }, s.Sources)
		if i == 0 && !reflect.DeepEqual(s.SinglesMM(), visit.LeafSet{}.SinglesMM()) {
			t.Error("the first set is not the one that stands where none is told")
		}
	}
	for _, x := range Targets() {
		good(x.Reason, func(v *visit.Visit) { v.Target = x.Target }, x.Sources)
	}
	for _, d := range Defaults() {
		good(string(d.Text.ID), func(*visit.Visit) {}, d.Sources)
		for _, tag := range words.Languages() {
			for _, u := range []say.Units{{}, {Metric: true}} {
				if said := d.Text.Say(words.In(tag), u); strings.HasPrefix(said, "[") || strings.Contains(said, "<no value>") || u.Metric && strings.Contains(said, "thou") {
					t.Errorf("%s %v: %q", tag, u, said)
				}
			}
		}
	}
}

// TestEverythingSaidInABayHasItsSource: cautions, checks and what to bring.
func TestEverythingSaidInABayHasItsSource(t *testing.T) {
	for _, stage := range Stages {
		for _, afloat := range []bool{false, true} {
			for _, c := range Cautions(stage, afloat) {
				if len(c.Sources) == 0 {
					t.Errorf("caution %s: from nowhere", c.Text.ID)
				}
			}
		}
	}
	for _, name := range []string{"Kittiwake", "Avocet", "Cormorant", "Wren"} {
		h := hull(t, name)
		v := &visit.Visit{State: visit.State{Boat: "afloat"}}
		for _, c := range LookOver(h, v) {
			if len(c.Sources) == 0 {
				t.Errorf("%s: check %s: from nowhere", name, c.ID)
			}
		}
		for _, item := range Bring(h, v, 0) {
			if len(item.Sources) == 0 {
				t.Errorf("%s: %s: from nowhere", name, item.Text.ID)
			}
		}
	}
}

// TestCautionsBiteWhereTheyAreKnown: every check named in the table is one, every
// danger named there is known, and those of the water are said in it alone.
func TestCautionsBiteWhereTheyAreKnown(t *testing.T) {
	known := map[string]bool{}
	for _, name := range []string{"Kittiwake", "Avocet", "Cormorant"} {
		for _, c := range LookOver(hull(t, name), &visit.Visit{}) {
			known[c.ID] = true
		}
	}
	for check, ids := range bites {
		if !known[check] {
			t.Errorf("%q is no check", check)
		}
		wet, dry := CautionsAt(check, true), CautionsAt(check, false)
		if len(wet) != len(ids) || len(dry) > len(wet) {
			t.Errorf("%s: %d dangers, %d told afloat, %d ashore", check, len(ids), len(wet), len(dry))
		}
	}
	if len(CautionsAt(BoatAsUsed, true)) != 0 {
		t.Error("a caution where nothing bites")
	}
}
