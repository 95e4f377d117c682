package gltf

// This file turns parts into primitives: points, normals and indices in one
// buffer, and materials.

import (
	"encoding/binary"
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// file is one on its way: its three runs of numbers lie one after another in
// the buffer, a view each.
type file struct {
	out       document
	positions []byte
	normals   []byte
	indices   []byte
	seen      map[material]int
}

// Views are numbered in the order of the runs; those that stay empty go.
const (
	viewPositions = iota
	viewNormals
	viewIndices
)

// thing hangs a thing up with a primitive for each of its parts.
func (f *file) thing(t *Thing) {
	var primitives []primitive
	for i := range t.Parts {
		primitives = append(primitives, f.part(&t.Parts[i]))
	}
	f.meshNode(t.Name, primitives)
}

// part writes one part where it is drawn.
func (f *file) part(p *render.Part) primitive {
	a := p.Transform
	points, normals := make([]mgl64.Vec3, len(p.Mesh.Positions)), make([]mgl64.Vec3, len(p.Mesh.Normals))
	for i, x := range p.Mesh.Positions {
		points[i] = turned(a.Apply(double(x))).Mul(1 / perMetre)
		normals[i] = turned(unit(a.Normal(double(p.Mesh.Normals[i]))))
	}
	normal := f.vectors(&f.normals, viewNormals, normals, false)
	indices := len(f.out.Accessors)
	f.out.Accessors = append(f.out.Accessors, accessor{BufferView: viewIndices, ByteOffset: len(f.indices),
		ComponentType: unsignedInt, Count: 3 * len(p.Mesh.Triangles), Type: "SCALAR"})
	for _, t := range p.Mesh.Triangles {
		if a.Mirrors() {
			t[1], t[2] = t[2], t[1]
		}
		for _, v := range t {
			f.indices = binary.LittleEndian.AppendUint32(f.indices, v)
		}
	}
	return primitive{
		Attributes: attributes{Position: f.vectors(&f.positions, viewPositions, points, true), Normal: &normal},
		Indices:    &indices, Material: f.material(p),
	}
}

// unit is a normal of length one, upright for a normal that a flattened part has lost.
func unit(n mgl64.Vec3) mgl64.Vec3 {
	if l := n.Len(); l > 0 && !math.IsInf(l, 0) {
		return n.Mul(1 / l)
	}
	return mgl64.Vec3{0, 0, 1}
}

// vectors adds an accessor of vectors; bounds are needed for positions.
func (f *file) vectors(run *[]byte, view int, list []mgl64.Vec3, bounded bool) int {
	a := accessor{BufferView: view, ByteOffset: len(*run), ComponentType: float, Count: len(list), Type: "VEC3"}
	for i, v := range list {
		for k, x := range v {
			single := float32(x)
			*run = binary.LittleEndian.AppendUint32(*run, math.Float32bits(single))
			if !bounded {
				continue
			}
			// The bounds are of what stands in the buffer, to the last bit.
			if x = float64(single); i == 0 {
				a.Min, a.Max = append(a.Min, x), append(a.Max, x)
			} else {
				a.Min[k], a.Max[k] = min(a.Min[k], x), max(a.Max[k], x)
			}
		}
	}
	f.out.Accessors = append(f.out.Accessors, a)
	return len(f.out.Accessors) - 1
}

// material finds or adds a part's. Nothing is said to be bare metal: without
// surroundings to mirror, that would show black.
func (f *file) material(p *render.Part) int {
	m := material{PBR: metallicRoughness{
		BaseColor: [4]float64{linear(p.Colour.R), linear(p.Colour.G), linear(p.Colour.B), float64(p.Colour.A) / 255},
		Roughness: 1 - glossToSmooth*float64(p.Gloss),
	}}
	if p.Colour.A < 255 {
		m.AlphaMode = "BLEND"
	}
	m.DoubleSided = p.TwoSided || p.Colour.A < 255
	if at, ok := f.seen[m]; ok {
		return at
	}
	if f.seen == nil {
		f.seen = map[material]int{}
	}
	at := len(f.out.Materials)
	f.out.Materials, f.seen[m] = append(f.out.Materials, m), at
	return at
}

// glossToSmooth is how much of the roughness a full gloss takes away.
const glossToSmooth = 0.75

// linear is the light of an sRGB byte (IEC 61966-2-1), to six places.
func linear(b uint8) float64 {
	x := float64(b) / 255
	if x <= 0.04045 {
		x /= 12.92
	} else {
		x = math.Pow((x+0.055)/1.055, 2.4)
	}
	return math.Round(x*1e6) / 1e6
}

// share lays the runs one after another and leaves empty ones out.
func (f *file) share() {
	runs := [...]struct {
		bytes          []byte
		stride, target int
	}{{f.positions, 12, arrayBuffer}, {f.normals, 12, arrayBuffer}, {f.indices, 0, elementArrayBuffer}}
	var moved [len(runs)]int
	at := 0
	for i, r := range runs {
		if len(r.bytes) == 0 {
			continue
		}
		moved[i] = len(f.out.BufferViews)
		f.out.BufferViews = append(f.out.BufferViews, bufferView{ByteOffset: at, ByteLength: len(r.bytes), ByteStride: r.stride, Target: r.target})
		at += len(r.bytes)
	}
	for i := range f.out.Accessors {
		a := &f.out.Accessors[i]
		a.BufferView = moved[a.BufferView]
	}
	if at > 0 {
		f.out.Buffers = []buffer{{ByteLength: at}}
	}
}

// bytes is the buffer.
func (f *file) bytes() []byte {
	out := append([]byte(nil), f.positions...)
	return append(append(out, f.normals...), f.indices...)
}

func double(v mgl32.Vec3) mgl64.Vec3 {
	return mgl64.Vec3{float64(v[0]), float64(v[1]), float64(v[2])}
}
