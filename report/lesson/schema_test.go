package lesson

// This file holds the lessons to their schema, and the schema's words to the reader's.

import (
	"bytes"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"aligner/assets"
)

func TestLessonsKeepTheirSchema(t *testing.T) {
	data, ok := assets.Schema(Format)
	if !ok {
		t.Fatal("no schema")
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("lesson-1", doc); err != nil {
		t.Fatal(err)
	}
	schema, err := c.Compile("lesson-1")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range assets.LessonNames() {
		file, _ := assets.Lesson(name)
		l, err := jsonschema.UnmarshalJSON(bytes.NewReader(file))
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(l); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	bad, err := jsonschema.UnmarshalJSON(strings.NewReader(`{"format": "lesson/1", "title": {"en": "x"}, "hull": "Bench", "watch": [], "question": {}}`))
	if err != nil || schema.Validate(bad) == nil {
		t.Errorf("a bad lesson passes: %v", err)
	}
	quantities := `["` + strings.Join(slices.Sorted(maps.Keys(Quantities)), `", "`) + `"]`
	if !strings.Contains(string(data), quantities) {
		t.Errorf("the schema's quantities are not %s", quantities)
	}
}
