package hulls

// This file knows hexagons: how wide across flats the bolt head, the nut and
// the jam nut of a thread are, and so which spanner turns them.
//
// Sources. Inch: heads by ASME B18.2.1 (hex cap screws), nuts by ASME B18.2.2
// (hex nuts and hex jam nuts; a jam nut is as wide as the nut), compared with
// published tables from 1/4 to 1; above 1, and jam nuts thicker than 5/16, are
// from memory. Metric: ISO 272, heads by ISO 4014, nuts by ISO 4032, thin nuts
// by ISO 4035, all from memory; hardware made before them is wider or narrower
// at four sizes (DIN 931, 934).

import (
	"fmt"
	"slices"
)

// Spanner is a width across flats: so many sixteenths of an inch, or so many
// millimetres. The other field is 0. No spanner is the zero value.
type Spanner struct{ Sixteenths, MM int }

// AcrossMM is the width in millimetres.
func (s Spanner) AcrossMM() float64 {
	if s.MM > 0 {
		return float64(s.MM)
	}
	return float64(s.Sixteenths) * 25.4 / 16
}

// String writes the size as it is struck on the spanner, with its unit: "15/16
// in", "1 1/8 in", "24 mm"; "" for none.
func (s Spanner) String() string {
	switch {
	case s.MM > 0:
		return fmt.Sprintf("%d mm", s.MM)
	case s.Sixteenths > 0:
		return inches(s.Sixteenths, 16) + " in"
	}
	return ""
}

// inches writes a fraction of an inch in its lowest terms.
func inches(n, d int) string {
	for n%2 == 0 && d > 1 {
		n, d = n/2, d/2
	}
	switch whole, rest := n/d, n%d; {
	case rest == 0:
		return fmt.Sprint(whole)
	case whole == 0:
		return fmt.Sprintf("%d/%d", rest, d)
	default:
		return fmt.Sprintf("%d %d/%d", whole, rest, d)
	}
}

// Hexagon is what a thread's hexagons measure. Heights are nominal inch by
// inch, the largest allowed of metric nuts; 0: not known.
type Hexagon struct {
	Thread    Thread
	Head, Nut Spanner // a jam nut takes the nut's
	// Older is the width of head and nut of older metric hardware; zero: the
	// same.
	Older                                   Spanner
	HeadHeightMM, NutHeightMM, JamHeightMM  float64
	WidthFromMemory, JamNutHeightFromMemory bool
}

// HexagonOf finds the hexagons of a thread. The error says what is known.
func HexagonOf(t Thread) (Hexagon, error) {
	x := Hexagon{Thread: t}
	if t.ThreadsPerInch > 0 {
		i := slices.IndexFunc(inchHexagons, func(row inchHexagon) bool { return near(row.diameter*25.4, t.MajorMM) })
		if i < 0 {
			return x, &Fault{Place: "thread", Value: t.Designation, Limit: "hexagons of 1/4 to 1 1/2 in", Mend: "try a spanner on it"}
		}
		row := inchHexagons[i]
		x.Head, x.Nut = Spanner{Sixteenths: row.head}, Spanner{Sixteenths: row.nut}
		x.HeadHeightMM, x.NutHeightMM, x.JamHeightMM = row.heights[0]*25.4/64, row.heights[1]*25.4/64, row.heights[2]*25.4/64
		x.WidthFromMemory = row.diameter > 1
		x.JamNutHeightFromMemory = row.diameter > 0.5625
		return x, nil
	}
	i := slices.IndexFunc(metricHexagons, func(row metricHexagon) bool { return near(row.diameter, t.MajorMM) })
	if i < 0 {
		return x, &Fault{Place: "thread", Value: t.Designation, Limit: "hexagons of M4 to M48", Mend: "try a spanner on it"}
	}
	row := metricHexagons[i]
	x.Head, x.Nut = Spanner{MM: row.across}, Spanner{MM: row.across}
	if row.older != row.across {
		x.Older = Spanner{MM: row.older}
	}
	x.HeadHeightMM, x.NutHeightMM, x.JamHeightMM = row.heights[0], row.heights[1], row.heights[2]
	x.WidthFromMemory, x.JamNutHeightFromMemory = true, true
	return x, nil
}

// near allows for rounding only.
func near(a, b float64) bool { return a-b < 1e-6 && b-a < 1e-6 }

// inchHexagon is one nominal diameter in inches: widths in sixteenths, heights
// of head, nut and jam nut in sixty-fourths.
type inchHexagon struct {
	diameter  float64
	head, nut int
	heights   [3]float64
}

// At 7/16 and 9/16 the bolt's head is narrower than its nut.
var inchHexagons = []inchHexagon{
	{1. / 4, 7, 7, [3]float64{10, 14, 10}}, {5. / 16, 8, 8, [3]float64{13, 17, 12}},
	{3. / 8, 9, 9, [3]float64{15, 21, 14}}, {7. / 16, 10, 11, [3]float64{18, 24, 16}},
	{1. / 2, 12, 12, [3]float64{20, 28, 20}}, {9. / 16, 13, 14, [3]float64{23, 31, 20}},
	{5. / 8, 15, 15, [3]float64{25, 35, 24}}, {3. / 4, 18, 18, [3]float64{30, 41, 27}},
	{7. / 8, 21, 21, [3]float64{35, 48, 31}}, {1, 24, 24, [3]float64{39, 55, 35}},
	{1.125, 27, 27, [3]float64{}}, {1.25, 30, 30, [3]float64{}},
	{1.375, 33, 33, [3]float64{}}, {1.5, 36, 36, [3]float64{}},
}

// metricHexagon is one nominal diameter in mm: widths now and as formerly made,
// heights of head, nut and thin nut.
type metricHexagon struct {
	diameter      float64
	across, older int
	heights       [3]float64
}

var metricHexagons = []metricHexagon{
	{4, 7, 7, [3]float64{}}, {5, 8, 8, [3]float64{}},
	{6, 10, 10, [3]float64{4, 5.2, 3.2}}, {8, 13, 13, [3]float64{5.3, 6.8, 4}},
	{10, 16, 17, [3]float64{6.4, 8.4, 5}}, {12, 18, 19, [3]float64{7.5, 10.8, 6}},
	{14, 21, 22, [3]float64{8.8, 12.8, 7}}, {16, 24, 24, [3]float64{10, 14.8, 8}},
	{18, 27, 27, [3]float64{11.5, 15.8, 9}}, {20, 30, 30, [3]float64{12.5, 18, 10}},
	{22, 34, 32, [3]float64{14, 19.4, 11}}, {24, 36, 36, [3]float64{15, 21.5, 12}},
	{27, 41, 41, [3]float64{}}, {30, 46, 46, [3]float64{}}, {33, 50, 50, [3]float64{}},
	{36, 55, 55, [3]float64{}}, {39, 60, 60, [3]float64{}}, {42, 65, 65, [3]float64{}},
	{48, 75, 75, [3]float64{}},
}
