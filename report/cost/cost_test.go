package cost

// This file holds what is told to what was done to the boat.

import (
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/report/say"
)

func foreUp(h *hulls.Hull, flats float64) kinematics.State {
	s := kinematics.State{LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	for i, m := range h.Mounts {
		if strings.HasPrefix(m.Name, "fore") {
			s.LiftMM[i] = flats * m.LiftPerStepMM()
		}
	}
	return s
}

func costs(t *testing.T, h *hulls.Hull, s kinematics.State, fault kinematics.RunOut) *Costs {
	t.Helper()
	c, err := Of(h, s, fault)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// Lined up and true, nothing costs anything that comes of line-up, on any boat.
func TestLinedUpCostsNothing(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		for _, i := range costs(t, &h, kinematics.State{}, kinematics.RunOut{}).Items {
			if i.Part != Shaft && i.Part != Whirling && i.Grade != Nothing {
				t.Errorf("%s: %+v", name, i)
			}
			if i.Part == Shaft && i.Grade == Harms {
				t.Errorf("%s: its own weight harms it: %+v", name, i)
			}
		}
	}
}

// Further out costs more, never less; and 3 thou out frightens nobody.
func TestFurtherOutCostsMore(t *testing.T) {
	for _, name := range []string{"Kittiwake", "Eider", "Avocet"} {
		h := builtin.Hull(t, name)
		load := func(flats float64) (n, mpa float64) {
			for _, i := range costs(t, &h, foreUp(&h, flats), kinematics.RunOut{}).Items {
				if i.Part == Bearing {
					n += i.LoadN
				}
				if i.Part == Shaft {
					mpa = i.StressMPa
				}
			}
			return n, mpa
		}
		little, _ := load(1)
		much, mpa := load(12)
		if much < 3*little || mpa < 5 {
			t.Errorf("%s: %.1f N one flat out, %.1f N and %.0f MPa at twelve", name, little, much, mpa)
		}
		if c := costs(t, &h, foreUp(&h, 1), kinematics.RunOut{}); c.Worst() == Harms {
			t.Errorf("%s, one flat out: %+v", name, c.Items[0])
		}
	}
}

// A crooked half shakes; an engine out of line does not.
func TestWhoShakes(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	shakes := func(c *Costs) bool {
		for _, i := range c.Items {
			if i.Part == Shake && i.Grade != Nothing {
				return true
			}
		}
		return false
	}
	if shakes(costs(t, &h, foreUp(&h, 8), kinematics.RunOut{})) {
		t.Error("out of line, it shakes")
	}
	if !shakes(costs(t, &h, kinematics.State{}, kinematics.RunOut{ShaftMM: 0.4})) {
		t.Error("with a very crooked half, it does not")
	}
}

func TestEveryCostIsSaid(t *testing.T) {
	for _, language := range []string{"en", "de"} {
		s := words.In(language)
		for _, part := range []Part{Shaft, Bearing, Shake, Seal, Bolts, Whirling} {
			for _, g := range grades {
				for _, speed := range []float64{0, 1500} {
					i := Item{Part: part, Grade: g, Sure: LowConfidence, Bearing: "strut", SpeedRPM: speed}
					line := i.Text(s, say.Units{})
					if strings.Contains(line.Sentence+line.Number, "[") || strings.Contains(line.Sentence+line.Number, "<no value>") {
						t.Errorf("%s, %s: %+v", part, g, line)
					}
				}
			}
		}
	}
}

func TestThroughASoftCouplingNothingIsBolted(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 20
	if _, err := Of(&h, kinematics.State{}, kinematics.RunOut{}); err == nil {
		t.Error("worked out all the same")
	}
}
