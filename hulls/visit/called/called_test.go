package called

// This file tests lines and tables: what is called is what is read, what is
// written reads back, and nothing is taken by halves.

import (
	"reflect"
	"testing"

	"aligner/assets"
	"aligner/hulls/visit"
)

var inchSet = Setting{Unit: visit.InThou, Leaves: visit.DefaultLeavesThou, AskedDeg: 45}

func with(change func(*Setting)) Setting {
	s := inchSet
	change(&s)
	return s
}

func kind(k string) Setting { return with(func(s *Setting) { s.Kind = k }) }

func TestLines(t *testing.T) {
	thou, mm := visit.Thou, visit.MM
	aft := with(func(s *Setting) { s.Seen = visit.LookingAft })
	for _, c := range []struct {
		text string
		in   Setting
		want visit.Reading
	}{
		{"12 3/4", inchSet, visit.Leaf{Goes: thou(3), Stops: thou(4)}},
		{"3/4", inchSet, visit.Leaf{ClockDeg: 45, Goes: thou(3), Stops: thou(4)}},
		{"3", inchSet, visit.Leaf{ClockDeg: 45, Goes: thou(3), Stops: thou(4)}},
		{"6 8", inchSet, visit.Leaf{ClockDeg: 180, Goes: thou(8), Stops: thou(10)}},
		{"25", inchSet, visit.Leaf{ClockDeg: 45, Goes: thou(25)}},
		{"0", inchSet, visit.Leaf{ClockDeg: 45, Stops: thou(1.5)}},
		{"12 0/2", inchSet, visit.Leaf{Stops: thou(2)}},
		{"12 -/1,5", inchSet, visit.Leaf{Stops: thou(1.5)}},
		{"12 3/-", inchSet, visit.Leaf{Goes: thou(3)}},
		{"12 3+4/8", inchSet, visit.Leaf{Goes: thou(7), Stops: thou(8)}},
		{"12 0,05+0,1/0.2mm", inchSet, visit.Leaf{Goes: mm(0.15), Stops: mm(0.2)}},
		{"backbord 3/4@46#ein Grat", inchSet, visit.Leaf{ClockDeg: 270, Goes: thou(3), Stops: thou(4), RadiusMM: 46, Note: "ein Grat"}},
		{"3 3/4", aft, visit.Leaf{ClockDeg: 270, Goes: thou(3), Stops: thou(4)}},
		{"2 9-11:20 2:20-3/11:20-2:20", kind("leaf round"), visit.LeafRound{Leaf: thou(2), Enters: []visit.Arc{{FromDeg: 270, ToDeg: 340}, {FromDeg: 70, ToDeg: 90}}, Stops: []visit.Arc{{FromDeg: 340, ToDeg: 70}}}},
		{"3 /12-12", kind("leaf round"), visit.LeafRound{Leaf: thou(3), Stops: []visit.Arc{{FromDeg: 0, ToDeg: 360}}}},
		{"12 e 2/3", kind("rim step"), visit.RimStep{High: visit.EngineSide, Goes: thou(2), Stops: thou(3)}},
		{"w 3 2", kind("rim step"), visit.RimStep{ClockDeg: 90, High: visit.ShaftSide, Goes: thou(2), Stops: thou(3)}},
		{"12 0/1.5", kind("rim step"), visit.RimStep{Stops: thou(1.5)}},
		{"6 -4", kind("dial"), visit.Dial{On: "face", CarriedBy: visit.ShaftSide, ClockDeg: 180, Reads: thou(-4)}},
		{"+2.5", with(func(s *Setting) { s.Kind, s.On, s.ZeroDeg, s.Sag = "dial", "rim", 90, thou(-6) }), visit.Dial{On: "rim", CarriedBy: visit.ShaftSide, ClockDeg: 45, Reads: thou(2.5), ZeroDeg: 90, Sag: thou(-6)}},
		{"2.5 4:30 @46", kind("run-out"), visit.RunOut{Half: visit.ShaftSide, On: "face", TIR: thou(2.5), LowDeg: visit.Known(135), RadiusMM: 46}},
		{"2,5", kind("run-out"), visit.RunOut{Half: visit.ShaftSide, On: "face", TIR: thou(2.5)}},
		{"12 6.5/7mm", kind("clearance"), visit.Clearance{Where: "log", End: "fore", Goes: mm(6.5), Stops: mm(7)}},
		{"f", kind("pilot"), visit.Pilot{Enters: "freely"}},
		{"g # Farbe", kind("pilot"), visit.Pilot{Enters: "with force", Note: "Farbe"}},
	} {
		got, err := Line(c.text, c.in)
		if err != nil || !reflect.DeepEqual(got, c.want) {
			t.Errorf("%q: %+v, %v; want %+v", c.text, got, err, c.want)
		}
	}
}

func TestFaults(t *testing.T) {
	for _, c := range []struct {
		text, kind string
		why        Why
	}{
		{"", "leaf", Unreadable}, {"quarter past three", "leaf", Unreadable}, {"13 3/4", "leaf", NoPlace},
		{"12 4/3", "leaf", WrongWay}, {"12 3/3", "leaf", WrongWay}, {"-1", "leaf", NoLength}, {"NaN", "leaf", NoLength},
		{"12 -/-", "leaf", NoLength}, {"1e400", "leaf", NoLength}, {"0x3", "leaf", NoLength}, {"3 @0", "leaf", NoLength},
		{"12 2/3", "rim step", NoHalf}, {"12 e 2/3 @40", "rim step", Unreadable},
		{"2", "leaf round", NoArc}, {"2 9-25/", "leaf round", NoArc}, {"2 /", "leaf round", NoArc},
		{"12 5", "clearance", NoPair}, {"maybe", "pilot", Unreadable}, {"x", "dial", NoLength}, {"2 4 5", "run-out", Unreadable},
	} {
		r, err := Line(c.text, kind(c.kind))
		if f, ok := err.(*Fault); !ok || f.Why != c.why || r != nil {
			t.Errorf("%s %q: %v, %v; want %s", c.kind, c.text, r, err, c.why)
		}
	}
}

// TestWrittenReadsBack: every reading of every worked visit, in either direction
// of view and either unit.
func TestWrittenReadsBack(t *testing.T) {
	n := 0
	for _, name := range assets.VisitNames() {
		data, _ := assets.Visit(name)
		v, err := visit.Parse(data, name)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range v.Events {
			if e.Gauging == nil {
				continue
			}
			for _, r := range e.Gauging.Readings {
				for _, s := range []Setting{{}, {Seen: visit.LookingAft, Unit: visit.InMM}} {
					text, in := Write(r, s)
					if back, err := Line(text, in); err != nil || !reflect.DeepEqual(back, r) {
						t.Errorf("%s: %+v written %q reads back %+v, %v", name, r, text, back, err)
					}
					n++
				}
			}
		}
	}
	if n < 500 {
		t.Errorf("%d readings tried", n)
	}
}

func TestTables(t *testing.T) {
	leaf := func(deg float64, g, s visit.Length) visit.Reading {
		return visit.Leaf{ClockDeg: deg, Goes: g, Stops: s}
	}
	thou, mm := visit.Thou, visit.MM
	inches := []visit.Reading{leaf(0, thou(8), thou(10)), leaf(45, thou(4), thou(5)), leaf(180, visit.Length{}, thou(1.5))}
	metric := []visit.Reading{leaf(0, mm(0.2), mm(0.25)), leaf(45, mm(0.1), visit.Length{})}
	for _, c := range []struct {
		text string
		want []visit.Reading
	}{
		{"12\t8\t10\n1:30\t4\t5\n6\t\t1.5\n", inches},
		{"12\t8\t10\r\n1:30\t4\t5\r\n\r\n6\t\t1,5", inches},
		{"Clock\tGoes thou\tStops thou\n12\t8\t10\n1:30\t4\t5\n6\t\t1.5", inches},
		{"12,8,10\n1:30,4,5\n6,,1.5", inches},
		{"Uhr;geht mm;stoppt mm\n12;0,2;0,25\n1:30;0,1;", metric},
		{"clock,goes_mm,stops_mm\n12,\"0,2\",\"0,25\"\n1:30,0.1,", metric},
		{"stops (mm)\tgoes (mm)\tclock\n0.25\t0.2\t12\n\t0.1\t1:30", metric},
		{"12 8/10\n1:30 4\n6 0", inches},
		{"in thou\n12 8/10\n1:30 4/5\n6 -/1,5", inches},
		{"12\t8\n1:30\t4\n6\t0", inches},
	} {
		got, faults := Table(c.text, inchSet)
		if faults != nil || !reflect.DeepEqual(got, c.want) {
			t.Errorf("%q: %+v %v", c.text, got, faults)
		}
	}
}

// TestLinesWithoutPlacesGoRound: each takes the next place asked for.
func TestLinesWithoutPlacesGoRound(t *testing.T) {
	s := inchSet
	s.AskedDeg, s.Then = 0, []float64{90, 180}
	got, faults := Table("3/4\n5/6\n9 1/2\n8/10", s)
	if faults != nil || len(got) != 4 {
		t.Fatal(got, faults)
	}
	for i, want := range []float64{0, 90, 270, 180} {
		if deg, _ := visit.ClockOf(got[i]); deg != want {
			t.Errorf("line %d: at %v, want %v", i+1, deg, want)
		}
	}
}

func TestNoTableIsTakenByHalves(t *testing.T) {
	got, faults := Table("Clock\tgoes\tstops\n12\t8\t10\n25\t4\t5\n3\t4\tx\n6\t5\t4\n9\t1\t2\t\tmore", inchSet)
	if got != nil || len(faults) != 4 {
		t.Fatalf("%v, %v", got, faults)
	}
	for i, want := range []Fault{{NoPlace, 3, "25\t4\t5"}, {NoLength, 4, "3\t4\tx"}, {WrongWay, 5, "6\t5\t4"}, {NoColumns, 6, "9\t1\t2\t\tmore"}} {
		if *faults[i] != want {
			t.Errorf("fault %d: %+v, want %+v", i, *faults[i], want)
		}
	}
	if _, faults := Table(" \n\n", inchSet); len(faults) != 1 || faults[0].Why != NothingYet {
		t.Errorf("%v", faults)
	}
}

func FuzzTable(f *testing.F) {
	f.Add("12\t8\t10\n1:30\t4\t5", 0)
	f.Add("Uhr;geht mm;stoppt mm\n12;0,2;0,25", 0)
	f.Add("2 9-11/11-3", 1)
	f.Fuzz(func(t *testing.T, text string, k int) {
		s := kind(visit.ReadingKinds[uint(k)%uint(len(visit.ReadingKinds))])
		readings, faults := Table(text, s)
		if (len(readings) == 0) == (len(faults) == 0) {
			t.Fatalf("%q: %d readings and %d faults", text, len(readings), len(faults))
		}
		for _, r := range readings {
			line, in := Write(r, s)
			back, err := Line(line, in)
			if err != nil {
				t.Fatalf("%q: %+v written %q: %v", text, r, line, err)
			}
			if again, _ := Write(back, in); again != line {
				t.Fatalf("%q: written %q, then %q", text, line, again)
			}
		}
	})
}
