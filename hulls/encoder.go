package hulls

// This file writes indented JSON, and leaves out what holds its default. It
// knows JSON, nothing of boats.

import (
	"bytes"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
)

// encoder writes indented JSON. It keeps the pointer of what it is in, because
// a default that the tolerance table points at has to be written out.
type encoder struct {
	buf       bytes.Buffer
	path      []string
	begun     bool // something was written at this depth
	tolerance map[string]float64
}

// next begins a new line for a key, or for an item when key is "".
func (e *encoder) next(key string) {
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

func (e *encoder) open(key string, bracket byte) {
	e.next(key)
	e.push(key, bracket)
}

func (e *encoder) item(i int, bracket byte) {
	e.next("")
	e.push(fmt.Sprint(i), bracket)
}

func (e *encoder) push(step string, bracket byte) {
	e.buf.WriteByte(bracket)
	e.path = append(e.path, step)
	e.begun = false
}

func (e *encoder) close(bracket byte) {
	e.path = e.path[:len(e.path)-1]
	if e.begun {
		e.buf.WriteByte('\n')
		e.buf.WriteString(strings.Repeat(" ", len(e.path)))
	}
	e.buf.WriteByte(bracket)
	e.begun = true
}

func (e *encoder) text(key, s string) {
	e.next(key)
	e.buf.Write(marshal(s))
}

func (e *encoder) optionalText(key, s string) {
	if s != "" {
		e.text(key, s)
	}
}

func (e *encoder) number(key string, v float64) {
	e.next(key)
	e.buf.Write(marshal(v))
}

func (e *encoder) optionalNumber(key string, v, def float64) {
	if v != def || e.pointedAt(key) {
		e.number(key, v)
	}
}

func (e *encoder) numbers(key string, list []float64) {
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

func (e *encoder) offset(v [2]float64) {
	if v != [2]float64{} || e.pointedAt("offset_mm") {
		e.numbers("offset_mm", v[:])
	}
}

// pointedAt reports whether the tolerance table names a number at, or in, the
// key of the object being written.
func (e *encoder) pointedAt(key string) bool {
	at := strings.Join(append(slices.Clone(e.path), key), "/") // the root's step is ""
	for pointer := range e.tolerance {
		if pointer == at || strings.HasPrefix(pointer, at+"/") {
			return true
		}
	}
	return false
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
