// This file holds the placing of a part: a general affine map, because an
// exaggerated small rotation I + N[theta]x is neither a rotation nor
// length-keeping.

package render

import "github.com/go-gl/mathgl/mgl64"

// Affine maps a point X to L X + t. It is stored by rows: elements 0 to 3 are
// the first row of [L | t], and so on. The zero value stands for the identity,
// so that a Part without a Transform stays where its mesh is.
type Affine [12]float64

// Identity is the map that moves nothing.
var Identity = Affine{1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0}

// Translation moves every point by t.
func Translation(t mgl64.Vec3) Affine {
	return Affine{1, 0, 0, t[0], 0, 1, 0, t[1], 0, 0, 1, t[2]}
}

// Linear maps X to L X.
func Linear(l mgl64.Mat3) Affine {
	return Affine{
		l.At(0, 0), l.At(0, 1), l.At(0, 2), 0,
		l.At(1, 0), l.At(1, 1), l.At(1, 2), 0,
		l.At(2, 0), l.At(2, 1), l.At(2, 2), 0,
	}
}

// Displacement maps X to X + factor (t + theta x X): a small rigid motion made
// visible. Every displacement grows by the same factor, so that an exaggerated
// gap is factor times the true one; a rotation by factor times theta would not
// do that.
func Displacement(t, theta mgl64.Vec3, factor float64) Affine {
	x, y, z := factor*theta[0], factor*theta[1], factor*theta[2]
	return Affine{
		1, -z, y, factor * t[0],
		z, 1, -x, factor * t[1],
		-y, x, 1, factor * t[2],
	}
}

// Mul returns the map that applies b first and a second.
func (a Affine) Mul(b Affine) Affine {
	a, b = a.orIdentity(), b.orIdentity()
	var c Affine
	for i := 0; i < 12; i += 4 {
		for j := range 4 {
			c[i+j] = a[i]*b[j] + a[i+1]*b[4+j] + a[i+2]*b[8+j]
		}
		c[i+3] += a[i+3]
	}
	return c
}

// Apply returns L X + t.
func (a Affine) Apply(p mgl64.Vec3) mgl64.Vec3 {
	a = a.orIdentity()
	return mgl64.Vec3{
		a[0]*p[0] + a[1]*p[1] + a[2]*p[2] + a[3],
		a[4]*p[0] + a[5]*p[1] + a[6]*p[2] + a[7],
		a[8]*p[0] + a[9]*p[1] + a[10]*p[2] + a[11],
	}
}

// Normal carries a normal over, to a length of its own.
func (a Affine) Normal(n mgl64.Vec3) mgl64.Vec3 {
	m, _ := a.orIdentity().cofactors()
	return mgl64.Vec3{
		m[0]*n[0] + m[1]*n[1] + m[2]*n[2],
		m[3]*n[0] + m[4]*n[1] + m[5]*n[2],
		m[6]*n[0] + m[7]*n[1] + m[8]*n[2],
	}
}

// Mirrors reports whether the map turns things inside out.
func (a Affine) Mirrors() bool {
	_, det := a.orIdentity().cofactors()
	return det < 0
}

// orIdentity reads the zero value as the identity.
func (a Affine) orIdentity() Affine {
	if a == (Affine{}) {
		return Identity
	}
	return a
}

// cofactors returns the matrix that carries normals, up to a positive scale:
// the inverse transpose of L is its cofactor matrix over its determinant.
// Dividing by the sign of the determinant alone keeps normals outward on
// mirrored parts and lets a flattened part (determinant near zero) pass.
func (a Affine) cofactors() (m [9]float64, det float64) {
	m = [9]float64{
		a[5]*a[10] - a[6]*a[9], a[6]*a[8] - a[4]*a[10], a[4]*a[9] - a[5]*a[8],
		a[2]*a[9] - a[1]*a[10], a[0]*a[10] - a[2]*a[8], a[1]*a[8] - a[0]*a[9],
		a[1]*a[6] - a[2]*a[5], a[2]*a[4] - a[0]*a[6], a[0]*a[5] - a[1]*a[4],
	}
	det = a[0]*m[0] + a[1]*m[1] + a[2]*m[2]
	if det < 0 {
		for i := range m {
			m[i] = -m[i]
		}
	}
	return m, det
}
