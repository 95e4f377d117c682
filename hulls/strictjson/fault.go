package strictjson

// This file says how something bad or doubtful is told: one line that names the
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
	File  string // as the caller named it; "" for what is in no file
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
		fmt.Fprintf(&b, "%s: ", Printable(f.File, 200))
	}
	if where := f.where(); where != "" {
		fmt.Fprintf(&b, "%s: ", where)
	}
	fmt.Fprintf(&b, "found %s; wanted %s; %s",
		Printable(f.Value, 200), Printable(f.Limit, 400), Printable(f.Mend, 400))
	return b.String()
}

func (f *Fault) where() string {
	place := Printable(f.Place, 120)
	switch {
	case f.Line == 0:
		return place
	case place == "":
		return fmt.Sprintf("line %d", f.Line)
	}
	return fmt.Sprintf("%s (line %d)", place, f.Line)
}

// Quoted shows a text of the file, cut when long.
func Quoted(s string) string { return `"` + Printable(s, 60) + `"` }

// Printable replaces whatever could break a line or hide text (control
// characters, direction marks, bad UTF-8) by its escape, and cuts after max
// characters.
func Printable(s string, max int) string {
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

// Plain writes a number for people: no exponent where it can be helped, at
// most six significant digits.
func Plain(v float64) string {
	s := strconv.FormatFloat(v, 'g', 6, 64)
	if a := strings.IndexAny(s, "e"); a < 0 {
		return s
	}
	if v > -1e9 && v < 1e9 && (v > 1e-6 || v < -1e-6) {
		return strconv.FormatFloat(v, 'f', -1, 64)
	}
	return s
}
