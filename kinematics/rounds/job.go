package rounds

// This file holds what came of one boat.

import "aligner/hulls"

// End says why a job ended.
type End string

// The ways a job ends. Only InLine claims that the boat is.
const (
	InLine     End = "within"            // the verdict, or the lever rule's own readings, say so
	MovesSpent End = "moves used up"     // the most there may be
	NoPlan     End = "no plan"           // the tool found no move
	NotFlat    End = "refused for moves" // readings that allow no move, taken twice
	Failed     End = "failed"            // an error
)

// Job is what came of one boat.
type Job struct {
	Boat     int
	Hull     string
	Layout   hulls.Layout
	Together bool // the positions out of reach lie side by side

	// By move, the state it was found in first: the true spread of the gap that
	// the engine's position gives, and the spread at the marks, run-out and all.
	TrueThou, MarksThou []float64

	End End
	Why string // more about it

	Moves, Flats, Slides             int // slides: mounts slid
	Gaugings, Readings, Again, Burrs int // again: readings asked for again
	OutOfReach                       int // times a leaf was asked for where none goes
	Minutes                          float64
	Given                            []Given
	Planned                          []Given // by move: what the plan promised
}

// Given is a probability of "within" the tool told, and what was true.
type Given struct {
	Moves    int // made by then
	Verdict  string
	P        float64 // that the gap is within the rule
	TrueThou float64
}

// At is the true spread after at most so many moves.
func (j *Job) At(moves int) float64 { return j.TrueThou[min(moves, len(j.TrueThou)-1)] }

// LastTrue is the true spread in the end, LastMarks the one at the marks.
func (j *Job) LastTrue() float64  { return j.TrueThou[len(j.TrueThou)-1] }
func (j *Job) LastMarks() float64 { return j.MarksThou[len(j.MarksThou)-1] }

func (j *Job) ended(end End, why string) {
	j.End, j.Why = end, why
}
