package scene

// This file holds the model: the pieces of one hull, each with its mesh, the
// body it belongs to and its paint.

import (
	"aligner/hulls"
	"aligner/scene/render"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// Model is a hull ready to be drawn. Pose bends some of its meshes in place, so
// one model serves one picture at a time.
type Model struct {
	hull     hulls.Hull
	dims     *dims
	pieces   []piece
	stations []float64 // x at which the shaft's movement is wanted, aft first
	low      mgl64.Vec3
	high     mgl64.Vec3
	marks    marks
	ghosts   []ghostPiece
	sky      Occlusion
	posed    posed
}

// body says how a piece moves; see the package comment.
type body uint8

const (
	fixed body = iota
	engineBody
	couplingBody  // the shaft's front end
	propellerBody // the shaft at the propeller
	boxBody       // the shaft at the stuffing box
	shaftBody     // bent
	hoseBody      // bent
	mountBase
	mountStud
	mountNut
	mountRubber // bent
	mountShims
	mountThread // bent
	boreBody    // bent by the exaggeration alone
	legBody     // a strut's leg, pushed back by its bore
)

// piece is one mesh of the model.
type piece struct {
	kind  Kind
	body  body
	index int // of the mount or bearing
	paint paint
	solid *solid.Solid
	mesh  *render.Mesh
	when  when
	low   mgl64.Vec3 // bounds at rest
	high  mgl64.Vec3
	rest  []mgl64.Vec3 // positions at rest, for bodies that bend
	face  []mgl64.Vec3 // normals at rest
	at    []int        // station of each vertex, for the shaft
}

// when says in which states a piece is shown.
type when uint8

const (
	always    when = 0
	dryOnly   when = 1 << iota // stands
	wetOnly                    // water
	boltedIn                   // coupling bolts
	hullShell                  // the hull itself
)

// NewModel builds the solids of a hull that has been found valid.
func NewModel(h hulls.Hull) *Model {
	m := &Model{hull: h}
	m.dims = newDims(&m.hull)
	m.build()
	m.finish()
	return m
}

// build adds every piece.
func (m *Model) build() {
	d := m.dims
	m.add(engineParts(d)...)
	m.add(gearboxParts(d)...)
	m.add(couplingParts(d)...)
	for i := range m.hull.Mounts {
		m.add(mountParts(d, i)...)
	}
	m.add(shaftParts(d)...)
	m.add(logParts(d)...)
	for i := range m.hull.Bearings {
		m.add(bearingParts(d, i)...)
	}
	m.add(propellerParts(d)...)
	m.add(bedParts(d)...)
	m.add(hullParts(d)...)
	m.add(standParts(d)...)
}

func (m *Model) add(parts ...piece) { m.pieces = append(m.pieces, parts...) }

// finish makes the meshes, and notes what the bending ones rest at.
func (m *Model) finish() {
	inside := solid.Solid{}
	for i := range m.pieces {
		p := &m.pieces[i]
		p.mesh = p.solid.Mesh()
		p.low, p.high = p.solid.Bounds()
		switch p.body {
		case shaftBody, hoseBody, mountRubber, mountThread, boreBody:
			p.rest = make([]mgl64.Vec3, len(p.mesh.Positions))
			p.face = make([]mgl64.Vec3, len(p.mesh.Positions))
			for k := range p.rest {
				p.rest[k] = double(p.mesh.Positions[k])
				p.face[k] = double(p.mesh.Normals[k])
			}
		}
		if p.when == always {
			inside.Points = append(inside.Points, p.solid.Points...)
		}
	}
	m.low, m.high = inside.Bounds()
	m.placeStations()
	m.raiseGhosts()
	m.marks.prepare(m)
}

// Hull is the hull drawn.
func (m *Model) Hull() *hulls.Hull { return &m.hull }

// Up is the world's up in S.
func (m *Model) Up() mgl64.Vec3 { return m.dims.up }

// Triangles is how many the model has, all pieces shown.
func (m *Model) Triangles() int {
	n := 0
	for i := range m.pieces {
		n += len(m.pieces[i].mesh.Triangles)
	}
	return n
}
