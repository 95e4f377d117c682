package plan

// This file says what a move costs, in minutes of a mechanic's time: our own
// judgement, meant to be set by whoever knows his yard better.

import (
	"aligner/hulls"
	"aligner/kinematics/response"
)

// Effort is the price list.
type Effort struct {
	Reach    map[hulls.Reach]float64 // for each mount touched: jam nut off and on again
	Flat     map[hulls.Reach]float64 // for each flat or shim
	Slide    float64                 // for each station slid, beside its mounts' reach: clamps, lever
	SlideMM  float64                 // for each mm
	Gauging  float64                 // shaft seated or centred anew
	Reading  float64                 // one place round the rim
	TurnOver float64                 // both halves turned and seated again, beside the readings
}

// DefaultEffort is the one used unless another is set.
var DefaultEffort = Effort{
	Reach:    map[hulls.Reach]float64{hulls.Open: 3, hulls.Awkward: 5, hulls.Blind: 8},
	Flat:     map[hulls.Reach]float64{hulls.Open: 0.2, hulls.Awkward: 0.3, hulls.Blind: 0.5},
	Slide:    6,
	SlideMM:  1,
	Gauging:  4,
	Reading:  0.5,
	TurnOver: 2,
}

// item prices one item: what touching it costs, and each step.
func (e *Effort) item(h *hulls.Hull, it response.Item) (fixed, each float64) {
	for _, i := range it.Mounts {
		fixed += e.Reach[h.Mounts[i].Reach]
	}
	if it.Slide {
		return fixed + e.Slide, e.SlideMM * it.MM
	}
	return fixed, e.Flat[h.Mounts[it.Mounts[0]].Reach]
}

// Minutes prices moves, in steps by item.
func (e *Effort) Minutes(h *hulls.Hull, items []response.Item, moves []float64) float64 {
	sum := 0.0
	for j, m := range moves {
		if m != 0 {
			fixed, each := e.item(h, items[j])
			sum += fixed + each*max(m, -m)
		}
	}
	return sum
}
