package visit

// This file is what an edit is, and how edits are written and read.

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"

	"aligner/hulls/strictjson"
)

// Edit is one named change of a document.
type Edit interface {
	// Name is the edit's in files.
	Name() string
	// Apply gives the changed document, or a reason why not. The document given
	// is not touched.
	Apply(Document) (Document, error)
	// Words are the sentence that tells the edit in an undo list: its ID among
	// the project's sentences, and what fills its gaps.
	Words() (id string, args map[string]any)
}

// kinds makes an empty edit by name. Each edit's file registers its own.
var kinds = map[string]func() Edit{}

func register(all ...func() Edit) {
	for _, make := range all {
		kinds[make().Name()] = make
	}
}

// Kinds are the names of all edits there are, in order.
func Kinds() []string { return slices.Sorted(maps.Keys(kinds)) }

// editFormat is the form of an edit in JSON. An edit may hold a hull and a
// visit.
var editFormat = &strictjson.Format{Noun: "edit", MaxBytes: documentFormat.MaxBytes}

// Marshal writes an edit as one object: its name under "edit", then what it
// sets.
func Marshal(e Edit) ([]byte, error) {
	fields, err := json.Marshal(e)
	if err != nil {
		return nil, fmt.Errorf("edit %q: %w", e.Name(), err)
	}
	name, err := json.Marshal(e.Name())
	if err != nil {
		return nil, err
	}
	out := append([]byte(`{"edit":`), name...)
	if rest := bytes.TrimPrefix(fields, []byte("{")); len(rest) > 1 {
		return append(append(out, ','), rest...), nil
	}
	return append(out, '}'), nil
}

// Unmarshal reads an edit that Marshal wrote: all its keys and no others.
func Unmarshal(data []byte) (Edit, error) {
	root, fault := strictjson.Parse(data, "", editFormat)
	if fault != nil {
		return nil, fmt.Errorf("edit: %w", fault)
	}
	var fields map[string]json.RawMessage
	if err := json.Unmarshal(data, &fields); err != nil {
		return nil, fmt.Errorf("edit: %w", err)
	}
	name := root.Member("edit")
	if name == nil || name.Kind != strictjson.IsString || kinds[name.Text] == nil {
		return nil, fmt.Errorf(`edit: "edit" must be one of "%s"`, strings.Join(Kinds(), `", "`))
	}
	e := kinds[name.Text]()
	delete(fields, "edit")
	wanted := fieldsOf(e)
	if got := append([]string{}, slices.Sorted(maps.Keys(fields))...); !slices.Equal(got, wanted) {
		return nil, fmt.Errorf("edit %q: has %q; must have %q", name.Text, got, wanted)
	}
	for key, value := range fields {
		if string(value) == "null" && !mayBeNull[key] {
			return nil, fmt.Errorf("edit %q: %s is null; must have a value", name.Text, key)
		}
	}
	if err := json.Unmarshal(data, e); err != nil {
		return nil, fmt.Errorf("edit %q: %w", name.Text, err)
	}
	return e, nil
}

// mayBeNull are the keys whose null is a way of taking something back.
var mayBeNull = map[string]bool{"rule": true, "target": true}

// fieldsOf are the keys an edit sets, in order.
func fieldsOf(e Edit) []string {
	t := reflect.TypeOf(e).Elem()
	names := []string{}
	for i := range t.NumField() {
		names = append(names, t.Field(i).Tag.Get("json"))
	}
	slices.Sort(names)
	return names
}
