package rounds

// This file is the textbook lever rule: the engine as a rigid bar that is swung
// about the coupling.
//
//	                    move = slope d - e
//	        face           |
//	  ------|==============|=========   d forward of the face
//	  shaft   e engine high
//
// It knows nothing of rubber, of the shaft's own swing, of run-out.

import (
	"math"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls"
)

// Slopes are how far the engine's axis leans from the shaft's, mm per mm: Up
// rising aft, which opens the top; Starboard likewise, which opens starboard.
type Slopes struct{ Up, Starboard float64 }

// SlopesOf are the slopes of a gap g0 + cos cos t + sin sin t on faces of a
// diameter, clock angle t looking forward.
func SlopesOf(cosMM, sinMM, diameterMM float64) Slopes {
	return Slopes{Up: 2 * cosMM / diameterMM, Starboard: 2 * sinMM / diameterMM}
}

// LeverMove is how far the engine is to be moved at a place forward of the face:
// up with the slope up and the height it stands high at the face, to starboard
// with the slope to starboard and how far it stands to starboard there. Any one
// unit of length will do.
func LeverMove(slope, forward, off float64) float64 { return slope*forward - off }

// LeverPlan is the rule's move of every mount of a hull, the coupling taken as
// centred because the pilot has entered: nuts in whole steps, slides in whole
// parts of slideStepMM, + to port.
func LeverPlan(h *hulls.Hull, s Slopes, slideStepMM float64) (flats []int, slideMM []float64) {
	sin, cos := math.Sincos(h.Engine.DownAngleDeg * math.Pi / 180)
	for _, m := range h.Mounts {
		forward := m.AtMM[0]*cos + m.AtMM[2]*sin
		// The stud leans by the down angle, so it takes a little more travel.
		lift := LeverMove(s.Up, forward, 0) / cos
		flats = append(flats, int(math.Round(lift/m.LiftPerStepMM())))
		port := -LeverMove(s.Starboard, forward, 0)
		slideMM = append(slideMM, math.Round(port/slideStepMM)*slideStepMM)
	}
	return flats, slideMM
}

// FitGap fits g0 + cos cos t + sin sin t to gaps at clock positions by least
// squares. It fails on fewer than three places.
func FitGap(clockDeg, gap []float64) (g0, cos, sin float64, ok bool) {
	if len(clockDeg) < 3 {
		return 0, 0, 0, false
	}
	rows := mat.NewDense(len(gap), 3, nil)
	for i, deg := range clockDeg {
		s, c := math.Sincos(deg * math.Pi / 180)
		rows.SetRow(i, []float64{1, c, s})
	}
	var x mat.VecDense
	if err := x.SolveVec(rows, mat.NewVecDense(len(gap), gap)); err != nil {
		return 0, 0, 0, false
	}
	return x.AtVec(0), x.AtVec(1), x.AtVec(2), true
}
