// Any triangles at all: no crash, and still the laws of the cache.

package render

import (
	"bytes"
	"encoding/binary"
	"math"
	"testing"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// meshFrom reads corners from bytes, nine numbers a triangle: any numbers, also
// infinite ones and none.
func meshFrom(data []byte) *Mesh {
	m := &Mesh{}
	for len(data) >= 36 && len(m.Triangles) < 64 {
		base := uint32(len(m.Positions))
		for range 3 {
			var p mgl32.Vec3
			for c := range p {
				p[c] = math.Float32frombits(binary.LittleEndian.Uint32(data))
				data = data[4:]
			}
			m.Positions, m.Normals = append(m.Positions, p), append(m.Normals, mgl32.Vec3{0, 0, 1})
		}
		m.Triangles = append(m.Triangles, [3]uint32{base, base + 1, base + 2})
	}
	return m
}

func FuzzDraw(f *testing.F) {
	seed := func(v ...float64) {
		var b []byte
		for _, x := range v {
			b = binary.LittleEndian.AppendUint32(b, math.Float32bits(float32(x)))
		}
		f.Add(b, 0.0, false)
		f.Add(b, 300.0, true)
	}
	nan, inf := math.NaN(), math.Inf(1)
	seed(0, 0, 0, 100, 0, 0, 0, 100, 0)
	seed(0, 0, 0, nan, 0, 0, 0, 100, 0)
	seed(0, 0, 0, inf, 0, 0, 0, -inf, 0)
	seed(0, 0, 0, 3e38, 0, 0, 0, -3e38, 0)
	seed(-500, -600, 380, 1e6, 0, 0, 0, 1e6, 0, 0, 0, 0, 1e-30, 0, 0, 0, 1e-30, 0)
	seed(0, 0, 0, 100, 0, 0, 50, 1e-5, 0, 0, 0, 0, 1e5, 1e5, 1e5, -1e5, 1e5, 1e5)
	f.Fuzz(func(t *testing.T, data []byte, height float64, translucent bool) {
		s := bench()
		s.Camera.Height = height
		part := Part{Mesh: meshFrom(data), Colour: grey, ID: 7, TwoSided: true, Moving: true}
		if translucent {
			part.Colour.A = 90
		}
		s.Parts = append(s.Parts, part)
		r := New(Settings{Workers: 1})
		defer r.Close()
		dst := picture(130, 70)
		r.Draw(dst, s)
		s.Parts[5].Transform = Translation(mgl64.Vec3{3, 0, 0})
		r.Draw(dst, s)
		if want := fresh(s, 130, 70, 1); !bytes.Equal(dst.Pix, want.Pix) {
			t.Error("the cached picture differs from a full one")
		}
	})
}
