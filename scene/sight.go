package scene

// This file keeps the line of sight free in close views: a rail of the bed or a
// stand between eye and target is left out, and the hull seen from the side that
// is not cut open.

import "github.com/go-gl/mathgl/mgl64"

// closeView is a view nearer than so many lengths of engine and gearbox.
const closeView = 1.6

// inTheWay reports whether a piece stands between eye and target of a close
// view.
func (m *Model) inTheWay(p *piece, s *State) bool {
	if p.kind == HullKind || p.kind == WaterKind {
		// The side that stands up is to starboard.
		return s.View.DistanceMM < nearView*m.dims.plantLength() && s.View.toEye(m.dims.up, m.dims.ahead)[1] < -0.1
	}
	if p.kind != BedKind && p.kind != StandKind || s.View.DistanceMM > closeView*m.dims.plantLength() {
		return false
	}
	if contains(p.low, p.high, s.View.Target) {
		return false // it is looked at
	}
	toEye := s.View.toEye(m.dims.up, m.dims.ahead)
	return crosses(p.low, p.high, s.View.Target, toEye.Mul(s.View.DistanceMM))
}

func contains(low, high, p mgl64.Vec3) bool {
	for i := range 3 {
		if p[i] < low[i] || p[i] > high[i] {
			return false
		}
	}
	return true
}

// crosses reports whether the line from a point along a vector meets a box
// (slab by slab).
func crosses(low, high, from, along mgl64.Vec3) bool {
	t0, t1 := 0.0, 1.0
	for i := range 3 {
		if along[i] == 0 {
			if from[i] < low[i] || from[i] > high[i] {
				return false
			}
			continue
		}
		a, b := (low[i]-from[i])/along[i], (high[i]-from[i])/along[i]
		t0, t1 = max(t0, min(a, b)), min(t1, max(a, b))
	}
	return t0 <= t1
}
