package hulls

// Threads against published tables.

import (
	"math"
	"strings"
	"testing"
)

// Pitches and stress areas as ASME B1.1 prints them (threads an inch, square
// inches to four places).
var inchTable = []struct {
	designation string
	pitchMM     float64
	areaIn2     float64
}{
	{"1/4-20 UNC", 1.27000, 0.0318}, {"1/4-28 UNF", 0.90714, 0.0364},
	{"5/16-18 UNC", 1.41111, 0.0524}, {"5/16-24 UNF", 1.05833, 0.0581},
	{"3/8-16 UNC", 1.58750, 0.0775}, {"3/8-24 UNF", 1.05833, 0.0878},
	{"7/16-14 UNC", 1.81429, 0.1063}, {"7/16-20 UNF", 1.27000, 0.1187},
	{"1/2-13 UNC", 1.95385, 0.1419}, {"1/2-20 UNF", 1.27000, 0.1600},
	{"9/16-12 UNC", 2.11667, 0.1819}, {"9/16-18 UNF", 1.41111, 0.2030},
	{"5/8-11 UNC", 2.30909, 0.2260}, {"5/8-18 UNF", 1.41111, 0.2560},
	{"3/4-10 UNC", 2.54000, 0.3345}, {"3/4-16 UNF", 1.58750, 0.3730},
	{"7/8-9 UNC", 2.82222, 0.4617}, {"7/8-14 UNF", 1.81429, 0.5095},
	{"1-8 UNC", 3.17500, 0.6057}, {"1-12 UNF", 2.11667, 0.6630},
	{"1-14 UNS", 1.81429, 0.6799}, // on torque cards under "fine", but not UNF
}

func TestInchThreads(t *testing.T) {
	for _, row := range inchTable {
		th, err := ThreadOf(row.designation)
		if err != nil {
			t.Errorf("%s: %v", row.designation, err)
			continue
		}
		if math.Abs(th.PitchMM-row.pitchMM) > 6e-6 {
			t.Errorf("%s: pitch %.5f mm, want %.5f", row.designation, th.PitchMM, row.pitchMM)
		}
		// 0.00006: half a printed unit and a little, the table being rounded.
		if in2 := th.StressAreaMM2 / (25.4 * 25.4); math.Abs(in2-row.areaIn2) > 6e-5 {
			t.Errorf("%s: stress area %.5f in2, want %.4f", row.designation, in2, row.areaIn2)
		}
		if th.Designation != row.designation || th.Standard != "ASME B1.1" {
			t.Errorf("%s: named %q by %q", row.designation, th.Designation, th.Standard)
		}
	}
}

// Stress areas of ISO 898-1, square millimetres: the coarse ones as printed
// there (58, 84.3, 157, 245), the others computed by its formula.
var metricTable = []struct {
	designation string
	d, pitch    float64
	area, tol   float64
}{
	{"M6", 6, 1, 20.12, 0.005}, {"M8", 8, 1.25, 36.61, 0.005}, {"M8x1", 8, 1, 39.17, 0.005},
	{"M10", 10, 1.5, 58, 0.05}, {"M10x1.25", 10, 1.25, 61.20, 0.005},
	{"M12", 12, 1.75, 84.3, 0.05}, {"M12x1.5", 12, 1.5, 88.13, 0.005}, {"M12x1.25", 12, 1.25, 92.07, 0.005},
	{"M14x2", 14, 2, 115.44, 0.005}, {"M14x1.5", 14, 1.5, 124.55, 0.005},
	{"M16", 16, 2, 157, 0.5}, {"M16x2", 16, 2, 156.67, 0.005}, {"M16x1.5", 16, 1.5, 167.25, 0.005},
	{"M18", 18, 2.5, 192.47, 0.005}, {"M18x1.5", 18, 1.5, 216.23, 0.005},
	{"M20", 20, 2.5, 245, 0.5}, {"M20x2", 20, 2, 257.98, 0.005}, {"M20x1.5", 20, 1.5, 271.50, 0.005},
	{"M22", 22, 2.5, 303.40, 0.005}, {"M22x1.5", 22, 1.5, 333.06, 0.005},
	{"M24", 24, 3, 352.50, 0.005}, {"M24x2", 24, 2, 384.42, 0.005},
}

func TestMetricThreads(t *testing.T) {
	for _, row := range metricTable {
		th, err := ThreadOf(row.designation)
		if err != nil {
			t.Errorf("%s: %v", row.designation, err)
			continue
		}
		if th.MajorMM != row.d || th.PitchMM != row.pitch || math.Abs(th.StressAreaMM2-row.area) > row.tol {
			t.Errorf("%s: %+v, want d %g, pitch %g, area %g", row.designation, th, row.d, row.pitch, row.area)
		}
	}
}

func TestThreadSpellings(t *testing.T) {
	for spelling, want := range map[string]string{
		"M16": "M16x2", "M16 x 2": "M16x2", "M16×2": "M16x2", "M16x2.0": "M16x2", "M16x2-6g": "M16x2",
		"5/8-18 UNF-2A": "5/8-18 UNF", "0.625-18 UNF": "5/8-18 UNF", "1 1/8-7 UNC": "1 1/8-7 UNC",
		"1-1/8-7 UNC": "1 1/8-7 UNC", "#10-24 UNC": "#10-24 UNC", "5/8-24 UNS": "5/8-24 UNS",
	} {
		th, err := ThreadOf(spelling)
		if err != nil || th.Designation != want {
			t.Errorf("ThreadOf(%q) = %q, %v; want %q", spelling, th.Designation, err, want)
		}
	}
}

func TestThreadsRefused(t *testing.T) {
	for designation, part := range map[string]string{
		"":                      "such as",
		"5/8":                   "such as",
		"5/8-18":                "such as",
		"5/8-18 unf":            "such as",
		"5/8-18  UNF":           "such as",
		"M":                     "such as",
		"M16 coarse":            "such as",
		"5/8-11 UNF":            "18 threads an inch",
		"5/8-18 UNC":            "11 threads an inch",
		"1-14 UNF":              "12 threads an inch", // the trap of torque cards
		"5/8-2 UNS":             "from 11 to 40",
		"5/8-99 UNS":            "from 11 to 40",
		"5/8-0 UN":              "from 11 to 40",
		"11/13-18 UNF":          "#8 to 1 1/2",
		"M17":                   "M4 to M48",
		"M16x3":                 "2, 1.5 or 1 mm",
		"M1e9":                  "such as",
		"M16.0.0":               "M4 to M48",
		strings.Repeat("M", 99): "such as",
	} {
		if th, err := ThreadOf(designation); err == nil || !strings.Contains(err.Error(), part) {
			t.Errorf("ThreadOf(%q) = %+v, %v; want an error with %q", designation, th, err, part)
		}
	}
}

// The tolerance of a stated pitch must not let one thread in use pass for
// another of the same diameter.
func TestPitchesAreFurtherApartThanTheTolerance(t *testing.T) {
	for _, s := range inchSizes {
		if math.Abs(s.unc/s.unf-1) < 3*pitchTolerance {
			t.Errorf("%s: coarse and fine too close", s.name)
		}
	}
	for d, pitches := range metricPitches {
		for i := range pitches[1:] {
			if pitches[i]/pitches[i+1]-1 < 3*pitchTolerance {
				t.Errorf("M%g: pitches %g and %g too close", d, pitches[i], pitches[i+1])
			}
		}
	}
}
