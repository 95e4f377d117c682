package scene

// This file is the propeller.

import "aligner/scene/solid"

func propellerParts(d *dims) []piece {
	p := &d.hull.Propeller
	hub := 0.1 * p.DiameterMM
	s := solid.Lathe([]solid.Turned{{X: p.AtMM - hub, R: 0}, {X: p.AtMM - hub, R: 0.7 * hub}, {X: p.AtMM + hub, R: hub}, {X: p.AtMM + hub, R: 0}}, 28, 25)
	return []piece{{kind: PropellerKind, body: propellerBody, paint: bronze, solid: s}}
}
