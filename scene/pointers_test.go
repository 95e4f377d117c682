package scene

// This file holds the mark on the shaft to its drawn skin, and pointers to what
// carries them.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/kinematics"
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// The mark lies on the shaft's skin, however crooked its half is drawn: no point of
// the shaft's mesh at its place along the shaft is further out on its side.
func TestSpotLiesOnTheShaft(t *testing.T) {
	for _, name := range assets.HullNames() {
		q := move(t, name, kinematics.Seated, func(s *kinematics.State) { s.RunOut = kinematics.RunOut{ShaftMM: 0.1} })
		for _, deg := range []float64{0, 90, 200} {
			var sc render.Scene
			q.m.Pose(&State{Now: &q.v, Exaggeration: 80, Spot: &Spot{TurnDeg: deg}}, &sc)
			at := sc.Overlay.Dots[0].At
			centre := q.m.onShaft(&q.v, at[0], 80)
			near := math.Inf(1)
			for i := range q.m.pieces {
				if p := &q.m.pieces[i]; p.body == shaftBody {
					for _, v := range p.mesh.Positions {
						off := double(v).Sub(at)
						off[0] = 0 // how the rings lie along the shaft is its own matter
						if math.Abs(double(v)[0]-at[0]) < 150 {
							near = min(near, off.Len())
						}
					}
				}
			}
			if near > 0.25*q.m.hull.Shaft.DiameterMM {
				t.Errorf("%s, %v: the mark is %.1f mm off the skin (centre at %v)", name, deg, near, centre.Apply(mgl64.Vec3{at[0]}))
			}
		}
	}
}

// A pointer goes with its carrier, point by point; one in a still frame stays.
func TestPointersAreCarried(t *testing.T) {
	q := move(t, "Kittiwake", kinematics.Seated, nil)
	path := []mgl64.Vec3{{10, 60, 0}, {40, 60, 0}}
	for on, want := range map[Carrier]func(mgl64.Vec3) mgl64.Vec3{
		Still:    func(p mgl64.Vec3) mgl64.Vec3 { return p },
		OnEngine: func(p mgl64.Vec3) mgl64.Vec3 { return q.m.posed.engine.Apply(p) },
		OnHalf:   func(p mgl64.Vec3) mgl64.Vec3 { return q.m.posed.half.Apply(p) },
	} {
		var sc render.Scene
		q.m.Pose(&State{Now: &q.v, Exaggeration: 80, Pointers: []Pointer{{Points: path, On: on, Text: "x"}}}, &sc)
		a := sc.Overlay.Arrows[0]
		if a.From.Sub(want(path[0])).Len() > 1e-9 || a.To.Sub(want(path[1])).Len() > 1e-9 {
			t.Errorf("on %d: from %v to %v", on, a.From, a.To)
		}
		if on != Still && a.To.Sub(path[1]).Len() < 1e-3 {
			t.Errorf("on %d it did not move", on)
		}
	}
}

// A bent pointer's head ends its path, a plain one has none, and a pointer that goes
// down has its words below it.
func TestPointersOfEachForm(t *testing.T) {
	q := move(t, "Kittiwake", kinematics.Seated, nil)
	bent := []mgl64.Vec3{{0, 0, 0}, {10, 0, 20}, {30, 0, 30}}
	var sc render.Scene
	q.m.Pose(&State{Now: &q.v, Exaggeration: 80, Pointers: []Pointer{{Points: bent}, {Points: bent[:2], Plain: true}, {Points: []mgl64.Vec3{{0, 0, 50}, {0, 0, 0}}, Text: "down"}}}, &sc)
	if n := len(sc.Overlay.Arrows); n != 2 || sc.Overlay.Arrows[0].To != bent[2] {
		t.Errorf("%d heads: %v", n, sc.Overlay.Arrows)
	}
	for _, l := range sc.Overlay.Labels {
		if l.Text == "down" && l.Offset[1] <= 0 {
			t.Errorf("its words are at %v", l.Offset)
		}
	}
}
