package words

// This file lists the sentences there are. Each must stand in en.json.

// The command line.
const (
	HelpProgram   ID = "help_program"
	HelpJSON      ID = "help_json"
	HelpCheck     ID = "help_check"
	HelpCheckFile ID = "help_check_file"
	HelpHulls     ID = "help_hulls"
	HelpHullsList ID = "help_hulls_list"
	HelpHullsShow ID = "help_hulls_show"
	HelpHull      ID = "help_hull"

	BadUsage ID = "bad_usage" // What
	Internal ID = "internal"  // What
	Doubt    ID = "doubt"     // Line

	NoHull      ID = "no_hull"
	NoHullLimit ID = "no_hull_limit" // Known
	NoHullMend  ID = "no_hull_mend"
	NoRead      ID = "no_read" // What
	NoReadLimit ID = "no_read_limit"
	NoReadMend  ID = "no_read_mend"

	NoWorking      ID = "no_working" // What
	NoWorkingLimit ID = "no_working_limit"
	NoWorkingMend  ID = "no_working_mend"

	CheckOK ID = "check_ok" // File, Name, Layout, Mounts, Bearings
)

// What a hull is, in a few words.
const (
	Mounts   ID = "mounts"   // Count
	Bearings ID = "bearings" // Count

	HullLine     ID = "hull_line"     // Name, Layout, Mounts, Bearings, Shaft
	HullTitle    ID = "hull_title"    // Name, Layout, Angle
	HullEngine   ID = "hull_engine"   // Mass, Down
	HullRubber   ID = "hull_rubber"   // Name, X, Y, Z, Thread, Low, High
	HullSolid    ID = "hull_solid"    // Name, X, Y, Z, Shim, Low, High
	HullCoupling ID = "hull_coupling" // Outer, Pilot
	HullNoPilot  ID = "hull_no_pilot" // Outer
	HullShaft    ID = "hull_shaft"    // Diameter, Length, Material
	HullBearing  ID = "hull_bearing"  // Name, At, Length, Clearance
	HullLog      ID = "hull_log"      // At, Length, Bore
	HullBox      ID = "hull_box"      // At, Mass
	HullScrew    ID = "hull_screw"    // At, Mass, Diameter
)
