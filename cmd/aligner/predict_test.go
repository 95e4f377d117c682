package main

// This file tests the verb predict as a program would use it.

import (
	"bytes"
	"encoding/json"
	"math"
	"strings"
	"testing"

	"aligner/assets"
)

// aligner runs one command line.
func aligner(args ...string) (stdout, stderr string, code int) {
	var out, err bytes.Buffer
	code = run(args, &out, &err)
	return out.String(), err.String(), code
}

// predictJSON runs predict --json and reads the object.
func predictJSON(t *testing.T, args ...string) map[string]any {
	t.Helper()
	out, stderr, code := aligner(append([]string{"predict", "--json"}, args...)...)
	if code != exitDone {
		t.Fatalf("%v: exit %d: %s", args, code, stderr)
	}
	var m map[string]any
	if err := json.Unmarshal([]byte(out), &m); err != nil {
		t.Fatalf("%v: %v", args, err)
	}
	return m
}

func TestPredictHasTheKeysProgramsRelyOn(t *testing.T) {
	keys := []string{"gap_at_clock_mm", "cos_mm", "sin_mm", "spread_mm", "opens_at_deg", "engine_translation_mm",
		"engine_rotation_rad", "mount_load_n", "bearing_force_n", "coupling_moment_nmm", "front_end_mm"}
	for _, hull := range assets.HullNames() {
		for _, held := range []string{"hanging", "centred", "seated", "bolted"} {
			m := predictJSON(t, hull, "--held", held, "--nut", firstMount(t, hull)+"=+1")
			for _, key := range keys {
				if _, ok := m[key]; !ok {
					t.Errorf("%s %s: no key %s", hull, held, key)
				}
			}
			if gap := m["gap_at_clock_mm"]; (gap == nil) != (held == "hanging") {
				t.Errorf("%s %s: gap is %v", hull, held, gap)
			}
			if held == "bolted" && (m["spread_mm"] != 0.0 || m["coupling_moment_nmm"] == 0.0) {
				t.Errorf("%s bolted: spread %v, moment %v", hull, m["spread_mm"], m["coupling_moment_nmm"])
			}
		}
	}
}

func firstMount(t *testing.T, hull string) string {
	t.Helper()
	h, _, err := openHull(hull)
	if err != nil {
		t.Fatal(err)
	}
	return h.Mounts[0].Name
}

// The twelve gaps are the cosine the other keys say, least nil when touching.
func TestPredictedGapsAreOneCosine(t *testing.T) {
	m := predictJSON(t, "Eider", "--nut", "fore port=+3", "--slide", "aft port=-2mm")
	gaps := m["gap_at_clock_mm"].([]any)
	if len(gaps) != 12 {
		t.Fatalf("%d gaps", len(gaps))
	}
	a, b, spread := m["cos_mm"].(float64), m["sin_mm"].(float64), m["spread_mm"].(float64)
	for hour, g := range gaps {
		s, c := math.Sincos(float64(hour) * math.Pi / 6)
		if want := spread/2 + a*c + b*s; math.Abs(g.(float64)-want) > 1e-12 {
			t.Errorf("%d o'clock: %v, want %v", hour, g, want)
		}
	}
	if opens := m["opens_at_deg"].(float64); math.Abs(math.Mod(math.Atan2(b, a)*180/math.Pi+360, 360)-opens) > 1e-9 {
		t.Errorf("opens at %v, cos %v sin %v", opens, a, b)
	}
}

// Repeated flags add up, names may hold commas and "=" is split at the last.
func TestMovesAddUpAndSplitAtTheLastEqualSign(t *testing.T) {
	once := predictJSON(t, "Bench", "--nut", "fore port=3")
	twice := predictJSON(t, "Bench", "--nut", "fore port=+1", "--nut", "fore port=2.0")
	if once["cos_mm"] != twice["cos_mm"] {
		t.Errorf("3 flats give %v, 1 and 2 give %v", once["cos_mm"], twice["cos_mm"])
	}
	_, stderr, code := aligner("predict", "Bench", "--nut", "fore=port,x=+1")
	if code != exitBadInput || !strings.Contains(stderr, `"fore=port,x"`) {
		t.Errorf("exit %d: %s", code, stderr)
	}
}

func TestPredictSaysWhatIsWrongInOneLine(t *testing.T) {
	for _, c := range []struct {
		args []string
		code int
		say  string
	}{
		{[]string{"predict"}, exitBadInput, "expected"},
		{[]string{"predict", "Nosuch"}, exitBadInput, "Eider"},
		{[]string{"predict", "Eider", "--nut", "fore port"}, exitBadInput, "--nut 'fore port=+2'"},
		{[]string{"predict", "Eider", "--nut", "fore port=two"}, exitBadInput, `"two"`},
		{[]string{"predict", "Eider", "--nut", "fore port=NaN"}, exitBadInput, `"NaN"`},
		{[]string{"predict", "Eider", "--nut", "fore port=1e9"}, exitBadInput, "100 mm"},
		{[]string{"predict", "Eider", "--slide", "fore port=2cm"}, exitBadInput, `"2cm"`},
		{[]string{"predict", "Eider", "--held", "snug"}, exitBadInput, "held"},
		{[]string{"predict", "Eider", "--thrust", "x"}, exitBadInput, "thrust"},
		{[]string{"predict", "Eider", "--apart=-1"}, exitBadInput, "must not be negative"},
		{[]string{"predict", "Eider", "--lever", "--slide", "fore port=3mm", "--slide", "fore starboard=-3mm"}, exitBadInput, "rigid"},
	} {
		out, stderr, code := aligner(c.args...)
		if code != c.code || !strings.Contains(stderr, c.say) || strings.Count(stderr, "\n") != 1 || out != "" {
			t.Errorf("%q: exit %d, want %d with %q in one line\nstdout: %s\nstderr: %s", c.args, code, c.code, c.say, out, stderr)
		}
	}
}

// Beyond a mount's range the answer comes with a warning.
func TestBeyondTheRangeIsWarnedOf(t *testing.T) {
	_, stderr, code := aligner("predict", "Bench", "--nut", "fore port=30")
	if code != exitDone || !strings.Contains(stderr, "beyond the mount's range") {
		t.Errorf("exit %d: %s", code, stderr)
	}
}

func TestPredictForPeople(t *testing.T) {
	out, _, _ := aligner("predict", "Eider", "--nut", "fore port=+2")
	for _, want := range []string{"fore port up 2 flats", "tips the top shut by", "together closes it by", "PORT", "STBD", "seen looking forward", "thou"} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
	out, _, _ = aligner("predict", "Avocet", "--nut", "fore port=+2", "--nut", "fore starboard=+2", "--metric")
	for _, want := range []string{"but lifts the coupling, which opens it by", " mm", " N"} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
}
