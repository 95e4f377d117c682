// Baked occlusion against configuration factors known in closed form: J. R.
// Howell, A Catalog of Radiation Heat Transfer Configuration Factors, section B
// (differential element to finite area). The open sky a vertex sees is one less
// the factor to what hides it. (Formulas from memory.)

package render

import (
	"context"
	"math"
	"slices"
	"testing"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// probe is a tiny triangle at p that looks along n.
func probe(p, n mgl32.Vec3) *Mesh {
	side := mgl32.Vec3{1, 0, 0}
	if math.Abs(float64(n[0])) > 0.5 {
		side = mgl32.Vec3{0, 1, 0}
	}
	u := side.Cross(n).Normalize().Mul(0.001)
	v := n.Cross(u)
	return &Mesh{
		Positions: []mgl32.Vec3{p, p.Add(u), p.Add(v)},
		Normals:   []mgl32.Vec3{n, n, n},
		Triangles: [][3]uint32{{0, 1, 2}},
	}
}

func TestBakeAgreesWithConfigurationFactors(t *testing.T) {
	wall := func(height float64) Part { // in x = 1, reaching far to both sides
		return Part{Mesh: box(0.02, 40, height), Colour: grey, Transform: Translation(mgl64.Vec3{1, 0, height / 2})}
	}
	above := func(r, h float64) Part {
		return Part{Mesh: ball(r, 48), Colour: grey, Transform: Translation(mgl64.Vec3{0, 0, h})}
	}
	up := mgl32.Vec3{0, 0, 1}
	for _, c := range []struct {
		name string
		part Part
		n    mgl32.Vec3
		want float64
	}{
		// A ball straight above, seen facing it: (r/h)^2.
		{"ball at two radii", above(1, 2), up, 1 - 0.25},
		{"ball at three radii", above(1, 3), up, 1 - 1.0/9},
		// The same, seen with the normal turned by 45 degrees: times cos 45.
		{"ball aslant", above(1, 3), mgl32.Vec3{0.70711, 0, 0.70711}, 1 - math.Sqrt(0.5)/9},
		// A long wall beside the element: (1 - cos of the angle to its top)/2.
		{"low wall", wall(1), up, 1 - (1-math.Sqrt(0.5))/2},
		{"high wall", wall(20), up, 1 - (1-1/math.Hypot(1, 20))/2},
		{"nothing before it", above(1, 2), mgl32.Vec3{0, 0, -1}, 1},
	} {
		hidden := Part{Mesh: probe(mgl32.Vec3{0, 0, 0}, c.n), Colour: grey, Hidden: true}
		got, err := Bake(context.Background(), []Part{c.part, hidden}, BakeSettings{Directions: 400})
		if err != nil {
			t.Fatal(err)
		}
		if v := float64(got[1][0]); math.Abs(v-c.want) > 0.025 {
			t.Errorf("%s: open sky %.3f, want %.3f", c.name, v, c.want)
		}
	}
}

// TestBakeIsTheSameForAnyWorkers and a ball alone sees the whole sky.
func TestBakeIsTheSameForAnyWorkers(t *testing.T) {
	s := bench()
	one, _ := Bake(context.Background(), s.Parts, BakeSettings{Workers: 1, Directions: 24, Resolution: 128})
	three, _ := Bake(context.Background(), s.Parts, BakeSettings{Workers: 3, Directions: 24, Resolution: 128})
	for i := range one {
		if !slices.Equal(one[i], three[i]) {
			t.Errorf("part %d depends on the number of workers", i)
		}
	}
	alone, _ := Bake(context.Background(), []Part{{Mesh: ball(50, 32), Colour: grey}}, BakeSettings{})
	if low := slices.Min(alone[0]); low < 0.97 {
		t.Errorf("a ball alone sees %.3f of the sky somewhere, want all", low)
	}
}

func TestBakeEndsEarly(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if got, err := Bake(ctx, bench().Parts, BakeSettings{}); err == nil || got != nil {
		t.Errorf("a cancelled bake returned %v, %v", got != nil, err)
	}
}
