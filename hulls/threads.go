package hulls

// This file knows screw threads by designation: unified inch threads of ASME
// B1.1 such as "5/8-18 UNF", and metric threads of ISO 261 such as "M16x2" or,
// for the coarse pitch, "M16".
//
// Sources: pitches of inch sizes from 1/4 to 1 and of M6 to M24 were compared
// with published tables of ASME B1.1 and ISO 262; smaller and larger sizes are
// from memory. Stress areas are computed: (pi/4)(d - 0.9743/n)^2 by ASME B1.1,
// (pi/4)(d - 0.9382 P)^2 by ISO 898-1.

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"aligner/hulls/strictjson"
)

// Thread is a screw thread of a standard series.
type Thread struct {
	Designation    string // as the standard writes it
	Standard       string // "ASME B1.1" or "ISO 261"
	MajorMM        float64
	PitchMM        float64
	ThreadsPerInch float64 // 0 for metric threads
	StressAreaMM2  float64
}

// inchSize is a nominal size with its threads per inch; 0: not made.
type inchSize struct {
	name     string
	diameter float64 // inches
	unc, unf float64
}

var inchSizes = []inchSize{
	{"#8", 0.164, 32, 36}, {"#10", 0.190, 24, 32}, {"#12", 0.216, 24, 28},
	{"1/4", 0.25, 20, 28}, {"5/16", 0.3125, 18, 24}, {"3/8", 0.375, 16, 24}, {"7/16", 0.4375, 14, 20},
	{"1/2", 0.5, 13, 20}, {"9/16", 0.5625, 12, 18}, {"5/8", 0.625, 11, 18}, {"3/4", 0.75, 10, 16},
	{"7/8", 0.875, 9, 14}, {"1", 1, 8, 12}, {"1 1/8", 1.125, 7, 12}, {"1 1/4", 1.25, 7, 12},
	{"1 3/8", 1.375, 6, 12}, {"1 1/2", 1.5, 6, 12},
}

// metricPitches gives the pitches of a nominal diameter, the coarse one first.
var metricPitches = map[float64][]float64{
	4: {0.7, 0.5}, 5: {0.8, 0.5}, 6: {1, 0.75}, 8: {1.25, 1, 0.75}, 10: {1.5, 1.25, 1, 0.75},
	12: {1.75, 1.5, 1.25, 1}, 14: {2, 1.5, 1.25, 1}, 16: {2, 1.5, 1}, 18: {2.5, 2, 1.5, 1},
	20: {2.5, 2, 1.5, 1}, 22: {2.5, 2, 1.5, 1}, 24: {3, 2, 1.5, 1}, 27: {3, 2, 1.5, 1},
	30: {3.5, 3, 2, 1.5, 1}, 33: {3.5, 3, 2, 1.5}, 36: {4, 3, 2, 1.5}, 39: {4, 3, 2, 1.5},
	42: {4.5, 4, 3, 2, 1.5}, 48: {5, 4, 3, 2, 1.5},
}

var (
	inchForm   = regexp.MustCompile(`^(#?[0-9./]+|[0-9]+[ -][0-9]+/[0-9]+)-([0-9]+) (UNC|UNF|UNS|UN)(-[123][AB])?$`)
	metricForm = regexp.MustCompile(`^M([0-9.]+)(?: ?[x×] ?([0-9.]+))?(-[0-9][a-zA-Z0-9]+)?$`)
)

// ThreadOf reads a thread's designation. The error says what was wanted.
func ThreadOf(designation string) (Thread, error) {
	if len(designation) <= 40 {
		if m := inchForm.FindStringSubmatch(designation); m != nil {
			return inchThread(m[1], m[2], m[3])
		}
		if m := metricForm.FindStringSubmatch(designation); m != nil {
			return metricThread(m[1], m[2])
		}
	}
	return Thread{}, fmt.Errorf(`a thread of ASME B1.1 such as "5/8-18 UNF" or of ISO 261 such as "M16x2"`)
}

func inchThread(size, perInch, series string) (Thread, error) {
	n, err := strconv.ParseFloat(perInch, 64)
	i := slices.IndexFunc(inchSizes, func(s inchSize) bool {
		return s.name == size || strings.ReplaceAll(s.name, " ", "-") == size || decimalInches(size) == s.diameter
	})
	if err != nil || i < 0 {
		return Thread{}, fmt.Errorf("an inch size from #8 to 1 1/2 of ASME B1.1")
	}
	s := inchSizes[i]
	if made := map[string]float64{"UNC": s.unc, "UNF": s.unf}[series]; made != 0 && made != n {
		return Thread{}, fmt.Errorf("%g threads an inch, as %s %s has by ASME B1.1", made, s.name, series)
	}
	// Constant-pitch (UN) and special (UNS) threads come in many pitches;
	// coarser than the coarse series or finer than 40 there is none.
	if n < s.unc || n > 40 {
		return Thread{}, fmt.Errorf("from %g to 40 threads an inch on %s", s.unc, s.name)
	}
	t := Thread{Designation: fmt.Sprintf("%s-%g %s", s.name, n, series), Standard: "ASME B1.1",
		MajorMM: s.diameter * 25.4, PitchMM: 25.4 / n, ThreadsPerInch: n}
	t.StressAreaMM2 = math.Pi / 4 * math.Pow((s.diameter-0.9743/n)*25.4, 2)
	return t, nil
}

// decimalInches reads a size such as 0.625 or .625; 0 when it is none.
func decimalInches(size string) float64 {
	if !strings.Contains(size, ".") {
		return 0
	}
	v, err := strconv.ParseFloat(size, 64)
	if err != nil {
		return 0
	}
	return v
}

func metricThread(diameter, pitch string) (Thread, error) {
	d, err := strconv.ParseFloat(diameter, 64)
	made := metricPitches[d]
	if err != nil || made == nil {
		return Thread{}, fmt.Errorf("a nominal diameter of ISO 261 from M4 to M48")
	}
	p := made[0]
	if pitch != "" {
		p, err = strconv.ParseFloat(pitch, 64)
		if err != nil || !slices.Contains(made, p) {
			return Thread{}, fmt.Errorf("a pitch of %s mm, as M%g has by ISO 261", listNumbers(made), d)
		}
	}
	t := Thread{Designation: fmt.Sprintf("M%gx%g", d, p), Standard: "ISO 261", MajorMM: d, PitchMM: p}
	t.StressAreaMM2 = math.Pi / 4 * math.Pow(d-0.9382*p, 2)
	return t, nil
}

// listNumbers writes "2, 1.5 or 1".
func listNumbers(list []float64) string {
	words := make([]string, len(list))
	for i, v := range list {
		words[i] = strictjson.Plain(v)
	}
	if len(words) == 1 {
		return words[0]
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}
