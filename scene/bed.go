package scene

// This file is the bed: two rails under the mounts.

import (
	"math"

	"aligner/scene/solid"
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

// foreEnd is the foremost x_E of engine or mounts.
func (d *dims) foreEnd() float64 {
	end := d.boxEnd + d.engineLength
	if d.backward {
		end = 300 * d.size
	}
	for i := range d.hull.Mounts {
		end = max(end, d.hull.Mounts[i].AtMM[0])
	}
	return end
}

func bedParts(d *dims) []piece {
	low, high := math.Inf(1), math.Inf(-1)
	for i := range d.hull.Mounts {
		low, high = min(low, d.hull.Mounts[i].AtMM[0]), max(high, d.hull.Mounts[i].AtMM[0])
	}
	top, y := d.bedTop(), d.bedHalfWidth()
	var out []piece
	for _, side := range [...]float64{-1, 1} {
		b := solid.Block{Low: vec(low-180, side*y-45, top-140), High: vec(high+180, side*y+45, top), Axis: 0, Round: 6, Bevel: 3}.Solid()
		out = append(out, piece{kind: BedKind, paint: moulded, solid: b.Placed(d.fromE)})
	}
	return out
}
