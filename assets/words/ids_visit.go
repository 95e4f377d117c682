package words

// This file lists the sentences that tell edits of a visit in the list of what
// can be undone.

// Edits of a visit.
const (
	EditTurnPair        ID = "edit_turn_pair"  // First, Second
	EditOpenVisit       ID = "edit_open_visit" // Hull
	EditSetDate         ID = "edit_set_date"   // Date
	EditSetState        ID = "edit_set_state"
	EditSetLeaves       ID = "edit_set_leaves"
	EditSetRule         ID = "edit_set_rule" // Named
	EditNoRule          ID = "edit_no_rule"
	EditSetTarget       ID = "edit_set_target" // Reason
	EditNoTarget        ID = "edit_no_target"
	EditFindMount       ID = "edit_find_mount"     // Mount
	EditLookOver        ID = "edit_look_over"      // Check, Finding
	EditRemoveFinding   ID = "edit_remove_finding" // Check
	EditNoteVisit       ID = "edit_note_visit"
	EditMindCautions    ID = "edit_mind_cautions"
	EditSetReach        ID = "edit_set_reach"
	EditBeginGauging    ID = "edit_begin_gauging"  // Held
	EditChangeGauging   ID = "edit_change_gauging" // Held
	EditAddReading      ID = "edit_add_reading"    // Kind
	EditAddReadings     ID = "edit_add_readings"   // Count
	EditChangeReading   ID = "edit_change_reading" // Kind
	EditRemoveReading   ID = "edit_remove_reading" // Number
	EditRecordMove      ID = "edit_record_move"
	EditChangeMove      ID = "edit_change_move"
	EditRecordFastening ID = "edit_record_fastening" // What
	EditChangeFastening ID = "edit_change_fastening" // What
	EditDateEvent       ID = "edit_date_event"       // Date
	EditRemoveEvent     ID = "edit_remove_event"     // Number
)
