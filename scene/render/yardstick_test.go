// The yardstick: a drive line of 48,000 triangles to measure by.
//
//	go test ./scene/render -run xxx -bench . -benchtime 100x
//
// Each benchmark draws on one goroutine and reports, beside Go's mean, the least
// processor time of all its pictures: that is what the machine can do undisturbed.

package render

import (
	"context"
	"image/color"
	"math"
	"testing"
	"time"

	"github.com/go-gl/mathgl/mgl64"
)

// The yardstick's groups of parts.
var (
	couplingHalf = []int{2}
	shaftGroup   = []int{2, 3, 4}
	engineGroup  = []int{0, 1, 5}
)

// yardstick builds the scene, in millimetres, x forward.
func yardstick() *Scene {
	move := func(x, y, z float64) Affine { return Translation(mgl64.Vec3{x, y, z}) }
	engine := []placed{{pillow(900, 460, 520, 48), move(700, 0, 180)}, {pillow(760, 300, 240, 40), move(690, 0, 500)}, {pillow(500, 140, 140, 32), move(680, 260, 330)}}
	for i := range 4 {
		x := 440 + 170*float64(i)
		engine = append(engine, placed{torus(80, 22, 32, 14), move(x, -235, 260)}, placed{pillow(110, 110, 110, 20), move(x, 0, 640)}, placed{torus(70, 22, 32, 14), move(x, 235, 250)})
	}
	gearbox := []placed{{lathe([][2]float64{{40, 0}, {40, 60}, {90, 110}, {160, 170}, {240, 210}, {250, 230}, {270, 230}, {270, 0}}, 48, 40), Identity}}
	engineHalf := []placed{{disc(0, 18, 64, 64, 14), Identity}, {disc(18, 60, 38, 48, 14), Identity}}
	shaftHalf := []placed{{disc(-18, 0, 64, 64, 14), Identity}, {disc(-70, -18, 40, 48, 14), Identity}}
	for i := range 4 {
		sin, cos := math.Sincos(math.Pi * (0.25 + 0.5*float64(i)))
		shaftHalf = append(shaftHalf, placed{disc(-30, -18, 9, 6, 6), move(0, 50*cos, 50*sin)})
		engineHalf = append(engineHalf, placed{disc(18, 30, 9, 6, 6), move(0, 50*cos, 50*sin)})
	}
	propeller := []placed{{pillow(160, 100, 100, 28), move(-1060, 0, 0)}}
	for i := range 3 {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / 3)
		blade := Affine{0.8, 0.6, 0, -1060, -0.6 * cos, 0.8 * cos, -sin, -150 * sin, -0.6 * sin, 0.8 * sin, cos, 150 * cos}
		propeller = append(propeller, placed{pillow(24, 130, 260, 36), blade})
	}
	var mounts, beds []placed
	for _, y := range []float64{-330, 330} {
		for _, x := range []float64{380, 1020} {
			stack := lathe([][2]float64{{-120, 0}, {-120, 70}, {-105, 70}, {-100, 50}, {-40, 36}, {-36, 60}, {-24, 60}, {-24, 14}, {60, 14}, {60, 0}}, 36, 8)
			mounts = append(mounts, placed{stack, Affine{0, 1, 0, x, 0, 0, 1, y, 1, 0, 0, 40}})
		}
		beds = append(beds, placed{pillow(1300, 90, 120, 40), move(650, y, -130)})
	}
	strut := []placed{{lathe([][2]float64{{-960, 0}, {-960, 36}, {-860, 36}, {-860, 0}}, 32, 20), Identity}, {pillow(80, 24, 420, 24), move(-910, 0, 230)}}
	part := func(id uint16, list []placed, c color.NRGBA, gloss float32) Part {
		return Part{Mesh: joined(list...), Colour: c, Gloss: gloss, ID: id}
	}
	cast, steel, bronze := color.NRGBA{142, 146, 150, 255}, color.NRGBA{178, 182, 188, 255}, color.NRGBA{186, 158, 108, 255}
	return &Scene{
		Parts: []Part{
			part(1, engine, cast, 0.2), part(2, gearbox, color.NRGBA{160, 163, 166, 255}, 0.25),
			part(3, shaftHalf, bronze, 0.4), part(4, []placed{{lathe([][2]float64{{-1020, 0}, {-1020, 19}, {-20, 19}, {-20, 0}}, 32, 20), Identity}}, steel, 0.6),
			part(5, propeller, bronze, 0.4), part(6, engineHalf, steel, 0.4),
			part(7, mounts, color.NRGBA{70, 72, 76, 255}, 0.2), part(8, beds, color.NRGBA{150, 138, 120, 255}, 0.05), part(9, strut, steel, 0.3),
			{Mesh: ground(2400, 29), Colour: color.NRGBA{196, 198, 200, 255}, Transform: move(100, 200, -270)},
			{Mesh: shell(-1900, 1900, 1700, 380, 48, 32), Colour: color.NRGBA{110, 150, 190, 70}, Transform: move(0, 0, 110)},
		},
		Camera: Camera{Eye: mgl64.Vec3{-950, -2100, 900}, Target: mgl64.Vec3{-160, 0, 170}, Up: mgl64.Vec3{0, 0, 1}, FieldOfViewDeg: 38},
		Light:  DefaultLight(), Background: DaylightBackground, Outline: DaylightOutline,
	}
}

// TestYardstickIsAsLargeAsStated counts what the benchmarks draw.
func TestYardstickIsAsLargeAsStated(t *testing.T) {
	s := yardstick()
	r := New(Settings{Workers: 1})
	defer r.Close()
	r.Draw(picture(1280, 800), s)
	triangles := len(r.shades)
	facing, area := 0, 0.0
	for i := range r.still.lanes {
		for _, k := range r.still.lanes[i].triangles {
			if r.frames[r.shades[k.id-1].surface>>16].layer != layerSolid {
				continue
			}
			facing++
			area += math.Abs(float64(int64(k.x[1]-k.x[0])*int64(k.y[2]-k.y[0])-int64(k.x[2]-k.x[0])*int64(k.y[1]-k.y[0]))) / 2 / subpixel / subpixel
		}
	}
	covered := 0
	for _, id := range r.front {
		if id != 0 {
			covered++
		}
	}
	hull := 0
	solids := yardstick()
	solids.Parts = solids.Parts[:10]
	with, without := picture(1280, 800), picture(1280, 800)
	r.Draw(with, s)
	r.Draw(without, solids)
	for i := 0; i < len(with.Pix); i += 4 {
		if [3]uint8(with.Pix[i:]) != [3]uint8(without.Pix[i:]) {
			hull++
		}
	}
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"triangles", float64(triangles), 48000},
		{"solid triangles facing", float64(facing), 22000},
		{"pixels covered by solids", float64(covered), 520000},
		{"overdraw", area / float64(covered), 1.45},
		{"pixels under the hull", float64(hull), 1280 * 800 / 3},
	} {
		if math.Abs(c.got/c.want-1) > 0.08 {
			t.Errorf("%s: %g, want about %g", c.what, c.got, c.want)
		}
	}
}

// measure draws b.N pictures and reports the least time of one.
func measure(b *testing.B, s *Scene, change func(i int)) {
	r := New(Settings{Workers: 1})
	defer r.Close()
	dst := picture(1280, 800)
	for i := range 6 {
		change(i)
		r.Draw(dst, s)
	}
	least := time.Hour
	b.ReportAllocs()
	b.ResetTimer()
	for i := range b.N {
		change(i)
		start := used()
		r.Draw(dst, s)
		least = min(least, used()-start)
	}
	b.ReportMetric(float64(least.Microseconds())/1000, "ms/least")
}

func BenchmarkFullRedraw(b *testing.B) {
	s := yardstick()
	measure(b, s, func(i int) { s.Camera.Eye[0] += float64(i%2*2 - 1) })
}

func benchmarkDrag(b *testing.B, group []int) {
	s := yardstick()
	for _, i := range group {
		s.Parts[i].Moving = true
	}
	measure(b, s, func(i int) {
		for _, k := range group {
			s.Parts[k].Transform = Displacement(mgl64.Vec3{0, float64(i%5) - 2, 1}, mgl64.Vec3{0, 0, 0.001 * float64(i%3)}, 1)
		}
	})
}

func BenchmarkDragEngineGroup(b *testing.B)  { benchmarkDrag(b, engineGroup) }
func BenchmarkDragShaftGroup(b *testing.B)   { benchmarkDrag(b, shaftGroup) }
func BenchmarkDragCouplingHalf(b *testing.B) { benchmarkDrag(b, couplingHalf) }

func BenchmarkNothingChanged(b *testing.B) { measure(b, yardstick(), func(int) {}) }

func BenchmarkBake(b *testing.B) {
	s := yardstick()
	for range b.N {
		if _, err := Bake(context.Background(), s.Parts, BakeSettings{Workers: 1}); err != nil {
			b.Fatal(err)
		}
	}
}
