package response

// This file learns from what a boat answered before the visit at hand: the measured
// responses in her hull file, each a story of two states.

import (
	"fmt"

	"gonum.org/v1/gonum/mat"
)

// learnMeasured corrects the model by every answer to moves with the shaft held as
// here. Answers are taken as those of the drawn state: that the response changes
// along a move is small against what rubber is uncertain by.
func (m *Model) learnMeasured(nominal []float64) error {
	r := &Response{Items: m.Items, Mean: nominal, Cov: m.cov}
	for i := range m.Hull.MeasuredResponse {
		a := &m.Hull.MeasuredResponse[i]
		if a.Held != string(m.Held) {
			continue
		}
		s := Story{
			GapMM:  [][2]float64{{a.Before.CosMM, a.Before.SinMM}, {a.After.CosMM, a.After.SinMM}},
			CovMM2: mat.NewSymDense(4, nil),
			Moves:  [][]float64{MovesOf(m.Hull, m.Items, a.NutFlats, a.SlideMM)},
		}
		for k := range 4 {
			s.CovMM2.SetSym(k, k, a.ErrorMM*a.ErrorMM)
		}
		l, err := r.learn(s)
		if err != nil {
			return fmt.Errorf("measured response %d: %w", i+1, err)
		}
		r = l.Response
		m.Measured++
	}
	if m.Measured == 0 {
		return nil
	}
	m.shift, m.cov = make([]float64, len(nominal)), r.Cov
	for i := range nominal {
		m.shift[i] = r.Mean[i] - nominal[i]
	}
	return nil
}

// shifted is a response as the model has it, corrected by what was measured.
func (m *Model) shifted(mean []float64) []float64 {
	for i := range m.shift {
		mean[i] += m.shift[i]
	}
	return mean
}
