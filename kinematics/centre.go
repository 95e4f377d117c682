package kinematics

// This file is the middle of a parted shaft's free travel: where a block
// should hold its front end.

import (
	"math"

	"aligner/kinematics/shaftline"
)

// middle is [y, z] of the front end half way between its stops, each plane by
// itself: the extremes a straight shaft can reach without pressing on bearing
// or log. Where none fits (bearings out of line by more than their clearance)
// it is where the shaft's own springiness leaves the end when it weighs nothing.
func middle(m *shaftline.Model) ([2]float64, error) {
	var mid [2]float64
	for plane := range mid {
		lo, hi, ok := frontRange(m.Line(), plane)
		if !ok {
			return weightless(m.Line())
		}
		mid[plane] = (lo + hi) / 2
	}
	return mid, nil
}

// gate is a place a straight shaft must pass: |v - off| <= room at x.
type gate struct{ x, off, room float64 }

func gates(l *shaftline.Line, plane int) []gate {
	var g []gate
	for _, b := range l.Bearings {
		for _, end := range [...]float64{-0.5, 0.5} {
			g = append(g, gate{b.AtMM + end*b.LengthMM, b.OffsetMM[plane], b.ClearanceMM / 2})
		}
	}
	for _, p := range l.Lips {
		g = append(g, gate{p.AtMM, p.OffsetMM[plane], p.ClearanceMM / 2})
	}
	return g
}

// frontRange is the least and most travel at x = 0 of a straight line through
// every gate. The extremes touch two gates, so every pair is tried.
func frontRange(l *shaftline.Line, plane int) (lo, hi float64, ok bool) {
	const slack = 1e-9 // mm, so that a line touching two gates passes both
	g := gates(l, plane)
	lo, hi = math.Inf(1), math.Inf(-1)
	for i := range g {
		for j := range i {
			if g[i].x == g[j].x {
				continue
			}
			for _, si := range [...]float64{-1, 1} {
				for _, sj := range [...]float64{-1, 1} {
					vi, vj := g[i].off+si*g[i].room, g[j].off+sj*g[j].room
					slope := (vi - vj) / (g[i].x - g[j].x)
					front := vi - slope*g[i].x
					passes := true
					for _, k := range g {
						if math.Abs(front+slope*k.x-k.off) > k.room+slack {
							passes = false
							break
						}
					}
					if passes {
						lo, hi, ok = min(lo, front), max(hi, front), true
					}
				}
			}
		}
	}
	return lo, hi, ok
}

// weightless is where the front end comes to rest without any weight.
func weightless(l *shaftline.Line) ([2]float64, error) {
	light := *l
	light.WeightNPerMM, light.AftWeightNPerMM, light.Points = 0, 0, nil
	m, err := shaftline.Prepare(light, shaftline.Settings{StationsPerBearing: stationsFine})
	if err != nil {
		return [2]float64{}, err
	}
	st := m.NewState()
	if err := m.Bend(st, shaftline.Free{}, shaftline.Limits{}).Err(); err != nil {
		return [2]float64{}, err
	}
	q := m.Front(st)
	return [2]float64{q[0], q[2]}, nil
}
