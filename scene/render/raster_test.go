// Laws of scan conversion: no cracks, no double hits, depth true to the plane.

package render

import (
	"math"
	"math/rand/v2"
	"testing"
)

// triangleOf makes a raster record from corners in 1/256 pixel.
func triangleOf(c [3]corner, id uint32) rasterTriangle {
	var g gradient
	g.set(&c)
	t := rasterTriangle{id: id}
	t.keyX, t.keyY = g.of(c[0].key, c[1].key, c[2].key)
	t.key0 = c[0].key - t.keyX*g.x0 - t.keyY*g.y0
	t.sortCorners(&c)
	return t
}

// TestJitteredGridsAreWatertight cuts a square into triangles at jittered, and
// sometimes coinciding, points and counts for every sample how many triangles
// hold it: exactly one inside the square, none outside.
func TestJitteredGridsAreWatertight(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	buf := make([]quad, tilePixels+unrolled)
	hits := make([]uint8, tilePixels*samples)
	for grid := range 300 {
		w := tileWindow{int64(rng.IntN(3)*64 - 1), int64(rng.IntN(3)*64 - 1)}
		n := 2 + rng.IntN(5)
		left, top := int32(w.x)<<8+int32(rng.IntN(4000)), int32(w.y)<<8+int32(rng.IntN(4000))
		size := int32(2000 + rng.IntN(14000))
		at := func(i, j int) (x, y int32) {
			x, y = left+size*int32(i)/int32(n), top+size*int32(j)/int32(n)
			r := rand.New(rand.NewPCG(uint64(grid), uint64(i*100+j)))
			if i > 0 && i < n {
				x += int32(r.IntN(int(size) / n / 2))
			}
			if j > 0 && j < n {
				y += int32(r.IntN(int(size) / n / 2))
			}
			return x, y
		}
		clear(hits)
		draw := func(p [3][2]int) {
			var c [3]corner
			for i := range c {
				c[i].x, c[i].y = at(p[i][0], p[i][1])
				c[i].key = 0.5
			}
			tri := triangleOf(c, 1)
			clear(buf)
			w.rasterise(buf, &tri)
			for i := range hits {
				if buf[i/samples][i%samples] != 0 {
					hits[i]++
				}
			}
		}
		for i := range n {
			for j := range n {
				draw([3][2]int{{i, j}, {i + 1, j}, {i + 1, j + 1}})
				draw([3][2]int{{i, j}, {i + 1, j + 1}, {i, j + 1}})
			}
		}
		for i, h := range hits {
			row, column := int64(i/samples/tileColumns*samples+i%samples), int64(i/samples%tileColumns)
			x, y := (w.x+column)<<8+sampleX[row&3], w.y<<8+row*64+32
			inside := x >= int64(left) && x < int64(left+size) && y >= int64(top) && y < int64(top+size)
			if want := uint8(0); inside && h != 1 || !inside && h != want {
				t.Fatalf("grid %d: sample at (%d, %d)/256 is hit %d times; inside %v", grid, x, y, h, inside)
			}
		}
	}
}

// TestDepthFollowsThePlane compares each sample's key with the plane through the
// corners, for triangles of all shapes.
func TestDepthFollowsThePlane(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	buf := make([]quad, tilePixels+unrolled)
	w := tileWindow{639, 383}
	for range 2000 {
		var c [3]corner
		for i := range c {
			c[i] = corner{x: int32((600 + rng.IntN(120)) << 8), y: int32((350 + rng.IntN(120)) << 8), key: 0.001 + rng.Float64()*0.9}
		}
		ux, uy := float64(c[1].x-c[0].x)/256, float64(c[1].y-c[0].y)/256
		vx, vy := float64(c[2].x-c[0].x)/256, float64(c[2].y-c[0].y)/256
		area := ux*vy - vx*uy
		if math.Abs(area) < 1 {
			continue
		}
		tri := triangleOf(c, 7)
		clear(buf)
		w.rasterise(buf, &tri)
		slope := math.Abs(tri.keyX) + math.Abs(tri.keyY)
		for i := range tilePixels * samples {
			v := buf[i/samples][i%samples]
			if v == 0 {
				continue
			}
			row, column := int64(i/samples/tileColumns*samples+i%samples), int64(i/samples%tileColumns)
			x := float64((w.x+column)<<8+sampleX[row&3])/256 - float64(c[0].x)/256
			y := float64(w.y<<8+row*64+32)/256 - float64(c[0].y)/256
			p, q := (x*vy-vx*y)/area, (ux*y-x*uy)/area
			want := c[0].key + p*(c[1].key-c[0].key) + q*(c[2].key-c[0].key)
			// 64 columns of half a step each, and the double precision of the plane.
			limit := 40.0/keyScale + slope*1e-11
			if got := float64(v>>idBits) / keyScale; math.Abs(got-want) > limit {
				t.Fatalf("key %.15f, want %.15f within %g: %+v", got, want, limit, c)
			}
		}
	}
}

// TestOrderDoesNotMatter draws overlapping, partly coplanar triangles forwards and
// backwards.
func TestOrderDoesNotMatter(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	var list []rasterTriangle
	for i := range 60 {
		var c [3]corner
		for k := range c {
			c[k] = corner{x: int32(rng.IntN(64 << 8)), y: int32(rng.IntN(64 << 8)), key: float64(1+i%3) * 0.25}
		}
		list = append(list, triangleOf(c, uint32(i+1)))
	}
	var bufs [2][]quad
	for k := range bufs {
		bufs[k] = make([]quad, tilePixels+unrolled)
		for i := range list {
			if k == 1 {
				i = len(list) - 1 - i
			}
			tileWindow{-1, -1}.rasterise(bufs[k], &list[i])
		}
	}
	for i := range bufs[0] {
		if bufs[0][i] != bufs[1][i] {
			t.Fatalf("sample %d depends on the order", i)
		}
	}
}
