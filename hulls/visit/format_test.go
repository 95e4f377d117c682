package visit

// This file tests the visit format: the law of its canonical form, its
// defaults, and that the reader takes anything without a panic.

import (
	"bytes"
	"os"
	"reflect"
	"strings"
	"testing"

	"aligner/assets"
)

// roundTrip holds the law of the canonical form: written and read it is the
// same visit, written again the same bytes.
func roundTrip(t *testing.T, v Visit) {
	t.Helper()
	once := Encode(v)
	again, err := Parse(once, "again")
	if err != nil {
		t.Fatalf("what was read is refused when written: %v\n%s", err, once)
	}
	if !reflect.DeepEqual(v, again) {
		t.Fatalf("reads back as another visit:\n%+v\n%+v", v, again)
	}
	if twice := Encode(again); !bytes.Equal(once, twice) {
		t.Fatalf("the second writing differs:\n%s\n%s", once, twice)
	}
}

func TestFullVisitIsCanonical(t *testing.T) {
	data := fullFile(t)
	v, err := Parse(data, "full.visit.json")
	if err != nil {
		t.Fatal(err)
	}
	roundTrip(t, v)
	// Lists of arcs stand on more lines in the file than they need.
	if got, want := strings.Join(strings.Fields(string(Encode(v))), " "), strings.Join(strings.Fields(string(data)), " "); got != want {
		t.Errorf("writing the full visit changes it:\n%s\n%s", got, want)
	}
}

func TestEmbeddedHullRoundTrip(t *testing.T) {
	for _, name := range assets.HullNames() {
		hull, _ := assets.Hull(name)
		data := []byte(`{"format": "visit/1", "date": "", "hull": ` + string(hull) + `}`)
		v, err := Parse(data, name)
		if err != nil {
			t.Fatal(err)
		}
		roundTrip(t, v)
		d, report := Open(data, name, nil) // nothing has to be found
		if err := report.Err(); err != nil || !reflect.DeepEqual(d.Hull, *v.Embedded) {
			t.Errorf("%s: does not open with its own hull: %v", name, err)
		}
	}
}

// The example every visit file may be made after.
const example = `{"format": "visit/1", "hull": "kittiwake.hull.json", "date": "2026-05-14",
 "state": {"boat": "trailer"}, "leaves_thou": [1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25],
 "rule": {"limits": "largest gap", "limit_thou": 3, "named": "common practice, 3 thou"},
 "events": [
  {"gauging": {"held": "seated", "shaft_turn_deg": 0, "flange_turn_deg": 0,
    "readings": [{"kind": "leaf", "clock_deg": 0, "goes_thou": 8, "stops_thou": 10}]}},
  {"move": {"nut_flats": {"fore port": 2, "fore starboard": 2}, "slide_mm": {}}}
 ]}`

func TestExample(t *testing.T) {
	d, report := Open([]byte(example), "example", built)
	if err := report.Err(); err != nil || len(report.Doubts) > 0 {
		t.Fatalf("%v, doubts %v", err, report.Doubts)
	}
	want := Visit{HullName: "kittiwake.hull.json", Date: "2026-05-14", State: State{Boat: "trailer"},
		Leaves: LeafSet{Leaves: DefaultLeavesThou, Unit: InThou}, Rule: DefaultRule,
		Events: []Event{
			{Gauging: &Gauging{Held: "seated", Readings: []Reading{Leaf{Goes: Thou(8), Stops: Thou(10)}}}},
			{Move: &Move{NutFlats: map[string]float64{"fore port": 2, "fore starboard": 2}}}}}
	if !reflect.DeepEqual(d.Visit, want) {
		t.Errorf("read as\n%+v, want\n%+v", d.Visit, want)
	}
	if d.Hull.Name != "Kittiwake" || d.HullName != "kittiwake.hull.json" || d.Trial.Afloat || d.Trial.Held != "seated" {
		t.Errorf("opens as %+v", d)
	}
	roundTrip(t, d.Visit)
}

// What is left out has the default the format states, and writing leaves
// defaults out.
func TestDefaults(t *testing.T) {
	least := `{"format": "visit/1", "hull": "Eider", "date": "2026-05-14"`
	v, err := Parse([]byte(least+`}`), "least")
	if err != nil {
		t.Fatal(err)
	}
	if v.State.Afloat() || v.Leaves.FeelErrorMM() != Thou(0.3).MM() || v.Found("fore port").Nut != Free || v.Found("fore port").Slide != Free {
		t.Errorf("defaults: %+v", v)
	}
	if r, chosen := v.Rule.Chosen(); chosen || r.LimitMM(100) != Thou(3).MM() || r.Limits != LargestGap {
		t.Errorf("the rule of a visit without one: %+v, chosen %v", r, chosen)
	}
	spelt := least + `, "state": {}, "leaves_stacked": 2, "feel_error_thou": 0.3, "mounts": [], "look_over": [], "events": [], "note": ""}`
	same, err := Parse([]byte(spelt), "spelt")
	if err != nil || !reflect.DeepEqual(v, same) {
		t.Errorf("defaults spelt out read as another visit: %v\n%+v", err, same)
	}
	g := least + `, "mounts": [{"mount": "aft port", "nut": "free", "slide": "free", "note": ""}], "events": [{"date": "", "gauging": {"held": "centred"`
	terse, err1 := Parse([]byte(g+`, "readings": [{"kind": "dial", "on": "face", "clock_deg": 0, "reads_mm": 0}]}}]}`), "terse")
	long, err2 := Parse([]byte(g+`, "held_by": "", "shaft_turn_deg": -0.0, "flange_turn_deg": 0, "apart_mm": 0, "push_n": 0, "lever_on": false,
		"bolts_in": false, "readings": [{"kind": "dial", "on": "face", "carried_by": "shaft side", "clock_deg": 0, "reads_mm": 0,
		"zero_deg": 0, "sag_thou": 0, "radius_mm": 0, "note": ""}], "note": ""}}]}`), "long")
	if err1 != nil || err2 != nil || !reflect.DeepEqual(terse, long) || !bytes.Equal(Encode(terse), Encode(long)) {
		t.Errorf("%v, %v: defaults of a gauging\n%s\n%s", err1, err2, Encode(terse), Encode(long))
	}
}

func TestDoubts(t *testing.T) {
	for _, c := range []struct{ old, new, want string }{
		{`"date": "2026-05-14"`, `"date": ""`, `date: found ""; wanted the date of the visit`},
		{`"boat": "trailer"`, `"boat": "trailer", "hours_since_launch": 3`, `state.hours_since_launch: found 3 hours on trailer`},
		{`"goes_thou": 8`, `"goes_thou": 9.2`, `events[0].gauging.readings[0].goes_thou: found 9.2 thou; wanted a leaf of the set`},
		{`"goes_thou": 8`, `"goes_thou": 7`, ``}, // 2 and 5 together
		{`"stops_thou": 10`, `"stops_mm": 0.254`, ``},
		{`"limit_thou": 3`, `"limit_thou": 30`, `rule.limit_thou: found 30 thou; wanted 0.5 to 12 thou as a rule`},
		{`"limit_thou": 3`, `"limit_mm": 3`, `rule.limit_mm: found 118.11 thou`},
		{`{"fore port": 2, "fore starboard": 2}`, `{}`, `events[1].move: found nothing moved`},
		{`"held": "seated"`, `"held": "seated", "bolts_in": true`, `bolts_in: found bolts in, held seated`},
		{`"clock_deg": 0`, `"clock_deg": 0, "radius_mm": 101.6`, `radius_mm: found 101.6 mm; wanted at most 50.8 mm`},
	} {
		text := strings.Replace(example, c.old, c.new, 1)
		if text == example {
			t.Fatalf("%s is not in the example", c.old)
		}
		_, report := Open([]byte(text), "", built)
		var lines []string
		for _, f := range append(report.Refusals, report.Doubts...) {
			f.Line = 0
			lines = append(lines, f.Error())
		}
		told := strings.Join(lines, "\n")
		if c.want == "" && told != "" || !strings.Contains(told, c.want) || len(lines) > 1 {
			t.Errorf("%s: told %q, want %q alone", c.new, told, c.want)
		}
	}
}

func TestUnknownHullIsTold(t *testing.T) {
	_, report := Open([]byte(strings.Replace(example, "kittiwake", "nowhere", 1)), "x.visit.json", built)
	if err := report.Err(); err == nil || !strings.HasPrefix(err.Error(), `hull: found "nowhere.hull.json": no built-in hull`) {
		t.Errorf("told %v", err)
	}
}

func FuzzParse(f *testing.F) {
	data, err := os.ReadFile("testdata/full.visit.json")
	if err != nil {
		f.Fatal(err)
	}
	f.Add(data)
	f.Add([]byte(example))
	hull, _ := assets.Hull("Cormorant")
	f.Add([]byte(`{"format": "visit/1", "date": "", "hull": ` + string(hull) + `}`))
	for _, b := range badFiles {
		if b.old == "" && len(b.new) < 4096 {
			f.Add([]byte(b.new))
		} else if b.old != "" {
			f.Add([]byte(strings.Replace(example, b.old, b.new, 1)))
		}
	}
	eider, err := built("Eider")
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		v, err := Parse(data, "fuzz")
		if err != nil {
			if line := err.Error(); strings.ContainsAny(line, "\n\r\x1b") || line == "" {
				t.Fatalf("not one line: %q", line)
			}
			return
		}
		roundTrip(t, v)
		for _, fault := range Validate(v, &eider).Refusals {
			if fault.Value == "" || fault.Limit == "" || fault.Mend == "" {
				t.Fatalf("a fault without value, limit or mend: %+v", fault)
			}
		}
	})
}

func FuzzUnmarshalEdit(f *testing.F) {
	for _, s := range []string{`{"edit":"turn nut","mount":"fore port","steps":2,"by":2}`, `{"edit":"set rule","rule":null}`,
		`{"edit":"add reading","event":0,"reading":{"kind":"leaf","clock_deg":45,"goes_thou":2}}`,
		`{"edit":"record move","date":"","move":{"nut_flats":{"fore port":1}}}`, `{"edit":"back to drawn"}`} {
		f.Add([]byte(s))
	}
	eider, err := built("Eider")
	if err != nil {
		f.Fatal(err)
	}
	start := New("Eider", eider)
	f.Fuzz(func(t *testing.T, data []byte) {
		e, err := Unmarshal(data)
		if err != nil {
			return
		}
		next, err := e.Apply(start)
		if err != nil {
			if line := err.Error(); strings.ContainsAny(line, "\n\r\x1b") {
				t.Fatalf("not one line: %q", line)
			}
			return
		}
		again, err := ParseDocument(next.Encode(), "fuzz")
		if err != nil || !reflect.DeepEqual(again, next) {
			t.Fatalf("what an edit made reads back as another document: %v\n%s", err, next.Encode())
		}
	})
}
