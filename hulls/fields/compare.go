package fields

// This file compares two hulls field by field.

import (
	"math"
	"strings"

	"aligner/hulls"
)

// Difference is a field two hulls differ in, or that only one has.
type Difference struct {
	Field    Field // of the first that has it
	OnA, OnB bool  // whether each has it
	A, B     Value
}

// Compare lists what differs, in the order of the form. Mounts and bearings are
// matched by their names, whatever their order.
func Compare(a, b *hulls.Hull) []Difference {
	type name struct {
		part Part
		own  string
		key  string
	}
	nameOf := func(f *Field) name { return name{f.Group.Part, strings.ToLower(f.Group.Name), f.Key} }
	onB := map[name]Field{}
	listB := List(b)
	for _, f := range listB {
		onB[nameOf(&f)] = f
	}
	var all []Difference
	for _, f := range List(a) {
		d := Difference{Field: f, OnA: true, A: f.Get(a)}
		other, ok := onB[nameOf(&f)]
		if delete(onB, nameOf(&f)); ok {
			d.OnB, d.B = true, other.Get(b)
		}
		if !ok || !same(d.A, d.B) {
			all = append(all, d)
		}
	}
	for _, f := range listB {
		if _, left := onB[nameOf(&f)]; left {
			all = append(all, Difference{Field: f, OnB: true, B: f.Get(b)})
		}
	}
	return all
}

// same tells numbers apart that differ by more than rounding.
func same(a, b Value) bool {
	return a.Text == b.Text && math.Abs(a.Number-b.Number) <= 1e-9*max(1, math.Abs(a.Number))
}
