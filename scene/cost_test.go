package scene

// This file holds what posing costs.

import (
	"testing"

	"aligner/kinematics"
	"aligner/scene/render"
)

// warmState is a state with everything shown.
func warmState(q *solved) *State {
	view, _ := q.m.FitView(ViewWhole, 1.6)
	return &State{Now: &q.v, Planned: &q.v, Gauged: &q.v, Exaggeration: 100, Show: ShowUsual, View: view,
		Touches: []Touch{{Bearing: 0, Text: "touches"}, {Bearing: Log, Text: "touches"}},
		Turns:   []Turn{{Mount: 0, Steps: 2, Text: "up", Next: true}, {Mount: 1, Steps: -7, SlideMM: 1, Text: "down"}}}
}

func TestPosingWarmAllocatesNothing(t *testing.T) {
	for _, name := range []string{"Eider", "Cormorant"} {
		q := move(t, name, kinematics.Seated, nil)
		s := warmState(q)
		var sc render.Scene
		pose := func() {
			s.Exaggeration++
			q.m.Read(q.d, &q.s, &q.r, &q.v)
			q.m.Pose(s, &sc)
		}
		pose()
		pose()
		if n := testing.AllocsPerRun(10, pose); n != 0 {
			t.Errorf("%s: reading and posing allocates %g times", name, n)
		}
	}
}

func BenchmarkPose(b *testing.B) {
	for _, name := range []string{"Eider", "Cormorant"} {
		b.Run(name, func(b *testing.B) {
			q := move(b, name, kinematics.Seated, nil)
			s := warmState(q)
			s.Planned, s.Gauged = nil, nil
			var sc render.Scene
			b.ReportAllocs()
			for b.Loop() {
				q.m.Pose(s, &sc)
			}
		})
	}
}

func BenchmarkRead(b *testing.B) {
	q := move(b, "Eider", kinematics.Seated, nil)
	b.ReportAllocs()
	for b.Loop() {
		q.m.Read(q.d, &q.s, &q.r, &q.v)
	}
}

func BenchmarkNewModel(b *testing.B) {
	h := builtIn(b, "Eider")
	for b.Loop() {
		NewModel(h)
	}
}
