package words

// This file lists the sentences of the window's stages; they stand in
// stage.en.json.

const (
	NotKept             ID = "not_kept"
	MoreMenu            ID = "more_menu"
	StageTry            ID = "stage_try"
	StageLook           ID = "stage_look"
	StageFasten         ID = "stage_fasten"
	StageHandOver       ID = "stage_hand_over"
	StageGauge          ID = "stage_gauge"
	StageMove           ID = "stage_move"
	VisitChoose         ID = "visit_choose"
	GaugeEntry          ID = "gauge_entry"
	GaugeDoesNotFit     ID = "gauge_does_not_fit"
	GaugeSetAside       ID = "gauge_set_aside"
	GaugeAgain          ID = "gauge_again"
	LookGood            ID = "look_good"
	LookFailed          ID = "look_failed"
	LookSkipped         ID = "look_skipped"
	LookCheck           ID = "look_check"
	LookHow             ID = "look_how"
	LookLooks           ID = "look_looks"
	LookMeans           ID = "look_means"
	LookStanding        ID = "look_standing"
	HandOverProvisional ID = "hand_over_provisional"
	HandOverNotWithin   ID = "hand_over_not_within"
	HandOverFinal       ID = "hand_over_final"
	HandOverDue         ID = "hand_over_due"
	HandOverDone        ID = "hand_over_done"
	MoveThinking        ID = "move_thinking"
	MoveNotYet          ID = "move_not_yet"
)
