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
	fore := solid.Flange{Radius: r, Front: 0, Back: -thick, Holes: c.Bolts.Count, HoleRadius: b.hole, HoleCircle: b.circle,
		FrontMiddle: mirrored(inside), BackBevel: 0.06 * r,
		BackMiddle: []solid.Turned{{X: -thick, R: 1.05 * hub}, {X: -2.6 * thick, R: hub}, {X: -2.6 * thick, R: 0.5 * hub}, {X: -2.6 * thick}}}
	length := c.ShaftHalfLengthMM
	aft := solid.Flange{Radius: r, Front: 0, Back: -thick, Holes: c.Bolts.Count, HoleRadius: b.hole, HoleCircle: b.circle,
		FrontMiddle: proud, BackBevel: 0.06 * r,
		BackMiddle: []solid.Turned{{X: -thick, R: 1.08 * hub}, {X: -thick - 4, R: hub}, {X: -length + 2, R: hub}, {X: -length, R: hub - 2}, {X: -length, R: 0.4 * hub}, {X: -length}}}
	return append([]piece{
		{kind: CouplingKind, body: engineBody, paint: machined, solid: fore.Solid().Placed(mirrorX)},
		{kind: CouplingKind, index: 1, body: couplingBody, paint: machinedB, solid: aft.Solid()},
	}, couplingFastenings(d, b)...)
}

// couplingFastenings are the bolts, which are in only while bolted, and what
// holds the half on the shaft: key and set screws.
func couplingFastenings(d *dims, b bolting) []piece {
	w := shop{edge: 30}
	n, t := d.hull.Coupling.Bolts.Count, d.flangeThick
	for i := range n {
		sin, cos := math.Sincos((float64(i) + 0.5) * 2 * math.Pi / float64(n))
		y, z := -b.circle*sin, b.circle*cos
		w.put(stainless,
			w.rod(vec(-t, y, z), vec(t+0.9*b.diameter, y, z), 0.48*b.diameter, 12),
			w.bolt(vec(-t, y, z), vec(-t-1, y, z), b.diameter))
		w.put(platedNut, w.bolt(vec(t, y, z), vec(t+1, y, z), b.diameter))
	}
	out := w.pieces(piece{kind: CouplingKind, index: 1, body: couplingBody, when: boltedIn}, render.Identity)
	k := shop{edge: 30}
	hub, r, l := hubRadius(d), d.hull.Shaft.DiameterMM/2, d.hull.Coupling.ShaftHalfLengthMM
	k.put(darkSteel, k.block3(-l-0.35*r, -l+4, -0.26*r, 0.26*r, 0.8*r, 1.22*r, 0, 1, 0.5))
	for _, x := range [...]float64{-l + 0.3*(l-t), -l + 0.68*(l-t)} {
		k.put(stainless, k.rod(vec(x, 0.94*hub, 0), vec(x, hub+0.3*r, 0), 0.22*r, 10), k.bolt(vec(x, hub+0.1*r, 0), vec(x, hub+r, 0), 0.36*r))
	}
	return append(out, k.pieces(piece{kind: CouplingKind, index: 1, body: couplingBody}, render.Identity)...)
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
