package interval

// This file holds fits to those of R's survival::survreg, and to what that
// package's own saved outputs print.

import (
	"encoding/json"
	"math"
	"os"
	"testing"
)

// survregFit is one fit of testdata/survreg.json.
type survregFit struct {
	Name string
	Free bool
	Rows []struct {
		X           []float64
		Least, Most *float64 // null: no limit
		Scale       float64
	}
	Coefficients  []float64
	Sigma         float64
	LogLikelihood float64
	Covariance    [][]float64
}

func (f survregFit) problem() Problem {
	p := Problem{Unknowns: len(f.Coefficients), Sigma: f.Sigma}
	for _, r := range f.Rows {
		row := Row{X: r.X, Least: math.Inf(-1), Most: math.Inf(1), Scale: r.Scale}
		if r.Least != nil {
			row.Least = *r.Least
		}
		if r.Most != nil {
			row.Most = *r.Most
		}
		p.Rows = append(p.Rows, row)
	}
	if f.Free {
		p.Sigma = 1 // not the answer
	}
	return p
}

func readSurvreg(t testing.TB) (lognormal float64, fits map[string]survregFit) {
	t.Helper()
	raw, err := os.ReadFile("testdata/survreg.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Lognormal float64
		Fits      []survregFit
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	fits = map[string]survregFit{}
	for _, f := range file.Fits {
		fits[f.Name] = f
	}
	if len(fits) < 15 {
		t.Fatalf("only %d fits", len(fits))
	}
	return file.Lognormal, fits
}

func TestAgainstSurvreg(t *testing.T) {
	_, fits := readSurvreg(t)
	for name, f := range fits {
		t.Run(name, func(t *testing.T) {
			r := Fit(f.problem(), Settings{FreeSigma: f.Free, FloorSigma: 1e-6})
			if r.Status != Converged {
				t.Fatal(r.Status)
			}
			for i, want := range f.Coefficients {
				size := math.Max(math.Abs(want), math.Sqrt(f.Covariance[i][i]))
				if math.Abs(r.B[i]-want) > 1e-6*size {
					t.Errorf("b[%d] = %.12g, survreg %.12g", i, r.B[i], want)
				}
			}
			if math.Abs(r.Sigma-f.Sigma) > 1e-6*f.Sigma {
				t.Errorf("sigma %.12g, survreg %.12g", r.Sigma, f.Sigma)
			}
			if math.Abs(r.LogLikelihood-f.LogLikelihood) > 1e-6 {
				t.Errorf("log likelihood %.12g, survreg %.12g", r.LogLikelihood, f.LogLikelihood)
			}
			if n := r.Covariance.SymmetricDim(); n != len(f.Covariance) {
				t.Fatalf("covariance of %d, survreg %d", n, len(f.Covariance))
			}
			for i := range f.Covariance {
				for j, want := range f.Covariance[i] {
					size := math.Sqrt(f.Covariance[i][i] * f.Covariance[j][j])
					if got := r.Covariance.At(i, j); math.Abs(got-want) > 1e-5*math.Max(math.Abs(want), 1e-3*size) {
						t.Errorf("covariance %d %d = %.9g, survreg %.9g", i, j, got, want)
					}
				}
			}
		})
	}
}

// TestTobinPrinted holds the linear predictors of the durable goods data to
// those the R package survival prints in the saved output of its examples
// (tests/Examples/survival-Ex.Rout.save), eight decimals.
func TestTobinPrinted(t *testing.T) {
	_, fits := readSurvreg(t)
	f := fits["tobin"]
	printed := []float64{
		-3.04968679, -4.31254182, -0.54163315, -0.25607164, -1.85017727, -2.40987803, -3.50629220, -0.74041486, -4.05145594, -3.55880518,
		-0.32223237, -3.68044619, -3.65997456, -2.63254564, 0.22382063, 0.02177674, -0.09571284, -3.17696755, -0.61521215, -3.13913903,
	}
	r := Fit(f.problem(), Settings{FreeSigma: true})
	if len(f.Rows) != len(printed) {
		t.Fatal(len(f.Rows))
	}
	for i, want := range printed {
		got := 0.0
		for j, x := range f.Rows[i].X {
			got += x * r.B[j]
		}
		if math.Abs(got-want) > 1.5e-8 {
			t.Errorf("row %d: %.9f, printed %.8f", i, got, want)
		}
	}
}

// TestIntervalPrinted holds the true interval data to what the same package
// prints in the saved output of its tests (tests/testreg.Rout.save): the
// lognormal law, so that its log likelihoods have 1/t for the two exact rows.
func TestIntervalPrinted(t *testing.T) {
	lognormal, fits := readSurvreg(t)
	jacobian := -math.Log(421) - math.Log(375)
	r := Fit(fits["log time"].problem(), Settings{FreeSigma: true})
	for _, c := range []struct {
		what      string
		got, want float64
		half      float64 // unit in the last place printed
	}{
		{"intercept", r.B[0], 11.1548, 5e-5},
		{"age", r.B[1], -0.0855, 5e-5},
		{"ecog", r.B[2], 0.2066, 5e-5},
		{"log sigma", math.Log(r.Sigma), -0.2297, 5e-5},
		{"its error of the intercept", math.Sqrt(r.Covariance.At(0, 0)), 1.4347, 5e-5},
		{"of age", math.Sqrt(r.Covariance.At(1, 1)), 0.0238, 5e-5},
		{"of ecog", math.Sqrt(r.Covariance.At(2, 2)), 0.3828, 5e-5},
		{"of log sigma", math.Sqrt(r.Covariance.At(3, 3)), 0.2508, 5e-5},
		{"sigma", r.Sigma, 0.795, 5e-4},
		{"log likelihood", r.LogLikelihood + jacobian, -56.0, 5e-2},
		{"of the intercept alone", Fit(fits["log time, intercept only"].problem(), Settings{FreeSigma: true}).LogLikelihood + jacobian, -63.5, 5e-2},
		{"by the lognormal law itself", r.LogLikelihood, lognormal, 1e-6},
	} {
		if math.Abs(c.got-c.want) > c.half {
			t.Errorf("%s %.9g, want %.9g", c.what, c.got, c.want)
		}
	}
}
