package shaftline

// This file is the shaft's first whirling speed: the lowest natural frequency
// of its sideways bending, which a shaft must not be turned at.

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"
)

// FrontHold is how the front end is held while the shaft turns.
type FrontHold int

// The ways to hold it: by nothing, by a hinge, or bolted to a face that does
// not move.
const (
	FrontFree FrontHold = iota
	FrontHinged
	FrontBolted
)

// WhirlRPM is the first whirling speed in turns a minute, with every bearing a
// spring without clearance and the log touching nothing. Masses are those of
// the bare shaft (from its dry weight) and of the points; water carried along
// and gyroscopic turning of the propeller are left out.
//
// Each length is a Hermite beam element with its consistent mass matrix
// (Przemieniecki, Theory of Matrix Structural Analysis, ch. 11); long ones are
// cut so that the first frequency is exact to a few parts in a million.
func (m *Model) WhirlRPM(hold FrontHold, gravityMMPerS2 float64) (float64, error) {
	k, mass := m.whirlMatrices(m.line.WeightNPerMM / gravityMMPerS2)
	n, _ := k.Dims()
	keep := n
	switch hold { // front travel and slope are the last two movements
	case FrontHinged:
		// Swap the front's travel behind its slope, then drop it.
		for _, a := range []*mat.SymDense{k, mass} {
			swapSym(a, n-2, n-1)
		}
		keep = n - 1
	case FrontBolted:
		keep = n - 2
	}
	ks := k.SliceSym(0, keep).(*mat.SymDense)
	ms := mass.SliceSym(0, keep).(*mat.SymDense)
	return firstRPM(ks, ms)
}

// whirlMatrices assembles stiffness and mass in one plane, in N/mm and tonnes.
func (m *Model) whirlMatrices(massTPerMM float64) (k, mass *mat.SymDense) {
	nodes := m.whirlNodes()
	n := 2 * len(nodes)
	k, mass = mat.NewSymDense(n, nil), mat.NewSymDense(n, nil)
	for i := range len(nodes) - 1 {
		addElement(k, mass, 2*i, nodes[i+1]-nodes[i], m.line.BendingStiffnessNMM2, massTPerMM)
	}
	i, c := 0, 0
	for _, s := range m.stations {
		for i < len(nodes)-2 && s.xMM >= nodes[i+1] {
			i++
		}
		at, h := s.xMM-nodes[i], nodes[i+1]-nodes[i]
		addPoint(mass, 2*i, h, at, s.massKg/1000)
		for ; c < s.contactEnd; c++ {
			if !m.contacts[c].lip {
				addPoint(k, 2*i, h, at, m.contacts[c].kNPerMM)
			}
		}
	}
	return k, mass
}

// whirlNodes are places for beam elements neither long (the shape within one
// is a cubic) nor short (stiffness over mass would swamp the first frequency).
// What stands between two nodes is shared out to them by the cubic.
func (m *Model) whirlNodes() []float64 {
	longest, shortest := m.line.LengthMM/32, m.line.LengthMM/1000
	nodes := []float64{-m.line.LengthMM}
	for _, s := range m.stations[1:] {
		last := nodes[len(nodes)-1]
		gap := s.xMM - last
		if s.xMM < 0 && (gap < shortest || -s.xMM < shortest) {
			continue
		}
		parts := max(int(math.Ceil(gap/longest)), 1)
		for j := 1; j <= parts; j++ {
			nodes = append(nodes, last+gap*float64(j)/float64(parts))
		}
	}
	return nodes
}

// addPoint adds a spring or mass a distance s along an element of length h
// whose movements begin at j.
func addPoint(a *mat.SymDense, j int, h, s, value float64) {
	if value == 0 {
		return
	}
	t := s / h
	n := [4]float64{
		1 - t*t*(3-2*t), s * (1 - t) * (1 - t),
		t * t * (3 - 2*t), s * t * (t - 1),
	}
	for p := range 4 {
		for q := p; q < 4; q++ {
			a.SetSym(j+p, j+q, a.At(j+p, j+q)+value*n[p]*n[q])
		}
	}
}

// addElement adds a beam element of length h to the movements from j on.
func addElement(k, mass *mat.SymDense, j int, h, ei, massTPerMM float64) {
	kc := ei / (h * h * h)
	mc := massTPerMM * h / 420
	ke := [4][4]float64{{12, 6 * h, -12, 6 * h}, {0, 4 * h * h, -6 * h, 2 * h * h}, {0, 0, 12, -6 * h}, {0, 0, 0, 4 * h * h}}
	me := [4][4]float64{{156, 22 * h, 54, -13 * h}, {0, 4 * h * h, 13 * h, -3 * h * h}, {0, 0, 156, -22 * h}, {0, 0, 0, 4 * h * h}}
	for a := range 4 {
		for b := a; b < 4; b++ {
			k.SetSym(j+a, j+b, k.At(j+a, j+b)+kc*ke[a][b])
			mass.SetSym(j+a, j+b, mass.At(j+a, j+b)+mc*me[a][b])
		}
	}
}

// firstRPM is the lowest frequency of K x = w^2 M x: with M = L L', the lowest
// eigenvalue of L^-1 K L^-T.
func firstRPM(k, mass *mat.SymDense) (float64, error) {
	var chol mat.Cholesky
	if !chol.Factorize(mass) {
		return 0, fmt.Errorf("whirling: the shaft's mass matrix is not positive")
	}
	n := k.SymmetricDim()
	var l mat.TriDense
	chol.LTo(&l)
	var half, full mat.Dense
	if err := half.Solve(&l, k); err != nil {
		return 0, fmt.Errorf("whirling: %w", err)
	}
	if err := full.Solve(&l, half.T()); err != nil {
		return 0, fmt.Errorf("whirling: %w", err)
	}
	sym := mat.NewSymDense(n, nil)
	for i := range n {
		for j := i; j < n; j++ {
			sym.SetSym(i, j, (full.At(i, j)+full.At(j, i))/2)
		}
	}
	var eig mat.EigenSym
	if !eig.Factorize(sym, false) {
		return 0, fmt.Errorf("whirling: the frequencies did not converge")
	}
	return math.Sqrt(max(eig.Values(nil)[0], 0)) * 60 / (2 * math.Pi), nil
}

// swapSym exchanges movements i and j of a symmetric matrix.
func swapSym(a *mat.SymDense, i, j int) {
	n := a.SymmetricDim()
	for c := range n {
		if c != i && c != j {
			x, y := a.At(i, c), a.At(j, c)
			a.SetSym(i, c, y)
			a.SetSym(j, c, x)
		}
	}
	x, y := a.At(i, i), a.At(j, j)
	a.SetSym(i, i, y)
	a.SetSym(j, j, x)
}
