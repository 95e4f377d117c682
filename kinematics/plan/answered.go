package plan

// This file takes out of a visit what the boat answered to its moves, in the form a
// hull file keeps it, so that the next visit begins with it.

import (
	"fmt"
	"math"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
)

// Answered lists a visit's answers, each told from others by the visit's name. Left
// out is what says nothing of the boat: where something was tightened on the way,
// where a change was too far off to be a matter of tolerances (a stuck nut, a
// misread leaf), where readings cannot be two flat faces.
func Answered(d *visit.Document, name string) ([]hulls.Measured, error) {
	h, afloat := &d.Hull, d.Visit.State.Afloat()
	model, err := gauge.NewModel(h, afloat)
	if err != nil {
		return nil, err
	}
	e, err := model.Estimate(&d.Visit)
	if err != nil {
		return nil, err
	}
	if len(e.States) < 2 || !e.Flat {
		return nil, nil
	}
	p, err := NewPlanner(h, afloat)
	if err != nil {
		return nil, err
	}
	r, err := p.model.At(nil, nil)
	if err != nil {
		return nil, err
	}
	l, err := r.Learn(p.story(e))
	if err != nil {
		return nil, err
	}
	surprising := map[int]bool{}
	for _, s := range l.Surprises {
		surprising[s.Change] = true
	}
	var all []hulls.Measured
	for k := 1; k < len(e.States); k++ {
		was, is := e.States[k-1], e.States[k]
		if is.Fastened || surprising[k-1] || len(is.NutFlats)+len(is.SlideMM) == 0 {
			continue
		}
		all = append(all, hulls.Measured{When: fmt.Sprintf("%s, move %d", name, k), NutFlats: noughtless(is.NutFlats), SlideMM: noughtless(is.SlideMM),
			Held: string(p.model.Held), Afloat: afloat, Before: hulls.FaceGap{CosMM: was.CosMM, SinMM: was.SinMM},
			After: hulls.FaceGap{CosMM: is.CosMM, SinMM: is.SinMM}, ErrorMM: max(errorOfChange(e, k), leastErrorMM)})
	}
	return all, nil
}

// leastErrorMM is the least error an answer is kept with: settling between two
// gaugings, a fifth of a thou.
const leastErrorMM = 0.2 * 0.0254

// errorOfChange is the standard deviation which, in each cosine and sine before and
// after, makes up that of their difference between states k - 1 and k.
func errorOfChange(e *gauge.Estimate, k int) float64 {
	sum := 0.0
	for a := range 2 {
		i, j := 2*(k-1)+a, 2*k+a
		sum += e.StateCovMM2.At(i, i) + e.StateCovMM2.At(j, j) - 2*e.StateCovMM2.At(i, j)
	}
	return math.Sqrt(sum / 4)
}

// noughtless is a table without what was not moved; nil where nothing was.
func noughtless(m map[string]float64) map[string]float64 {
	var left map[string]float64
	for name, v := range m {
		if v != 0 {
			if left == nil {
				left = map[string]float64{}
			}
			left[name] = v
		}
	}
	return left
}
