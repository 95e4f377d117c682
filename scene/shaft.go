package scene

// This file is the shaft, cut into sections short enough to bend.

import "aligner/scene/solid"

func shaftParts(d *dims) []piece {
	r, l := d.hull.Shaft.DiameterMM/2, d.hull.Shaft.LengthMM
	bar := solid.Lathe([]solid.Turned{{X: -l}, {X: -l, R: 0.5 * r}, {X: -l, R: r}, {X: -1, R: r}, {X: -1, R: 0.5 * r}, {X: -1}}, 20, max(28, l/64))
	return []piece{{kind: ShaftKind, body: shaftBody, paint: stainless, solid: bar}}
}
