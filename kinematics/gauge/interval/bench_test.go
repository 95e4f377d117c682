package interval

// This file times a fit of the size of a gap gauged all round, in two lines:
// 24 intervals and 12 beliefs about ten unknowns.

import (
	"math"
	"math/rand/v2"
	"testing"
)

func gauged() Problem {
	random := rand.New(rand.NewPCG(6, 6))
	p := Problem{Unknowns: 10, Sigma: 0.02}
	for h := range 24 {
		row := Row{X: make([]float64, p.Unknowns)}
		at := 0.3 + 0.01*random.NormFloat64()
		for j := range row.X {
			row.X[j] = math.Cos(float64((h+1)*j) * math.Pi / 12)
			at += row.X[j] * 0.1 / float64(1+j)
		}
		row.Least = math.Floor(at/0.05) * 0.05
		row.Most = row.Least + 0.05
		p.Rows = append(p.Rows, row)
	}
	for j := range 12 {
		row := Row{X: make([]float64, p.Unknowns), Scale: 10}
		row.X[j%p.Unknowns] = 1
		if j >= p.Unknowns {
			row.X[j-p.Unknowns+5] = -1
		}
		p.Rows = append(p.Rows, row)
	}
	return p
}

func benchmark(b *testing.B, s Settings) {
	p := gauged()
	b.ReportAllocs()
	for b.Loop() {
		if r := Fit(p, s); r.Status != Converged {
			b.Fatal(r.Status)
		}
	}
	b.ReportMetric(float64(Fit(p, s).Iterations), "steps")
}

func BenchmarkFit(b *testing.B)          { benchmark(b, Settings{}) }
func BenchmarkFitFreeSigma(b *testing.B) { benchmark(b, Settings{FreeSigma: true}) }
