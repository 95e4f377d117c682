package practice

// This file lets the tool work every task, and holds what a task promises.

import (
	"encoding/json"
	"math"
	"reflect"
	"slices"
	"testing"

	"aligner/hulls/visit"
)

// A learner who follows the tool's estimate and plan passes every practice, makes no
// mistake that is told, and names the fault.
func TestWhoFollowsThePlanPassesEveryPractice(t *testing.T) {
	for _, g := range Grades {
		causes := 0
		for n := 1; n <= Numbers; n++ {
			task := Task{g, n}
			w, err := ByPlan(task)
			if err != nil {
				t.Error(err)
				continue
			}
			d, err := w.beside(w.Acts)
			if err != nil {
				t.Error(err)
				continue
			}
			if !d.Passed {
				t.Errorf("%s %d on %s: left %.2f thou, tight %v", g, n, w.hull.Name, d.LeftThou, w.tight)
			}
			for _, m := range d.Mistakes {
				t.Errorf("%s %d on %s: %+v", g, n, w.hull.Name, m)
			}
			if d.Yours != d.Tools {
				t.Errorf("%s %d: the same work counted as %+v and %+v", g, n, d.Yours, d.Tools)
			}
			if d.CauseFound {
				causes++
			}
		}
		t.Logf("%s: the cause named in %d of %d", g, causes, Numbers)
		if causes < Numbers*9/10 {
			t.Errorf("%s: the cause named in %d of %d", g, causes, Numbers)
		}
	}
}

// What is hidden is what the grade says, seen from outside: the boat's true gap, and
// what gauging shows.
func TestWhatIsHidden(t *testing.T) {
	limits := map[Grade]span{TiltOnly: tiltThou, RunOut: smallThou}
	for _, g := range Grades[:len(Grades)-1] { // any fault is one of these
		for n := 1; n <= Numbers; n++ {
			w, err := Begin(Task{g, n})
			if err != nil {
				t.Fatal(err)
			}
			engine, marks, err := w.bench.Truth()
			if err != nil {
				t.Fatal(err)
			}
			in, ok := limits[g]
			if !ok {
				in = gapThou
			}
			if engine < in.least-1e-3 || engine > in.most+1e-3 {
				t.Errorf("%s %d: %.2f thou", g, n, engine)
			}
			off := math.Abs(engine - marks)
			if most := 2*trueThou.most + 1e-3; g != RunOut && off > most || g == TiltOnly && off > 1e-9 {
				t.Errorf("%s %d: run-out changes the gap by %.2f thou", g, n, off)
			}
			if (g == StuckNut) != (w.hidden.stuck >= 0) || (g == SoftFoot) != (w.hidden.SoftMM > 0) || (g == Burr) != (w.hidden.BurrThou > 0) {
				t.Errorf("%s %d: %+v", g, n, w.hidden)
			}
		}
	}
}

// The same acts give the same readings, also after a way through JSON.
func TestReplayGivesTheSame(t *testing.T) {
	for _, g := range Grades {
		w, err := ByPlan(Task{g, 3})
		if err != nil {
			t.Fatal(err)
		}
		data, err := json.Marshal(w.Acts)
		if err != nil {
			t.Fatal(err)
		}
		var acts []Act
		if err := json.Unmarshal(data, &acts); err != nil {
			t.Fatal(err)
		}
		again, err := Replay(w.Task, acts)
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(again.Visit().Events, w.Visit().Events) || again.Tally() != w.Tally() {
			t.Errorf("%s: replayed to something else", g)
		}
		if r := visit.Validate(*w.Visit(), w.hull); len(r.Refusals) > 0 {
			t.Errorf("%s: %v", g, r.Refusals)
		}
	}
}

func TestTasksThatAreNot(t *testing.T) {
	for _, task := range []Task{{"", 1}, {"luck", 1}, {Burr, 0}, {Burr, Numbers + 1}, {Burr, -1}} {
		if _, err := Begin(task); err == nil {
			t.Errorf("%+v began", task)
		}
	}
}

// A refused act changes nothing, and says why.
func TestActsThatCannotBeDone(t *testing.T) {
	w, err := Begin(Task{BothPlanes, 1})
	if err != nil {
		t.Fatal(err)
	}
	out := 0.0
	for slices.Contains(w.ClockDeg(), out) {
		out += 30
	}
	seated := Act{Gauge: &Gauge{Held: "seated"}}
	refused := func(a Act, why string) {
		t.Helper()
		before := *w.Visit()
		acts, tally := len(w.Acts), w.Tally()
		if _, err := w.Do(a); err == nil || err.Error() != why {
			t.Errorf("%+v: %v, wanted %q", a, err, why)
		}
		if len(w.Acts) != acts || w.Tally() != tally || !reflect.DeepEqual(before, *w.Visit()) {
			t.Errorf("%+v was refused and changed something", a)
		}
	}
	refused(Act{}, "nothing to do: no such act")
	refused(Act{Read: &Place{0}}, ErrNoGauging.Error())
	refused(Act{Turn: &Turn{}}, ErrNothing.Error())
	refused(Act{Turn: &Turn{NutFlats: map[string]int{"bow": 1}}}, `mount "bow": Eider has none of that name: no such act`)
	refused(Act{Turn: &Turn{NutFlats: map[string]int{"fore port": 100}}}, "fore port: nut at 33.33 mm, -7 to 9 is there: beyond the thread or the slot")
	refused(Act{Turn: &Turn{SlideMM: map[string]float64{"fore port": math.NaN()}}}, "fore port: slid to NaN mm, -6 to 6 is there: beyond the thread or the slot")
	refused(Act{Gauge: &Gauge{Held: "snug"}}, `shaft held "snug": must be one of ["seated" "hanging" "bolted"]: no such act`)
	refused(Act{Gauge: &Gauge{Held: "seated", ShaftTurnDeg: math.NaN()}}, "turned by NaN: must be -360 to 360 degrees: no such act")
	refused(Act{HandOver: &HandOver{"luck"}}, `cause "luck": must be one of ["engine alone" "shaft half" "flange" "burr" "stuck nut" "soft foot"]: no such act`)
	do := func(a Act) {
		t.Helper()
		if _, err := w.Do(a); err != nil {
			t.Fatal(err)
		}
	}
	do(seated)
	refused(Act{Read: &Place{out}}, ErrNoReach.Error())
	do(Act{Fasten: &Fasten{}})
	refused(Act{Fasten: &Fasten{}}, ErrTight.Error())
	refused(Act{Clean: &Place{w.ClockDeg()[0]}}, ErrNoGauging.Error())
	do(Act{HandOver: &HandOver{EngineAlone}})
	refused(seated, ErrEnded.Error())
}
