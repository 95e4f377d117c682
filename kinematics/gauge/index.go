package gauge

// This file is what bolting the halves together in another position would do to
// their run-out: half a turn, a quarter each way.

import "math"

// Indexed is the run-out of both halves together, as total indicator reading in
// mm, with the shaft half turned on the flange by 0, 90, 180 and 270 degrees
// clockwise looking forward. It is what bolts would draw flat once a turn.
func (r *Estimate) Indexed() (tirMM [4]float64) {
	shaft, flange := r.RunOut[0].MeanMM, r.RunOut[1].MeanMM
	for k := range tirMM {
		sin, cos := math.Sincos(float64(k) * math.Pi / 2)
		tirMM[k] = 2 * math.Hypot(shaft[0]*cos-shaft[1]*sin+flange[0], shaft[0]*sin+shaft[1]*cos+flange[1])
	}
	return tirMM
}

// IndexingHelps reports whether one of the halves is untrue, both are known, and
// another position is better than the present one by more than is let pass.
func (r *Estimate) IndexingHelps() bool {
	for _, o := range r.Untold {
		if o.What == WhichHalf {
			return false
		}
	}
	all := r.Indexed()
	return (r.RunOut[0].Untrue || r.RunOut[1].Untrue) && all[0]-min(all[1], all[2], all[3]) > letPassMM
}
