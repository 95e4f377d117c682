// This file holds meshes and their smooth surfaces.

package render

import (
	"fmt"
	"sync"

	"github.com/go-gl/mathgl/mgl32"
)

// Mesh is a list of triangles over shared vertices. Seen from outside, a
// triangle's corners run anticlockwise. A sharp edge has its vertices twice,
// with the normals of either side.
//
// A mesh may be drawn by several parts and several renderers. Positions and
// Normals may be overwritten in place between two pictures (a bent shaft):
// call Touch afterwards. Triangles must not change after the first picture.
type Mesh struct {
	Positions []mgl32.Vec3
	Normals   []mgl32.Vec3 // unit length, one for each position
	Triangles [][3]uint32

	revision uint64
	once     sync.Once
	surfaces []uint16 // smooth surface of each triangle
}

// Touch says that positions or normals were overwritten.
func (m *Mesh) Touch() { m.revision++ }

// smoothCosine is the cosine of the largest angle between two normals at one
// place that still counts as one smooth surface: 12 degrees, more than the
// facets of a finely divided cylinder differ and less than the flats of a nut.
const smoothCosine = 0.978

// maxSurfaces is what fits beside the part's number in a 32 bit surface id.
const maxSurfaces = 1 << 16

// ready checks the mesh and finds its smooth surfaces, once.
func (m *Mesh) ready() {
	m.once.Do(func() {
		if len(m.Normals) != len(m.Positions) {
			panic(fmt.Sprintf("render: mesh has %d normals for %d positions; give one for each", len(m.Normals), len(m.Positions)))
		}
		for i, t := range m.Triangles {
			for _, v := range t {
				if int(v) >= len(m.Positions) {
					panic(fmt.Sprintf("render: triangle %d uses vertex %d of %d", i, v, len(m.Positions)))
				}
			}
		}
		m.surfaces = smoothSurfaces(m)
	})
}

// smoothSurfaces numbers the triangles so that two share a number when one can
// walk from one to the other without crossing a crease. Vertices are joined by
// triangles, and at one place by nearly equal normals.
func smoothSurfaces(m *Mesh) []uint16 {
	parent := make([]uint32, len(m.Positions))
	for i := range parent {
		parent[i] = uint32(i)
	}
	join := func(a, b uint32) {
		a, b = root(parent, a), root(parent, b)
		parent[max(a, b)] = min(a, b)
	}
	for _, t := range m.Triangles {
		join(t[0], t[1])
		join(t[0], t[2])
	}
	joinAtSamePlace(m, join)
	numbers := make(map[uint32]uint16)
	surfaces := make([]uint16, len(m.Triangles))
	for i, t := range m.Triangles {
		r := root(parent, t[0])
		n, ok := numbers[r]
		if !ok {
			// Numbers repeat beyond the limit; only a crease line could be missed.
			n = uint16(len(numbers) % maxSurfaces)
			numbers[r] = n
		}
		surfaces[i] = n
	}
	return surfaces
}

// joinAtSamePlace calls join for vertices with equal positions and nearly equal
// normals. Vertices of one place form a chain through next.
func joinAtSamePlace(m *Mesh, join func(a, b uint32)) {
	const none = ^uint32(0)
	last := make(map[mgl32.Vec3]uint32, len(m.Positions))
	next := make([]uint32, len(m.Positions))
	for i, p := range m.Positions {
		next[i] = none
		if j, ok := last[p]; ok {
			next[i] = j
		}
		last[p] = uint32(i)
		for j := next[i]; j != none; j = next[j] {
			if m.Normals[i].Dot(m.Normals[j]) > smoothCosine {
				join(uint32(i), j)
			}
		}
	}
}

// root finds the representative of a and shortens the path to it.
func root(parent []uint32, a uint32) uint32 {
	for parent[a] != a {
		parent[a] = parent[parent[a]]
		a = parent[a]
	}
	return a
}
