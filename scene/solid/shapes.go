package solid

// This file makes the shapes most parts are put together from.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Block is a box between two corners with rounded upright edges (along axis)
// and bevelled ends.
type Block struct {
	Low, High mgl64.Vec3
	Axis      int     // the direction of the rounded edges: 0 x, 1 y, 2 z
	Round     float64 // radius of those edges
	Bevel     float64 // at both ends
	EdgeMM    float64 // 0: 30
}

// Solid builds the block.
func (b Block) Solid() *Solid {
	edge := b.EdgeMM
	if edge == 0 {
		edge = 30
	}
	i, j, k := b.Axis, (b.Axis+1)%3, (b.Axis+2)%3
	var u, v mgl64.Vec3
	u[j], v[k] = 1, 1
	w, h, l := b.High[j]-b.Low[j], b.High[k]-b.Low[k], b.High[i]-b.Low[i]
	middle := b.Low.Add(b.High).Mul(0.5)
	o := Oblong(w, h, b.Round, edge)
	bevel := min(b.Bevel, 0.45*l, 0.45*min(w, h))
	at := func(t, inset float64) []mgl64.Vec3 {
		c := middle
		c[i] = t
		return o.Inset(inset).Ring(c, u, v)
	}
	if bevel < 1 {
		return Skin([][]mgl64.Vec3{at(b.Low[i], 0), at(b.High[i], 0)}, Capped, edge)
	}
	if bevel < 12 {
		return Skin([][]mgl64.Vec3{at(b.Low[i], bevel), at(b.Low[i]+bevel, 0), at(b.High[i]-bevel, 0), at(b.High[i], bevel)}, Capped, edge)
	}
	return Skin([][]mgl64.Vec3{
		at(b.Low[i], bevel), at(b.Low[i]+0.3*bevel, 0.3*bevel), at(b.Low[i]+bevel, 0),
		at(b.High[i]-bevel, 0), at(b.High[i]-0.3*bevel, 0.3*bevel), at(b.High[i], bevel),
	}, Capped, edge)
}

// Turned is one corner of the profile of a turned part.
type Turned struct{ X, R float64 }

// Lathe turns a profile about the x axis. Its two ends are closed flat.
func Lathe(profile []Turned, n int, edgeMM float64) *Solid {
	// A flat end is the cap's to fill.
	for len(profile) > 2 && profile[0].X == profile[1].X && profile[0].R < profile[1].R {
		profile = profile[1:]
	}
	for k := len(profile); k > 2 && profile[k-1].X == profile[k-2].X && profile[k-1].R < profile[k-2].R; k-- {
		profile = profile[:k-1]
	}
	rings := make([][]mgl64.Vec3, 0, len(profile))
	for _, p := range profile {
		rings = append(rings, Circle(p.R, n).Ring(mgl64.Vec3{p.X}, AxisY, AxisZ))
	}
	return Skin(rings, Capped, edgeMM)
}

// LatheLoop turns a closed profile that stays off the axis: a tube.
func LatheLoop(profile []Turned, n int, edgeMM float64) *Solid {
	rings := make([][]mgl64.Vec3, 0, len(profile))
	for _, p := range profile {
		rings = append(rings, Circle(p.R, n).Ring(mgl64.Vec3{p.X}, AxisY, AxisZ))
	}
	return Skin(rings, Looped, edgeMM)
}

// Cutaway turns a closed profile about the x axis through part of a turn only,
// from one clock angle on to another (seen looking along +x, 0 at +z, a quarter
// at -y), so that one can look inside.
func Cutaway(profile []Turned, fromRad, toRad float64, n int, edgeMM float64) *Solid {
	fine := divided(profile, edgeMM)
	rings := make([][]mgl64.Vec3, n+1)
	for i := range rings {
		s, c := math.Sincos(fromRad + (toRad-fromRad)*float64(i)/float64(n))
		ring := make([]mgl64.Vec3, len(fine))
		for j, p := range fine {
			ring[j] = mgl64.Vec3{p.X, -p.R * s, p.R * c}
		}
		rings[i] = ring
	}
	return Skin(rings, Capped, math.Inf(1))
}

// divided parts the long sides of a closed profile.
func divided(profile []Turned, edgeMM float64) []Turned {
	var out []Turned
	for i, a := range profile {
		b := profile[(i+1)%len(profile)]
		steps := max(1, int(math.Ceil(math.Hypot(b.X-a.X, b.R-a.R)/edgeMM-0.01)))
		for k := range steps {
			t := float64(k) / float64(steps)
			out = append(out, Turned{a.X + t*(b.X-a.X), a.R + t*(b.R-a.R)})
		}
	}
	return out
}

// Pipe is round along a path, with flat ends. radius gives it at each point of
// the path.
func Pipe(path []mgl64.Vec3, radius func(i int) float64, n int, edgeMM float64) *Solid {
	rings := make([][]mgl64.Vec3, len(path))
	var u mgl64.Vec3
	for i, p := range path {
		d := tangent(path, i)
		if i == 0 {
			u = d.Cross(AxisZ)
			if u.Len() < 0.1 {
				u = d.Cross(AxisY)
			}
		}
		u = u.Sub(d.Mul(u.Dot(d))).Normalize() // carried along without twist
		rings[i] = Circle(radius(i), n).Ring(p, u, d.Cross(u))
	}
	return Skin(rings, Capped, edgeMM)
}

// Hose is a Pipe of one radius through rounded corners.
func Hose(radius float64, n int, edgeMM float64, corners ...mgl64.Vec3) *Solid {
	steps := 4
	if radius < 8 {
		steps = 2
	}
	return Pipe(rounded(corners, 2.2*radius, steps), func(int) float64 { return radius }, n, edgeMM)
}

// rounded replaces each inner corner by an arc-like curve.
func rounded(corners []mgl64.Vec3, reach float64, steps int) []mgl64.Vec3 {
	path := []mgl64.Vec3{corners[0]}
	for i := 1; i+1 < len(corners); i++ {
		a, p, b := corners[i-1], corners[i], corners[i+1]
		back, on := a.Sub(p), b.Sub(p)
		ra, rb := min(reach, 0.49*back.Len()), min(reach, 0.49*on.Len())
		from, to := p.Add(back.Normalize().Mul(ra)), p.Add(on.Normalize().Mul(rb))
		for k := range steps + 1 {
			t := float64(k) / float64(steps)
			q := from.Mul((1 - t) * (1 - t)).Add(p.Mul(2 * t * (1 - t))).Add(to.Mul(t * t))
			path = append(path, q)
		}
	}
	return append(path, corners[len(corners)-1])
}

func tangent(path []mgl64.Vec3, i int) mgl64.Vec3 {
	a, b := path[max(i-1, 0)], path[min(i+1, len(path)-1)]
	return b.Sub(a).Normalize()
}
