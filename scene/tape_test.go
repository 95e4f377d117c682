package scene

// A tape is drawn where it is laid, warm without allocating, and seen whole in its
// own view.

import (
	"testing"

	"aligner/hulls/visit/builtin"
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

func TestTapeIsSeenWhole(t *testing.T) {
	m := NewModel(builtin.Hull(t, "Kittiwake"))
	var out render.Scene
	for _, tape := range []Tape{
		{From: mgl64.Vec3{0, 290, 40}, To: mgl64.Vec3{820, 290, 40}, Text: "820 mm"},
		{From: mgl64.Vec3{200, 0, 40}, To: mgl64.Vec3{200, -290, 40}},
		{To: mgl64.Vec3{-1680, 0, 0}},
		{From: mgl64.Vec3{-1400, 0, 12.7}, To: mgl64.Vec3{-1400, 0, 12.9}},
		{}, // nothing off the line
	} {
		s := State{Show: ShowUsual, Tape: &tape}
		m.Pose(&s, &out)
		v, ok := m.FitView(ViewTape, 1.5)
		if !ok {
			t.Fatal("no view of the tape")
		}
		s.View = v
		m.Pose(&s, &out)
		const w, h = 900, 600
		for _, p := range []mgl64.Vec3{tape.From, tape.To} {
			x, y, depth, _ := out.Camera.Project(w, h, p)
			if depth <= 0 || x < 20 || x > w-20 || y < 20 || y > h-20 {
				t.Errorf("%+v: an end at %.0f, %.0f", tape, x, y)
			}
		}
		if ends := len(out.Overlay.Dots) + len(out.Overlay.Lines); ends == 0 {
			t.Errorf("%+v: no ends drawn", tape)
		}
		if n := testing.AllocsPerRun(5, func() { m.Pose(&s, &out) }); n > 0 {
			t.Errorf("%v allocations", n)
		}
	}
	s := State{Show: ShowUsual}
	m.Pose(&s, &out)
	if v, ok := m.FitView(ViewTape, 1.5); !ok || v.DistanceMM == 0 {
		t.Error("without a tape the view of it is none")
	}
}
