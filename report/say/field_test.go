package say

// What stands in a field is written as it may be typed: read back it is the same.

import (
	"math"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls/fields"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics/response"
)

func TestInches(t *testing.T) {
	for _, c := range []struct {
		v    float64
		want string
	}{{22.75, "22 3/4"}, {0.75, "3/4"}, {-11.4375, "-11 7/16"}, {4, "4"}, {0, "0"}, {1.03125, "1 1/32"}, {11.417, "11.417"}, {-0.2, "-0.2"}} {
		if got := (Units{}).Inches(c.v); got != c.want {
			t.Errorf("%v: %q, want %q", c.v, got, c.want)
		}
	}
}

func TestEntriesReadBack(t *testing.T) {
	s := words.In("de")
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		for _, f := range fields.List(&h) {
			for _, in := range []fields.Inches{false, true} {
				u := Units{DecimalComma: true}
				v, text := f.Get(&h), u.Entry(&f, f.Get(&h), in)
				back, ok := fields.Parse(text, f.Kind, in)
				most := 1e-4
				if in { // a thousandth of an inch, or a hundredth of a thou
					most = 0.0128
				}
				if !ok || back.Text != v.Text || math.Abs(back.Number-v.Number) > most {
					t.Errorf("%s %s: %v is written %q and read as %v", name, f.Pointer, v, text, back)
				}
			}
			for _, id := range []words.ID{words.Of("field", f.Key), words.Of("tape", f.Key), words.Of("group", string(f.Group.Part))} {
				if said := s.Say(id, words.Args{"Name": "x"}); said == "["+string(id)+"]" {
					t.Errorf("no words for %s", id)
				}
			}
			if f.Key == "layout" || f.Key == "mount_kind" || f.Key == "mount_reach" || f.Key == "engine_look" || f.Key == "hull_section" || f.Key == "hose_look" {
				for _, c := range f.Choices {
					if c != "" && s.Say(words.Of("choice", c), nil) == "["+string(words.Of("choice", c))+"]" {
						t.Errorf("no words for the choice %q", c)
					}
				}
			}
		}
	}
}

// TestAnswersOfBeforeAreTold: a plan says when it goes by what the boat answered in
// earlier visits, and says nothing of it otherwise.
func TestAnswersOfBeforeAreTold(t *testing.T) {
	s := words.In("en")
	h := builtin.Hull(t, "Kittiwake")
	for _, c := range []struct {
		measured int
		want     int
	}{{0, 0}, {1, 1}, {3, 1}} {
		l := &response.Learnt{Response: &response.Response{Measured: c.measured}}
		lines := Learnt(s, Units{}, &h, l)
		if len(lines) != c.want || c.want > 0 && !strings.Contains(lines[0], "before") {
			t.Errorf("%d answers: %q", c.measured, lines)
		}
	}
}
