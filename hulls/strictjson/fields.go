package strictjson

// This file takes typed values out of a JSON tree by key and collects a fault
// for each that is missing, unknown, null or of the wrong kind. It knows JSON
// and units in keys, nothing of boats.

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// Decoder collects faults while values are taken out of a tree.
type Decoder struct {
	File   string // as faults name it
	Format *Format
	At     string // place in the file of what is read, before every path; "": the top
	Faults []Fault
}

// Refuse records a fault at a path.
func (d *Decoder) Refuse(path string, line int, value, limit, mend string) {
	d.Faults = append(d.Faults, Fault{File: d.File, Place: Below(d.At, path), Line: line, Value: value, Limit: limit, Mend: mend})
}

// Object is one JSON object being taken apart. Its methods return zero values
// where they have recorded a fault, so that one pass finds all faults.
type Object struct {
	D    *Decoder
	Path string
	Node *Node // nil when the value was no object
}

// Object holds a value against the keys it may have. A trailing "?" marks a
// key that may be left out. Unknown keys are told before missing ones: the
// one is often the misspelling of the other.
func (d *Decoder) Object(n *Node, path string, keys ...string) Object {
	o := Object{D: d, Path: path}
	if n == nil {
		return o
	}
	if n.Kind != IsObject {
		d.Refuse(path, n.Line, n.Show(), "an object with keys", "write it as { ... }")
		return o
	}
	o.Node = n
	known := make([]string, len(keys))
	for i, k := range keys {
		known[i] = strings.TrimSuffix(k, "?")
	}
	for i, k := range n.Keys {
		if !slices.Contains(known, k) {
			limit, mend := d.Format.suggestKey(k, known)
			d.Refuse(Join(path, k), n.Items[i].Line, "an unknown key", limit, mend)
		}
	}
	for i, k := range keys {
		if k == known[i] && n.Member(k) == nil {
			d.Refuse(Join(path, k), n.Line, "nothing", "the key "+k+d.Format.unitOf(k), "add it")
		}
	}
	return o
}

// Get finds a key's value; nil when it is missing (already told) or null.
func (o Object) Get(key string) *Node {
	if o.Node == nil {
		return nil
	}
	n := o.Node.Member(key)
	if n != nil && n.Kind == IsNull {
		o.D.Refuse(Join(o.Path, key), n.Line, "null", "a value", "give the value, or leave an optional key out")
		return nil
	}
	return n
}

// Has reports whether a key is there.
func (o Object) Has(key string) bool { return o.Node != nil && o.Node.Member(key) != nil }

// Of finds a key's value of one kind.
func (o Object) Of(key string, k Kind) *Node {
	n := o.Get(key)
	if n == nil || n.Kind == k {
		return n
	}
	o.D.WrongKind(n, Join(o.Path, key), k)
	return nil
}

// WrongKind records a value of the wrong kind.
func (d *Decoder) WrongKind(n *Node, path string, want Kind) {
	mend := "write " + want.String()
	if want == IsNumber && n.Kind == IsString {
		mend = "write the number without quotes"
	}
	d.Refuse(path, n.Line, n.Show(), want.String()+d.Format.unitOf(path), mend)
}

// Bool is true or false; missing gives false.
func (o Object) Bool(key string) bool {
	n := o.Of(key, IsBool)
	return n != nil && n.Text == "true"
}

// Text is a text; missing gives "".
func (o Object) Text(key string) string {
	if n := o.Of(key, IsString); n != nil {
		return n.Text
	}
	return ""
}

// OneOf is a text out of a closed list. Missing gives def.
func (o Object) OneOf(key, def string, list ...string) string {
	n := o.Of(key, IsString)
	if n == nil {
		return def
	}
	if !slices.Contains(list, n.Text) {
		o.D.Refuse(Join(o.Path, key), n.Line, Quoted(n.Text), `one of "`+strings.Join(list, `", "`)+`"`, "choose one of these, in small letters")
		return def
	}
	return n.Text
}

// Number is a number; missing gives 0.
func (o Object) Number(key string) float64 { return o.NumberOr(key, 0) }

// NumberOr is a number; missing gives def.
func (o Object) NumberOr(key string, def float64) float64 {
	if n := o.Of(key, IsNumber); n != nil {
		return n.Number
	}
	return def
}

// Whole is a whole number; missing gives 0.
func (o Object) Whole(key string) int {
	n := o.Of(key, IsNumber)
	if n == nil {
		return 0
	}
	if n.Number != math.Trunc(n.Number) || math.Abs(n.Number) > 1e6 {
		o.D.Refuse(Join(o.Path, key), n.Line, n.Show(), "a whole number", "give a count")
		return 0
	}
	return int(n.Number)
}

// Numbers fills out with a list of exactly that many numbers. A missing key
// leaves out as it is.
func (o Object) Numbers(key string, names string, out []float64) {
	n := o.Of(key, IsArray)
	if n == nil {
		return
	}
	path := Join(o.Path, key)
	if len(n.Items) != len(out) {
		o.D.Refuse(path, n.Line, fmt.Sprintf("%d numbers", len(n.Items)),
			fmt.Sprintf("%d: %s%s", len(out), names, o.D.Format.unitOf(path)), "give all of them and no more")
		return
	}
	for i, item := range n.Items {
		at := fmt.Sprintf("%s[%d]", path, i)
		if item.Kind != IsNumber {
			o.D.WrongKind(item, at, IsNumber)
			continue
		}
		out[i] = item.Number
	}
}

// List gives the items of a list and their path. A bound keeps a hostile file
// from costing more than a large one.
func (o Object) List(key string, most int) (items []*Node, path string) {
	path = Join(o.Path, key)
	n := o.Of(key, IsArray)
	switch {
	case n == nil:
		return nil, path
	case len(n.Items) > most:
		o.D.Refuse(path, n.Line, fmt.Sprintf("a list of %d", len(n.Items)), fmt.Sprintf("at most %d", most), o.D.Format.give())
		return nil, path
	}
	return n.Items, path
}
