package gauge

// This file holds the chance of a disc against closed forms and against counting.

import (
	"math"
	"math/rand/v2"
	"testing"
)

// TestInsideRound: for an error the same in all directions the chance is a
// noncentral chi-squared with two degrees of freedom; values from R 4.2's
// pchisq((radius/sd)^2, 2, (off/sd)^2).
func TestInsideRound(t *testing.T) {
	for _, c := range []struct{ radius, off, sd, want float64 }{
		{1.5, 0, 0.5, 0.988891003461758},
		{1.5, 1, 0.5, 0.785637911837351},
		{1.5, 1.4, 0.3, 0.590601969401017},
		{1.5, 2, 0.4, 0.0859440782427375},
		{1.5, 0.2, 2, 0.244101182138618},
		{1.5, 5, 1, 0.000118210010885376},
	} {
		for _, at := range []float64{0, 1, 2.5, -2} {
			sin, cos := math.Sincos(at)
			g := Gaussian{[2]float64{c.off * cos, c.off * sin}, [2][2]float64{{c.sd * c.sd, 0}, {0, c.sd * c.sd}}}
			near(t, "inside", g.Inside([2]float64{}, c.radius), c.want, 1e-9)
		}
	}
}

// TestInsideStrip: with next to no error along one axis the disc is a stretch.
func TestInsideStrip(t *testing.T) {
	g := Gaussian{[2]float64{0.4, 0.3}, [2][2]float64{{0.25, 0}, {0, 1e-12}}}
	h := math.Sqrt(1 - 0.09)
	want := (math.Erf((h-0.4)/0.5/math.Sqrt2) - math.Erf((-h-0.4)/0.5/math.Sqrt2)) / 2
	near(t, "strip", g.Inside([2]float64{}, 1), want, 1e-6)
}

// TestInsideCounted draws from slanting Gaussians and counts.
func TestInsideCounted(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 20 {
		l := [3]float64{0.2 + r.Float64(), r.NormFloat64(), 0.1 + r.Float64()}
		g := Gaussian{[2]float64{r.NormFloat64(), r.NormFloat64()},
			[2][2]float64{{l[0] * l[0], l[0] * l[1]}, {l[0] * l[1], l[1]*l[1] + l[2]*l[2]}}}
		radius, n, in := 0.3+1.5*r.Float64(), 40000, 0
		for range n {
			u, v := r.NormFloat64(), r.NormFloat64()
			x, y := g.MeanMM[0]+l[0]*u, g.MeanMM[1]+l[1]*u+l[2]*v
			if x*x+y*y <= radius*radius {
				in++
			}
		}
		p := g.Inside([2]float64{}, radius)
		near(t, "share", float64(in)/float64(n), p, 4.5*math.Sqrt(p*(1-p)/float64(n))+1e-4)
	}
}

// TestOutsideMustBeRead: an axis nobody gauged does not make a gap outside.
func TestOutsideMustBeRead(t *testing.T) {
	limit := 1.5 * thouMM
	for _, c := range []struct {
		name string
		g    Gaussian
		want Verdict
	}{
		{"known and small", Gaussian{[2]float64{0.01, 0}, [2][2]float64{{1e-5, 0}, {0, 1e-5}}}, Within},
		{"known and large", Gaussian{[2]float64{0.2, 0}, [2][2]float64{{1e-4, 0}, {0, 1e-4}}}, Outside},
		{"one axis not read, the other within", Gaussian{[2]float64{0.01, 0}, [2][2]float64{{1e-5, 0}, {0, 1}}}, CannotTell},
		{"one axis not read, the other outside", Gaussian{[2]float64{0.2, 0}, [2][2]float64{{1e-4, 0}, {0, 1}}}, Outside},
		{"nothing read", Gaussian{[2]float64{0, 0}, [2][2]float64{{1, 0}, {0, 1}}}, CannotTell},
	} {
		if got, p := c.g.verdict([2]float64{}, limit); got != c.want {
			t.Errorf("%s: %s (%.3f), want %s", c.name, got, p, c.want)
		}
	}
}
