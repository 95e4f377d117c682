package hulls_test

// The schema and the reader agree on what a hull file may look like: every
// small change to the structure of a good file is taken by both or refused by
// both. An independent validator (santhosh-tekuri/jsonschema, draft 2020-12)
// reads the schema.

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/strictjson/vary"
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
	h.OneSided = true
	h.Coupling.Soft = hulls.SoftCoupling{ThicknessMM: 22, InPlaceMM: 0.25, BendingStiffnessNMPerDeg: 40}
	h.MeasuredResponse = []hulls.Measured{
		{When: "2026-05-14", NutFlats: map[string]float64{"fore port": 3}, SlideMM: map[string]float64{"aft port": 0.5, "aft starboard": 0.5},
			Held: "seated", Afloat: true, Before: hulls.FaceGap{CosMM: 0.1, SinMM: -0.02}, After: hulls.FaceGap{CosMM: 0.04}, ErrorMM: 0.013},
	}
	if r := hulls.Validate(h); len(r.Refusals) > 0 {
		t.Fatal(lines(r.Refusals))
	}
	return h
}

// words are keys and texts of the format, to be put where they do not belong.
var words = vary.Words{
	Keys:  []string{"x", "", "kind", "thread", "thread_pitch_mm", "shim_step_mm", "offset_mm", "name", "/name", "hin", "density_kg_m3"},
	Texts: []string{"rubber", "solid", "in-line", "open", "vee", "bellows", "hull/1"},
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
	all := vary.All(full, words)
	refused := 0
	for _, m := range all {
		data, err := json.Marshal(m.Doc)
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
			t.Errorf("%s: schema says %v, reader says%s", m.What, bySchema, lines(faults))
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
	keys, err := vary.SchemaKeys(data)
	if err != nil || len(keys) < 40 {
		t.Fatalf("%d keys (%v)", len(keys), err)
	}
	text := string(hulls.Encode(fullHull(t)))
	for _, key := range keys {
		if !strings.Contains(text, `"`+key+`": `) {
			t.Errorf("the full hull has no %s", key)
		}
	}
}
