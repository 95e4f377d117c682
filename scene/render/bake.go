// This file holds baked occlusion: how open to the sky each vertex is.

package render

import (
	"context"
	"math"
	"runtime"
	"sync"
	"sync/atomic"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// BakeSettings are how finely Bake looks.
type BakeSettings struct {
	// Directions is how many depth maps are drawn; 0 means 96.
	Directions int
	// Resolution is the width of a depth map; 0 means 1024. Gaps narrower than
	// about two of its cells cast no shadow.
	Resolution int
	// Workers is how many goroutines draw maps; 0 means one for each processor.
	// The result does not depend on it.
	Workers int
}

// Bake returns for each part how much of the sky each vertex sees, 0 to 1, for
// Part.Occlusion. The sky is looked at from many directions by depth maps of the
// whole scene, and each direction counts by the cosine it makes with the
// vertex's normal. Solids occlude; translucent and hidden parts do not, but get
// values. It takes about a second and is meant to run in the background, while
// meshes must not be overwritten; it ends early, with an error, when ctx is
// done.
//
// Occlusion belongs to a vertex and is interpolated over its triangles: on
// triangles longer than the shadows it would show as streaks, so long faces
// should be divided.
func Bake(ctx context.Context, parts []Part, s BakeSettings) ([][]float32, error) {
	if s.Directions <= 0 {
		s.Directions = 96
	}
	if s.Resolution <= 0 {
		s.Resolution = 1024
	}
	if s.Workers <= 0 {
		s.Workers = runtime.GOMAXPROCS(0)
	}
	b := newBaking(parts, s.Resolution)
	var next atomic.Int64
	var all sync.WaitGroup
	counts := make([]bakeCount, s.Workers)
	for w := range counts {
		all.Go(func() {
			counts[w] = newBakeCount(len(b.positions))
			depth := make([]float32, s.Resolution*s.Resolution)
			for i := next.Add(1) - 1; i < int64(s.Directions) && ctx.Err() == nil; i = next.Add(1) - 1 {
				b.look(skyDirection(int(i), s.Directions), depth, &counts[w])
			}
		})
	}
	all.Wait()
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	return b.result(parts, counts), nil
}

// skyDirection is one of n directions spread evenly over the sphere, on a spiral
// that turns by the golden angle each step (Vogel, A better way to construct the
// sunflower head, 1979, carried over to the sphere).
func skyDirection(i, n int) mgl64.Vec3 {
	z := 1 - (2*float64(i)+1)/float64(n)
	r := math.Sqrt(1 - z*z)
	sin, cos := math.Sincos(float64(i) * math.Pi * (3 - math.Sqrt(5)))
	return mgl64.Vec3{r * cos, r * sin, z}
}

// baking is a scene laid out for looking at it from all sides.
type baking struct {
	positions []mgl32.Vec3
	normals   []mgl32.Vec3
	triangles [][3]uint32 // of the solids
	starts    []int       // first vertex of each part
	centre    mgl32.Vec3
	radius    float32
	size      int
}

// bakeCount adds up what was seen. Counts are whole numbers so that their sum
// does not depend on the order.
type bakeCount struct{ open, all []int32 }

func newBakeCount(n int) bakeCount { return bakeCount{make([]int32, n), make([]int32, n)} }

func newBaking(parts []Part, size int) *baking {
	b := &baking{size: size}
	low := mgl32.Vec3{math.MaxFloat32, math.MaxFloat32, math.MaxFloat32}
	high := low.Mul(-1)
	for i := range parts {
		p := &parts[i]
		base := uint32(len(b.positions))
		b.starts = append(b.starts, int(base))
		if p.Mesh == nil {
			continue
		}
		p.Mesh.ready()
		m := p.Transform.orIdentity()
		n, _ := m.cofactors()
		solid := !p.Hidden && p.Colour.A == 255
		for k, a := range p.Mesh.Positions {
			q := m.Apply(mgl64.Vec3{float64(a[0]), float64(a[1]), float64(a[2])})
			v := mgl32.Vec3{float32(q[0]), float32(q[1]), float32(q[2])}
			b.positions = append(b.positions, v)
			b.normals = append(b.normals, turned(&n, p.Mesh.Normals[k]))
			for c := range v {
				if solid {
					low[c], high[c] = min(low[c], v[c]), max(high[c], v[c])
				}
			}
		}
		if solid {
			for _, t := range p.Mesh.Triangles {
				b.triangles = append(b.triangles, [3]uint32{base + t[0], base + t[1], base + t[2]})
			}
		}
	}
	b.starts = append(b.starts, len(b.positions))
	b.centre = low.Add(high).Mul(0.5)
	b.radius = high.Sub(low).Len() / 2
	return b
}

// turned is a normal taken through the matrix for normals, at unit length.
func turned(n *[9]float64, a mgl32.Vec3) mgl32.Vec3 {
	x, y, z := float64(a[0]), float64(a[1]), float64(a[2])
	v := mgl64.Vec3{n[0]*x + n[1]*y + n[2]*z, n[3]*x + n[4]*y + n[5]*z, n[6]*x + n[7]*y + n[8]*z}
	l := v.Len()
	if l == 0 {
		return a
	}
	return mgl32.Vec3{float32(v[0] / l), float32(v[1] / l), float32(v[2] / l)}
}

// result divides the counts.
func (b *baking) result(parts []Part, counts []bakeCount) [][]float32 {
	out := make([][]float32, len(parts))
	for i := range parts {
		lo, hi := b.starts[i], b.starts[i+1]
		out[i] = make([]float32, hi-lo)
		for k := range out[i] {
			var open, all int32
			for _, c := range counts {
				open, all = open+c.open[lo+k], all+c.all[lo+k]
			}
			out[i][k] = 1
			if all > 0 {
				out[i][k] = float32(open) / float32(all)
			}
		}
	}
	return out
}
