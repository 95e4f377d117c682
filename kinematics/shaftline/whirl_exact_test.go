package shaftline

// This file is the exact first whirling speed of a uniform shaft over two knife
// edges with a weight at each overhung end, from the vibrating beam's own
// equation: no elements and nothing of the model's. The shape functions and the
// end stiffnesses of a beam vibrating at w are in any text on vibration (from
// memory; TestOverhungExactLimits holds them).

import (
	"math"
	"testing"
)

// overhungShaft is uniform, of EI and mass per length, over a span with an
// overhang and an end mass on each side. Any one set of units.
type overhungShaft struct {
	ei, massPerLength, span float64
	overhang, endMass       [2]float64
}

// turning is the moment per slope an overhang of length a with mass m at its
// end shows at its support, vibrating at w. With the support at s = 0 its
// shape is c2 sin ks + c3 sinh ks + c4 (cos ks - cosh ks).
func (o overhungShaft) turning(w, a, m float64) float64 {
	if a == 0 {
		return 0
	}
	k := o.wave(w)
	s, c, sh, ch := math.Sin(k*a), math.Cos(k*a), math.Sinh(k*a), math.Cosh(k*a)
	z := m * w * w / (o.ei * k * k * k)
	// No moment at the end, and a shear that swings the mass; k (c2 + c3) = 1.
	a11, a12, b1 := -s-sh, -(c + ch), -sh/k
	a21, a22, b2 := -c-ch+z*(s-sh), s-sh+z*(c-ch), -(ch+z*sh)/k
	c4 := (a11*b2 - a21*b1) / (a11*a22 - a12*a21)
	return 2 * o.ei * k * k * c4
}

// wave is the wave number k, k^4 = mass w^2 / EI.
func (o overhungShaft) wave(w float64) float64 {
	return math.Pow(o.massPerLength*w*w/o.ei, 0.25)
}

// rpm is the first speed at which the two slopes over the supports need no
// moment; below it the 2 x 2 stiffness is positive.
func (o overhungShaft) rpm(below float64) float64 {
	det := func(rpm float64) float64 {
		w := rpm / rpmPerRadS
		k := o.wave(w)
		l := k * o.span
		d := o.ei * k / (1 - math.Cos(l)*math.Cosh(l))
		same := d * (math.Cosh(l)*math.Sin(l) - math.Sinh(l)*math.Cos(l))
		across := d * (math.Sinh(l) - math.Sin(l))
		return (same+o.turning(w, o.overhang[0], o.endMass[0]))*
			(same+o.turning(w, o.overhang[1], o.endMass[1])) - across*across
	}
	return root(det, below/100, below)
}

// masterExact is the master shaft with overhangs in inches and ends in pounds.
func masterExact(aftIn, propellerLb, overhangIn, halfLb float64) overhungShaft {
	d := masterShaft.diameterIn * inMM
	return overhungShaft{
		ei:            CircularBendingStiffness(sagYoungMPa, d),
		massPerLength: masterShaft.weightLbPerIn() * lbKg / 1000 / inMM,
		span:          masterShaft.spanIn * inMM,
		overhang:      [2]float64{aftIn * inMM, overhangIn * inMM},
		endMass:       [2]float64{propellerLb * lbKg / 1000, halfLb * lbKg / 1000},
	}
}

// TestOverhungExactLimits holds the exact solution where a closed form exists:
// no overhang (pi^2), and a shaft far lighter than its end.
func TestOverhungExactLimits(t *testing.T) {
	o := masterExact(0, 0, 0, 0)
	hinged := math.Pi * math.Pi / (o.span * o.span) * math.Sqrt(o.ei/o.massPerLength) * rpmPerRadS
	near(t, "no overhang", o.rpm(1.5*hinged), hinged, 1e-9)

	o = masterExact(6, 30, 0, 0)
	o.massPerLength *= 1e-6
	k := 3 * o.ei / (o.overhang[0] * o.overhang[0] * (o.span + o.overhang[0]))
	near(t, "light shaft", o.rpm(4000), math.Sqrt(k/o.endMass[0])*rpmPerRadS, 1e-6)
}
