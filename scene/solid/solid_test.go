package solid

// These tests hold solids to their laws and their volumes to the formulas of
// solid geometry (Euclid, Elements XII; for turned shapes, Pappus).

import (
	"math"
	"testing"

	"github.com/go-gl/mathgl/mgl64"
)

// ngon is the area of a regular polygon in a circle, against the circle's.
func ngon(n int) float64 { return float64(n) / (2 * math.Pi) * math.Sin(2*math.Pi/float64(n)) }

func TestSolidsAreClosedAndAsLargeAsTheyShouldBe(t *testing.T) {
	flange := Flange{Radius: 60, Front: 0, Back: -16, Holes: 4, HoleRadius: 5, HoleCircle: 45,
		FrontMiddle: []Turned{{0, 30}, {0, 0}}, BackMiddle: []Turned{{-16, 28}, {-50, 28}, {-50, 0}}}
	for _, c := range []struct {
		name    string
		solid   *Solid
		want    float64 // mm3
		percent float64
	}{
		{"block", Block{Low: mgl64.Vec3{0, 0, 0}, High: mgl64.Vec3{100, 40, 30}, Axis: 0}.Solid(), 120000, 1e-6},
		{"rounded block", Block{Low: mgl64.Vec3{0, 0, 0}, High: mgl64.Vec3{100, 40, 30}, Axis: 2, Round: 8, Bevel: 2}.Solid(), 118000, 2},
		{"cylinder", Lathe([]Turned{{0, 20}, {90, 20}}, 24, 30), math.Pi * 400 * 90 * ngon(24), 1e-6},
		{"cone", Lathe([]Turned{{0, 20}, {60, 0}}, 24, 30), math.Pi * 400 * 20 * ngon(24), 1e-6},
		{"tube", LatheLoop([]Turned{{0, 20}, {90, 20}, {90, 30}, {0, 30}}, 24, 30), math.Pi * 500 * 90 * ngon(24), 1e-6},
		{"three quarters of a tube", Cutaway([]Turned{{0, 20}, {90, 20}, {90, 30}, {0, 30}}, 0, 1.5*math.Pi, 60, 30), 0.75 * math.Pi * 500 * 90, 0.2},
		{"plate with a hole", Plate(OblongOf(80, 60, 10, 2, 2, 3), OblongOf(30, 20, 9, 2, 2, 3), mgl64.Vec3{}, 0, 10),
			10 * (80*60 - (4-math.Pi)*100 - 30*20 + (4-math.Pi)*81), 1},
		{"pipe", Hose(10, 24, 30, mgl64.Vec3{}, mgl64.Vec3{100, 0, 0}, mgl64.Vec3{100, 100, 0}), math.Pi * 100 * 190 * ngon(24), 2},
		{"flange", flange.Solid(), math.Pi*3600*16*ngon(RimPoints) + math.Pi*28*28*34*ngon(middlePoints) - 4*math.Pi*25*16*ngon(holePoints), 0.5},
	} {
		if why := c.solid.Fault(1.0 / 75); why != "" {
			t.Errorf("%s: %s", c.name, why)
		}
		if v := c.solid.VolumeMM3(); math.Abs(v-c.want) > c.percent/100*c.want {
			t.Errorf("%s: %.6g mm3, not %.6g", c.name, v, c.want)
		}
	}
}

// TestFaultFindsWhatIsWrong breaks a block in each way a law forbids.
func TestFaultFindsWhatIsWrong(t *testing.T) {
	block := func() *Solid { return Block{High: mgl64.Vec3{100, 40, 30}}.Solid() }
	for name, wreck := range map[string]func(*Solid){
		"a triangle missing":   func(s *Solid) { s.Triangles = s.Triangles[1:] },
		"a triangle turned":    func(s *Solid) { q := &s.Triangles[3]; q[0], q[1] = q[1], q[0] },
		"inside out":           func(s *Solid) { *s = *turned(s) },
		"a point nowhere":      func(s *Solid) { s.Points[0][1] = math.NaN() },
		"flattened":            func(s *Solid) { *s = *s.Bent(func(p mgl64.Vec3) mgl64.Vec3 { p[2] *= 1e-3; return p }) },
		"without any triangle": func(s *Solid) { s.Triangles = nil },
	} {
		s := block()
		wreck(s)
		if s.Fault(1.0/75) == "" {
			t.Errorf("%s: no fault found", name)
		}
	}
}

// turned is a solid with every triangle the other way round.
func turned(s *Solid) *Solid {
	o := &Solid{Points: s.Points}
	for _, t := range s.Triangles {
		o.Triangles = append(o.Triangles, [3]int{t[0], t[2], t[1]})
	}
	return o
}

func TestMeshKeepsCreasesAndSmoothsTheRest(t *testing.T) {
	m := Lathe([]Turned{{0, 20}, {90, 20}}, 36, 30).Mesh()
	for i, p := range m.Positions {
		n := m.Normals[i]
		if p[0] > 1 && p[0] < 89 && (math.Abs(float64(n[0])) > 1e-3 || float64(n[1]*p[1]+n[2]*p[2]) < 0.999*20) {
			t.Fatalf("on the side at %v the normal is %v", p, n)
		}
		if along := math.Abs(float64(n[0])); along > 1e-3 && along < 0.999 {
			t.Fatalf("at the edge %v the normal %v belongs to neither side", p, n)
		}
	}
}

func TestPlacedMirrorsStayOutward(t *testing.T) {
	s := Block{High: mgl64.Vec3{100, 40, 30}}.Solid().Bent(func(p mgl64.Vec3) mgl64.Vec3 { p[0] = -p[0]; return p })
	if why := s.Fault(1.0 / 75); why != "" {
		t.Error(why)
	}
}
