// Laws of the drag cache: it never changes a picture.

package render

import (
	"bytes"
	"image"
	"math"
	"testing"

	"github.com/go-gl/mathgl/mgl64"
)

// fresh draws with a renderer that has drawn nothing before.
func fresh(s *Scene, width, height, workers int) *image.RGBA {
	r := New(Settings{Workers: workers})
	defer r.Close()
	dst := picture(width, height)
	r.Draw(dst, s)
	return dst
}

// TestCacheEqualsFullRedraw drags the moving parts through the picture, partly
// out of it, and compares each picture with one drawn from nothing.
func TestCacheEqualsFullRedraw(t *testing.T) {
	s := bench()
	r := New(Settings{Workers: 2})
	defer r.Close()
	dst := picture(500, 330)
	redone := 0
	for i := range 40 {
		a := float64(i)
		s.Parts[1].Transform = Displacement(mgl64.Vec3{9 * a, 40 * math.Sin(a), 60}, mgl64.Vec3{0.02 * a, 0.01 * a, 0}, 1)
		s.Parts[2].Transform = Translation(mgl64.Vec3{20 - 14*a, 0, 70})
		s.Parts[2].Hidden = i%7 == 3
		if i == 20 {
			s.Camera.Eye[0] = -400
		}
		r.Draw(dst, s)
		if want := fresh(s, 500, 330, 1); !bytes.Equal(dst.Pix, want.Pix) {
			t.Fatalf("picture %d differs from a full redraw", i)
		}
		if i > 0 && !r.cache.full {
			redone += len(r.dirty)
		}
	}
	if all := r.tilesX * r.tilesY * 38; redone == 0 || redone >= all {
		t.Errorf("redone %d tiles of %d: the cache was not at work", redone, all)
	}
}

// TestMovingMarkChangesNothing draws the scene with every choice of marks.
func TestMovingMarkChangesNothing(t *testing.T) {
	s := bench()
	want := fresh(s, 400, 260, 1)
	for marks := range 1 << len(s.Parts) {
		for i := range s.Parts {
			s.Parts[i].Moving = marks>>i&1 == 1
		}
		if got := fresh(s, 400, 260, 1); !bytes.Equal(got.Pix, want.Pix) {
			t.Fatalf("marks %b change the picture", marks)
		}
	}
}

// TestWorkersChangeNothing draws with one to five workers.
func TestWorkersChangeNothing(t *testing.T) {
	s := bench()
	want := fresh(s, 500, 330, 1)
	for n := 2; n <= 5; n++ {
		if got := fresh(s, 500, 330, n); !bytes.Equal(got.Pix, want.Pix) {
			t.Errorf("%d workers change the picture", n)
		}
	}
}
