package hulls_test

// Bad hulls: each edit of a good one must be refused in one line that says
// where, what, the limit and the mend.

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"aligner/hulls"
)

// edit is one change to the text of a built-in hull.
type edit struct {
	what     string
	old, new string // the first place of old becomes new; old "" replaces all
	want     string // the whole line after the file's name
}

// structure and numbers of format hull/1; edits of Kittiwake.
var badKittiwakes = []edit{
	// The bytes.
	{"empty", "", "",
		`found an empty file; wanted a hull in JSON; give a hull file`},
	{"blank", "", " \n\t",
		`found an empty file; wanted a hull in JSON; give a hull file`},
	{"text", "", "hello",
		`line 1: found "hello"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"byte order mark", `{`, "\ufeff{",
		`line 1: found a byte order mark; wanted plain UTF-8; save the file as UTF-8 without a byte order mark`},
	{"UTF-16", "", "\xff\xfe{\x00}\x00",
		`line 1: found UTF-16; wanted plain UTF-8; save the file as UTF-8`},
	{"not UTF-8", `Kittiwake`, "Kittiwak\xe9",
		`line 3: found the byte 0xe9, which is not UTF-8; wanted plain UTF-8; save the file as UTF-8`},
	{"too large", "", strings.Repeat(" ", hulls.MaxFileBytes+1),
		`found more than 1048576 bytes; wanted at most 1048576 bytes; give a hull file`},
	{"too deep", "", `{"format": "hull/1", "name": ` + strings.Repeat("[", 100000),
		`name[0][0][0][0][0][0][0][0][0][0][0][0][0][0][0] (line 1): found values nested more than 16 deep; wanted at most 16; give a hull file`},
	{"deep objects", "", strings.Repeat(`{"a":`, 40),
		`a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a (line 1): found values nested more than 16 deep; wanted at most 16; give a hull file`},
	{"truncated in a list", "", `{"format": "hull/1", "mounts": [`,
		`mounts (line 1): found the end of the file; wanted the rest of the hull; the file is cut off: copy it again`},
	{"truncated in a text", "", "{\n\"format\": \"hul",
		`format (line 2): found the end of the file; wanted the rest of the hull; the file is cut off: copy it again`},
	{"truncated after a key", "", `{"format":`,
		`format (line 1): found the end of the file; wanted the rest of the hull; the file is cut off: copy it again`},
	{"trailing object", "\n}\n", "\n}\n{}\n",
		`line 106: found "{" after the end of the hull; wanted one JSON value and nothing after it; delete what follows it`},
	{"trailing rubbish", "\n}\n", "\n} x\n",
		`line 105: found more text after the end of the hull; wanted one JSON value and nothing after it; delete what follows it`},
	{"trailing comma", `"diameter_mm": 330`, `"diameter_mm": 330,`,
		`propeller (line 104): found "}"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"comment", `"name"`, `// boat` + "\n" + `"name"`,
		`line 3: found "//"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"single quotes", `"name"`, `'name'`,
		`line 3: found "'name':"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"a number for a key", `"name"`, `3`,
		`line 3: found "3:"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"no colon", `"layout": `, `"layout" `,
		`layout (line 4): found "in-line"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	// Numbers no hull can hold.
	{"NaN", `"mass_kg": 430`, `"mass_kg": NaN`,
		`engine.mass_kg (line 8): found "NaN"; wanted a finite number; give the number in digits`},
	{"NaN in quotes", `"mass_kg": 430`, `"mass_kg": "NaN"`,
		`engine.mass_kg (line 8): found "NaN"; wanted a number of kilograms; write the number without quotes`},
	{"infinity", `"mass_kg": 430`, `"mass_kg": -Infinity`,
		`engine.mass_kg (line 8): found "-Infinity"; wanted a finite number; give the number in digits`},
	{"overflow", `"mass_kg": 430`, `"mass_kg": 1e999`,
		`engine.mass_kg (line 8): found 1e999; wanted a number below 1e308; give the number itself`},
	{"leading zero", `"mass_kg": 430`, `"mass_kg": 0430`,
		`engine (line 8): found "430"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"plus sign", `"mass_kg": 430`, `"mass_kg": +430`,
		`engine.mass_kg (line 8): found "+430"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"decimal comma", `"shaft_angle_deg": 12`, `"shaft_angle_deg": 12,5`,
		`line 5: found "5"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	{"fraction of a bolt", `"count": 4`, `"count": 4.5`,
		`coupling.bolts.count (line 76): found 4.5; wanted a whole number; give a count`},
	// Keys.
	{"another format", `hull/1`, `hull/2`,
		`format (line 2): found "hull/2"; wanted "hull/1"; give a hull file`},
	{"format in capitals", `hull/1`, `HULL/1`,
		`format (line 2): found "HULL/1"; wanted "hull/1"; give a hull file`},
	{"format a number", `"hull/1"`, `1`,
		`format (line 2): found 1; wanted "hull/1"; give a hull file`},
	{"format missing", `"format": "hull/1",`, ``,
		`format (line 1): found nothing; wanted the key format; add it`},
	{"a list", "", `[]`,
		`line 1: found a list of 0; wanted an object with keys; write it as { ... }`},
	{"a text alone", "", `"hull/1"`,
		`line 1: found "hull/1"; wanted an object with keys; write it as { ... }`},
	{"unknown key", `"name": "Kittiwake"`, `"name": "Kittiwake", "colour": "grey"`,
		`colour (line 3): found an unknown key; wanted one of format, name, hin, owner_reference, layout, shaft_angle_deg, shaft_speed_max_rpm, engine, mounts, coupling, shaft, bearings, log, stuffing_box, propeller, tolerance, look, one_sided, measured_response; delete it, or write one of these`},
	{"misspelt key", `"propeller"`, `"propellor"`,
		`propellor (line 100): found an unknown key; wanted propeller; if that is meant, write propeller`},
	{"wrong case", `"mass_kg"`, `"Mass_kg"`,
		`engine.Mass_kg (line 8): found an unknown key; wanted mass_kg; keys are in small letters: write mass_kg`},
	{"duplicate key", `"mass_kg": 430`, `"mass_kg": 430, "mass_kg": 440`,
		`engine.mass_kg (line 8): found the key a second time; wanted each key once (first on line 8); delete one of the two`},
	{"pounds", `"mass_kg": 430`, `"mass_lb": 948`,
		`engine.mass_lb (line 8): found an unknown key; wanted mass_kg, in kilograms; convert the number and write mass_kg`},
	{"inches of pitch", `"thread_pitch_mm": 1.41111`, `"thread_pitch_in": 0.0555556`,
		`mounts[0].thread_pitch_in (line 17): found an unknown key; wanted thread_pitch_mm, in millimetres; convert the number and write thread_pitch_mm`},
	{"no unit", `"bore_mm": 38`, `"bore": 38`,
		`log.bore (line 98): found an unknown key; wanted bore_mm, in millimetres; convert the number and write bore_mm`},
	{"key with an escape", `"mass_kg"`, `"mass\u0000_kg"`,
		`engine["mass\x00_kg"] (line 8): found an unknown key; wanted mass_kg; if that is meant, write mass_kg`},
	{"missing key", `"down_angle_deg": 0`, `"down_angle_deg": 0, "x": 1`,
		`engine.x (line 10): found an unknown key; wanted one of mass_kg, centre_of_mass_mm, down_angle_deg; delete it, or write one of these`},
	{"missing mass", `"mass_kg": 430,`, ``,
		`engine.mass_kg (line 7): found nothing; wanted the key mass_kg of kilograms; add it`},
	{"null", `"mass_kg": 430`, `"mass_kg": null`,
		`engine.mass_kg (line 8): found null; wanted a value; give the value, or leave an optional key out`},
	{"null for an optional key", `"layout"`, `"hin": null, "layout"`,
		`hin (line 4): found null; wanted a value; give the value, or leave an optional key out`},
	{"null for an object", `"log": {`, `"stuffing_box": null, "log": {`,
		`stuffing_box (line 95): found null; wanted a value; give the value, or leave an optional key out`},
	{"mounts without end", `"mounts": [`, `"mounts": [` + strings.Repeat("{},", 100),
		`mounts (line 12): found a list of 104; wanted at most 100; give a hull file`},
	{"number in quotes", `"mass_kg": 430`, `"mass_kg": "430"`,
		`engine.mass_kg (line 8): found "430"; wanted a number of kilograms; write the number without quotes`},
	{"number for a text", `"Kittiwake"`, `7`,
		`name (line 3): found 7; wanted a text; write a text`},
	{"true for a number", `"mass_kg": 430`, `"mass_kg": true`,
		`engine.mass_kg (line 8): found true; wanted a number of kilograms; write a number`},
	{"list for a number", `"mass_kg": 430`, `"mass_kg": [430]`,
		`engine.mass_kg (line 8): found a list of 1; wanted a number of kilograms; write a number`},
	{"object for a list", `[520, 0, 160]`, `{"x": 520}`,
		`engine.centre_of_mass_mm (line 9): found an object; wanted a list of millimetres; write a list`},
	{"two numbers for three", `[520, 0, 160]`, `[520, 160]`,
		`engine.centre_of_mass_mm (line 9): found 2 numbers; wanted 3: x, y, z of millimetres; give all of them and no more`},
	{"four numbers for three", `[520, 0, 160]`, `[520, 0, 160, 1]`,
		`engine.centre_of_mass_mm (line 9): found 4 numbers; wanted 3: x, y, z of millimetres; give all of them and no more`},
	{"a text among numbers", `[520, 0, 160]`, `[520, "0", 160]`,
		`engine.centre_of_mass_mm[1] (line 9): found "0"; wanted a number of millimetres; write the number without quotes`},
	{"null among numbers", `[520, 0, 160]`, `[520, null, 160]`,
		`engine.centre_of_mass_mm[1] (line 9): found null; wanted a number of millimetres; write a number`},
	{"unknown layout", `"in-line"`, `"In-Line"`,
		`layout (line 4): found "In-Line"; wanted one of "in-line", "down-angle", "v-drive"; choose one of these, in small letters`},
	{"unknown reach", `"open"`, `"easy"`,
		`mounts[0].reach (line 25): found "easy"; wanted one of "open", "awkward", "blind"; choose one of these, in small letters`},
	{"unknown kind", `"thread"`, `"kind": "jelly", "thread"`,
		`mounts[0].kind (line 16): found "jelly"; wanted one of "rubber", "solid"; choose one of these, in small letters`},
	{"solid foot with a thread", `"thread"`, `"kind": "solid", "thread"`,
		`mounts[0].thread (line 16): found an unknown key; wanted no thread on a solid foot; give shim_step_mm instead, or make the mount rubber`},
	{"shims under rubber", `"thread"`, `"shim_step_mm": 0.05, "thread"`,
		`mounts[0].shim_step_mm (line 16): found an unknown key; wanted shims under solid feet only; add "kind": "solid", or delete the key`},
	{"unknown look", "\n}\n", ",\n\"look\": {\"engine\": \"steam\"}}\n",
		`look.engine (line 105): found "steam"; wanted one of "petrol-v", "in-line-diesel", "small-auxiliary"; choose one of these, in small letters`},
	{"tolerance to nothing", "\n}\n", ",\n\"tolerance\": {\"/mounts/4/at_mm/0\": 5}}\n",
		`tolerance["/mounts/4/at_mm/0"] (line 105): found a pointer to nothing; wanted a JSON pointer to a number of this file; correct the pointer; lists count from 0`},
	{"tolerance of a text", "\n}\n", ",\n\"tolerance\": {\"/mounts/0/thread\": 5}}\n",
		`tolerance["/mounts/0/thread"] (line 105): found a pointer to a text; wanted a JSON pointer to a number of the hull; point at the number itself, as in /mounts/0/at_mm/2`},
	{"tolerance by path", "\n}\n", ",\n\"tolerance\": {\"mounts[0].at_mm\": 5}}\n",
		`tolerance["mounts[0].at_mm"] (line 105): found "mounts[0].at_mm"; wanted a JSON pointer to a number of this file, such as /mounts/0/at_mm/2; write the way to the number from the top, each step after a /`},
	{"tolerance of a tolerance", "\n}\n", ",\n\"tolerance\": {\"/tolerance/~1name\": 5, \"/name\": 1}}\n",
		`tolerance["/tolerance/~1name"] (line 105): found a pointer to a tolerance; wanted a JSON pointer to a number of the hull; point at the number itself, as in /mounts/0/at_mm/2`},
	{"negative tolerance", "\n}\n", ",\n\"tolerance\": {\"/engine/mass_kg\": -5}}\n",
		`tolerance["/engine/mass_kg"] (line 105): found -5; wanted 0 or more; give the plus-or-minus without its sign`},
	// The boat as a whole.
	{"no name", `"Kittiwake"`, `" "`,
		`name (line 3): found " "; wanted a name; give it a name`},
	{"line break in the name", `"Kittiwake"`, `"Kitti\nwake"`,
		`name (line 3): found "Kitti\nwake"; wanted letters, digits and signs that can be printed; take the control characters out`},
	{"direction mark in the name", `"Kittiwake"`, `"Kitti\u202ewake"`,
		`name (line 3): found "Kitti\u202ewake"; wanted letters, digits and signs that can be printed; take the control characters out`},
	{"half a surrogate pair in the name", `"Kittiwake"`, `"Kitti\ud83d"`,
		`name (line 3): found "Kitti�"; wanted letters, digits and signs that can be printed; take the control characters out`},
	{"endless name", `Kittiwake`, strings.Repeat("Kitti", 20),
		`name (line 3): found 100 characters; wanted at most 60; shorten the name`},
	{"shaft angle of 80", `"shaft_angle_deg": 12`, `"shaft_angle_deg": 80`,
		`shaft_angle_deg (line 5): found 80 degrees; wanted -10 to 35 degrees; correct the number or its unit`},
	{"negative speed", `"shaft_speed_max_rpm": 1200`, `"shaft_speed_max_rpm": -1200`,
		`shaft_speed_max_rpm (line 6): found -1200 turns a minute; wanted 10 to 20000 turns a minute; correct the number or its unit`},
	// Engine and mounts.
	{"negative mass", `"mass_kg": 430`, `"mass_kg": -430`,
		`engine.mass_kg (line 8): found -430 kg; wanted 5 to 20000 kg; correct the number or its unit`},
	{"no mass", `"mass_kg": 430`, `"mass_kg": 0`,
		`engine.mass_kg (line 8): found 0 kg; wanted 5 to 20000 kg; correct the number or its unit`},
	{"centre of mass in metres off", `[520, 0, 160]`, `[520000, 0, 160]`,
		`engine.centre_of_mass_mm[0] (line 9): found 520000 mm; wanted -6000 to 6000 mm; correct the number or its unit`},
	{"down angle of 45", `"down_angle_deg": 0`, `"down_angle_deg": 45`,
		`engine.down_angle_deg (line 10): found 45 degrees; wanted -20 to 30 degrees; correct the number or its unit`},
	{"mount pitch of 15 mm", `"thread_pitch_mm": 1.41111`, `"thread_pitch_mm": 15`,
		`mounts[0].thread_pitch_mm (line 17): found 15 mm; wanted 1.41111 mm, the pitch of 5/8-18 UNF by ASME B1.1; correct the pitch, or name the thread that is fitted`},
	{"pitch of another thread", `"thread_pitch_mm": 1.41111`, `"thread_pitch_mm": 1.5`,
		`mounts[0].thread_pitch_mm (line 17): found 1.5 mm; wanted 1.41111 mm, the pitch of 5/8-18 UNF by ASME B1.1; correct the pitch, or name the thread that is fitted`},
	{"unknown thread", `"5/8-18 UNF"`, `"5/8 fine"`,
		`mounts[0].thread (line 16): found "5/8 fine"; wanted a thread of ASME B1.1 such as "5/8-18 UNF" or of ISO 261 such as "M16x2"; read the thread off the stud with a pitch gauge`},
	{"fine thread with coarse count", `"5/8-18 UNF"`, `"5/8-11 UNF"`,
		`mounts[0].thread (line 16): found "5/8-11 UNF"; wanted 18 threads an inch, as 5/8 UNF has by ASME B1.1; read the thread off the stud with a pitch gauge`},
	{"metric pitch not made", `"5/8-18 UNF"`, `"M16x3"`,
		`mounts[0].thread (line 16): found "M16x3"; wanted a pitch of 2, 1.5 or 1 mm, as M16 has by ISO 261; read the thread off the stud with a pitch gauge`},
	{"mount named twice", `"fore starboard"`, `"Fore Port"`,
		`mounts[1].name (line 28): found "Fore Port"; wanted a name of its own, not that of mounts[0]; rename one of the two`},
	{"mount with =", `"fore starboard"`, `"fore=starboard"`,
		`mounts[1].name (line 28): found "fore=starboard"; wanted a name without "="; rename the mount: the command line splits at =`},
	{"mount without a name", `"fore starboard"`, `""`,
		`mounts[1].name (line 28): found ""; wanted a name; give it a name`},
	{"two mounts in one place", `[820, -290, 40]`, `[820, 290, 40]`,
		`mounts[1].at_mm (line 29): found the place of mounts[0]; wanted mounts at least 20 mm apart in plan; measure both mounts again`},
	{"soft as air", `"along": 420`, `"along": 0`,
		`mounts[0].stiffness_n_per_mm.along (line 19): found 0 N/mm; wanted 1 to 100000 N/mm; correct the number or its unit`},
	{"negative athwart", `"athwart": 230`, `"athwart": -230`,
		`mounts[0].stiffness_n_per_mm.athwart (line 21): found -230 N/mm; wanted 1 to 100000 N/mm; correct the number or its unit`},
	{"range upside down", `[-8, 8]`, `[8, -8]`,
		`mounts[0].nut_range_mm (line 23): found [8, -8]; wanted the smaller number first; exchange the two numbers`},
	{"range not about zero", `[-8, 8]`, `[2, 8]`,
		`mounts[0].nut_range_mm (line 23): found [2, 8]; wanted [0 or less (down), 0 or more (up)]; count both from where the mount stands now`},
	{"slide not about zero", `[-6, 6]`, `[-6, -1]`,
		`mounts[0].slide_range_mm (line 24): found [-6, -1]; wanted [0 or less (to starboard), 0 or more (to port)]; count both from where the mount stands now`},
	// Coupling and shaft.
	{"pilot larger than the face", `"pilot_diameter_mm": 63.5`, `"pilot_diameter_mm": 110`,
		`coupling.pilot_diameter_mm (line 72): found 110 mm; wanted less than the face, 101.6 mm; check which diameter is which`},
	{"negative pilot", `"pilot_diameter_mm": 63.5`, `"pilot_diameter_mm": -1`,
		`coupling.pilot_diameter_mm (line 72): found -1 mm; wanted 0 (no pilot) or more; measure the pilot again`},
	{"coupling heavier than a drum", `"shaft_half_mass_kg": 2.9`, `"shaft_half_mass_kg": 29`,
		`coupling.shaft_half_mass_kg (line 73): found 29 kg; wanted at most 4.93 kg, a solid drum of that diameter and length; weigh it, or check the unit`},
	{"one bolt", `"count": 4`, `"count": 1`,
		`coupling.bolts.count (line 76): found 1; wanted 2 to 24; count the bolts`},
	{"unknown bolt thread", `"3/8-24 UNF"`, `"M10x3"`,
		`coupling.bolts.thread (line 77): found "M10x3"; wanted a pitch of 1.5, 1.25, 1 or 0.75 mm, as M10 has by ISO 261; read the thread with a pitch gauge`},
	{"unknown alloy", `"UNS S20910"`, `"UNS S99999"`,
		`shaft.material (line 84): found "UNS S99999"; wanted one of UNS S30400, UNS S31600, UNS S31603, UNS S20910, UNS S17400, UNS S31803, UNS S32205, UNS S32750, UNS N04400, UNS N05500, UNS N06625, UNS C46400; give the alloy by its UNS number; its density and stiffness follow`},
	{"alloy without UNS", `"UNS S20910"`, `"S20910"`,
		`shaft.material (line 84): found "S20910"; wanted one of UNS S30400, UNS S31600, UNS S31603, UNS S20910, UNS S17400, UNS S31803, UNS S32205, UNS S32750, UNS N04400, UNS N05500, UNS N06625, UNS C46400; give the alloy by its UNS number; its density and stiffness follow`},
	{"unknown condition", `"UNS S20910"`, `"UNS S20910", "condition": "soft"`,
		`shaft.condition (line 84): found "soft"; wanted one of "annealed", "high-strength bar <=2 in"; choose one of these, or leave the key out`},
	{"density of the shaft", `"UNS S20910"`, `"UNS S20910", "density_g_cm3": 0.2`,
		`shaft.density_g_cm3 (line 84): found an unknown key; wanted no density: it follows from the alloy; delete it and name the alloy by its UNS number`},
	{"shaft thicker than its log", `"bore_mm": 38`, `"bore_mm": 25`,
		`log.bore_mm (line 98): found 25 mm; wanted more than the shaft, 25.4 mm; check which diameter is which`},
	{"shaft thicker than its coupling", `"diameter_mm": 25.4`, `"diameter_mm": 110`,
		`shaft.diameter_mm (line 82): found 110 mm; wanted less than the coupling, 101.6 mm; check which diameter is which`},
	{"shaft shorter than its bearing is far", `"length_mm": 1680`, `"length_mm": 1420`,
		`bearings[0].at_mm (line 89): found -1400 mm, with its aft end at -1451 mm; wanted its aft end on the shaft, which ends at -1420 mm; check the bearing's place and the shaft's length`},
	{"bearing forward of the coupling", `"at_mm": -1400`, `"at_mm": 1400`,
		`bearings[0].at_mm (line 89): found 1400 mm; wanted aft of the coupling (below 0); x counts forward from the face: give it a minus sign`},
	{"bearing in the coupling", `"at_mm": -1400`, `"at_mm": -60`,
		`bearings[0].at_mm (line 89): found -60 mm, with its fore end at -9 mm; wanted its fore end aft of the coupling half, below -64 mm; measure the bearing's middle from the face`},
	{"bearing beyond the shaft", `"at_mm": -1400`, `"at_mm": -1700`,
		`bearings[0].at_mm (line 89): found -1700 mm, with its aft end at -1751 mm; wanted its aft end on the shaft, which ends at -1680 mm; check the bearing's place and the shaft's length`},
	{"bearing called log", `"strut"`, `"Log"`,
		`bearings[0].name (line 88): found "Log"; wanted a name other than "log", which results use for the log itself; rename it, say "log bearing"`},
	{"negative clearance", `"diametral_clearance_mm": 0.2`, `"diametral_clearance_mm": -0.2`,
		`bearings[0].diametral_clearance_mm (line 92): found -0.2 mm; wanted 0 to 20 mm; correct the number or its unit`},
	{"bearing without stiffness", `"radial_stiffness_n_per_mm": 6000`, `"radial_stiffness_n_per_mm": 0`,
		`bearings[0].radial_stiffness_n_per_mm (line 91): found 0 N/mm; wanted 1 to 10000000 N/mm; correct the number or its unit`},
	// Log and propeller.
	{"log forward of the face", `"at_mm": -600`, `"at_mm": 600`,
		`log.at_mm (line 96): found 600 mm, with its fore lip at 720 mm; wanted its fore lip aft of the coupling half, below -64 mm; x counts forward from the face to the log's middle`},
	{"log the shaft does not reach", `"at_mm": -600`, `"at_mm": -1600`,
		`log.at_mm (line 96): found -1600 mm, with its aft lip at -1720 mm; wanted the shaft to reach through it; it ends at -1680 mm; check the log's place and the shaft's length`},
	{"log without length", `"length_mm": 240`, `"length_mm": 0`,
		`log.length_mm (line 97): found 0 mm; wanted 1 to 6000 mm; correct the number or its unit`},
	{"propeller ahead of the bearing", `"at_mm": -1590`, `"at_mm": -1390`,
		`propeller.at_mm (line 102): found -1390 mm; wanted aft of the aftmost bearing, below -1451 mm; x counts forward from the face to the propeller's middle`},
	{"propeller behind the shaft", `"at_mm": -1590`, `"at_mm": -1700`,
		`propeller.at_mm (line 102): found -1700 mm; wanted on the shaft, which ends at -1680 mm; check the propeller's place and the shaft's length`},
	{"propeller of cork", `"diameter_mm": 330`, `"diameter_mm": 330, "density_kg_m3": 200`,
		`propeller.density_kg_m3 (line 103): found 200 kg/m3; wanted 2500 to 9500 kg/m3; correct the number or its unit`},
	{"propeller thinner than the shaft", `"diameter_mm": 330`, `"diameter_mm": 3.3`,
		`propeller.diameter_mm (line 103): found 3.3 mm; wanted 50 to 4000 mm; correct the number or its unit`},
	{"weightless propeller", `"mass_kg": 4.6`, `"mass_kg": 0`,
		`propeller.mass_kg (line 101): found 0 kg; wanted 0.1 to 2000 kg; correct the number or its unit`},
	{"stuffing box ahead of the face", `"log": {`, `"stuffing_box": {"at_mm": 400, "mass_kg": 1, "radial_stiffness_n_per_mm": 10}, "log": {`,
		`stuffing_box.at_mm (line 95): found 400 mm; wanted on the shaft, -1680 to -64 mm; x counts forward from the face`},
}

// apply makes the bad file. An edit that does not fit fails the test.
func (e edit) apply(t *testing.T, good []byte) string {
	t.Helper()
	if e.old == "" {
		return e.new
	}
	if !strings.Contains(string(good), e.old) {
		t.Fatalf("%s: the hull has no %s", e.what, e.old)
	}
	return strings.Replace(string(good), e.old, e.new, 1)
}

func TestBadKittiwakes(t *testing.T) {
	_, good := builtIn(t, "Kittiwake")
	for _, e := range badKittiwakes {
		h, err := hulls.Parse([]byte(e.apply(t, good)), "k.hull.json")
		var fault *hulls.Fault
		if !errors.As(err, &fault) {
			t.Errorf("%s: error %v; want a *Fault", e.what, err)
			continue
		}
		if got, want := err.Error(), "k.hull.json: "+e.want; got != want {
			t.Errorf("%s:\n got %s\nwant %s", e.what, got, want)
		}
		if strings.ContainsAny(err.Error(), "\n\r\x00\x1b\u202e") || len(err.Error()) > 1000 {
			t.Errorf("%s: not one short plain line: %q", e.what, err)
		}
		if fault.Value == "" || fault.Limit == "" || fault.Mend == "" {
			t.Errorf("%s: value, limit or mend is missing: %+v", e.what, fault)
		}
		if !reflect.DeepEqual(h, hulls.Hull{}) {
			t.Errorf("%s: a refused file gave a hull", e.what)
		}
	}
}

// Wherever a good file is cut off, it is refused in one line.
func TestTruncatedAnywhere(t *testing.T) {
	_, good := builtIn(t, "Avocet")
	for n := range len(good) - 2 { // the last line break may be missing
		_, err := hulls.Parse(good[:n], "a")
		if err == nil || strings.Contains(err.Error(), "\n") {
			t.Fatalf("cut after %d bytes: error %v", n, err)
		}
	}
}
