package words

// This file lists the sentences of the window's stages; they stand in
// stage.en.json.

const (
	StageTry          ID = "stage_try"
	StageGauge        ID = "stage_gauge"
	StageMove         ID = "stage_move"
	StageHint         ID = "stage_hint"
	VisitChoose       ID = "visit_choose"
	GaugeEntry        ID = "gauge_entry"
	GaugeEntryHint    ID = "gauge_entry_hint"
	GaugeTitle        ID = "gauge_title"
	GaugeNone         ID = "gauge_none"
	GaugeReading      ID = "gauge_reading"
	GaugeReadingGoes  ID = "gauge_reading_goes"
	GaugeReadingStops ID = "gauge_reading_stops"
	GaugeReadingOther ID = "gauge_reading_other"
	GaugeDoesNotFit   ID = "gauge_does_not_fit"
	GaugeSetAside     ID = "gauge_set_aside"
	GaugeAgain        ID = "gauge_again"
	GaugeBadEntry     ID = "gauge_bad_entry"
	GaugeBadLeaf      ID = "gauge_bad_leaf"
	MoveThinking      ID = "move_thinking"
	MoveDone          ID = "move_done"
	MoveNotYet        ID = "move_not_yet"
)
