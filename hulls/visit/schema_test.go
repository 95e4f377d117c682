package visit

// The schema and the reader agree on what a visit file may look like: every
// small change to the structure of a good file is taken by both or refused by
// both. An independent validator (santhosh-tekuri/jsonschema, draft 2020-12)
// reads the schema.

import (
	"bytes"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/strictjson"
	"aligner/hulls/strictjson/vary"
)

func compileSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	c.DefaultDraft(jsonschema.Draft2020)
	for _, format := range []string{hulls.FormatHull, FormatVisit} {
		data, ok := assets.Schema(format)
		if !ok {
			t.Fatalf("no schema of %s", format)
		}
		if err := c.AddResource("urn:aligner:"+strings.ReplaceAll(format, "/", ":"), parsed(t, data)); err != nil {
			t.Fatal(err)
		}
	}
	schema, err := c.Compile("urn:aligner:visit:1")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

func parsed(t *testing.T, data []byte) any {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func fullFile(t *testing.T) []byte {
	t.Helper()
	data, err := os.ReadFile("testdata/full.visit.json")
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// structure is what the reader has against the structure of a file.
func structure(data []byte) []hulls.Fault {
	root, f := strictjson.Parse(data, "", visitFormat)
	if f != nil {
		return []hulls.Fault{*f}
	}
	d := newDecoder("")
	d.visit(root)
	return d.Faults
}

var varied = vary.Words{
	Keys: []string{"x", "", "kind", "note", "date", "gauging", "move", "fasten", "clock_deg", "goes_thou", "goes_mm", "stops_mm",
		"leaf_mm", "reads_mm", "sag_thou", "tir_mm", "limit_thou", "spread_mm", "leaves_thou", "feel_error_thou", "apart_mm", "torque_nm",
		"torque_lb_ft", "radius_mm", "seating", "high", "low_deg", "zero_deg", "enters_deg", "carried_by", "limits", "reach_deg", "cautions_minded",
		"maker_torque_nm", "maker_torque_lb_ft", "handed_over", "round", "mounts", "seal", "tight_at_deg"},
	Texts: append([]string{"afloat", "seated", "free", "good", "in", "face", "rim", "shaft side", "aft", "freely", "largest gap", "visit/1"}, ReadingKinds...),
}

func TestSchemaAndReaderAgree(t *testing.T) {
	schema := compileSchema(t)
	doc := parsed(t, fullFile(t))
	if err := schema.Validate(doc); err != nil {
		t.Fatal(err)
	}
	all := vary.All(doc, varied)
	refused := 0
	for _, m := range all {
		data, err := json.Marshal(m.Doc)
		if err != nil {
			t.Fatal(err)
		}
		faults := structure(data)
		if len(faults) > 0 {
			refused++
		}
		if err := schema.Validate(parsed(t, data)); (err != nil) != (len(faults) > 0) {
			t.Errorf("%s: schema says %v, reader says %v", m.What, err, faults)
		}
	}
	// Guards against a test that compares nothing.
	if len(all) < 5000 || refused < len(all)/3 || refused > len(all)*19/20 {
		t.Errorf("%d changes, %d refused", len(all), refused)
	}
	t.Logf("%d changes, %d refused by both", len(all), refused)
}

// The hull in a visit is held against the hull's own schema.
func TestSchemaOfAnEmbeddedHull(t *testing.T) {
	schema := compileSchema(t)
	eider, _ := assets.Hull("Eider")
	for _, hull := range []string{string(eider), `{}`, `{"format": "hull/1"}`, `[]`, `null`, `7`,
		strings.Replace(string(eider), `"name"`, `"nom"`, 1)} {
		data := []byte(`{"format": "visit/1", "date": "2026-05-14", "hull": ` + hull + `}`)
		bySchema, byReader := schema.Validate(parsed(t, data)), structure(data)
		if (bySchema != nil) != (len(byReader) > 0) || (bySchema == nil) != (hull == string(eider)) {
			t.Errorf("%.40s: schema says %v, reader says %v", hull, bySchema, byReader)
		}
	}
}

// Every key of the schema is in the full visit, so that none escapes the
// comparison; keys that exclude one another excepted.
func TestFullVisitHasEveryKey(t *testing.T) {
	data, _ := assets.Schema(FormatVisit)
	keys, err := vary.SchemaKeys(data)
	if err != nil || len(keys) < 40 {
		t.Fatalf("%d keys (%v)", len(keys), err)
	}
	other := map[string]string{"leaves_thou": "leaves_mm", "feel_error_thou": "feel_error_mm", "limit_thou": "limit_mm", "spread_mm": "spread_thou",
		"maker_torque_nm": "maker_torque_lb_ft", "shift_mm": "shift_thou", "uneven_mm": "uneven_thou"}
	text := string(fullFile(t))
	for _, key := range keys {
		if !strings.Contains(text, `"`+key+`": `) && !strings.Contains(text, `"`+other[key]+`": `) {
			t.Errorf("the full visit has no %s", key)
		}
	}
}
