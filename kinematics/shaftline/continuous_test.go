package shaftline

// This file holds the beam against continuous beams: equal spans under a
// uniform load, a printed worked example, the three-moment equation with sinking
// supports, and the influence of one bearing's height on every reaction.

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// TestEqualSpans: reactions and moments of two and three equal spans stand in
// every table of continuous beams (AISC Manual, table 3-23, from memory); they
// and the end slopes were worked out exactly with fractions.
func TestEqualSpans(t *testing.T) {
	for _, c := range []struct {
		reactions []float64 // in w l
		moment    float64   // over an inner support, in w l^2
		endSlope  float64   // going into the beam, in w l^3 / EI
	}{
		{[]float64{3. / 8, 5. / 4, 3. / 8}, -1. / 8, -1. / 48},
		{[]float64{2. / 5, 11. / 10, 11. / 10, 2. / 5}, -1. / 10, -1. / 40},
	} {
		const l, w = 1000.0, beamLoad / 1000
		n := len(c.reactions)
		h := handbookBeam{lengthMM: float64(n-1) * l, loadNPerMM: w}
		for i := range n {
			h.supports = append(h.supports, float64(i)*l)
		}
		for _, way := range []facing{aft, forward} {
			b := h.bend(t, way)
			for i, want := range c.reactions {
				near(t, fmt.Sprintf("%d spans, reaction %d", n-1, i), b.reaction(i), want*w*l, 1e-7)
			}
			near(t, "moment over the second support", b.moment(l), c.moment*w*l*l, 1e-7)
			near(t, "moment over the last but one", b.moment(h.lengthMM-l), c.moment*w*l*l, 1e-7)
			near(t, "left slope", b.slope(0), c.endSlope*w*l*l*l/beamEI, 1e-7)
			near(t, "right slope", b.slope(h.lengthMM), -c.endSlope*w*l*l*l/beamEI, 1e-7)
			most, _ := b.model.Bending(b.state)
			near(t, "largest moment", most, -c.moment*w*l*l, 1e-7)
		}
	}
}

// TestPrintedTwoSpanExample is example 5.22 of the Structural Analysis course
// of the Indian Institutes of Technology (NPTEL 105101085): it prints
// M = -56.25 kN m over the middle support and a middle reaction of
// 120 + 40 x 3 - 41.25 - 41.25 = 157.5 kN. Its figure was not seen: spans of
// 3 m and 3 m, 120 kN in the middle of one and 40 kN/m on the other, are
// inferred, and reproduce every printed number exactly (165/4, 315/2, 165/4).
// The load on half the length is laid on as the shaft under water is.
func TestPrintedTwoSpanExample(t *testing.T) {
	const l = 3000.0
	line := Line{LengthMM: 2 * l, DiameterMM: 40, BendingStiffnessNMM2: 1e10,
		AftWeightNPerMM: 40, AftFromMM: -l,
		Points:  []Point{{AtMM: -l / 2, WeightN: 120e3}},
		Springs: []Spring{knife(-2 * l), knife(-l), knife(0)}}
	m := mustPrepare(t, line)
	st := mustBend(t, m, Free{})
	s := make([]Support, m.Supports())
	m.ReadSupports(st, s)
	for i, want := range []float64{41.25e3, 157.5e3, 41.25e3} {
		near(t, fmt.Sprintf("reaction %d", i), s[m.LogGroup()+1+i].ForceN[1], want, 1e-7)
	}
	near(t, "moment over the middle", m.At(st, -l).MomentZ, -56.25e6, 1e-7)
	near(t, "moment under the load", m.At(st, -l/2).MomentZ, 41.25e3*l/2, 1e-7)
}

// threeMoments solves the three-moment equation for the moments over the
// supports of a continuous beam, each span under a uniform load w and one load
// p at fraction c of it, the supports raised by v:
//
//	M1 L1 + 2 M2 (L1 + L2) + M3 L2 = - w1 L1^3/4 - w2 L2^3/4
//	    - p1 L1^2 c1 (1 - c1^2) - p2 L2^2 c2 (1 - c2)(2 - c2)
//	    + 6 EI ((v1 - v2)/L1 + (v3 - v2)/L2).
//
// Without the last line: USAF Stress Analysis Manual 1.3.4.5 and 1.3.4.6,
// equations 1-41 and 1-42. The raising of supports: any text on structures,
// such as Timoshenko's, from memory.
func threeMoments(l, w, p, c, v []float64, ei float64) []float64 {
	n := len(l)
	m := make([]float64, n+1)
	// Thomas elimination over the inner supports 1 .. n-1.
	diag, rhs := make([]float64, n), make([]float64, n)
	for i := 1; i < n; i++ {
		l1, l2 := l[i-1], l[i]
		c1, c2 := c[i-1], c[i]
		diag[i] = 2 * (l1 + l2)
		rhs[i] = -w[i-1]*cube(l1)/4 - w[i]*cube(l2)/4 -
			p[i-1]*l1*l1*c1*(1-c1*c1) - p[i]*l2*l2*c2*(1-c2)*(2-c2) +
			6*ei*((v[i-1]-v[i])/l1+(v[i+1]-v[i])/l2)
		if i > 1 {
			f := l1 / diag[i-1]
			diag[i] -= f * l1
			rhs[i] -= f * rhs[i-1]
		}
	}
	for i := n - 1; i >= 1; i-- {
		m[i] = (rhs[i] - l[i]*m[i+1]) / diag[i]
	}
	return m
}

// TestThreeMomentEquation compares 200 beams of two to five unequal spans, all
// loaded and all sunk differently.
func TestThreeMomentEquation(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	between := func(lo, hi float64) float64 { return lo + (hi-lo)*random.Float64() }
	for trial := range 200 {
		n := 2 + trial%4
		var l, p, c, v, w []float64
		load := between(0.01, 0.05)
		h := handbookBeam{loadNPerMM: load, supports: []float64{0}}
		for i := range n {
			l, w = append(l, between(600, 1800)), append(w, load)
			p, c = append(p, between(-30, 60)), append(c, between(0.1, 0.9))
			h.points = append(h.points, beamPoint{h.lengthMM + c[i]*l[i], p[i]})
			h.lengthMM += l[i]
			h.supports = append(h.supports, h.lengthMM)
		}
		for range n + 1 {
			sink := between(-3, 3)
			h.sinkMM, v = append(h.sinkMM, sink), append(v, -sink)
		}
		want := threeMoments(l, w, p, c, v, beamEI)
		size := 0.0
		for i := range n {
			size = math.Max(size, math.Max(load*l[i]*l[i]/8, math.Abs(want[i])))
		}
		b := h.bend(t, [...]facing{aft, forward}[trial/4%2])
		for i, m := range want {
			what := fmt.Sprintf("trial %d, %d spans, moment over support %d", trial, n, i)
			within(t, what, b.moment(h.supports[i]), m, 1e-6*size)
			// The reaction is the jump in shear, from the moments and loads.
			reaction := 0.0
			if i < n {
				reaction += w[i]*l[i]/2 + p[i]*(1-c[i]) + (want[i+1]-m)/l[i]
			}
			if i > 0 {
				reaction += w[i-1]*l[i-1]/2 + p[i-1]*c[i-1] + (want[i-1]-m)/l[i-1]
			}
			within(t, what+", reaction", b.reaction(i), reaction, 1e-6*size/600)
			within(t, what+", height", b.v(h.supports[i]), v[i], 1e-6)
		}
	}
}

// TestReactionInfluence: what raising one bearing does to every reaction, in
// EI/L^3 of equal spans, worked out exactly with fractions. That such numbers
// measure how sensitive a shaft is to its line: Lehr and Parker, A Method for
// the Design of Ship Propulsion Shaft Systems (1961); no table of theirs was
// seen.
func TestReactionInfluence(t *testing.T) {
	for _, want := range [][][]float64{
		{{1.5, -3, 1.5}, {-3, 6, -3}, {1.5, -3, 1.5}},
		{
			{8. / 5, -18. / 5, 12. / 5, -2. / 5},
			{-18. / 5, 48. / 5, -42. / 5, 12. / 5},
			{12. / 5, -42. / 5, 48. / 5, -18. / 5},
			{-2. / 5, 12. / 5, -18. / 5, 8. / 5},
		},
	} {
		for plane := range 2 {
			got := influence(t, len(want), plane)
			for i := range want {
				var row float64
				for j := range want {
					what := fmt.Sprintf("%d bearings, plane %d, reaction %d by bearing %d", len(want), plane, i, j)
					within(t, what, got[i][j], want[i][j], 1e-6)
					within(t, what+", by symmetry", got[i][j], got[j][i], 1e-6)
					row += got[i][j]
				}
				within(t, "sum of a row", row, 0, 1e-6)
			}
		}
	}
}

// influence raises each of n bearings by 1 mm in turn and reads the changes of
// reaction in units of EI/L^3.
func influence(t *testing.T, n, plane int) [][]float64 {
	t.Helper()
	const l, rise = 1000.0, 1.0
	unit := beamEI / (l * l * l) * rise
	reactions := func(raised int) []float64 {
		line := Line{LengthMM: float64(n-1) * l, DiameterMM: 14, BendingStiffnessNMM2: beamEI,
			WeightNPerMM: 0.02, AftWeightNPerMM: 0.02}
		for i := range n {
			// A tenth of a knife edge: a millimetre of rise costs the last digits of
			// a larger one's force.
			s := Spring{AtMM: -float64(i) * l, StiffnessNPerMM: 1e8}
			if i == raised {
				s.OffsetMM[plane] = rise
			}
			line.Springs = append(line.Springs, s)
		}
		m := mustPrepare(t, line)
		s := make([]Support, m.Supports())
		m.ReadSupports(mustBend(t, m, Free{}), s)
		var r []float64
		for i := range n {
			r = append(r, s[m.LogGroup()+1+i].ForceN[plane])
		}
		return r
	}
	level := reactions(-1)
	change := make([][]float64, n)
	for j := range n {
		raised := reactions(j)
		for i := range n {
			change[i] = append(change[i], (raised[i]-level[i])/unit)
		}
	}
	return change
}
