package trouble

// This file tests what is known of one boat beforehand.

import (
	"slices"
	"testing"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/report/history"
)

func shareOf(f Finding, c Cause) float64 {
	for _, r := range f.Causes {
		if r.Cause == c {
			return r.Share
		}
	}
	return 0
}

// A shaft that turns far below its whirling speed hardly whirls, one near it may;
// one whose speed nobody told is any shaft.
func TestWhirlingIsRankedByTheShaftsOwnSpeed(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	line, err := kinematics.Prepare(h)
	if err != nil {
		t.Fatal(err)
	}
	low, _, err := line.WhirlRPM()
	if err != nil {
		t.Fatal(err)
	}
	share := func(rpm float64) (float64, int) {
		h.ShaftSpeedMaxRPM = rpm
		b, err := BoatOf(&h, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		in := words.In("en")
		if len(b.Text(in, GlandLeaks)) > 0 {
			t.Errorf("a gland that leaks is told of whirling: %q", b.Text(in, GlandLeaks))
		}
		return shareOf(WeighOn(b, ShakesAtOneSpeed, nil), Whirling), len(b.Text(in, ShakesAtOneSpeed))
	}
	any, none := share(0)
	far, toldFar := share(0.3 * low)
	middle, toldMiddle := share(0.8 * low)
	near, toldNear := share(0.95 * low)
	if !(far < any && any == middle && middle < near) || none+toldMiddle != 0 || toldFar != 1 || toldNear != 1 {
		t.Errorf("shares %v unsaid, %v far, %v between, %v near; told %d %d %d %d", any, far, middle, near, none, toldFar, toldMiddle, toldNear)
	}
}

// What most likely moved since the visit before ranks causes, of that visit alone.
func TestThePastRanksCauses(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.ShaftSpeedMaxRPM = 0
	past := &history.Past{Hull: h, Entries: []history.Entry{{Number: 4},
		{Number: 7, Since: &history.Change{Likely: []history.Likely{{Cause: history.NutBacked, Mounts: []int{1}, Chance: 0.8}, {Cause: history.Steady, Chance: 0.2}}}}}}
	weigh := func(number int64) Finding {
		b, err := BoatOf(&h, past, number)
		if err != nil {
			t.Fatal(err)
		}
		if told := len(b.Text(words.In("en"), DoesNotHold)) > 0; told != (number == 7) {
			t.Errorf("visit %d: told %v", number, told)
		}
		return WeighOn(b, DoesNotHold, nil)
	}
	before, with := weigh(4), weigh(7)
	if !slices.EqualFunc(before.Causes, Weigh(DoesNotHold, nil).Causes, func(a, b Ranked) bool { return a == b }) {
		t.Error("the first visit is ranked by what came later")
	}
	if a, b := shareOf(before, NutBackedOff), shareOf(with, NutBackedOff); b <= a {
		t.Errorf("a nut that ran down: share %v, without it %v", b, a)
	}
	for _, c := range with.Causes {
		if c.Grade == VeryLikely || c.Tested {
			t.Errorf("%s is %s untested", c.Cause, c.Grade)
		}
	}
}

// Every answer of the past is said, in both languages.
func TestWhatThePastTellsIsSaid(t *testing.T) {
	for cause, times := range moved {
		for c, by := range times {
			if by <= 0 || by > 4 || !slices.Contains(Causes, c) {
				t.Errorf("%s: %s %v times", cause, c, by)
			}
		}
		for _, tag := range words.Languages() {
			if said := words.In(tag).Say(words.Of("trouble_boat", string(cause)), nil); said == "" || said[0] == '[' {
				t.Errorf("%s, %s: %q", tag, cause, said)
			}
		}
	}
}

func TestMarksAcrossNutsAnswer(t *testing.T) {
	d := visit.New("Kittiwake", builtin.Hull(t, "Kittiwake"))
	for want, mark := range map[Answer]string{"": "", Good: visit.MarkInLine, Bad: visit.MarkTurned} {
		d.Visit.Mounts = []visit.MountFound{{Mount: "fore port", Mark: visit.MarkInLine}, {Mount: "aft port", Mark: mark}}
		if mark == "" {
			d.Visit.Mounts = d.Visit.Mounts[1:]
		}
		if got := Told(&d, nil)[MarksInLine]; got != want {
			t.Errorf("marked %q: told %q", mark, got)
		}
	}
}
