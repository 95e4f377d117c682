package called

// This file is what stands while readings are called, and why a line is no
// reading.

import (
	"fmt"

	"aligner/hulls/visit"
)

// Setting is what need not be said with every reading.
type Setting struct {
	Kind     string          // one of visit.ReadingKinds; "" (default): "leaf"
	Seen     visit.Direction // which way one looks; default forward
	AskedDeg float64         // the place of a line that names none
	Then     []float64       // of a table: those asked for after it, in turn
	Unit     visit.Unit      // of a length that names none; "" (default): thou
	// Leaves of the set in Unit, thinnest first: what stops where a line names
	// the one that goes alone. None: a line has to name both.
	Leaves []float64

	On        string       // of dial and run-out: "face" (default) or "rim"
	CarriedBy string       // the half a dial is on; "" (default): the shaft side
	ZeroDeg   float64      // where a dial was set to nought
	Sag       visit.Length // of its bracket; left out (default): none
	Half      string       // the half turned for run-out; "" (default): the shaft side
	Where     string       // a clearance's: "log" or a bearing's name
	End       string       // "fore" (default) or "aft"
}

func (s Setting) kind() string { return or(s.Kind, "leaf") }

// or is a word, or what stands for none.
func or(word, fallback string) string {
	if word == "" {
		return fallback
	}
	return word
}

// Why says what is wrong with a line.
type Why string

// The faults. Each has a sentence of the project's by its name.
const (
	Unreadable Why = "unreadable"  // not the form of the kind
	NoPlace    Why = "no place"    // the clock position cannot be read
	NoLength   Why = "no length"   // a length cannot be read
	NoPair     Why = "no pair"     // which leaf stopped has to be said
	WrongWay   Why = "wrong way"   // goes is not thinner than stops
	NoHalf     Why = "no half"     // which half the straightedge lies on has to be said
	NoArc      Why = "no arc"      // an arc cannot be read
	NoColumns  Why = "no columns"  // a table's row has too few or too many
	NothingYet Why = "nothing yet" // no reading in the text at all
)

// Whys are all of them.
var Whys = []Why{Unreadable, NoPlace, NoLength, NoPair, WrongWay, NoHalf, NoArc, NoColumns, NothingYet}

// Fault is a line that is no reading.
type Fault struct {
	Why  Why
	Line int    // of a table, counted from 1; 0: the only one
	Text string // what was found there
}

func (f *Fault) Error() string {
	if f.Line > 0 {
		return fmt.Sprintf("line %d: %q: %s", f.Line, f.Text, f.Why)
	}
	return fmt.Sprintf("%q: %s", f.Text, f.Why)
}
