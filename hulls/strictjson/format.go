package strictjson

// This file is what has to be known of a format to speak of its faults.

import "strings"

// MaxDepth is how deep values may nest.
const MaxDepth = 16

// Format is a file format as its faults speak of it.
type Format struct {
	Noun     string // what a file of it holds, such as "hull"
	MaxBytes int    // the largest text read

	Units  map[string]string // endings of keys, with the unit in words: "_mm": "millimetres"
	SameAs map[string]string // keys without an ending, and the key whose unit they share

	// Misplaced keys are right elsewhere, or were left out of the format for a
	// reason: what is wanted instead, and the mend.
	Misplaced map[string][2]string
}

// a is the noun with its article.
func (f *Format) a() string {
	if f.Noun != "" && strings.ContainsRune("aeiou", rune(f.Noun[0])) {
		return "an " + f.Noun
	}
	return "a " + f.Noun
}

// give is the mend of a text that is none of this format's.
func (f *Format) give() string { return "give " + f.a() + " file" }
