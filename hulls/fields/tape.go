package fields

// This file lays the tape: the two points a number is measured between.

import (
	"cmp"
	"slices"

	"aligner/hulls"
)

// axis runs along one axis of E to a point, from where that coordinate is nought:
// sighted from the middle of the faces along the bed, athwart, then up.
func axis(toMM [3]float64, k int) *Tape {
	from := toMM
	from[k] = 0
	t := &Tape{From: Point{E, from}, To: Point{E, toMM}, Sight: []Point{{Frame: E}}}
	at := [3]float64{}
	for i := range from {
		if at[i] = from[i]; from[i] != 0 {
			t.Sight = append(t.Sight, Point{E, at})
		}
	}
	return t
}

// reach runs from a point along one axis of E, by a travel.
func reach(fromMM [3]float64, k int, byMM float64) *Tape {
	to := fromMM
	to[k] += byMM
	return &Tape{From: Point{E, fromMM}, To: Point{E, to}}
}

// along runs along the shaft, or the bed.
func along(f Frame, fromMM, toMM float64) *Tape {
	return &Tape{From: Point{f, [3]float64{fromMM}}, To: Point{f, [3]float64{toMM}}}
}

// across is a diameter at x, from starboard to port.
func across(xMM, diameterMM float64) *Tape {
	return &Tape{From: Point{S, [3]float64{xMM, -diameterMM / 2, 0}}, To: Point{S, [3]float64{xMM, diameterMM / 2, 0}}}
}

// clearShaft is the middle of the longest piece of shaft that nothing stands round.
func clearShaft(h *hulls.Hull) float64 {
	type span struct{ fore, aft float64 }
	round := []span{{0, -h.Coupling.ShaftHalfLengthMM}, {h.Log.AtMM + h.Log.LengthMM/2, h.Log.AtMM - h.Log.LengthMM/2}, {h.Propeller.AtMM, -h.Shaft.LengthMM}}
	for _, b := range h.Bearings {
		round = append(round, span{b.AtMM + b.LengthMM/2, b.AtMM - b.LengthMM/2})
	}
	if b := h.StuffingBox; b != nil { // and its hose, to the log
		round = append(round, span{b.AtMM + 2*h.Shaft.DiameterMM, h.Log.AtMM})
	}
	slices.SortFunc(round, func(a, b span) int { return cmp.Compare(b.fore, a.fore) })
	at, long, from := 0.0, 0.0, 0.0
	for _, s := range round {
		if clear := from - s.fore; clear > long {
			at, long = from-clear/2, clear
		}
		from = min(from, s.aft)
	}
	return at
}

// over is a piece of the upright over the shaft at x.
func over(xMM, fromMM, toMM float64) *Tape {
	return &Tape{From: Point{S, [3]float64{xMM, 0, fromMM}}, To: Point{S, [3]float64{xMM, 0, toMM}}}
}
