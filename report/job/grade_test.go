package job

// This file holds what keeps a result provisional, and when to look again.

import (
	"slices"
	"testing"

	"aligner/assets"
	"aligner/hulls/visit"
)

func kinds(list []Reason) []ReasonKind {
	var all []ReasonKind
	for _, r := range list {
		all = append(all, r.Kind)
	}
	return all
}

func gauged(held string, turned float64) visit.Event {
	return visit.Event{Gauging: &visit.Gauging{Held: held, HeldBy: "block", ShaftTurnDeg: turned}}
}

var (
	aMove   = visit.Event{Move: &visit.Move{NutFlats: map[string]float64{"fore port": 1}}}
	aFasten = visit.Event{Fasten: &visit.Fasten{What: "jam nuts"}}
)

// A visit with every check good, to which one thing is done.
func TestProvisional(t *testing.T) {
	h := hull(t, "Kittiwake")
	whole := []visit.Event{gauged("seated", 0), gauged("seated", 180), aMove, gauged("seated", 0), aFasten, gauged("seated", 0), aFasten}
	find := func(v *visit.Visit, check, finding string) {
		i := slices.IndexFunc(v.LookOver, func(f visit.Finding) bool { return f.Check == check })
		v.LookOver = slices.Delete(slices.Clone(v.LookOver), i, i+1)
		if finding != "" {
			v.LookOver = append(v.LookOver, visit.Finding{Check: check, Finding: finding})
		}
	}
	forget := func(v *visit.Visit) { find(v, BoatAsUsed, ""); find(v, MountsStood, "") }
	for _, c := range []struct {
		name   string
		change func(v *visit.Visit)
		want   []ReasonKind
	}{
		{"final", func(v *visit.Visit) {}, nil},
		{"final by the boat's state", forget, nil},
		{"failed", func(v *visit.Visit) { find(v, ShaftTrue, "failed") }, []ReasonKind{CheckFailed}},
		{"skipped", func(v *visit.Visit) { find(v, StrutFirm, "skipped") }, []ReasonKind{CheckSkipped}},
		{"unseen", func(v *visit.Visit) { find(v, StrutFirm, "") }, []ReasonKind{CheckUnseen}},
		{"gravest first", func(v *visit.Visit) {
			find(v, BedSound, "")
			find(v, StrutFirm, "skipped")
			find(v, ShaftTrue, "failed")
		}, []ReasonKind{CheckFailed, CheckSkipped, CheckUnseen}},
		{"trailer", func(v *visit.Visit) { forget(v); v.State.Boat = "trailer" }, []ReasonKind{OutOfWater}},
		{"somebody found the trailer good enough", func(v *visit.Visit) { v.State.Boat = "trailer" }, nil},
		{"no state", func(v *visit.Visit) { forget(v); v.State = visit.State{} }, []ReasonKind{NoBoatState, NewRubber}},
		{"launched today", func(v *visit.Visit) { forget(v); v.State.HoursSinceLaunch = visit.Known(4) }, []ReasonKind{JustLaunched}},
		{"launched when?", func(v *visit.Visit) { forget(v); v.State.HoursSinceLaunch = visit.Maybe{} }, []ReasonKind{JustLaunched}},
		{"rig down", func(v *visit.Visit) { forget(v); v.State.Rig = "down" }, []ReasonKind{NotLaden}},
		{"new rubber", func(v *visit.Visit) { forget(v); v.State.MountAgeMonths = visit.Known(0) }, []ReasonKind{NewRubber}},
		{"nothing gauged", func(v *visit.Visit) { v.Events = nil }, []ReasonKind{NothingGauged}},
		{"not since the move", func(v *visit.Visit) { v.Events = whole[:3] }, []ReasonKind{NotSinceMove}},
		{"not fastened", func(v *visit.Visit) { v.Events = whole[:4] }, []ReasonKind{NotFastened}},
		{"fastened, coupling open", func(v *visit.Visit) { v.Events = whole[:5] }, nil},
		{"mounts and bolts, not gauged between", func(v *visit.Visit) { v.Events = append(slices.Clone(whole[:5]), aFasten) }, []ReasonKind{NotSinceFastened}},
		{"found good and bolted up again", func(v *visit.Visit) { v.Events = append(slices.Clone(whole[:2]), aFasten) }, nil},
		{"never turned", func(v *visit.Visit) {
			find(v, ShaftTrue, "skipped")
			v.Events = whole[3:]
		}, []ReasonKind{NotTurned, CheckSkipped}},
		{"dialled instead", func(v *visit.Visit) { v.Events = whole[3:] }, nil},
		{"hanging", func(v *visit.Visit) { v.Events = append(slices.Clone(whole), gauged("hanging", 0)) }, []ReasonKind{NotForMoves}},
		{"snug", func(v *visit.Visit) { v.Events = append(slices.Clone(whole), gauged("snug", 0)) }, []ReasonKind{NotForMoves}},
		{"lever on", func(v *visit.Visit) {
			e := gauged("seated", 0)
			e.Gauging.LeverOn = true
			v.Events = append(slices.Clone(whole), e)
		}, []ReasonKind{NotForMoves}},
		{"centred, nobody says how", func(v *visit.Visit) {
			v.Events = append(slices.Clone(whole), visit.Event{Gauging: &visit.Gauging{Held: "centred"}})
		}, []ReasonKind{HeldUnsaid}},
		{"worn bearing", func(v *visit.Visit) {
			g := &visit.Gauging{Held: "seated"}
			for _, s := range strips([2]float64{1, 1}, [2][2]float64{{0, -.5}, {0, -.5}}, allRound...) {
				g.Readings = append(g.Readings, s)
			}
			v.Events = append([]visit.Event{{Gauging: g}}, whole...)
		}, []ReasonKind{BearingBad}},
	} {
		v := allGood(h)
		v.Events = whole
		c.change(v)
		if got := Provisional(h, v); !slices.Equal(kinds(got), c.want) {
			t.Errorf("%s: %q, want %q", c.name, kinds(got), c.want)
		}
	}
}

// A failed check says what it stops; a skipped one does not.
func TestFailedCheckStops(t *testing.T) {
	h := hull(t, "Kittiwake")
	v := allGood(h)
	v.Events = []visit.Event{gauged("seated", 0)}
	v.LookOver = append(found("failed", StrutFirm), v.LookOver[2:]...)
	got := Provisional(h, v)
	if len(got) != 2 || got[0].Check != StrutFirm || got[0].Stops != Moving || got[1].Check != SafeToWork || got[1].Stops != "" {
		t.Errorf("%+v", got)
	}
}

// Law: the worse is found, the more reasons there are.
func TestProvisionalGrows(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := hull(t, name)
		good := allGood(h)
		good.Events = []visit.Event{gauged("seated", 0)}
		if got := Provisional(h, good); len(got) > 0 {
			t.Errorf("%s: all good, yet %q", name, kinds(got))
		}
		for i := range good.LookOver {
			worse := *good
			worse.LookOver = slices.Clone(good.LookOver)
			worse.LookOver[i].Finding = "failed"
			got := Provisional(h, &worse)
			if len(got) == 0 || got[0].Kind != CheckFailed || got[0].Check != worse.LookOver[i].Check {
				t.Errorf("%s: %s failed, yet %+v", name, worse.LookOver[i].Check, got)
			}
		}
	}
}

func TestDue(t *testing.T) {
	h := hull(t, "Kittiwake")
	for _, c := range []struct {
		name   string
		change func(v *visit.Visit)
		want   []string // reason and date
	}{
		{"afloat and settled", func(v *visit.Visit) {}, []string{"running in", "season 2027-05-14", "struck"}},
		{"on a trailer", func(v *visit.Visit) { v.State.Boat = "trailer" }, []string{"launched", "running in", "season 2027-05-14", "struck"}},
		{"launched today", func(v *visit.Visit) { v.State.HoursSinceLaunch = visit.Known(4) }, []string{"settled 2026-05-16", "running in", "season 2027-05-14", "struck"}},
		{"new rubber", func(v *visit.Visit) {
			v.State.MountAgeMonths, v.State.MountHoursStanding = visit.Known(0), visit.Known(3)
		}, []string{"rubber 2026-05-15", "running in", "season 2027-05-14", "struck"}},
		{"something failed", func(v *visit.Visit) { v.LookOver = found("failed", ShaftTrue) }, []string{"mended", "running in", "season 2027-05-14", "struck"}},
		{"no date", func(v *visit.Visit) { v.Date = "" }, []string{"running in", "season", "struck"}},
		{"went on the next day", func(v *visit.Visit) {
			v.Events = []visit.Event{{Date: "2026-05-15", Gauging: &visit.Gauging{}}, gauged("seated", 0)}
		},
			[]string{"running in", "season 2027-05-15", "struck"}},
		{"leap day", func(v *visit.Visit) { v.Date = "2028-02-29" }, []string{"running in", "season 2029-03-01", "struck"}},
	} {
		v := &visit.Visit{Date: "2026-05-14", State: settled}
		c.change(v)
		var got []string
		for _, d := range Due(h, v) {
			line := d.Reason
			if d.Date != "" {
				line += " " + d.Date
			}
			got = append(got, line)
			if (d.When == ByHours) != (d.Hours == [2]float64{10, 50}) || len(d.Sources) == 0 {
				t.Errorf("%s: %+v", c.name, d)
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// What the built-in visits come to, that a change of it is seen.
func TestBuiltInVisits(t *testing.T) {
	for name, want := range map[string][]ReasonKind{
		"first-job":  {CheckUnseen},
		"bent-shaft": {CheckFailed, NotFastened, OutOfWater, CheckSkipped, CheckUnseen},
	} {
		h, v := built(t, name)
		if got := slices.Compact(kinds(Provisional(h, v))); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
}
