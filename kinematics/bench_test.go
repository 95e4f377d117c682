package kinematics

// This file measures what a drag costs: go test -bench . ./kinematics

import (
	"math"
	"testing"
)

// BenchmarkDrag is one drag event, warm: pose, shaft in contact, faces, loads,
// clearances. The hand goes to and fro by a tenth of a flat an event.
func BenchmarkDrag(b *testing.B) { benchmarkDrag(b, false) }

// BenchmarkColdDrag starts each answer from nothing.
func BenchmarkColdDrag(b *testing.B) { benchmarkDrag(b, true) }

func benchmarkDrag(b *testing.B, cold bool) {
	for _, h := range builtIn(b) {
		for _, held := range []Held{Seated, Centred, Bolted} {
			b.Run(h.Name+"/"+string(held), func(b *testing.B) {
				d := prepare(b, h)
				var r Result
				s := State{Held: held, LiftMM: make([]float64, len(h.Mounts))}
				iterations := 0
				b.ReportAllocs()
				for i := 0; b.Loop(); i++ {
					if cold {
						d.Forget()
					}
					s.LiftMM[0] = math.Abs(float64(i%200-100)) * h.Mounts[0].LiftPerStepMM() / 10
					if err := d.Solve(&s, &r); err != nil {
						b.Fatal(err)
					}
					iterations += r.Status.Iterations
				}
				b.ReportMetric(float64(iterations)/float64(b.N), "iterations/op")
			})
		}
	}
}

// BenchmarkPrepare makes a hull ready.
func BenchmarkPrepare(b *testing.B) {
	for _, h := range builtIn(b) {
		b.Run(h.Name, func(b *testing.B) {
			for b.Loop() {
				if _, err := Prepare(h); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// A warm drag allocates nothing, in any way of holding the shaft.
func TestDragAllocatesNothing(t *testing.T) {
	for _, h := range builtIn(t) {
		for _, held := range HeldWays {
			d := prepare(t, h)
			var r Result
			s := State{Held: held, LiftMM: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
			step := func() {
				s.LiftMM[0] += 0.01
				s.SlideMM[1] += 0.01
				if err := d.Solve(&s, &r); err != nil {
					t.Fatal(err)
				}
			}
			step()
			if n := testing.AllocsPerRun(50, step); n > 0 {
				t.Errorf("%s %s: %g allocations a drag", h.Name, held, n)
			}
		}
	}
}
