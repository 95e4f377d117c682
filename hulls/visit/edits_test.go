package visit

// This file tests every kind of edit by one helper: apply, undo, redo, and
// replay through JSON give the same bytes.

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/fields"
)

func document(t *testing.T, name string) Document {
	t.Helper()
	data, _ := assets.Hull(name)
	h, err := hulls.Parse(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return New(name, h)
}

// built finds built-in hulls only.
func built(name string) (hulls.Hull, error) {
	data, ok := assets.Hull(name)
	if !ok {
		return hulls.Hull{}, fmt.Errorf("no built-in hull of that name")
	}
	return hulls.Parse(data, name)
}

// full is a document whose visit has every key of the format, with a nut being
// tried.
func full(t *testing.T) Document {
	t.Helper()
	data, err := os.ReadFile("testdata/full.visit.json")
	if err != nil {
		t.Fatal(err)
	}
	d, report := Open(data, "full.visit.json", built)
	if err := report.Err(); err != nil {
		t.Fatal(err)
	}
	d.Trial.Steps[1] = 1 // something is being tried
	return d
}

// edits are good examples of every kind there is, for a document like full's.
func edits(t *testing.T) []Edit {
	data, _ := assets.Hull("Wren")
	var compact bytes.Buffer
	if err := json.Compact(&compact, data); err != nil {
		t.Fatal(err)
	}
	leaf := Leaf{ClockDeg: 30, Goes: Thou(8), Stops: Thou(10), Note: `"by feel" & <blind>`}
	aboard := Visit{HullName: "Wren", Date: "2026-06-01", State: State{Boat: "afloat"},
		Events: []Event{{Move: &Move{NutFlats: map[string]float64{"aft port": 1}}}}}
	return []Edit{
		&TurnNut{Mount: "fore port", Steps: 2, By: 2},
		&TurnPair{First: "fore port", FirstSteps: 2, Second: "fore starboard", SecondSteps: 3.5, By: 2},
		&SlideMount{Mount: "aft starboard", MM: -1.25, By: -1.25},
		&RecordTry{Date: "2026-05-16"},
		&HoldShaft{Held: "bolted"},
		&Float{Afloat: true},
		&Float{Afloat: false},
		&Lever{On: true},
		&Power{ThrustN: 1000, TorqueNM: 300},
		&BackToDrawn{},
		&SetDate{Date: "2026-05-13"},
		&SetState{State: State{Boat: "trailer", FuelPercent: Known(0), MountAgeMonths: Known(30)}},
		&SetState{},
		&SetLeaves{Leaves: LeafSet{Leaves: []float64{5, 2, 2, 3}, Unit: InThou, MostStacked: DefaultStacked, FeelError: Thou(0.3)}},
		&SetLeaves{},
		&SetRule{Rule: Rule{Limits: PerInch, Limit: Thou(1), Named: "an inch, a thou"}},
		&SetRule{},
		&SetTarget{Target: Target{Spread: MM(0.1), OpensAtDeg: 180, Reason: "hogs"}},
		&SetTarget{},
		&FindMount{Found: MountFound{Mount: "fore port", Slide: Forbidden}},
		&FindMount{Found: MountFound{Mount: "aft port", StudLeftMM: Known(30)}},
		&LookOver{Finding: Finding{Check: "bed sound", Finding: "failed", Note: "screws spin"}},
		&LookOver{Finding: Finding{Check: "strut firm", Finding: "failed"}},
		&RemoveFinding{Check: "strut firm"},
		&NoteVisit{Note: "owner back on Friday"},
		&NoteVisit{},
		&MindCautions{Minded: true},
		&MindCautions{},
		&SetReach{FromDeg: 270, ToDeg: 90},
		&SetReach{ToDeg: 360},
		&ChangeHull{Changes: []HullChange{{Pointer: "/mounts/0/thread", Key: "mount_thread", Value: fields.Value{Text: "M16x1.5"}, Plus: -1}}},
		&ChangeHull{Changes: []HullChange{
			{Pointer: "/engine/mass_kg", Key: "engine_mass", Number: true, Value: fields.Value{Number: 401.5}, Plus: 12},
			{Pointer: "/mounts/1/at_mm/0", Key: "mount_x", Number: true, Value: fields.Value{Number: 741}, Plus: -1},
		}},
		&BeginGauging{Date: "2026-05-16", Gauging: Gauging{Held: "seated", Seating: 2, ShaftTurnDeg: 180}},
		&BeginGauging{Gauging: Gauging{Held: "snug", BoltsIn: true, Readings: []Reading{leaf, Pilot{Enters: "freely"}}}},
		&ChangeGauging{Event: 0, Gauging: Gauging{Held: "centred", HeldBy: "scale"}},
		&AddReading{Event: 4, Reading: OneReading{leaf}},
		&AddReading{Event: 0, Reading: OneReading{Dial{On: "rim", ClockDeg: 90, Reads: Thou(4)}}},
		&AddReadings{Event: 0, Readings: []OneReading{{leaf}, {Pilot{Enters: "not"}}}},
		&ChangeReading{Event: 0, At: 2, Reading: OneReading{RunOut{Half: ShaftSide, On: "face", TIR: MM(0.1), LowDeg: Known(0)}}},
		&RemoveReading{Event: 0, At: 12},
		&RecordMove{Date: "2026-05-16", Move: Move{NutFlats: map[string]float64{"aft port": -0.5}, SlideMM: map[string]float64{"fore port": 1}}},
		&ChangeMove{Event: 1, Move: Move{SlideMM: map[string]float64{"fore starboard": 2}, Note: "only slid"}},
		&RecordFastening{Fasten: Fasten{What: "aft pair", Torque: Torque{60, InLbFt}}},
		&ChangeFastening{Event: 2, Fasten: Fasten{What: "fore port", Note: "by feel"}},
		&RecordFastening{Fasten: Fasten{What: "round 2", Kind: FastenedCouplingBolts, Round: 2, Torque: Torque{20, InNM}}},
		&SetBolts{Bolts: Bolts{Maker: Torque{34, InNM}}},
		&SetBolts{},
		&HandOver{HandedOver: HandedOver{TurnedByHand: "heavy", NutsMarked: true}},
		&HandOver{HandedOver: HandedOver{Date: "2026-05-17", Note: "owner aboard"}},
		&HandOver{},
		&SetSeal{Seal: Seal{Kind: SealFace, PressedMM: Maybe{Known: true, Value: 19}, Freed: true}},
		&SetSeal{},
		&SetUnderPower{UnderPower: UnderPower{ThrustN: 900, TorqueNM: 200}},
		&SetUnderPower{},
		NewSetLinked(Linked{Job: BoxToShaft, Other: "Avocet, engine", OtherMoved: true}),
		NewSetLinked(Linked{}),
		&NoteSymptom{Symptom: "knocks"},
		&NoteSymptom{Symptom: "knocks", Gone: true},
		&AnswerTest{Test: "shake the strut", Answer: "bad", Note: "loose at the keel"},
		&AnswerTest{Test: "shake the strut", Answer: "good"},
		&AnswerTest{Test: "shake the strut"},
		&DateEvent{Event: 3, Date: "2026-05-15"},
		&DateEvent{Event: 1},
		&RemoveEvent{Event: 1},
		&OpenVisit{Visit: aboard, HullName: "Wren", Hull: compact.Bytes()},
		&OpenHull{HullName: "Wren", Hull: compact.Bytes()},
	}
}

// exercise is the one helper.
func exercise(t *testing.T, start Document, e Edit) {
	t.Helper()
	first := start.Encode()
	h := NewHistory(start)
	if err := h.Do(e); err != nil {
		t.Fatalf("%s: %v", e.Name(), err)
	}
	now := h.Now()
	done := now.Encode()
	if !bytes.Equal(start.Encode(), first) {
		t.Errorf("%s changed the document it was given", e.Name())
	}
	if h.Undo() != e {
		t.Errorf("%s: undo does not say which edit it undid", e.Name())
	}
	if now = h.Now(); !bytes.Equal(now.Encode(), first) {
		t.Errorf("%s: undo does not lead back", e.Name())
	}
	h.Redo()
	if now = h.Now(); !bytes.Equal(now.Encode(), done) {
		t.Errorf("%s: redo does not lead forward again", e.Name())
	}
	data, err := Marshal(e)
	if err != nil {
		t.Fatal(err)
	}
	again, err := Unmarshal(data)
	if err != nil {
		t.Fatalf("%s: %v", e.Name(), err)
	}
	replayed, err := again.Apply(start)
	if err != nil || !bytes.Equal(replayed.Encode(), done) {
		t.Errorf("%s: replayed from %s it lands elsewhere (%v)", e.Name(), data, err)
	}
	if id, _ := e.Words(); id == "" {
		t.Errorf("%s: has no words", e.Name())
	}
}

func TestEveryEditCanBeDoneUndoneAndReplayed(t *testing.T) {
	start := full(t)
	moved, err := (&TurnNut{Mount: "aft port", Steps: -1.5}).Apply(start)
	if err != nil {
		t.Fatal(err)
	}
	tried := map[string]bool{}
	for _, e := range edits(t) {
		exercise(t, start, e)
		exercise(t, moved, e)
		tried[e.Name()] = true
	}
	for _, name := range Kinds() {
		if !tried[name] {
			t.Errorf("no example of the edit %q: add one to this test", name)
		}
	}
}

// inTurn are examples that can be done one after the other: none needs an event
// that one before it took out.
func inTurn(t *testing.T) []Edit {
	var list []Edit
	for _, e := range edits(t) {
		switch e.(type) {
		case *RemoveEvent, *OpenVisit, *OpenHull:
		default:
			list = append(list, e)
		}
	}
	return append(list, &RemoveEvent{Event: 1}, &OpenHull{HullName: "Wren", Hull: wren(t)}, &TurnNut{Mount: "aft port", Steps: 1})
}

func wren(t *testing.T) []byte {
	data, ok := assets.Hull("Wren")
	if !ok {
		t.Fatal("no Wren")
	}
	return data
}

// A whole day's edits written and replayed land where they landed.
func TestReplayOfManyEdits(t *testing.T) {
	start := full(t)
	h := NewHistory(start)
	var log [][]byte
	for _, e := range inTurn(t) {
		if err := h.Do(e); err != nil {
			t.Fatal(err)
		}
		data, err := Marshal(e)
		if err != nil {
			t.Fatal(err)
		}
		log = append(log, data)
	}
	// The start too is written and read, as from a file.
	read, err := ParseDocument(start.Encode(), "start")
	if err != nil {
		t.Fatal(err)
	}
	got, err := Replay(read, log)
	if want := h.Now(); err != nil || !bytes.Equal(got.Encode(), want.Encode()) {
		t.Errorf("the replay lands elsewhere (%v)", err)
	}
	bad := [][]byte{log[0], []byte(`{"edit":"fly"}`), log[1]}
	if _, err := Replay(read, bad); err == nil || !strings.HasPrefix(err.Error(), "edit 2: ") {
		t.Errorf("a bad edit among good ones: %v", err)
	}
}
