package scene

// This file is the shape of the boat's bottom. The hull file says nothing of
// it but where the shaft goes through (the log), how steep the shaft lies and
// the kind of section; the bottom is drawn so that engine and bed stand inside
// and the propeller turns outside.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// bottom is the boat's bottom in the world's frame: h ahead on the level, y to
// port, v up, with the face centre as origin. Its keel line runs through the
// log, down going forward and up going aft, each way bending level:
//
//	v = v0 - fore (1 - e^(-slope (h-h0) / fore))   h > h0
//	v = v0 + aft (1 - e^(-slope (h0-h) / aft))     h < h0
type bottom struct {
	h0, v0, slope, fore, aft float64
	section                  string
	halfBeam                 float64
}

func newBottom(d *dims) bottom {
	b := bottom{section: d.hull.Look.HullSection, halfBeam: d.bedHalfWidth() + 230*math.Max(d.size, 0.7)}
	log := mgl64.Vec3{d.hull.Log.AtMM, d.hull.Log.OffsetMM[0], d.hull.Log.OffsetMM[1]}
	b.h0, b.v0 = log.Dot(d.ahead), log.Dot(d.up)
	b.slope, b.fore, b.aft = 0.04, 40, 20
	under := d.mustClear()
	for _, p := range under {
		if away, depth := p[0]-b.h0, b.v0-p[2]+b.rise(p[1]); away > 0 {
			b.slope = max(b.slope, 1.3*depth/away)
		}
	}
	prop := mgl64.Vec3{d.hull.Propeller.AtMM}
	away, need := b.h0-prop.Dot(d.ahead), prop.Dot(d.up)+0.6*d.hull.Propeller.DiameterMM-b.v0
	if away > 0 {
		b.slope = max(b.slope, 1.3*need/away)
	}
	for range 60 {
		short := false
		for _, p := range under {
			short = short || p[0] > b.h0 && b.keel(p[0])+b.rise(p[1]) > p[2]
		}
		if short {
			b.fore *= 1.1
		}
		if b.keel(b.h0-away) < b.v0+need {
			b.aft *= 1.1
		}
	}
	return b
}

// mustClear are the points (in h, y, v) that stand inside the boat, with room.
func (d *dims) mustClear() []mgl64.Vec3 {
	s := d.size
	inE := []mgl64.Vec3{}
	for i := range d.hull.Mounts {
		p := d.hull.Mounts[i].AtMM
		inE = append(inE, mgl64.Vec3{p[0], p[1], d.mounts[i].bed - 45*s})
	}
	pan := d.crankZ - d.panDepth() - 30
	inE = append(inE, mgl64.Vec3{60, 0, -105*s - 15}, mgl64.Vec3{d.boxEnd + 0.1*d.engineLength, 90 * s, pan})
	if d.backward {
		inE = inE[:len(inE)-1]
	}
	var out []mgl64.Vec3
	for _, p := range inE {
		q := d.fromE.Apply(p)
		out = append(out, mgl64.Vec3{q.Dot(d.ahead), q[1], q.Dot(d.up)})
	}
	return append(out, mgl64.Vec3{0, 0, -d.faceRadius - 25})
}

// keel is the height of the bottom amidships.
func (b *bottom) keel(h float64) float64 {
	if h > b.h0 {
		return b.v0 - b.fore*(1-math.Exp(-b.slope*(h-b.h0)/b.fore))
	}
	return b.v0 + b.aft*(1-math.Exp(-b.slope*(b.h0-h)/b.aft))
}

// rise is how much higher the bottom is at y than amidships.
func (b *bottom) rise(y float64) float64 {
	y = math.Abs(y)
	switch b.section {
	case "vee":
		return math.Tan(16*degree) * (math.Hypot(y, 25) - 25)
	case "flat":
		return math.Tan(3*degree) * (math.Hypot(y, 25) - 25)
	}
	r := 1.5 * b.halfBeam
	return r - math.Sqrt(max(r*r-y*y, 0))
}

// at is the bottom's height.
func (b *bottom) at(h, y float64) float64 { return b.keel(h) + b.rise(y) }

// toS takes h, y, v to S.
func (d *dims) toS(h, y, v float64) mgl64.Vec3 {
	p := d.ahead.Mul(h).Add(d.up.Mul(v))
	p[1] = y
	return p
}

// bottomOver is how far over the shaft line, square to it, the bottom is at x;
// negative inside the boat, where it is below.
func (d *dims) bottomOver(x float64) float64 {
	z := 0.0
	for range 30 {
		p := mgl64.Vec3{x, 0, z}
		z += 0.8 * (d.bottom.keel(p.Dot(d.ahead)) - p.Dot(d.up))
	}
	return z
}
