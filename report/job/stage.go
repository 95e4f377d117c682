package job

// This file names the stages of a visit and where what is said comes from.

import (
	"slices"

	"aligner/assets/words"
)

// Stage is a part of a visit.
type Stage string

// The stages, in the order of the job.
const (
	LookingOver Stage = "look over"
	Gauging     Stage = "gauge"
	Moving      Stage = "move"
	Fastening   Stage = "fasten"
	HandingOver Stage = "hand over"
)

// Stages are all of them in order.
var Stages = []Stage{LookingOver, Gauging, Moving, Fastening, HandingOver}

// Before reports whether s comes before another stage.
func (s Stage) Before(other Stage) bool { return slices.Index(Stages, s) < slices.Index(Stages, other) }

// Name is what the stage is called.
func (s Stage) Name() Text { return text("stage", string(s), nil) }

// Source is where a check, caution or default comes from.
type Source string

// The sources. Those marked in their sentence as read in extracts were not read
// whole.
const (
	CommonPractice Source = "common practice"
	OwnJudgement   Source = "own judgement"
	FromMemory     Source = "from memory"
	WorkedOut      Source = "worked out"     // by this program, from the hull
	ArmyCraft      Source = "army craft"     // US Army TM 55-1905-219-14 and 220-14
	ArmyShaft      Source = "army shaft"     // US Army TM 55-1905-221-14-3
	ArmyTug        Source = "army tug"       // US Army TM 55-1905-242-14
	GearManual     Source = "gear manual"    // a gearbox maker's manual
	ShipRepair     Source = "ship repair"    // 29 CFR 1915.164
	LockOut        Source = "lock out"       // 29 CFR 1915.89
	SmallCraft     Source = "small craft"    // ABYC and US Coast Guard, in general terms
	HexStandards   Source = "hex standards"  // ASME B18.2.1, B18.2.2; ISO 272, 4014, 4032, 4035
	BoltStandards  Source = "bolt standards" // SAE J429, ISO 898-1
)

// Sources are all of them.
var Sources = []Source{CommonPractice, OwnJudgement, FromMemory, WorkedOut, ArmyCraft, ArmyShaft, ArmyTug,
	GearManual, ShipRepair, LockOut, SmallCraft, HexStandards, BoltStandards}

// Name says the source in words, to stand beside what it is of.
func (s Source) Name() Text { return Text{ID: words.Of("job_source", string(s))} }
