package copied

// This file tests that what is copied is whole: every reading of every worked
// visit is in the rows with its limits, and text and rows say the estimate.

import (
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics/gauge"
	"aligner/report/say"
)

// results works a visit out.
func results(t *testing.T, name string) Results {
	t.Helper()
	d := builtin.Visit(t, name)
	m, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	e, err := m.Estimate(&d.Visit)
	if err != nil {
		t.Fatal(err)
	}
	return Results{Document: &d, Estimate: e}
}

func TestRowsHoldEveryReading(t *testing.T) {
	for _, name := range assets.VisitNames() {
		r := results(t, name)
		for _, u := range []say.Units{{}, {Metric: true, DecimalComma: true}} {
			c := csv.NewReader(strings.NewReader(Rows(words.In("en"), u, r)))
			if u.DecimalComma {
				c.Comma = ';'
			}
			all, err := c.ReadAll() // refuses rows of different lengths
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			number := func(text string) float64 {
				v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
				if err != nil {
					t.Fatalf("%s: %q", name, text)
				}
				if u.Metric {
					return v
				}
				return v * say.MMPerThou
			}
			var read [][]string
			for _, row := range all {
				if row[1] == "reading" {
					read = append(read, row)
				}
			}
			for _, e := range r.Document.Visit.Events {
				if e.Gauging == nil {
					continue
				}
				for _, one := range e.Gauging.Readings {
					if len(read) == 0 {
						t.Fatalf("%s: rows end before the readings do", name)
					}
					row := read[0]
					read = read[1:]
					leaf, ok := one.(visit.Leaf)
					if row[2] != one.Kind() || ok && leaf.Goes.Given() && math.Abs(number(row[5])-leaf.Goes.MM()) > 1e-4 ||
						ok && leaf.Stops.Given() != (row[6] != "") {
						t.Errorf("%s: %+v is row %q", name, one, row)
					}
				}
			}
			if len(read) > 0 {
				t.Errorf("%s: %d readings too many", name, len(read))
			}
		}
	}
}

func TestTextSaysWhatTheScreenSays(t *testing.T) {
	for _, name := range assets.VisitNames() {
		r := results(t, name)
		for _, tag := range words.Languages() {
			s, u := words.In(tag), say.Units{Metric: tag == "de", DecimalComma: tag == "de"}
			text := Text(s, u, r)
			for _, line := range say.Estimate(s, u, &r.Document.Visit, r.Estimate) {
				if !strings.Contains(text, line) {
					t.Errorf("%s, %s: %q is missing", name, tag, line)
				}
			}
			if strings.Contains(text, "<no value>") || strings.Contains(text, "[copied") || strings.Contains(text, "[read_") {
				t.Errorf("%s, %s:\n%s", name, tag, text)
			}
		}
	}
}
