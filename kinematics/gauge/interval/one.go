package interval

// This file is the likelihood of one row by itself, for whoever asks how well a
// single reading is met.

// LogLikelihood of a row at b.
func (r *Row) LogLikelihood(b []float64, sigma float64) float64 {
	return r.contribution(point{b, sigma}).log
}
