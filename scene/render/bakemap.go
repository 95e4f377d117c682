// This file holds the depth maps of baked occlusion.

package render

import (
	"math"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// bakeView is a look at the scene along -direction: x and y in cells of the map,
// z in cells too, growing towards the sky.
type bakeView struct {
	x, y, z mgl32.Vec3
	offset  mgl32.Vec3
}

func (b *baking) view(direction mgl64.Vec3) bakeView {
	side := mgl64.Vec3{1, 0, 0}
	if math.Abs(direction[0]) > 0.7 {
		side = mgl64.Vec3{0, 1, 0}
	}
	x := side.Cross(direction).Normalize()
	y := direction.Cross(x)
	// One cell is left round the scene, so that looking up beside it finds sky.
	scale := (float64(b.size)/2 - 2) / math.Max(float64(b.radius), 1e-30)
	to32 := func(v mgl64.Vec3) mgl32.Vec3 {
		return mgl32.Vec3{float32(v[0] * scale), float32(v[1] * scale), float32(v[2] * scale)}
	}
	v := bakeView{x: to32(x), y: to32(y), z: to32(direction)}
	middle := float32(b.size) / 2
	v.offset = mgl32.Vec3{middle - v.x.Dot(b.centre), middle - v.y.Dot(b.centre), -v.z.Dot(b.centre)}
	return v
}

func (v *bakeView) at(p mgl32.Vec3) mgl32.Vec3 {
	return mgl32.Vec3{v.x.Dot(p) + v.offset[0], v.y.Dot(p) + v.offset[1], v.z.Dot(p) + v.offset[2]}
}

// look draws the map for one direction and asks it about every vertex that faces
// that way.
func (b *baking) look(direction mgl64.Vec3, depth []float32, count *bakeCount) {
	v := b.view(direction)
	for i := range depth {
		depth[i] = -math.MaxFloat32
	}
	for _, t := range b.triangles {
		drawDepth(depth, b.size, v.at(b.positions[t[0]]), v.at(b.positions[t[1]]), v.at(b.positions[t[2]]))
	}
	d := mgl32.Vec3{float32(direction[0]), float32(direction[1]), float32(direction[2])}
	cell := v.x.Len()
	const weights = 1 << 12
	for i, n := range b.normals {
		facing := n.Dot(d)
		if facing <= 0 {
			continue
		}
		// Stand off the surface by a cell and a half, so that the coarse map does
		// not take the surface itself for what hides it.
		p := v.at(b.positions[i].Add(n.Mul(1.5 / cell)))
		w := int32(facing * weights)
		count.all[i] += w * 4
		count.open[i] += w * openCells(depth, b.size, p)
	}
}

// openCells counts which of the four cells round a point are not nearer the sky.
func openCells(depth []float32, size int, p mgl32.Vec3) (n int32) {
	x, y := int(p[0]-0.5), int(p[1]-0.5)
	if x < 0 || y < 0 || x+1 >= size || y+1 >= size {
		return 4
	}
	level := p[2] + 0.5
	for _, d := range [4]float32{depth[y*size+x], depth[y*size+x+1], depth[(y+1)*size+x], depth[(y+1)*size+x+1]} {
		if d <= level {
			n++
		}
	}
	return n
}

// drawDepth keeps the highest depth in every cell whose centre a triangle
// covers, edges included.
func drawDepth(depth []float32, size int, a, b, c mgl32.Vec3) {
	area := (b[0]-a[0])*(c[1]-a[1]) - (c[0]-a[0])*(b[1]-a[1])
	if area == 0 || area != area {
		return
	}
	if area < 0 {
		b, c, area = c, b, -area
	}
	slopeX := ((b[2]-a[2])*(c[1]-a[1]) - (c[2]-a[2])*(b[1]-a[1])) / area
	slopeY := ((c[2]-a[2])*(b[0]-a[0]) - (b[2]-a[2])*(c[0]-a[0])) / area
	top := max(a[2], b[2], c[2])
	y0 := max(int(math.Ceil(float64(min(a[1], b[1], c[1])-0.5))), 0)
	y1 := min(int(math.Floor(float64(max(a[1], b[1], c[1])-0.5))), size-1)
	for y := y0; y <= y1; y++ {
		cy := float32(y) + 0.5
		left, right := float32(0), float32(size)
		left, right = narrow(left, right, a, b, cy)
		left, right = narrow(left, right, b, c, cy)
		left, right = narrow(left, right, c, a, cy)
		x0, x1 := int(left+0.5), min(int(right+0.5), size) // centres at or after left, before right
		if x0 >= x1 {
			continue
		}
		z := a[2] + slopeX*(float32(x0)+0.5-a[0]) + slopeY*(cy-a[1])
		row := depth[y*size+x0 : y*size+x1]
		for i := range row {
			// On a sliver the slope is mostly rounding: never above its corners.
			row[i] = max(row[i], min(z, top))
			z += slopeX
		}
	}
}

// narrow cuts a row's span to the inner side of the edge from p to q of an
// anticlockwise triangle.
func narrow(left, right float32, p, q mgl32.Vec3, y float32) (float32, float32) {
	dy := q[1] - p[1]
	if dy == 0 {
		return left, right
	}
	x := p[0] + (y-p[1])*(q[0]-p[0])/dy
	if dy < 0 {
		return max(left, x), right
	}
	return left, min(right, x)
}
