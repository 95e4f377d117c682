package words

// This file lists the sentences of the logbook on the command line.

// Flags and verbs.
const (
	HelpLogbook ID = "help_logbook"

	HelpHullsFind    ID = "help_hulls_find"
	HelpLimit        ID = "help_limit"
	HelpHullsNew     ID = "help_hulls_new"
	HelpHullsName    ID = "help_hulls_name"
	HelpHullsFrom    ID = "help_hulls_from"
	HelpHullsHIN     ID = "help_hulls_hin"
	HelpHullsOwner   ID = "help_hulls_owner"
	HelpHullsExport  ID = "help_hulls_export"
	HelpHullsOut     ID = "help_hulls_out"
	HelpHullsImport  ID = "help_hulls_import"
	HelpBundle       ID = "help_bundle"
	HelpDryRun       ID = "help_dry_run"
	HelpTheirs       ID = "help_theirs"
	HelpHullsBackup  ID = "help_hulls_backup"
	HelpBackupOut    ID = "help_backup_out"
	HelpHullsSalvage ID = "help_hulls_salvage"
	HelpDamaged      ID = "help_damaged"
	HelpSalvaged     ID = "help_salvaged"
	HelpHullsRefresh ID = "help_hulls_refresh"
	HelpRefreshAll   ID = "help_refresh_all"
	HelpEntry        ID = "help_entry"

	HelpVisits       ID = "help_visits"
	HelpVisitsList   ID = "help_visits_list"
	HelpVisitsShow   ID = "help_visits_show"
	HelpVisitsNew    ID = "help_visits_new"
	HelpVisitsDate   ID = "help_visits_date"
	HelpVisitsImport ID = "help_visits_import"
	HelpVisitsExport ID = "help_visits_export"
	HelpVisitsOut    ID = "help_visits_out"
	HelpVisitsOf     ID = "help_visits_of"
)

// Lists.
const (
	LogbookTitle   ID = "logbook_title"    // File
	LogbookBuiltIn ID = "logbook_built_in" //
	LogbookNone    ID = "logbook_none"     //
	LogbookHull    ID = "logbook_hull"     // Number, Name, Parts
	LogbookHIN     ID = "logbook_hin"      // HIN
	LogbookLayout  ID = "logbook_layout"   // Layout
	LogbookVisits  ID = "logbook_visits"   // Count, Date
	LogbookSpread  ID = "logbook_spread"   // Spread
	LogbookDue     ID = "logbook_due"      // Date, DueReason
	LogbookOverdue ID = "logbook_overdue"  // Date, DueReason
	LogbookMore    ID = "logbook_more"     // Count

	LogbookVisit   ID = "logbook_visit"   // Number, Date, Hull, Parts
	LogbookEvents  ID = "logbook_events"  // Count
	LogbookPhotos  ID = "logbook_photos"  // Count
	LogbookVerdict ID = "logbook_verdict" // Verdict
	LogbookStale   ID = "logbook_stale"

	LogbookGauging ID = "logbook_gauging" // Number, Date, Held, Count
	LogbookMove    ID = "logbook_move"    // Number, Date, Move
	LogbookFasten  ID = "logbook_fasten"  // Number, Date, What
	LogbookNote    ID = "logbook_note"    // Note
	LogbookPhoto   ID = "logbook_photo"   // Caption, Size

	DueSettled ID = "due_reason_settled"
	DueRubber  ID = "due_reason_rubber"
	DueSeason  ID = "due_reason_season"
)

// What was done.
const (
	LogbookEntered      ID = "logbook_entered"       // Name, Number
	LogbookVisitEntered ID = "logbook_visit_entered" // Name, Number
	LogbookExported     ID = "logbook_exported"      // Name, File
	LogbookBackedUp     ID = "logbook_backed_up"     // File
	LogbookRefreshed    ID = "logbook_refreshed"     // Count
	LogbookSalvaged     ID = "logbook_salvaged"      // File, Hulls, Visits, Edits, Photos
	LogbookLost         ID = "logbook_lost"          // What
	LogbookAlike        ID = "logbook_alike"         // Number, Name

	LogbookTakesHull   ID = "logbook_takes_hull"   // Name, Change
	LogbookTakesVisit  ID = "logbook_takes_visit"  // Date, Change
	LogbookTakesPhotos ID = "logbook_takes_photos" // Count, Change
	LogbookTaken       ID = "logbook_taken"        // Number
	LogbookTried       ID = "logbook_tried"
	LogbookKeptOurs    ID = "logbook_kept_ours"

	ChangeNew       ID = "change_new"
	ChangeSame      ID = "change_same"
	ChangeDifferent ID = "change_different"
)

// What is wrong.
const (
	NoEntryHull     ID = "no_entry_hull"
	NoEntryVisit    ID = "no_entry_visit"
	NoEntryLimit    ID = "no_entry_limit"
	NoEntryMend     ID = "no_entry_mend"
	SeveralHulls    ID = "several_hulls" // Numbers
	SeveralLimit    ID = "several_limit"
	SeveralMend     ID = "several_mend"
	NotABundle      ID = "not_a_bundle"
	NotABundleLimit ID = "not_a_bundle_limit"
	NotABundleMend  ID = "not_a_bundle_mend"
	LimitLimit      ID = "limit_limit"
	LimitMend       ID = "limit_mend"
	OutThere        ID = "out_there"
	OutThereLimit   ID = "out_there_limit"
	OutThereMend    ID = "out_there_mend"
	NotWorkedOut    ID = "not_worked_out" // Number, What
)
