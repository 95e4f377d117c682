package kinematics

// This file is a soft coupling between bolted faces: a spring in bending, the same in
// both planes, that carries the shaft's end on the face's centre all the same.
//
//	engine's face  theta --/\\/\\/-- q  shaft's end      moment = k (theta - q)
//
// Between metal and metal (k without end) it is the bolted coupling; with k nought the
// shaft is carried as it is seated. What it gives in shear, along the shaft and in
// turning is left out.

import (
	"math"

	"aligner/hulls"
)

const nmmPerNM = 1000

// softRadPerNMM is how far the hull's soft coupling gives; 0: there is none, or its
// stiffness is not known.
func softRadPerNMM(h *hulls.Hull) float64 {
	k := h.Coupling.Soft.BendingStiffnessNMPerDeg
	if !h.Coupling.IsSoft() || k <= 0 {
		return 0
	}
	return math.Pi / 180 / (k * nmmPerNM)
}

// give turns the movement of the face into that of the shaft's end behind the soft
// coupling, which carries the end force p.
func (f *face) give(q *[4]float64, p [4]float64) {
	q[1] -= f.softRadPerNMM * p[1]
	q[3] -= f.softRadPerNMM * p[3]
}

// softSlope is the soft coupling's share of the change of energy along the step, the
// engine standing at x after the fraction alpha of it.
func (f *face) softSlope(x *Pose, alpha float64) float64 {
	stood := f.pose
	f.pose = *x
	c, theta := f.carry(), f.flat()
	f.pose = stood
	sum := 0.0
	for _, i := range [2]int{1, 3} {
		turns := -f.dq[i]
		for j := range 6 {
			turns += c[i][j] * f.step[j]
		}
		sum += (theta[i] - f.q[i] - alpha*f.dq[i]) / f.softRadPerNMM * turns
	}
	return sum
}
