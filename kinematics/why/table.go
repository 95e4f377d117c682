package why

// This file is the table of a boat: what one flat of each nut does, and one mm of
// each slide, with how sure that is.

import (
	"math"

	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/response"
)

// Row is one nut, or the mounts of one end slid together.
type Row struct {
	Move
	// Change of the gap per flat (or shim, or mm), [A, B], and its error, one
	// standard deviation each.
	Change, SD [2]float64
	FaceMM     [2]float64 // how the face centre goes, [y, z]
	// Hardly: the change is under twice its error, so another nut is better.
	Hardly bool
}

// SlideMM is what a slide's row is of.
const SlideMM = 1.0

// Table is every nut and slide of a boat as she is drawn.
func Table(h *hulls.Hull, held kinematics.Held, afloat bool) ([]Row, error) {
	m, err := response.NewModel(h, held, afloat)
	if err != nil {
		return nil, err
	}
	r, err := m.At(nil, nil)
	if err != nil {
		return nil, err
	}
	d, err := kinematics.Prepare(*h)
	if err != nil {
		return nil, err
	}
	var rows []Row
	for j, it := range r.Items {
		row := Row{Move: Move{Mounts: it.Mounts, Slide: it.Slide, Steps: 1}}
		per := 1.0
		if it.Slide {
			row.Steps, per = SlideMM, SlideMM/it.MM
		}
		for i := range 2 {
			row.Change[i] = r.Mean[2*j+i] * per
			row.SD[i] = math.Sqrt(r.Cov.At(2*j+i, 2*j+i)) * per
		}
		size := math.Hypot(row.Change[0], row.Change[1])
		row.Hardly = size < 2*math.Hypot(row.SD[0], row.SD[1])
		w, err := With(d, h, kinematics.State{Held: held, Afloat: afloat}, row.Move)
		if err != nil {
			return nil, err
		}
		row.FaceMM = w.FaceMM
		rows = append(rows, row)
	}
	return rows, nil
}

// SpreadMM is the change between opposite sides.
func (r *Row) SpreadMM() float64 { return 2 * math.Hypot(r.Change[0], r.Change[1]) }

// OpensAtDeg is where it opens, clockwise from 12 looking forward, in [0, 360).
func (r *Row) OpensAtDeg() float64 {
	return math.Mod(360+math.Atan2(r.Change[1], r.Change[0])*180/math.Pi, 360)
}
