package hulls

// This file takes typed values out of a JSON tree by key and collects a fault
// for each that is missing, unknown, null or of the wrong kind. It knows JSON
// and units in keys, nothing of boats.

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// decoder collects faults while values are taken out of a tree.
type decoder struct {
	file   string
	faults []Fault
}

func (d *decoder) refuse(path string, line int, value, limit, mend string) {
	d.faults = append(d.faults, Fault{File: d.file, Place: path, Line: line, Value: value, Limit: limit, Mend: mend})
}

// object is one JSON object being taken apart. Its methods return zero values
// where they have recorded a fault, so that one pass finds all faults.
type object struct {
	d    *decoder
	path string
	node *node // nil when the value was no object
}

// object holds a value against the keys it may have. A trailing "?" marks a
// key that may be left out. Unknown keys are told before missing ones: the
// one is often the misspelling of the other.
func (d *decoder) object(n *node, path string, keys ...string) object {
	o := object{d: d, path: path}
	if n == nil {
		return o
	}
	if n.kind != isObject {
		d.refuse(path, n.line, n.show(), "an object with keys", "write it as { ... }")
		return o
	}
	o.node = n
	known := make([]string, len(keys))
	for i, k := range keys {
		known[i] = strings.TrimSuffix(k, "?")
	}
	for i, k := range n.keys {
		if !slices.Contains(known, k) {
			limit, mend := suggestKey(k, known)
			d.refuse(join(path, k), n.items[i].line, "an unknown key", limit, mend)
		}
	}
	for i, k := range keys {
		if k == known[i] && n.member(k) == nil {
			d.refuse(join(path, k), n.line, "nothing", "the key "+k+unitOf(k), "add it")
		}
	}
	return o
}

// get finds a key's value; nil when it is missing (already told) or null.
func (o object) get(key string) *node {
	if o.node == nil {
		return nil
	}
	n := o.node.member(key)
	if n != nil && n.kind == isNull {
		o.d.refuse(join(o.path, key), n.line, "null", "a value", "give the value, or leave an optional key out")
		return nil
	}
	return n
}

func (o object) has(key string) bool { return o.node != nil && o.node.member(key) != nil }

// of finds a key's value of one kind.
func (o object) of(key string, k kind) *node {
	n := o.get(key)
	if n == nil || n.kind == k {
		return n
	}
	o.d.wrongKind(n, join(o.path, key), k)
	return nil
}

func (d *decoder) wrongKind(n *node, path string, want kind) {
	mend := "write " + want.String()
	if want == isNumber && n.kind == isString {
		mend = "write the number without quotes"
	}
	d.refuse(path, n.line, n.show(), want.String()+unitOf(path), mend)
}

func (o object) text(key string) string {
	if n := o.of(key, isString); n != nil {
		return n.text
	}
	return ""
}

// oneOf is a text out of a closed list. Missing gives def.
func (o object) oneOf(key, def string, list ...string) string {
	n := o.of(key, isString)
	if n == nil {
		return def
	}
	if !slices.Contains(list, n.text) {
		o.d.refuse(join(o.path, key), n.line, quoted(n.text), `one of "`+strings.Join(list, `", "`)+`"`, "choose one of these, in small letters")
		return def
	}
	return n.text
}

func (o object) number(key string) float64 { return o.numberOr(key, 0) }

func (o object) numberOr(key string, def float64) float64 {
	if n := o.of(key, isNumber); n != nil {
		return n.number
	}
	return def
}

func (o object) whole(key string) int {
	n := o.of(key, isNumber)
	if n == nil {
		return 0
	}
	if n.number != math.Trunc(n.number) || math.Abs(n.number) > 1e6 {
		o.d.refuse(join(o.path, key), n.line, n.show(), "a whole number", "give a count")
		return 0
	}
	return int(n.number)
}

// numbers fills out with a list of exactly that many numbers. A missing key
// leaves out as it is.
func (o object) numbers(key string, names string, out []float64) {
	n := o.of(key, isArray)
	if n == nil {
		return
	}
	path := join(o.path, key)
	if len(n.items) != len(out) {
		o.d.refuse(path, n.line, fmt.Sprintf("%d numbers", len(n.items)),
			fmt.Sprintf("%d: %s%s", len(out), names, unitOf(path)), "give all of them and no more")
		return
	}
	for i, item := range n.items {
		at := fmt.Sprintf("%s[%d]", path, i)
		if item.kind != isNumber {
			o.d.wrongKind(item, at, isNumber)
			continue
		}
		out[i] = item.number
	}
}

// mostItems bounds lists of objects, so that a hostile file costs no more
// than a large one.
const mostItems = 100

// list gives the items of a list and their paths.
func (o object) list(key string) (items []*node, path string) {
	path = join(o.path, key)
	n := o.of(key, isArray)
	switch {
	case n == nil:
		return nil, path
	case len(n.items) > mostItems:
		o.d.refuse(path, n.line, fmt.Sprintf("a list of %d", len(n.items)), fmt.Sprintf("at most %d", mostItems), "give a hull file")
		return nil, path
	}
	return n.items, path
}
