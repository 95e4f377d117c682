package say

// This file tells how two hulls differ.

import (
	"aligner/assets/words"
	"aligner/hulls/fields"
)

// Difference is one field of two hulls, in a line.
func Difference(s words.Speaker, u Units, in fields.Inches, d *fields.Difference, nameA, nameB string) string {
	args := words.Args{"What": Field(s, &d.Field)}
	switch {
	case !d.OnB:
		args["Name"], args["Value"] = nameA, u.Value(s, &d.Field, d.A, in)
		return s.Say(words.CompareOnly, args)
	case !d.OnA:
		args["Name"], args["Value"] = nameB, u.Value(s, &d.Field, d.B, in)
		return s.Say(words.CompareOnly, args)
	}
	args["NameA"], args["A"] = nameA, u.Value(s, &d.Field, d.A, in)
	args["NameB"], args["B"] = nameB, u.Value(s, &d.Field, d.B, in)
	return s.Say(words.CompareDiffers, args)
}
