package scene

// This file holds the arrows round nuts against the nuts themselves: both go the
// same way round, in every hull and view, and a slide's arrow points where the
// base goes.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/kinematics"
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// goesRound is how far b lies round the axis from a, seen against it.
func goesRound(a, b, at, axis mgl64.Vec3) float64 {
	u, v := a.Sub(at), b.Sub(at)
	return math.Atan2(axis.Dot(u.Cross(v)), u.Dot(v))
}

func TestArrowsTurnAsTheNutsDo(t *testing.T) {
	for _, name := range assets.HullNames() {
		q := move(t, name, kinematics.Seated, nil)
		axis := q.m.dims.alongStud()
		for _, view := range views(q.m) {
			for i := range q.m.hull.Mounts {
				for _, flats := range []float64{1, -1, 4, -9} {
					var sc render.Scene
					s := State{Now: &q.v, Exaggeration: 50, View: view, Turns: []Turn{{Mount: i, Steps: flats}}}
					q.m.Pose(&s, &sc)
					arrow := sc.Overlay.Arrows[len(sc.Overlay.Arrows)-1]
					if q.m.dims.mounts[i].solid {
						if up := arrow.To.Sub(arrow.From).Dot(axis); up*flats <= 0 {
							t.Errorf("%s, mount %d, %g shims: the arrow goes %g up", name, i, flats, up)
						}
						continue
					}
					at := q.m.posed.engine.Apply(q.m.dims.fromE.Apply(q.m.nutAt(i)))
					if got := goesRound(arrow.From, arrow.To, at, axis); got*flats <= 0 {
						t.Errorf("%s, mount %d, %g flats: the arrow goes %g round", name, i, flats, got)
					}
					arc := sc.Overlay.Lines[len(sc.Overlay.Lines)-1].Points
					swept := 0.0
					for k := 1; k < len(arc); k++ {
						swept += goesRound(arc[k-1], arc[k], at, axis)
					}
					if swept*flats <= 0 || math.Abs(swept) > mostSweepRad {
						t.Errorf("%s, mount %d, %g flats: swept %g", name, i, flats, swept)
					}
				}
			}
		}
	}
}

// TestNutsClimbAnticlockwise: the drawn nut, raised a flat on a thread of its own
// pitch, has turned a sixth anticlockwise as seen from above: a right-hand
// thread (ASME B1.1, ISO 68-1: right-handed unless marked LH) on a stud that
// stands fast.
func TestNutsClimbAnticlockwise(t *testing.T) {
	q := move(t, "Eider", kinematics.Seated, nil)
	mount := &q.m.hull.Mounts[0]
	v := q.v
	v.TranslationMM, v.RotationRad = mgl64.Vec3{}, mgl64.Vec3{}
	v.LiftMM = append([]float64(nil), v.LiftMM...)
	v.LiftMM[0] = mount.LiftPerStepMM()
	var sc render.Scene
	q.m.Pose(&State{Now: &v, Exaggeration: 1, View: views(q.m)[0]}, &sc)
	nut := &piece{body: mountNut, index: 0}
	turned := q.m.mountMap(nut, &v, 1)
	at := q.m.dims.fromE.Apply(mgl64.Vec3(mount.AtMM))
	mark := at.Add(mgl64.Vec3{0, 10, 0})
	if got := goesRound(mark, turned.Apply(mark), at, q.m.dims.alongStud()); math.Abs(got-math.Pi/3) > 1e-9 {
		t.Errorf("a flat up turns the nut by %g rad seen from above, want %g", got, math.Pi/3)
	}
}

func TestSlidesPointWhereTheyGo(t *testing.T) {
	for _, name := range assets.HullNames() {
		q := move(t, name, kinematics.Seated, nil)
		for _, mm := range []float64{0.5, -2} {
			var sc render.Scene
			q.m.Pose(&State{Now: &q.v, Exaggeration: 1, View: views(q.m)[0], Turns: []Turn{{Mount: 1, SlideMM: mm, Text: "slide"}}}, &sc)
			arrow := sc.Overlay.Arrows[len(sc.Overlay.Arrows)-1]
			if port := arrow.To.Sub(arrow.From)[1]; port*mm <= 0 {
				t.Errorf("%s: slid %g mm to port, the arrow goes %g", name, mm, port)
			}
		}
	}
}

// TestTurnsNameTheirMounts: what is to be done stands in the place of the name,
// even where names find no room.
func TestTurnsNameTheirMounts(t *testing.T) {
	q := move(t, "Eider", kinematics.Seated, nil)
	var sc render.Scene
	q.m.Pose(&State{Now: &q.v, Exaggeration: 1, View: views(q.m)[0], Show: ShowUsual,
		Turns: []Turn{{Mount: 2, Steps: 1, Text: "a flat up"}, {Mount: 77, Steps: 1, Text: "of no mount"}}}, &sc)
	seen := 0
	for _, l := range sc.Overlay.Labels {
		switch l.Text {
		case "a flat up":
			seen++
		case "of no mount", q.m.hull.Mounts[2].Name:
			t.Errorf("labelled %q", l.Text)
		}
	}
	if seen != 1 {
		t.Errorf("said %d times", seen)
	}
}
