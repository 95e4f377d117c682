package strictjson

// This file tests what no single format shows: places in a file, values
// embedded in others, faults of a hostile file. The rest is held by the tests
// of the formats.

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"
)

var boat = &Format{Noun: "oar", MaxBytes: 1 << 16, Units: map[string]string{"_mm": "millimetres"}, SameAs: map[string]string{"along": "length_mm"}}

const text = `{
 "at": 1,
 "at_mm": [
  2,
  {"a b": 3,
   "a/b~c": 4}
 ],
 "": {
  "": 5
 }
}`

func TestPlacesAndLines(t *testing.T) {
	root, f := Parse([]byte(text), "x", boat)
	if f != nil {
		t.Fatal(f)
	}
	for path, line := range map[string]int{"": 1, "at": 2, "at_mm": 3, "at_mm[0]": 4, `at_mm[1]["a b"]`: 5, `at_mm[1]["a/b~c"]`: 6,
		"at_mm[1].missing": 5, "at_mm[7]": 3, "at_m": 1, "nothing.at.all": 1} {
		if got := root.LineOf(path); got != line {
			t.Errorf("%s: line %d, want %d", path, got, line)
		}
	}
	for pointer, want := range map[string]string{"/at": "1", "/at_mm/0": "2", "/at_mm/1/a b": "3", "/at_mm/1/a~1b~0c": "4", "//": "5",
		"/at_mm/2": "", "/at_mm/00": "", "/at_mm/-1": "", "/at/0": "", "/none": ""} {
		n := root.Follow(pointer)
		if (n == nil) != (want == "") || n != nil && n.Text != want {
			t.Errorf("%s: %+v, want %q", pointer, n, want)
		}
	}
	faults := []Fault{{Place: "at_mm[0]"}, {Place: ""}, {Place: "[0]"}}
	root.Locate(faults, "x", "oars[1]")
	if faults[0].Place != "oars[1].at_mm[0]" || faults[0].Line != 4 || faults[1].Place != "oars[1]" || faults[2].Place != "oars[1][0]" {
		t.Errorf("located at %+v", faults)
	}
}

func TestEmbeddedValuesKeepTheirMeaning(t *testing.T) {
	inner := &Encoder{}
	inner.Open("", '{')
	inner.Text("note", "two\nlines \u2028 and <three>")
	inner.Open("list", '[')
	inner.Numbers("", []float64{1, 0.1})
	inner.Close(']')
	inner.Close('}')
	inner.EndLine()
	outer := &Encoder{}
	outer.Open("", '{')
	outer.OptionalBool("no", false)
	outer.OptionalBool("yes", true)
	outer.Embed("inner", inner.Bytes())
	outer.Close('}')
	var got struct {
		Yes   bool
		Inner json.RawMessage
	}
	if err := json.Unmarshal(outer.Bytes(), &got); err != nil {
		t.Fatalf("%v\n%s", err, outer.Bytes())
	}
	var a, b bytes.Buffer
	if json.Compact(&a, got.Inner) != nil || json.Compact(&b, inner.Bytes()) != nil || a.String() != b.String() || !got.Yes {
		t.Errorf("embedded\n%s\nof\n%s", outer.Bytes(), inner.Bytes())
	}
	if !strings.Contains(string(outer.Bytes()), "\n  \"note\"") || strings.Contains(string(outer.Bytes()), `"no"`) {
		t.Errorf("not indented as it stands:\n%s", outer.Bytes())
	}
}

func TestObjectTakesAValueOnce(t *testing.T) {
	root, f := Parse([]byte(`{"along": "x", "count": 1.5, "on": 1, "list": [1], "big_in": 2}`), "x", boat)
	if f != nil {
		t.Fatal(f)
	}
	d := &Decoder{File: "x", Format: boat, At: "oars[0]"}
	o := d.Object(root, "", "along", "count", "on", "list", "big_mm?", "length_mm")
	o.Number("along")
	o.Whole("count")
	o.Bool("on")
	o.List("list", 0)
	want := []string{
		"oars[0].big_in (line 1): found an unknown key; wanted big_mm, in millimetres; convert the number and write big_mm",
		"oars[0].length_mm (line 1): found nothing; wanted the key length_mm of millimetres; add it",
		`oars[0].along (line 1): found "x"; wanted a number of millimetres; write the number without quotes`,
		"oars[0].count (line 1): found 1.5; wanted a whole number; give a count",
		"oars[0].on (line 1): found 1; wanted true or false; write true or false",
		"oars[0].list (line 1): found a list of 1; wanted at most 0; give an oar file",
	}
	if len(d.Faults) != len(want) {
		t.Fatalf("%d faults: %+v", len(d.Faults), d.Faults)
	}
	for i, f := range d.Faults {
		if got := f.Error(); got != "x: "+want[i] {
			t.Errorf("told %s\nwant   x: %s", got, want[i])
		}
	}
}
