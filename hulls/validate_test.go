package hulls_test

// What is impossible is refused and what is improbable is doubted, on hulls
// changed in memory.

import (
	"math"
	"strings"
	"testing"

	"aligner/hulls"
)

// change is one change to a built-in hull and the place and words it must be
// told by; the words are parts of the fault's line.
type change struct {
	what  string
	hull  string
	do    func(h *hulls.Hull)
	place string
	parts []string
}

var impossible = []change{
	{"no bearings", "Kittiwake", func(h *hulls.Hull) { h.Bearings = nil }, "bearings", []string{"0 bearings", "1 to 8"}},
	{"nine bearings", "Kittiwake", func(h *hulls.Hull) {
		for range 8 {
			h.Bearings = append(h.Bearings, h.Bearings[0])
		}
	}, "bearings", []string{"9 bearings"}},
	{"two mounts", "Kittiwake", func(h *hulls.Hull) { h.Mounts = h.Mounts[:2] }, "mounts", []string{"2 mounts", "3 to 12"}},
	{"thirteen mounts", "Cormorant", func(h *hulls.Hull) {
		h.Mounts = append(h.Mounts, h.Mounts...)
		h.Mounts = append(h.Mounts, h.Mounts[0])
	}, "mounts", []string{"13 mounts"}},
	{"three mounts in line", "Kittiwake", func(h *hulls.Hull) {
		h.Mounts = h.Mounts[:3]
		h.Mounts[1].AtMM, h.Mounts[2].AtMM = [3]float64{500, 290, 0}, [3]float64{200, 290, -40}
	}, "mounts", []string{"within 0 mm of one line", "20 mm or more off it"}},
	{"three mounts in a slanting line", "Kittiwake", func(h *hulls.Hull) {
		h.Mounts = h.Mounts[:3]
		for i := range h.Mounts {
			h.Mounts[i].AtMM = [3]float64{200 + 100*float64(i), 150 * float64(i), 300 * float64(i*i)}
		}
	}, "mounts", []string{"of one line in plan"}},
	{"solid feet, weight outside", "Cormorant", func(h *hulls.Hull) { h.Engine.CentreOfMassMM[0] = -50 }, "engine.centre_of_mass_mm", []string{"outside the mounts", "hold nothing down"}},
	{"unknown kind", "Kittiwake", func(h *hulls.Hull) { h.Mounts[0].Kind = "" }, "mounts[0].kind", []string{"rubber"}},
	{"unknown layout", "Kittiwake", func(h *hulls.Hull) { h.Layout = "" }, "layout", []string{"v-drive"}},
	{"unknown reach", "Kittiwake", func(h *hulls.Hull) { h.Mounts[2].Reach = "far" }, "mounts[2].reach", []string{"blind"}},
	{"grade over two lines", "Eider", func(h *hulls.Hull) { h.Coupling.Bolts.Grade = "8.8\n" }, "coupling.bolts.grade", []string{`"8.8\n"`}},
	{"number plate over two lines", "Eider", func(h *hulls.Hull) { h.HIN = "ZZZ\n" }, "hin", []string{`"ZZZ\n"`}},
	{"unknown look", "Eider", func(h *hulls.Hull) { h.Look.Hose = "long" }, "look.hose", []string{"bellows"}},
	{"shim of nothing", "Cormorant", func(h *hulls.Hull) { h.Mounts[3].ShimStepMM = 0 }, "mounts[3].shim_step_mm", []string{"0.001 to 10 mm"}},
	{"bearings overlap", "Eider", func(h *hulls.Hull) { h.Bearings[1].AtMM = -1100 }, "bearings[1].at_mm", []string{"clear of bearings[0]"}},
	{"bearings of one name", "Eider", func(h *hulls.Hull) { h.Bearings[1].Name = "Middle" }, "bearings[1].name", []string{"that of bearings[0]"}},
	{"propeller between bearings", "Eider", func(h *hulls.Hull) { h.Propeller.AtMM = -1500 }, "propeller.at_mm", []string{"aft of the aftmost bearing, below -2210 mm"}},
	{"box behind the shaft", "Eider", func(h *hulls.Hull) { h.StuffingBox.AtMM = -3000 }, "stuffing_box.at_mm", []string{"-2380 to -75 mm"}},
	{"bearing far off the line", "Eider", func(h *hulls.Hull) { h.Bearings[0].OffsetMM[1] = 80 }, "bearings[0].offset_mm[1]", []string{"80 mm", "-50 to 50"}},
	{"shaft all coupling", "Bench", func(h *hulls.Hull) { h.Coupling.ShaftHalfLengthMM = 550 }, "shaft.length_mm", []string{"twice the coupling half"}},
	{"tolerance left behind", "Avocet", func(h *hulls.Hull) { h.Bearings[0].Name, h.Tolerance = "x", map[string]float64{"/bearings/3/at_mm": 1} },
		`tolerance["/bearings/3/at_mm"]`, []string{"a pointer to nothing"}},
}

var improbable = []change{
	{"mounts close to one line", "Kittiwake", func(h *hulls.Hull) {
		for i := range h.Mounts {
			h.Mounts[i].AtMM[1] /= 5
		}
	}, "mounts", []string{"114 mm of one line", "150 mm or more"}},
	{"span of 61 diameters", "Kittiwake", func(h *hulls.Hull) {
		h.Bearings[0].AtMM, h.Shaft.LengthMM, h.Propeller.AtMM, h.ShaftSpeedMaxRPM = -1600, 1900, -1790, 0
	}, "bearings[0].at_mm", []string{"61 shaft diameters clear from the face", "20 to 55"}},
	{"span of 12 diameters", "Eider", func(h *hulls.Hull) { h.Bearings[0].AtMM = -405 }, "bearings[0].at_mm", []string{"12 shaft diameters"}},
	{"second span too long", "Eider", func(h *hulls.Hull) { h.Bearings[0].AtMM, h.Shaft.DiameterMM = -620, 25 }, "bearings[1].at_mm", []string{`clear from "middle" to "strut"`}},
	{"weight outside the mounts", "Kittiwake", func(h *hulls.Hull) { h.Engine.CentreOfMassMM[0] = 50 }, "engine.centre_of_mass_mm", []string{"outside the mounts"}},
	{"weight outside only because the bed slopes", "Kittiwake", func(h *hulls.Hull) { h.Engine.CentreOfMassMM[0] = 215 }, "engine.centre_of_mass_mm", []string{"10.5 mm outside"}},
	{"pounds for kilograms", "Kittiwake", func(h *hulls.Hull) { h.Engine.MassKg *= 4 }, "engine.mass_kg", []string{"presses the mounts together by 9.82 mm"}},
	{"mounts too hard", "Wren", func(h *hulls.Hull) {
		for i := range h.Mounts {
			h.Mounts[i].StiffnessNPerMM = hulls.Stiffness{Along: 900, ForeAft: 1000, Athwart: 900}
		}
	}, "engine.mass_kg", []string{"0.317 mm", "1 to 8 mm"}},
	{"port to starboard", "Kittiwake", func(h *hulls.Hull) {
		for i := range h.Mounts {
			h.Mounts[i].AtMM[1] = -h.Mounts[i].AtMM[1]
		}
	}, "mounts[0].at_mm[1]", []string{`"fore port"`}},
	{"fore abaft aft", "Kittiwake", func(h *hulls.Hull) {
		for i := range h.Mounts {
			h.Mounts[i].AtMM[0] = 1040 - h.Mounts[i].AtMM[0]
		}
	}, "mounts", []string{"named fore that stands aft"}},
	{"in-line with a down angle", "Kittiwake", func(h *hulls.Hull) { h.Engine.DownAngleDeg = 8 }, "engine.down_angle_deg", []string{"about 0 in-line"}},
	{"down-angle without", "Eider", func(h *hulls.Hull) { h.Engine.DownAngleDeg = 0 }, "engine.down_angle_deg", []string{"7 to 15"}},
	{"V-drive with the engine ahead", "Eider", func(h *hulls.Hull) { h.Layout = hulls.VDrive }, "engine.centre_of_mass_mm[0]", []string{"aft of the face in a V-drive"}},
	{"in-line with the engine astern", "Avocet", func(h *hulls.Hull) { h.Layout = hulls.DownAngle }, "engine.centre_of_mass_mm[0]", []string{"forward of the face"}},
	{"soft fore and aft", "Kittiwake", func(h *hulls.Hull) { h.Mounts[1].StiffnessNPerMM.ForeAft = 100 }, "mounts[1].stiffness_n_per_mm.fore_aft", []string{"0.238 times", "1 to 4"}},
	{"hard athwart", "Kittiwake", func(h *hulls.Hull) { h.Mounts[1].StiffnessNPerMM.Athwart = 1000 }, "mounts[1].stiffness_n_per_mm.athwart", []string{"0.4 to 1.5"}},
	{"stud of 5 mm", "Bench", func(h *hulls.Hull) { h.Mounts[0].Thread, h.Mounts[0].ThreadPitchMM = "M5", 0.8 }, "mounts[0].thread", []string{"M5x0.8", "8 to 40 mm"}},
	{"coupling of wood", "Kittiwake", func(h *hulls.Hull) { h.Coupling.ShaftHalfMassKg = 0.6 }, "coupling.shaft_half_mass_kg", []string{"in metal"}},
	{"pilot like a pin", "Kittiwake", func(h *hulls.Hull) { h.Coupling.PilotDiameterMM = 10 }, "coupling.pilot_diameter_mm", []string{"a quarter to 0.85"}},
	{"bolts of no grade", "Kittiwake", func(h *hulls.Hull) { h.Coupling.Bolts.Grade = "good" }, "coupling.bolts.grade", []string{"ISO 898-1 8.8"}},
	{"bolts like studs", "Kittiwake", func(h *hulls.Hull) { h.Coupling.Bolts.Thread = "1-8 UNC" }, "coupling.bolts.thread", []string{"a fifth"}},
	{"two bolts", "Kittiwake", func(h *hulls.Hull) { h.Coupling.Bolts.Count = 2 }, "coupling.bolts.count", []string{"3 to 12"}},
	{"worn bearing", "Kittiwake", func(h *hulls.Hull) { h.Bearings[0].DiametralClearanceMM = 2 }, "bearings[0].diametral_clearance_mm", []string{"2 mm"}},
	{"log off the line", "Kittiwake", func(h *hulls.Hull) { h.Log.OffsetMM = [2]float64{5, 5} }, "log.offset_mm", []string{"7.07 mm off", "6.3 mm"}},
	{"log like a barrel", "Kittiwake", func(h *hulls.Hull) { h.Log.BoreMM = 90 }, "log.bore_mm", []string{"1.05 to 3 shaft diameters"}},
	{"box far from the log", "Eider", func(h *hulls.Hull) { h.StuffingBox.AtMM = -1500 }, "stuffing_box.at_mm", []string{"within 300 mm"}},
	{"propeller far behind", "Wren", func(h *hulls.Hull) { h.Shaft.LengthMM, h.Propeller.AtMM = 1300, -1200 }, "propeller.at_mm", []string{"10 shaft diameters"}},
	{"propeller of lead", "Wren", func(h *hulls.Hull) { h.Propeller.MassKg = 30 }, "propeller.mass_kg", []string{"as a rule"}},
	{"propeller like a fan", "Wren", func(h *hulls.Hull) { h.Propeller.DiameterMM, h.Propeller.MassKg = 900, 60 }, "propeller.diameter_mm", []string{"6 to 30"}},
	{"shaft as thick as its coupling", "Kittiwake", func(h *hulls.Hull) { h.Shaft.DiameterMM, h.Log.BoreMM = 70, 90 }, "shaft.diameter_mm", []string{"0.6 of the coupling"}},
	{"plate not read", "Kittiwake", func(h *hulls.Hull) { h.HIN = "ZZZ1O345D404" }, "hin", []string{"33 CFR 181.25"}},
}

// told reports whether one of the faults stands at the place and has the parts.
func told(list []hulls.Fault, c change) bool {
	for _, f := range list {
		line := f.Error()
		if f.Place != c.place {
			continue
		}
		all := true
		for _, p := range c.parts {
			all = all && strings.Contains(line, p)
		}
		if all && f.Value != "" && f.Limit != "" && f.Mend != "" && !strings.Contains(line, "\n") {
			return true
		}
	}
	return false
}

func (c change) report(t *testing.T) hulls.Report {
	t.Helper()
	h, _ := builtIn(t, c.hull)
	c.do(&h)
	return hulls.Validate(h)
}

func lines(list []hulls.Fault) string {
	var b strings.Builder
	for _, f := range list {
		b.WriteString("\n  " + f.Error())
	}
	return b.String()
}

func TestImpossibleIsRefused(t *testing.T) {
	for _, c := range impossible {
		if r := c.report(t); !told(r.Refusals, c) {
			t.Errorf("%s: want a refusal at %s with %q; got%s", c.what, c.place, c.parts, lines(r.Refusals))
		}
	}
}

func TestImprobableIsDoubted(t *testing.T) {
	for _, c := range improbable {
		r := c.report(t)
		if len(r.Refusals) > 0 {
			t.Errorf("%s: refused, should only be doubted:%s", c.what, lines(r.Refusals))
		}
		if !told(r.Doubts, c) {
			t.Errorf("%s: want a doubt at %s with %q; got%s", c.what, c.place, c.parts, lines(r.Doubts))
		}
	}
}

// Numbers that are no numbers are refused wherever a hull holds one.
func TestNotANumberIsRefused(t *testing.T) {
	for name, at := range map[string]func(h *hulls.Hull) *float64{
		"shaft angle": func(h *hulls.Hull) *float64 { return &h.ShaftAngleDeg },
		"speed":       func(h *hulls.Hull) *float64 { return &h.ShaftSpeedMaxRPM },
		"mass":        func(h *hulls.Hull) *float64 { return &h.Engine.MassKg },
		"centre":      func(h *hulls.Hull) *float64 { return &h.Engine.CentreOfMassMM[2] },
		"down angle":  func(h *hulls.Hull) *float64 { return &h.Engine.DownAngleDeg },
		"mount":       func(h *hulls.Hull) *float64 { return &h.Mounts[3].AtMM[1] },
		"pitch":       func(h *hulls.Hull) *float64 { return &h.Mounts[3].ThreadPitchMM },
		"along":       func(h *hulls.Hull) *float64 { return &h.Mounts[3].StiffnessNPerMM.Along },
		"fore aft":    func(h *hulls.Hull) *float64 { return &h.Mounts[3].StiffnessNPerMM.ForeAft },
		"athwart":     func(h *hulls.Hull) *float64 { return &h.Mounts[3].StiffnessNPerMM.Athwart },
		"nut range":   func(h *hulls.Hull) *float64 { return &h.Mounts[3].NutRangeMM[1] },
		"slide range": func(h *hulls.Hull) *float64 { return &h.Mounts[3].SlideRangeMM[0] },
		"face":        func(h *hulls.Hull) *float64 { return &h.Coupling.OuterDiameterMM },
		"pilot":       func(h *hulls.Hull) *float64 { return &h.Coupling.PilotDiameterMM },
		"half mass":   func(h *hulls.Hull) *float64 { return &h.Coupling.ShaftHalfMassKg },
		"half length": func(h *hulls.Hull) *float64 { return &h.Coupling.ShaftHalfLengthMM },
		"diameter":    func(h *hulls.Hull) *float64 { return &h.Shaft.DiameterMM },
		"length":      func(h *hulls.Hull) *float64 { return &h.Shaft.LengthMM },
		"bearing":     func(h *hulls.Hull) *float64 { return &h.Bearings[1].AtMM },
		"bearing len": func(h *hulls.Hull) *float64 { return &h.Bearings[1].LengthMM },
		"stiffness":   func(h *hulls.Hull) *float64 { return &h.Bearings[1].RadialStiffnessNPerMM },
		"clearance":   func(h *hulls.Hull) *float64 { return &h.Bearings[1].DiametralClearanceMM },
		"offset":      func(h *hulls.Hull) *float64 { return &h.Bearings[1].OffsetMM[0] },
		"log":         func(h *hulls.Hull) *float64 { return &h.Log.AtMM },
		"log length":  func(h *hulls.Hull) *float64 { return &h.Log.LengthMM },
		"bore":        func(h *hulls.Hull) *float64 { return &h.Log.BoreMM },
		"log offset":  func(h *hulls.Hull) *float64 { return &h.Log.OffsetMM[1] },
		"box":         func(h *hulls.Hull) *float64 { return &h.StuffingBox.AtMM },
		"box mass":    func(h *hulls.Hull) *float64 { return &h.StuffingBox.MassKg },
		"hose":        func(h *hulls.Hull) *float64 { return &h.StuffingBox.RadialStiffnessNPerMM },
		"box offset":  func(h *hulls.Hull) *float64 { return &h.StuffingBox.OffsetMM[0] },
		"propeller":   func(h *hulls.Hull) *float64 { return &h.Propeller.AtMM },
		"prop mass":   func(h *hulls.Hull) *float64 { return &h.Propeller.MassKg },
		"prop dia":    func(h *hulls.Hull) *float64 { return &h.Propeller.DiameterMM },
		"density":     func(h *hulls.Hull) *float64 { return &h.Propeller.DensityKgM3 },
	} {
		for _, bad := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
			h, _ := builtIn(t, "Eider")
			*at(&h) = bad
			if len(hulls.Validate(h).Refusals) == 0 {
				t.Errorf("%s of %g is not refused", name, bad)
			}
			if _, err := hulls.Parse(hulls.Encode(h), "e"); err == nil {
				t.Errorf("%s of %g is written and read back", name, bad)
			}
		}
	}
}

// A doubt keeps the file readable; Check gives it with file and line.
func TestDoubtsHaveLines(t *testing.T) {
	_, good := builtIn(t, "Kittiwake")
	text := strings.Replace(string(good), `"fore_aft": 460`, `"fore_aft": 46`, 1)
	if _, err := hulls.Parse([]byte(text), "k"); err != nil {
		t.Fatal(err)
	}
	_, report := hulls.Check([]byte(text), "k")
	want := "k: mounts[0].stiffness_n_per_mm.fore_aft (line 20): found 0.11 times the stiffness along; wanted 1 to 4 times as a rule; check the three figures are not exchanged"
	if len(report.Doubts) != 1 || report.Doubts[0].Error() != want {
		t.Errorf("got%s\nwant %s", lines(report.Doubts), want)
	}
}
