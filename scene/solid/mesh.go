package solid

// This file turns a solid into a mesh with normals: smooth where faces meet
// gently, split where they meet at a crease.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// CreaseRad is the angle between two faces from which their edge is sharp.
const CreaseRad = 32 * math.Pi / 180

// Mesh is the solid ready to be drawn.
func (s *Solid) Mesh() *render.Mesh {
	w := s
	normals := make([]mgl64.Vec3, len(w.Triangles))
	corners := make([][][2]int, len(w.Points)) // triangle and corner at each point
	for i, t := range w.Triangles {
		a, b, c := w.Points[t[0]], w.Points[t[1]], w.Points[t[2]]
		if n := b.Sub(a).Cross(c.Sub(a)); n.Len() > 0 {
			normals[i] = n.Normalize()
		}
		for k := range 3 {
			corners[t[k]] = append(corners[t[k]], [2]int{i, k})
		}
	}
	m := &render.Mesh{Triangles: make([][3]uint32, len(w.Triangles))}
	for p, around := range corners {
		for _, group := range smoothGroups(w, normals, p, around) {
			var n mgl64.Vec3
			for _, c := range group {
				n = n.Add(normals[c[0]].Mul(w.angle(c[0], c[1])))
				m.Triangles[c[0]][c[1]] = uint32(len(m.Positions))
			}
			if n.Len() > 0 {
				n = n.Normalize()
			}
			m.Positions = append(m.Positions, single(w.Points[p]))
			m.Normals = append(m.Normals, single(n))
		}
	}
	return m
}

// smoothGroups parts the corners at one point: two belong together when one
// gets from one to the other round the point without crossing a crease.
func smoothGroups(s *Solid, normals []mgl64.Vec3, p int, around [][2]int) [][][2]int {
	limit := math.Cos(CreaseRad)
	group := make([]int, len(around))
	for i := range group {
		group[i] = i
	}
	for changed := true; changed; {
		changed = false
		for i := range around {
			for j := range i {
				if group[i] == group[j] || normals[around[i][0]].Dot(normals[around[j][0]]) < limit {
					continue
				}
				if s.shareSide(around[i][0], around[j][0], p) {
					g := min(group[i], group[j])
					group[i], group[j] = g, g
					changed = true
				}
			}
		}
	}
	var out [][][2]int
	place := map[int]int{}
	for i, c := range around {
		g, ok := place[group[i]]
		if !ok {
			g = len(out)
			place[group[i]] = g
			out = append(out, nil)
		}
		out[g] = append(out[g], c)
	}
	return out
}

// shareSide reports whether two triangles at point p share a side there.
func (s *Solid) shareSide(a, b, p int) bool {
	for _, v := range s.Triangles[a] {
		if v == p {
			continue
		}
		for _, w := range s.Triangles[b] {
			if v == w {
				return true
			}
		}
	}
	return false
}

// angle is a triangle's angle at a corner, its weight in the normal there.
func (s *Solid) angle(triangle, corner int) float64 {
	t := s.Triangles[triangle]
	p := s.Points[t[corner]]
	a, b := s.Points[t[(corner+1)%3]].Sub(p), s.Points[t[(corner+2)%3]].Sub(p)
	return math.Acos(min(max(a.Dot(b)/(a.Len()*b.Len()), -1), 1))
}

func single(v mgl64.Vec3) mgl32.Vec3 {
	return mgl32.Vec3{float32(v[0]), float32(v[1]), float32(v[2])}
}
