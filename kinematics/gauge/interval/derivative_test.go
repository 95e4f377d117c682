package interval

// This file holds the gradient and the Hessian to finite differences, and the
// likelihood to the shape Newton's method relies on.

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
)

// invented is a problem with rows of every kind, its readings drawn from a law
// and an error of which it knows nothing.
func invented(random *rand.Rand) Problem {
	p := Problem{Unknowns: 1 + random.IntN(5), Sigma: math.Exp(random.NormFloat64())}
	truth := make([]float64, p.Unknowns)
	for j := range truth {
		truth[j] = 5 * random.NormFloat64()
	}
	for range 4*p.Unknowns + random.IntN(20) {
		row := Row{X: make([]float64, p.Unknowns)}
		at := random.NormFloat64() * p.Sigma
		for j := range row.X {
			row.X[j] = random.NormFloat64()
			at += row.X[j] * truth[j]
		}
		switch step := p.Sigma * math.Exp(2*random.NormFloat64()); random.IntN(6) {
		case 0:
			row.Least, row.Most = at, at
		case 1:
			row.Least, row.Most = at-step, math.Inf(1)
		case 2:
			row.Least, row.Most = math.Inf(-1), at+step
		default:
			row.Least = math.Floor(at/step) * step
			row.Most = row.Least + step
		}
		if random.IntN(3) == 0 {
			row.Scale = math.Exp(random.NormFloat64())
		}
		p.Rows = append(p.Rows, row)
	}
	for j := range p.Unknowns { // a weak belief about each
		x := make([]float64, p.Unknowns)
		x[j] = 1
		p.Rows = append(p.Rows, Row{X: x, Scale: 20})
	}
	return p
}

// steppedGradient is the gradient at a step from w.at, for the step.
func steppedGradient(w *work, from point, step []float64) []float64 {
	nu := step[w.n]
	w.at.sigma = from.sigma / (1 + nu)
	along := 0.0
	for j := range w.n {
		w.at.b[j] = from.b[j] + w.at.sigma*step[j]
	}
	w.derive()
	g := append([]float64(nil), w.gradient.RawVector().Data...)
	for j := range w.n {
		along += g[j] * step[j]
	}
	g[w.n] = (g[w.n] - along) / (1 + nu) // by the chain rule, the step being from elsewhere
	return g
}

func TestDerivatives(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 1))
	const h = 1e-4
	for range 100 {
		p := invented(random)
		w, ok := newWork(&p, &Settings{FreeSigma: true})
		if !ok {
			t.Fatal("invalid")
		}
		from := point{make([]float64, w.n), p.Sigma * math.Exp(random.NormFloat64())}
		for j := range from.b {
			from.b[j] = 5 * random.NormFloat64()
		}
		copy(w.at.b, from.b)
		w.at.sigma = from.sigma
		l := w.derive()
		if told := w.likelihood(from); told != l {
			t.Errorf("likelihood %v with its derivatives, %v without", l, told)
		}
		gradient := append([]float64(nil), w.gradient.RawVector().Data...)
		hessian := mat.NewSymDense(w.dim, nil)
		hessian.CopySym(w.hessian)
		for j := range w.dim {
			step := make([]float64, w.dim)
			at := func(x float64) ([]float64, float64) {
				step[j] = x
				g := steppedGradient(w, from, step)
				return g, w.likelihood(w.at)
			}
			above, up := at(h)
			below, down := at(-h)
			size := 1 + math.Abs(hessian.At(j, j))
			if got := (up - down) / (2 * h); math.Abs(got-gradient[j]) > 1e-6*(size+math.Abs(l)) {
				t.Errorf("gradient %d = %.9g, by differences %.9g", j, gradient[j], got)
			}
			for k := range w.dim {
				got, want := -(above[k]-below[k])/(2*h), hessian.At(j, k)
				if math.Abs(got-want) > 1e-6*(size+math.Abs(hessian.At(k, k))) {
					t.Errorf("Hessian %d %d = %.9g, by differences %.9g", j, k, want, got)
				}
			}
		}
	}
}

// TestConcave: along any line in b, sigma given, and along any line in b/sigma
// and 1/sigma, the likelihood at the middle is no less than the mean of the ends.
func TestConcave(t *testing.T) {
	random := rand.New(rand.NewPCG(2, 2))
	for range 300 {
		p := invented(random)
		w, _ := newWork(&p, &Settings{})
		one, other, middle := point{sigma: p.Sigma}, point{sigma: p.Sigma}, point{sigma: p.Sigma}
		if random.IntN(2) == 0 {
			one.sigma, other.sigma = p.Sigma*math.Exp(random.NormFloat64()), p.Sigma*math.Exp(random.NormFloat64())
			middle.sigma = 2 / (1/one.sigma + 1/other.sigma)
		}
		for range w.n {
			x, y := 10*random.NormFloat64(), 10*random.NormFloat64()
			one.b, other.b = append(one.b, x), append(other.b, y)
			middle.b = append(middle.b, (x/one.sigma+y/other.sigma)/2*middle.sigma)
		}
		ends, mid := (w.likelihood(one)+w.likelihood(other))/2, w.likelihood(middle)
		if !(mid >= ends-1e-12*math.Abs(ends)) {
			t.Errorf("%.15g in the middle, %.15g the mean of the ends (sigma %g, %g)", mid, ends, one.sigma, other.sigma)
		}
	}
}
