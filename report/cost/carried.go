package cost

// This file is whether every bearing is pressed downward, and how evenly the mounts
// share the engine over a turn.

import (
	"math"

	"aligner/hulls"
	"aligner/kinematics"
)

// restsFrom is the part of what a bearing carries lined up from which the shaft still
// rests in it (own judgement): under it, it lies loose.
const restsFrom = 0.1

// carries is the bearing worst off: with the engine aligned a shaft should press on
// every bearing from above (common practice, no source); one it lies loose in lets it
// knock, one it presses on from below wears at its top.
func (c *Costs) carries(h *hulls.Hull, lined *kinematics.Result) {
	worst, at := math.Inf(1), -1
	for i := range h.Bearings {
		// What is carried is counted in parts of what it should be.
		if share := c.Turn.MeanN[i][1] / max(lined.BearingForceN[i][1], leastLoadN); share < worst {
			worst, at = share, i
		}
	}
	if at < 0 {
		return
	}
	i := Item{Part: Carries, Grade: Nothing, Sure: WorkedOut, Bearing: h.Bearings[at].Name, LoadN: c.Turn.MeanN[at][1], CarriedN: lined.BearingForceN[at][1]}
	switch {
	case worst <= -restsFrom:
		i.Grade = Wears
	case worst < restsFrom:
		i.Grade = Little
	}
	c.Items = append(c.Items, i)
}

// Parts of what a mount carries lined up from which its load has changed by a little,
// and by so much that its rubber settles otherwise; and the part from which its going
// to and fro once a turn is told (own judgement, all three).
const (
	littleOfMount, wearsOfMount = 0.15, 0.5
	rocksFrom                   = 0.05
)

// mounts are the one whose load has changed most, and the one that is rocked most.
func (c *Costs) mounts(h *hulls.Hull) {
	changed, rocked := -1, -1
	var change, rock float64
	share := func(n float64, m int) float64 { return math.Abs(n) / max(math.Abs(c.Turn.MountLinedN[m]), leastLoadN) }
	for m := range h.Mounts {
		if s := share(c.Turn.MountMeanN[m]-c.Turn.MountLinedN[m], m); changed < 0 || s > change {
			changed, change = m, s
		}
		if s := share(c.Turn.MountSwingN[m], m); rocked < 0 || s > rock {
			rocked, rock = m, s
		}
	}
	if changed < 0 {
		return
	}
	i := Item{Part: Mounts, Grade: Nothing, Sure: WorkedOut, Mount: h.Mounts[changed].Name, LoadN: c.Turn.MountMeanN[changed], CarriedN: c.Turn.MountLinedN[changed]}
	switch {
	case change >= wearsOfMount:
		i.Grade = Wears
	case change >= littleOfMount:
		i.Grade = Little
	}
	c.Items = append(c.Items, i)
	if rock >= rocksFrom {
		c.Items = append(c.Items, Item{Part: Rocking, Grade: Little, Sure: WorkedOut, Mount: h.Mounts[rocked].Name,
			LoadN: c.Turn.MountSwingN[rocked], CarriedN: c.Turn.MountLinedN[rocked]})
	}
}
