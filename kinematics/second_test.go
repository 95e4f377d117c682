package kinematics

// This file compares answers with a second working of the same drive lines,
// written apart in another language on dense matrices and Lagrange
// multipliers: testdata/second/second.py, which says how to run it again.

import (
	"encoding/json"
	"fmt"
	"os"
	"testing"

	"aligner/hulls"
)

type secondCase struct {
	Hull      json.RawMessage `json:"hull"`
	Held      Held            `json:"held"`
	Afloat    bool            `json:"afloat"`
	Flats     []float64       `json:"flats"`
	SlideMM   []float64       `json:"slide_mm"`
	ThrustN   float64         `json:"thrust_n"`
	TorqueNMM float64         `json:"torque_nmm"`
	Answer    struct {
		CosMM               float64               `json:"cos_mm"`
		SinMM               float64               `json:"sin_mm"`
		FrontEndMM          [2]float64            `json:"front_end_mm"`
		EngineTranslationMM [3]float64            `json:"engine_translation_mm"`
		MountLoadN          []float64             `json:"mount_load_n"`
		BearingForceN       map[string][2]float64 `json:"bearing_force_n"`
		CouplingMomentNMM   float64               `json:"coupling_moment_nmm"`
	} `json:"answer"`
}

func TestAgainstASecondWorking(t *testing.T) {
	data, err := os.ReadFile("testdata/second/results.json")
	if err != nil {
		t.Fatal(err)
	}
	var cases []secondCase
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(err)
	}
	if len(cases) < 40 {
		t.Fatalf("only %d cases", len(cases))
	}
	for i, c := range cases {
		h, err := hulls.Parse(c.Hull, "second working")
		if err != nil {
			t.Fatal(err)
		}
		t.Run(fmt.Sprint(i, h.Name, c.Held, c.Afloat), func(t *testing.T) { compareSecond(t, h, c) })
	}
}

func compareSecond(t *testing.T, h hulls.Hull, c secondCase) {
	const stations = 65 // as the second working has
	d, err := prepareWith(h, [2]int{stations, stations})
	if err != nil {
		t.Fatal(err)
	}
	s := State{Held: c.Held, Afloat: c.Afloat, SlideMM: c.SlideMM, ThrustN: c.ThrustN, TorqueNMM: c.TorqueNMM}
	for i, flats := range c.Flats {
		s.LiftMM = append(s.LiftMM, flats*h.Mounts[i].LiftPerStepMM())
	}
	r, want := solve(t, d, s), c.Answer
	if r.Gap.Known && c.Held != Bolted {
		within(t, "cos", r.Gap.CosMM, want.CosMM, 1e-8)
		within(t, "sin", r.Gap.SinMM, want.SinMM, 1e-8)
	}
	for i := range want.FrontEndMM {
		within(t, "front end", r.FrontEndMM[i], want.FrontEndMM[i], 1e-7)
	}
	for i := range want.EngineTranslationMM {
		within(t, "travel", r.TranslationMM[i], want.EngineTranslationMM[i], 1e-8)
	}
	for i := range want.MountLoadN {
		within(t, "load", r.MountLoadN[i], want.MountLoadN[i], 1e-5)
	}
	for i, b := range h.Bearings {
		for j := range 2 {
			within(t, b.Name, r.BearingForceN[i][j], want.BearingForceN[b.Name][j], 1e-3)
		}
	}
	within(t, "moment", r.CouplingMomentNMM, want.CouplingMomentNMM, 1e-2)
}
