package scene

// These tests hold the hand: picking handles, dragging them, turning the view.

import (
	"math"
	"testing"

	"aligner/assets"
	"aligner/kinematics"
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

const width, height = 1280, 800

// views looks at a model from three sides.
func views(m *Model) []View {
	whole, _ := m.FitView(ViewWhole, float64(width)/height)
	engine, _ := m.FitView(ViewEngine, float64(width)/height)
	other := engine
	other.YawRad, other.PitchRad = -2.2, 0.5
	return []View{whole, engine, other}
}

func TestEveryHandleIsPicked(t *testing.T) {
	for _, name := range assets.HullNames() {
		q := move(t, name, kinematics.Seated, nil)
		for k, view := range views(q.m) {
			var sc render.Scene
			q.m.Pose(&State{Now: &q.v, Exaggeration: 20, View: view}, &sc)
			for _, h := range append([]Handle(nil), q.m.Handles()...) {
				x, y, _, _ := sc.Camera.Project(width, height, h.At)
				got, ok := q.m.PickHandle(sc.Camera, width, height, x+0.3, y-0.3)
				if !ok || got.ID != h.ID {
					t.Errorf("%s, view %d: handle %d (mount %d, way %d) picks %d", name, k, h.ID, h.ID.Mount(), h.ID.Way(), got.ID)
				}
			}
			if h, ok := q.m.PickHandle(sc.Camera, width, height, 2, 2); ok {
				t.Errorf("%s: the corner picks %d", name, h.ID)
			}
		}
	}
}

func TestADragIsTheTravelOverN(t *testing.T) {
	q := move(t, "Eider", kinematics.Seated, nil)
	for _, view := range views(q.m) {
		for _, n := range []float64{1, 50, 200} {
			var sc render.Scene
			q.m.Pose(&State{Now: &q.v, Exaggeration: n, View: view}, &sc)
			for _, h := range q.m.Handles() {
				for _, mm := range []float64{0.4, -0.25} {
					x, y, _, _ := sc.Camera.Project(width, height, h.At)
					by := MMToDrag(h, mm, sc.Camera, width, height, n)
					from, to := Point{x, y}, Point{x + by.X, y + by.Y}
					if got := DragToMM(h, from, to, sc.Camera, width, height, n); math.Abs(got-mm) > 1e-6 {
						t.Errorf("handle %d, N %g: %g mm there, %g back", h.ID, n, mm, got)
					}
					// What is drawn goes with the hand.
					ex, ey, _, _ := sc.Camera.Project(width, height, h.At.Add(h.Along.Mul(n*mm)))
					if h.aslant(sc.Camera) && math.Hypot(ex-to.X, ey-to.Y) > 1e-6 {
						t.Errorf("handle %d: the hand is at %v, what is drawn at %g, %g", h.ID, to, ex, ey)
					}
				}
			}
		}
	}
}

func TestADragAlongTheLineOfSightStaysFinite(t *testing.T) {
	q := move(t, "Eider", kinematics.Seated, nil)
	view, _ := q.m.FitView(ViewEngine, 1.6)
	view.PitchRad = mostPitchRad
	var sc render.Scene
	q.m.Pose(&State{Now: &q.v, View: view}, &sc)
	h := q.m.Handles()[0]
	up := DragToMM(h, Point{600, 400}, Point{600, 380}, sc.Camera, width, height, 1)
	if !(up > 0 && up < 1000) {
		t.Errorf("20 pixels up the picture from straight above: %g mm", up)
	}
}

func TestSnapped(t *testing.T) {
	m := NewModel(builtIn(t, "Eider"))
	for _, c := range []struct {
		id       HandleID
		mm, want float64
	}{
		{HandleOf(0, Vertical), 0.30, 1.0 / 3}, {HandleOf(0, Vertical), -0.5, -2.0 / 3}, {HandleOf(2, Vertical), 0.1, 0},
		{HandleOf(1, Sideways), 0.4, 0.5},
	} {
		if got := m.Snapped(c.id, c.mm); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("handle %d at %g mm snaps to %g, not %g", c.id, c.mm, got, c.want)
		}
	}
}

func TestFittedViewsHoldWhatTheyShow(t *testing.T) {
	for _, name := range assets.HullNames() {
		q := move(t, name, kinematics.Seated, nil)
		for _, aspect := range []float64{1.6, 0.7} {
			w := int(aspect * height)
			for _, view := range q.m.ViewNames() {
				v, ok := q.m.FitView(view, aspect)
				points, _ := q.m.focus(view)
				if !ok || len(points) == 0 {
					t.Fatalf("%s: no view %q", name, view)
				}
				camera := q.m.Camera(v)
				for _, p := range points {
					if _, _, _, inside := camera.Project(w, height, p); !inside {
						t.Errorf("%s, view %q, aspect %g: %v is outside", name, view, aspect, p)
					}
				}
			}
		}
		if _, ok := q.m.FitView("no such view", 1); ok {
			t.Errorf("%s fits a view it does not know", name)
		}
	}
}

func TestTheViewTurnsPansAndZooms(t *testing.T) {
	m := NewModel(builtIn(t, "Eider"))
	v, _ := m.FitView(ViewWhole, 1.6)
	turned := v.Orbit(width/2, 0, width)
	if d := math.Abs(math.Remainder(turned.YawRad-v.YawRad, 2*math.Pi)); math.Abs(d-math.Pi/2) > 1e-9 {
		t.Errorf("half the width turns by %g", d)
	}
	if p := v.Orbit(0, 1e6, width).PitchRad; p != mostPitchRad {
		t.Errorf("pitch runs to %g", p)
	}
	// Panning: what was at the middle goes with the hand.
	panned := m.Pan(v, 70, -30, width, height)
	x, y, _, _ := m.Camera(panned).Project(width, height, v.Target)
	if math.Hypot(x-width/2-70, y-height/2+30) > 1e-6 {
		t.Errorf("panned by 70, -30, the target lies at %g, %g", x, y)
	}
	// Zooming keeps the point under the pointer where it is.
	at := v.Target.Add(mgl64.Vec3{200, 50, 30})
	x0, y0, _, _ := m.Camera(v).Project(width, height, at)
	x1, y1, _, _ := m.Camera(v.Zoom(1.5, at)).Project(width, height, at)
	if math.Hypot(x1-x0, y1-y0) > 1e-6 {
		t.Errorf("zooming moves the point from %g, %g to %g, %g", x0, y0, x1, y1)
	}
	if b := v.Between(turned, 1); math.Abs(math.Remainder(b.YawRad-turned.YawRad, 2*math.Pi)) > 1e-9 || v.Between(turned, 0) != v {
		t.Errorf("a turn does not begin and end where it should")
	}
}
