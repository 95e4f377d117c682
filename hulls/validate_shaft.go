package hulls

// This file judges the coupling, the shaft and its bearings.

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"aligner/hulls/strictjson"
)

// ReservedBearingName is what results call the log; no bearing may have it.
const ReservedBearingName = "log"

// mostBearings bounds the bearings of one shaft.
const mostBearings = 8

// densestKgM3 is above every metal a coupling is made of (nickel-copper 8800),
// with room for rounding.
const densestKgM3 = 9500

// boltGrades whose proof strength is known: SAE J429, ISO 898-1, ISO 3506-1.
var boltGrades = []string{
	"SAE J429 grade 2", "SAE J429 grade 5", "SAE J429 grade 8",
	"ISO 898-1 8.8", "ISO 898-1 10.9", "ISO 3506-1 A2-70", "ISO 3506-1 A4-70",
}

// BoltGrades are those whose tightening can be worked out.
func BoltGrades() []string { return slices.Clone(boltGrades) }

func (c *checker) coupling() {
	k := c.h.Coupling
	sound := c.within("coupling.outer_diameter_mm", k.OuterDiameterMM, window{30, 1000, 80, 300, "mm"})
	sound = c.within("coupling.shaft_half_length_mm", k.ShaftHalfLengthMM, window{5, 600, 25, 200, "mm"}) && sound
	sound = c.within("coupling.shaft_half_mass_kg", k.ShaftHalfMassKg, window{0.05, 500, 0.5, 60, "kg"}) && sound
	c.bound("coupling.pilot_diameter_mm", window{0, 1000, 0, 1000, "mm"})
	switch p := k.PilotDiameterMM; {
	case c.note("coupling.pilot_diameter_mm", window{0, k.OuterDiameterMM, 0.25 * k.OuterDiameterMM, 0.85 * k.OuterDiameterMM, "mm"}):
	case !(p >= 0):
		c.refuse("coupling.pilot_diameter_mm", with(p, "mm"), "0 (no pilot) or more", "measure the pilot again")
	case p >= k.OuterDiameterMM:
		c.refuse("coupling.pilot_diameter_mm", with(p, "mm"), fmt.Sprintf("less than the face, %s", with(k.OuterDiameterMM, "mm")), "check which diameter is which")
	case p > 0 && (p < 0.25*k.OuterDiameterMM || p > 0.85*k.OuterDiameterMM):
		c.doubt("coupling.pilot_diameter_mm", with(p, "mm"), "a quarter to 0.85 of the face as a rule", "measure again; keep it if it is so")
	}
	if sound {
		// No coupling half is heavier than a solid drum of its size.
		drumKg := densestKgM3 * 1e-9 * math.Pi / 4 * k.OuterDiameterMM * k.OuterDiameterMM * k.ShaftHalfLengthMM
		switch {
		case k.ShaftHalfMassKg > drumKg:
			c.refuse("coupling.shaft_half_mass_kg", with(k.ShaftHalfMassKg, "kg"), fmt.Sprintf("at most %.3g kg, a solid drum of that diameter and length", drumKg), "weigh it, or check the unit")
		case k.ShaftHalfMassKg < 0.15*drumKg:
			c.doubt("coupling.shaft_half_mass_kg", with(k.ShaftHalfMassKg, "kg"), fmt.Sprintf("%.3g kg or more in metal", 0.15*drumKg), "weigh it, or check the unit")
		}
	}
	c.bolts()
	if k.Soft != (SoftCoupling{}) {
		c.within("coupling.soft.thickness_mm", k.Soft.ThicknessMM, window{1, 300, 5, 120, "mm"})
		c.within("coupling.soft.in_place_mm", k.Soft.InPlaceMM, window{0, 5, 0, 1, "mm"})
		// From a bellows to a disc hardly softer than metal; own judgement.
		if v := k.Soft.BendingStiffnessNMPerDeg; v != 0 {
			c.within("coupling.soft.bending_stiffness_nm_per_deg", v, window{0.01, 1e6, 0.5, 5000, "N m per degree"})
		}
	}
}

func (c *checker) bolts() {
	b := c.h.Coupling.Bolts
	c.bound("coupling.bolts.count", window{2, 24, 3, 12, ""})
	if b.Count < 2 || b.Count > 24 {
		c.refuse("coupling.bolts.count", fmt.Sprint(b.Count), "2 to 24", "count the bolts")
	} else if b.Count < 3 || b.Count > 12 {
		c.doubt("coupling.bolts.count", fmt.Sprint(b.Count), "3 to 12 as a rule", "count the bolts")
	}
	t, err := ThreadOf(b.Thread)
	if err != nil {
		c.refuse("coupling.bolts.thread", strictjson.Quoted(b.Thread), err.Error(), "read the thread with a pitch gauge")
	} else if t.MajorMM > 0.2*c.h.Coupling.OuterDiameterMM {
		c.doubt("coupling.bolts.thread", t.Designation, "a fifth of the face's diameter at most, as a rule", "measure the bolts")
	}
	if !printableText(b.Grade) {
		c.refuse("coupling.bolts.grade", strictjson.Quoted(b.Grade), "a grade that can be printed", "take the control characters out")
	} else if !slices.Contains(boltGrades, b.Grade) {
		c.doubt("coupling.bolts.grade", strictjson.Quoted(b.Grade), "one of "+strings.Join(boltGrades, ", "), "read the head mark; no tightening figure is given for an unknown grade")
	}
}

func (c *checker) shaft() {
	s := c.h.Shaft
	c.within("shaft.diameter_mm", s.DiameterMM, window{6, 400, 15, 120, "mm"})
	c.within("shaft.length_mm", s.LengthMM, window{100, 20000, 300, 10000, "mm"})
	if _, err := MaterialOf(s.Material, ""); err != nil || !strings.HasPrefix(s.Material, "UNS ") {
		c.refuse("shaft.material", strictjson.Quoted(s.Material), "one of "+strings.Join(MaterialNumbers(), ", "), "give the alloy by its UNS number; its density and stiffness follow")
	} else if _, err := MaterialOf(s.Material, s.Condition); err != nil {
		c.refuse("shaft.condition", strictjson.Quoted(s.Condition), `one of "`+strings.Join(Conditions(s.Material), `", "`)+`"`, "choose one of these, or leave the key out")
	}
	k := c.h.Coupling
	c.note("shaft.length_mm", window{2 * k.ShaftHalfLengthMM, 20000, 300, 10000, "mm"})
	switch {
	case c.note("shaft.diameter_mm", window{6, k.OuterDiameterMM, 15, 0.6 * k.OuterDiameterMM, "mm"}):
	case s.DiameterMM >= k.OuterDiameterMM:
		c.refuse("shaft.diameter_mm", with(s.DiameterMM, "mm"), fmt.Sprintf("less than the coupling, %s", with(k.OuterDiameterMM, "mm")), "check which diameter is which")
	case s.DiameterMM > 0.6*k.OuterDiameterMM:
		c.doubt("shaft.diameter_mm", with(s.DiameterMM, "mm"), "at most 0.6 of the coupling's diameter as a rule", "measure both again")
	}
	if s.LengthMM < 2*k.ShaftHalfLengthMM {
		c.refuse("shaft.length_mm", with(s.LengthMM, "mm"), fmt.Sprintf("at least twice the coupling half, %s", with(2*k.ShaftHalfLengthMM, "mm")), "measure from the face to the shaft's aft end")
	}
}

func (c *checker) bearings() {
	if n := len(c.h.Bearings); n < 1 || n > mostBearings {
		c.refuse("bearings", fmt.Sprintf("%d bearings", n), fmt.Sprintf("1 to %d", mostBearings), "give every bearing that carries the shaft")
		return
	}
	taken := map[string]string{}
	for i, b := range c.h.Bearings {
		place := fmt.Sprintf("bearings[%d]", i)
		if c.name(place+".name", b.Name) {
			if strings.EqualFold(b.Name, ReservedBearingName) {
				c.refuse(place+".name", strictjson.Quoted(b.Name), `a name other than "log", which results use for the log itself`, `rename it, say "log bearing"`)
			}
			c.distinct(place+".name", b.Name, taken)
		}
		if c.bearing(place, b) {
			c.bearingPlace(place, b)
		}
		for j, other := range c.h.Bearings[:i] {
			if math.Abs(b.AtMM-other.AtMM) < (b.LengthMM+other.LengthMM)/2 {
				c.refuse(place+".at_mm", with(b.AtMM, "mm"), fmt.Sprintf("clear of bearings[%d], which it overlaps", j), "measure the middle of both bearings from the face")
			}
		}
	}
}

func (c *checker) bearing(place string, b Bearing) bool {
	d := c.h.Shaft.DiameterMM
	sound := c.within(place+".length_mm", b.LengthMM, window{1, 3000, 0.8 * d, 8 * d, "mm"})
	sound = c.within(place+".at_mm", b.AtMM, window{-20000, 20000, -20000, 20000, "mm"}) && sound
	c.within(place+".radial_stiffness_n_per_mm", b.RadialStiffnessNPerMM, window{1, 1e7, 300, 2e5, "N/mm"})
	// Rubber bearings: 0.08 to 0.25 mm new by size; worn out at three times that.
	c.within(place+".diametral_clearance_mm", b.DiametralClearanceMM, window{0, 20, 0, 0.3 + 0.02*d, "mm"})
	c.offsets(place+".offset_mm", b.OffsetMM)
	return sound
}

// bearingPlace: the whole bearing has shaft in it, and none of the coupling.
func (c *checker) bearingPlace(place string, b Bearing) {
	fore, aft := b.AtMM+b.LengthMM/2, b.AtMM-b.LengthMM/2
	half, length := c.h.Coupling.ShaftHalfLengthMM, c.h.Shaft.LengthMM
	switch {
	case c.note(place+".at_mm", window{-length + b.LengthMM/2, -half - b.LengthMM/2, math.Inf(-1), math.Inf(1), "mm"}):
	case b.AtMM > 0:
		c.refuse(place+".at_mm", with(b.AtMM, "mm"), "aft of the coupling (below 0)", "x counts forward from the face: give it a minus sign")
	case fore > -half:
		c.refuse(place+".at_mm", fmt.Sprintf("%s, with its fore end at %s", with(b.AtMM, "mm"), with(fore, "mm")),
			fmt.Sprintf("its fore end aft of the coupling half, below %s", with(-half, "mm")), "measure the bearing's middle from the face")
	case aft < -length:
		c.refuse(place+".at_mm", fmt.Sprintf("%s, with its aft end at %s", with(b.AtMM, "mm"), with(aft, "mm")),
			fmt.Sprintf("its aft end on the shaft, which ends at %s", with(-length, "mm")), "check the bearing's place and the shaft's length")
	}
}
