package scene

// This file is the coupling: the engine-side half on the gearbox, the
// shaft-side half with its hub, the bolts.

import (
	"aligner/hulls"
	"aligner/scene/render"
	"aligner/scene/solid"

	"math"
)

// pilotHeight is how far the pilot stands proud; 0 without one.
func pilotHeight(d *dims) float64 {
	if !d.hull.Coupling.HasPilot() {
		return 0
	}
	return 0.08 * d.faceRadius
}

// bolting is where the coupling's bolts sit.
type bolting struct {
	diameter, hole, circle float64
}

// couplingBolts fits the bolts between the middle and the rim.
func couplingBolts(d *dims) bolting {
	r := d.faceRadius
	b := bolting{diameter: 0.16 * r}
	if t, err := hulls.ThreadOf(d.hull.Coupling.Bolts.Thread); err == nil {
		b.diameter = t.MajorMM
	}
	inner := max(hubRadius(d), d.hull.Coupling.PilotDiameterMM/2)
	b.circle = (0.94*r + inner) / 2
	b.diameter = min(b.diameter, 0.62*(0.94*r-inner), 0.8*b.circle*math.Sin(math.Pi/float64(d.hull.Coupling.Bolts.Count)))
	b.hole = 0.54 * b.diameter
	return b
}

// hubRadius is the shaft half's, round the shaft.
func hubRadius(d *dims) float64 {
	return min(0.92*d.hull.Shaft.DiameterMM, 0.7*d.faceRadius)
}

func couplingParts(d *dims) []piece {
	r, c := d.faceRadius, &d.hull.Coupling
	b := couplingBolts(d)
	pilot, deep := c.PilotDiameterMM/2, pilotHeight(d)
	thick := d.flangeThick
	hub := hubRadius(d)
	// Engine side: the recess for the pilot, and the nose of the gearbox shaft.
	inside := []solid.Turned{{X: 0, R: 0.55 * r}, {X: 0, R: 0.2 * r}, {X: 0}}
	proud := inside
	if deep > 0 {
		inside = []solid.Turned{{X: 0, R: pilot * 1.006}, {X: 1.2 * deep, R: pilot * 1.006}, {X: 1.2 * deep, R: 0.5 * pilot}, {X: 1.2 * deep}}
		proud = []solid.Turned{{X: 0, R: pilot}, {X: 0.7 * deep, R: pilot}, {X: deep, R: pilot - 0.3*deep}, {X: deep, R: 0.5 * pilot}, {X: deep}}
	}
	engine := solid.Flange{Radius: r, Front: -thick, Back: 0, Holes: c.Bolts.Count, HoleRadius: b.hole, HoleCircle: b.circle,
		FrontMiddle: []solid.Turned{{X: -thick, R: hub * 1.05}, {X: -2.6 * thick, R: hub}, {X: -2.6 * thick, R: hub * 0.5}, {X: -2.6 * thick}}}
	_ = engine
	fore := solid.Flange{Radius: r, Front: 0, Back: -thick, Holes: c.Bolts.Count, HoleRadius: b.hole, HoleCircle: b.circle,
		FrontMiddle: mirrored(inside), BackBevel: 0.06 * r,
		BackMiddle: []solid.Turned{{X: -thick, R: 1.05 * hub}, {X: -2.6 * thick, R: hub}, {X: -2.6 * thick, R: 0.5 * hub}, {X: -2.6 * thick}}}
	length := c.ShaftHalfLengthMM
	aft := solid.Flange{Radius: r, Front: 0, Back: -thick, Holes: c.Bolts.Count, HoleRadius: b.hole, HoleCircle: b.circle,
		FrontMiddle: proud, BackBevel: 0.06 * r,
		BackMiddle: []solid.Turned{{X: -thick, R: 1.08 * hub}, {X: -thick - 4, R: hub}, {X: -length + 2, R: hub}, {X: -length, R: hub - 2}, {X: -length, R: 0.4 * hub}, {X: -length}}}
	return []piece{
		{kind: CouplingKind, body: engineBody, paint: machined, solid: fore.Solid().Placed(mirrorX)},
		{kind: CouplingKind, index: 1, body: couplingBody, paint: machinedB, solid: aft.Solid()},
	}
}

// mirrorX turns a flange that looks forward into one that looks aft.
var mirrorX = render.Affine{-1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0}

// mirrored is a profile the other way round in x.
func mirrored(p []solid.Turned) []solid.Turned {
	out := make([]solid.Turned, len(p))
	for i, q := range p {
		out[i] = solid.Turned{X: -q.X, R: q.R}
	}
	return out
}
