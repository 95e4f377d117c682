package hulls_test

// Measured responses: what is refused of them, and that a file without them stays
// what it was.

import (
	"strings"
	"testing"

	"aligner/hulls"
)

const oneMeasured = `{"nut_flats": {"fore port": 3}, "held": "seated", "before": {"cos_mm": 0.1, "sin_mm": 0}, "after": {"cos_mm": 0.04, "sin_mm": 0.01}, "error_mm": 0.013}`

func TestMeasuredRefused(t *testing.T) {
	_, good := builtIn(t, "Kittiwake")
	for _, c := range []struct{ old, new, want string }{
		{"", "", ""},
		{`"fore port": 3`, `"fore prot": 3`, `measured_response[0].nut_flats["fore prot"]`},
		{`"fore port": 3`, `"fore port": 300`, "-72 to 72 flats"},
		{`"fore port": 3`, `"fore port": "3"`, "without quotes"},
		{`"nut_flats": {"fore port": 3}, `, ``, "nothing moved"},
		{`"seated"`, `"bolted"`, `"centred"`},
		{`"error_mm": 0.013`, `"error_mm": 0`, "measured_response[0].error_mm"},
		{`"cos_mm": 0.1`, `"cos_mm": 100`, "measured_response[0].before.cos_mm"},
		{`, "after": {"cos_mm": 0.04, "sin_mm": 0.01}`, ``, "after"},
	} {
		one := strings.Replace(oneMeasured, c.old, c.new, 1)
		text := strings.Replace(string(good), `"layout"`, `"measured_response": [`+one+`], "layout"`, 1)
		h, err := hulls.Parse([]byte(text), "k")
		switch {
		case c.want == "" && (err != nil || len(h.MeasuredResponse) != 1):
			t.Errorf("a good one: %v", err)
		case c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)):
			t.Errorf("%s: %v; want %s", c.new, err, c.want)
		}
	}
	h, _ := builtIn(t, "Kittiwake")
	h.MeasuredResponse = make([]hulls.Measured, hulls.MostMeasured+1)
	if hulls.Validate(h).Err() == nil {
		t.Error("too many are taken")
	}
}
