package kinematics

// This file joins engine and shaft: the engine-side face as the front of the
// shaft, with the engine and its mounts behind it.

import (
	"math"

	"aligner/kinematics/shaftline"
)

// joint is how the shaft's front end meets the engine.
type joint int

const (
	apart     joint = iota // free, or on a block: the engine does not feel it
	onPilot                // travel agrees, no moment
	drawnFlat              // travel and slope agree
)

// face is a shaftline.Front.
type face struct {
	engine  *engine
	radius  float64 // of the face, to weigh moments as forces
	seats   []seat
	outside wrench
	joint   joint
	careful bool // slower steps that always lead downhill

	softRadPerNMM float64 // drawn flat, with a soft coupling between; 0: metal to metal

	block     bool       // apart: the front end stands at
	blockAtMM [2]float64 // this place
	skew      [2]float64 // drawn flat: slope dy/dx, dz/dx the halves' own faces add

	pose Pose
	q    [4]float64 // the shaft's front end as last told
	step [6]float64
	dq   [4]float64
	turn float64 // N mm per radian at the shaft's end, for the residual
}

var _ shaftline.Front = (*face)(nil)

// Balance takes one Newton step of engine and shaft together.
func (f *face) Balance(end *shaftline.End) ([4]float64, bool) {
	var a system
	u := f.engine.unbalance(&f.pose, f.seats, f.outside, f.careful, &a)
	a.rhs = [6]float64{u.forceN[0], u.forceN[1], u.forceN[2], u.momentNMM[0], u.momentNMM[1], u.momentNMM[2]}
	var q [4]float64
	var ok bool
	switch f.joint {
	case apart:
		q, ok = f.balanceApart(end, &a)
	case onPilot:
		q, ok = f.balanceOnPilot(end, &a)
	case drawnFlat:
		q, ok = f.balanceFlat(end, &a)
	}
	for i := range q {
		f.dq[i] = q[i] - f.q[i]
	}
	return q, ok
}

// A step longer than this is cut: the energy is not convex for an engine that
// turns over.
const (
	longestStepMM  = 30
	longestTurnRad = 0.03
)

// limited is the engine's Newton step, cut where it is too long to believe.
func (f *face) limited(a *system) (step [6]float64, ok bool) {
	if step, ok = a.solve(); !ok {
		return step, false
	}
	t := math.Sqrt(step[0]*step[0]+step[1]*step[1]+step[2]*step[2]) / longestStepMM
	d := math.Sqrt(step[3]*step[3]+step[4]*step[4]+step[5]*step[5]) / longestTurnRad
	if cut := max(t, d); cut > 1 {
		for i := range step {
			step[i] /= cut
		}
	}
	return step, true
}

func (f *face) balanceApart(end *shaftline.End, a *system) (q [4]float64, ok bool) {
	if f.step, ok = f.limited(a); !ok {
		return q, false
	}
	if !f.block {
		return end.SolveFree()
	}
	p := shaftline.Pin(end)
	return p.Movement(f.blockAtMM[0], f.blockAtMM[1]), p.OK
}

// balanceOnPilot carries the shaft's end on the face centre.
func (f *face) balanceOnPilot(end *shaftline.End, a *system) (q [4]float64, ok bool) {
	p := shaftline.Pin(end)
	if !p.OK {
		return q, false
	}
	y, z := f.pose.TranslationMM[1], f.pose.TranslationMM[2]
	a.rhs[1] -= p.Fy + p.Kyy*y + p.Kyz*z
	a.rhs[2] -= p.Fz + p.Kyz*y + p.Kzz*z
	a.k[1][1] += p.Kyy
	a.k[1][2] += p.Kyz
	a.k[2][1] += p.Kyz
	a.k[2][2] += p.Kzz
	if f.step, ok = f.limited(a); !ok {
		return q, false
	}
	return p.Movement(y+f.step[1], z+f.step[2]), true
}

// balanceFlat draws the faces flat together.
func (f *face) balanceFlat(end *shaftline.End, a *system) ([4]float64, bool) {
	c := f.carry()
	q := f.flat()
	if f.softRadPerNMM > 0 {
		softened := *end
		softened.Soften(f.softRadPerNMM)
		end = &softened
	}
	force, s := end.Force(&q), end.Stiffness()
	for i := range 6 {
		for j := range 4 {
			a.rhs[i] -= c[j][i] * force[j]
			for k := range 4 {
				v := c[j][i] * s[j][k]
				if v == 0 {
					continue
				}
				for l := range 6 {
					a.k[i][l] += v * c[k][l]
				}
			}
		}
	}
	f.turn = s[1][1] + s[3][3]
	var ok bool
	if f.step, ok = f.limited(a); !ok {
		return q, false
	}
	for j := range 4 {
		for i := range 6 {
			q[j] += c[j][i] * f.step[i]
		}
	}
	f.give(&q, end.Force(&q))
	return q, true
}

// flat is the movement of a shaft end bolted to the face as it stands.
func (f *face) flat() [4]float64 {
	n := f.pose.Normal()
	t := f.pose.TranslationMM
	return [4]float64{t[1], n[1]/n[0] + f.skew[0], t[2], n[2]/n[0] + f.skew[1]}
}

// carry is how a bolted shaft end moves with a step of the engine: the normal
// turns by d x n, so the slopes n_y/n_x and n_z/n_x turn by its rows 1 and 3.
func (f *face) carry() (c [4][6]float64) {
	n := f.pose.Normal()
	y, z := n[1]/n[0], n[2]/n[0]
	c[0][1], c[2][2] = 1, 1
	c[1][3], c[1][4], c[1][5] = -z, -y*z, 1+y*y
	c[3][3], c[3][4], c[3][5] = y, -1-z*z, y*z
	return c
}

// Slope is the engine's share of the change of energy along the step, and the
// work of the shaft's end force on the shaft.
func (f *face) Slope(alpha float64, p [4]float64) float64 {
	x := f.pose.stepped(&f.step, alpha)
	u := f.engine.unbalance(&x, f.seats, f.outside, false, nil)
	sum := 0.0
	for i := range 3 {
		sum -= u.forceN[i]*f.step[i] + u.momentNMM[i]*f.step[3+i]
	}
	if f.joint != apart {
		for i := range 4 {
			sum += p[i] * f.dq[i]
		}
	}
	if f.joint == drawnFlat && f.softRadPerNMM > 0 {
		sum += f.softSlope(&x, alpha)
	}
	return sum
}

// Advance takes the fraction alpha of the step.
func (f *face) Advance(alpha float64) {
	f.pose = f.pose.stepped(&f.step, alpha)
	for i := range f.q {
		f.q[i] += alpha * f.dq[i]
	}
}

// Residual is the largest force out of balance on the engine, moments over the
// face's radius; bolted, also what the faces' last difference of slope is worth.
func (f *face) Residual(p [4]float64) float64 {
	u := f.engine.unbalance(&f.pose, f.seats, f.outside, false, nil)
	var gap float64
	switch f.joint {
	case onPilot:
		u.forceN[1] -= p[0]
		u.forceN[2] -= p[2]
	case drawnFlat:
		c, q := f.carry(), f.flat()
		for i := range 3 {
			for j := range 4 {
				u.forceN[i] -= c[j][i] * p[j]
				u.momentNMM[i] -= c[j][3+i] * p[j]
			}
		}
		f.give(&q, p)
		gap = f.turn * (math.Abs(q[1]-f.q[1]) + math.Abs(q[3]-f.q[3]))
	}
	worst := gap / f.radius
	for i := range 3 {
		worst = max(worst, math.Abs(u.forceN[i]), math.Abs(u.momentNMM[i])/f.radius)
	}
	return worst
}
