// Warm pictures make no garbage.

package render

import (
	"image/color"
	"testing"

	"github.com/go-gl/mathgl/mgl64"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
)

// testFont is a font that is the same on every machine.
func testFont(t testing.TB, size float64) *Font {
	t.Helper()
	parsed, err := opentype.Parse(goregular.TTF)
	if err != nil {
		t.Fatal(err)
	}
	face, err := opentype.NewFace(parsed, &opentype.FaceOptions{Size: size, DPI: 72})
	if err != nil {
		t.Fatal(err)
	}
	return NewFont(face)
}

// marks is an overlay of every kind.
func marks(f *Font) Overlay {
	ink, paper := color.NRGBA{20, 20, 20, 255}, color.NRGBA{255, 255, 255, 220}
	return Overlay{
		Lines: []Line{
			{Points: []mgl64.Vec3{{-300, 0, 0}, {300, 0, 0}, {300, 200, 0}}, Width: 2, Dash: 10, Gap: 6, Colour: color.NRGBA{200, 30, 30, 255}, Behind: FaintBehind},
			{Points: []mgl64.Vec3{{-100, -50, 30}, {100, -50, 30}, {100, 50, 30}}, Width: 3, Colour: color.NRGBA{30, 30, 200, 160}, Behind: HideBehind},
			{Points: []mgl64.Vec3{{10, 210, 0}, {200, 190, 0}}, Flat: true, Width: 0.7, Colour: ink},
		},
		Arrows: []Arrow{
			{From: mgl64.Vec3{0, 0, 60}, To: mgl64.Vec3{0, 0, 200}, Width: 3, Head: 16, Colour: color.NRGBA{20, 110, 60, 255}},
			{From: mgl64.Vec3{-100, -60, -30}, To: mgl64.Vec3{100, -60, -30}, Width: 1.5, Head: 12, BothEnds: true, Colour: ink},
		},
		Dots: []Dot{{At: mgl64.Vec3{100, -50, 30}, Radius: 9, Width: 2, Fill: color.NRGBA{255, 180, 40, 255}, Ring: ink}},
		Labels: []Label{
			{At: mgl64.Vec3{100, -50, 30}, Text: "fore port +2 flats\nopens 3.1 thou ± 0.4", Font: f, Offset: [2]float32{30, -30}, Pivot: [2]float32{0, 1}, Colour: ink, Plate: paper, Leader: ink, Keep: true},
			{At: mgl64.Vec3{5, 5, 0}, Flat: true, Text: "movement × 200", Font: f, Colour: paper, Plate: color.NRGBA{20, 20, 20, 200}},
		},
	}
}

// TestWarmPicturesDoNotAllocate draws turning, dragged, bent and idle pictures
// with marks, five of each to warm up.
func TestWarmPicturesDoNotAllocate(t *testing.T) {
	for _, workers := range []int{1, 3} {
		s := bench()
		s.Overlay = marks(testFont(t, 15))
		r := New(Settings{Workers: workers})
		dst := picture(500, 330)
		n := 0
		for name, change := range map[string]func(){
			"turning":  func() { s.Camera.Eye[0] = -500 + float64(n%2) },
			"dragging": func() { s.Parts[1].Transform = Translation(mgl64.Vec3{0, float64(n % 3), 60}) },
			"bending":  func() { s.Parts[2].Mesh.Positions[0][2] = float32(n % 3); s.Parts[2].Mesh.Touch() },
			"idle":     func() {},
		} {
			draw := func() { n++; change(); r.Draw(dst, s) }
			for range 5 {
				draw()
			}
			if got := testing.AllocsPerRun(12, draw); got != 0 {
				t.Errorf("%d workers, %s: %v allocations a picture, want none", workers, name, got)
			}
		}
		r.Close()
	}
}
