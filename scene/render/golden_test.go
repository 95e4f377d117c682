// Pictures kept in testdata, so that a change of look is seen and meant.
//
//	go test ./scene/render -run Golden -update
//
// makes them anew; look at them before committing. Tolerance: at most one pixel in
// two hundred may differ by more than 6 of 255 in a channel. That allows for
// processors that fuse multiplications and additions.

package render

import (
	"context"
	"flag"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"github.com/go-gl/mathgl/mgl64"
)

var update = flag.Bool("update", false, "make the golden pictures anew")

func goldenScenes(t *testing.T) map[string]*Scene {
	day := bench()
	day.Overlay = marks(testFont(t, 15))
	occlusion, err := Bake(context.Background(), day.Parts, BakeSettings{Resolution: 256})
	if err != nil {
		t.Fatal(err)
	}
	for i := range day.Parts {
		day.Parts[i].Occlusion = occlusion[i]
	}
	night := yardstick()
	night.Background, night.Outline = NightBackground, NightOutline
	night.Camera = Camera{Eye: mgl64.Vec3{-500, -700, 400}, Target: mgl64.Vec3{20, 0, 0}, Up: mgl64.Vec3{0, 0, 1}, Height: 420}
	return map[string]*Scene{"day": day, "night": night}
}

func TestGolden(t *testing.T) {
	const width, height = 480, 320
	for name, s := range goldenScenes(t) {
		got := fresh(s, width, height, 1)
		path := filepath.Join("testdata", name+".png")
		if *update {
			write(t, path, got)
			continue
		}
		want := read(t, path)
		if want.Bounds() != got.Bounds() {
			t.Fatalf("%s: %v, want %v", path, got.Bounds(), want.Bounds())
		}
		off := 0
		for y := range height {
			for x := range width {
				r, g, b, _ := want.At(x, y).RGBA()
				c := got.RGBAAt(x, y)
				if far(c.R, r) || far(c.G, g) || far(c.B, b) {
					off++
				}
			}
		}
		if off > width*height/200 {
			failed := filepath.Join(t.ArtifactDir(), name+".png")
			write(t, failed, got)
			t.Errorf("%s: %d of %d pixels differ; the new picture is in %s (kept with -artifacts)", path, off, width*height, failed)
		}
	}
}

func far(a uint8, b uint32) bool {
	d := int(a) - int(b>>8)
	return d > 6 || d < -6
}

func write(t *testing.T, path string, m image.Image) {
	t.Helper()
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := png.Encode(f, m); err != nil {
		t.Fatal(err)
	}
	if err := f.Close(); err != nil {
		t.Fatal(err)
	}
}

func read(t *testing.T, path string) image.Image {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	m, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return m
}
