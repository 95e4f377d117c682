package words

// This file lists the sentences of the verb predict; they stand in
// predict.en.json.

const (
	HelpPredict       ID = "help_predict"
	HelpPredictNut    ID = "help_predict_nut"
	HelpPredictSlide  ID = "help_predict_slide"
	HelpPredictHeld   ID = "help_predict_held"
	HelpPredictLever  ID = "help_predict_lever"
	HelpPredictAfloat ID = "help_predict_afloat"
	HelpPredictThrust ID = "help_predict_thrust"
	HelpPredictTorque ID = "help_predict_torque"
	HelpPredictApart  ID = "help_predict_apart"
	HelpPredictPull   ID = "help_predict_pull"
	HelpMetric        ID = "help_metric"

	MoveMend      ID = "move_mend"       // Flag
	MoveNoMount   ID = "move_no_mount"   // Mount, Hull
	MoveMounts    ID = "move_mounts"     // Known
	MoveNumber    ID = "move_number"     // Text
	MoveLimit     ID = "move_limit"      //
	MovePickMount ID = "move_pick_mount" //
	OutOfRange    ID = "out_of_range"    // Move, Low, High
	StateRefused  ID = "state_refused"   // What

	PredictTitle   ID = "predict_title"   // Hull, Held, Boat
	PredictDrawn   ID = "predict_drawn"   //
	PredictMoved   ID = "predict_moved"   // Move
	Dry            ID = "dry"             //
	Afloat         ID = "afloat"          //
	LeverOn        ID = "lever_on"        //
	GapTitle       ID = "gap_title"       // Unit
	GapLine        ID = "gap_line"        // Spread, Opens, Touches
	GapParallel    ID = "gap_parallel"    //
	GapHanging     ID = "gap_hanging"     //
	GapBolted      ID = "gap_bolted"      // Moment, Stress
	PartsLine      ID = "parts_line"      // Tilt, Swing, Sag, RunOut
	PartsPair      ID = "parts_pair"      // Top, Starboard
	PoseLine       ID = "pose_line"       // Fore, Port, Up
	OffsetLine     ID = "offset_line"     // Port, Up
	LoadsTitle     ID = "loads_title"     //
	LoadLine       ID = "load_line"       // Mount, Load
	BearingLine    ID = "bearing_line"    // Bearing, Force
	BearingPressed ID = "bearing_pressed" // Bearing, Force, Sink
	BearingIdle    ID = "bearing_idle"    // Bearing, Room
	LogClear       ID = "log_clear"       // Room
	LogTouches     ID = "log_touches"     // Force
	HangLine       ID = "hang_line"       // Hang
	LiftLine       ID = "lift_line"       // Pull, Rule, Error
	RuleHigh       ID = "rule_high"       // Gap
	RuleLow        ID = "rule_low"        // Gap
	LiftSoft       ID = "lift_soft"       // Span
	LiftSteady     ID = "lift_steady"     // Span
	BlockLine      ID = "block_line"      // Gap, Unit
)
