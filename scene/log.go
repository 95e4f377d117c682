package scene

// This file is the shaft log with its stuffing box and hose.

import (
	"math"

	"aligner/scene/solid"
)

func logParts(d *dims) []piece {
	g := &d.hull.Log
	r, wall := g.BoreMM/2, max(4, 0.12*g.BoreMM)
	a, b := g.AtMM-g.LengthMM/2, g.AtMM+g.LengthMM/2
	tube := solid.Cutaway([]solid.Turned{{X: a, R: r}, {X: b, R: r}, {X: b, R: r + wall}, {X: a, R: r + wall}}, -0.45*math.Pi, 1.2*math.Pi, 28, 28)
	tube = tube.Bent(shifted(0, g.OffsetMM[0], g.OffsetMM[1]))
	out := []piece{{kind: LogKind, body: fixed, paint: bronze, solid: tube}}
	s := d.hull.StuffingBox
	if s == nil {
		return out
	}
	sr := d.hull.Shaft.DiameterMM / 2
	box := solid.LatheLoop([]solid.Turned{{X: s.AtMM - 1.5*sr, R: sr}, {X: s.AtMM + 2*sr, R: sr}, {X: s.AtMM + 2*sr, R: 2.2 * sr}, {X: s.AtMM - 1.5*sr, R: 2.2 * sr}}, 28, 28)
	hose := solid.LatheLoop([]solid.Turned{{X: b - 20, R: r + wall}, {X: s.AtMM, R: 2.2 * sr}, {X: s.AtMM, R: 2.2*sr + 5}, {X: b - 20, R: r + wall + 5}}, 28, 20)
	return append(out,
		piece{kind: StuffingBoxKind, body: boxBody, paint: bronze, solid: box},
		piece{kind: StuffingBoxKind, body: hoseBody, paint: rubberMix, solid: hose})
}
