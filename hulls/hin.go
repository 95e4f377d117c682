package hulls

// This file reads hull identification numbers: the twelve characters of 33 CFR
// 181.25, with or without the country before them as ISO 10087 has it, and the
// two forms that US boats bore before August 1984.

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"aligner/hulls/strictjson"
)

// HIN is a hull identification number taken apart.
//
//	US - ZZZ 12345 D 4 04
//	|    |   |     | | '-- model year
//	|    |   |     | '---- last digit of the year built
//	|    |   |     '------ month built, A January to L December
//	|    |   '------------ serial: letters or digits, not I, O, Q
//	|    '---------------- maker's code
//	'--------------------- country, no part of the twelve characters
type HIN struct {
	Country   string // two letters; "": not given
	Maker     string // three characters
	Serial    string // five characters
	Month     int    // built; 1 to 12
	Year      int    // built; last digit, or 72 to 84 where the form tells both; -1: not told
	ModelYear int    // last two digits; -1: not told

	tail string // what follows the serial, as it is written
}

// String writes the number in its one normal form: capitals, a hyphen after the
// country and nowhere else.
func (h HIN) String() string {
	if h.Country == "" {
		return h.Maker + h.Serial + h.tail
	}
	return h.Country + "-" + h.Maker + h.Serial + h.tail
}

// hinCharacters are how many there are without the country.
const hinCharacters = 12

// ParseHIN reads a number as it is typed from the plate. Small letters are
// taken as capitals. A number of an old form comes with a doubt. The error is
// a *Fault.
func ParseHIN(typed string) (h HIN, doubt *Fault, err error) {
	s := strings.ToUpper(typed)
	country, s, f := hinCountry(typed, s)
	if f != nil {
		return HIN{}, nil, f
	}
	for i, r := range s {
		if !isHINCharacter(r) {
			return HIN{}, nil, hinFault(typed, fmt.Sprintf("letters and digits only; character %d is %s", i+1, strictjson.Quoted(string(r))),
				"write it without spaces, slashes or hyphens but the one after the country")
		}
	}
	if n := utf8.RuneCountInString(s); n != hinCharacters {
		return HIN{}, nil, hinFault(typed, fmt.Sprintf("twelve characters after the country as in 33 CFR 181.25, not %d", n), "read the plate again")
	}
	h = HIN{Country: country, Maker: s[:3], Serial: s[3:8], tail: s[8:]}
	if i := strings.IndexAny(h.Serial, "IOQ"); i >= 0 {
		return HIN{}, nil, hinFault(typed, fmt.Sprintf("a serial without the letters I, O and Q, as in 33 CFR 181.25; it has %q", h.Serial[i:i+1]), "read it as the digit 1 or 0")
	}
	if h.built() {
		return h, nil, nil
	}
	if h.builtBefore1984() {
		return h, hinFault(typed, "a form in use since August 1984", "keep it if the boat is older"), nil
	}
	return HIN{}, nil, hinFault(typed, "after the serial a month of A to L, the year's last digit and two digits of model year; it ends in "+strictjson.Quoted(h.tail),
		"read the plate again")
}

// hinCountry parts the country from the rest: before a hyphen, or the first two
// of fourteen characters.
func hinCountry(typed, s string) (country, rest string, f *Fault) {
	switch {
	case len(s) > 2 && s[2] == '-':
		country, rest = s[:2], s[3:]
	case len(s) == hinCharacters+2:
		country, rest = s[:2], s[2:]
	default:
		return "", s, nil
	}
	if !isLetter(country[0]) || !isLetter(country[1]) {
		return "", "", hinFault(typed, "two letters for the country, as in ISO 10087; it has "+strictjson.Quoted(country), "read the plate again")
	}
	return country, rest, nil
}

// built reads the tail of today's form: month, year, model year.
func (h *HIN) built() bool {
	t := h.tail
	if t[0] < 'A' || t[0] > 'L' || !allDigits(t[1:]) {
		return false
	}
	h.Month, h.Year, h.ModelYear = int(t[0]-'A')+1, int(t[1]-'0'), twoDigits(t[2:])
	return true
}

// builtBefore1984 reads the two older tails, which are told from memory: two
// digits each of month and year, or M with a model year and the month of it,
// counted from August.
func (h *HIN) builtBefore1984() bool {
	t := h.tail
	if allDigits(t) {
		h.Month, h.Year, h.ModelYear = twoDigits(t), twoDigits(t[2:]), -1
		return h.Month >= 1 && h.Month <= 12 && h.Year >= 72 && h.Year <= 84
	}
	if t[0] != 'M' || !allDigits(t[1:3]) || t[3] < 'A' || t[3] > 'L' {
		return false
	}
	const august = 8
	h.Month, h.Year, h.ModelYear = (int(t[3]-'A')+august-1)%12+1, -1, twoDigits(t[1:])
	return h.ModelYear >= 72 && h.ModelYear <= 84
}

// BuiltIn gives the year in which the boat was built, as late as it can be by
// that of today: the number tells a year's last digit only. 0: not told.
func (h HIN) BuiltIn(today int) int {
	switch {
	case h.Year < 0:
		return 0
	case h.Year > 9:
		return 1900 + h.Year
	}
	// The model year is the year built or near it, and settles the decade.
	for year := today + 1; year > today-100; year-- {
		apart := (year - h.ModelYear + 100) % 100 // 99 is one year below 00
		if year%10 == h.Year && (apart <= 2 || apart >= 98) {
			return year
		}
	}
	return 0
}

func hinFault(typed, limit, mend string) *Fault {
	return &Fault{Place: "hin", Value: strictjson.Quoted(typed), Limit: limit, Mend: mend}
}

func isLetter(c byte) bool { return c >= 'A' && c <= 'Z' }

func isHINCharacter(r rune) bool { return r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' }

func allDigits(s string) bool { return strings.Trim(s, "0123456789") == "" }

func twoDigits(s string) int { return int(s[0]-'0')*10 + int(s[1]-'0') }
