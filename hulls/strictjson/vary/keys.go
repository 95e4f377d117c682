package vary

// This file lists the keys a schema knows, so that a test can ask whether its
// example has them all.

import (
	"encoding/json"
	"maps"
	"slices"
)

// SchemaKeys are the names of every property anywhere in a JSON Schema, in
// order, each once.
func SchemaKeys(schema []byte) ([]string, error) {
	var doc any
	if err := json.Unmarshal(schema, &doc); err != nil {
		return nil, err
	}
	keys := map[string]bool{}
	collect(doc, keys)
	return slices.Sorted(maps.Keys(keys)), nil
}

func collect(v any, keys map[string]bool) {
	switch v := v.(type) {
	case map[string]any:
		if properties, ok := v["properties"].(map[string]any); ok {
			for key := range properties {
				keys[key] = true
			}
		}
		for _, inner := range v {
			collect(inner, keys)
		}
	case []any:
		for _, inner := range v {
			collect(inner, keys)
		}
	}
}
