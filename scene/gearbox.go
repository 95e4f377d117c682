package scene

// This file is the gearbox, by layout.

import "aligner/scene/solid"

func gearboxParts(d *dims) []piece {
	s := d.size
	high := d.crankZ + 130*s
	from, to := d.flangeThick*2, d.boxEnd
	if d.backward {
		from, to = d.flangeThick*2, d.flangeThick*2+240*s
	}
	b := solid.Block{Low: vec(from, -110*s, -90*s), High: vec(to, 110*s, high), Axis: 0, Round: 40 * s, Bevel: 10}.Solid()
	return []piece{{kind: GearboxKind, body: engineBody, paint: gearCast, solid: b.Placed(d.fromE)}}
}
