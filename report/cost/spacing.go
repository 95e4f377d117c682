package cost

// This file holds the bearings' spacing against the rule of thumb and against the
// small-craft formula, and tells both.

import (
	"math"

	"aligner/hulls"
)

// A clear span of 20 to 40 shaft diameters is the rule of thumb (Gerr, Propeller
// Handbook, 2001, p. 93, as cited by others; not read itself).
const leastDiameters, mostDiameters = 20, 40

// Exact by definition of the inch and the pound-force, as NIST SP 811 has them.
const (
	inMM      = 25.4
	psiPerGPa = 1e3 / 0.006894757293168361
	lbPerIn3  = 27.679904710203122 // in g/cm3
)

// formulaMM is the longest span of the small-craft formula for bearing spacing,
//
//	L = sqrt(3.21 D / N) (E/rho)^(1/4)    L in ft, D in in, N in rpm, psi, lb/in3
//
// (Gerr, Propeller Handbook; ABYC P-6 has a section on it): the span whose first
// whirling speed is the shaft's, without a margin.
func formulaMM(diameterMM, rpm float64, m *hulls.Material) float64 {
	e, rho := m.YoungGPa*psiPerGPa, m.DensityGPerCM3/lbPerIn3
	return 12 * inMM * math.Sqrt(3.21*diameterMM/inMM/rpm) * math.Pow(e/rho, 0.25)
}

// spacing is the longest span, or the shortest where that breaks the rule and the
// longest does not. A span outside the rule is Little, never more: what comes of it is
// told as whirling and as load on bearings.
func (c *Costs) spacing(h *hulls.Hull, m hulls.Material) {
	spans := h.Spans()
	if len(spans) == 0 {
		return
	}
	long, short := spans[0], spans[0]
	for _, s := range spans {
		if s.ClearMM > long.ClearMM {
			long = s
		}
		if s.ClearMM < short.ClearMM {
			short = s
		}
	}
	i := Item{Part: Spacing, Grade: Nothing, Sure: LowConfidence, SpeedRPM: h.ShaftSpeedMaxRPM}
	if i.SpeedRPM > 0 {
		i.FormulaMM = formulaMM(h.Shaft.DiameterMM, i.SpeedRPM, &m)
	}
	shown, d := long, h.Shaft.DiameterMM
	switch {
	case long.ClearMM > mostDiameters*d, i.SpeedRPM > 0 && long.ClearMM > i.FormulaMM:
		i.Grade = Little
	case short.ClearMM < leastDiameters*d:
		i.Grade, shown = Little, short
	}
	i.Bearing, i.To, i.SpanMM, i.SpanDiameters = shown.From, shown.To, shown.ClearMM, shown.ClearMM/d
	c.Items = append(c.Items, i)
}
