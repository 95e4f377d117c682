package history

// This file tests the sentences: that they say what was worked out, in every
// language without a gap.

import (
	"encoding/json"
	"math/rand/v2"
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/say"
)

func TestSentences(t *testing.T) {
	p := longPast(t)
	for language, want := range map[string][]string{
		"en": {"2026-04-11, visit 4, 775 engine hours", "Since 2025-05-02, 344 days, 375 engine hours:",
			"The gap changed by", "more open at 12 o'clock (the top), looking forward.", "Studs above their nuts, found less left: fore starboard +2 mm",
			"Almost certainly: the nut of fore starboard backed off by about"},
		"de": {"2026-04-11, Einsatz 4, 775 Motorstunden", "weiter offen bei 12 Uhr (oben), Blick nach vorn.", "So gut wie sicher: die Mutter von STB vorn hat sich um etwa"},
	} {
		s := Speech{words.In(language), say.Units{DecimalComma: language == "de"}, p}
		text := strings.Join(append(s.Visit(3), s.Change(3)...), "\n")
		for _, line := range want {
			if !strings.Contains(text, line) {
				t.Errorf("%s: no %q in\n%s", language, line, text)
			}
		}
		t.Log("\n" + text)
		if s.Change(0) != nil {
			t.Error("something happened before the first visit")
		}
	}
}

// Every word of the package has its sentence, and none is left with a hole.
func TestEveryWordIsSaid(t *testing.T) {
	h := hullNamed(t, "Kittiwake")
	p := worked(t, twice(t, h, still(&h), rand.New(rand.NewPCG(1, 1))))
	for _, language := range words.Languages() {
		s := Speech{words.In(language), say.Units{}, p}
		check := func(lines ...string) {
			for _, line := range lines {
				if strings.Contains(line, "history_") || strings.Contains(line, "<no value>") || strings.Contains(line, "{{") {
					t.Errorf("%s: %q", language, line)
				}
			}
		}
		for _, cause := range append(Causes, CornerDown) {
			check(s.cause(Likely{Cause: cause, Mounts: []int{0}, Side: -1, MM: 1.5}, false), s.cause(Likely{Cause: cause, Mounts: []int{0, 2}}, false), s.cause(Likely{Cause: cause, Mounts: []int{0, 1}}, true))
		}
		c := p.Entries[1].Since
		c.Caveats = []Caveat{BoatStoodElse, MeasuredAnew, NotFlat, LookFailed}
		c.Advice = []Advice{MeasureStuds, MarkNuts, MeasureRubber, GaugeAtEnd, GaugeAtBegin, WriteHours}
		c.Marks = []string{visit.MarkTurned, visit.MarkTurned, visit.MarkInLine, ""}
		for _, why := range []Missing{"", NotLeft, NotFound} {
			c.WhyNot = why
			check(s.Change(1)...)
		}
		for _, g := range []Grade{AlmostSure, Likeliest, Possible, HardlyGrade, Unlikely} {
			check(s.say(words.Of("history_grade", string(g)), nil), s.say(words.Of("history_in_grade", string(g)), nil))
		}
		p.Entries[1].Trouble = "odd"
		check(s.Visit(0)...)
		check(s.Visit(1)...)
		p.Entries[1].Trouble = ""
	}
}

func TestJSONIsWhole(t *testing.T) {
	data, err := json.Marshal(longPast(t).JSON())
	if err != nil {
		t.Fatal(err)
	}
	var back struct {
		Hull   string
		Visits []struct {
			Number int
			Found  struct {
				SpreadMM float64 `json:"spread_mm"`
			}
			NutsAfter map[string]float64 `json:"nuts_after_flats"`
			Since     *struct {
				Likely string
				Causes []struct{ Probability float64 }
			}
		}
	}
	if err := json.Unmarshal(data, &back); err != nil {
		t.Fatal(err)
	}
	last := back.Visits[3]
	if back.Hull != "Kittiwake" || back.Visits[0].Since != nil || last.Since.Likely != string(NutBacked) || last.NutsAfter["fore port"] != 6 || last.Found.SpreadMM <= 0 {
		t.Errorf("%+v", back)
	}
	sum := 0.0
	for _, c := range last.Since.Causes {
		sum += c.Probability
	}
	if sum < 0.999999 || sum > 1.000001 {
		t.Errorf("probabilities add up to %g", sum)
	}
}
