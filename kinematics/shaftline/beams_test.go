package shaftline

// This file holds the beam against the closed forms of one span, cantilevers
// and overhangs.
//
// The formulas stand in Roark's Formulas for Stress and Strain (Young and
// Budynas, 8th ed., table 8.1) and in the AISC Manual (table 3-23, cases 18 to
// 20 and 24 to 26), both from memory. Read in part: Gere and Goodno, Mechanics
// of Materials, the overhang under a uniform load (slope at its near support).
// Every value at L = 1, a = 1/2 was worked out exactly with fractions, from
// the moment diagram and not from these formulas, so formula and value check
// each other before the model is held against either.

import (
	"fmt"
	"math"
	"testing"
)

// span is what a formula may depend on.
type span struct{ l, a, ei, load float64 }

// row is one quantity of one case.
type row struct {
	quantity string
	formula  func(s span) float64
	exact    float64 // at l = 1, a = 1/2, ei = 1, load = 1
	read     func(b *bentBeam, s span) float64
}

// beamCase is a beam under one load. load is in N, N/mm or N mm.
type beamCase struct {
	name   string
	load   float64
	beam   func(s span) handbookBeam
	oneWay bool // clamped: one way round only
	rows   []row
}

// Readers of the places the tables speak of.
func tipV(b *bentBeam, s span) float64          { return b.v(s.l + s.a) }
func tipSlope(b *bentBeam, s span) float64      { return b.slope(s.l + s.a) }
func leftSlope(b *bentBeam, _ span) float64     { return b.slope(0) }
func nearSlope(b *bentBeam, s span) float64     { return b.slope(s.l) }
func midV(b *bentBeam, s span) float64          { return b.v(s.l / 2) }
func leftReaction(b *bentBeam, _ span) float64  { return b.reaction(0) }
func rightReaction(b *bentBeam, _ span) float64 { return b.reaction(1) }

// A cantilever's length is a and its tip at u = a.
func cantileverV(b *bentBeam, s span) float64     { return b.v(s.a) }
func cantileverSlope(b *bentBeam, s span) float64 { return b.slope(s.a) }

func cantilever(s span) handbookBeam { return handbookBeam{lengthMM: s.a, clamped: true} }
func simpleSpan(s span) handbookBeam { return handbookBeam{lengthMM: s.l, supports: []float64{0, s.l}} }
func withOverhang(s span) handbookBeam {
	return handbookBeam{lengthMM: s.l + s.a, supports: []float64{0, s.l}}
}

// under hangs loads on a beam, making it longer where a couple needs its arm.
func under(beam func(span) handbookBeam, load func(h *handbookBeam, s span)) func(span) handbookBeam {
	return func(s span) handbookBeam {
		h := beam(s)
		load(&h, s)
		return h
	}
}

func tipLoad(h *handbookBeam, s span) { h.points = []beamPoint{{h.lengthMM, s.load}} }
func uniform(h *handbookBeam, s span) { h.loadNPerMM = s.load }
func tipMoment(h *handbookBeam, s span) {
	h.points = couple(h.lengthMM, s.load)
	h.lengthMM += coupleArmMM
}

var beamCases = []beamCase{
	{"cantilever, end load", beamLoad, under(cantilever, tipLoad), true, []row{
		{"tip", func(s span) float64 { return -s.load * cube(s.a) / (3 * s.ei) }, -1. / 24, cantileverV},
		{"tip slope", func(s span) float64 { return -s.load * s.a * s.a / (2 * s.ei) }, -1. / 8, cantileverSlope},
	}},
	{"cantilever, uniform load", beamLoad / 1000., under(cantilever, uniform), true, []row{
		{"tip", func(s span) float64 { return -s.load * cube(s.a) * s.a / (8 * s.ei) }, -1. / 128, cantileverV},
		{"tip slope", func(s span) float64 { return -s.load * cube(s.a) / (6 * s.ei) }, -1. / 48, cantileverSlope},
	}},
	{"cantilever, end moment", beamLoad * 1000, under(cantilever, tipMoment), true, []row{
		{"tip", func(s span) float64 { return s.load * s.a * s.a / (2 * s.ei) }, 1. / 8, cantileverV},
		{"tip slope", func(s span) float64 { return s.load * s.a / s.ei }, 1. / 2, cantileverSlope},
	}},
	{"simple span, uniform load", beamLoad / 1000., under(simpleSpan, uniform), false, []row{
		{"middle", func(s span) float64 { return -5 * s.load * cube(s.l) * s.l / (384 * s.ei) }, -5. / 384, midV},
		{"left slope", func(s span) float64 { return -s.load * cube(s.l) / (24 * s.ei) }, -1. / 24, leftSlope},
		{"right slope", func(s span) float64 { return s.load * cube(s.l) / (24 * s.ei) }, 1. / 24, nearSlope},
		{"moment in the middle", func(s span) float64 { return s.load * s.l * s.l / 8 }, 1. / 8,
			func(b *bentBeam, s span) float64 { return b.moment(s.l / 2) }},
	}},
	{"simple span, moment at the right end", beamLoad * 1000, under(simpleSpan, tipMoment), false, []row{
		{"left slope", func(s span) float64 { return -s.load * s.l / (6 * s.ei) }, -1. / 6, leftSlope},
		{"right slope", func(s span) float64 { return s.load * s.l / (3 * s.ei) }, 1. / 3, nearSlope},
	}},
	{"overhang, tip load", beamLoad, under(withOverhang, tipLoad), false, []row{
		{"tip", func(s span) float64 { return -s.load * s.a * s.a * (s.l + s.a) / (3 * s.ei) }, -1. / 8, tipV},
		{"left slope", func(s span) float64 { return s.load * s.a * s.l / (6 * s.ei) }, 1. / 12, leftSlope},
		{"near slope", func(s span) float64 { return -s.load * s.a * s.l / (3 * s.ei) }, -1. / 6, nearSlope},
		{"tip slope", func(s span) float64 { return -s.load * s.a * (2*s.l + 3*s.a) / (6 * s.ei) }, -7. / 24, tipSlope},
		{"left reaction", func(s span) float64 { return -s.load * s.a / s.l }, -1. / 2, leftReaction},
		{"right reaction", func(s span) float64 { return s.load * (s.l + s.a) / s.l }, 3. / 2, rightReaction},
		{"largest rise in the span, at l/sqrt 3", func(s span) float64 {
			return s.load * s.a * s.l * s.l / (9 * math.Sqrt(3) * s.ei)
		}, 0.5 / (9 * math.Sqrt(3)), func(b *bentBeam, s span) float64 { return b.v(s.l / math.Sqrt(3)) }},
		{"slope where the rise is largest", func(span) float64 { return 0 }, 0,
			func(b *bentBeam, s span) float64 { return b.slope(s.l / math.Sqrt(3)) }},
	}},
	{"overhang, uniform load", beamLoad / 1000., under(withOverhang, uniform), false, []row{
		{"tip", func(s span) float64 {
			return -s.load * s.a * (3*cube(s.a) + 4*s.a*s.a*s.l - cube(s.l)) / (24 * s.ei)
		}, -1. / 128, tipV},
		// Gere and Goodno print it as q L (4 a^2 - L^2) / 24 EI, clockwise.
		{"near slope", func(s span) float64 { return s.load * s.l * (s.l*s.l - 4*s.a*s.a) / (24 * s.ei) }, 0, nearSlope},
		{"left reaction", func(s span) float64 { return s.load * (s.l*s.l - s.a*s.a) / (2 * s.l) }, 3. / 8, leftReaction},
		{"right reaction", func(s span) float64 { return s.load * (s.l + s.a) * (s.l + s.a) / (2 * s.l) }, 9. / 8, rightReaction},
	}},
	{"overhang, moment at the tip", beamLoad * 1000, under(withOverhang, tipMoment), false, []row{
		{"tip", func(s span) float64 { return s.load * s.a * (2*s.l + 3*s.a) / (6 * s.ei) }, 7. / 24, tipV},
		{"tip slope", func(s span) float64 { return s.load * (s.l + 3*s.a) / (3 * s.ei) }, 5. / 6, tipSlope},
	}},
}

func cube(v float64) float64 { return v * v * v }

// TestClosedFormsAgreeWithFractions checks the formulas as typed.
func TestClosedFormsAgreeWithFractions(t *testing.T) {
	for _, c := range beamCases {
		for _, r := range c.rows {
			within(t, c.name+": "+r.quantity, r.formula(span{1, 0.5, 1, 1}), r.exact, 1e-15)
		}
	}
}

// beamTolerance is the allowed error of a row, as a share of its own value.
const beamTolerance = 1e-7

func TestSpansAndOverhangsAgainstClosedForms(t *testing.T) {
	for _, c := range beamCases {
		for _, overhang := range []float64{500, 250, 820} {
			s := span{l: 1000, a: overhang, ei: beamEI, load: c.load}
			ways := []facing{aft, forward}
			if c.oneWay {
				ways = ways[:1]
			}
			for _, way := range ways {
				b := c.beam(s).bend(t, way)
				for _, r := range c.rows {
					// A value may vanish at one overhang: measure against the same
					// row at twice the overhang as well.
					longer := s
					longer.a *= 2
					size := math.Max(math.Abs(r.formula(s)), math.Abs(r.formula(longer)))
					if size == 0 {
						size = c.load * s.l * s.l / s.ei // a slope
					}
					what := fmt.Sprintf("%s, a = %g, facing %+g: %s", c.name, overhang, way, r.quantity)
					within(t, what, r.read(b, s), r.formula(s), beamTolerance*size)
				}
			}
		}
	}
}

// TestPrescribedSlopeHoldsTheFormulasMoment turns a simple span's front end by
// hand and reads the moment and force it takes: M = 3 EI/L slope, with -M/6 of
// the turning at the far end, and M/L at either support.
func TestPrescribedSlopeHoldsTheFormulasMoment(t *testing.T) {
	const l, turn = 1000.0, 1e-3
	m := mustPrepare(t, Line{LengthMM: l, DiameterMM: 14, BendingStiffnessNMM2: beamEI, Springs: []Spring{knife(-l)}})
	moment := 3 * beamEI / l * turn
	for plane, q := range [][4]float64{{0, turn, 0, 0}, {0, 0, 0, turn}} {
		st := mustBend(t, m, Clamped{Q: q})
		force := m.FrontForce(st)
		near(t, "moment", force[2*plane+1], moment, beamTolerance)
		near(t, "force", force[2*plane], -moment/l, beamTolerance)
		s := m.At(st, -l)
		far := [2]float64{s.DY, s.DZ}
		near(t, "far slope", far[plane], -turn/2, beamTolerance)
		within(t, "other plane's slope", far[1-plane], 0, 0)
		within(t, "other plane's moment", force[3-2*plane], 0, 0)
	}
}

// TestPinnedFrontIsASupport holds one end of a simple span by Pinned instead
// of a knife edge, sunk by a millimetre.
func TestPinnedFrontIsASupport(t *testing.T) {
	const l, w, sink = 1000.0, beamLoad / 1000., 1.0
	m := mustPrepare(t, Line{LengthMM: l, DiameterMM: 14, BendingStiffnessNMM2: beamEI,
		WeightNPerMM: w, AftWeightNPerMM: w, Springs: []Spring{knife(-l)}})
	st := mustBend(t, m, Pinned{AtMM: [2]float64{0, -sink}})
	near(t, "force", m.FrontForce(st)[2], w*l/2, beamTolerance)
	within(t, "moment", m.FrontForce(st)[3], 0, beamTolerance*w*l*l)
	near(t, "slope", m.Front(st)[3], w*cube(l)/(24*beamEI)-sink/l, beamTolerance)
	near(t, "middle", m.At(st, -l/2).Z, -5*w*cube(l)*l/(384*beamEI)-sink/2, beamTolerance)
}

// TestTipsAreReciprocal is Maxwell's law on the overhang: tip slope per unit
// load is tip travel per unit moment, 7/24 at a = l/2.
func TestTipsAreReciprocal(t *testing.T) {
	s := span{l: 1000, a: 500, ei: beamEI, load: beamLoad}
	slope := under(withOverhang, tipLoad)(s).bend(t, forward).slope(1500)
	travel := under(withOverhang, tipMoment)(s).bend(t, forward).v(1500)
	near(t, "slope per load", -slope, travel, beamTolerance)
	near(t, "slope per load", -slope, 7./24*beamLoad*s.l*s.l/beamEI, beamTolerance)
}
