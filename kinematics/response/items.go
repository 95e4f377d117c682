package response

// This file says what can be moved: nuts one by one, slides by stations.

import (
	"math"
	"slices"

	"aligner/hulls"
)

// StepMM is the step slides are planned in: about what can be held by a rule
// against the clamp (common practice, no source).
const StepMM = 0.25

// Item is one thing that is moved in whole steps.
type Item struct {
	Mounts []int // of the hull: one for a nut, a station for slides
	Slide  bool
	MM     float64 // of one step, + up or to port
}

// abreastMM is how far apart, along the bed, mounts of one station stand.
const abreastMM = 80

// Stations groups mounts that stand abreast, the foremost first; within one,
// in the hull's order.
func Stations(h *hulls.Hull) [][]int {
	order := make([]int, len(h.Mounts))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		switch d := h.Mounts[b].AtMM[0] - h.Mounts[a].AtMM[0]; {
		case d > 0:
			return 1
		case d < 0:
			return -1
		}
		return 0
	})
	var all [][]int
	for _, i := range order {
		n := len(all)
		if n > 0 && math.Abs(h.Mounts[all[n-1][0]].AtMM[0]-h.Mounts[i].AtMM[0]) <= abreastMM {
			all[n-1] = append(all[n-1], i)
			continue
		}
		all = append(all, []int{i})
	}
	for _, s := range all {
		slices.Sort(s)
	}
	return all
}

// Items lists a hull's nuts in its order of mounts, then the slides by
// stations.
func Items(h *hulls.Hull) []Item {
	var all []Item
	for i, m := range h.Mounts {
		all = append(all, Item{Mounts: []int{i}, MM: m.LiftPerStepMM()})
	}
	for _, s := range Stations(h) {
		all = append(all, Item{Mounts: s, Slide: true, MM: StepMM})
	}
	return all
}

// Add adds moves, in steps by item, to lifts and slides by mount.
func Add(items []Item, moves []float64, liftMM, slideMM []float64) {
	for j, it := range items {
		for _, i := range it.Mounts {
			if it.Slide {
				slideMM[i] += moves[j] * it.MM
			} else {
				liftMM[i] += moves[j] * it.MM
			}
		}
	}
}

// MovesOf turns nuts and slides by mount's name into moves by item. A station
// whose mounts were slid unevenly counts by their mean.
func MovesOf(h *hulls.Hull, items []Item, nutFlats, slideMM map[string]float64) []float64 {
	moves := make([]float64, len(items))
	for j, it := range items {
		for _, i := range it.Mounts {
			if it.Slide {
				moves[j] += slideMM[h.Mounts[i].Name] / it.MM / float64(len(it.Mounts))
			} else {
				moves[j] += nutFlats[h.Mounts[i].Name]
			}
		}
	}
	return moves
}
