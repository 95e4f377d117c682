package words

// This file lists the sentences of photos, plots and tables on the record, and
// of languages; they stand in sheet.en.json.

const (
	HelpLang              ID = "help_lang"
	SheetNoLangLimit      ID = "sheet_no_lang_limit"
	SheetNoLangMend       ID = "sheet_no_lang_mend"
	SheetRule             ID = "sheet_rule"
	SheetSecAnswers       ID = "sheet_sec_answers"
	SheetAnswersHow       ID = "sheet_answers_how"
	SheetWaveOver         ID = "sheet_wave_over"
	SheetWaveOf           ID = "sheet_wave_of"
	SheetWaveNote         ID = "sheet_wave_note"
	SheetNothingApart     ID = "sheet_nothing_apart"
	SheetDoneFlat         ID = "sheet_done_flat"
	SheetHere             ID = "sheet_here"
	SheetPictures         ID = "sheet_pictures"          // Times
	SheetCouplingPictures ID = "sheet_coupling_pictures" // Times
	SheetStepsRead        ID = "sheet_steps_read"        // Unit
	SheetDonePower        ID = "sheet_done_power"        // Aim, Side, Gap, Limit
	SheetNotYetAim        ID = "sheet_not_yet_aim"       // Gap, Limit
	SheetPlannedFlat      ID = "sheet_planned_flat"
	SheetFastenFeet       ID = "sheet_fasten_feet" // Pairs
	SheetFromAbove        ID = "sheet_from_above"
)
