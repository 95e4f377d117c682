package window

// This file does a whole job in the real program on a screen of its own, by keys
// alone: gauged, moved step by step, fastened, handed over. A mate does it in a
// window without a screen, where a boat answers; xdotool does the same keys
// again, and the logbook then holds the same visit.

import (
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
)

// alongside is a boat as drawn but for her fore pair, which stands too low.
func alongside(t *testing.T, hull string, lowMM float64) *mate {
	t.Helper()
	m := &mate{t: t, w: opened(t, hull), given: 0.93}
	h := &m.w.boat.hull
	var err error
	if m.line, err = kinematics.Prepare(*h); err != nil {
		t.Fatal(err)
	}
	m.state = kinematics.State{Held: kinematics.Seated, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	for i, mount := range h.Mounts {
		if strings.HasPrefix(mount.Name, "fore") {
			m.state.LiftMM[i] = -lowMM
		}
	}
	return m
}

func TestAWholeJobOnARealScreen(t *testing.T) {
	const hull = "Eider"
	m := alongside(t, hull, 1.8)
	m.gaugeRound()
	if e := m.w.mind.estimate; e.Verdict != gauge.Outside {
		t.Fatalf("begins %s", e.Verdict)
	}
	m.moveUntilWithin()
	m.fasten()
	m.handOver()
	m.did = slices.DeleteFunc(m.did, func(d deed) bool { return d.text == "" && d.keys == nil && !d.wait })
	twin := m.w.history.Now().Visit

	program := filepath.Join(t.TempDir(), "aligner")
	if out, err := exec.Command("go", "build", "-o", program, "aligner/cmd/aligner").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	s := virtual(t)
	run := s.command(program, hull)
	data := t.TempDir()
	run.Env = append(run.Env, "HOME="+t.TempDir(), "XDG_CONFIG_HOME="+t.TempDir(), "XDG_DATA_HOME="+data)
	s.start(run)
	s.waitTitle("start", func(title string) bool { return strings.Contains(title, hull+", spread") })
	time.Sleep(2 * time.Second) // the first picture, and the keyboard
	s.again(m.did)
	time.Sleep(3 * time.Second)
	run.Process.Kill() // everything shown is on the disk before it is shown
	run.Wait()

	kept := latest(t, filepath.Join(data, "aligner", logbook.FileName)).Visit
	if !kept.HandedOver.Done() {
		t.Errorf("not handed over: %+v", kept.HandedOver)
	}
	// The days differ; nothing else may.
	kept.HandedOver.Date, twin.HandedOver.Date, kept.Date, twin.Date = "", "", "", ""
	kept.HullName, twin.HullName, kept.Embedded, twin.Embedded = "", "", nil, nil
	if a, b := visit.Encode(kept), visit.Encode(twin); string(a) != string(b) {
		t.Errorf("the real program keeps\n%s\nand the one without a screen\n%s", a, b)
	}
}
