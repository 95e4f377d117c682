package scene

// This file poses the model: from a state to everything a renderer needs.

import (
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl32"
	"github.com/go-gl/mathgl/mgl64"
)

// Show chooses what is drawn beside the drive line.
type Show uint16

// What can be shown; add them up.
const (
	ShowHull       Show = 1 << iota // the translucent hull, water or stands
	ShowHandles                     // what to take a mount by
	ShowNames                       // the mounts' names
	ShowDirections                  // PORT, STBD, FORE, AFT
	ShowTrueLine                    // the true shaft line, dashed
	ShowTouches                     // where the shaft touches
	ShowBed                         // bed rails

	ShowUsual = ShowHull | ShowHandles | ShowNames | ShowDirections | ShowTrueLine | ShowTouches | ShowBed
)

// State is what a picture shows.
type State struct {
	Now *Movement // nil: as drawn
	// Planned is laid over it as a ghost, Gauged as an outline; nil: not.
	Planned, Gauged *Movement
	Exaggeration    float64 // N; 0: 1
	Afloat          bool
	Show            Show
	Dark            bool
	View            View
	// Font is for the marks; nil: no text.
	Font *render.Font
	// Active is the handle in the hand, with an arrow; zero: none.
	Active  HandleID
	Touches []Touch
	Tape    *Tape  // nil: none laid
	Axis    *Axis  // nil: none drawn
	Spot    *Spot  // nil: none marked
	Words   Words  // zero: English
	Turns   []Turn // what is to be done at the mounts; nil: nothing
	// Pointers say which way things went; nil: none.
	Pointers []Pointer
}

// posed is what the last Pose left for handles and fitted views.
type posed struct {
	n       float64
	now     *Movement
	engine  render.Affine
	half    render.Affine // the shaft half of the coupling
	handles []Handle
	tape    *Tape
	boreN   float64 // exaggeration the bores were bent for
	drawn   Movement
}

func (p *posed) exaggeration() float64 { return max(p.n, 1) }

// Pose fills a scene. Warm, it allocates nothing: give it the same scene again.
// It leaves Light alone if set, and any parts the caller appended after Parts
// of the last Pose are dropped.
func (m *Model) Pose(s *State, out *render.Scene) {
	n := s.Exaggeration
	if !(n > 0) {
		n = 1
	}
	v := m.movement(s.Now)
	m.posed.n, m.posed.now = n, v
	m.posed.engine = engineMap(v.TranslationMM, v.RotationRad, n)
	m.posed.half = m.halfMap(v, n)
	if total := len(m.pieces) + len(m.ghosts); len(out.Parts) != total {
		out.Parts = make([]render.Part, total)
	}
	for i := range m.pieces {
		m.part(&m.pieces[i], v, n, s, &out.Parts[i])
		if m.sky != nil {
			out.Parts[i].Occlusion = m.sky[i]
		}
	}
	m.posed.boreN = n
	m.ghostParts(s, n, out.Parts[len(m.pieces):])
	m.surroundings(s, out)
	m.placeHandles(v, n, out.Camera.Eye)
	m.mark(s, v, n, out.Camera.Eye, &out.Overlay)
}

// movement is what is to be shown, or the drawn state.
func (m *Model) movement(v *Movement) *Movement {
	if m.shown(v) {
		return v
	}
	d := &m.posed.drawn
	if len(d.Shaft) != len(m.stations) {
		d.Shaft = make([]Section, len(m.stations))
		d.LiftMM = make([]float64, len(m.hull.Mounts))
		d.SlideMM = make([]float64, len(m.hull.Mounts))
	}
	return d
}

// part fills one part of the scene.
func (m *Model) part(p *piece, v *Movement, n float64, s *State, out *render.Part) {
	c := coats[p.paint]
	*out = render.Part{
		Mesh: p.mesh, Colour: c.colour, Gloss: c.gloss,
		ID: Pointed{p.kind, p.index}.id(), Moving: p.body != fixed, Hidden: p.hidden(s, v, m.inTheWay(p, s)),
	}
	if p.paint == water {
		out.Shell = 1
	}
	if p.kind == LogKind && m.outOfLog(v, n) {
		out.Colour.A, out.Shell = glassAlpha, 1
	}
	if out.Hidden {
		return
	}
	out.Transform = m.transform(p, v, n)
	switch p.body {
	case shaftBody:
		m.bendShaft(p, v, n)
	case hoseBody:
		m.bendHose(p, v, n)
	case mountRubber:
		m.bendRubber(p, v, n)
	case mountThread:
		m.drawThread(p, v, n)
	case boreBody:
		if m.posed.boreN != n {
			m.openBore(p, n)
		}
	}
}

// hidden tells what the state does not show. inTheWay is asked of what may be
// left out of a close view.
func (p *piece) hidden(s *State, v *Movement, inTheWay bool) bool {
	switch {
	case p.when == dryOnly:
		return inTheWay || s.Afloat || s.Show&ShowHull == 0
	case p.when == wetOnly:
		return inTheWay || !s.Afloat || s.Show&ShowHull == 0
	case p.when == hullShell:
		return inTheWay || s.Show&ShowHull == 0
	case p.when == boltedIn:
		return v.Held != "bolted" && v.Held != ""
	case p.kind == BedKind:
		return s.Show&ShowBed == 0 || inTheWay
	}
	return false
}

// surroundings are light, background and camera.
func (m *Model) surroundings(s *State, out *render.Scene) {
	if out.Light == (render.Light{}) {
		out.Light = render.DefaultLight()
	}
	out.Background, out.Outline = render.DaylightBackground, render.DaylightOutline
	if s.Dark {
		out.Background, out.Outline = render.NightBackground, render.NightOutline
	}
	// Lines round what is planned, and round the log where it is glass.
	out.Outline.Ghost = 0.7
	out.Camera = s.View.Camera(m.dims.up, m.dims.ahead)
}

// transform is the map of a body that keeps its shape.
func (m *Model) transform(p *piece, v *Movement, n float64) render.Affine {
	d := m.dims
	switch p.body {
	case engineBody:
		return m.posed.engine
	case couplingBody:
		return m.posed.half
	case propellerBody:
		return m.onShaft(v, m.hull.Propeller.AtMM, n)
	case boxBody:
		return m.onShaft(v, m.hull.StuffingBox.AtMM, n)
	case mountBase, mountStud, mountNut, mountShims:
		return m.mountMap(p, v, n)
	case legBody:
		return d.legMap(p.index, n)
	}
	return render.Identity
}

// onShaft is the map of what rides on the shaft at x, back with it while it is
// drawn apart.
func (m *Model) onShaft(v *Movement, x, n float64) render.Affine {
	return render.Translation(mgl64.Vec3{-m.apartMM(v)}).Mul(shaftMap(v.section(m, x), x, v.AxialMM, n))
}

// mountMap is the map of a mount's base, stud, nut or shims.
func (m *Model) mountMap(p *piece, v *Movement, n float64) render.Affine {
	d := m.dims
	mount := &m.hull.Mounts[p.index]
	lift, slide := v.LiftMM[p.index], v.SlideMM[p.index]
	along := d.alongStud()
	switch p.body {
	case mountBase:
		return render.Translation(mgl64.Vec3{0, n * slide, 0})
	case mountStud:
		return render.Translation(along.Mul(-n * lift)).Mul(m.posed.engine)
	case mountShims:
		// From its seat on the base, the stack grows by the lift.
		t := &d.mounts[p.index]
		k := n * lift / t.shimHeight
		foot := d.fromE.Apply(mgl64.Vec3{mount.AtMM[0], mount.AtMM[1], t.shimLow})
		a := stretch(foot, along, k)
		a[7] += n * slide
		return a
	}
	turn := 0.0
	if mount.ThreadPitchMM > 0 {
		turn = lift / mount.ThreadPitchMM
	}
	return m.posed.engine.Mul(turnAbout(d.fromE.Apply(mgl64.Vec3(mount.AtMM)), along, turn))
}

// alongStud is z_E in S.
func (d *dims) alongStud() mgl64.Vec3 {
	return mgl64.Vec3{d.fromE[2], d.fromE[6], d.fromE[10]}
}

// stretch draws points beyond foot further along a direction by the share k.
func stretch(foot, along mgl64.Vec3, k float64) render.Affine {
	a := render.Identity
	for i := range 3 {
		for j := range 3 {
			a[4*i+j] += k * along[i] * along[j]
		}
		a[4*i+3] = -k * along[i] * foot.Dot(along)
	}
	return a
}

// turnAbout turns by whole and part turns about an axis, anticlockwise seen
// against it: a nut on a right-hand thread climbs so.
func turnAbout(at, axis mgl64.Vec3, turns float64) render.Affine {
	q := mgl64.QuatRotate(turns*2*3.141592653589793, axis)
	a := render.Linear(q.Mat4().Mat3())
	moved := a.Apply(at)
	for i := range 3 {
		a[4*i+3] = at[i] - moved[i]
	}
	return a
}

func double(v mgl32.Vec3) mgl64.Vec3 {
	return mgl64.Vec3{float64(v[0]), float64(v[1]), float64(v[2])}
}

func single(v mgl64.Vec3) mgl32.Vec3 {
	return mgl32.Vec3{float32(v[0]), float32(v[1]), float32(v[2])}
}
