package hulls

// This file says how a bad or doubtful hull is told: one line that names the
// file, the place in it, the value found, the limit and the mend.

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Fault is one thing wrong, or doubtful, with a file.
type Fault struct {
	File  string // as the caller named it; "" for a hull that is in no file
	Place string // path such as mounts[1].thread_pitch_mm; "" for the file as a whole
	Line  int    // line of the file, counted from 1; 0 when there is none
	Value string // what was found
	Limit string // what was wanted
	Mend  string // what to do about it
}

// Error gives the whole fault in one line, without control characters.
func (f *Fault) Error() string {
	var b strings.Builder
	if f.File != "" {
		fmt.Fprintf(&b, "%s: ", printable(f.File, 200))
	}
	if where := f.where(); where != "" {
		fmt.Fprintf(&b, "%s: ", where)
	}
	fmt.Fprintf(&b, "found %s; wanted %s; %s",
		printable(f.Value, 200), printable(f.Limit, 400), printable(f.Mend, 400))
	return b.String()
}

func (f *Fault) where() string {
	place := printable(f.Place, 120)
	switch {
	case f.Line == 0:
		return place
	case place == "":
		return fmt.Sprintf("line %d", f.Line)
	}
	return fmt.Sprintf("%s (line %d)", place, f.Line)
}

// Report is what looking a hull over found. A hull with refusals is not a
// possible boat, or not one this program can work with; doubts are odd
// numbers that a real boat may have all the same.
type Report struct {
	Refusals []Fault
	Doubts   []Fault
}

// Err is the first refusal, or nil.
func (r Report) Err() error {
	if len(r.Refusals) == 0 {
		return nil
	}
	f := r.Refusals[0]
	return &f
}

// quoted shows a text of the file, cut when long.
func quoted(s string) string { return `"` + printable(s, 60) + `"` }

// printable replaces whatever could break a line or hide text (control
// characters, direction marks, bad UTF-8) by its escape, and cuts after max
// characters.
func printable(s string, max int) string {
	var b strings.Builder
	n := 0
	for i, r := range s {
		if n == max {
			b.WriteString("...")
			break
		}
		n++
		_, size := utf8.DecodeRuneInString(s[i:])
		switch {
		case r == utf8.RuneError && size <= 1:
			fmt.Fprintf(&b, `\x%02x`, s[i])
		case unicode.IsPrint(r):
			b.WriteRune(r)
		default:
			b.WriteString(strings.Trim(strconv.QuoteRuneToASCII(r), "'"))
		}
	}
	return b.String()
}

// plain writes a number for people: no exponent where it can be helped, at
// most six significant digits.
func plain(v float64) string {
	s := strconv.FormatFloat(v, 'g', 6, 64)
	if a := strings.IndexAny(s, "e"); a < 0 {
		return s
	}
	if v > -1e9 && v < 1e9 && (v > 1e-6 || v < -1e-6) {
		return strconv.FormatFloat(v, 'f', -1, 64)
	}
	return s
}
