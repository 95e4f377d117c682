// This file holds the first stage: vertices of a part to pixels.

package render

// Pixel positions are kept in 1/256 pixel. Snapping vertices, not edges, is
// what makes neighbouring triangles share their edge exactly.
const (
	subpixelBits = 8
	subpixel     = 1 << subpixelBits
)

// guardPx is how far outside the picture centre a triangle may reach before it
// is clipped: edges stepped in 32.32 fixed point stay far from overflow.
const guardPx = 16384

// Where a vertex lies outside. A triangle with one of the first five bits
// common to its corners cannot be seen; one with outNear or outGuard at any
// corner must be clipped.
const (
	outLeft = 1 << iota
	outRight
	outTop
	outBottom
	outNear
	outGuard

	outHidden = outLeft | outRight | outTop | outBottom | outNear
	outClip   = outNear | outGuard
)

// vertex is a corner ready for triangle set-up. The attributes of solids are
// multiplied by the depth key in perspective: then they are affine over the
// picture, like the key itself.
type vertex struct {
	x, y    int32      // 1/256 pixel; meaningless with outClip
	out     uint32     // outLeft and so on
	_       uint32     // keeps key aligned
	key     float64    // depth key: 1 at Near, falling with distance
	normal  [3]float32 // unit, frame V
	openSky float32    // baked occlusion, 0 to 1
	levels  [3]float32 // what a solid's surface shows at this corner, 0 to 255
}

// partFrame is a part made ready for one picture.
type partFrame struct {
	index      int
	toView     [12]float32 // mesh to V
	normals    [9]float32  // normals from mesh to V, up to scale
	mirrored   bool
	vertexBase int
	triBase    int
	drawn      bool
	layer      int // 0 solid, else the back layer of its shell; front is one more
}

// ready fills in what depends on view and transform.
func (f *partFrame) ready(v *view, p *Part) {
	m := v.m.Mul(p.Transform)
	for i, e := range m {
		f.toView[i] = float32(e)
	}
	n, det := m.cofactors()
	f.mirrored = det < 0
	for i, e := range n {
		f.normals[i] = float32(e)
	}
}

// transform runs vertices lo to hi of a part through the view.
func (r *Renderer) transform(part, lo, hi int) {
	p, f, v := &r.parts[part], &r.frames[part], &r.view
	out := r.vertices[f.vertexBase+lo : f.vertexBase+hi]
	positions, normals := p.Mesh.Positions[lo:hi], p.Mesh.Normals[lo:hi]
	scale, centreX, centreY := float32(v.scale), float32(v.centreX), float32(v.centreY)
	m, n := f.toView, f.normals
	for i := range out {
		o, q, a := &out[i], &positions[i], &normals[i]
		x := m[0]*q[0] + m[1]*q[1] + m[2]*q[2] + m[3]
		y := m[4]*q[0] + m[5]*q[1] + m[6]*q[2] + m[7]
		z := m[8]*q[0] + m[9]*q[1] + m[10]*q[2] + m[11]
		nx := n[0]*a[0] + n[1]*a[1] + n[2]*a[2]
		ny := n[3]*a[0] + n[4]*a[1] + n[5]*a[2]
		nz := n[6]*a[0] + n[7]*a[1] + n[8]*a[2]
		inv := 1 / sqrt32(nx*nx+ny*ny+nz*nz+1e-30)
		o.normal[0], o.normal[1], o.normal[2] = nx*inv, ny*inv, nz*inv
		o.openSky = 1
		var px, py float32
		if v.perspective {
			if !(-z >= float32(v.near)) {
				o.out = outNear | v.sides(x, y, z)
				continue
			}
			invZ := -1 / z
			px, py = centreX+scale*x*invZ, centreY-scale*y*invZ
			o.key = v.near / -float64(z)
		} else {
			px, py = centreX+scale*x, centreY-scale*y
			o.key = 1 + (float64(z)+v.near)*v.depthPerUnit
			if !(o.key <= 1) || o.key <= 0 {
				o.out = outNear | v.sides(x, y, z)
				continue
			}
		}
		o.place(px, py, v)
	}
	if p.Occlusion != nil {
		for i, a := range p.Occlusion[lo:hi] {
			out[i].openSky = a
		}
	}
	if f.layer == layerSolid {
		for i := range out {
			out[i].illuminate(&r.lamp, &r.materials[part])
		}
	}
}

// illuminate works out what shows at a solid's vertex, seen from its front.
func (o *vertex) illuminate(l *lamp, m *material) {
	r, g, b := l.solid(m, o.normal[0], o.normal[1], o.normal[2], o.openSky)
	o.levels[0], o.levels[1], o.levels[2] = toneLevel(r), toneLevel(g), toneLevel(b)
}

// place snaps a projected vertex to the pixel grid and notes where it lies. A
// position that is not a number counts as outside the guard band and ends in
// the clipper, which drops it.
func (o *vertex) place(px, py float32, v *view) {
	dx, dy := px-float32(v.centreX), py-float32(v.centreY)
	if !(dx > -guardPx && dx < guardPx && dy > -guardPx && dy < guardPx) {
		o.out = outGuard
		if px < 0 {
			o.out |= outLeft
		}
		if px > float32(v.width) {
			o.out |= outRight
		}
		if py < 0 {
			o.out |= outTop
		}
		if py > float32(v.height) {
			o.out |= outBottom
		}
		return
	}
	o.x, o.y = int32(px*subpixel+0.5), int32(py*subpixel+0.5)
	o.out = 0
	if o.x < 0 {
		o.out = outLeft
	} else if o.x > int32(v.width)<<subpixelBits {
		o.out = outRight
	}
	if o.y < 0 {
		o.out |= outTop
	} else if o.y > int32(v.height)<<subpixelBits {
		o.out |= outBottom
	}
}

// sides tells on which sides of the picture a point before Near lies, without
// dividing: it compares with the four planes through the eye and the edges.
func (v *view) sides(x, y, z float32) (out uint32) {
	sx, sy := float32(v.scale)*x, -float32(v.scale)*y
	reach := -z
	if !v.perspective {
		reach = 1
	}
	if sx < -float32(v.centreX)*reach {
		out |= outLeft
	}
	if sx > float32(v.centreX)*reach {
		out |= outRight
	}
	if sy < -float32(v.centreY)*reach {
		out |= outTop
	}
	if sy > float32(v.centreY)*reach {
		out |= outBottom
	}
	return out
}
