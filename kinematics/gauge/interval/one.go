package interval

// This file is the likelihood of one row by itself, for whoever asks how well a
// single reading is met.

import "math"

// LogLikelihood of a row at b.
func (r *Row) LogLikelihood(b []float64, sigma float64) float64 {
	s := sigma
	if r.Scale > 0 {
		s *= r.Scale
	}
	at := 0.0
	for j, x := range r.X {
		at += x * b[j]
	}
	l := between((r.Least-at)/s, (r.Most-at)/s).log
	if r.Least == r.Most {
		l -= math.Log(s)
	}
	return l
}
