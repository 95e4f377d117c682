package rounds

// This file says what the mechanic's time is counted as. The planner's own price
// list holds for everybody, so that minutes saved are not minutes priced
// otherwise; what it has no price for is our own judgement.

import (
	"aligner/hulls"
	"aligner/kinematics/plan"
	"aligner/kinematics/response"
)

// Minutes of the work at the coupling.
var (
	setUpMin   = plan.DefaultEffort.Gauging     // shaft seated anew, faces wiped, pushed until they touch
	readingMin = plan.DefaultEffort.Reading     // leaves tried upward at one place until one stops
	trialMin   = plan.DefaultEffort.Reading / 2 // one leaf tried at one place
	turnMin    = plan.DefaultEffort.TurnOver    // shaft and flange turned together
)

// cleanMin is one place wiped and filed.
const cleanMin = 2

// moveMinutes prices a move, whoever made it.
func moveMinutes(h *hulls.Hull, nutFlats []int, slideMM []float64) float64 {
	items := response.Items(h)
	nuts, slides := map[string]float64{}, map[string]float64{}
	for i, m := range h.Mounts {
		nuts[m.Name], slides[m.Name] = float64(nutFlats[i]), slideMM[i]
	}
	return plan.DefaultEffort.Minutes(h, items, response.MovesOf(h, items, nuts, slides))
}

// fastenMin is one mount's jam nut tightened: it must be got at like any nut.
func fastenMin(r hulls.Reach) float64 { return plan.DefaultEffort.Reach[r] }
