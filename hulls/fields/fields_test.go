package fields_test

// Laws of the form: every number of a hull file is a field with limits; setting one
// changes that one alone and comes back; the hull given is not touched.

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/visit/builtin"
)

// leaves are the pointers to all numbers of a JSON value.
func leaves(v any, at string, all map[string]bool) {
	switch v := v.(type) {
	case map[string]any:
		for key, item := range v {
			leaves(item, at+"/"+key, all)
		}
	case []any:
		for i, item := range v {
			leaves(item, fmt.Sprintf("%s/%d", at, i), all)
		}
	case float64:
		all[at] = true
	}
}

func TestEveryNumberIsAField(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		h.Tolerance = nil
		var tree any
		if err := json.Unmarshal(hulls.Encode(h), &tree); err != nil {
			t.Fatal(err)
		}
		inFile, listed := map[string]bool{}, map[string]bool{}
		leaves(tree, "", inFile)
		for _, f := range fields.List(&h) {
			if listed[f.Pointer] {
				t.Errorf("%s: %s twice", name, f.Pointer)
			}
			listed[f.Pointer] = true
			if f.Kind.IsNumber() {
				if f.Limit.Least >= f.Limit.Most || f.Limit.Most-f.Limit.Least > 1e8 {
					t.Errorf("%s: %s has the limits %+v", name, f.Pointer, f.Limit)
				}
				v := f.Get(&h).Number
				if v != 0 && (v < f.Limit.Least || v > f.Limit.Most) {
					t.Errorf("%s: %s is %g, outside %+v", name, f.Pointer, v, f.Limit)
				}
			}
			if f.Kind == fields.Choice && len(f.Choices) < 2 {
				t.Errorf("%s: %s has nothing to choose from", name, f.Pointer)
			}
		}
		for pointer := range inFile {
			// The pitch follows the thread.
			if !listed[pointer] && !strings.HasSuffix(pointer, "/thread_pitch_mm") {
				t.Errorf("%s: no field for %s", name, pointer)
			}
		}
	}
}

func TestSetChangesOneAlone(t *testing.T) {
	for _, name := range []string{"Eider", "Cormorant", "Wren"} {
		h := builtin.Hull(t, name)
		before := hulls.Encode(h)
		for _, f := range fields.List(&h) {
			v := f.Get(&h)
			if f.Kind.IsNumber() {
				v.Number = f.Limit.Ever[0]*0.49 + f.Limit.Ever[1]*0.51
				if f.Kind == fields.Number {
					v.Number = 7
				}
			} else if v.Text, f.Choices = "x", append(f.Choices, "M14x2"); f.Kind != fields.Text {
				v.Text = f.Choices[len(f.Choices)-2]
			}
			if f.Key == "hin" {
				v.Text = ""
			}
			next, err := fields.Set(h, f.Pointer, v)
			if err != nil {
				t.Errorf("%s: %s to %v: %v", name, f.Pointer, v, err)
				continue
			}
			if after, ok := fields.Find(&next, f.Pointer); !ok || after.Get(&next) != v {
				t.Errorf("%s: %s is %v after setting %v", name, f.Pointer, after.Get(&next), v)
			}
			for _, d := range fields.Compare(&h, &next) {
				// Its name is a mount's own; kind and alloy bring other fields along.
				if d.Field.Pointer != f.Pointer && f.Kind != fields.Text && f.Key != "mount_kind" && f.Key != "shaft_material" {
					t.Errorf("%s: setting %s changed %s", name, f.Pointer, d.Field.Pointer)
				}
			}
			if !bytes.Equal(before, hulls.Encode(h)) {
				t.Fatalf("%s: setting %s touched the hull given", name, f.Pointer)
			}
		}
	}
}

func TestSetRefuses(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	for _, c := range []struct {
		pointer string
		value   fields.Value
		want    string
	}{
		{"/engine/mass_kg", fields.Value{Number: 2}, "engine.mass_kg: found 2 kg; wanted 5 to 20000 kg"},
		{"/mounts/0/thread", fields.Value{Text: "M17"}, "mounts[0].thread"},
		{"/mounts/1/name", fields.Value{Text: "Fore Port"}, "a name of its own"},
		{"/mounts/0/nut_range_mm/0", fields.Value{Number: 3}, "-150 to 0 mm"},
		{"/coupling/bolts/count", fields.Value{Number: 4.5}, "a whole number"},
		{"/layout", fields.Value{Text: "sideways"}, "v-drive"},
		{"/mounts/9/thread", fields.Value{Text: "M16x2"}, "a field of this hull"},
	} {
		_, err := fields.Set(h, c.pointer, c.value)
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s = %v: %v; want %s", c.pointer, c.value, err, c.want)
		}
	}
	// What only does not go with the rest makes a draft.
	next, err := fields.Set(h, "/bearings/0/at_mm", fields.Value{Number: -2500})
	if err != nil {
		t.Fatal(err)
	}
	if r := hulls.Validate(next); r.Err() == nil {
		t.Error("a bearing behind the shaft is no fault")
	}
	f, _ := fields.Find(&next, "/bearings/0/at_mm")
	if own := f.Faults(hulls.Validate(next).Refusals); len(own) != 1 {
		t.Errorf("the field's own faults: %v", own)
	}
}

func TestUsualIsSoundAndMarked(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		for _, f := range fields.List(&h) {
			if f.Usual == nil {
				if _, err := fields.TakeUsual(h, f.Pointer); err == nil {
					t.Errorf("%s: %s was taken without there being a usual value", name, f.Pointer)
				}
				continue
			}
			next, err := fields.TakeUsual(h, f.Pointer)
			if err != nil {
				t.Errorf("%s: %s: %v", name, f.Pointer, err)
				continue
			}
			if r := hulls.Validate(next); r.Err() != nil {
				t.Errorf("%s: the usual %s: %v", name, f.Pointer, r.Err())
			}
			after, _ := fields.Find(&next, f.Pointer)
			if !after.Assumed || next.Tolerance[f.Pointer] != f.Usual.Plus {
				t.Errorf("%s: %s not marked as assumed: %v", name, f.Pointer, next.Tolerance)
			}
			again, err := fields.Set(next, f.Pointer, after.Get(&next))
			if now, _ := fields.Find(&again, f.Pointer); err != nil || now.Assumed {
				t.Errorf("%s: %s stays assumed once measured (%v)", name, f.Pointer, err)
			}
			if back, err := hulls.Parse(hulls.Encode(next), "k"); err != nil || !reflect.DeepEqual(back, next) {
				t.Errorf("%s: with the usual %s it does not come back: %v", name, f.Pointer, err)
			}
		}
	}
}

// TestUsualIsNearOurBoats: what is taken for an unmeasured number of a built-in boat
// is right within its plus-or-minus as a rule (three quarters of them).
func TestUsualIsNearOurBoats(t *testing.T) {
	n, near := 0, 0
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		for _, f := range fields.List(&h) {
			if f.Usual == nil {
				continue
			}
			n++
			if v := f.Get(&h).Number; v >= f.Usual.Value-f.Usual.Plus && v <= f.Usual.Value+f.Usual.Plus {
				near++
			} else {
				t.Logf("%s %s: %g, usual %g +- %g", name, f.Pointer, v, f.Usual.Value, f.Usual.Plus)
			}
		}
	}
	if n < 100 || near*4 < n*3 {
		t.Errorf("%d of %d", near, n)
	}
}

// TestTapeTellsTheNumber: the tape is as long as the number says, wherever it lies.
func TestTapeTellsTheNumber(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		taped := 0
		for _, f := range fields.List(&h) {
			if f.Tape == nil || f.Kind == fields.Angle {
				continue
			}
			taped++
			a, b := f.Tape.From.InS(&h), f.Tape.To.InS(&h)
			long := 0.0
			for k := range a {
				long += (a[k] - b[k]) * (a[k] - b[k])
			}
			if v := f.Get(&h).Number; long-v*v > 1e-6*(1+v*v) || v*v-long > 1e-6*(1+v*v) {
				t.Errorf("%s: %s is %g, the tape's length squared %g", name, f.Pointer, v, long)
			}
		}
		if taped < 30 {
			t.Errorf("%s: %d fields have a tape", name, taped)
		}
	}
}
