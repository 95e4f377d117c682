package interval

// This file holds one row's likelihood and its derivatives, by the moments of
// a standard normal deviate z known to lie between a and b.

import "math"

// truncated is what a row contributes: the logarithm of the chance that z lies
// between its limits, and the first four moments of z if it does.
type truncated struct {
	log            float64
	m1, m2, m3, m4 float64
}

const logRoot2Pi = 0.91893853320467274178 // ln sqrt(2 pi)

// between works the moments out. A short interval is integrated over, because
// differences of tails would cancel there; a long one is told by its ends.
func between(a, b float64) truncated {
	if a == b {
		return truncated{-a*a/2 - logRoot2Pi, a, a * a, a * a * a, a * a * a * a}
	}
	if a+b < 0 { // the nearer limit first: work in the right-hand tail
		t := between(-b, -a)
		t.m1, t.m3 = -t.m1, -t.m3
		return t
	}
	if width := b - a; width*math.Max(1, (a+b)/2) <= 1 {
		return integrated(a, b)
	}
	return byEnds(a, b)
}

// Gauss-Legendre abscissae and weights on (-1, 1), ten points (Abramowitz and
// Stegun, Handbook of Mathematical Functions, table 25.4).
var legendre = [5][2]float64{
	{0.148874338981631210884826001130, 0.295524224714752870173815619189},
	{0.433395394129247190799265943166, 0.269266719309996355091226921569},
	{0.679409568299024406234327365115, 0.219086362515982043995534934228},
	{0.865063366688984510732096688423, 0.149451349150580593145863397658},
	{0.973906528517171720077964012084, 0.066671344308688137593568809893},
}

// integrated takes the moments about the middle c first, so that they keep
// their digits, and then about nought.
func integrated(a, b float64) truncated {
	c, half := (a+b)/2, (b-a)/2
	var s0, s1, s2, s3, s4 float64
	for _, p := range legendre {
		for _, t := range [2]float64{-p[0] * half, p[0] * half} {
			w := p[1] * math.Exp(-t*(c+t/2)) // phi(c+t)/phi(c)
			s0 += w
			s1 += w * t
			s2 += w * t * t
			s3 += w * t * t * t
			s4 += w * t * t * t * t
		}
	}
	d1, d2, d3, d4 := s1/s0, s2/s0, s3/s0, s4/s0
	return truncated{
		log: math.Log(s0*half) - c*c/2 - logRoot2Pi,
		m1:  c + d1,
		m2:  c*c + 2*c*d1 + d2,
		m3:  c*c*c + 3*c*c*d1 + 3*c*d2 + d3,
		m4:  c*c*c*c + 4*c*c*c*d1 + 6*c*c*d2 + 4*c*d3 + d4,
	}
}

// byEnds integrates z^n phi(z) by parts: with D the chance, and P_n =
// (a^n phi(a) - b^n phi(b))/D,
//
//	E z = P_0,  E z^n = P_(n-1) + (n-1) E z^(n-2).
//
// In the right-hand tail everything is told relative to phi(a), by Mills'
// ratio, so that nothing underflows.
func byEnds(a, b float64) truncated {
	var t truncated
	var phiA, phiB float64 // over D
	if a > 0 {
		ratio := math.Exp((a - b) * (a + b) / 2) // phi(b)/phi(a), 0 for an open end
		d := mills(a)
		if ratio > 0 {
			d -= ratio * mills(b)
		}
		t.log = math.Log(d) - a*a/2 - logRoot2Pi
		phiA, phiB = 1/d, ratio/d
	} else {
		d := (math.Erfc(a/math.Sqrt2) - math.Erfc(b/math.Sqrt2)) / 2
		t.log = math.Log(d)
		phiA, phiB = phi(a)/d, phi(b)/d
	}
	p0 := phiA - phiB
	p1 := end(a, phiA) - end(b, phiB)
	p2 := end(a, a*phiA) - end(b, b*phiB)
	p3 := end(a, a*a*phiA) - end(b, b*b*phiB)
	t.m1 = p0
	t.m2 = p1 + 1
	t.m3 = p2 + 2*t.m1
	t.m4 = p3 + 3*t.m2
	return t
}

// end is z times a density that vanishes at infinity faster than any power.
func end(z, density float64) float64 {
	if density == 0 || math.IsInf(z, 0) {
		return 0
	}
	return z * density
}

func phi(z float64) float64 { return math.Exp(-z*z/2 - logRoot2Pi) }

// mills is (1 - Phi(z))/phi(z) for z >= 0. Past 25 its asymptotic series ends
// within a unit in the last place (Abramowitz and Stegun, 26.2.12).
func mills(z float64) float64 {
	if z < 25 {
		return math.Erfc(z/math.Sqrt2) / 2 / phi(z)
	}
	r := 1 / (z * z)
	return (1 - r*(1-3*r*(1-5*r*(1-7*r*(1-9*r))))) / z
}
