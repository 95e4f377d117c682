// Package vary makes every small change to the structure of a JSON document,
// for tests that hold a strict reader and its schema against each other: each
// change must be taken by both or refused by both.
package vary

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
)

// Document is a changed copy of a document.
type Document struct {
	What string // where it was changed, and how
	Doc  any
}

// Words are a format's own, put where they may not belong.
type Words struct {
	Keys  []string // added to every object that lacks them
	Texts []string // put in the place of every text
}

// All changes each value of a document in turn, in every small way. Numbers of
// the document are json.Number.
func All(doc any, w Words) []Document {
	v := varier{words: w}
	v.vary(doc, "document", func(changed any) any { return changed })
	return v.all
}

type varier struct {
	words Words
	all   []Document
}

// vary changes one value. rebuild puts a changed value into a copy of the
// whole.
func (w *varier) vary(v any, path string, rebuild func(any) any) {
	add := func(what string, changed any) {
		w.all = append(w.all, Document{path + ": " + what, rebuild(changed)})
	}
	for what, other := range map[string]any{
		"null": nil, "true": true, "a number": 7, "a fraction": 0.5, "a text": "text", "no text": "",
		"an empty list": []any{}, "a list": []any{1, 2}, "an empty object": map[string]any{}, "an object": map[string]any{"a": 1},
	} {
		add("becomes "+what, other)
	}
	switch t := v.(type) {
	case map[string]any:
		w.object(t, path, rebuild, add)
	case []any:
		add("one shorter", t[:len(t)-1])
		add("one longer", append(slices.Clone(t), t[0]))
		add("endless", slices.Repeat(t, 60))
		for i := range t {
			w.vary(t[i], fmt.Sprintf("%s[%d]", path, i), func(changed any) any {
				c := slices.Clone(t)
				c[i] = changed
				return rebuild(c)
			})
		}
	case string:
		add("in capitals", strings.ToUpper(t))
		for _, other := range w.words.Texts {
			add("becomes "+other, other)
		}
	case json.Number:
		add("quoted", t.String())
		add("negative", json.Number("-3"))
		add("large", json.Number("1e300"))
		add("nought", json.Number("0"))
		add("whole with a point", json.Number("4.0"))
	}
}

// object takes keys out, renames them and adds others.
func (w *varier) object(t map[string]any, path string, rebuild func(any) any, add func(string, any)) {
	for _, key := range slices.Sorted(maps.Keys(t)) {
		without := maps.Clone(t)
		delete(without, key)
		add("without "+key, without)
		for _, other := range []string{strings.ToUpper(key), strings.ToUpper(key[:1]) + key[1:], key + " ", key + "_"} {
			renamed := maps.Clone(without)
			renamed[other] = t[key]
			add("with "+other+" for "+key, renamed)
		}
		w.vary(t[key], path+"."+key, func(changed any) any {
			c := maps.Clone(t)
			c[key] = changed
			return rebuild(c)
		})
	}
	for _, key := range w.words.Keys {
		if _, has := t[key]; !has {
			for _, value := range []any{1, "text", []any{0, 0}} {
				more := maps.Clone(t)
				more[key] = value
				add(fmt.Sprintf("with %q: %v", key, value), more)
			}
		}
	}
}
