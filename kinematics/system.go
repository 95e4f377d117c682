package kinematics

// This file is the six-by-six linear system of one Newton step of the engine:
// stiffness against a travel and a turn about the face centre.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// system is k step = rhs; rows and columns are force, then moment, in S.
type system struct {
	k   [6][6]float64
	rhs [6]float64
}

// addSpring adds a spring of stiffness k (along x_E, y_E, z_E) at the end of
// an arm a. With K its matrix in S, a step (t, d) moves its end by t + d x a,
// so force and moment against the step are
//
//	K t - K[a] d   and   [a]K t - [a]K[a] d.
func (s *system) addSpring(b bed, a, k mgl64.Vec3) {
	kxx := k[0]*b.c*b.c + k[2]*b.s*b.s
	kxz := (k[2] - k[0]) * b.s * b.c
	kzz := k[0]*b.s*b.s + k[2]*b.c*b.c
	kyy := k[1]
	ka := [3][3]float64{ // K[a]
		{-kxz * a[1], kxz*a[0] - kxx*a[2], kxx * a[1]},
		{kyy * a[2], 0, -kyy * a[0]},
		{-kzz * a[1], kzz*a[0] - kxz*a[2], kxz * a[1]},
	}
	s.k[0][0] += kxx
	s.k[0][2] += kxz
	s.k[1][1] += kyy
	s.k[2][0] += kxz
	s.k[2][2] += kzz
	for i := range 3 {
		for j := range 3 {
			s.k[i][3+j] -= ka[i][j]
			s.k[3+j][i] -= ka[i][j]
		}
		s.k[3][3+i] -= a[1]*ka[2][i] - a[2]*ka[1][i]
		s.k[4][3+i] -= a[2]*ka[0][i] - a[0]*ka[2][i]
		s.k[5][3+i] -= a[0]*ka[1][i] - a[1]*ka[0][i]
	}
}

// addFollower adds what a steady force f at the end of an arm a does when the
// arm turns: its moment changes by (d x a) x f = a (f.d) - d (f.a).
func (s *system) addFollower(a, f mgl64.Vec3) {
	along := f.Dot(a)
	for i := range 3 {
		for j := range 3 {
			s.k[3+i][3+j] -= a[i] * f[j]
		}
		s.k[3+i][3+i] += along
	}
}

// solve eliminates with row pivoting. It destroys the system and fails where a
// direction is not held.
func (s *system) solve() (x [6]float64, ok bool) {
	k, r := &s.k, &s.rhs
	// Turns are in radians and arms some hundred millimetres long, so compare
	// pivots with their own column as it began.
	var scale [6]float64
	for j := range 6 {
		scale[j] = math.Abs(k[j][j])
	}
	for c := range 6 {
		p := c
		for i := c + 1; i < 6; i++ {
			if math.Abs(k[i][c]) > math.Abs(k[p][c]) {
				p = i
			}
		}
		if !(math.Abs(k[p][c]) > 1e-13*scale[c]) {
			return x, false
		}
		k[c], k[p] = k[p], k[c]
		r[c], r[p] = r[p], r[c]
		inv := 1 / k[c][c]
		for i := c + 1; i < 6; i++ {
			f := k[i][c] * inv
			if f == 0 {
				continue
			}
			for j := c + 1; j < 6; j++ {
				k[i][j] -= f * k[c][j]
			}
			r[i] -= f * r[c]
		}
	}
	for i := 5; i >= 0; i-- {
		v := r[i]
		for j := i + 1; j < 6; j++ {
			v -= k[i][j] * x[j]
		}
		x[i] = v / k[i][i]
	}
	return x, true
}
