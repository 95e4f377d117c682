package say

// This file says what has been done to nuts and slides.

import (
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
)

// Move says nut steps (flats; shims for solid feet) and slides, by mount:
// "fore port up 2 flats, aft port 1.5 mm to starboard". Nothing done is "".
func Move(s words.Speaker, u Units, h *hulls.Hull, steps, slidesMM []float64) string {
	var parts []string
	for i := range h.Mounts {
		if i < len(steps) && steps[i] != 0 {
			parts = append(parts, nut(s, u, &h.Mounts[i], steps[i]))
		}
		if i < len(slidesMM) && slidesMM[i] != 0 {
			id := words.SlidToPort
			if slidesMM[i] < 0 {
				id = words.SlidToStarboard
			}
			parts = append(parts, s.Say(id, words.Args{"Mount": h.Mounts[i].Name, "Length": u.Plain(math.Abs(slidesMM[i]), 2) + " mm"}))
		}
	}
	return strings.Join(parts, ", ")
}

// nut says one nut's turn.
func nut(s words.Speaker, u Units, m *hulls.Mount, steps float64) string {
	id := words.NutUp
	if steps < 0 {
		id = words.NutDown
	}
	return s.Say(id, words.Args{"Mount": m.Name, "Steps": Steps(s, u, m, math.Abs(steps))})
}

// Steps says a number of flats, or of shims for a solid foot.
func Steps(s words.Speaker, u Units, m *hulls.Mount, n float64) string {
	id := words.Flats
	if m.Kind == hulls.Solid {
		id = words.Shims
	}
	// One and a half flats are said in the plural.
	count := 2
	if n == 1 {
		count = 1
	}
	return s.Say(id, words.Args{"Count": count, "Number": u.Plain(n, 2)})
}
