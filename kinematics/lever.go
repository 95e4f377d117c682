package kinematics

// This file is the engine while it is levered sideways: the mounts being slid
// are slack, and a lever holds their feet.

import (
	"fmt"
	"math"

	"aligner/hulls"
	"aligner/kinematics/shaftline"
)

// A lever shifts an engine in plan: each foot to port by a + b x. Feet whose
// slides ask for more than that by leverMisfitMM are refused; feet nearer
// together than leverSpreadMM along the bed are levered as one.
const (
	leverMisfitMM = 1.0
	leverSpreadMM = 50.0
)

// leverPlan is a shift in plan, a + b x about a mean place.
type leverPlan struct{ meanX, meanS, slope float64 }

// planLevers is the least-squares shift in plan of what each levered mount is
// asked for.
func planLevers(h *hulls.Hull, slideMM []float64, asked func(i int) float64) (p leverPlan) {
	var n, xx, xs float64
	for i, m := range h.Mounts {
		if at(slideMM, i) != 0 {
			n++
			p.meanX += m.AtMM[0]
			p.meanS += asked(i)
		}
	}
	if n == 0 {
		return p
	}
	p.meanX /= n
	p.meanS /= n
	for i, m := range h.Mounts {
		if at(slideMM, i) != 0 {
			x := m.AtMM[0] - p.meanX
			xx += x * x
			xs += x * (asked(i) - p.meanS)
		}
	}
	if xx > leverSpreadMM*leverSpreadMM*n/4 {
		p.slope = xs / xx
	}
	return p
}

func (p leverPlan) footMM(m *hulls.Mount) float64 { return p.meanS + p.slope*(m.AtMM[0]-p.meanX) }

// invalidLevers says which slide a rigid engine cannot follow, or "".
func invalidLevers(h *hulls.Hull, slideMM []float64) string {
	p := planLevers(h, slideMM, func(i int) float64 { return slideMM[i] })
	for i := range h.Mounts {
		m := &h.Mounts[i]
		if s := at(slideMM, i); s != 0 && math.Abs(s-p.footMM(m)) > leverMisfitMM {
			return fmt.Sprintf("%s levered %g mm: the engine is rigid and the other slides put this foot at %.1f mm; slide the two mounts of an end alike",
				m.Name, s, p.footMM(m))
		}
	}
	return ""
}

// setLevers slackens the mounts being slid and puts levers on their feet.
func (d *DriveLine) setLevers(slideMM []float64) {
	p := planLevers(d.hull, slideMM, func(i int) float64 { return slideMM[i] })
	for i := range d.face.seats {
		if s := &d.face.seats[i]; s.slideMM != 0 {
			s.levered = true
			s.footMM = p.footMM(&d.hull.Mounts[i])
			s.aimMM = s.footMM
		}
	}
}

// leverRounds of aiming further leave a levered foot where it belongs to about
// the ratio of rubber to lever stiffness, to this power.
const leverRounds = 3

// lever aims the levers further by what they fell short, and bends again. The
// shortfall is taken in plan too: two feet of one end come a micrometre nearer
// together athwart when the engine turns, which no lever should fight.
func (d *DriveLine) lever(b *bent, slideMM []float64) (status shaftline.Result) {
	short := func(i int) float64 {
		foot := d.engine.bed.toE(d.face.pose.Travel(d.engine.mounts[i].pFM_S))
		return d.face.seats[i].footMM - foot[1]
	}
	for range leverRounds {
		p := planLevers(d.hull, slideMM, short)
		for i := range d.face.seats {
			if s := &d.face.seats[i]; s.levered {
				s.aimMM += p.footMM(&d.hull.Mounts[i])
			}
		}
		status = d.bend(b)
	}
	return status
}
