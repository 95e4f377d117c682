package gltf

// This file reads a file back, apart from what writes it, and checks on the way
// what chapters 3 to 5 of the specification ask for: it needs no other program.

import (
	"bytes"
	"encoding/binary"
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"github.com/go-gl/mathgl/mgl64"
)

// readBack is a file with its numbers.
type readBack struct {
	document
	bin []byte
}

// readable takes a file apart.
func readable(t *testing.T, data []byte) *readBack {
	t.Helper()
	word := func(at int) int { return int(binary.LittleEndian.Uint32(data[at:])) }
	if string(data[:4]) != "glTF" || word(4) != 2 || word(8) != len(data) {
		t.Fatalf("head % x of a file of %d bytes", data[:12], len(data))
	}
	text := data[20 : 20+word(12)]
	if string(data[16:20]) != "JSON" || len(text)%4 != 0 {
		t.Fatalf("first chunk %q, %d bytes", data[16:20], len(text))
	}
	at := 20 + len(text)
	bin := data[at+8:]
	if string(data[at+4:at+8]) != "BIN\x00" || word(at) != len(bin) || len(bin)%4 != 0 {
		t.Fatalf("second chunk %q, %d bytes of %d", data[at+4:at+8], word(at), len(bin))
	}
	r := &readBack{bin: bin}
	d := json.NewDecoder(bytes.NewReader(text))
	d.DisallowUnknownFields()
	if err := d.Decode(&r.document); err != nil {
		t.Fatal(err)
	}
	if why := r.fault(); why != "" {
		t.Fatal(why)
	}
	return r
}

// fault says which rule a file breaks, or "".
func (r *readBack) fault() string {
	if r.Asset.Version != "2.0" || len(r.Buffers) != 1 || r.Buffers[0].ByteLength != len(r.bin) {
		return fmt.Sprintf("version %q, buffers %+v for %d bytes", r.Asset.Version, r.Buffers, len(r.bin))
	}
	for i, v := range r.BufferViews {
		if v.Buffer != 0 || v.ByteLength < 1 || v.ByteOffset+v.ByteLength > len(r.bin) || v.ByteOffset%4 != 0 {
			return fmt.Sprintf("view %d is %+v", i, v)
		}
	}
	for i := range r.Accessors {
		if why := r.accessorFault(i); why != "" {
			return fmt.Sprintf("accessor %d: %s", i, why)
		}
	}
	hung := map[int]int{}
	for _, n := range r.Nodes {
		for _, c := range n.Children {
			hung[c]++
		}
		if q := n.Rotation; q != nil && math.Abs(q[0]*q[0]+q[1]*q[1]+q[2]*q[2]+q[3]*q[3]-1) > 1e-9 {
			return fmt.Sprintf("node %q is turned by %v", n.Name, *q)
		}
	}
	for i, n := range r.Nodes {
		if n.Name == "" || i > 0 && hung[i] != 1 || hung[0] != 0 {
			return fmt.Sprintf("node %d, %q, hangs %d times", i, n.Name, hung[i])
		}
	}
	for _, m := range r.Meshes {
		for _, p := range m.Primitives {
			if why := r.primitiveFault(p); why != "" {
				return m.Name + ": " + why
			}
		}
	}
	return ""
}

func (r *readBack) accessorFault(i int) string {
	a := r.Accessors[i]
	size := map[string]int{"VEC3": 12, "SCALAR": 4}[a.Type]
	v := r.BufferViews[a.BufferView]
	if a.Count < 1 || a.ByteOffset%4 != 0 || a.ByteOffset+size*a.Count > v.ByteLength {
		return fmt.Sprintf("%+v in %+v", a, v)
	}
	if a.Type == "SCALAR" {
		return ""
	}
	low, high := mgl64.Vec3{math.Inf(1), math.Inf(1), math.Inf(1)}, mgl64.Vec3{math.Inf(-1), math.Inf(-1), math.Inf(-1)}
	for _, p := range r.vectors(i) {
		for k, x := range p {
			low[k], high[k] = min(low[k], x), max(high[k], x)
		}
	}
	if a.Min != nil && (mgl64.Vec3(a.Min) != low || mgl64.Vec3(a.Max) != high) {
		return fmt.Sprintf("bounds %v to %v, said to be %v to %v", low, high, a.Min, a.Max)
	}
	return ""
}

func (r *readBack) primitiveFault(p primitive) string {
	at := &r.Accessors[p.Attributes.Position]
	if at.Min == nil || p.Material >= len(r.Materials) {
		return "no bounds, or no such material"
	}
	if p.Indices == nil {
		return ""
	}
	for _, i := range r.indices(*p.Indices) {
		if i >= at.Count {
			return fmt.Sprintf("index %d of %d", i, at.Count)
		}
	}
	for _, n := range r.vectors(*p.Attributes.Normal) {
		if math.Abs(n.Len()-1) > 1e-5 {
			return fmt.Sprintf("a normal %v", n)
		}
	}
	if r.Accessors[*p.Attributes.Normal].Count != at.Count {
		return "normals and points do not pair"
	}
	return ""
}

// vectors reads an accessor of vectors.
func (r *readBack) vectors(accessor int) []mgl64.Vec3 {
	a := r.Accessors[accessor]
	out := make([]mgl64.Vec3, a.Count)
	at := r.BufferViews[a.BufferView].ByteOffset + a.ByteOffset
	for i := range out {
		for k := range 3 {
			out[i][k] = float64(math.Float32frombits(binary.LittleEndian.Uint32(r.bin[at:])))
			at += 4
		}
	}
	return out
}

// indices reads an accessor of indices.
func (r *readBack) indices(accessor int) []int {
	a := r.Accessors[accessor]
	out := make([]int, a.Count)
	at := r.BufferViews[a.BufferView].ByteOffset + a.ByteOffset
	for i := range out {
		out[i] = int(binary.LittleEndian.Uint32(r.bin[at+4*i:]))
	}
	return out
}
