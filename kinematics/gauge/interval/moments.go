package interval

// This file holds one row's likelihood and its derivatives, by the moments of
// a standard normal deviate z known to lie between a and b.

import "math"

// truncated is what a row contributes: the logarithm of the chance that z lies
// between its limits, and, if it does, its mean and its moments about the mean.
// Those about nought would not do: far out, or between close limits, they are
// large and nearly cancel.
type truncated struct {
	log                     float64
	mean                    float64
	curve                   float64 // 1 - variance, which has its own digits where the limits are wide
	variance, third, fourth float64 // about the mean
}

const logRoot2Pi = 0.91893853320467274178 // ln sqrt(2 pi)

// Where each of three ways is best: limits so close that the density between
// them is nearly a straight line in its logarithm; limits in the tail; the rest.
const (
	shortTo  = 2.0
	tailFrom = 3.0
)

// between works the moments out. The width is b - a, but has its own digits: of
// close limits far out the difference has few.
func between(a, b, width float64) truncated {
	if width == 0 {
		return truncated{log: -a*a/2 - logRoot2Pi, mean: a, curve: 1}
	}
	if a+b < 0 { // the nearer limit first: work in the right-hand tail
		t := between(-b, -a, width)
		t.mean, t.third = -t.mean, -t.third
		return t
	}
	switch {
	case width*math.Max(1, (a+b)/2) <= shortTo:
		return integrated(a, width)
	case a < tailFrom:
		return byEnds(a, b)
	}
	return inTail(a, b)
}

// about fills in the moments about the mean from those about another point,
// e[n] = E (z - point)^n.
func (t *truncated) about(point float64, e [5]float64) {
	d := e[1]
	t.mean = point + d
	t.variance = e[2] - d*d
	t.curve = 1 - t.variance
	t.third = e[3] - 3*d*e[2] + 2*d*d*d
	t.fourth = e[4] - 4*d*e[3] + 6*d*d*e[2] - 3*d*d*d*d
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

// integrated sums over a short interval, where differences of tails cancel.
func integrated(a, width float64) truncated {
	c, half := a+width/2, width/2
	var s, e [5]float64
	for _, p := range legendre {
		for _, t := range [2]float64{-p[0] * half, p[0] * half} {
			w := p[1] * math.Exp(-t*(c+t/2)) // phi(c+t)/phi(c)
			s[0] += w
			s[1] += w * t
			s[2] += w * t * t
			s[3] += w * t * t * t
			s[4] += w * t * t * t * t
		}
	}
	for n := range e {
		e[n] = s[n] / s[0]
	}
	t := truncated{log: math.Log(s[0]*half) - c*c/2 - logRoot2Pi}
	t.about(c, e)
	return t
}

// byEnds integrates z^n phi(z) by parts: with D the chance, and P_n =
// (a^n phi(a) - b^n phi(b))/D,
//
//	E z = P_0,  E z^n = P_(n-1) + (n-1) E z^(n-2).
func byEnds(a, b float64) truncated {
	below, above := math.Erfc(-a/math.Sqrt2)/2, math.Erfc(b/math.Sqrt2)/2
	outside := below + above
	d := math.Erfc(a/math.Sqrt2)/2 - above
	phiA, phiB := phi(a)/d, phi(b)/d
	p0 := -phiA * math.Expm1((a-b)*(a+b)/2)
	if math.IsInf(a, 0) || math.IsInf(b, 0) {
		p0 = phiA - phiB
	}
	p1 := end(a, phiA) - end(b, phiB)
	p2 := end(a, a*phiA) - end(b, b*phiB)
	p3 := end(a, a*a*phiA) - end(b, b*b*phiB)
	m2, m3 := p1+1, p2+2*p0
	var t truncated
	t.about(0, [5]float64{1, p0, m2, m3, p3 + 3*m2})
	t.curve = p0*p0 - p1 // no difference at all where a < 0 < b
	t.log = math.Log(d)
	if outside < 0.5 {
		t.log = math.Log1p(-outside)
	}
	return t
}

// inTail tells an interval far out as what lies beyond a less what lies beyond
// b, both about a and relative to phi(a), so that nothing underflows.
func inTail(a, b float64) truncated {
	millsA, e := beyond(a)
	t := truncated{log: math.Log(millsA) - a*a/2 - logRoot2Pi}
	if gap := math.Exp((a - b) * (a + b) / 2); gap > 0 { // phi(b)/phi(a), 0 for an open end
		millsB, f := beyond(b)
		q, w := gap*millsB/millsA, b-a
		shifted := [5]float64{
			1,
			w + f[1],
			w*(w+2*f[1]) + f[2],
			w*(w*(w+3*f[1])+3*f[2]) + f[3],
			w*(w*(w*(w+4*f[1])+6*f[2])+4*f[3]) + f[4],
		}
		for n := range e {
			e[n] = (e[n] - q*shifted[n]) / (1 - q)
		}
		t.log += math.Log1p(-q)
	}
	t.about(a, e)
	return t
}

// beyond gives Mills' ratio (1 - Phi(z))/phi(z) and the moments about z of what
// lies beyond it, for z from tailFrom up. The repeated integrals I_n of the
// normal tail (Abramowitz and Stegun, 7.2.5) have
//
//	I_(n-1) = (n+1) I_(n+1) + z I_n,  E (x-z)^n = n! I_n/I_0,
//
// so that their ratios r_n = I_n/I_(n-1) are a continued fraction, r_n =
// 1/(z + (n+1) r_(n+1)), without one difference. Begun at fifty from where
// r_n would rest, it is settled to 1e-15.
func beyond(z float64) (mills float64, e [5]float64) {
	const deep = 50
	r := 2 / (z + math.Sqrt(z*z+4*deep))
	var first [5]float64
	for n := deep; n > 0; n-- {
		if n < len(first) {
			first[n] = r
		}
		r = 1 / (z + float64(n)*r)
	}
	e[0] = 1
	for n := 1; n < len(e); n++ {
		e[n] = e[n-1] * float64(n) * first[n]
	}
	return r, e
}

// end is z times a density that vanishes at infinity faster than any power.
func end(z, density float64) float64 {
	if density == 0 || math.IsInf(z, 0) {
		return 0
	}
	return z * density
}

func phi(z float64) float64 { return math.Exp(-z*z/2 - logRoot2Pi) }
