package visit

// Bad visits: each change of the example must be refused in one line that says
// where, what, the limit and the mend.

import (
	"errors"
	"strings"
	"testing"

	"aligner/hulls"
)

// badFiles are changes of the example; the first place of old becomes new, and
// old "" replaces all.
var badFiles = []struct{ what, old, new, want string }{
	// The bytes.
	{"empty", "", "", `found an empty file; wanted a visit in JSON; give a visit file`},
	{"a hull", "", `{"format": "hull/1"}`, `format (line 1): found "hull/1"; wanted "visit/1"; give a visit file`},
	{"a later format", "visit/1", "visit/2", `format (line 1): found "visit/2"; wanted "visit/1"; give a visit file`},
	{"truncated", "", `{"format": "visit/1", "events": [`, `events (line 1): found the end of the file; wanted the rest of the visit; the file is cut off: copy it again`},
	{"too large", "", strings.Repeat(" ", MaxFileBytes+1), `found more than 4194304 bytes; wanted at most 4194304 bytes; give a visit file`},
	{"too deep", "", strings.Repeat("[", 100000), `[0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0] (line 1): found values nested more than 16 deep; wanted at most 16; give a visit file`},
	{"NaN", `"goes_thou": 8`, `"goes_thou": NaN`, `events[0].gauging.readings[0].goes_thou (line 6): found "NaN"; wanted a finite number; give the number in digits`},
	{"more after it", `]}`, `]} {}`, `events[0] (line 6): found "{"; wanted JSON; look there for a comma, colon or quote missing or too many, a decimal comma, a comment`},
	// Keys.
	{"no hull", `"hull": "kittiwake.hull.json", `, ``, `hull (line 1): found nothing; wanted the key hull; add it`},
	{"hull a number", `"kittiwake.hull.json"`, `7`, `hull (line 1): found 7; wanted a hull file's path beside the visit, a built-in name, or a hull; name the hull in quotes, or embed it`},
	{"a broken hull", `"kittiwake.hull.json"`, `{"format": "hull/1"}`, `hull.name (line 1): found nothing; wanted the key name; add it`},
	{"a result", `"rule"`, `"verdict": "within", "rule"`, `verdict (line 3): found an unknown key; wanted no results: a visit holds what was put in; delete it`},
	{"hours for degrees", `"clock_deg": 0`, `"clock": "12:00"`, `events[0].gauging.readings[0].clock (line 6): found an unknown key; wanted clock_deg, in degrees looking forward; write 1:30 as 45`},
	{"wrong unit", `"goes_thou": 8`, `"goes_in": 0.008`, `events[0].gauging.readings[0].goes_in (line 6): found an unknown key; wanted goes_thou, in thousandths of an inch; convert the number and write goes_thou`},
	{"both units", `"goes_thou": 8`, `"goes_thou": 8, "goes_mm": 0.2`, `events[0].gauging.readings[0].goes_mm (line 6): found goes_thou and goes_mm; wanted one of the two; keep the one that was measured`},
	{"both leaves", `"leaves_thou"`, `"leaves_mm": [0.1], "leaves_thou"`, `leaves_mm (line 2): found leaves_thou and leaves_mm; wanted one of the two; keep the one that was measured`},
	{"no leaf", `[1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25]`, `[]`, `leaves_thou (line 2): found a list of 0; wanted at least one leaf; add the leaves, or leave the key out for the usual ones`},
	{"no limit", `"limit_thou": 3, `, ``, `rule (line 3): found neither; wanted limit_thou or limit_mm; add what was measured`},
	{"turns", `"nut_flats"`, `"nut_turns"`, `events[1].move.nut_turns (line 7): found an unknown key; wanted nut_flats, in flats; a turn is six flats`},
	{"an unknown kind", `"kind": "leaf"`, `"kind": "Leaf"`, `events[0].gauging.readings[0].kind (line 6): found "Leaf"; wanted one of "leaf", "leaf round", "rim step", "dial", "run-out", "clearance", "pilot"; choose one of these, in small letters`},
	{"no kind", `"kind": "leaf", `, ``, `events[0].gauging.readings[0].kind (line 6): found nothing; wanted the key kind; add it: leaf, leaf round, rim step, dial, run-out, clearance, pilot`},
	{"two in one", `{"move"`, `{"fasten": {"what": "all"}, "move"`, `events[1] (line 7): found 2 things done; wanted one of gauging, move, fasten; give each thing done an event of its own, in the order they happened`},
	{"nothing done", `{"move": {"nut_flats": {"fore port": 2, "fore starboard": 2}, "slide_mm": {}}}`, `{}`, `events[1] (line 7): found 0 things done; wanted one of gauging, move, fasten; give each thing done an event of its own, in the order they happened`},
	{"flats a text", `"fore port": 2`, `"fore port": "2"`, `events[1].move.nut_flats["fore port"] (line 7): found "2"; wanted a number of flats; write a number`},
	{"a mount twice", `"fore port": 2`, `"fore port": 2, "fore port": 3`, `events[1].move.nut_flats["fore port"] (line 7): found the key a second time; wanted each key once (first on line 7); delete one of the two`},
	{"null", `"events": [`, `"target": null, "events": [`, `target (line 4): found null; wanted a value; give the value, or leave an optional key out`},
	// Numbers.
	{"wrong way round", `"goes_thou": 8, "stops_thou": 10`, `"goes_thou": 10, "stops_thou": 8`, `events[0].gauging.readings[0] (line 6): found goes 10 thou, stops 8 thou; wanted a thinner leaf that goes than the one that stops; see whether the two are the wrong way round`},
	{"neither limit", `, "goes_thou": 8, "stops_thou": 10`, ``, `events[0].gauging.readings[0] (line 6): found neither; wanted goes_thou or goes_mm, or stops_thou or stops_mm; add what was measured`},
	{"a gap below nothing", `"goes_thou": 8`, `"goes_thou": -8`, `events[0].gauging.readings[0].goes_thou (line 6): found -8 thou; wanted 0 to 2000 thou; correct the number or its unit`},
	{"past 12", `"clock_deg": 0`, `"clock_deg": 360`, `events[0].gauging.readings[0].clock_deg (line 6): found 360; wanted 0 to under 360 degrees; give the position clockwise from 12, looking forward`},
	{"a leaf as thick as a finger", `25]`, `2500]`, `leaves_thou[11] (line 2): found 2500 thou; wanted leaves of 0.1 to 500 thou (0.0025 to 12.7 mm); correct the number or its unit`},
	{"seating nought", `"held": "seated"`, `"held": "seated", "seating": 0`, `events[0].gauging.seating (line 5): found 0; wanted 1 or more; count from 1, or leave the key out`},
	{"no such day", `2026-05-14`, `2026-06-31`, `date (line 1): found "2026-06-31"; wanted a date such as 2026-05-14; write year, month and day`},
	{"back in time", `{"gauging"`, `{"date": "2026-05-13", "gauging"`, `events[0].date (line 5): found 2026-05-13; wanted no date before 2026-05-14; put the events in the order they happened, or correct the date`},
	{"a note of two lines", `"events"`, `"note": "one\ntwo", "events"`, `note (line 4): found "one\ntwo"; wanted letters, digits and signs that can be printed; write it on one line, without control characters`},
	{"no hull's name", `"kittiwake.hull.json"`, `""`, `hull (line 1): found ""; wanted a text; say it in a few words`},
	// Against the hull.
	{"an unknown mount", `"fore port": 2`, `"front left": 2`, `events[1].move.nut_flats["front left"] (line 7): found "front left"; wanted a mount of Kittiwake: fore port, fore starboard, aft port, aft starboard; write one of these`},
	{"turned out of the boat", `"fore port": 2`, `"fore port": 900`, `events[1].move.nut_flats["fore port"] (line 7): found 900, which is 211.667 mm; wanted less than 100 mm; correct the number`},
}

func TestBadFiles(t *testing.T) {
	for _, b := range badFiles {
		text := b.new
		if b.old != "" {
			if text = strings.Replace(example, b.old, b.new, 1); text == example {
				t.Fatalf("%s: the change does not fit", b.what)
			}
		}
		_, report := Open([]byte(text), "bad.visit.json", built)
		err := report.Err()
		var fault *hulls.Fault
		if !errors.As(err, &fault) {
			t.Errorf("%s: not refused", b.what)
			continue
		}
		if got := strings.TrimPrefix(fault.Error(), "bad.visit.json: "); got != b.want {
			t.Errorf("%s:\n got %s\nwant %s", b.what, got, b.want)
		}
	}
}

// However long or often, a fault stays one line of reasonable length.
func TestHostileListsStopEarly(t *testing.T) {
	many := strings.Repeat(`{"fasten": {"what": "x"}},`, mostEvents)
	// Short as it stands, too long with its line breaks.
	packed := strings.Repeat(`{"gauging":{"held":"seated","readings":[`+strings.Repeat(`{"kind":"pilot","enters":"not"},`, 99)+`{"kind":"pilot","enters":"not"}]}},`, mostEvents-1)
	for _, text := range []string{
		`{"format": "visit/1", "hull": "Eider", "date": "", "events": [` + many + `{}]}`,
		`{"format": "visit/1", "hull": "Eider", "date": "", "leaves_thou": [` + strings.Repeat("1,", mostItems) + `1]}`,
		`{"format": "visit/1", "hull": "Eider", "date": "", "` + strings.Repeat("k", 1<<20) + `": 1}`,
		`{"format": "visit/1", "hull": "Eider", "date": "", "events": [` + packed + `{"fasten": {"what": "x"}}]}`,
	} {
		_, report := Open([]byte(text), "", built)
		if err := report.Err(); err == nil || len(err.Error()) > 1200 {
			t.Errorf("%.60s...: told %.80v", text, err)
		}
	}
}
