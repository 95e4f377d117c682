package why

// This file takes one move apart.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"

	"aligner/hulls"
	"aligner/kinematics"
)

// Why is one nut turned or one end slid, taken apart.
type Why struct {
	Mounts []int   // whose nut was turned, or who was slid
	Slide  bool    // else a nut
	Steps  float64 // flats or shims, + up; of a slide mm, + to port
	LiftMM float64 // of a nut: how far its seat was lifted

	Line   Line
	RiseMM []float64 // of each mount's top, along its adjuster
	FaceMM [2]float64
	// What the move changes of the gap, [A, B].
	Tilt, Stick, Bend, Rest, Total [2]float64
	// FirstBearingMM is how far aft of the face the first bearing is, about which a
	// straight stick would swing.
	FirstBearingMM float64
	// Before and After are the whole model's answers.
	Before, After kinematics.Result
}

// Line is what the engine tips about: through At along Along, in S. Turned is by how
// much, in rad; 0: it only shifted.
type Line struct {
	At, Along [3]float64
	Turned    float64
	// On are the mounts that stand on it: they rise by less than a part of what
	// the most lifted does.
	On []int
}

// MiddleMM is how far forward of the face the line crosses the boat's middle plane,
// or where it never does, how far forward it stands.
func (l *Line) MiddleMM() float64 {
	const steep = 0.05
	if math.Abs(l.Along[1]) < steep {
		return l.At[0]
	}
	return l.At[0] - l.At[1]*l.Along[0]/l.Along[1]
}

// onLine is the part of the largest rise under which a mount stands on the line.
const onLine = 0.12

// Move is what is done: steps of one nut, or mm of a slide of some mounts together.
type Move struct {
	Mounts []int
	Slide  bool
	Steps  float64
}

// Of takes a move apart, done on a boat in a state (its lifts and slides may be nil).
// It prepares the hull anew: the drive line of a picture is not disturbed.
func Of(h *hulls.Hull, from kinematics.State, m Move) (*Why, error) {
	d, err := kinematics.Prepare(*h)
	if err != nil {
		return nil, err
	}
	return With(d, h, from, m)
}

// With is Of on a prepared hull.
func With(d *kinematics.DriveLine, h *hulls.Hull, from kinematics.State, m Move) (*Why, error) {
	w := &Why{Mounts: m.Mounts, Slide: m.Slide, Steps: m.Steps, FirstBearingMM: firstBearingMM(h)}
	before, after := filled(from, len(h.Mounts)), filled(from, len(h.Mounts))
	for _, i := range m.Mounts {
		if m.Slide {
			after.SlideMM[i] += m.Steps
		} else {
			w.LiftMM = m.Steps * h.Mounts[i].LiftPerStepMM()
			after.LiftMM[i] += w.LiftMM
		}
	}
	if err := d.Solve(&before, &w.Before); err != nil {
		return nil, err
	}
	w.Before = w.Before.Clone()
	if err := d.Solve(&after, &w.After); err != nil {
		return nil, err
	}
	w.parts(h)
	w.line(h)
	return w, nil
}

// filled has room for every mount.
func filled(s kinematics.State, n int) kinematics.State {
	room := func(mm []float64) []float64 {
		return append(append([]float64(nil), mm...), make([]float64, n-len(mm))...)
	}
	s.LiftMM, s.SlideMM = room(s.LiftMM), room(s.SlideMM)
	return s
}

func less(a, b [2]float64) [2]float64 { return [2]float64{a[0] - b[0], a[1] - b[1]} }

// parts are the differences of the two answers.
func (w *Why) parts(h *hulls.Hull) {
	b, a := &w.Before, &w.After
	w.Total = less([2]float64{a.Gap.CosMM, a.Gap.SinMM}, [2]float64{b.Gap.CosMM, b.Gap.SinMM})
	w.Tilt = less(a.Parts.Tilt, b.Parts.Tilt)
	w.FaceMM = [2]float64{a.TranslationMM[1] - b.TranslationMM[1], a.TranslationMM[2] - b.TranslationMM[2]}
	swing := less(a.Parts.Swing, b.Parts.Swing)
	// The gap of a slope is radius times [dz/dx, -dy/dx].
	radius := h.Coupling.OuterDiameterMM / 2
	end := less(a.FrontEndMM, b.FrontEndMM)
	w.Stick = [2]float64{radius * end[1] / w.FirstBearingMM, -radius * end[0] / w.FirstBearingMM}
	w.Bend = less(swing, w.Stick)
	w.Rest = less(less(w.Total, w.Tilt), swing)
}

// firstBearingMM is how far aft of the face the foremost bearing's middle is.
func firstBearingMM(h *hulls.Hull) float64 {
	at := math.Inf(-1)
	for _, b := range h.Bearings {
		at = max(at, b.AtMM)
	}
	return -at
}

// line finds what the engine tips about, and how each mount rises.
func (w *Why) line(h *hulls.Hull) {
	b, a := &w.Before, &w.After
	t := vec(a.TranslationMM).Sub(vec(b.TranslationMM))
	turn := vec(a.RotationRad).Sub(vec(b.RotationRad))
	w.Line.Turned = turn.Len()
	if w.Line.Turned > 0 {
		w.Line.Along = turn.Mul(1 / w.Line.Turned)
		w.Line.At = turn.Cross(t).Mul(1 / turn.Dot(turn))
	}
	sin, cos := math.Sincos(h.Engine.DownAngleDeg * math.Pi / 180)
	xE, yE, zE := mgl64.Vec3{cos, 0, -sin}, mgl64.Vec3{0, 1, 0}, mgl64.Vec3{sin, 0, cos}
	most := 0.0
	for i := range h.Mounts {
		at := h.Mounts[i].AtMM
		p := xE.Mul(at[0]).Add(yE.Mul(at[1])).Add(zE.Mul(at[2]))
		rise := t.Add(turn.Cross(p)).Dot(zE)
		w.RiseMM = append(w.RiseMM, rise)
		most = max(most, math.Abs(rise))
	}
	for i, rise := range w.RiseMM {
		if math.Abs(rise) < onLine*most {
			w.Line.On = append(w.Line.On, i)
		}
	}
}

func vec(v [3]float64) mgl64.Vec3 { return mgl64.Vec3{v[0], v[1], v[2]} }

// AcrossMM is a part as the difference between an hour and the one opposite, open
// positive.
func AcrossMM(part [2]float64, hour int) float64 {
	sin, cos := math.Sincos(float64(hour) * math.Pi / 6)
	return 2 * (part[0]*cos + part[1]*sin)
}
