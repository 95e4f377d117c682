package hulls_test

// The reader takes anything without a panic, and what it takes comes back.

import (
	"bytes"
	"reflect"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
)

func FuzzParse(f *testing.F) {
	for _, name := range assets.HullNames() {
		data, _ := assets.Hull(name)
		f.Add(data)
	}
	bench, _ := assets.Hull("Bench")
	kittiwake, _ := assets.Hull("Kittiwake")
	for _, e := range badKittiwakes {
		if e.old != "" {
			f.Add(bytes.Replace(kittiwake, []byte(e.old), []byte(e.new), 1))
		} else if len(e.new) < 4096 {
			f.Add([]byte(e.new))
		}
	}
	f.Add(bytes.Replace(kittiwake, []byte(`"layout"`), []byte(`"one_sided": true, "measured_response": [`+oneMeasured+`], "layout"`), 1))
	f.Add(bytes.ReplaceAll(bench, []byte("\n"), []byte("\r\n")))
	f.Fuzz(func(t *testing.T, data []byte) {
		h, err := hulls.Parse(data, "fuzz")
		if err != nil {
			if line := err.Error(); strings.ContainsAny(line, "\n\r\x1b") || line == "" {
				t.Fatalf("not one line: %q", line)
			}
			return
		}
		roundTrip(t, h)
	})
}

// roundTrip holds the law of the canonical form: written and read it is the
// same hull, written again the same bytes.
func roundTrip(t *testing.T, h hulls.Hull) {
	t.Helper()
	once := hulls.Encode(h)
	again, err := hulls.Parse(once, "again")
	if err != nil {
		t.Fatalf("what was read is refused when written: %v\n%s", err, once)
	}
	if !reflect.DeepEqual(h, again) {
		t.Fatalf("reads back as another hull:\n%+v\n%+v", h, again)
	}
	if twice := hulls.Encode(again); !bytes.Equal(once, twice) {
		t.Fatalf("the second writing differs:\n%s\n%s", once, twice)
	}
}

func TestRoundTrip(t *testing.T) {
	full := fullHull(t)
	roundTrip(t, full)
	for _, name := range assets.HullNames() {
		h, _ := builtIn(t, name)
		roundTrip(t, h)
	}
	// Numbers with many digits, names with quotes and letters of other
	// alphabets, a pilot of zero, tolerances of defaults.
	h, _ := builtIn(t, "Wren")
	h.Name, h.OwnerReference = `"Wren" \ <Zaunkönig> & 鷦鷯`, "a/b~c"
	h.ShaftAngleDeg = 9.000000000000002
	h.Engine.CentreOfMassMM[1] = 1e-7
	h.Coupling.PilotDiameterMM = 0
	h.Tolerance = map[string]float64{"/propeller/density_kg_m3": 100, "/log/offset_mm/1": 0.5, "/bearings/0/offset_mm/0": 0.2,
		"/stuffing_box/offset_mm/1": 1e-300}
	roundTrip(t, h)
	if text := string(hulls.Encode(h)); !strings.Contains(text, `"density_kg_m3": 7600`) || strings.Count(text, `"offset_mm": [0, 0]`) != 3 {
		t.Errorf("a default with a tolerance is not written:\n%s", text)
	}
}

// Spelling that means the same reads as the same hull.
func TestSpellingsOfOneHull(t *testing.T) {
	want, good := builtIn(t, "Kittiwake")
	for what, edit := range map[string][2]string{
		"exponent":        {`"mass_kg": 430`, `"mass_kg": 4.3e2`},
		"minus zero":      {`[520, 0, 160]`, `[520, -0.0, 160]`},
		"escaped letters": {`"Kittiwake"`, `"\u004bittiwake"`},
		"default kind":    {`"thread": "5/8`, `"kind": "rubber", "thread": "5/8`},
		"default density": {`"diameter_mm": 330`, `"diameter_mm": 330, "density_kg_m3": 7600`},
		"default offset":  {`"bore_mm": 38`, `"bore_mm": 38, "offset_mm": [0, 0]`},
		"empty HIN":       {`"layout"`, `"hin": "", "layout"`},
		"whole bolts":     {`"count": 4`, `"count": 4.0`},
		"empty tables":    {`"layout"`, `"tolerance": {}, "look": {}, "layout"`},
		"line ends":       {"\n", "\r\n"},
	} {
		text := strings.ReplaceAll(string(good), edit[0], edit[1])
		if text == string(good) {
			t.Fatalf("%s: the edit does not fit", what)
		}
		h, err := hulls.Parse([]byte(text), what)
		if err != nil {
			t.Errorf("%s: %v", what, err)
		}
		if !reflect.DeepEqual(h, want) || !bytes.Equal(hulls.Encode(h), good) {
			t.Errorf("%s: reads as another hull", what)
		}
	}
}
