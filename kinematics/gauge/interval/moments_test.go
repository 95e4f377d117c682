package interval

// This file holds one row's moments against numbers worked out to 150 digits.

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"
)

// moment is a quantity of testdata/moments.csv, the error allowed, and what
// that is relative to: the quantity, or if that is larger a power of the
// standard deviation, for one that vanishes by symmetry.
type moment struct {
	name  string
	power float64
	most  float64 // about five times the worst seen
	got   func(truncated) float64
}

var momentsHeld = []moment{
	{"log", 0, 1e-12, func(t truncated) float64 { return t.log }},
	{"m1", 1, 2e-14, func(t truncated) float64 { return t.mean }},
	{"m2", 0, 1e-13, func(t truncated) float64 { return t.mean*t.mean + t.variance }},
	{"m3", 3, 5e-13, func(t truncated) float64 { return t.mean*(t.mean*t.mean+3*t.variance) + t.third }},
	{"m4", 0, 5e-12, func(t truncated) float64 {
		mm := t.mean * t.mean
		return mm*(mm+6*t.variance) + 4*t.mean*t.third + t.fourth
	}},
	{"variance", 0, 2e-12, func(t truncated) float64 { return t.variance }},
	{"curve", 0, 5e-13, func(t truncated) float64 { return t.curve }},
	{"third", 3, 5e-11, func(t truncated) float64 { return t.third }},
	{"fourth", 0, 2e-10, func(t truncated) float64 { return t.fourth }},
}

// momentRows reads the table: the name of each column, and the numbers.
func momentRows(t *testing.T) (column map[string]int, rows [][]float64) {
	t.Helper()
	f, err := os.Open("testdata/moments.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	records, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	column = map[string]int{}
	for i, name := range records[0] {
		column[name] = i
	}
	for _, record := range records[1:] {
		row := make([]float64, len(record))
		for i, text := range record {
			if row[i], err = strconv.ParseFloat(text, 64); err != nil {
				t.Fatal(err)
			}
		}
		rows = append(rows, row)
	}
	if len(rows) < 1000 {
		t.Fatalf("only %d rows", len(rows))
	}
	return column, rows
}

func TestMoments(t *testing.T) {
	column, rows := momentRows(t)
	for _, m := range momentsHeld {
		worst, at := 0.0, 0
		for i, row := range rows {
			want := row[column[m.name]]
			size := math.Abs(want)
			if m.power > 0 {
				size = math.Max(size, math.Pow(row[column["variance"]], m.power/2))
			}
			size = math.Max(size, 1e-300) // below, a double has no digits left
			e := math.Abs(m.got(between(row[0], row[1], row[1]-row[0]))-want) / size
			if !(e <= worst) {
				worst, at = e, i
			}
		}
		t.Logf("%-8s worst relative error %.1e, between %g and %g", m.name, worst, rows[at][0], rows[at][1])
		if !(worst <= m.most) {
			t.Errorf("%s between %v and %v is off by %.2g, more than %g", m.name, rows[at][0], rows[at][1], worst, m.most)
		}
	}
}

// TestMomentsMirrored: turned over, odd moments change sign and no digit else.
func TestMomentsMirrored(t *testing.T) {
	_, rows := momentRows(t)
	for _, row := range rows {
		a, b := row[0], row[1]
		if a+b == 0 {
			continue // its own mirror image; odd moments are nought but for rounding
		}
		there, back := between(a, b, b-a), between(-b, -a, b-a)
		back.mean, back.third = -back.mean, -back.third
		if there != back {
			t.Errorf("between %v and %v: %v, mirrored %v", a, b, there, back)
		}
	}
}

// TestMomentsMeet: where one way of working hands over to another they agree.
func TestMomentsMeet(t *testing.T) {
	short := func(a, b float64) truncated { return integrated(a, b-a) }
	ways := []func(a, b float64) truncated{short, byEnds, inTail}
	for _, at := range []struct {
		a, b float64
		ways [2]int
	}{
		{-1, 1, [2]int{0, 1}},
		{0, 1.9, [2]int{0, 1}},
		{2, 2.8, [2]int{0, 1}},
		{3, 3.6, [2]int{0, 2}},
		{6, 6.3, [2]int{0, 2}},
		{38, 38.05, [2]int{0, 2}},
		{3, 5, [2]int{1, 2}},
		{3, math.Inf(1), [2]int{1, 2}},
	} {
		one, other := ways[at.ways[0]](at.a, at.b), ways[at.ways[1]](at.a, at.b)
		for _, m := range momentsHeld {
			x, y := m.got(one), m.got(other)
			size := math.Max(math.Abs(x), math.Pow(one.variance, m.power/2))
			if !(math.Abs(x-y) <= 3*m.most*size) {
				t.Errorf("%s between %g and %g: %.17g one way, %.17g the other", m.name, at.a, at.b, x, y)
			}
		}
	}
}

// TestMomentsFarOff: nothing overflows where a fit may stray.
func TestMomentsFarOff(t *testing.T) {
	for _, a := range []float64{1e6, 1e8, 1e12, 1e100} {
		m := between(a, math.Inf(1), math.Inf(1))
		if m.mean < a || !(m.curve > 0 && m.curve <= 1) || !(m.variance >= 0) || math.IsNaN(m.log) {
			t.Errorf("beyond %g: %+v", a, m)
		}
		m = between(-a, a+1, 2*a+1)
		if !(math.Abs(m.mean) <= 1) || m.variance != 1 || m.log != 0 {
			t.Errorf("between -%g and %g: %+v", a, a, m)
		}
	}
}

// TestNarrowRow: a narrow interval is its width times the density amid it, and a
// second-order term, to the last digits though its ends, in sigmas, have but few
// of the width.
func TestNarrowRow(t *testing.T) {
	for _, width := range []float64{0x1p-15, 0x1p-30, 0x1p-45} {
		for _, at := range []float64{1, 10, 30} {
			row := Row{X: []float64{1}, Least: at, Most: at + width}
			m, w := (at+width/2)/3, width/3
			want := math.Log(w) - m*m/2 - logRoot2Pi + w*w*(m*m-1)/24
			if got := row.LogLikelihood([]float64{0}, 3); math.Abs(got-want) > 1e-15*math.Abs(want) {
				t.Errorf("%g of %g wide: %.17g, want %.17g", width, at, got, want)
			}
		}
	}
}
