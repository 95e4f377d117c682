package words

// This file lists the sentences of the window; they stand in window.en.json.

const (
	SeenForward       ID = "seen_forward"
	SeenAft           ID = "seen_aft"
	HowToBegin        ID = "how_to_begin" //
	BeyondRange       ID = "beyond_range" // Mount
	NotANumber        ID = "not_a_number" // Text
	Undo              ID = "undo"
	Redo              ID = "redo"
	BackToDrawn       ID = "back_to_drawn"
	ViewWhole         ID = "view_whole"
	ViewCoupling      ID = "view_coupling"
	ViewMenu          ID = "view_menu"
	ViewEngine        ID = "view_engine"
	ViewStrut         ID = "view_strut"
	ViewFromPort      ID = "view_from_port"
	ViewFromStarboard ID = "view_from_starboard"
	ViewFromAft       ID = "view_from_aft"
	ViewFromAhead     ID = "view_from_ahead"
	ViewFromAbove     ID = "view_from_above"
	NoMotion          ID = "no_motion"
	WithKey           ID = "with_key"      // What, Key
	WithTwoKeys       ID = "with_two_keys" // What, First, Key
	FlipClock         ID = "flip_clock"
	LightDark         ID = "light_dark"
	LargerText        ID = "larger_text"
	ShaftHeld         ID = "shaft_held"
	Exaggerated       ID = "exaggerated" // Times
	TrueScale         ID = "true_scale"
	SheetMount        ID = "sheet_mount"
	SheetNut          ID = "sheet_nut"
	SheetShims        ID = "sheet_shims"
	SheetSlide        ID = "sheet_slide"
	SheetLoad         ID = "sheet_load"
	NoScreen          ID = "no_screen"
	HelpWindow        ID = "help_window"

	WindowTitle    ID = "window_title"     // Hull
	WindowTitleGap ID = "window_title_gap" // Hull, Spread
	LeverCheck     ID = "lever_check"
	UnderPower     ID = "under_power"

	Undone       ID = "undone"        // What
	Redone       ID = "redone"        // What
	NothingThere ID = "nothing_there" //

	EditTurnNut     ID = "edit_turn_nut"    // Mount
	EditSlideMount  ID = "edit_slide_mount" // Mount
	EditHoldShaft   ID = "edit_hold_shaft"  // Held
	EditAfloat      ID = "edit_afloat"
	EditDry         ID = "edit_dry"
	EditLeverOn     ID = "edit_lever_on"
	EditLeverOff    ID = "edit_lever_off"
	EditPower       ID = "edit_power"
	EditBackToDrawn ID = "edit_back_to_drawn"
	EditOpenHull    ID = "edit_open_hull" // Hull
)
