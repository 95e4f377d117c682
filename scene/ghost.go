package scene

// This file draws two other states over the present one: what is planned as a
// ghost, what was gauged as an outline.

import (
	"image/color"
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// ghostPiece is a piece drawn a second time, translucent. A bent one has its
// own mesh.
type ghostPiece struct {
	of   int
	bent piece
}

// raiseGhosts notes the pieces whose planned place is shown: what moves with
// the engine, the shaft and what is on it.
func (m *Model) raiseGhosts() {
	for i := range m.pieces {
		p := &m.pieces[i]
		if p.when != always {
			continue
		}
		switch p.body {
		case engineBody, couplingBody, propellerBody:
			m.ghosts = append(m.ghosts, ghostPiece{of: i})
		case shaftBody:
			g := ghostPiece{of: i, bent: *p}
			g.bent.mesh = &render.Mesh{Triangles: p.mesh.Triangles}
			g.bent.mesh.Positions = append(g.bent.mesh.Positions, p.mesh.Positions...)
			g.bent.mesh.Normals = append(g.bent.mesh.Normals, p.mesh.Normals...)
			m.ghosts = append(m.ghosts, g)
		}
	}
}

// ghostParts fills the parts after the solid ones.
func (m *Model) ghostParts(s *State, n float64, out []render.Part) {
	shown := m.shown(s.Planned)
	for k := range m.ghosts {
		g := &m.ghosts[k]
		p := &m.pieces[g.of]
		c := coats[ghost]
		out[k] = render.Part{Mesh: p.mesh, Colour: c.colour, Gloss: c.gloss, Shell: 1, Moving: true, Hidden: !shown}
		if g.bent.mesh != nil {
			out[k].Mesh = g.bent.mesh
		}
		if !shown {
			continue
		}
		v := s.Planned
		switch p.body {
		case engineBody:
			out[k].Transform = engineMap(v.TranslationMM, v.RotationRad, n)
		case couplingBody:
			out[k].Transform = m.halfMap(v, n)
		case propellerBody:
			out[k].Transform = m.onShaft(v, m.hull.Propeller.AtMM, n)
		case shaftBody:
			m.bendShaft(&g.bent, v, n)
		}
	}
}

// shown reports whether a movement is there and is one of this model.
func (m *Model) shown(v *Movement) bool {
	return v != nil && len(v.Shaft) == len(m.stations) && len(v.LiftMM) == len(m.hull.Mounts)
}

// outlinePoints round a rim drawn as a line.
const outlinePoints = 48

// outlines keeps the points of the outline between pictures.
type outlines struct {
	rims  [2][]mgl64.Vec3
	shaft []mgl64.Vec3
	feet  []mgl64.Vec3
}

// markGauged draws the gauged state: both faces' rims, the shaft's line, and a
// line from each mount's gauged foot to the present one.
func (m *Model) markGauged(s *State, n float64, colour color.NRGBA, o *render.Overlay) {
	if !m.shown(s.Gauged) {
		return
	}
	v, k := s.Gauged, &m.marks.outline
	engine, half := engineMap(v.TranslationMM, v.RotationRad, n), m.halfMap(v, n)
	r := m.dims.faceRadius
	for j, at := range [...]render.Affine{engine, half} {
		k.rims[j] = k.rims[j][:0]
		for i := range outlinePoints + 1 {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / outlinePoints)
			k.rims[j] = append(k.rims[j], at.Apply(mgl64.Vec3{0, r * sin, r * cos}))
		}
		o.Lines = append(o.Lines, render.Line{Points: k.rims[j], Width: 1.8, Colour: colour, Behind: render.FaintBehind})
	}
	k.shaft = k.shaft[:0]
	for i, x := range m.stations {
		q := &v.Shaft[i]
		k.shaft = append(k.shaft, mgl64.Vec3{x + n*v.AxialMM, n * q.Y, n * q.Z})
	}
	o.Lines = append(o.Lines, render.Line{Points: k.shaft, Width: 1.8, Colour: colour})
	k.feet = k.feet[:0]
	for i := range m.hull.Mounts {
		p := m.dims.fromE.Apply(mgl64.Vec3(m.hull.Mounts[i].AtMM))
		k.feet = append(k.feet, engine.Apply(p), m.posed.engine.Apply(p))
	}
	for i := range m.hull.Mounts {
		o.Lines = append(o.Lines, render.Line{Points: k.feet[2*i : 2*i+2], Width: 1.8, Colour: colour})
		o.Dots = append(o.Dots, render.Dot{At: k.feet[2*i], Radius: 5, Ring: colour, Width: 1.8})
	}
}
