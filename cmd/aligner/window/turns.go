package window

// This file says a move as arrows at the mounts, for the picture.

import (
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/report/say"
	"aligner/scene"
)

// Turns are the arrows of a move, by mount: steps of nuts or shims, and slides.
// A mount that next names has what is to be done there now, drawn stronger, and
// the rest of the move is left out of it; nil: nothing is next.
func Turns(s words.Speaker, u say.Units, h *hulls.Hull, steps, slidesMM []float64, next *Step) []scene.Turn {
	var turns []scene.Turn
	for i := range h.Mounts {
		t := scene.Turn{Mount: i, Steps: steps[i], SlideMM: slidesMM[i]}
		if next != nil && (next.Steps[i] != 0 || next.SlideMM[i] != 0) {
			t.Steps, t.SlideMM, t.Next = next.Steps[i], next.SlideMM[i], true
		}
		if t.Steps != 0 || t.SlideMM != 0 {
			t.Text = say.TurnMark(s, u, &h.Mounts[i], t.Steps, t.SlideMM)
			turns = append(turns, t)
		}
	}
	return turns
}

// Step is something done at the mounts: steps of nuts or shims and slides.
type Step struct{ Steps, SlideMM []float64 }
