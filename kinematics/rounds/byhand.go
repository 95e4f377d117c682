package rounds

// This file is the mechanic who works by the lever rule: mid readings, a plane
// through them, the rule's move, again.

import (
	"fmt"
	"math"
	"math/rand/v2"

	"aligner/hulls/visit"
)

const (
	limitThou   = 3
	slideStepMM = 0.25
	// oddThou is how far a mid reading may lie from the plane through all of
	// them before a careful mechanic wipes there and reads again.
	oddThou = 1.5
)

// ByLever lets a mechanic line a boat up by the lever rule. A plain one gauges
// at the marks. A careful one also turns shaft and flange half round each time
// and takes the mean, which takes run-out out, and reads again what does not lie
// in a plane.
func ByLever(b *Boat, careful bool, r *rand.Rand, s Settings) (Job, error) {
	s = s.filled()
	y, err := newYard(b, r)
	if err != nil {
		return Job{}, err
	}
	for {
		cos, sin, err := y.gaugeByHand(careful)
		if err != nil {
			return y.job, err
		}
		if 2*math.Hypot(cos, sin) <= limitThou {
			y.job.ended(InLine, "")
			return y.job, nil
		}
		if y.job.Moves == s.MostLeverMoves {
			y.job.ended(MovesSpent, "")
			return y.job, nil
		}
		flats, slides := LeverPlan(b.Nominal, SlopesOf(cos*mmPerThou, sin*mmPerThou, b.Nominal.Coupling.OuterDiameterMM), slideStepMM)
		y.keepInRange(flats, slides)
		if nothing(flats, slides) {
			y.job.ended(NoPlan, "the rule's move rounds to none, or ends of nuts and slides are reached")
			return y.job, nil
		}
		if err := y.move(flats, slides); err != nil {
			return y.job, err
		}
	}
}

// keepInRange cuts a move where a nut or a slide would leave its range, which
// counts from how the boat was found.
func (y *yard) keepInRange(flats []int, slideMM []float64) {
	for i, m := range y.boat.Nominal.Mounts {
		step := m.LiftPerStepMM()
		up := y.liftMM[i] - y.boat.LiftMM[i] // done so far
		flats[i] = min(max(flats[i], int(math.Ceil((m.NutRangeMM[0]-up)/step))), int((m.NutRangeMM[1]-up)/step))
		port := y.slideMM[i] - y.boat.SlideMM[i]
		slideMM[i] = min(max(slideMM[i], m.SlideRangeMM[0]-port), m.SlideRangeMM[1]-port)
	}
}

func nothing(flats []int, slideMM []float64) bool {
	for i := range flats {
		if flats[i] != 0 || slideMM[i] != 0 {
			return false
		}
	}
	return true
}

// gaugeByHand is the gap's cos and sin as the mechanic works them out, in thou.
func (y *yard) gaugeByHand(careful bool) (cos, sin float64, err error) {
	cos, sin, err = y.planeAt(0, careful)
	if err != nil || !careful {
		return cos, sin, err
	}
	cos2, sin2, err := y.planeAt(180, careful)
	return (cos + cos2) / 2, (sin + sin2) / 2, err
}

// planeAt gauges with shaft and flange turned so far and lays a plane through
// the mid readings.
func (y *yard) planeAt(turnDeg float64, careful bool) (cos, sin float64, err error) {
	if err := y.gaugeAll(turnDeg, turnDeg); err != nil {
		return 0, 0, err
	}
	for again := false; ; again = true {
		clock, mids := Middles(y.visit.Events[y.last()].Gauging)
		g0, c, s, ok := FitGap(clock, mids)
		if !ok {
			return 0, 0, fmt.Errorf("boat %d: no plane through %d readings", y.boat.Number, len(mids))
		}
		worst, off := -1, oddThou
		for i, deg := range clock {
			sin, cos := math.Sincos(deg * math.Pi / 180)
			if d := math.Abs(mids[i] - g0 - c*cos - s*sin); d > off {
				worst, off = i, d
			}
		}
		if !careful || again || worst < 0 {
			return c, s, nil
		}
		// The old reading is struck out.
		g := y.visit.Events[y.last()].Gauging
		g.Readings = append(g.Readings[:worst:worst], g.Readings[worst+1:]...)
		if err := y.readAgain(y.last(), clock[worst]); err != nil {
			return 0, 0, err
		}
	}
}

// Middles are the readings of a gauging as single numbers, in thou: half way
// between the leaf that goes and the one that stops.
func Middles(g *visit.Gauging) (clockDeg, mids []float64) {
	for _, r := range g.Readings {
		leaf := r.(visit.Leaf) // the yard takes no others
		goes := leaf.Goes.Thou()
		stops := goes + 1
		if leaf.Stops.Given() {
			stops = leaf.Stops.Thou()
		}
		clockDeg = append(clockDeg, leaf.ClockDeg)
		mids = append(mids, (goes+stops)/2)
	}
	return clockDeg, mids
}
