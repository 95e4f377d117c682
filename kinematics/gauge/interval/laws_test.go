package interval

// This file holds laws of a fit, on problems drawn at random, with sigma given
// and free:
//
//	mirror   readings turned over: b turns over, nothing else changes
//	shift    readings moved by X.d: b moves by d
//	units    readings in other units: b and sigma too; a column in other units
//	order    rows in any order: the same
//	wider    an interval widened: no less likely
//	parts    an interval in two: the chances add up
//	start    begun anywhere: the same
//	best     no law nearby is more likely

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// altered is a copy of a problem with every row changed.
func altered(p Problem, change func(*Row)) Problem {
	p.Rows = slices.Clone(p.Rows)
	for i := range p.Rows {
		p.Rows[i].X = slices.Clone(p.Rows[i].X)
		change(&p.Rows[i])
	}
	return p
}

// lawProblems fits problems drawn at random, sigma given and free by turns.
func lawProblems(t *testing.T, each func(t *testing.T, random *rand.Rand, p Problem, s Settings, r Result)) {
	random := rand.New(rand.NewPCG(3, 3))
	floors := 0
	for n := range 200 {
		p, s := invented(random), Settings{FreeSigma: n%2 == 1, FloorSigma: 1e-3}
		r := Fit(p, s)
		if r.Status != Converged {
			t.Fatalf("problem %d: %v after %d steps", n, r.Status, r.Iterations)
		}
		if r.AtFloor {
			floors++
		}
		each(t, random, p, s, r)
	}
	if floors > 20 {
		t.Errorf("%d of 100 at the floor: the problems are too easily met", floors)
	}
}

// alike holds one fit to what another foretells: b within a part of its standard
// error, the covariance within a part.
func alike(t *testing.T, what string, got Result, b []float64, sigma, logLikelihood float64, covariance func(i, j int) float64) {
	t.Helper()
	if got.Status != Converged {
		t.Errorf("%s: %v", what, got.Status)
		return
	}
	for i, want := range b {
		se := math.Sqrt(covariance(i, i))
		if math.Abs(got.B[i]-want) > 1e-8*se {
			t.Errorf("%s: b[%d] = %.15g, want %.15g", what, i, got.B[i], want)
		}
		for j := range b {
			size := se * math.Sqrt(covariance(j, j))
			if c := got.Covariance.At(i, j); math.Abs(c-covariance(i, j)) > 1e-6*size {
				t.Errorf("%s: covariance %d %d = %.12g, want %.12g", what, i, j, c, covariance(i, j))
			}
		}
	}
	if math.Abs(got.Sigma/sigma-1) > 1e-8 {
		t.Errorf("%s: sigma %.15g, want %.15g", what, got.Sigma, sigma)
	}
	if math.Abs(got.LogLikelihood-logLikelihood) > 1e-9*(1+math.Abs(logLikelihood)) {
		t.Errorf("%s: log likelihood %.15g, want %.15g", what, got.LogLikelihood, logLikelihood)
	}
}

func TestMirror(t *testing.T) {
	lawProblems(t, func(t *testing.T, _ *rand.Rand, p Problem, s Settings, r Result) {
		over := Fit(altered(p, func(row *Row) { row.Least, row.Most = -row.Most, -row.Least }), s)
		b := slices.Clone(r.B)
		for i := range b {
			b[i] = -b[i]
		}
		alike(t, "mirror", over, b, r.Sigma, r.LogLikelihood, r.Covariance.At)
	})
}

func TestShift(t *testing.T) {
	lawProblems(t, func(t *testing.T, random *rand.Rand, p Problem, s Settings, r Result) {
		d, b := make([]float64, p.Unknowns), slices.Clone(r.B)
		for j := range d {
			d[j] = 10 * random.NormFloat64()
			b[j] += d[j]
		}
		moved := Fit(altered(p, func(row *Row) {
			by, number := 0.0, row.Least == row.Most
			for j, x := range row.X {
				by += x * d[j]
			}
			row.Least += by
			row.Most += by
			if number {
				row.Most = row.Least
			}
		}), s)
		alike(t, "shift", moved, b, r.Sigma, r.LogLikelihood, r.Covariance.At)
	})
}

func TestUnits(t *testing.T) {
	lawProblems(t, func(t *testing.T, random *rand.Rand, p Problem, s Settings, r Result) {
		unit := math.Exp(7 * random.NormFloat64()) // of the readings
		column := make([]float64, p.Unknowns)
		b := slices.Clone(r.B)
		for j := range column {
			column[j] = math.Exp(7 * random.NormFloat64())
			b[j] *= unit / column[j]
		}
		numbers := 0.0
		q := altered(p, func(row *Row) {
			if row.Least == row.Most {
				numbers++
			}
			row.Least, row.Most = row.Least*unit, row.Most*unit
			for j := range row.X {
				row.X[j] *= column[j]
			}
		})
		q.Sigma *= unit
		s.FloorSigma *= unit
		alike(t, "units", Fit(q, s), b, r.Sigma*unit, r.LogLikelihood-numbers*math.Log(unit), func(i, j int) float64 {
			return r.Covariance.At(i, j) * unit * unit / column[i] / column[j]
		})
	})
}

func TestOrder(t *testing.T) {
	lawProblems(t, func(t *testing.T, random *rand.Rand, p Problem, s Settings, r Result) {
		q := altered(p, func(*Row) {})
		random.Shuffle(len(q.Rows), func(i, j int) { q.Rows[i], q.Rows[j] = q.Rows[j], q.Rows[i] })
		alike(t, "order", Fit(q, s), r.B, r.Sigma, r.LogLikelihood, r.Covariance.At)
	})
}

func TestStart(t *testing.T) {
	lawProblems(t, func(t *testing.T, random *rand.Rand, p Problem, s Settings, r Result) {
		p.Start = make([]float64, p.Unknowns)
		for j := range p.Start {
			p.Start[j] = 100 * p.Sigma * random.NormFloat64()
		}
		if s.FreeSigma {
			p.Sigma *= math.Exp(3 * random.NormFloat64())
		}
		alike(t, "start", Fit(p, s), r.B, r.Sigma, r.LogLikelihood, r.Covariance.At)
	})
}

func TestWider(t *testing.T) {
	lawProblems(t, func(t *testing.T, random *rand.Rand, p Problem, s Settings, r Result) {
		q := altered(p, func(row *Row) {
			if row.Least == row.Most || random.IntN(2) == 0 {
				return // a density is no chance, to be made larger by a width
			}
			row.Least -= p.Sigma * random.ExpFloat64()
			row.Most += p.Sigma * random.ExpFloat64()
		})
		if w := Fit(q, s); w.LogLikelihood < r.LogLikelihood-1e-9*math.Abs(r.LogLikelihood) {
			t.Errorf("widened: log likelihood %.12g, before %.12g", w.LogLikelihood, r.LogLikelihood)
		}
	})
}

func TestParts(t *testing.T) {
	random := rand.New(rand.NewPCG(4, 4))
	for range 1000 {
		cuts := []float64{math.Inf(-1), 3 * random.NormFloat64(), 3 * random.NormFloat64(), 3 * random.NormFloat64(), math.Inf(1)}
		slices.Sort(cuts)
		i := random.IntN(3)
		j := i + 2 + random.IntN(3-i)
		row := func(least, most float64) float64 {
			r := Row{X: []float64{0.5}, Least: least, Most: most, Scale: 0.3}
			return math.Exp(r.LogLikelihood([]float64{1}, 4))
		}
		sum := 0.0
		for k := i; k < j; k++ {
			sum += row(cuts[k], cuts[k+1])
		}
		if whole := row(cuts[i], cuts[j]); math.Abs(sum-whole) > 1e-14 {
			t.Errorf("parts of %v to %v: %.16g, whole %.16g", cuts[i], cuts[j], sum, whole)
		}
	}
}

func TestBest(t *testing.T) {
	lawProblems(t, func(t *testing.T, random *rand.Rand, p Problem, s Settings, r Result) {
		w, _ := newWork(&p, &s)
		for range 20 {
			size := math.Pow(10, -4*random.Float64()) // in standard errors
			near := point{slices.Clone(r.B), r.Sigma}
			for j := range near.b {
				near.b[j] += size * random.NormFloat64() * math.Sqrt(r.Covariance.At(j, j))
			}
			if s.FreeSigma {
				near.sigma = math.Max(s.FloorSigma, near.sigma*math.Exp(size*random.NormFloat64()))
			}
			if l := w.likelihood(near); l > r.LogLikelihood+1e-11*math.Abs(r.LogLikelihood) {
				t.Errorf("%.15g at the optimum, %.15g nearby", r.LogLikelihood, l)
			}
		}
	})
}
