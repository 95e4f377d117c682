package scene

// This file moves the pieces that change their shape, point by point: shaft,
// hose, rubber and bores.

import (
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// bendShaft draws each section where its station is.
func (m *Model) bendShaft(p *piece, v *Movement, n float64) {
	back := n*v.AxialMM - m.apartMM(v)
	for i, x := range p.rest {
		s := &v.Shaft[p.at[i]]
		dy, dz := n*s.DY, n*s.DZ
		p.mesh.Positions[i] = single(mgl64.Vec3{
			x[0] + back - x[1]*dy - x[2]*dz,
			x[1] + n*s.Y,
			x[2] + n*s.Z,
		})
		f := p.face[i]
		p.mesh.Normals[i] = single(mgl64.Vec3{
			f[0] - dy*f[1] - dz*f[2],
			dy*f[0] + (1+dz*dz)*f[1] - dy*dz*f[2],
			dz*f[0] - dy*dz*f[1] + (1+dy*dy)*f[2],
		}.Normalize())
	}
	p.mesh.Touch()
}

// bendHose carries the hose's fore end with the stuffing box, its aft end stays
// on the log.
func (m *Model) bendHose(p *piece, v *Movement, n float64) {
	box := m.onShaft(v, m.hull.StuffingBox.AtMM, n)
	aft, fore := p.ends()
	for i, x := range p.rest {
		t := min(max((x[0]-aft)/(fore-aft), 0), 1)
		t = t * t * (3 - 2*t)
		p.mesh.Positions[i] = single(x.Add(box.Apply(x).Sub(x).Mul(t)))
	}
	renewNormals(p)
}

// ends are the least and largest x of a piece at rest.
func (p *piece) ends() (aft, fore float64) {
	aft, fore = math.Inf(1), math.Inf(-1)
	for _, x := range p.rest {
		aft, fore = min(aft, x[0]), max(fore, x[0])
	}
	return aft, fore
}

// bendRubber shears and squashes the rubber between base and stud. What is
// pressed together bulges.
func (m *Model) bendRubber(p *piece, v *Movement, n float64) {
	d := m.dims
	t := &d.mounts[p.index]
	along := d.alongStud()
	base := mgl64.Vec3{0, n * v.SlideMM[p.index], 0}
	stud := render.Translation(along.Mul(-n * v.LiftMM[p.index])).Mul(m.posed.engine)
	low := t.rubberLowS.Dot(along)
	top := t.rubberLowS.Add(along.Mul(t.rubberHeight))
	squash := min(max(base.Sub(stud.Apply(top).Sub(top)).Dot(along)/t.rubberHeight, -0.6), 0.6)
	for i, x := range p.rest {
		h := min(max((x.Dot(along)-low)/t.rubberHeight, 0), 1)
		up := stud.Apply(x).Sub(x)
		y := x.Add(base.Mul(1 - h)).Add(up.Mul(h))
		out := x.Sub(t.rubberLowS)
		out = out.Sub(along.Mul(out.Dot(along)))
		p.mesh.Positions[i] = single(y.Add(out.Mul(squash * 2 * h * (1 - h))))
	}
	renewNormals(p)
}

// drawThread draws the stud out between its collar and the nut, so that a lift
// is seen as more stud under the nut. Above the nut it goes with the engine.
func (m *Model) drawThread(p *piece, v *Movement, n float64) {
	d := m.dims
	t := &d.mounts[p.index]
	along := d.alongStud()
	down := along.Mul(-n * v.LiftMM[p.index])
	foot := t.rubberLowS.Dot(along) + t.hatTop - t.baseTop
	free := t.nutTop - t.nut - t.hatTop
	for i, x := range p.rest {
		h := min(max((x.Dot(along)-foot)/free, 0), 1)
		p.mesh.Positions[i] = single(m.posed.engine.Apply(x).Add(down.Mul(1 - h)))
	}
	renewNormals(p)
}

// openBore widens a bearing's bore by N times half its clearance and moves it
// by N times its offset.
func (m *Model) openBore(p *piece, n float64) {
	b := &m.hull.Bearings[p.index]
	grow := n * b.DiametralClearanceMM / 2
	for i, x := range p.rest {
		r := math.Hypot(x[1], x[2])
		k := 1.0
		if r > 0 {
			k = 1 + grow/r
		}
		p.mesh.Positions[i] = single(mgl64.Vec3{x[0], x[1]*k + n*b.OffsetMM[0], x[2]*k + n*b.OffsetMM[1]})
	}
	p.mesh.Touch()
}

// renewNormals works a bent mesh's normals out from its triangles. Vertices
// split at a crease stay split.
func renewNormals(p *piece) {
	m := p.mesh
	clear(m.Normals)
	for _, t := range m.Triangles {
		a, b, c := m.Positions[t[0]], m.Positions[t[1]], m.Positions[t[2]]
		f := b.Sub(a).Cross(c.Sub(a))
		for _, i := range t {
			m.Normals[i] = m.Normals[i].Add(f)
		}
	}
	for i, f := range m.Normals {
		if f.Len() > 0 {
			m.Normals[i] = f.Normalize()
		}
	}
	m.Touch()
}
