package hulls_test

// The schema and the reader agree on what a hull file may look like: every
// small change to the structure of a good file is taken by both or refused by
// both. An independent validator (santhosh-tekuri/jsonschema, draft 2020-12)
// reads the schema.

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"aligner/assets"
	"aligner/hulls"
)

func compileSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	data, ok := assets.Schema(hulls.FormatHull)
	if !ok {
		t.Fatal("no schema")
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.DefaultDraft(jsonschema.Draft2020)
	if err := c.AddResource("hull-1.schema.json", doc); err != nil {
		t.Fatal(err)
	}
	schema, err := c.Compile("hull-1.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

// fullHull has every key of the format: rubber and solid mounts, all options.
func fullHull(t *testing.T) hulls.Hull {
	h, _ := builtIn(t, "Eider")
	cormorant, _ := builtIn(t, "Cormorant")
	h.Mounts = append(h.Mounts, cormorant.Mounts[0])
	h.Mounts[4].Name, h.Mounts[4].AtMM = "middle port", [3]float64{450, 255, 60}
	h.HIN, h.OwnerReference = "ZZZ12345D404", "berth 7"
	h.Shaft.Condition = "annealed"
	h.Bearings[0].OffsetMM, h.Log.OffsetMM, h.StuffingBox.OffsetMM = [2]float64{0.1, 0}, [2]float64{0, 1}, [2]float64{1, 1}
	h.Propeller.DensityKgM3 = 7700
	h.Tolerance = map[string]float64{"/engine/mass_kg": 10, "/mounts/0/at_mm/2": 3}
	if r := hulls.Validate(h); len(r.Refusals) > 0 {
		t.Fatal(lines(r.Refusals))
	}
	return h
}

// mutation is a changed copy of a document.
type mutation struct {
	what string
	doc  any
}

// mutate changes each value of the document in turn, in every small way.
// rebuild puts a changed value into a copy of the whole.
func mutate(v any, path string, rebuild func(any) any, out *[]mutation) {
	add := func(what string, changed any) {
		*out = append(*out, mutation{path + ": " + what, rebuild(changed)})
	}
	for what, other := range map[string]any{
		"null": nil, "true": true, "a number": 7, "a fraction": 0.5, "a text": "text", "no text": "",
		"an empty list": []any{}, "a list": []any{1, 2}, "an empty object": map[string]any{}, "an object": map[string]any{"a": 1},
	} {
		add("becomes "+what, other)
	}
	switch t := v.(type) {
	case map[string]any:
		for _, key := range slices.Sorted(maps.Keys(t)) {
			without := maps.Clone(t)
			delete(without, key)
			add("without "+key, without)
			for _, other := range []string{strings.ToUpper(key), strings.ToUpper(key[:1]) + key[1:], key + " ", key + "_"} {
				renamed := maps.Clone(without)
				renamed[other] = t[key]
				add("with "+other+" for "+key, renamed)
			}
			mutate(t[key], path+"."+key, func(changed any) any {
				c := maps.Clone(t)
				c[key] = changed
				return rebuild(c)
			}, out)
		}
		for _, key := range []string{"x", "", "kind", "thread", "thread_pitch_mm", "shim_step_mm", "offset_mm", "name", "/name", "hin", "density_kg_m3"} {
			if _, has := t[key]; !has {
				for _, value := range []any{1, "text", []any{0, 0}} {
					more := maps.Clone(t)
					more[key] = value
					add(fmt.Sprintf("with %q: %v", key, value), more)
				}
			}
		}
	case []any:
		add("one shorter", t[:len(t)-1])
		add("one longer", append(slices.Clone(t), t[0]))
		add("endless", slices.Repeat(t, 60))
		for i := range t {
			mutate(t[i], fmt.Sprintf("%s[%d]", path, i), func(changed any) any {
				c := slices.Clone(t)
				c[i] = changed
				return rebuild(c)
			}, out)
		}
	case string:
		add("in capitals", strings.ToUpper(t))
		for _, other := range []string{"rubber", "solid", "in-line", "open", "vee", "bellows", "hull/1"} {
			add("becomes "+other, other)
		}
	case json.Number:
		add("quoted", t.String())
		add("negative", json.Number("-3"))
		add("large", json.Number("1e300"))
		add("whole with a point", json.Number("4.0"))
	}
}

// pointerOnly marks refusals the schema cannot express: where a tolerance's
// pointer leads.
func pointerOnly(faults []hulls.Fault) bool {
	return !slices.ContainsFunc(faults, func(f hulls.Fault) bool {
		return !strings.HasPrefix(f.Place, "tolerance[") || !strings.HasPrefix(f.Value, "a pointer to ")
	})
}

func TestSchemaAndReaderAgree(t *testing.T) {
	schema := compileSchema(t)
	doc := func(data []byte) any {
		d, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	for _, name := range assets.HullNames() {
		_, data := builtIn(t, name)
		if err := schema.Validate(doc(data)); err != nil {
			t.Errorf("the schema refuses %s: %v", name, err)
		}
	}
	full := doc(hulls.Encode(fullHull(t)))
	if err := schema.Validate(full); err != nil {
		t.Fatal(err)
	}
	var all []mutation
	mutate(full, "hull", func(changed any) any { return changed }, &all)
	refused := 0
	for _, m := range all {
		data, err := json.Marshal(m.doc)
		if err != nil {
			t.Fatal(err)
		}
		faults := hulls.ReadStructure(data)
		bySchema, byReader := schema.Validate(doc(data)), len(faults) > 0
		if byReader && pointerOnly(faults) {
			continue
		}
		if byReader {
			refused++
		}
		if (bySchema != nil) != byReader {
			t.Errorf("%s: schema says %v, reader says%s", m.what, bySchema, lines(faults))
		}
	}
	// Guards against a test that compares nothing.
	if len(all) < 2000 || refused < len(all)/3 || refused > len(all)*19/20 {
		t.Errorf("%d changes, %d refused", len(all), refused)
	}
	t.Logf("%d changes, %d refused by both", len(all), refused)
}

// Every key of the schema is written by the full hull, so that none escapes
// the comparison, and every property is described or refers to what is.
func TestFullHullHasEveryKey(t *testing.T) {
	data, _ := assets.Schema(hulls.FormatHull)
	var schema map[string]any
	if err := json.Unmarshal(data, &schema); err != nil {
		t.Fatal(err)
	}
	text := string(hulls.Encode(fullHull(t)))
	var walk func(v any)
	walk = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			if properties, ok := v["properties"].(map[string]any); ok {
				for key := range properties {
					if !strings.Contains(text, `"`+key+`": `) {
						t.Errorf("the full hull has no %s", key)
					}
				}
			}
			for _, inner := range v {
				walk(inner)
			}
		case []any:
			for _, inner := range v {
				walk(inner)
			}
		}
	}
	walk(schema)
}
