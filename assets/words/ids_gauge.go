package words

// This file lists the sentences of estimates; they stand in gauge.en.json.
// Reasons, causes and the like are also found by package gauge's own words, see
// Of: "cause_burr" for its "burr".

const (
	HelpEstimate ID = "help_estimate"
	HelpVisit    ID = "help_visit"

	NoVisit         ID = "no_visit"
	NoVisitLimit    ID = "no_visit_limit" // Known
	NoVisitMend     ID = "no_visit_mend"
	CheckVisitOk    ID = "check_visit_ok"  // File, Hull, Date, Gaugings, Readings, Moves
	EstimateTitle   ID = "estimate_title"  // Hull, Date, Held, Boat
	EstimateGap     ID = "estimate_gap"    // Gap, Error, Opens, Place
	EstimateFlat    ID = "estimate_flat"   // Gap
	EstimateTarget  ID = "estimate_target" // Gap, Opens, Reason
	RuleLine        ID = "rule_line"       // Named, Limits, Limit
	RuleDefault     ID = "rule_default"    //
	VerdictLine     ID = "verdict_line"    // Verdict, Chance
	NothingGauged   ID = "nothing_gauged"  //
	NotSinceMove    ID = "not_since_move"  //
	TightenedSince  ID = "tightened_since"
	RunOutLine      ID = "run_out_line"   // Half, TIR, Opens
	RunOutUntrue    ID = "run_out_untrue" // Half, TIR, Opens
	RunOutOne       ID = "run_out_one"
	NoGapGauged     ID = "no_gap_gauged"
	NotTouching     ID = "not_touching"   // Least, Event
	OddAlone        ID = "odd_alone"      // Place, Event, Off, Causes
	OddOneOf        ID = "odd_one_of"     // Places, Causes
	OddLess         ID = "odd_less"       // Gap
	OddMore         ID = "odd_more"       // Gap
	UntoldLine      ID = "untold_line"    // What
	SetAsideLine    ID = "set_aside_line" // Event, Why
	RefusedLine     ID = "refused_line"   // Why
	NextLeaf        ID = "next_leaf"      // Leaf, Place
	NextAgain       ID = "next_again"     // Place
	NextAllAgain    ID = "next_all_again"
	NextOffset      ID = "next_offset"
	RefusalNoOffset ID = "refusal_no_offset"
	EstimateUnsure  ID = "estimate_unsure"
	NextGaps        ID = "next_gaps"
	NextTurn        ID = "next_turn"        // Shaft, Flange
	NextNone        ID = "next_none"        //
	ChanceUnder     ID = "chance_under"     //
	ChanceOver      ID = "chance_over"      //
	ChanceIn100     ID = "chance_in_100"    // Number
	ClockPlace      ID = "clock_place"      // Clock, Side
	LookOverFailed  ID = "look_over_failed" // Check
)

const (
	Gaugings                    ID = "gaugings"
	Readings                    ID = "readings"
	MovesMade                   ID = "moves"
	VerdictWithin               ID = "verdict_within"
	VerdictOutside              ID = "verdict_outside"
	VerdictCannotTellYet        ID = "verdict_cannot_tell_yet"
	HalfShaft                   ID = "half_shaft"
	HalfFlange                  ID = "half_flange"
	CauseBurr                   ID = "cause_burr"
	CauseNotFullyIn             ID = "cause_not_fully_in"
	CauseMisread                ID = "cause_misread"
	CauseShaftMoved             ID = "cause_shaft_moved"
	CausePilotBound             ID = "cause_pilot_bound"
	UntoldEngineOrRunOut        ID = "untold_engine_or_run_out"
	UntoldWhichHalf             ID = "untold_which_half"
	UntoldOneDirection          ID = "untold_one_direction"
	UntoldOffset                ID = "untold_offset"
	UntoldSwingOfTheOffset      ID = "untold_swing_of_the_offset"
	AsideNotHeld                ID = "aside_not_held"
	AsideBoltsIn                ID = "aside_bolts_in"
	AsideLeverOn                ID = "aside_lever_on"
	AsidePilotIn                ID = "aside_pilot_in"
	AsideNoSuchRoom             ID = "aside_no_such_room"
	AsideOnlyNoted              ID = "aside_only_noted"
	AsideReadAgain              ID = "aside_read_again"
	AsideNotSeatable            ID = "aside_not_seatable"
	RefusalNotFlat              ID = "refusal_not_flat"
	RefusalTakeAgain            ID = "refusal_take_again"
	RefusalTooFew               ID = "refusal_too_few"
	RefusalOneSided             ID = "refusal_one_sided"
	LimitsLargestGap            ID = "limits_largest_gap"
	LimitsDifferenceAcross      ID = "limits_difference_across"
	LimitsPerInchOfFaceDiameter ID = "limits_per_inch_of_face_diameter"
)
