package scene

// This file works out a mount: what stands on what, from its thread and its
// ranges.

import (
	"math"

	"aligner/hulls"

	"github.com/go-gl/mathgl/mgl64"
)

// mountDims are one mount's dimensions; heights are z_E.
//
//	       |  |         studTop
//	     [ jam ]
//	====[bracket]====   at_mm, where the springs act
//	     [ nut ]
//	       |  |         room for the nut to come down
//	     _/    \_       hat
//	    / rubber \
//	___/__________\___  base, on the bed
type mountDims struct {
	stud    float64 // thread diameter
	flats   float64 // width across the nuts' flats
	plate   float64 // thickness of the bracket's foot
	washer  float64
	nut     float64 // height of the adjusting nut
	jam     float64
	solid   bool
	outward float64 // +1 to port, -1 to starboard

	nutTop, jamLow, studTop  float64
	hatTop, hatLow           float64
	baseTop, bed             float64 // the base's underside stands on the bed
	shimLow, shimHeight      float64 // solid feet
	rubberHeight             float64
	rubberLowS               mgl64.Vec3
	bedS                     mgl64.Vec3
	gripS, sideGripS         mgl64.Vec3 // where the handles begin
	gripHalf                 float64
	baseLong, baseWide, slot float64
}

func newMountDims(h *hulls.Mount, d *dims) mountDims {
	t := mountDims{stud: 16 * d.size, solid: h.Kind == hulls.Solid, outward: math.Copysign(1, h.AtMM[1])}
	if thread, err := hulls.ThreadOf(h.Thread); err == nil {
		t.stud = thread.MajorMM
	}
	s, z := t.stud, h.AtMM[2]
	t.flats, t.plate, t.washer, t.nut, t.jam = 1.55*s, 0.75*s, 0.16*s, 0.85*s, 0.5*s
	t.nutTop = z - t.plate/2 - t.washer
	t.jamLow = z + t.plate/2 + t.washer
	t.studTop = t.jamLow + t.jam + max(h.NutRangeMM[1], 0) + 0.5*s
	if t.solid {
		t.nutTop = z - t.plate/2
		t.shimHeight = max(0.4*s, 6)
		t.shimLow = t.nutTop - t.shimHeight
		t.baseTop = t.shimLow
		t.bed = t.baseTop - 1.6*s
		t.studTop = t.jamLow + t.nut + 0.7*s
	} else {
		t.hatTop = t.nutTop - t.nut - max(-h.NutRangeMM[0], 4) - 2
		t.hatLow = t.hatTop - 0.75*s
		t.rubberHeight = 2.1 * s
		t.baseTop = t.hatLow - t.rubberHeight
		t.bed = t.baseTop - 0.45*s
	}
	t.baseLong, t.baseWide = 8.4*s, 4.4*s
	t.slot = 0.62*s + h.SlideRangeMM[1] - h.SlideRangeMM[0]
	at := func(x, y, z float64) mgl64.Vec3 { return d.fromE.Apply(mgl64.Vec3{x, y, z}) }
	x, y := h.AtMM[0], h.AtMM[1]
	t.rubberLowS = at(x, y, t.baseTop)
	t.bedS = at(x, y, t.bed)
	t.gripHalf = 2.6 * s
	t.gripS = at(x, y, t.studTop+0.4*s)
	t.sideGripS = at(x, y+t.outward*0.55*t.baseWide, t.bed+0.5*s)
	return t
}
