package say

// This file writes what stands in a hull's fields, with units.

import (
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls/fields"
)

const mmPerInch = 25.4

// Field says what a field is called, with the part it belongs to: "Mount fore port:
// Height".
func Field(s words.Speaker, f *fields.Field) string {
	return s.Say(words.FieldOf, words.Args{"Part": Group(s, f.Group), "Field": FieldName(s, f)})
}

// FieldName says what a field is called within its part.
func FieldName(s words.Speaker, f *fields.Field) string { return s.Say(words.Of("field", f.Key), nil) }

// Group says what a part is called.
func Group(s words.Speaker, g fields.Group) string {
	return s.Say(words.Of("group", string(g.Part)), words.Args{"Name": g.Name})
}

// Value writes a field's value with its unit, lengths in inches or mm.
func (u Units) Value(s words.Speaker, f *fields.Field, v fields.Value, in fields.Inches) string {
	if !f.Kind.IsNumber() {
		switch {
		case v.Text == "":
			return s.Say(words.ValueNone, nil)
		case f.Kind == fields.Choice:
			return Choice(s, v.Text)
		}
		return v.Text
	}
	between := " "
	if f.Kind == fields.Angle {
		between = ""
	}
	return strings.TrimSpace(u.Entry(f, v, in) + between + FieldUnit(s, f, in))
}

// Choice says one of a field's choices: in words where it is one of ours, and as
// it is where it is a standard's, as an alloy's number.
func Choice(s words.Speaker, choice string) string {
	id := words.Of("choice", choice)
	if said := s.Say(id, nil); said != "["+string(id)+"]" {
		return said
	}
	return choice
}

// FieldUnit is the unit a field is typed in.
func FieldUnit(s words.Speaker, f *fields.Field, in fields.Inches) string {
	switch f.Kind {
	case fields.Length:
		if in {
			return "in"
		}
		return "mm"
	case fields.Clearance:
		if in {
			return "thou"
		}
		return "mm"
	case fields.Mass:
		return "kg"
	case fields.Stiffness:
		return "N/mm"
	case fields.Angle:
		return "°"
	case fields.Speed:
		return s.Say(words.UnitSpeed, nil)
	case fields.Density:
		return "kg/m³"
	}
	return ""
}

// Entry writes a field's value as it is typed, without its unit.
func (u Units) Entry(f *fields.Field, v fields.Value, in fields.Inches) string {
	switch {
	case !f.Kind.IsNumber():
		return v.Text
	case bool(in) && f.Kind == fields.Length:
		return u.Inches(v.Number / mmPerInch)
	case bool(in) && f.Kind == fields.Clearance:
		return u.Plain(v.Number/mmPerInch*1000, 2)
	}
	return u.Plain(v.Number, 4)
}

// nearFraction is how near to a thirty-second of an inch a length must be to be
// written so, in inches: half of the last decimal written otherwise.
const nearFraction = 0.0005

// Inches writes inches: with a fraction where it is one, else with decimals.
func (u Units) Inches(v float64) string {
	n := math.Round(math.Abs(v) * 32)
	if math.Abs(math.Abs(v)*32-n) > nearFraction*32 || n == 0 {
		return u.Plain(v, 3)
	}
	over, under := math.Mod(n, 32), 32.0
	for over > 0 && math.Mod(over, 2) == 0 {
		over, under = over/2, under/2
	}
	text := ""
	if whole := math.Floor(n / 32); whole > 0 {
		text = u.Plain(whole, 0)
	}
	if over > 0 {
		text = strings.TrimSpace(text + " " + u.Plain(over, 0) + "/" + u.Plain(under, 0))
	}
	if v < 0 {
		text = "-" + text
	}
	return text
}
