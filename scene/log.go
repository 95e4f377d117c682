package scene

// This file is the shaft log, opened to port so that the shaft is seen in it,
// with the hose and the stuffing box that rides on the shaft.

import (
	"math"

	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// The window in log and bearings lies to port: from a little above to below
// the middle.
const (
	windowFrom = -0.36 * math.Pi // clock angles of the solid part
	windowTo   = 1.34 * math.Pi
)

func logParts(d *dims) []piece {
	g := &d.hull.Log
	r, wall := g.BoreMM/2, max(4, 0.11*g.BoreMM)
	a, b := g.AtMM-g.LengthMM/2, g.AtMM+g.LengthMM/2
	at := render.Translation(mgl64.Vec3{0, g.OffsetMM[0], g.OffsetMM[1]})
	w := shop{edge: 28}
	neck := min(1.6*r, 0.3*g.LengthMM)
	w.put(bronze,
		solid.Cutaway([]solid.Turned{{X: a, R: r}, {X: b - neck, R: r}, {X: b - neck, R: r + wall}, {X: a + 2, R: r + wall}, {X: a, R: r + wall - 2}}, windowFrom, windowTo, 18, max(34, g.LengthMM/14)),
		solid.LatheLoop([]solid.Turned{{X: b - neck, R: r}, {X: b, R: r}, {X: b, R: r + wall - 1}, {X: b - 1, R: r + wall}, {X: b - neck, R: r + wall}}, 20, 40))
	s := d.hull.StuffingBox
	if s == nil {
		// Nothing said of a seal: the log ends in a plain collar.
		w.put(bronze, solid.LatheLoop([]solid.Turned{{X: b - 12, R: r + wall - 1}, {X: b + 1, R: r + wall - 1}, {X: b + 1, R: r + 2.2*wall}, {X: b - 10, R: r + 2.2*wall}}, 20, 40))
		return w.pieces(piece{kind: LogKind, body: fixed}, at)
	}
	out := w.pieces(piece{kind: LogKind, body: fixed}, at)
	return append(out, stuffingBoxParts(d, s.AtMM, b, neck, r+wall)...)
}

// stuffingBoxParts are the box about x, gland, studs, and the hose back to the
// log's fore end at logEnd.
func stuffingBoxParts(d *dims, x, logEnd, neck, logRadius float64) []piece {
	s := d.hull.Shaft.DiameterMM / 2
	back, front := x-2*s, x+1.4*s
	back = min(back, x-0.2*(x-logEnd))
	big, tail := 2.15*s, max(1.6*s, min(logRadius, 1.9*s))
	box, hose, clips := shop{edge: 28}, shop{edge: 16}, shop{edge: 28}
	box.put(bronze,
		solid.LatheLoop([]solid.Turned{{X: back, R: 1.04 * s}, {X: front, R: 1.04 * s}, {X: front, R: big}, {X: x - 0.4*s, R: big}, {X: x - 0.9*s, R: tail}, {X: back, R: tail}}, 20, 40),
		solid.LatheLoop([]solid.Turned{{X: front + 0.5*s, R: 1.04 * s}, {X: front + 1.3*s, R: 1.04 * s}, {X: front + 1.3*s, R: 1.7 * s}, {X: front + 0.9*s, R: 1.7 * s}, {X: front + 0.9*s, R: 2.0 * s}, {X: front + 0.5*s, R: 2.0 * s}}, 20, 40))
	for _, side := range [...]float64{-1, 1} {
		y := side * 2.05 * s
		box.put(bronze, box.block3(front+0.5*s, front+0.9*s, min(0.65*y, 1.35*y), max(0.65*y, 1.35*y), -0.6*s, 0.6*s, 0, 0.5*s, 1),
			box.block3(front-0.55*s, front, min(0.65*y, 1.35*y), max(0.65*y, 1.35*y), -0.6*s, 0.6*s, 0, 0.5*s, 1))
		box.put(stainless, box.rod(vec(front-0.7*s, y*1.12, 0), vec(front+1.6*s, y*1.12, 0), 0.26*s, 8))
		for _, x := range [...]float64{front + 0.92*s, front + 1.2*s} {
			box.put(platedNut, box.bolt(vec(x, y*1.12, 0), vec(x+1, y*1.12, 0), 0.5*s))
		}
	}
	a, b := logEnd-0.75*neck, min(x-0.95*s, back+1.6*s)
	hose.put(rubberMix, solid.LatheLoop(hoseProfile(a, b, logRadius, tail, 0.22*s+2, d.hull.Look.Hose == "bellows"), 20, 30))
	for _, k := range [...]float64{0.25, 0.55} {
		clips.put(stainless, clip(logEnd-k*neck, logRadius+0.22*s+2, 0.4*s)...)
	}
	for _, x := range [...]float64{b - 0.45*s, b - 1.05*s} {
		box.put(stainless, clip(x, tail+0.22*s+2, 0.4*s)...)
	}
	like := piece{kind: StuffingBoxKind}
	out := clips.pieces(like, render.Identity)
	like.body = boxBody
	out = append(out, box.pieces(like, render.Identity)...)
	like.body = hoseBody
	return append(out, hose.pieces(like, render.Identity)...)
}

// hoseProfile is the hose from x = a to b, its inner radius going from ra to
// rb, plain or with the folds of a bellows.
func hoseProfile(a, b, ra, rb, wall float64, bellows bool) []solid.Turned {
	n := 18
	if bellows {
		n = 40
	}
	inner := func(t float64) float64 {
		k := min(max((t-0.3)/0.4, 0), 1)
		return ra + (rb-ra)*k*k*(3-2*k)
	}
	var p []solid.Turned
	for i := range 3 {
		t := float64(i) / 2
		p = append(p, solid.Turned{X: a + t*(b-a), R: inner(t)})
	}
	for i := n; i >= 0; i-- {
		t := float64(i) / float64(n)
		r := inner(t) + wall
		if bellows && t > 0.3 && t < 0.72 {
			r += 0.9 * wall * (1 - math.Cos(2*math.Pi*(t-0.3)/0.07))
		}
		p = append(p, solid.Turned{X: a + t*(b-a), R: r})
	}
	return p
}

// clip is a hose clip with its screw.
func clip(x, radius, wide float64) []*solid.Solid {
	w := shop{edge: 28}
	return []*solid.Solid{
		solid.LatheLoop([]solid.Turned{{X: x - wide/2, R: radius - 0.5}, {X: x + wide/2, R: radius - 0.5}, {X: x + wide/2, R: radius + 1.6}, {X: x - wide/2, R: radius + 1.6}}, 20, 40),
		w.block3(x-0.7*wide, x+0.7*wide, 0.3*radius, 0.75*radius, radius*0.8, radius*0.8+1.1*wide, 1, 0.2*wide, 0.5),
	}
}
