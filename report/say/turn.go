package say

// This file says what the hand does at a mount: how many flats and which way
// round, seen from above the nut; shims; slides.
//
// The adjusting nut sits under the foot on a stud that stands fast and has a
// right-hand thread, so it climbs, and raises the engine, when it is turned
// anticlockwise as seen from above.

import (
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
)

// Turns say what to do at each mount that has something to be done, in the
// hull's order: "fore port: 2 flats up, anticlockwise seen from above".
func Turns(s words.Speaker, u Units, h *hulls.Hull, steps, slidesMM []float64) []string {
	var lines []string
	for i := range h.Mounts {
		if steps[i] != 0 || slidesMM[i] != 0 {
			lines = append(lines, Turn(s, u, &h.Mounts[i], steps[i], slidesMM[i]))
		}
	}
	return lines
}

// Turn is the same of one mount.
func Turn(s words.Speaker, u Units, m *hulls.Mount, steps, slideMM float64) string {
	return s.Say(words.TurnAt, words.Args{"Mount": m.Name, "What": strings.Join(turnParts(s, u, m, steps, slideMM), ", ")})
}

// TurnMark is the same on several short lines, for a picture.
func TurnMark(s words.Speaker, u Units, m *hulls.Mount, steps, slideMM float64) string {
	return strings.Join(append([]string{s.Part(m.Name)}, turnParts(s, u, m, steps, slideMM)...), "\n")
}

func turnParts(s words.Speaker, u Units, m *hulls.Mount, steps, slideMM float64) []string {
	var parts []string
	if steps != 0 {
		args := words.Args{"Steps": Steps(s, u, m, math.Abs(steps))}
		ids := [2]words.ID{words.TurnStepsUp, words.TurnAnticlockwise}
		switch {
		case m.Kind == hulls.Solid && steps > 0:
			ids = [2]words.ID{words.TurnShimsIn}
		case m.Kind == hulls.Solid:
			ids = [2]words.ID{words.TurnShimsOut}
		case steps < 0:
			ids = [2]words.ID{words.TurnStepsDown, words.TurnClockwise}
		}
		for _, id := range ids {
			if id != "" {
				parts = append(parts, s.Say(id, args))
			}
		}
	}
	if slideMM != 0 {
		id := words.TurnSlidePort
		if slideMM < 0 {
			id = words.TurnSlideStarboard
		}
		parts = append(parts, s.Say(id, words.Args{"Length": u.Plain(math.Abs(slideMM), 2) + " mm"}))
	}
	return parts
}
