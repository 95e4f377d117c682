package scene

// This file is the bed: a rail under the mounts of either side, standing on the
// boat's bottom, and packing under mounts that stand higher.

import (
	"math"

	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// bedTop is the height of the rails, z_E.
func (d *dims) bedTop() float64 {
	top := math.Inf(1)
	for i := range d.mounts {
		top = min(top, d.mounts[i].bed)
	}
	return top
}

// bedHalfWidth is how far out the mounts stand.
func (d *dims) bedHalfWidth() float64 {
	wide := 0.0
	for i := range d.hull.Mounts {
		wide = max(wide, math.Abs(d.hull.Mounts[i].AtMM[1]))
	}
	return wide
}

// foreEnd is the foremost x_E of engine, gearbox or mounts.
func (d *dims) foreEnd() float64 {
	end := d.boxEnd + d.engineLength
	if d.backward {
		end = d.boxEnd + 250*d.size
	}
	for i := range d.hull.Mounts {
		end = max(end, d.hull.Mounts[i].AtMM[0])
	}
	return end
}

func bedParts(d *dims) []piece {
	var out []piece
	for _, side := range [...]float64{-1, 1} {
		low, high, y, n := math.Inf(1), math.Inf(-1), 0.0, 0.0
		half, reach := 0.0, 0.0
		for i := range d.hull.Mounts {
			p := d.hull.Mounts[i].AtMM
			if d.mounts[i].outward != side {
				continue
			}
			low, high = min(low, p[0]), max(high, p[0])
			y += p[1]
			n++
			half = max(half, 0.62*d.mounts[i].baseWide)
			reach = max(reach, 0.75*d.mounts[i].baseLong)
		}
		if n == 0 {
			continue
		}
		out = append(out, piece{kind: BedKind, paint: moulded, solid: d.rail(low-reach, high+reach, y/n, half)})
	}
	top := d.bedTop()
	w := shop{edge: 30}
	for i := range d.mounts {
		t, p := &d.mounts[i], d.hull.Mounts[i].AtMM
		if t.bed > top+1 {
			out = append(out, piece{kind: BedKind, paint: moulded, solid: w.block(vec(p[0]-0.55*t.baseLong, p[1]-0.55*t.baseWide, top-1),
				vec(p[0]+0.55*t.baseLong, p[1]+0.55*t.baseWide, t.bed), 2, 4, 1.5).Placed(d.fromE)})
		}
	}
	return out
}

// rail runs from x0 to x1 in E, flat on top, its foot on the bottom.
func (d *dims) rail(x0, x1, y, half float64) *solid.Solid {
	top := d.bedTop()
	n := max(8, int((x1-x0)/50))
	rings := make([][]mgl64.Vec3, n+1)
	for i := range rings {
		x := x0 + (x1-x0)*float64(i)/float64(n)
		foot := func(y float64) mgl64.Vec3 {
			// Straight down, in E, to the boat's bottom.
			z := top - 60
			for range 20 {
				p := d.fromE.Apply(mgl64.Vec3{x, y, z})
				z += 0.8 * (d.bottom.at(p.Dot(d.ahead), y) - p.Dot(d.up))
			}
			return d.fromE.Apply(mgl64.Vec3{x, y, min(z, top-30)})
		}
		at := func(y, z float64) mgl64.Vec3 { return d.fromE.Apply(mgl64.Vec3{x, y, z}) }
		const bevel = 6.0
		ring := []mgl64.Vec3{at(y-half, top-bevel), at(y-half+bevel, top)}
		for k := 1; k < 2; k++ {
			ring = append(ring, at(y+(half-bevel)*(float64(k)-1), top))
		}
		ring = append(ring, at(y+half-bevel, top), at(y+half, top-bevel))
		a, b := foot(y+half*1.15), foot(y-half*1.15)
		for k := 1; k <= 2; k++ {
			ring = append(ring, at(y+half, top-bevel).Add(a.Sub(at(y+half, top-bevel)).Mul(float64(k)/2)))
		}
		ring = append(ring, a.Add(b).Mul(0.5))
		for k := 2; k >= 1; k-- {
			ring = append(ring, at(y-half, top-bevel).Add(b.Sub(at(y-half, top-bevel)).Mul(float64(k)/2)))
		}
		rings[i] = ring
	}
	return solid.Skin(rings, solid.Capped, math.Inf(1))
}
