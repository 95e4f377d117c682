package job

// This file tests what a seal turned free, and a heavy place of the turn, do to
// the rest of the job.

import (
	"slices"
	"testing"

	"aligner/hulls/visit"
)

func stepKinds(steps []FastenStep) (list []FastenKind) {
	for _, s := range steps {
		list = append(list, s.Kind)
	}
	return list
}

func TestASealTurnedFreeIsSetBackBeforeTheShaftIsTurned(t *testing.T) {
	h := hull(t, "kittiwake")
	steps, _ := FastenOrder(h, false, 0)
	v := &visit.Visit{}
	if got := WithSeal(steps, v); !slices.Equal(stepKinds(got), stepKinds(steps)) {
		t.Errorf("a seal left alone is set back: %v", stepKinds(got))
	}
	v.Seal = visit.Seal{Kind: visit.SealFace, Freed: true}
	got := WithSeal(steps, v)
	at := slices.Index(stepKinds(got), SetSealBack)
	if len(got) != len(steps)+1 || at < 0 || got[at+1].Kind != TurnHand || got[at-1].Kind != BoltRound {
		t.Fatalf("the order is %v", stepKinds(got))
	}
	if p := FastenProgress(h, v, got)[at]; p == Done {
		t.Error("done before it is said to be")
	}
	v.Seal.SetBack = true
	if p := FastenProgress(h, v, got)[at]; p != Done {
		t.Errorf("set back, and the step is %s", p)
	}
}

func hasReason(v *visit.Visit, t *testing.T, kind ReasonKind) bool {
	return slices.ContainsFunc(Provisional(hull(t, "kittiwake"), v), func(r Reason) bool { return r.Kind == kind })
}

func TestWhatASealDoesToTheResult(t *testing.T) {
	gauging := visit.Event{Gauging: &visit.Gauging{Held: "seated", Readings: []visit.Reading{visit.Leaf{Goes: visit.Thou(3), Stops: visit.Thou(4)}}}}
	bolts := visit.Event{Fasten: &visit.Fasten{What: "bolts", Kind: visit.FastenedCouplingBolts}}
	for _, c := range []struct {
		seal         visit.Seal
		events       []visit.Event
		pushes, left bool
	}{
		{visit.Seal{}, []visit.Event{gauging, bolts}, false, false},
		{visit.Seal{Kind: visit.SealFace}, nil, false, false},
		{visit.Seal{Kind: visit.SealFace}, []visit.Event{gauging}, true, false},
		{visit.Seal{Kind: visit.SealPacking}, []visit.Event{gauging}, false, false},
		{visit.Seal{Kind: visit.SealFace, Freed: true}, []visit.Event{gauging}, false, false},
		{visit.Seal{Kind: visit.SealFace, Freed: true}, []visit.Event{gauging, bolts}, false, true},
		{visit.Seal{Kind: visit.SealPacking, Freed: true, SetBack: true}, []visit.Event{gauging, bolts}, false, false},
	} {
		v := &visit.Visit{Seal: c.seal, Events: c.events}
		if p, l := hasReason(v, t, SealPushes), hasReason(v, t, SealLeft); p != c.pushes || l != c.left {
			t.Errorf("%+v, %d events: pushes %v, left free %v", c.seal, len(c.events), p, l)
		}
	}
}

func TestWhereTheShaftGoesHeavily(t *testing.T) {
	at := func(deg float64) visit.Maybe { return visit.Maybe{Known: true, Value: deg} }
	for _, c := range []struct {
		before, after visit.Maybe
		turned        string
		want          []string
	}{
		{visit.Maybe{}, visit.Maybe{}, "smooth", nil},
		{at(90), visit.Maybe{}, "", []string{"unbolted"}},
		{at(90), visit.Maybe{}, "smooth", []string{"unbolted", "gone"}},
		{at(350), at(20), "heavy", []string{"unbolted", "bolted", "same"}},
		{at(-10), at(20), "heavy", []string{"unbolted", "bolted", "same"}},
		{at(0), at(180), "heavy", []string{"unbolted", "bolted", "other"}},
		{visit.Maybe{}, at(180), "heavy", []string{"bolted", "new"}},
	} {
		v := &visit.Visit{LookOver: []visit.Finding{{Check: ShaftFree, Finding: "failed", TightAtDeg: c.before}},
			HandedOver: visit.HandedOver{TurnedByHand: c.turned, TightAtDeg: c.after}}
		var got []string
		for _, text := range TightPlaces(v) {
			got = append(got, string(text.ID)[len("job_tight_"):])
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%+v then %+v: %v, wanted %v", c.before, c.after, got, c.want)
		}
	}
}
