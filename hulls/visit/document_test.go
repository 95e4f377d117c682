package visit

// This file tests the written document: what a log of edits begins with.

import (
	"reflect"
	"strconv"
	"strings"
	"testing"
)

func TestDocumentReadsBack(t *testing.T) {
	for _, e := range edits(t) {
		d, err := e.Apply(full(t))
		if err != nil {
			t.Fatal(err)
		}
		again, err := ParseDocument(d.Encode(), "again")
		if err != nil || !reflect.DeepEqual(d, again) {
			t.Errorf("after %s: reads back as another document (%v)", e.Name(), err)
		}
	}
	if d := New("", full(t).Hull); d.Visit.HullName != "Eider" {
		t.Errorf("a hull in no file is called %q in its visit", d.Visit.HullName)
	}
}

func TestBadDocuments(t *testing.T) {
	d, err := (&TurnNut{Mount: "fore port", Steps: 2}).Apply(document(t, "Kittiwake"))
	if err != nil {
		t.Fatal(err)
	}
	good := string(d.Encode())
	for _, c := range []struct{ old, new, want string }{
		{`document/1`, `document/2`, `found "document/2"; wanted "document/1"`},
		{`"held": "seated"`, `"held": "snug"`, `trial.held (line #): found "snug"`},
		{`"fore port": 2`, `"fore left": 2`, `trial.nut_steps["fore left"] (line #): found 2; wanted a mount of the hull`},
		{`"fore port": 2`, `"fore port": 2e6`, `wanted a mount of the hull, moved by less than 100 mm`},
		{`"fore port": 2`, `"fore port": "2"`, `found "2"; wanted a number of flats or shims`},
		{`"pilot_diameter_mm": 63.5`, `"pilot_diameter_mm": 0`, `: found what cannot be tried`},
		{`"held": "seated"`, `"held": "seated", "thrust_n": 1e9`, `found what cannot be tried`},
		{`"date": ""`, `"date": "soon"`, `visit.date (line #): found "soon"`},
		{`"date": ""`, `"dates": ""`, `visit.dates (line #): found an unknown key`},
		{`"mass_kg": 430`, `"mass_kg": -430`, `hull.engine.mass_kg (line #): found -430 kg`},
		{`"hull_name"`, `"name"`, `name (line #): found an unknown key`},
		{good, `7`, `line 1: found 7; wanted an object`},
		{good, ``, `found an empty file; wanted a document in JSON`},
	} {
		text := strings.Replace(good, c.old, c.new, 1)
		if text == good {
			t.Fatalf("%s is not in the document", c.old)
		}
		// # stands for the line where the change was made.
		line := 1 + strings.Count(text[:max(strings.Index(text, c.new), 0)], "\n")
		c.want = strings.Replace(c.want, "#", strconv.Itoa(line), 1)
		if _, err := ParseDocument([]byte(text), "d"); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%.40s: told %v, want %s", c.new, err, c.want)
		}
	}
}
