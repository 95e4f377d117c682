package learners

// This file holds that results are kept whole, also beside lines that are not.

import (
	"bytes"
	"encoding/csv"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"time"

	"aligner/kinematics/practice"
)

func result(learner string) Result {
	return Result{Format: Format, Learner: learner, Ended: time.Date(2026, 5, 14, 9, 30, 0, 0, time.UTC),
		Task: practice.Task{Grade: practice.Burr, Number: 3},
		Acts: []practice.Act{{Read: &practice.Place{ClockDeg: 30}}, {Turn: &practice.Turn{NutFlats: map[string]int{"fore port": -2}}}, {HandOver: &practice.HandOver{Cause: practice.ABurr}}},
		Debrief: practice.Debrief{Passed: true, LeftThou: 1.25, FoundThou: 20, Cause: practice.ABurr, CauseFound: true,
			Yours: practice.Tally{Minutes: 70.5, Steps: 2, Rounds: 1, Readings: 24}, Tools: practice.Tally{Minutes: 60, Steps: 3, Rounds: 1, Readings: 20},
			Mistakes: []practice.Mistake{{Kind: practice.NotTurned, Act: 1, Thou: 4}, {Kind: practice.Twisted, MM: 0.5}}}}
}

func TestWhatIsKeptIsReadAgain(t *testing.T) {
	f := Beside(filepath.Join(t.TempDir(), "new", "logbook"))
	if all, damaged, err := f.All(); all != nil || damaged != nil || err != nil {
		t.Errorf("of no file: %v %v %v", all, damaged, err)
	}
	want := []Result{result("Ann"), result("ben")}
	for _, r := range want {
		if err := f.Add(r); err != nil {
			t.Fatal(err)
		}
	}
	all, damaged, err := f.All()
	if err != nil || damaged != nil || !reflect.DeepEqual(all, want) {
		t.Errorf("read %+v, %v, %v", all, damaged, err)
	}
	if own := Of(all, "BEN"); len(own) != 1 || own[0].Learner != "ben" {
		t.Errorf("ben's: %+v", own)
	}
}

// A line cut off spoils neither those before it nor those after.
func TestALineCutOff(t *testing.T) {
	f := File{filepath.Join(t.TempDir(), Name)}
	if err := f.Add(result("Ann")); err != nil {
		t.Fatal(err)
	}
	whole, err := os.ReadFile(f.Path)
	if err != nil {
		t.Fatal(err)
	}
	for _, cut := range []int{1, 20, len(whole) - 1} {
		if err := os.WriteFile(f.Path, append(bytes.Clone(whole), whole[:cut]...), 0o600); err != nil {
			t.Fatal(err)
		}
		if err := f.Add(result("Ben")); err != nil {
			t.Fatal(err)
		}
		all, damaged, err := f.All()
		names := []string{}
		for _, r := range all {
			names = append(names, r.Learner)
		}
		// All but the line's end is there in the last case.
		want, bad := "Ann Ben", 1
		if cut == len(whole)-1 {
			want, bad = "Ann Ann Ben", 0
		}
		if err != nil || strings.Join(names, " ") != want || len(damaged) != bad {
			t.Errorf("cut at %d: %v, damaged %v, %v", cut, names, damaged, err)
		}
	}
	if err := os.WriteFile(f.Path, []byte("{\"format\":\"practice/9\"}\n[]\n\n{\"format\":\"practice/1\",\"learner\":\"Ann\",\"task\":{\"grade\":\"luck\",\"number\":1}}\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	if all, damaged, err := f.All(); all != nil || !reflect.DeepEqual(damaged, []int{1, 2, 4}) || err != nil {
		t.Errorf("%v, damaged %v, %v", all, damaged, err)
	}
}

func TestNames(t *testing.T) {
	for _, name := range []string{"", "  ", "a\nb", strings.Repeat("x", mostName+1)} {
		r := result(name)
		if err := (File{filepath.Join(t.TempDir(), Name)}).Add(r); err == nil {
			t.Errorf("kept for %q", name)
		}
	}
}

func TestRows(t *testing.T) {
	var out bytes.Buffer
	if err := WriteRows(&out, []Result{result("Ann"), result("=1+1, \"x\"")}); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&out).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"Ann", "2026-05-14T09:30:00Z", "burr", "3", "true", "burr", "true", "20.00", "1.25", "70.5", "2", "1", "24", "60.0", "3", "1", "20", "moved before turning; twisted the engine"}
	if !reflect.DeepEqual(rows[1], want) || rows[2][0] != "'=1+1, \"x\"" {
		t.Errorf("%q", rows)
	}
}

func TestWorkGoesOn(t *testing.T) {
	f := File{filepath.Join(t.TempDir(), Name)}
	if u, w := f.GoOn(); u != nil || w != nil {
		t.Error("went on with nothing")
	}
	u := Unfinished{"Ann", practice.Task{Grade: practice.TiltOnly, Number: 1}, []practice.Act{{Gauge: &practice.Gauge{Held: "seated"}}, {Read: &practice.Place{ClockDeg: 90}}}}
	if err := f.Keep(u); err != nil {
		t.Fatal(err)
	}
	again, w := f.GoOn()
	if again == nil || !reflect.DeepEqual(*again, u) || !w.Gauging() || len(w.Acts) != 2 {
		t.Errorf("went on with %+v", again)
	}
	if err := f.Done(); err != nil {
		t.Fatal(err)
	}
	if u, _ := f.GoOn(); u != nil || f.Done() != nil {
		t.Error("went on with what was done")
	}
	if err := os.WriteFile(f.unfinished(), []byte(`{"task":{"grade":"burr","number":99}}`), 0o600); err != nil {
		t.Fatal(err)
	}
	if u, _ := f.GoOn(); u != nil {
		t.Error("went on with a task that is not")
	}
}
