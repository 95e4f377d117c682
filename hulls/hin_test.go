package hulls

// This file holds hull identification numbers to the rules of 33 CFR 181.25 and
// ISO 10087, by invented numbers.

import (
	"strings"
	"testing"
)

func TestHIN(t *testing.T) {
	for _, c := range []struct {
		typed, normal string // normal "": refused
		why           string // part of the refusal
	}{
		{"ZZZ12345D404", "ZZZ12345D404", ""},
		{"US-ZZZ12345D404", "US-ZZZ12345D404", ""},
		{"USZZZ12345D404", "US-ZZZ12345D404", ""},
		{"ZZZ1O345D404", "", "without the letters I, O and Q"},
		{"ZZZ12345M404", "", "a month of A to L"},
		{"ZZZ12345DX04", "", "the year's last digit"},
		{"ZZZ12345D40", "", "not 11"},
		{"ZZZ 12345D404", "", `character 4 is " "`},
		{"zzz12345d404", "ZZZ12345D404", ""},

		{"us-zzz12345d404", "US-ZZZ12345D404", ""},
		{"US-ZZZ12345-D404", "", `character 9 is "-"`},
		{"U1-ZZZ12345D404", "", "two letters for the country"},
		{"12ZZZ12345D404", "", "two letters for the country"},
		{"US-", "", "not 0"},
		{"", "", "not 0"},
		{"ZZZ12345D4041", "", "not 13"},
		{"ZZZ/2345D404", "", `character 4 is "/"`},
		{"ZZZ1Q345D404", "", `it has "Q"`},
		{"ZZZ1I345D404", "", `it has "I"`},
		{"OIQ12345D404", "OIQ12345D404", ""}, // the maker's code is not the serial
		{"ZZZABCDEA000", "ZZZABCDEA000", ""},
		{"ZZZ12345D4O4", "", "two digits of model year"},
		{"ÄÖÜ12345D404", "", `character 1 is "Ä"`},
		{"ZZZ12345D404\n", "", `character 13`},
	} {
		h, doubt, err := ParseHIN(c.typed)
		switch {
		case c.normal == "" && err == nil:
			t.Errorf("%q is taken as %v", c.typed, h)
		case c.normal == "":
			if !strings.Contains(err.Error(), c.why) || strings.Contains(err.Error(), "\n") {
				t.Errorf("%q is refused with %q; want %q", c.typed, err, c.why)
			}
		case err != nil || doubt != nil || h.String() != c.normal:
			t.Errorf("%q is %v, doubt %v, error %v; want %s", c.typed, h, doubt, err, c.normal)
		}
	}
}

func TestPartsOfHIN(t *testing.T) {
	h, _, err := ParseHIN("us-zzz12345d404")
	want := HIN{Country: "US", Maker: "ZZZ", Serial: "12345", Month: 4, Year: 4, ModelYear: 4, tail: "D404"}
	if err != nil || h != want {
		t.Errorf("taken apart as %+v (%v)", h, err)
	}
	for _, c := range []struct {
		number      string
		today, year int
	}{
		{"ZZZ12345D404", 2026, 2004},
		{"ZZZ12345L304", 2026, 2003}, // built in the autumn before
		{"ZZZ12345A900", 2026, 1999},
		{"ZZZ12345D414", 2026, 2014},
		{"ZZZ12345D484", 2026, 1984},
		{"ZZZ12345D409", 2026, 0}, // no year ends in 4 near a model year of 09
		{"ZZZ123450974", 2026, 1974},
		{"ZZZ12345M74A", 2026, 0},
	} {
		h, _, err := ParseHIN(c.number)
		if err != nil || h.BuiltIn(c.today) != c.year {
			t.Errorf("%s was built in %d (%v); want %d", c.number, h.BuiltIn(c.today), err, c.year)
		}
	}
}

// The forms before August 1984, from memory, are taken with a doubt.
func TestOldHIN(t *testing.T) {
	for number, month := range map[string]int{"ZZZ123450974": 9, "ZZZ12345M74A": 8, "ZZZ12345M83F": 1, "ZZZ12345M83L": 7} {
		h, doubt, err := ParseHIN(number)
		if err != nil || doubt == nil || h.Month != month || h.String() != number {
			t.Errorf("%s: month %d, doubt %v, error %v; want month %d and a doubt", number, h.Month, doubt, err, month)
		}
	}
	for _, number := range []string{"ZZZ123451374", "ZZZ123450985", "ZZZ123450071", "ZZZ12345M85A", "ZZZ12345M74M"} {
		if h, _, err := ParseHIN(number); err == nil {
			t.Errorf("%s is taken as %+v", number, h)
		}
	}
}

// Whatever is typed, what is taken is twelve characters with or without a
// country, and its normal form reads as itself.
func FuzzHIN(f *testing.F) {
	for _, s := range []string{"ZZZ12345D404", "US-ZZZ12345D404", "USZZZ12345D404", "ZZZ123450974", "ZZZ12345M74A", "zz-", "ſſſ12345D404"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, typed string) {
		h, _, err := ParseHIN(typed)
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r") {
				t.Errorf("%q: told on two lines", typed)
			}
			return
		}
		if n := len(h.String()); n != 12 && n != 15 {
			t.Errorf("%q is taken as %q", typed, h)
		}
		if again, _, err := ParseHIN(h.String()); err != nil || again != h {
			t.Errorf("%q is taken as %+v, which reads as %+v (%v)", typed, h, again, err)
		}
	})
}
