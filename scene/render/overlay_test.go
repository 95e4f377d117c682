// Laws of the marks over the picture.

package render

import (
	"bytes"
	"image/color"
	"math"
	"testing"

	"github.com/go-gl/mathgl/mgl64"
)

// TestMarksLeaveNoTrace moves marks about over a dragged scene: each picture must
// equal one drawn from nothing, and without marks the bare scene.
func TestMarksLeaveNoTrace(t *testing.T) {
	font := testFont(t, 15)
	s := bench()
	r := New(Settings{Workers: 2})
	defer r.Close()
	dst := picture(400, 260)
	for i := range 12 {
		s.Overlay = Overlay{}
		if i%4 != 3 {
			s.Overlay = marks(font)
			s.Overlay.Dots[0].At[1] += 10 * float64(i)
			s.Overlay.Labels[1].At[0] += 20 * float64(i)
		}
		if i%3 == 1 {
			s.Parts[1].Transform = Translation(mgl64.Vec3{0, 7 * float64(i), 60})
		}
		r.Draw(dst, s)
		if want := fresh(s, 400, 260, 1); !bytes.Equal(dst.Pix, want.Pix) {
			t.Fatalf("picture %d differs from one drawn from nothing", i)
		}
	}
}

// blank is a scene of nothing on white.
func blank(o Overlay) *Scene {
	white := color.NRGBA{255, 255, 255, 255}
	return &Scene{Camera: bench().Camera, Background: Background{Top: white, Bottom: white}, Overlay: o}
}

// ink adds up how black a picture is, in pixels.
func ink(pix []uint8) (sum float64) {
	for i := 0; i < len(pix); i += 4 {
		sum += 1 - float64(pix[i])/255
	}
	return sum
}

// TestLinesHaveTheirArea compares the ink of lines at all angles with their length
// times width, and of discs with pi r^2.
func TestLinesHaveTheirArea(t *testing.T) {
	black := color.NRGBA{0, 0, 0, 255}
	for _, width := range []float32{0.4, 1, 1.5, 3, 8} {
		for turn := range 24 {
			sin, cos := math.Sincos(float64(turn) * 0.27)
			l := Line{Points: []mgl64.Vec3{{100, 100, 0}, {100 + 70*cos, 100 + 70*sin, 0}}, Flat: true, Width: width, Colour: black}
			got := ink(fresh(blank(Overlay{Lines: []Line{l}}), 200, 200, 1).Pix)
			// Round ends; under a pixel wide they keep a pixel's radius, fainter.
			w := float64(width)
			want := 70*w + math.Pi*w*w/4
			if math.Abs(got-want) > 0.04*want+0.5 {
				t.Errorf("width %g, turn %d: ink %.2f, want %.2f", width, turn, got, want)
			}
			l.Dash, l.Gap = 6, 4
			if width < 3 {
				dashed := ink(fresh(blank(Overlay{Lines: []Line{l}}), 200, 200, 1).Pix)
				if math.Abs(dashed/got-0.6) > 0.06 {
					t.Errorf("width %g, turn %d: dashes are %.3f of the line, want 0.6", width, turn, dashed/got)
				}
			}
		}
	}
	for _, r := range []float64{2, 5.5, 20} {
		d := Dot{At: mgl64.Vec3{90.3, 77.8, 0}, Flat: true, Radius: float32(r), Fill: black}
		got, want := ink(fresh(blank(Overlay{Dots: []Dot{d}}), 200, 200, 1).Pix), math.Pi*r*r
		if math.Abs(got-want) > 0.02*want {
			t.Errorf("disc of radius %g: ink %.2f, want %.2f", r, got, want)
		}
	}
}

// TestMarksBehindSolids draws a dot inside the box with each choice.
func TestMarksBehindSolids(t *testing.T) {
	s := bench()
	s.Parts = s.Parts[:1]
	bare := fresh(s, 300, 200, 1)
	changed := func(at mgl64.Vec3, b Behind) (n int) {
		s.Overlay = Overlay{Dots: []Dot{{At: at, Radius: 8, Fill: color.NRGBA{255, 0, 0, 255}, Behind: b}}}
		got := fresh(s, 300, 200, 1)
		for i := range got.Pix {
			n += int(math.Abs(float64(got.Pix[i]) - float64(bare.Pix[i])))
		}
		return n
	}
	inside, before := mgl64.Vec3{0, 0, 0}, mgl64.Vec3{-100, -150, 100}
	whole := changed(inside, ShowBehind)
	if faint := changed(inside, FaintBehind); math.Abs(float64(faint)/float64(whole)-0.25) > 0.02 {
		t.Errorf("a hidden faint dot shows %d of %d, want a quarter", faint, whole)
	}
	if n := changed(inside, HideBehind); n != 0 {
		t.Errorf("a hidden dot shows: %d", n)
	}
	if a, b := changed(before, ShowBehind), changed(before, HideBehind); a != b || a == 0 {
		t.Errorf("a dot before the box shows %d, want %d", b, a)
	}
}

// TestLabelKeepsInside anchors a label at each corner of the picture.
func TestLabelKeepsInside(t *testing.T) {
	f := testFont(t, 15)
	w, h := f.Measure("port")
	for _, at := range []mgl64.Vec3{{1, 1, 0}, {198, 1, 0}, {1, 98, 0}, {198, 98, 0}} {
		l := Label{At: at, Flat: true, Text: "port", Font: f, Pivot: [2]float32{0.5, 0.5}, Plate: color.NRGBA{0, 0, 0, 255}, Keep: true}
		got := ink(fresh(blank(Overlay{Labels: []Label{l}}), 200, 100, 1).Pix)
		if got < float64(w*h) {
			t.Errorf("at %v only %.0f pixels of the plate show, its text alone takes %d", at, got, w*h)
		}
	}
}

// TestLabelsYield puts several labels on one place: their plates' ink is that of
// as many apart, where there is room.
func TestLabelsYield(t *testing.T) {
	f := testFont(t, 15)
	l := Label{At: mgl64.Vec3{100, 100, 0}, Flat: true, Text: "port", Font: f, Pivot: [2]float32{0.5, 0.5}, Plate: color.NRGBA{0, 0, 0, 255}}
	one := ink(fresh(blank(Overlay{Labels: []Label{l}}), 200, 200, 1).Pix)
	for _, c := range []struct {
		yield bool
		want  float64
	}{{false, one}, {true, 5 * one}} {
		var o Overlay
		for range 5 {
			l.Yield = c.yield
			o.Labels = append(o.Labels, l)
		}
		if got := ink(fresh(blank(o), 200, 200, 1).Pix); math.Abs(got-c.want) > 0.01*c.want {
			t.Errorf("yielding %v: ink %.0f, want %.0f", c.yield, got, c.want)
		}
	}
}
