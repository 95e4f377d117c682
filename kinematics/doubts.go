package kinematics

// This file doubts a hull for what only the mechanics can see: a boat that can
// be written down, and yet would be odd on the water.

import (
	"fmt"
	"math"

	"aligner/hulls"
	"aligner/kinematics/shaftline"
)

// WhirlRPM is the shaft's first whirling speed with its front end hinged on an
// engine that does not move, and bolted to it. The true one lies between.
func (d *DriveLine) WhirlRPM() (hinged, bolted float64, err error) {
	m := d.shafts[0][0].model
	if hinged, err = m.WhirlRPM(shaftline.FrontHinged, 1000*gravityMPerS2); err != nil {
		return 0, 0, err
	}
	bolted, err = m.WhirlRPM(shaftline.FrontBolted, 1000*gravityMPerS2)
	return hinged, bolted, err
}

// Doubts looks a hull over by working it out. An error is a hull that cannot
// be worked out at all.
func Doubts(h hulls.Hull) ([]hulls.Fault, error) {
	d, err := Prepare(h)
	if err != nil {
		return nil, err
	}
	var doubts []hulls.Fault
	doubt := func(place, value, limit, mend string) {
		doubts = append(doubts, hulls.Fault{Place: place, Value: value, Limit: limit, Mend: mend})
	}
	if err := d.doubtWhirl(doubt); err != nil {
		return nil, err
	}
	for i, m := range d.engine.mounts {
		if m.solid && m.preloadE[2] <= 0 {
			doubt(fmt.Sprintf("mounts[%d]", i), "a solid foot that carries nothing at rest",
				"every foot carries", "measure the centre of mass and the feet again")
		}
	}
	return doubts, d.doubtRest(doubt)
}

// doubtWhirl compares the first whirling speed, cautiously, with the shaft's.
func (d *DriveLine) doubtWhirl(doubt func(place, value, limit, mend string)) error {
	hinged, bolted, err := d.WhirlRPM()
	if err != nil {
		return err
	}
	if most := d.hull.ShaftSpeedMaxRPM; most > 0 && hinged < most {
		doubt("shaft_speed_max_rpm", fmt.Sprintf("%.0f rpm", most),
			fmt.Sprintf("below the first whirling speed of this shaft, %.0f to %.0f rpm", hinged, bolted),
			"check bearing places, shaft diameter and speed; a whirling shaft breaks things")
	}
	return nil
}

// doubtRest looks at the drawn boat, bolted: the shaft clear of its log and
// every bearing loaded downward.
func (d *DriveLine) doubtRest(doubt func(place, value, limit, mend string)) error {
	var r Result
	if !d.hull.Coupling.BoltedKnown() {
		return nil
	}
	if err := d.Solve(&State{Held: Bolted}, &r); err != nil {
		return err
	}
	if r.LogClearanceMM <= 0 {
		doubt("log", fmt.Sprintf("the shaft presses on it with %.0f N, bolted as drawn", math.Hypot(r.LogForceN[0], r.LogForceN[1])),
			"room all round", "check log.at_mm, log.bore_mm and the offsets")
	}
	for i, f := range r.BearingForceN {
		if !(f[1] > 0) {
			doubt(fmt.Sprintf("bearings[%d]", i), fmt.Sprintf("%s carries %.0f N, bolted as drawn", d.hull.Bearings[i].Name, f[1]),
				"more than 0 N", "a bearing that carries nothing lets the shaft shake; check bearings and offsets")
		}
	}
	return nil
}
