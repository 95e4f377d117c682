package response

// This file holds the linear covariance against boats drawn at random.

import (
	"math"
	"math/rand/v2"
	"testing"

	"aligner/kinematics"
)

// TestCovarianceByDrawing draws all numbers of a hull at once, evenly within
// their tolerances, and compares the spread of the response with the sum of the
// single sensitivities. The drawn spread lacks the model's own error and the
// shaft's place in its clearances, so it may be less, and not much more.
func TestCovarianceByDrawing(t *testing.T) {
	for _, name := range []string{"kittiwake", "avocet"} {
		h := hull(t, name)
		m, err := NewModel(h, kinematics.Seated, false)
		if err != nil {
			t.Fatal(err)
		}
		nominal, err := m.At(nil, nil)
		if err != nil {
			t.Fatal(err)
		}
		r := rand.New(rand.NewPCG(7, 8))
		const n = 150
		square := make([]float64, len(nominal.Mean))
		for range n {
			moved := *h
			for _, number := range numbers(h) {
				// moved takes standard deviations: evenly within plus or minus root 3.
				moved = number.moved(&moved, math.Sqrt(3)*(2*r.Float64()-1))
			}
			line, err := kinematics.Prepare(moved)
			if err != nil {
				t.Fatal(err)
			}
			mean, err := m.at(line, nil, nil)
			if err != nil {
				t.Fatal(err)
			}
			for i := range mean {
				square[i] += (mean[i] - nominal.Mean[i]) * (mean[i] - nominal.Mean[i]) / n
			}
		}
		for i, s := range square {
			drawn, said := math.Sqrt(s), math.Sqrt(nominal.Cov.At(i, i))
			if math.Abs(nominal.Mean[i]) < 0.003 {
				continue // what should be nought is all model error
			}
			if drawn > 1.2*said || drawn < 0.5*said {
				t.Errorf("%s, item %d %s: drawn +- %.5f mm, said %.5f", name, i/2, [2]string{"A", "B"}[i%2], drawn, said)
			}
		}
	}
}
