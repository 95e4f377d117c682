package fields_test

// What is typed is read as it is meant, or not at all.

import (
	"math"
	"testing"

	"aligner/hulls/fields"
)

func TestParse(t *testing.T) {
	for _, c := range []struct {
		text string
		kind fields.Kind
		in   fields.Inches
		want float64 // NaN: refused
	}{
		{"22 3/4", fields.Length, true, 577.85},
		{"22-3/4", fields.Length, true, 577.85},
		{"3/4", fields.Length, true, 19.05},
		{"-22 3/4 in", fields.Length, false, -577.85},
		{`22 3/4"`, fields.Length, false, 577.85},
		{"22,75", fields.Length, true, 577.85},
		{"577,85", fields.Length, false, 577.85},
		{"577.85 mm", fields.Length, true, 577.85},
		{" - 290", fields.Length, false, -290},
		{"1.2 m", fields.Length, false, 1200},
		{".5", fields.Length, false, 0.5},
		{"8", fields.Clearance, true, 0.2032},
		{"0.2", fields.Clearance, false, 0.2},
		{"8 thou", fields.Clearance, false, 0.2032},
		{"948 lb", fields.Mass, false, 430.0056},
		{"12°", fields.Angle, false, 12},
		{"2400 lb/in", fields.Stiffness, false, 420.3044},
		{"-0", fields.Length, false, 0},
		{"3/0", fields.Length, true, math.NaN()},
		{"22.5 3/4", fields.Length, true, math.NaN()},
		{"1/2/3", fields.Length, true, math.NaN()},
		{"", fields.Length, false, math.NaN()},
		{"twelve", fields.Length, false, math.NaN()},
		{"12 kg", fields.Length, false, math.NaN()},
		{"12 3", fields.Length, false, math.NaN()},
		{"1e5", fields.Length, false, math.NaN()},
		{"1.234,5", fields.Length, false, math.NaN()},
		{"NaN", fields.Mass, false, math.NaN()},
	} {
		v, ok := fields.Parse(c.text, c.kind, c.in)
		if ok == math.IsNaN(c.want) || ok && v.Number != c.want {
			t.Errorf("%q: %v, %v; want %v", c.text, v.Number, ok, c.want)
		}
		if ok && math.Signbit(v.Number) && v.Number == 0 {
			t.Errorf("%q: minus nought", c.text)
		}
	}
	if v, ok := fields.Parse(" M16x2 ", fields.Thread, false); !ok || v.Text != "M16x2" {
		t.Errorf("a text: %v", v)
	}
}

func TestParseKnown(t *testing.T) {
	for _, c := range []struct {
		text       string
		in         fields.Inches
		value, pls float64 // pls below nought: not told; NaN value: refused
	}{
		{"820", false, 820, -1}, {"820 ± 2", false, 820, 2}, {"820+-2,5", false, 820, 2.5}, {"-32 1/4 +/- 1/8", true, -819.15, 3.175},
		{"820 ±", false, math.NaN(), 0}, {"± 2", false, math.NaN(), 0}, {"820 ± -2", false, math.NaN(), 0}, {"820 ± x", false, math.NaN(), 0},
	} {
		v, plus, ok := fields.ParseKnown(c.text, fields.Length, c.in)
		switch {
		case ok == math.IsNaN(c.value):
			t.Errorf("%q: taken %v", c.text, ok)
		case ok && v.Number != c.value, ok && (plus == nil) != (c.pls < 0), ok && plus != nil && *plus != c.pls:
			t.Errorf("%q: %v, %v", c.text, v.Number, plus)
		}
	}
	if v, plus, ok := fields.ParseKnown("A ± B", fields.Text, false); !ok || plus != nil || v.Text != "A ± B" {
		t.Errorf("a text: %q, %v", v.Text, plus)
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"22 3/4", "-1,5 mm", "3/0", "9999999999999999999999"} {
		f.Add(s, 3, true)
	}
	f.Fuzz(func(t *testing.T, text string, kind int, in bool) {
		v, ok := fields.Parse(text, fields.Kind(kind), fields.Inches(in))
		if ok && (math.IsNaN(v.Number) || math.IsInf(v.Number, 0)) {
			t.Errorf("%q is %v", text, v.Number)
		}
	})
}
