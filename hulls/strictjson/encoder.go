package strictjson

// This file writes indented JSON, and leaves out what holds its default. It
// knows JSON, nothing of boats.

import (
	"bytes"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
)

// Encoder writes indented JSON. It keeps the pointer of what it is in, because
// a default that something else in the file points at has to be written out.
type Encoder struct {
	// Kept reports whether a JSON pointer, or one below it, has to be there
	// although it holds its default. nil: none has.
	Kept func(pointer string) bool

	buf   bytes.Buffer
	path  []string
	begun bool // something was written at this depth
}

// Bytes is what was written.
func (e *Encoder) Bytes() []byte { return e.buf.Bytes() }

// EndLine ends the file's last line.
func (e *Encoder) EndLine() { e.buf.WriteByte('\n') }

// next begins a new line for a key, or for an item when key is "".
func (e *Encoder) next(key string) {
	if e.begun {
		e.buf.WriteByte(',')
	}
	if len(e.path) > 0 {
		e.buf.WriteByte('\n')
		e.buf.WriteString(strings.Repeat(" ", len(e.path)))
	}
	if key != "" {
		e.buf.Write(marshal(key))
		e.buf.WriteString(": ")
	}
	e.begun = true
}

// Open begins an object or a list under a key; the top has the key "".
func (e *Encoder) Open(key string, bracket byte) {
	e.next(key)
	e.push(key, bracket)
}

// Item begins an object or a list that is item i of a list.
func (e *Encoder) Item(i int, bracket byte) {
	e.next("")
	e.push(fmt.Sprint(i), bracket)
}

func (e *Encoder) push(step string, bracket byte) {
	e.buf.WriteByte(bracket)
	e.path = append(e.path, step)
	e.begun = false
}

// Close ends what Open or Item began.
func (e *Encoder) Close(bracket byte) {
	e.path = e.path[:len(e.path)-1]
	if e.begun {
		e.buf.WriteByte('\n')
		e.buf.WriteString(strings.Repeat(" ", len(e.path)))
	}
	e.buf.WriteByte(bracket)
	e.begun = true
}

// Text writes a text.
func (e *Encoder) Text(key, s string) {
	e.next(key)
	e.buf.Write(marshal(s))
}

// OptionalText leaves "" out.
func (e *Encoder) OptionalText(key, s string) {
	if s != "" {
		e.Text(key, s)
	}
}

// Number writes a number.
func (e *Encoder) Number(key string, v float64) {
	e.next(key)
	e.buf.Write(marshal(v))
}

// OptionalNumber leaves the default out.
func (e *Encoder) OptionalNumber(key string, v, def float64) {
	if v != def || e.KeptAt(key) {
		e.Number(key, v)
	}
}

// Numbers writes a list of numbers on one line.
func (e *Encoder) Numbers(key string, list []float64) {
	e.next(key)
	e.buf.WriteByte('[')
	for i, v := range list {
		if i > 0 {
			e.buf.WriteString(", ")
		}
		e.buf.Write(marshal(v))
	}
	e.buf.WriteByte(']')
}

// Texts writes a list of texts on one line; an empty one is left out.
func (e *Encoder) Texts(key string, list []string) {
	if len(list) == 0 {
		return
	}
	e.next(key)
	e.buf.WriteByte('[')
	for i, s := range list {
		if i > 0 {
			e.buf.WriteString(", ")
		}
		e.buf.Write(marshal(s))
	}
	e.buf.WriteByte(']')
}

// KeptAt reports whether the key of the object being written has to be there.
func (e *Encoder) KeptAt(key string) bool {
	// The root's step is "".
	return e.Kept != nil && e.Kept(strings.Join(append(slices.Clone(e.path), key), "/"))
}

// OptionalBool leaves false out.
func (e *Encoder) OptionalBool(key string, v bool) {
	if v {
		e.next(key)
		e.buf.WriteString("true")
	}
}

// Embed writes a value that was written by itself, indented as it stands here.
// Texts hold no raw line break, so every line break of it is layout.
func (e *Encoder) Embed(key string, written []byte) {
	e.next(key)
	indent := append([]byte("\n"), bytes.Repeat([]byte(" "), len(e.path))...)
	e.buf.Write(bytes.ReplaceAll(bytes.TrimRight(written, "\n"), []byte("\n"), indent))
}

// marshal writes one text or number as JSON, the shortest form that reads back
// the same.
func marshal(v any) []byte {
	if f, ok := v.(float64); ok {
		v = f + 0 // -0 becomes 0
	}
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	if enc.Encode(v) != nil { // NaN or infinite
		return []byte("null")
	}
	return bytes.TrimRight(b.Bytes(), "\n")
}
