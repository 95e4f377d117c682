package copied

// This file walks a map in the order of its names, so that the same visit gives
// the same rows.

import (
	"iter"
	"maps"
	"slices"
)

func sorted(m map[string]float64) iter.Seq2[string, float64] {
	return func(yield func(string, float64) bool) {
		for _, name := range slices.Sorted(maps.Keys(m)) {
			if m[name] != 0 && !yield(name, m[name]) {
				return
			}
		}
	}
}
