package strictjson

// This file turns bytes into a tree of JSON values that remembers lines. It
// refuses what the JSON grammar leaves open or a lenient reader lets pass:
// byte order marks, invalid UTF-8, keys given twice, a second value after the
// first, values too deep, files too large, numbers too large for a float64.
// What the values mean is left to fields.go and the owner of the format.

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
)

// Kind is what a JSON value is.
type Kind int

// The kinds of JSON values.
const (
	IsNull Kind = iota
	IsBool
	IsNumber
	IsString
	IsArray
	IsObject
)

func (k Kind) String() string {
	return [...]string{"null", "true or false", "a number", "a text", "a list", "an object"}[k]
}

// Node is one JSON value and the line it ends on (lists and objects: the line
// they begin on).
type Node struct {
	Kind   Kind
	Line   int
	Text   string  // of a string, or a number as written
	Number float64 // of a number
	Items  []*Node // of a list, or of an object in the order of keys
	Keys   []string
}

// Member finds a key of an object.
func (n *Node) Member(key string) *Node {
	for i, k := range n.Keys {
		if k == key {
			return n.Items[i]
		}
	}
	return nil
}

// Show says what a value is, for a fault.
func (n *Node) Show() string {
	switch n.Kind {
	case IsNumber:
		return Printable(n.Text, 40)
	case IsString:
		return Quoted(n.Text)
	case IsBool:
		return n.Text
	case IsArray:
		return fmt.Sprintf("a list of %d", len(n.Items))
	}
	return n.Kind.String()
}

// parser walks the tokens of one file.
type parser struct {
	file   string
	format *Format
	data   []byte
	dec    *json.Decoder
	// Line counting goes on from the last token, so that a file costs one pass.
	countedTo, newlines int
}

// Parse reads exactly one JSON value.
func Parse(data []byte, file string, format *Format) (*Node, *Fault) {
	p := &parser{file: file, format: format, data: data}
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
		return nil, p.fault("", "more text after the end of the "+format.Noun, "one JSON value and nothing after it", "delete what follows it")
	default:
		return nil, p.fault("", fmt.Sprintf("%s after the end of the %s", showToken(tok), format.Noun), "one JSON value and nothing after it", "delete what follows it")
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
func (p *parser) value(path string, depth int) (*Node, *Fault) {
	tok, f := p.next(path)
	if f != nil {
		return nil, f
	}
	n := &Node{Line: p.line()}
	switch t := tok.(type) {
	case nil:
		n.Kind = IsNull
	case bool:
		n.Kind, n.Text = IsBool, strconv.FormatBool(t)
	case string:
		n.Kind, n.Text = IsString, t
	case json.Number:
		n.Kind, n.Text = IsNumber, t.String()
		v, err := strconv.ParseFloat(n.Text, 64)
		if err != nil || math.IsInf(v, 0) {
			return nil, p.fault(path, n.Show(), "a number below 1e308", "give the number itself")
		}
		n.Number = v + 0 // -0 becomes 0
	case json.Delim:
		if depth > MaxDepth {
			return nil, p.fault(path, fmt.Sprintf("values nested more than %d deep", MaxDepth),
				fmt.Sprintf("at most %d", MaxDepth), p.format.give())
		}
		if t == '[' {
			n.Kind = IsArray
			return n, p.list(n, path, depth)
		}
		n.Kind = IsObject
		return n, p.object(n, path, depth)
	}
	return n, nil
}

func (p *parser) list(n *Node, path string, depth int) *Fault {
	for p.dec.More() {
		item, f := p.value(fmt.Sprintf("%s[%d]", path, len(n.Items)), depth+1)
		if f != nil {
			return f
		}
		n.Items = append(n.Items, item)
	}
	_, f := p.next(path) // the closing bracket
	return f
}

func (p *parser) object(n *Node, path string, depth int) *Fault {
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
		at := Join(path, key)
		if line, twice := seen[key]; twice {
			return p.fault(at, "the key a second time", fmt.Sprintf("each key once (first on line %d)", line), "delete one of the two")
		}
		seen[key] = p.line()
		item, f := p.value(at, depth+1)
		if f != nil {
			return f
		}
		n.Keys = append(n.Keys, key)
		n.Items = append(n.Items, item)
	}
	_, f := p.next(path) // the closing brace
	return f
}

// Join appends a key to a path; keys that are not plain words are quoted.
func Join(path, key string) string {
	for _, r := range key {
		if r != '_' && (r < '0' || r > '9') && (r < 'a' || r > 'z') && (r < 'A' || r > 'Z') {
			return path + "[" + Quoted(key) + "]"
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
		return Quoted(t)
	default:
		return Quoted(fmt.Sprint(t))
	}
}
