package cost

// This file holds what is told to what was done to the boat.

import (
	"math"
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
			if i.Part != Shaft && i.Part != Whirling && i.Part != Spacing && i.Grade != Nothing {
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
		if len(met) != 10 {
			t.Errorf("%d parts", len(met))
		}
		for part, grades := range met {
			for _, g := range grades {
				for _, speed := range []float64{0, 1500} {
					i := Item{Part: part, Grade: g, Sure: LowConfidence, Bearing: "strut", Mount: "fore port", SpeedRPM: speed}
					line := i.Text(s, say.Units{})
					if strings.Contains(line.Sentence+line.Number, "[") || strings.Contains(line.Sentence+line.Number, "<no value>") {
						t.Errorf("%s, %s: %+v", part, g, line)
					}
				}
			}
		}
	}
}

// item is the one of a part; nil: none.
func (c *Costs) item(p Part) *Item {
	for i := range c.Items {
		if c.Items[i].Part == p {
			return &c.Items[i]
		}
	}
	return nil
}

// An engine put so high that the shaft's next bearing is lifted off says so, and lined
// up it is loaded downward as it should be.
func TestABearingThatCarriesNothing(t *testing.T) {
	h := builtin.Hull(t, "Eider")
	if c := costs(t, &h, kinematics.State{}, kinematics.RunOut{}).item(Carries); c == nil || c.Grade != Nothing || c.LoadN <= 0 {
		t.Errorf("lined up: %+v", c)
	}
	low := kinematics.State{LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
	worst := Nothing
	for _, mm := range []float64{-2, -4, 4} { // all mounts down or up: the fore or the aft bearing comes off
		for i := range low.LiftMM {
			low.LiftMM[i] = mm
		}
		c := costs(t, &h, low, kinematics.RunOut{}).item(Carries)
		if (c.LoadN < 0) != (c.Grade == Wears) && c.Grade != Little {
			t.Errorf("all mounts by %v mm: %+v", mm, c)
		}
		if c.Grade == Wears {
			worst = Wears
		}
	}
	if worst != Wears {
		t.Error("no bearing was ever pressed from below")
	}
}

// A twisted engine presses its mounts unevenly, though the faces hardly notice.
func TestMountsShareUnevenly(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	s := kinematics.State{LiftMM: make([]float64, 4), SlideMM: make([]float64, 4)}
	for i, m := range h.Mounts {
		by := 3.0
		if strings.HasPrefix(m.Name, "fore") != strings.HasSuffix(m.Name, "port") {
			by = -3
		}
		s.LiftMM[i] = by * m.LiftPerStepMM()
	}
	c := costs(t, &h, s, kinematics.RunOut{})
	i := c.item(Mounts)
	if i.Grade == Nothing || math.Abs(i.LoadN-i.CarriedN) < littleOfMount*i.CarriedN {
		t.Errorf("%+v", i)
	}
	if r := c.item(Rocking); r != nil {
		t.Errorf("it rocks: %+v", r)
	}
	if r := costs(t, &h, kinematics.State{}, kinematics.RunOut{ShaftMM: 0.6}).item(Rocking); r == nil || r.LoadN < rocksFrom*r.CarriedN {
		t.Errorf("with a very crooked half: %+v", r)
	}
}

// The formula's printed example: a naval brass shaft of 1 in at 2000 rpm, 16e6 psi and
// 0.304 lb/in3, 3 ft 5 in (40.948 in before rounding).
func TestSpacingFormula(t *testing.T) {
	m := hulls.Material{YoungGPa: 16e6 / psiPerGPa, DensityGPerCM3: 0.304 * lbPerIn3}
	if got := formulaMM(25.4, 2000, &m) / inMM; math.Abs(got-40.948) > 0.002 {
		t.Errorf("%.3f in", got)
	}
}

func TestSpacingBothRules(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	of := func() *Item { return costs(t, &h, kinematics.State{}, kinematics.RunOut{}).item(Spacing) }
	h.ShaftSpeedMaxRPM = 0
	d := of().SpanMM / 39 // 39 diameters: inside the rule of thumb
	h.Shaft.DiameterMM = d
	if i := of(); i.Grade != Nothing || i.FormulaMM != 0 {
		t.Errorf("39 diameters, no speed: %+v", i)
	}
	h.ShaftSpeedMaxRPM = 2500 // too fast for the formula
	if i := of(); i.Grade != Little || i.FormulaMM >= i.SpanMM {
		t.Errorf("39 diameters, fast: %+v", i)
	}
	h.ShaftSpeedMaxRPM = 300 // the formula allows more than the rule of thumb
	h.Shaft.DiameterMM = d * 39 / 42
	if i := of(); i.Grade != Little || i.FormulaMM < i.SpanMM {
		t.Errorf("42 diameters, slow: %+v", i)
	}
}

func TestThroughASoftCouplingNothingIsBolted(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 20
	if _, err := Of(&h, kinematics.State{}, kinematics.RunOut{}); err == nil {
		t.Error("worked out all the same")
	}
}
