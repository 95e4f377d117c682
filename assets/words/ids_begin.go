package words

// This file lists the sentences of the beginning of a visit: the boat's state,
// leaves, rule, target, and what stands where nothing is said.

const (
	StageBegin        ID = "stage_begin"
	BeginCautions     ID = "begin_cautions"
	BeginMinded       ID = "begin_minded"
	BeginMindedLine   ID = "begin_minded_line"
	BeginShowAgain    ID = "begin_show_again"
	BeginBoat         ID = "begin_boat"
	BeginWhere        ID = "begin_where"
	BeginHours        ID = "begin_hours"
	BeginFuel         ID = "begin_fuel"
	BeginBallast      ID = "begin_ballast"
	BeginRig          ID = "begin_rig"
	BeginMountAge     ID = "begin_mount_age"
	BeginMountHours   ID = "begin_mount_hours"
	BeginStateNote    ID = "begin_state_note"
	BeginUnsaid       ID = "begin_unsaid"
	BeginLeaves       ID = "begin_leaves"
	BeginSet          ID = "begin_set"
	BeginOwnSet       ID = "begin_own_set"
	BeginLeafList     ID = "begin_leaf_list"
	BeginStacked      ID = "begin_stacked"
	BeginFeel         ID = "begin_feel"
	BeginRule         ID = "begin_rule"
	BeginOwnRule      ID = "begin_own_rule"
	BeginLimits       ID = "begin_limits"
	BeginLimit        ID = "begin_limit"
	BeginNamed        ID = "begin_named"
	BeginTarget       ID = "begin_target"
	BeginNoTarget     ID = "begin_no_target"
	BeginOwnTarget    ID = "begin_own_target"
	BeginSpread       ID = "begin_spread"
	BeginOpensAt      ID = "begin_opens_at"
	BeginReason       ID = "begin_reason"
	BeginReach        ID = "begin_reach"
	BeginReachArc     ID = "begin_reach_arc"
	BeginReachHint    ID = "begin_reach_hint"
	BeginVisit        ID = "begin_visit"
	BeginDate         ID = "begin_date"
	BeginFrom         ID = "begin_from"       // Sources
	BeginBadNumber    ID = "begin_bad_number" // Text
	BeginBadLeaves    ID = "begin_bad_leaves" // Text
	BeginBadPlace     ID = "begin_bad_place"  // Text
	BeginBadArc       ID = "begin_bad_arc"    // Text
	BeginNext         ID = "begin_next"
	LeafSetInch       ID = "leaf_set_inch"
	LeafSetInchFine   ID = "leaf_set_inch_fine"
	LeafSetMetric     ID = "leaf_set_metric"
	LeafSetMetricFine ID = "leaf_set_metric_fine"
	TargetHogs        ID = "target_hogs"
	DefaultLeaves     ID = "default_leaves"  // From, To
	DefaultStacked    ID = "default_stacked" // Count
	DefaultFeel       ID = "default_feel"    // Feel
	DefaultRuleSaid   ID = "default_rule"    // Limit
	DefaultTarget     ID = "default_target"
	DefaultStanding   ID = "default_standing" // Hours
	BoatAfloat        ID = "boat_afloat"
	BoatTrailer       ID = "boat_trailer"
	BoatStands        ID = "boat_stands"
	BallastIn         ID = "ballast_in"
	BallastOut        ID = "ballast_out"
	BallastNone       ID = "ballast_none"
	RigSet            ID = "rig_set"
	RigSlack          ID = "rig_slack"
	RigDown           ID = "rig_down"
	RigNone           ID = "rig_none"
	StateButton       ID = "state_button" // Boat, Hours, Fuel
	StateUnsaid       ID = "state_unsaid"
)
