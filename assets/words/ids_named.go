package words

// This file lists other packages' own words, see named.go; they stand in
// named.en.json.

const (
	HeldHanging ID = "held_hanging"
	HeldCentred ID = "held_centred"
	HeldSeated  ID = "held_seated"
	HeldSnug    ID = "held_snug"
	HeldBolted  ID = "held_bolted"

	ByBlock ID = "by_block"
	ByHand  ID = "by_hand"
	ByJack  ID = "by_jack"
	ByScale ID = "by_scale"

	LayoutInLine    ID = "layout_in_line"
	LayoutDownAngle ID = "layout_down_angle"
	LayoutVDrive    ID = "layout_v_drive"

	KindLeaf      ID = "kind_leaf"
	KindLeafRound ID = "kind_leaf_round"
	KindRimStep   ID = "kind_rim_step"
	KindDial      ID = "kind_dial"
	KindRunOut    ID = "kind_run_out"
	KindClearance ID = "kind_clearance"
	KindPilot     ID = "kind_pilot"

	FindingGood    ID = "finding_good"
	FindingFailed  ID = "finding_failed"
	FindingSkipped ID = "finding_skipped"

	CheckBattery       ID = "check_battery_isolated_engine_cold"
	CheckStrutFirm     ID = "check_strut_firm"
	CheckBearingEven   ID = "check_bearing_worn_evenly"
	CheckShaftFree     ID = "check_shaft_turns_freely"
	CheckShaftTrue     ID = "check_shaft_runs_true"
	CheckCouplingTight ID = "check_coupling_tight_on_its_shaft"
	CheckKeyAndBolts   ID = "check_key_and_bolts_sound"
	CheckFacesClean    ID = "check_faces_clean"
	CheckMountsSound   ID = "check_mounts_sound"
	CheckMountsAndBed  ID = "check_mounts_and_bed_sound"
	CheckFeetFlat      ID = "check_feet_stand_flat"
	CheckNutsFree      ID = "check_nuts_and_threads_free"
	CheckBedSound      ID = "check_bed_sound"
	CheckShaftCentral  ID = "check_shaft_central_in_its_log"
	CheckBoxSound      ID = "check_stuffing_box_sound"
	CheckEngineClear   ID = "check_engine_clear_all_round"
	CheckShaftUnder    ID = "check_shaft_clear_under_the_engine"
	CheckBoatAsUsed    ID = "check_boat_as_used"
	CheckMountsStood   ID = "check_mounts_stood_long_enough"

	RuleTwo      ID = "rule_common_practice_2_thou"
	RuleThree    ID = "rule_common_practice_3_thou"
	RuleFour     ID = "rule_common_practice_4_thou"
	RuleAcross   ID = "rule_common_practice_4_thou_across"
	RuleAnInch   ID = "rule_common_practice_1_thou_an_inch_of_face"
	RuleOffAimed ID = "rule_common_practice_3_thou_off_the_gap_wanted"
)
