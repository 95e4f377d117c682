package scene

// This file is the engine: which of the characters is drawn.

import "aligner/scene/solid"

// inEngine is a piece built in the engine's own frame G.
func inEngine(d *dims, p paint, parts ...*solid.Solid) piece {
	return piece{kind: EngineKind, body: engineBody, paint: p, solid: solid.Join(parts...).Placed(d.fromG)}
}

func engineParts(d *dims) []piece {
	s, l := d.size, d.engineLength
	block := solid.Block{Low: vec(0, -130*s, -60*s), High: vec(l*0.9, 130*s, 260*s), Axis: 0, Round: 20, Bevel: 10}.Solid()
	pan := solid.Block{Low: vec(0.05*l, -90*s, -d.panDepth()), High: vec(l*0.85, 90*s, -50*s), Axis: 2, Round: 20, Bevel: 10}.Solid()
	head := solid.Block{Low: vec(0.02*l, -100*s, 255*s), High: vec(l*0.88, 100*s, 380*s), Axis: 0, Round: 30, Bevel: 10}.Solid()
	return []piece{inEngine(d, casting, block), inEngine(d, darkSteel, pan), inEngine(d, coverCast, head)}
}
