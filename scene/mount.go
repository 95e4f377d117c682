package scene

// This file is a mount with its bracket.

import (
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

func mountParts(d *dims, i int) []piece {
	h, t := &d.hull.Mounts[i], &d.mounts[i]
	x, y := h.AtMM[0], h.AtMM[1]
	make := func(b body, k Kind, c paint, s *solid.Solid) piece {
		return piece{kind: k, index: i, body: b, paint: c, solid: s.Placed(d.fromE)}
	}
	post := func(r, low, high float64, n int) *solid.Solid {
		return upright(solid.Lathe([]solid.Turned{{X: low, R: r}, {X: high, R: r}}, n, 25), vec(x, y, 0))
	}
	inner := d.bodyHalfWidth(x)
	arm := solid.Block{Low: vec(x-2.2*t.stud, min(y+t.outward*2*t.stud, t.outward*0.8*inner), t.nutTop+t.washer),
		High: vec(x+2.2*t.stud, max(y+t.outward*2*t.stud, t.outward*0.8*inner), t.jamLow-t.washer), Axis: 2, Round: 8, Bevel: 2}.Solid()
	out := []piece{make(engineBody, MountKind, darkSteel, arm)}
	base := solid.Block{Low: vec(x-t.baseLong/2, y-t.baseWide/2, t.bed), High: vec(x+t.baseLong/2, y+t.baseWide/2, t.baseTop), Axis: 2, Round: 10, Bevel: 1.5}.Solid()
	out = append(out, make(mountBase, MountKind, darkSteel, base))
	if t.solid {
		out = append(out, make(mountShims, MountKind, machined, post(1.8*t.stud, t.shimLow, t.shimLow+t.shimHeight, 24)))
		return out
	}
	nut := func(low, high float64) *solid.Solid {
		o := solid.Hexagon(t.flats, 2)
		return solid.Skin([][]mgl64.Vec3{o.Ring(vec(x, y, low), solid.AxisX, solid.AxisY), o.Ring(vec(x, y, high), solid.AxisX, solid.AxisY)}, solid.Capped, 25)
	}
	return append(out,
		make(mountRubber, MountKind, rubberMix, post(1.8*t.stud, t.baseTop, t.hatLow, 32)),
		make(mountStud, MountKind, stainless, solid.Join(post(1.9*t.stud, t.hatLow, t.hatTop, 32), post(t.stud/2, t.hatTop, t.studTop, 20))),
		make(mountNut, NutKind, platedNut, nut(t.nutTop-t.nut, t.nutTop)),
		make(mountNut, NutKind, platedNut, nut(t.jamLow, t.jamLow+t.jam)),
	)
}
