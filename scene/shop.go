package scene

// This file is the workshop: pieces are collected by paint while something is
// put together from many solids.

import (
	"math"

	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// shop collects solids by paint.
type shop struct {
	edge float64 // length of edges on large faces
	bins [len(coats)][]*solid.Solid
}

func (w *shop) put(p paint, parts ...*solid.Solid) { w.bins[p] = append(w.bins[p], parts...) }

// pieces are what was collected, one for each paint, placed.
func (w *shop) pieces(like piece, at render.Affine) []piece {
	var out []piece
	for p, parts := range w.bins {
		if len(parts) == 0 {
			continue
		}
		q := like
		q.paint, q.solid = paint(p), solid.Join(parts...).Placed(at)
		out = append(out, q)
	}
	return out
}

// block is a box between two corners, its edges along axis rounded.
func (w *shop) block(low, high mgl64.Vec3, axis int, round, bevel float64) *solid.Solid {
	return solid.Block{Low: low, High: high, Axis: axis, Round: round, Bevel: bevel, EdgeMM: w.edge}.Solid()
}

// rod is a round bar from one point to another with bevelled ends.
func (w *shop) rod(a, b mgl64.Vec3, radius float64, n int) *solid.Solid {
	l := b.Sub(a).Len()
	c := min(0.12*radius, 0.3*l)
	return w.turned(a, b, n, solid.Turned{X: 0, R: radius - c}, solid.Turned{X: c, R: radius}, solid.Turned{X: l - c, R: radius}, solid.Turned{X: l, R: radius - c})
}

// turned is a turned part: its profile begins at a and runs towards b. The ends
// are closed flat.
func (w *shop) turned(a, b mgl64.Vec3, n int, profile ...solid.Turned) *solid.Solid {
	return solid.Lathe(profile, n, w.edge).Bent(along(a, b).Apply)
}

// along carries the x axis onto the line from a towards b.
func along(a, b mgl64.Vec3) render.Affine {
	x := b.Sub(a).Normalize()
	y := mgl64.Vec3{0, 0, 1}.Cross(x)
	if y.Len() < 0.1 {
		y = mgl64.Vec3{0, 1, 0}.Cross(x)
	}
	y = y.Normalize()
	z := x.Cross(y)
	return render.Affine{x[0], y[0], z[0], a[0], x[1], y[1], z[1], a[1], x[2], y[2], z[2], a[2]}
}

// hose is round, through rounded corners.
func (w *shop) hose(radius float64, n int, corners ...mgl64.Vec3) *solid.Solid {
	return solid.Hose(radius, n, w.edge, corners...)
}

// bolt is a hexagon head on its washer, at a, pointing towards b.
func (w *shop) bolt(a, b mgl64.Vec3, diameter float64) *solid.Solid {
	o := solid.Hexagon(1.6*diameter, 1)
	dir := b.Sub(a).Normalize()
	m := along(a, a.Add(dir))
	u, v := mgl64.Vec3{m[1], m[5], m[9]}, mgl64.Vec3{m[2], m[6], m[10]}
	at := func(t, inset float64) []mgl64.Vec3 { return o.Inset(inset).Ring(a.Add(dir.Mul(t)), u, v) }
	d := diameter
	return solid.Skin([][]mgl64.Vec3{at(0, 0), at(0.5*d, 0), at(0.62*d, 0.16*d)}, solid.Capped, w.edge)
}

// scaled makes everything larger by a factor.
func scaled(s float64) render.Affine { return render.Affine{s, 0, 0, 0, 0, s, 0, 0, 0, 0, s, 0} }

// aboutX turns about the x axis, from y towards z.
func aboutX(angle float64) render.Affine {
	s, c := math.Sincos(angle)
	return render.Affine{1, 0, 0, 0, 0, c, -s, 0, 0, s, c, 0}
}
