package fields

// This file lays the tape: the two points a number is measured between.

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

// over is a piece of the upright over the shaft at x.
func over(xMM, fromMM, toMM float64) *Tape {
	return &Tape{From: Point{S, [3]float64{xMM, 0, fromMM}}, To: Point{S, [3]float64{xMM, 0, toMM}}}
}
