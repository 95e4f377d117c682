package kinematics

// This file says what a move did to the gap, in parts that add up.

import "math"

// Effect is the change of a gap from one answer to another, as a difference
// across the faces: at Hour, less at the hour opposite.
type Effect struct {
	Hour    int     // where it changed most: 10, 11, 12, 1, 2 or 3 o'clock
	TotalMM float64 // open positive; the sum of the parts
	TiltMM  float64 // the engine's own rotation
	SwingMM float64 // the shaft swung by its front end
	RestMM  float64 // sag and run-out, where those changed
	// CouplingMM is how far the face centre moved, [y, z].
	CouplingMM [2]float64
}

// EffectBetween compares two answers of one drive line, both with a gap.
func EffectBetween(before, after *Result) Effect {
	change := func(a, b [2]float64) [2]float64 { return [2]float64{b[0] - a[0], b[1] - a[1]} }
	total := [2]float64{after.Gap.CosMM - before.Gap.CosMM, after.Gap.SinMM - before.Gap.SinMM}
	tilt := change(before.Parts.Tilt, after.Parts.Tilt)
	swing := change(before.Parts.Swing, after.Parts.Swing)
	e := Effect{Hour: upperHour(total), CouplingMM: [2]float64{
		after.TranslationMM[1] - before.TranslationMM[1],
		after.TranslationMM[2] - before.TranslationMM[2]}}
	sin, cos := math.Sincos(float64(e.Hour) * math.Pi / 6)
	across := func(v [2]float64) float64 { return 2 * (v[0]*cos + v[1]*sin) }
	e.TotalMM, e.TiltMM, e.SwingMM = across(total), across(tilt), across(swing)
	e.RestMM = e.TotalMM - e.TiltMM - e.SwingMM
	return e
}

// upperHour is the hour, 10 to 3, in whose direction or against it a change
// [cos, sin] is largest.
func upperHour(v [2]float64) int {
	hour := int(math.Round(math.Atan2(v[1], v[0])/(math.Pi/6))) + 12 // 6 to 18
	hour %= 6                                                        // 0 to 5, as 12 or 6, 1 or 7, ...
	if hour <= 3 {
		if hour == 0 {
			return 12
		}
		return hour
	}
	return hour + 6 // 4 is 10 over the other side, 5 is 11
}
