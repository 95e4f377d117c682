package hulls

// This file judges log, stuffing box and propeller.

import (
	"fmt"
	"math"

	"aligner/hulls/strictjson"
)

func (c *checker) log() {
	l, d := c.h.Log, c.h.Shaft.DiameterMM
	sound := c.within("log.length_mm", l.LengthMM, window{1, 6000, 50, 3000, "mm"})
	sound = c.within("log.at_mm", l.AtMM, window{-20000, 20000, -20000, 20000, "mm"}) && sound
	c.offsets("log.offset_mm", l.OffsetMM)
	bore := window{d, 1000, 1.05 * d, 3 * d, "mm"}
	c.bound("log.bore_mm", window{0, bore.most, 0, bore.most, "mm"})
	c.note("log.bore_mm", bore)
	switch {
	case !(l.BoreMM > bore.least):
		c.refuse("log.bore_mm", with(l.BoreMM, "mm"), fmt.Sprintf("more than the shaft, %s", with(d, "mm")), "check which diameter is which")
	case l.BoreMM > bore.most:
		c.refuse("log.bore_mm", with(l.BoreMM, "mm"), "at most 1000 mm", "correct the number or its unit")
	case l.BoreMM > bore.high || l.BoreMM < bore.low:
		c.doubt("log.bore_mm", with(l.BoreMM, "mm"), "1.05 to 3 shaft diameters as a rule", "measure again; keep it if it is so")
	default:
		if off := math.Hypot(l.OffsetMM[0], l.OffsetMM[1]); off > (l.BoreMM-d)/2 {
			c.doubt("log.offset_mm", fmt.Sprintf("a log %.3g mm off the shaft line", off),
				fmt.Sprintf("less than the clearance round the shaft, %.3g mm", (l.BoreMM-d)/2), "the shaft touches its log when true: measure again")
		}
	}
	if !sound {
		return
	}
	fore, aft := l.AtMM+l.LengthMM/2, l.AtMM-l.LengthMM/2
	half, length := c.h.Coupling.ShaftHalfLengthMM, c.h.Shaft.LengthMM
	switch {
	case c.note("log.at_mm", window{-length + l.LengthMM/2, -half - l.LengthMM/2, math.Inf(-1), math.Inf(1), "mm"}):
	case fore > -half:
		c.refuse("log.at_mm", fmt.Sprintf("%s, with its fore lip at %s", with(l.AtMM, "mm"), with(fore, "mm")),
			fmt.Sprintf("its fore lip aft of the coupling half, below %s", with(-half, "mm")), "x counts forward from the face to the log's middle")
	case aft < -length:
		c.refuse("log.at_mm", fmt.Sprintf("%s, with its aft lip at %s", with(l.AtMM, "mm"), with(aft, "mm")),
			fmt.Sprintf("the shaft to reach through it; it ends at %s", with(-length, "mm")), "check the log's place and the shaft's length")
	}
}

func (c *checker) stuffingBox() {
	b := c.h.StuffingBox
	if b == nil {
		return
	}
	c.within("stuffing_box.mass_kg", b.MassKg, window{0, 200, 0, 25, "kg"})
	c.within("stuffing_box.radial_stiffness_n_per_mm", b.RadialStiffnessNPerMM, window{0, 1e6, 0, 1000, "N/mm"})
	c.offsets("stuffing_box.offset_mm", b.OffsetMM)
	c.bound("stuffing_box.at_mm", window{-20000, 20000, -20000, 20000, "mm"})
	l := c.h.Log
	lip := l.AtMM + l.LengthMM/2
	switch half, length := c.h.Coupling.ShaftHalfLengthMM, c.h.Shaft.LengthMM; {
	case c.note("stuffing_box.at_mm", window{-length, -half, lip - 300, lip + 300, "mm"}):
	case !(b.AtMM <= -half && b.AtMM >= -length):
		c.refuse("stuffing_box.at_mm", with(b.AtMM, "mm"), fmt.Sprintf("on the shaft, %s to %s", strictjson.Plain(-length), with(-half, "mm")), "x counts forward from the face")
	case math.Abs(b.AtMM-lip) > 300:
		c.doubt("stuffing_box.at_mm", with(b.AtMM, "mm"), fmt.Sprintf("within 300 mm of the log's fore lip, %s", with(lip, "mm")), "measure both from the face")
	}
}

func (c *checker) propeller() {
	p, d := c.h.Propeller, c.h.Shaft.DiameterMM
	c.within("propeller.density_kg_m3", p.DensityKgM3, window{2500, 9500, 2600, 9000, "kg/m3"})
	massFine := c.within("propeller.mass_kg", p.MassKg, window{0.1, 2000, 0.5, 500, "kg"})
	if c.within("propeller.diameter_mm", p.DiameterMM, window{50, 4000, 150, 2000, "mm"}) && massFine {
		switch {
		case p.DiameterMM <= d:
			c.refuse("propeller.diameter_mm", with(p.DiameterMM, "mm"), fmt.Sprintf("more than the shaft, %s", with(d, "mm")), "check which diameter is which")
		case p.DiameterMM < 6*d || p.DiameterMM > 30*d:
			c.doubt("propeller.diameter_mm", with(p.DiameterMM, "mm"), "6 to 30 shaft diameters as a rule (14 is common)", "measure again; keep it if it is so")
		}
		// A bronze propeller weighs 60 to 250 kg per cubic metre of diameter
		// cubed (common practice, no source); the rest is room for aluminium.
		if r := p.MassKg / math.Pow(p.DiameterMM/1000, 3); r < 25 || r > 400 {
			c.doubt("propeller.mass_kg", with(p.MassKg, "kg"), fmt.Sprintf("%.2g to %.2g kg at that diameter as a rule",
				25*p.MassKg/r, 400*p.MassKg/r), "weigh it, or check the unit")
		}
	}
	aftEnd := 0.0
	c.bound("propeller.at_mm", window{-20000, 20000, -20000, 20000, "mm"})
	for _, b := range c.h.Bearings {
		aftEnd = math.Min(aftEnd, b.AtMM-b.LengthMM/2)
	}
	switch {
	case c.note("propeller.diameter_mm", window{d, 4000, 6 * d, 30 * d, "mm"}):
	case c.note("propeller.at_mm", window{-c.h.Shaft.LengthMM, aftEnd, aftEnd - 10*d, aftEnd, "mm"}):
	case !(p.AtMM >= -c.h.Shaft.LengthMM):
		c.refuse("propeller.at_mm", with(p.AtMM, "mm"), fmt.Sprintf("on the shaft, which ends at %s", with(-c.h.Shaft.LengthMM, "mm")), "check the propeller's place and the shaft's length")
	case !(p.AtMM < aftEnd):
		c.refuse("propeller.at_mm", with(p.AtMM, "mm"), fmt.Sprintf("aft of the aftmost bearing, below %s", with(aftEnd, "mm")), "x counts forward from the face to the propeller's middle")
	case aftEnd-p.AtMM > 10*d:
		c.doubt("propeller.at_mm", fmt.Sprintf("%.3g mm behind the aftmost bearing", aftEnd-p.AtMM), "at most 10 shaft diameters as a rule", "measure both from the face")
	}
}
