package scene

// This file draws the marks over the picture: directions, names, handles, the
// true shaft line, where the shaft touches.

import (
	"image/color"
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Words are the marks' texts.
type Words struct {
	Port, Starboard, Fore, Aft string
	Part                       func(name string) string // what a mount is called; nil: by its name
}

// english is what a zero Words stands for.
var english = Words{"PORT", "STBD", "FORE", "AFT", nil}

// Touch is where the shaft touches, with what to say of it.
type Touch struct {
	Bearing int // index, or Log
	Text    string
}

// Log stands for the log in a Touch.
const Log = -1

// ink are the marks' colours for light and dark pictures.
type ink struct {
	text, plate, faint, soft, line, handle, ring, active, touch, gauged color.NRGBA
}

var (
	dayInk = ink{
		text: color.NRGBA{24, 30, 38, 255}, plate: color.NRGBA{250, 251, 252, 225}, faint: color.NRGBA{244, 246, 248, 150}, soft: color.NRGBA{60, 70, 82, 255},
		line: color.NRGBA{40, 52, 66, 220}, handle: color.NRGBA{32, 74, 120, 255}, ring: color.NRGBA{255, 255, 255, 255},
		active: color.NRGBA{196, 92, 0, 255}, touch: color.NRGBA{170, 70, 0, 255}, gauged: color.NRGBA{96, 62, 130, 255},
	}
	nightInk = ink{
		text: color.NRGBA{232, 236, 240, 255}, plate: color.NRGBA{30, 35, 41, 225}, faint: color.NRGBA{26, 30, 36, 150}, soft: color.NRGBA{178, 188, 200, 255},
		line: color.NRGBA{200, 212, 224, 220}, handle: color.NRGBA{120, 176, 230, 255}, ring: color.NRGBA{16, 20, 26, 255},
		active: color.NRGBA{255, 160, 64, 255}, touch: color.NRGBA{255, 160, 64, 255}, gauged: color.NRGBA{196, 166, 232, 255},
	}
)

// inkOf are a state's.
func inkOf(s *State) *ink {
	if s.Dark {
		return &nightInk
	}
	return &dayInk
}

// marks keeps what the overlay is made of between pictures.
type marks struct {
	trueLine []mgl64.Vec3
	compass  [4]mgl64.Vec3 // port, starboard, fore, aft
	outline  outlines
	strokes  [2][2]mgl64.Vec3 // of a tape's ends
	axis     [2]mgl64.Vec3    // the line something turns about
	turns    []mgl64.Vec3     // the arrows round nuts, point by point
	pointers []mgl64.Vec3     // the arrows that say which way, point by point
}

// prepare places the marks that never move.
func (k *marks) prepare(m *Model) {
	d := m.dims
	k.trueLine = []mgl64.Vec3{{0.8 * d.faceRadius}, {-m.hull.Shaft.LengthMM - 60}}
	wide := d.bottom.halfBeam
	level := d.fromE.Apply(mgl64.Vec3{0, 0, d.bedTop()}).Dot(d.up)
	aft, fore := mgl64.Vec3{-m.hull.Shaft.LengthMM - 0.06*m.hull.Shaft.LengthMM - 60}, d.fromE.Apply(mgl64.Vec3{d.foreEnd() + 0.42*d.engineLength})
	beside := mgl64.Vec3{-0.16 * m.hull.Shaft.LengthMM}.Dot(d.ahead)
	if d.backward {
		// Abaft the engine, which stands over the shaft.
		beside = d.fromE.Apply(mgl64.Vec3{d.boxEnd - d.engineLength - 200}).Dot(d.ahead)
	}
	k.compass = [4]mgl64.Vec3{
		d.toS(beside, wide, level), d.toS(beside, -wide, level),
		d.toS(fore.Dot(d.ahead), 0, level), aft,
	}
}

// mark fills the overlay, over its old memory.
func (m *Model) mark(s *State, v *Movement, n float64, eye mgl64.Vec3, o *render.Overlay) {
	o.Lines, o.Arrows, o.Dots, o.Labels = o.Lines[:0], o.Arrows[:0], o.Dots[:0], o.Labels[:0]
	c := inkOf(s)
	m.markTape(s, c, eye, o) // other words give way to its
	m.markAxis(s, c, o)
	m.markSpot(s, c, o)
	m.markPointers(s, c, o)
	if s.Show&ShowTrueLine != 0 {
		o.Lines = append(o.Lines, render.Line{Points: m.marks.trueLine, Width: 1.4, Dash: 9, Gap: 6, Colour: c.line, Behind: render.HideBehind})
	}
	m.markGauged(s, n, c.gauged, o)
	if s.Show&ShowHandles != 0 {
		m.markHandles(s, c, o)
	}
	m.markTurns(s, eye, c, o)
	if s.Show&ShowNames != 0 {
		m.markNames(s, c, o)
	}
	if s.Show&ShowTouches != 0 {
		m.markTouches(s, v, n, c, o)
	}
	// Directions give way to all other words.
	if s.Show&ShowDirections != 0 {
		m.markDirections(s, c, o)
	}
}

func (m *Model) markDirections(s *State, c *ink, o *render.Overlay) {
	w := s.Words
	if w.Port == "" {
		w = english
	}
	for i, text := range [...]string{w.Port, w.Starboard, w.Fore, w.Aft} {
		o.Labels = append(o.Labels, render.Label{At: m.marks.compass[i], Text: text, Font: s.Font,
			Pivot: [2]float32{0.5, 0.5}, Colour: c.soft, Plate: c.faint, Behind: render.FaintBehind, Keep: true, Yield: true})
	}
}

// behind says what becomes of handles and names behind solids: shown in views
// of the whole, left out where one has gone near to something else.
func (m *Model) behind(s *State) render.Behind {
	if s.View.DistanceMM < nearView*m.dims.plantLength() {
		return render.HideBehind
	}
	return render.ShowBehind
}

// nearView is a view nearer than so many lengths of engine and gearbox.
const nearView = 1.4

func (m *Model) markHandles(s *State, c *ink, o *render.Overlay) {
	behind := m.behind(s)
	for _, h := range m.posed.handles {
		colour, width := c.handle, float32(3)
		if h.ID == s.Active {
			colour, width = c.active, 5
		}
		from, to := h.DragArrow()
		o.Arrows = append(o.Arrows, render.Arrow{From: from, To: to, Width: width, Head: 4 * width, BothEnds: true, Colour: colour, Behind: behind})
		o.Dots = append(o.Dots, render.Dot{At: h.At, Radius: 3 + width, Fill: colour, Ring: c.ring, Width: 1.5, Behind: behind})
	}
}

// nameAngle is how far apart two mounts must be seen for both their names to
// find room: about a hundred pixels of a usual picture. Nearer together only the
// one in the hand is named.
const nameAngle = 0.065

func (m *Model) markNames(s *State, c *ink, o *render.Overlay) {
	crowded := m.dims.mountSpacing < nameAngle*s.View.DistanceMM
	for i := range m.hull.Mounts {
		text, turn := m.hull.Mounts[i].Name, s.turnOf(i)
		if s.Words.Part != nil {
			text = s.Words.Part(text)
		}
		if turn != nil {
			text = turn.Text
		} else if crowded && (s.Active == 0 || s.Active.Mount() != i) {
			continue
		}
		l := render.Label{Text: text, Font: s.Font, Pivot: [2]float32{0.5, 1},
			Colour: c.text, Plate: c.plate, Behind: m.behind(s), Keep: turn != nil, Yield: true}
		if s.Show&ShowHandles != 0 {
			_, l.At = m.posed.handles[2*i].DragArrow()
			l.Offset = [2]float32{0, -6}
		} else { // a line leads to the stud
			l.At, l.Leader = m.posed.engine.Apply(m.dims.mounts[i].gripS), c.soft
			l.Offset = [2]float32{0, -26}
		}
		o.Labels = append(o.Labels, l)
	}
}

// markTouches rings the places where the shaft touches, with the caller's words.
func (m *Model) markTouches(s *State, v *Movement, n float64, c *ink, o *render.Overlay) {
	for _, t := range s.Touches {
		at, ok := m.touchAt(v, t.Bearing, n)
		if !ok {
			continue
		}
		o.Dots = append(o.Dots, render.Dot{At: at, Radius: 7, Ring: c.touch, Width: 2.5})
		o.Labels = append(o.Labels, render.Label{At: at, Text: t.Text, Font: s.Font, Offset: [2]float32{18, 34},
			Colour: c.text, Plate: c.plate, Leader: c.touch, Keep: true, Yield: true})
	}
}

// touchAt is the place of the shaft's skin that is pressed: on the side the
// force comes from, at the end where the shaft has gone farther that way.
func (m *Model) touchAt(v *Movement, bearing int, n float64) (mgl64.Vec3, bool) {
	force, x, half := v.LogForceN, m.hull.Log.AtMM, m.hull.Log.LengthMM/2
	if bearing != Log {
		if bearing < 0 || bearing >= len(m.hull.Bearings) || bearing >= len(v.BearingForceN) {
			return mgl64.Vec3{}, false
		}
		b := &m.hull.Bearings[bearing]
		force, x, half = v.BearingForceN[bearing], b.AtMM, b.LengthMM/2
	}
	f := math.Hypot(force[0], force[1])
	if f == 0 {
		return mgl64.Vec3{}, false
	}
	side := [2]float64{-force[0] / f, -force[1] / f}
	reach := func(x float64) float64 {
		s := v.section(m, x)
		return s.Y*side[0] + s.Z*side[1]
	}
	at := x - half
	if reach(x+half) > reach(at) {
		at = x + half
	}
	r := m.hull.Shaft.DiameterMM / 2
	return m.onShaft(v, at, n).Apply(mgl64.Vec3{at, r * side[0], r * side[1]}), true
}
