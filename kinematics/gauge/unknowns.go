package gauge

// This file numbers the unknowns: four for each state of the engine, four for
// the run-out of the two halves, one for each seating.

import "math"

const (
	perState = 4 // A, B, y, z
	runOuts  = 4 // shaft half cos, sin; flange cos, sin
)

// numbering places the unknowns in one vector: run-outs, states, seatings.
type numbering struct{ states, seatings int }

func (n numbering) total() int               { return runOuts + perState*n.states + n.seatings }
func (n numbering) state(k int) int          { return runOuts + perState*k }
func (n numbering) seating(s int) int        { return runOuts + perState*n.states + s }
func (n numbering) shaft() int               { return 0 }
func (n numbering) flange() int              { return 2 }
func (n numbering) row() []float64           { return make([]float64, n.total()) }
func (n numbering) unit(i int) (x []float64) { x = n.row(); x[i] = 1; return x }

// turned says how far the halves were turned, as sine and cosine.
type turned struct{ shaftSin, shaftCos, flangeSin, flangeCos float64 }

func turnedBy(shaftDeg, flangeDeg float64) (t turned) {
	t.shaftSin, t.shaftCos = math.Sincos(shaftDeg * math.Pi / 180)
	t.flangeSin, t.flangeCos = math.Sincos(flangeDeg * math.Pi / 180)
	return t
}

// addGap adds to a row c times the cosine part and s times the sine part of the
// whole gap at state k: engine, and the halves as turned, where they are seen.
func (n numbering) addGap(x []float64, k int, t turned, seesShaft, seesFlange bool, c, s float64) {
	i := n.state(k)
	x[i] += c
	x[i+1] += s
	if seesShaft { // low side at f + p: cos(t-f-p) = cos(t-f) cos p + sin(t-f) sin p
		x[n.shaft()] += c*t.shaftCos + s*t.shaftSin
		x[n.shaft()+1] += -c*t.shaftSin + s*t.shaftCos
	}
	if seesFlange {
		x[n.flange()] += c*t.flangeCos + s*t.flangeSin
		x[n.flange()+1] += -c*t.flangeSin + s*t.flangeCos
	}
}

// gapOf is the whole gap [cos, sin] of state k at the unknowns b.
func (n numbering) gapOf(b []float64, k int, t turned) [2]float64 {
	var w [2]float64
	for j, dir := range [2][2]float64{{1, 0}, {0, 1}} {
		x := n.row()
		n.addGap(x, k, t, true, true, dir[0], dir[1])
		for i, v := range x {
			w[j] += v * b[i]
		}
	}
	return w
}
