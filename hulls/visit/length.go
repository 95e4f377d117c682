package visit

// This file holds numbers that may be left out, and lengths and torques kept in
// the unit they were given in.

// Unit is the unit something was typed in; "" for what was not typed at all.
type Unit string

// The units of thicknesses and torques, as keys of a file end.
const (
	InThou Unit = "thou" // 0.001 inch
	InMM   Unit = "mm"
	InNM   Unit = "nm"    // newton metres
	InLbFt Unit = "lb_ft" // pounds-force feet
)

const (
	mmPerThou = 0.0254 // an inch is 25.4 mm by definition
	nmPerLbFt = 1.3558179483314004
)

// Length is a small length. Its zero value was left out.
type Length struct {
	Value float64
	Unit  Unit // InThou or InMM
}

// Thou is a length in thousandths of an inch.
func Thou(v float64) Length { return Length{v, InThou} }

// MM is a length in millimetres.
func MM(v float64) Length { return Length{v, InMM} }

// Given reports whether there is a length at all.
func (l Length) Given() bool { return l.Unit != "" }

// MM is the length in millimetres; 0 for one left out.
func (l Length) MM() float64 {
	if l.Unit == InThou {
		return l.Value * mmPerThou
	}
	return l.Value
}

// Thou is the length in thousandths of an inch; 0 for one left out.
func (l Length) Thou() float64 {
	if l.Unit == InMM {
		return l.Value / mmPerThou
	}
	return l.Value
}

// Torque on a bolt or nut. Its zero value was left out.
type Torque struct {
	Value float64
	Unit  Unit // InNM or InLbFt
}

// Given reports whether there is a torque at all.
func (t Torque) Given() bool { return t.Unit != "" }

// NM is the torque in newton metres; 0 for one left out.
func (t Torque) NM() float64 {
	if t.Unit == InLbFt {
		return t.Value * nmPerLbFt
	}
	return t.Value
}

// Maybe is a number that may not be known. Its zero value is not.
type Maybe struct {
	Value float64
	Known bool
}

// Known is a number that is known.
func Known(v float64) Maybe { return Maybe{v, true} }

// Or is the number, or another where it is not known.
func (m Maybe) Or(other float64) float64 {
	if m.Known {
		return m.Value
	}
	return other
}
