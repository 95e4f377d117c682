package plan

// This file is the plan and what it is asked with.

import (
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/response"
)

// Settings say what is wanted.
type Settings struct {
	Wanted float64 // probability to keep the rule after the move; 0: 0.9
	Effort *Effort // nil: DefaultEffort
	// MostNodes bounds the search for the wanted probability; 0: about a second.
	MostNodes int
	// Since are moves made after the gauging that the estimate is of, which the
	// visit given does not hold: the plan is then for what is left to do. nil:
	// none.
	Since []visit.Move
}

// DefaultWanted is the probability wanted unless another is set.
const DefaultWanted = 0.9

// Status says how the planning ended.
type Status string

// A plan is Found with the wanted probability; or Unsure, the surest there is,
// with less; or there is None in range; or Nothing is to be done, the gap being
// within with the wanted probability; or the readings are NotForMoves.
const (
	Found       Status = "found"
	Unsure      Status = "unsure"
	None        Status = "none"
	Nothing     Status = "nothing to do"
	NotForMoves Status = "not for moves"
)

// Plan is what to do. Moves, NutFlats and SlideMM are nought unless Found or
// Unsure.
type Plan struct {
	Status Status
	Wanted float64
	WhyNot gauge.Refusal // NotForMoves: of the estimate's

	Items    []response.Item
	Moves    []int     // by item
	NutFlats []int     // by mount of the hull
	SlideMM  []float64 // by mount
	Minutes  float64

	// Present is the gap now, as all gaugings and moves of the visit together
	// tell it; Expected that after the move.
	Present, Expected gauge.Gaussian
	Probability       float64 // of keeping the rule after it
	// Settled is the surest the search was told to be, where Unsure.
	Settled float64

	Steps      []Step
	DrawBackMM float64 // how far to draw the shaft back before moving anything

	Learnt   *response.Learnt
	Binding  []Binding
	Freeing  []Freeing
	Warnings []Warning
	Nodes    int
	Complete bool // the searches ran to their end
}

// Binding is something that stops a move.
type Binding struct {
	What   Limit
	Mounts []int
	// MM is how far the move would have to go past it; 0 where that says nothing.
	MM float64
}

// Limit is a kind of it.
type Limit string

// What may stop a move.
const (
	ThreadUp     Limit = "thread up"
	ThreadDown   Limit = "thread down"
	SlideLimit   Limit = "slide"
	NutNotFree   Limit = "nut not free"
	SlideNotFree Limit = "slide not free"
	LoadLimit    Limit = "mount load"
	LogLimit     Limit = "log"
	BearingLimit Limit = "bearing"
	RunOutLimit  Limit = "run-out"
)

// Freeing is what would make a move possible.
type Freeing struct {
	How    Way
	Mounts []int
	MM     float64 // of a plate, with its sign: + under the mounts, - taken out
}

// Way is a kind of it.
type Way string

// What may make a move possible.
const (
	PlateUnder  Way = "plate under"
	FreeTheNut  Way = "free the nut"
	FreeSlides  Way = "free the slides"
	CureRunOut  Way = "cure run-out"
	EvenLoads   Way = "even the loads"
	NewBrackets Way = "new brackets"
)

// Warning is a doubt about the move itself.
type Warning struct {
	What  Limit
	Name  string // of a bearing
	Value float64
}

// Planner is a hull made ready for plans. It is not changed by them, so it may
// be shared.
type Planner struct {
	hull  *hulls.Hull
	model *response.Model
	drawn *response.Response
	loads loads
}
