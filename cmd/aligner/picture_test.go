package main

// This file tests the verb picture.

import (
	"encoding/binary"
	"encoding/json"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"aligner/assets"
)

func TestPictureDrawsEveryBoat(t *testing.T) {
	for _, hull := range assets.HullNames() {
		file := filepath.Join(t.TempDir(), "boat.png")
		out, stderr, code := aligner("picture", hull, "-o", file, "--width", "320", "--height", "200", "--quick")
		if code != exitDone || !strings.Contains(out, "movement x") {
			t.Fatalf("%s: exit %d: %s%s", hull, code, out, stderr)
		}
		picture := decoded(t, file)
		seen := map[any]bool{}
		for y := range 200 {
			for x := range 320 {
				seen[picture.At(x, y)] = true
			}
		}
		if len(seen) < 500 {
			t.Errorf("%s: only %d colours: nothing is drawn", hull, len(seen))
		}
	}
}

// pictured is a picture of Eider with further flags.
func onPicture(t *testing.T, flags ...string) image.Image {
	t.Helper()
	file := filepath.Join(t.TempDir(), "boat.png")
	args := append([]string{"picture", "Eider", "-o", file, "--width", "300", "--height", "200", "--quick"}, flags...)
	if _, stderr, code := aligner(args...); code != exitDone {
		t.Fatalf("%q: exit %d: %s", flags, code, stderr)
	}
	return decoded(t, file)
}

func decoded(t *testing.T, file string) image.Image {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	picture, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return picture
}

// TestEveryFlagOfPictureIsSeen: none may be taken and then forgotten.
func TestEveryFlagOfPictureIsSeen(t *testing.T) {
	nut := []string{"--nut", "fore port=+2"}
	for _, c := range [][2][]string{
		{nil, nut},
		{nil, {"--slide", "fore port=+2mm"}},
		{nil, {"--held", "bolted"}},
		{nil, {"--afloat"}},
		{nil, {"--dark"}},
		{nil, {"--metric"}},
		{nut, append([]string{"--times", "20"}, nut...)},
		{nut, append([]string{"--as-gauged"}, nut...)},
		{append([]string{"--as-gauged"}, nut...), append([]string{"--gauged-nut", "fore port=+1"}, nut...)},
		{append([]string{"--as-gauged"}, nut...), append([]string{"--gauged-slide", "fore port=+1mm"}, nut...)},
		{nut, append([]string{"--plan-nut", "fore port=-4"}, nut...)},
		{nut, append([]string{"--plan-slide", "fore port=-3mm"}, nut...)},
		{{"--view", "faces"}, {"--view", "faces", "--looking", "aft"}},
		{{"--view", "faces"}, {"--view", "faces", "--dark"}},
		{{"--view", "faces"}, {"--view", "faces", "--metric"}},
		{{"--view", "faces"}, {"--view", "faces", "--as-gauged"}},
		{{"--view", "faces"}, {"--view", "faces", "--plan-nut", "aft port=2"}},
		{{"--view", "faces", "--held", "bolted"}, {"--view", "faces", "--held", "hanging"}},
	} {
		if reflect.DeepEqual(onPicture(t, c[0]...), onPicture(t, c[1]...)) {
			t.Errorf("%q and %q give the same picture", c[0], c[1])
		}
	}
	// Soft shadows are seen too.
	quick := onPicture(t)
	file := filepath.Join(t.TempDir(), "shaded.png")
	if _, stderr, code := aligner("picture", "Eider", "-o", file, "--width", "300", "--height", "200"); code != exitDone {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	if reflect.DeepEqual(quick, decoded(t, file)) {
		t.Error("with soft shadows and without is the same")
	}
	// What is planned is counted on from what stands now.
	there := onPicture(t, "--view", "faces", "--nut", "aft port=2", "--plan-nut", "aft port=-2", "--as-gauged")
	back := onPicture(t, "--view", "faces", "--nut", "aft port=2", "--plan-nut", "aft port=-2", "--gauged-nut", "aft port=0")
	if !reflect.DeepEqual(there, back) {
		t.Error("as drawn and with no flat turned are not the same")
	}
}

func TestEveryViewIsAPictureOfItsOwn(t *testing.T) {
	_, stderr, _ := aligner("picture", "Eider", "-o", filepath.Join(t.TempDir(), "x.png"), "--view", "the moon")
	_, list, _ := strings.Cut(stderr, "one of ")
	list, _, _ = strings.Cut(list, ";")
	names := strings.Split(list, ", ")
	if len(names) < 14 {
		t.Fatalf("only the views %q", names)
	}
	var seen []image.Image
	for _, name := range names {
		picture := onPicture(t, "--view", name)
		for i, other := range seen {
			if reflect.DeepEqual(picture, other) {
				t.Errorf("views %q and %q are the same", name, names[i])
			}
		}
		seen = append(seen, picture)
	}
	if !reflect.DeepEqual(onPicture(t, "--view", "mount fore port"), onPicture(t, "--view", "fore port")) {
		t.Error("a mount is not found with the word mount before its name")
	}
}

// TestPictureWritesAModel reads the JSON of a model: names a mechanic knows, and
// what is shown in the extras. Package gltf holds the rest of the format.
func TestPictureWritesAModel(t *testing.T) {
	file := filepath.Join(t.TempDir(), "boat.glb")
	out, stderr, code := aligner("picture", "Cormorant", "-o", file, "--times", "40", "--nut", "fore port=1", "--plan-nut", "fore port=-1", "--as-gauged", "--view", "coupling")
	if code != exitDone || !strings.Contains(out, "movement x 40") {
		t.Fatalf("exit %d: %s%s", code, out, stderr)
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var model struct {
		Asset struct{ Extras map[string]any }
		Nodes []struct{ Name string }
	}
	text := data[20 : 20+binary.LittleEndian.Uint32(data[12:])]
	if err := json.Unmarshal(text, &model); err != nil {
		t.Fatal(err)
	}
	if e := model.Asset.Extras; e["exaggeration"] != 40.0 || e["hull"] != "Cormorant" || e["afloat"] != false {
		t.Errorf("extras %v", e)
	}
	names := map[string]bool{}
	for _, n := range model.Nodes {
		names[n.Name] = true
		if strings.Contains(n.Name, "[") {
			t.Errorf("a node is called %q", n.Name)
		}
	}
	for _, want := range []string{"engine", "gearbox", "coupling, engine side", "coupling, shaft side", "mount fore port", "shims of fore port",
		"shaft", "shaft log", "propeller", "hull, cut open", "stands", "engine, as planned", "as gauged", "view: coupling"} {
		if !names[want] {
			t.Errorf("no node is called %q", want)
		}
	}
}

func TestPictureSaysWhatCannotBe(t *testing.T) {
	file := filepath.Join(t.TempDir(), "boat.png")
	for _, args := range [][]string{
		{"Eider", "-o", "boat.jpg"},
		{"Eider", "-o", file, "--width", "9"},
		{"Eider", "-o", file, "--times", "0"},
		{"Eider", "-o", file, "--view", "the moon"},
		{"Eider", "-o", file + ".glb", "--view", "faces"},
		{"Eider", "-o", file + ".glb", "--view", "the moon"},
		{"Eider", "-o", file, "--plan-nut", "nowhere=1"},
		{"Eider", "-o", file, "--gauged-slide", "fore port=far"},
		{"Eider", "-o", filepath.Join(file, "no", "such.png")},
		{"Nosuch", "-o", file},
	} {
		_, stderr, code := aligner(append([]string{"picture"}, args...)...)
		if code != exitBadInput || strings.Count(stderr, "\n") != 1 {
			t.Errorf("%q: exit %d: %s", args, code, stderr)
		}
		for _, written := range []string{file, file + ".glb", file + ".glb.part"} {
			if _, err := os.Stat(written); err == nil {
				t.Errorf("%q: refused, yet a file was written", args)
			}
		}
	}
}

// visitOf is a visit on Kittiwake with leaf readings at 12, 3, 6 and 9 o'clock.
func visitOf(t *testing.T, boat, readings string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "one.visit.json")
	text := `{"format": "visit/1", "hull": "Kittiwake", "date": "2026-05-14", "state": {"boat": "` + boat + `"},
 "rule": {"limits": "largest gap", "limit_thou": 3, "named": "common practice, 3 thou"},
 "events": [{"gauging": {"held": "seated", "shaft_turn_deg": 0, "flange_turn_deg": 0, "readings": [` + readings + `]}}]}`
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return file
}

const openAtTheTop = `{"kind": "leaf", "clock_deg": 0, "goes_thou": 8, "stops_thou": 10},
 {"kind": "leaf", "clock_deg": 90, "goes_thou": 4, "stops_thou": 5},
 {"kind": "leaf", "clock_deg": 180, "stops_thou": 1.5},
 {"kind": "leaf", "clock_deg": 270, "goes_thou": 4, "stops_thou": 5}`

// TestPictureOfAVisit: the boat stands as its readings say, the plan is laid
// over it, and what moves the nuts counts on from there.
func TestPictureOfAVisit(t *testing.T) {
	picture := func(of string, flags ...string) (map[string]any, []string, string) {
		file := filepath.Join(t.TempDir(), "boat.glb")
		_, stderr, code := aligner(append([]string{"picture", of, "-o", file}, flags...)...)
		if code != exitDone {
			t.Fatalf("%s: exit %d: %s", of, code, stderr)
		}
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var m struct {
			Asset struct{ Extras map[string]any }
			Nodes []struct{ Name string }
		}
		if err := json.Unmarshal(data[20:20+binary.LittleEndian.Uint32(data[12:])], &m); err != nil {
			t.Fatal(err)
		}
		var names []string
		for _, n := range m.Nodes {
			names = append(names, n.Name)
		}
		return m.Asset.Extras, names, stderr
	}
	planned := func(names []string) bool { return slices.Contains(names, "engine, as planned") }

	extras, names, stderr := picture(visitOf(t, "trailer", openAtTheTop))
	if extras["hull"] != "Kittiwake" || extras["afloat"] != false || !planned(names) || stderr != "" {
		t.Errorf("extras %v, planned %v, said %q", extras, planned(names), stderr)
	}
	if extras, _, _ := picture(visitOf(t, "afloat", openAtTheTop)); extras["afloat"] != true {
		t.Errorf("afloat: extras %v", extras)
	}
	// Readings that tell nothing yet: drawn as if true, and said.
	if _, names, stderr := picture(visitOf(t, "trailer", "")); planned(names) || !strings.Contains(stderr, "do not tell yet") {
		t.Errorf("no readings: planned %v, said %q", planned(names), stderr)
	}
	// The faces show what the estimate tells.
	file := filepath.Join(t.TempDir(), "x.png")
	shown := func(args ...string) image.Image {
		if _, stderr, code := aligner(append([]string{"picture", "-o", file, "--view", "faces", "--width", "300", "--height", "200"}, args...)...); code != exitDone {
			t.Fatalf("%q: %s", args, stderr)
		}
		return decoded(t, file)
	}
	of := visitOf(t, "trailer", openAtTheTop)
	if reflect.DeepEqual(shown(of), shown("Kittiwake")) || reflect.DeepEqual(shown(of), shown(of, "--nut", "fore port=2")) {
		t.Error("the faces of the visit are those of the boat as drawn, or do not mind a nut")
	}
}
