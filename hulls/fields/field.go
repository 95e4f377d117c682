package fields

// This file is what a field is.

import (
	"strings"

	"aligner/hulls"
)

// Kind says what a field holds, and so how it is typed and told.
type Kind uint8

// The kinds. All from Length to Number are numbers, in the unit of the hull file.
const (
	Text      Kind = iota
	Choice         // one of Choices
	Thread         // a designation; Choices are common ones
	Length         // mm, by tape
	Clearance      // mm, by leaf or shim
	Mass           // kg
	Stiffness      // N/mm
	Angle          // degrees
	Speed          // turns a minute
	Density        // kg/m3
	Number         // a whole number of pieces
)

// IsNumber reports whether fields of this kind are numbers.
func (k Kind) IsNumber() bool { return k >= Length }

// Part is what a group is of.
type Part string

// The parts of a drive line, in the order of the form.
const (
	Boat        Part = "boat"
	Engine      Part = "engine"
	Mount       Part = "mount"
	Coupling    Part = "coupling"
	Shaft       Part = "shaft"
	Bearing     Part = "bearing"
	LogTube     Part = "log"
	StuffingBox Part = "stuffing box"
	Propeller   Part = "propeller"
)

// Group is the part a field belongs to.
type Group struct {
	Part  Part
	Index int    // of the mount or bearing; otherwise 0
	Name  string // its own name, "" for parts there is one of
}

// Value is a number or a text.
type Value struct {
	Number float64
	Text   string
}

// Frame is E, along the bed, or S, along the shaft.
type Frame byte

// The frames of package hulls.
const (
	E Frame = 'E'
	S Frame = 'S'
)

// Point is a place of the drive line, in mm.
type Point struct {
	Frame Frame
	AtMM  [3]float64
}

// InS is the point in S, on a hull.
func (p Point) InS(h *hulls.Hull) [3]float64 {
	if p.Frame == S {
		return p.AtMM
	}
	return h.EToS(p.AtMM)
}

// Tape is from where to where a number is measured. Its words are the field's.
type Tape struct {
	From, To Point
	// Sight leads from the middle of the coupling faces to From, where that is in the
	// open air; nil: From is a thing one can touch.
	Sight []Point
}

// Usual is what to take for a number that is not measured, and its
// plus-or-minus.
type Usual struct{ Value, Plus float64 }

// Field is one number or text of a hull.
type Field struct {
	Pointer string
	Key     string // names the field's words; the same for all mounts, or bearings
	Group   Group
	Kind    Kind
	Choices []string
	// Limit is what the number may be, as the rest of the hull stands.
	Limit hulls.Limit
	// Tape is nil where no tape is put: the field's words say where else to look.
	Tape *Tape
	// Usual is nil where nothing can be taken unmeasured.
	Usual *Usual
	// Assumed says that the number is not known better than the usual.
	Assumed bool

	get func(*hulls.Hull) Value
	set func(*hulls.Hull, Value)
}

// Place is where hulls.Validate tells the field's faults: mounts[0].at_mm[2].
func (f *Field) Place() string { return placeOf(f.Pointer) }

// placeOf turns a pointer into a place.
func placeOf(pointer string) string {
	var b strings.Builder
	for _, step := range strings.Split(strings.TrimPrefix(pointer, "/"), "/") {
		switch {
		case step != "" && strings.Trim(step, "0123456789") == "":
			b.WriteString("[" + step + "]")
		case b.Len() > 0:
			b.WriteString("." + step)
		default:
			b.WriteString(step)
		}
	}
	return b.String()
}

// Get is the field's value on a hull.
func (f *Field) Get(h *hulls.Hull) Value { return f.get(h) }

// Faults are those of a list that concern the field: told at its place, or at the
// pair or part it stands in.
func (f *Field) Faults(all []hulls.Fault) (own []hulls.Fault) {
	place := f.Place()
	for _, fault := range all {
		if fault.Place == place || strings.HasPrefix(place, fault.Place+"[") {
			own = append(own, fault)
		}
	}
	return own
}

// Shift adds to the field's number on a hull, in place, and judges nothing: for
// those who ask what a number matters.
func (f *Field) Shift(h *hulls.Hull, by float64) {
	v := f.get(h)
	v.Number += by
	f.set(h, v)
}
