package drawn

// This file says where the shaft touches, for the marks in the picture.

import (
	"math"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/report/say"
	"aligner/scene"
)

// leastTouchN is the force from which a touch is marked: under it, it is the
// rounding of a shaft that lies beside its log.
const leastTouchN = 0.5

// Touches are the places where the shaft presses on its log or a bearing, each
// with its force in words.
func Touches(s words.Speaker, u say.Units, h *hulls.Hull, r *kinematics.Result) []scene.Touch {
	var out []scene.Touch
	if f := math.Hypot(r.LogForceN[0], r.LogForceN[1]); f >= leastTouchN {
		out = append(out, scene.Touch{Bearing: scene.Log, Text: s.Say(words.TouchLog, words.Args{"Force": u.Force(f)})})
	}
	for i := range h.Bearings {
		if f := math.Hypot(r.BearingForceN[i][0], r.BearingForceN[i][1]); f >= leastTouchN {
			out = append(out, scene.Touch{Bearing: i, Text: s.Say(words.TouchBearing, words.Args{"Bearing": h.Bearings[i].Name, "Force": u.Force(f)})})
		}
	}
	return out
}
