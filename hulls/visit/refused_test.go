package visit

// This file tests what edits refuse: with a reason, and leaving everything as
// it was.

import (
	"bytes"
	"math"
	"slices"
	"strings"
	"testing"
)

// bad are edits no document like full's takes, each with a part of the reason.
var bad = []struct {
	edit   Edit
	reason string
}{
	{&TurnNut{Mount: "nowhere", Steps: 1}, `no mount "nowhere" on Eider`},
	{&TurnNut{Mount: "fore port", Steps: math.NaN()}, "must be within 100 mm"},
	{&TurnNut{Mount: "fore port", Steps: 1e9}, "must be within 100 mm"},
	{&TurnPair{First: "fore port", Second: "fore port"}, "must be two mounts"},
	{&TurnPair{First: "fore port", Second: "nowhere"}, `no mount "nowhere"`},
	{&TurnPair{First: "fore port", FirstSteps: 1, Second: "aft port", SecondSteps: math.Inf(-1)}, "aft port: -Inf steps"},
	{&SlideMount{Mount: "nowhere"}, `no mount "nowhere"`},
	{&SlideMount{Mount: "fore port", MM: math.Inf(1)}, "must be within 100 mm"},
	{&HoldShaft{Held: "snug"}, `must be one of ["hanging"`},
	{&Power{ThrustN: math.NaN()}, "must be within 100000"},
	{&OpenHull{HullName: "bad", Hull: []byte(`{"format": "hull/9"}`)}, `found "hull/9"`},
	{&OpenVisit{Visit: Visit{HullName: "bad"}, HullName: "bad", Hull: []byte(`{}`)}, "found nothing"},
	{&SetDate{Date: "14.5.2026"}, "a date such as 2026-05-14"},
	{&SetDate{Date: "2026-02-30"}, "a date such as 2026-05-14"},
	{&SetDate{Date: "2026-05-16"}, "events[1].date: found 2026-05-15; wanted no date before 2026-05-16"},
	{&SetState{State: State{Boat: "flying"}}, `state.boat: found "flying"`},
	{&SetState{State: State{FuelPercent: Known(math.NaN())}}, "state.fuel_percent: found NaN per cent; wanted 0 to 100"},
	{&SetState{State: State{Note: "two\nlines"}}, "write it on one line"},
	{&SetLeaves{Leaves: LeafSet{Leaves: []float64{1}, Unit: "in"}}, "one of"},
	{&SetLeaves{Leaves: LeafSet{Leaves: []float64{-1}, Unit: InMM}}, "leaves of 0.1 to 500 thou"},
	{&SetLeaves{Leaves: LeafSet{FeelError: Thou(50)}}, "0 to 10 thou"},
	{&SetRule{Rule: Rule{Limits: LargestGap, Named: "none"}}, "add the limit"},
	{&SetRule{Rule: Rule{Limits: "angle", Limit: Thou(3), Named: "none"}}, `rule.limits: found "angle"`},
	{&SetRule{Rule: Rule{Limits: LargestGap, Limit: Thou(3)}}, "rule.named"},
	{&SetTarget{Target: Target{Spread: Thou(3), OpensAtDeg: 360, Reason: "hogs"}}, "0 to under 360 degrees"},
	{&SetTarget{Target: Target{Spread: Thou(3)}}, "target.reason"},
	{&SetTarget{Target: Target{Reason: "hogs"}}, "delete the target to aim at no gap"},
	{&FindMount{Found: MountFound{Mount: "nowhere"}}, "a mount of Eider: fore port, fore starboard"},
	{&FindMount{Found: MountFound{Mount: "fore port", Mark: "gone"}}, `mounts[1].mark: found "gone"`},
	{&SetState{State: State{EngineHours: Known(-1)}}, "state.engine_hours: found -1 hours"},
	{&FindMount{Found: MountFound{Mount: "fore port", Nut: "loose"}}, `mounts[1].nut: found "loose"`},
	{&LookOver{Finding: Finding{Check: "strut firm", Finding: "fine"}}, `"good", "failed", "skipped"`},
	{&LookOver{Finding: Finding{Check: " ", Finding: "good"}}, "say it in a few words"},
	{&RemoveFinding{Check: "nothing"}, `no check "nothing"`},
	{&NoteVisit{Note: "\u202eturned round"}, "letters, digits and signs that can be printed"},
	{&NoteVisit{Note: strings.Repeat("long ", 500)}, "2500 characters; wanted at most 2000"},
	{&SetReach{FromDeg: 270, ToDeg: 400}, "reach_deg[0]: found 270 to 400 degrees"},
	{&SetReach{FromDeg: 90, ToDeg: 90}, "two positions of 0 to under 360 degrees"},
	{&BeginGauging{Gauging: Gauging{Held: "by hand"}}, `"hanging", "centred", "seated", "snug", "bolted"`},
	{&BeginGauging{Gauging: Gauging{Held: "seated", Seating: -1}}, "seating"},
	{&BeginGauging{Gauging: Gauging{Held: "seated", ShaftTurnDeg: 400}}, "-360 to 360 degrees"},
	{&BeginGauging{Date: "2026-05-14", Gauging: Gauging{Held: "seated"}}, "no date before 2026-05-15"},
	{&ChangeGauging{Event: 1, Gauging: Gauging{Held: "seated"}}, "event 1 is a move; must be a gauging"},
	{&ChangeGauging{Event: 0, Gauging: Gauging{Held: "seated", Readings: []Reading{Pilot{Enters: "not"}}}}, "must hold none"},
	{&AddReading{Event: 0}, "no reading"},
	{&AddReadings{Event: 0}, "no reading"},
	{&AddReadings{Event: 0, Readings: []OneReading{{Leaf{Goes: Thou(2)}}, {Leaf{Goes: Thou(5), Stops: Thou(5)}}}}, "goes 5 thou, stops 5 thou"},
	{&AddReading{Event: 5, Reading: OneReading{Pilot{Enters: "not"}}}, "no event 5: this visit has 5"},
	{&AddReading{Event: 0, Reading: OneReading{Leaf{Goes: Thou(5), Stops: Thou(5)}}}, "goes 5 thou, stops 5 thou"},
	{&AddReading{Event: 0, Reading: OneReading{Leaf{Goes: MM(0.1), Stops: Thou(3)}}}, "goes 0.1 mm, stops 3 thou"},
	{&AddReading{Event: 0, Reading: OneReading{Leaf{ClockDeg: 90}}}, "neither goes nor stops"},
	{&AddReading{Event: 0, Reading: OneReading{Leaf{ClockDeg: -30, Goes: Thou(2)}}}, "found -30; wanted 0 to under 360"},
	{&AddReading{Event: 0, Reading: OneReading{Leaf{Goes: Thou(math.Inf(1))}}}, "goes_thou: found +Inf thou"},
	{&AddReading{Event: 0, Reading: OneReading{LeafRound{Leaf: Thou(3)}}}, "no arc"},
	{&AddReading{Event: 0, Reading: OneReading{LeafRound{Leaf: Thou(3), Enters: []Arc{{300, 40}}, Stops: []Arc{{30, 90}}}}}, "both enter and not enter"},
	{&AddReading{Event: 0, Reading: OneReading{LeafRound{Leaf: Thou(3), Enters: []Arc{{40, 40}}}}}, "all round as [0, 360]"},
	{&AddReading{Event: 0, Reading: OneReading{RimStep{Goes: Thou(3)}}}, "the half the straightedge lies on"},
	{&AddReading{Event: 0, Reading: OneReading{Dial{On: "rim", Reads: Thou(3), RadiusMM: 30, CarriedBy: ShaftSide}}}, "no radius on a rim"},
	{&AddReading{Event: 0, Reading: OneReading{RunOut{Half: "gearbox", On: "rim", TIR: Thou(3)}}}, `one of "engine side", "shaft side"`},
	{&AddReading{Event: 0, Reading: OneReading{RunOut{Half: ShaftSide, On: "rim", TIR: Thou(-3)}}}, "0 to 500 thou"},
	{&AddReading{Event: 0, Reading: OneReading{Clearance{Where: "keel", End: "aft", Goes: Thou(3)}}}, "Eider: log, middle, strut"},
	{&AddReading{Event: 0, Reading: OneReading{Pilot{Enters: "maybe"}}}, `"freely", "with force", "not"`},
	{&ChangeReading{Event: 0, At: 13, Reading: OneReading{Pilot{Enters: "not"}}}, "no reading 13: the gauging has 13"},
	{&ChangeReading{Event: 0, At: 1}, "no reading"},
	{&RemoveReading{Event: 0, At: -1}, "no reading -1"},
	{&RemoveReading{Event: -1}, "no event -1"},
	{&RecordMove{Move: Move{NutFlats: map[string]float64{"nowhere": 1}}}, "a mount of Eider"},
	{&RecordMove{Move: Move{NutFlats: map[string]float64{"fore port": 990}}}, "less than 100 mm"},
	{&RecordMove{Move: Move{SlideMM: map[string]float64{"fore port": math.NaN()}}}, "-100 to 100 mm"},
	{&ChangeMove{Event: 2}, "event 2 is a fasten; must be a move"},
	{&RecordFastening{}, "say it in a few words"},
	{&RecordFastening{Fasten: Fasten{What: "bolts", Torque: Torque{-1, InNM}}}, "0 to 5000 N m"},
	{&ChangeFastening{Event: 9}, "no event 9"},
	{&DateEvent{Event: 0, Date: "2026-05-20"}, "events[1].date: found 2026-05-15; wanted no date before 2026-05-20"},
	{&RemoveEvent{Event: 5}, "no event 5"},
}

func TestRefusedEditsChangeNothing(t *testing.T) {
	start := full(t)
	before := start.Encode()
	for _, c := range bad {
		h := NewHistory(start)
		err := h.Do(c.edit)
		if err == nil || !strings.Contains(err.Error(), c.reason) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s %+v: told %q, want a line with %q", c.edit.Name(), c.edit, err, c.reason)
		}
		now := h.Now()
		if !bytes.Equal(now.Encode(), before) || h.CanUndo() != nil {
			t.Errorf("%s %+v: refused, yet something changed", c.edit.Name(), c.edit)
		}
		if d, _ := c.edit.Apply(start); !bytes.Equal(d.Encode(), before) {
			t.Errorf("%s %+v: refused, yet gives another document", c.edit.Name(), c.edit)
		}
	}
}

func TestSeatingNeedsAPilot(t *testing.T) {
	d := document(t, "Eider")
	d.Hull.Coupling.PilotDiameterMM = 0
	for _, e := range []Edit{&HoldShaft{Held: "seated"}, &BeginGauging{Gauging: Gauging{Held: "seated"}},
		&BeginGauging{Gauging: Gauging{Held: "centred", Readings: []Reading{Pilot{Enters: "not"}}}}} {
		if _, err := e.Apply(d); err == nil || !strings.Contains(err.Error(), "has no pilot") {
			t.Errorf("%s: told %v", e.Name(), err)
		}
	}
	if d := New("Eider", d.Hull); d.Trial.Held != "centred" {
		t.Errorf("without a pilot the shaft is first held %s", d.Trial.Held)
	}
}

func TestUnreadableEditsAreRefused(t *testing.T) {
	for _, s := range []string{``, `{}`, `[]`, `null`, `{"edit":1}`, `{"edit":"fly"}`, `{"edit":"float"}`,
		`{"edit":"float","afloat":true,"high":1}`, `{"edit":"float","Afloat":true}`, `{"edit":"float","afloat":null}`,
		`{"edit":"float","afloat":true,"afloat":true}`, `{"edit":"float","afloat":true} 1`,
		`{"edit":"turn nut","mount":1,"steps":1,"by":1}`, `{"edit":"turn nut","mount":"fore port","steps":1e999,"by":0}`,
		`{"edit":"set rule","rule":{}}`, `{"edit":"set state","state":{"Boat":"afloat"}}`,
		`{"edit":"add reading","event":0,"reading":{"kind":"leaf"}}`, `{"edit":"add reading","event":0,"reading":null}`,
		`{"edit":"add reading","event":0.5,"reading":{"kind":"pilot","enters":"not"}}`,
		`{"edit":"open visit","hull_name":"x","hull":{},"visit":{"format":"visit/2"}}`} {
		if e, err := Unmarshal([]byte(s)); err == nil {
			t.Errorf("%s: read as %+v", s, e)
		}
	}
}

func TestOutsideAndWarnings(t *testing.T) {
	d := document(t, "Bench")
	if got := Warnings(d); got != nil {
		t.Errorf("nothing is tried, yet warned: %q", got)
	}
	for _, e := range []Edit{&TurnNut{Mount: "aft port", Steps: 36}, &SlideMount{Mount: "fore port", MM: -90},
		&TurnNut{Mount: "fore starboard", Steps: 1}, &SlideMount{Mount: "aft starboard", MM: 1},
		&FindMount{Found: MountFound{Mount: "fore starboard", Nut: Stuck}},
		&FindMount{Found: MountFound{Mount: "fore port", Nut: Stuck}}, // its nut is not touched
		&FindMount{Found: MountFound{Mount: "aft starboard", Slide: Forbidden}}} {
		var err error
		if d, err = e.Apply(d); err != nil {
			t.Fatal(err)
		}
	}
	if got := d.Outside(); !slices.Equal(got, []string{"fore port", "aft port"}) {
		t.Errorf("outside their range: %q", got)
	}
	got := Warnings(d)
	for i, want := range []string{"fore port: slid -90 mm", "fore starboard: its nut is turned here, but is stuck",
		"aft port: raised ", "aft starboard: it is slid here, but its slide is forbidden"} {
		if i >= len(got) || !strings.HasPrefix(got[i], want) {
			t.Fatalf("warnings %q, want line %d to begin %q", got, i+1, want)
		}
	}
	if len(got) != 4 {
		t.Errorf("%d warnings: %q", len(got), got)
	}
}
