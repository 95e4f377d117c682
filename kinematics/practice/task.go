package practice

// This file says which boats there are to practise on.

import (
	"fmt"
	"slices"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/rounds"
)

// Grade says what is hidden in the boat.
type Grade string

// The grades, from easy to hard.
const (
	TiltOnly   Grade = "tilt only"
	BothPlanes Grade = "both planes"
	RunOut     Grade = "run-out"
	Burr       Grade = "burr"
	StuckNut   Grade = "stuck nut"
	SoftFoot   Grade = "soft foot"
	AnyFault   Grade = "any fault" // one of those before, and nobody says which
)

// Grades are all of them, the easy ones first.
var Grades = []Grade{TiltOnly, BothPlanes, RunOut, Burr, StuckNut, SoftFoot, AnyFault}

// Numbers is how many boats there are of a grade, counted from 1.
const Numbers = 20

// Task is one boat to practise on.
type Task struct {
	Grade  Grade `json:"grade"`
	Number int   `json:"number"`
}

// Check tells what is wrong with a task; nil: nothing.
func (t Task) Check() error {
	switch {
	case !slices.Contains(Grades, t.Grade):
		return fmt.Errorf("grade %q: must be one of %q", t.Grade, Grades)
	case t.Number < 1 || t.Number > Numbers:
		return fmt.Errorf("number %d: must be 1 to %d", t.Number, Numbers)
	}
	return nil
}

// seed of every task: another would make other boats, and results already kept
// would no longer replay.
const seed = 20260514

// Hull is the one a task is worked on, as drawn.
func (t Task) Hull() (*hulls.Hull, error) {
	if err := t.Check(); err != nil {
		return nil, err
	}
	all, err := rounds.BuiltIn()
	if err != nil {
		return nil, err
	}
	if t.Grade == SoftFoot || t.Grade == AnyFault { // solid feet are shimmed until none is soft, before faces are gauged
		all = slices.DeleteFunc(all, func(h *hulls.Hull) bool { return h.Mounts[0].Kind == hulls.Solid })
	}
	return all[(t.Number-1)%len(all)], nil
}

// boat is the task's, without its fault.
func (t Task) boat() (*rounds.Boat, error) {
	h, err := t.Hull()
	if err != nil {
		return nil, err
	}
	return rounds.NewBoat(seed, t.stream(), h)
}

// stream numbers a task among all.
func (t Task) stream() int { return slices.Index(Grades, t.Grade)*Numbers + t.Number }

// Leaves are the learner's: the usual ones, two together at most, felt as most
// people feel them.
var Leaves = visit.LeafSet{}
