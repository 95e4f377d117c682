package hulls_test

// The built-in hulls: possible, undoubted, in canonical form.

import (
	"bytes"
	"reflect"
	"testing"

	"aligner/assets"
	"aligner/hulls"
)

func builtIn(t testing.TB, name string) (hulls.Hull, []byte) {
	t.Helper()
	data, ok := assets.Hull(name)
	if !ok {
		t.Fatalf("no built-in hull %q", name)
	}
	h, err := hulls.Parse(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return h, data
}

func TestBuiltInHullsAreUndoubted(t *testing.T) {
	for _, name := range assets.HullNames() {
		data, _ := assets.Hull(name)
		h, report := hulls.Check(data, name)
		for _, f := range append(report.Refusals, report.Doubts...) {
			t.Errorf("%v", f.Error())
		}
		if h.Name != name {
			t.Errorf("the hull %s is called %q in its file", name, h.Name)
		}
	}
}

func TestBuiltInHullsAreCanonical(t *testing.T) {
	for _, name := range assets.HullNames() {
		h, data := builtIn(t, name)
		out := hulls.Encode(h)
		if !bytes.Equal(out, data) {
			t.Errorf("%s: written otherwise than it was read:\n%s", name, out)
		}
		again, err := hulls.Parse(out, name)
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if !reflect.DeepEqual(h, again) {
			t.Errorf("%s: reads back as another hull", name)
		}
	}
}

// Every built-in hull states its fastest turning, so that whirling is looked at.
func TestBuiltInHullsStateTheirSpeed(t *testing.T) {
	for _, name := range assets.HullNames() {
		if h, _ := builtIn(t, name); h.ShaftSpeedMaxRPM == 0 {
			t.Errorf("%s: no shaft_speed_max_rpm", name)
		}
	}
}
