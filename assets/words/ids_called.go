package words

// This file lists the sentences of readings: how each is told in a list, and why a
// line that was typed is none.

const (
	ReadLeaf         ID = "read_leaf"  // Clock, Limits
	ReadRound        ID = "read_round" // Leaf, Enters, Stops
	ReadAllRound     ID = "read_all_round"
	ReadStepEngine   ID = "read_step_engine_side"    // Clock, Limits
	ReadStepShaft    ID = "read_step_shaft_side"     // Clock, Limits
	ReadStepNone     ID = "read_step_none"           // Clock, Limits
	ReadDialFace     ID = "read_dial_face"           // Clock, Reads
	ReadDialRim      ID = "read_dial_rim"            // Clock, Reads
	ReadRunOutShaft  ID = "read_run_out_shaft_side"  // TIR, On, Low
	ReadRunOutEngine ID = "read_run_out_engine_side" // TIR, On, Low
	ReadOnFace       ID = "read_on_face"
	ReadOnRim        ID = "read_on_rim"
	ReadClearance    ID = "read_clearance" // Where, End, Clock, Limits
	ReadLog          ID = "read_log"
	ReadPilotFreely  ID = "read_pilot_freely"
	ReadPilotForce   ID = "read_pilot_with_force"
	ReadPilotNot     ID = "read_pilot_not"
	EndFore          ID = "end_fore"
	EndAft           ID = "end_aft"
	CalledUnreadable ID = "called_unreadable"  // Text
	CalledNoPlace    ID = "called_no_place"    // Text
	CalledNoLength   ID = "called_no_length"   // Text
	CalledNoPair     ID = "called_no_pair"     // Text
	CalledWrongWay   ID = "called_wrong_way"   // Text
	CalledNoHalf     ID = "called_no_half"     // Text
	CalledNoArc      ID = "called_no_arc"      // Text
	CalledNoColumns  ID = "called_no_columns"  // Text
	CalledNothingYet ID = "called_nothing_yet" // Text
	CalledLine       ID = "called_line"        // Line, Fault
	CalledNoneTaken  ID = "called_none_taken"
	HoldSeated       ID = "hold_seated"
	HoldCentred      ID = "hold_centred"
	HoldHanging      ID = "hold_hanging"
	HoldSnug         ID = "hold_snug"
	HoldBolted       ID = "hold_bolted"
	LiftHow          ID = "lift_how"      // Lift, Hook
	LiftScale        ID = "lift_scale"    // Pull, Unit, Span
	LiftNoScale      ID = "lift_no_scale" // Pull, Unit, Span
	LiftNewton       ID = "lift_newton"
	LiftPound        ID = "lift_pound"
	LiftRule         ID = "lift_rule"   // Rule, Error, Gap
	LiftHeight       ID = "lift_height" // Gap
)
