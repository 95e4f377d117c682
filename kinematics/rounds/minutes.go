package rounds

// This file says what the mechanic's time is counted as: common practice, no
// source.

import (
	"math"

	"aligner/hulls"
)

// Minutes of the work at the coupling. A move's come from Settings.MoveMinutes.
const (
	setUpMin   = 5   // shaft seated anew, faces wiped, pushed until they touch
	readingMin = 1   // leaves tried upward at one place until one stops
	trialMin   = 0.5 // one leaf tried at one place
	turnMin    = 2   // shaft and flange turned together, as far as it may be
	cleanMin   = 2   // one place wiped and filed
)

// roughMoveMinutes is what a move takes: getting at each mount, then turning.
func roughMoveMinutes(h *hulls.Hull, nutFlats []int, slideMM []float64) float64 {
	getAt := map[hulls.Reach]float64{hulls.Open: 3, hulls.Awkward: 5, hulls.Blind: 8}
	minutes := 0.0
	for i, m := range h.Mounts {
		if nutFlats[i] == 0 && slideMM[i] == 0 {
			continue
		}
		minutes += getAt[m.Reach] + 0.5*math.Abs(float64(nutFlats[i]))
		if slideMM[i] != 0 {
			minutes += 4
		}
	}
	return minutes
}
