package visit

// This file is what an edit is, and how edits are written and read.

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
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

func register(make func() Edit) { kinds[make().Name()] = make }

// Kinds are the names of all edits there are.
func Kinds() []string {
	var names []string
	for name := range kinds {
		names = append(names, name)
	}
	return names
}

// Marshal writes an edit as {"edit": name, "with": {...}}.
func Marshal(e Edit) ([]byte, error) {
	with, err := json.Marshal(e)
	if err != nil {
		return nil, fmt.Errorf("edit %s: %w", e.Name(), err)
	}
	return json.Marshal(struct {
		Edit string          `json:"edit"`
		With json.RawMessage `json:"with"`
	}{e.Name(), with})
}

// Unmarshal reads an edit that Marshal wrote.
func Unmarshal(data []byte) (Edit, error) {
	var w struct {
		Edit string          `json:"edit"`
		With json.RawMessage `json:"with"`
	}
	if err := strict(data, &w); err != nil {
		return nil, fmt.Errorf("edit: %w", err)
	}
	make, ok := kinds[w.Edit]
	if !ok {
		return nil, fmt.Errorf("edit %q: not one of %v", w.Edit, Kinds())
	}
	e := make()
	if err := strict(w.With, e); err != nil {
		return nil, fmt.Errorf("edit %q: %w", w.Edit, err)
	}
	return e, nil
}

// strict refuses unknown keys and anything after the value.
func strict(data []byte, v any) error {
	d := json.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(v); err != nil {
		return err
	}
	if _, err := d.Token(); err != io.EOF {
		return fmt.Errorf("something after the end")
	}
	return nil
}
