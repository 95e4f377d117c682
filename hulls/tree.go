package hulls

// This file turns bytes into a tree of JSON values that remembers lines. It
// refuses what the JSON grammar leaves open or a lenient reader lets pass:
// byte order marks, invalid UTF-8, keys given twice, a second value after the
// first, values too deep, files too large, numbers too large for a float64.
// What the values mean is left to fields.go.

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
)

// MaxFileBytes is the largest hull file read. The built-in hulls take about
// 3 kB; the room is for long tolerance tables.
const MaxFileBytes = 1 << 20

// MaxDepth is how deep values may nest. A hull file needs four.
const MaxDepth = 16

type kind int

const (
	isNull kind = iota
	isBool
	isNumber
	isString
	isArray
	isObject
)

func (k kind) String() string {
	return [...]string{"null", "true or false", "a number", "a text", "a list", "an object"}[k]
}

// node is one JSON value and the line it ends on (lists and objects: the line
// they begin on).
type node struct {
	kind   kind
	line   int
	text   string  // of a string, or a number as written
	number float64 // of a number
	items  []*node // of a list, or of an object in the order of keys
	keys   []string
}

// member finds a key of an object.
func (n *node) member(key string) *node {
	for i, k := range n.keys {
		if k == key {
			return n.items[i]
		}
	}
	return nil
}

// show says what a value is, for a fault.
func (n *node) show() string {
	switch n.kind {
	case isNumber:
		return printable(n.text, 40)
	case isString:
		return quoted(n.text)
	case isBool:
		return n.text
	case isArray:
		return fmt.Sprintf("a list of %d", len(n.items))
	}
	return n.kind.String()
}

// parser walks the tokens of one file.
type parser struct {
	file string
	data []byte
	dec  *json.Decoder
	// Line counting goes on from the last token, so that a file costs one pass.
	countedTo, newlines int
}

// parseTree reads exactly one JSON value.
func parseTree(data []byte, file string) (*node, *Fault) {
	p := &parser{file: file, data: data}
	if f := p.screen(); f != nil {
		return nil, f
	}
	p.dec = json.NewDecoder(bytes.NewReader(data))
	p.dec.UseNumber()
	root, f := p.value("", 1)
	if f != nil {
		return nil, f
	}
	switch tok, err := p.dec.Token(); {
	case errors.Is(err, io.EOF):
		return root, nil
	case err != nil:
		return nil, p.fault("", "more text after the end of the hull", "one JSON value and nothing after it", "delete what follows it")
	default:
		return nil, p.fault("", fmt.Sprintf("%s after the end of the hull", showToken(tok)), "one JSON value and nothing after it", "delete what follows it")
	}
}

// line is the line on which the token just read ends. JSON tokens hold no raw
// line break, so they begin there too.
func (p *parser) line() int {
	at := min(int(p.dec.InputOffset()), len(p.data))
	p.newlines += bytes.Count(p.data[p.countedTo:at], []byte("\n"))
	p.countedTo = at
	return p.newlines + 1
}

func (p *parser) fault(path, value, limit, mend string) *Fault {
	return &Fault{File: p.file, Place: path, Line: p.line(), Value: value, Limit: limit, Mend: mend}
}

// value reads one value at the given path.
func (p *parser) value(path string, depth int) (*node, *Fault) {
	tok, f := p.next(path)
	if f != nil {
		return nil, f
	}
	n := &node{line: p.line()}
	switch t := tok.(type) {
	case nil:
		n.kind = isNull
	case bool:
		n.kind, n.text = isBool, strconv.FormatBool(t)
	case string:
		n.kind, n.text = isString, t
	case json.Number:
		n.kind, n.text = isNumber, t.String()
		v, err := strconv.ParseFloat(n.text, 64)
		if err != nil || math.IsInf(v, 0) {
			return nil, p.fault(path, n.show(), "a number below 1e308", "give the number itself")
		}
		n.number = v + 0 // -0 becomes 0
	case json.Delim:
		if depth > MaxDepth {
			return nil, p.fault(path, fmt.Sprintf("values nested more than %d deep", MaxDepth),
				fmt.Sprintf("at most %d", MaxDepth), "give a hull file")
		}
		if t == '[' {
			n.kind = isArray
			return n, p.list(n, path, depth)
		}
		n.kind = isObject
		return n, p.object(n, path, depth)
	}
	return n, nil
}

func (p *parser) list(n *node, path string, depth int) *Fault {
	for p.dec.More() {
		item, f := p.value(fmt.Sprintf("%s[%d]", path, len(n.items)), depth+1)
		if f != nil {
			return f
		}
		n.items = append(n.items, item)
	}
	_, f := p.next(path) // the closing bracket
	return f
}

func (p *parser) object(n *node, path string, depth int) *Fault {
	seen := map[string]int{}
	for p.dec.More() {
		tok, f := p.next(path)
		if f != nil {
			return f
		}
		key, ok := tok.(string)
		if !ok {
			return p.fault(path, showToken(tok), "a key in quotes", "put the key in quotes")
		}
		at := join(path, key)
		if line, twice := seen[key]; twice {
			return p.fault(at, "the key a second time", fmt.Sprintf("each key once (first on line %d)", line), "delete one of the two")
		}
		seen[key] = p.line()
		item, f := p.value(at, depth+1)
		if f != nil {
			return f
		}
		n.keys = append(n.keys, key)
		n.items = append(n.items, item)
	}
	_, f := p.next(path) // the closing brace
	return f
}

// join appends a key to a path; keys that are not plain words are quoted.
func join(path, key string) string {
	for _, r := range key {
		if r != '_' && (r < '0' || r > '9') && (r < 'a' || r > 'z') && (r < 'A' || r > 'Z') {
			return path + "[" + quoted(key) + "]"
		}
	}
	if path == "" {
		return key
	}
	return path + "." + key
}

func showToken(tok json.Token) string {
	switch t := tok.(type) {
	case nil:
		return "null"
	case string:
		return quoted(t)
	default:
		return quoted(fmt.Sprint(t))
	}
}
